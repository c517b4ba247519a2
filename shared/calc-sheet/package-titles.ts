import type { StepId } from "../duty/fields.ts";

/** What turns the pump into a package, by step, in the order of the sheet. Apart from the sections: the pane lists its steps before it has those. */
export const PACKAGE_TITLES = {
  slurry: "Slurry",
  sump: "Sump and suction bell",
  route: "Route",
  pressure: "Pressure and flanges",
  pipe: "Pipe and hose",
  bolting: "Flanges and bolting",
  drive: "Drive",
  priming: "Priming",
  materials: "Materials",
  field: "Field check",
  estimate: "Quantities and cost",
} as const satisfies Partial<Record<StepId, string>>;

export type PackageId = keyof typeof PACKAGE_TITLES;
