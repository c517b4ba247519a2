import { SPECIFIC_GRAVITY_REFERENCE } from "../../../src/basis/constants.ts";
import type { Duty } from "../../duty/duty.ts";
import { fieldsOf } from "../../duty/fields.ts";
import { callById, constant, type Expression, partAt, product, value } from "../expression.ts";
import type { PlanItem, ResultItem, SpillItem } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { remark } from "./package-inputs.ts";
import { slurryHeads } from "./slurry-head.ts";
import { slurryRuns } from "./slurry-lines.ts";
import { slurryOnThePump } from "./slurry-pump.ts";
import { inUnitSet, stated } from "./stated-input.ts";

/** Whether enough is stated to work the solids out: how many, how heavy, how large. */
export function isSlurry({ solids, solidsGravity, medianSize }: Duty): boolean {
  return (solids ?? 0) > 0 && solidsGravity !== undefined && medianSize !== undefined;
}

const MIXTURE = callById(
  "SLURRYMIXTURE",
  value("solidsGravity"),
  value("solids"),
  null,
  null,
  value("flow"),
  null,
  ...LIQUID_TAIL,
);

const COLUMNS = [
  { key: "gravity" },
  { key: "byWeight", quantity: "percent" },
  { key: "byVolume", quantity: "percent" },
  { key: "solidsGravity" },
  { key: "flow", quantity: "flow" },
  { key: "drySolids", quantity: "massFlow" },
  { key: "asOneLiquid" },
] as const satisfies SpillItem["columns"];

/** Said where a figure of the clear liquid might be taken for that of the slurry; nothing without one. */
export function clearLiquidOnly(duty: Duty, what: string): readonly PlanItem[] {
  if (!isSlurry(duty)) return [];
  const text = `${what} here is that of the clear liquid. That of the slurry is greater: multiply by its SG over that of the liquid, of the section on slurry.`;
  return [{ kind: "statement", text, caution: true }];
}

/**
 * The solids of the duty: what the slurry is, whether it settles in either line, the head it takes, and what that asks of
 * a pump on its curves for water. Nothing where solids by weight, their SG or d50 are not stated.
 */
export function slurry(duty: Duty): readonly PlanItem[] {
  if (!isSlurry(duty)) return [];
  return [
    { kind: "section", id: "slurry", text: "Slurry", newPage: true },
    ...stated(duty, ...fieldsOf("slurry")),
    ...mixture(),
    ...slurryRuns(duty),
    ...slurryHeads(duty, densityOver(duty)),
    ...slurryOnThePump(duty),
    ...SAID,
    remark("slurryMixtureNotes", "Composition", MIXTURE),
  ];
}

function mixture(): readonly PlanItem[] {
  const at = (key: (typeof COLUMNS)[number]["key"]): Expression =>
    partAt(
      "slurryMixture",
      COLUMNS.findIndex((column) => column.key === key),
    );
  const result = (item: Omit<ResultItem, "kind">): ResultItem => ({ kind: "result", ...item });
  return [
    {
      kind: "spill",
      key: "slurryMixture",
      label: "Composition of the slurry",
      expression: MIXTURE,
      rows: 2,
      columns: COLUMNS,
    },
    result({
      key: "slurryGravity",
      label: "SG of the slurry",
      quantity: "ratio",
      expression: at("gravity"),
      how: "Solids and the liquid stated, by mass and volume; relative to 998.2 kg/m³.",
      main: true,
    }),
    result({
      key: "solidsByVolume",
      label: "Solids by volume",
      quantity: "percent",
      expression: at("byVolume"),
      how: "C_v = C_w S_m/S_s.",
    }),
    result({
      key: "drySolids",
      label: "Dry solids carried",
      quantity: "massFlow",
      expression: at("drySolids"),
      how: "C_v ρ_s × flow; the flow stated is of the slurry.",
    }),
    result({
      key: "slurryAsLiquid",
      label: "The slurry as one liquid",
      expression: at("asOneLiquid"),
      how: "With viscosity and vapour pressure of the liquid alone; see below.",
    }),
  ];
}

/** Density of the liquid stated over that of the slurry: it turns heads of the one into heads of the other. */
function densityOver(duty: Duty): Expression {
  const water = constant(inUnitSet(SPECIFIC_GRAVITY_REFERENCE, "density", duty));
  return { op: "ratio", of: value("density"), by: product(value("slurryGravity"), water) };
}

const SAID: readonly PlanItem[] = [
  "The liquid stated on this sheet is the one between the solids. All other sections are worked out for it without solids: total head, NPSH, system curve, operating point, ranking, power, drive, pressures and surge count no slurry. This section alone does, at the flow stated; the operating point on slurry lies where the pump's head times the head ratio meets the head of the slurry.",
  "For the other sections with the weight of the slurry, state the liquid in a copy of this duty as the description above (such as “SG 1.2, 3 cP, pv 2.3 kPa”) and leave SG and d50 of the solids blank there: pressures, power and NPSH are then those of the slurry as one liquid, without the loss of head and efficiency in the pump.",
  "The pump must also give the total head of the clear liquid, with which the line is started and flushed; choose by the greater of the two.",
  "Assumed: the slurry is the same from the source to the delivery; it runs as a Newtonian liquid or as solids in one; no froth. Fitting losses are K V²/2g in head of slurry: common practice, no source.",
]
  .map((text): PlanItem => ({ kind: "statement", text }))
  .concat([
    {
      kind: "statement",
      text: "A line that stops full of slurry plugs: flush it before every stop, have drains at the low points, and never clear a plug with more pressure than the weakest part stands. Wear thins casing and pipe: measure walls and take parts out of service in time.",
      caution: true,
    },
  ]);
