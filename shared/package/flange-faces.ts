import { cell } from "../calc-sheet/expression.ts";
import { FLANGES } from "../calc-sheet/sections/bolting.ts";
import type { Duty } from "../duty/duty.ts";
import { workedDuty } from "./worked-duty.ts";

/** A flange as the sheet has it, for a drawing of its face; in the unit of sizes of the duty. */
export interface FlangeFace {
  readonly name: string;
  readonly outside: number;
  readonly boltCircle: number;
  readonly bolts: number;
  /** "3/4 in", whatever the reader's units. */
  readonly boltSize: string;
  readonly hole: number;
  /** Nothing on a flat face, or where the standard of the class is not held for it. */
  readonly raisedFace: number | undefined;
  /** Of the gasket stated: a ring, or as wide as the flange. */
  readonly gasketOutside: number;
  readonly gasketInside: number;
  readonly isFullFace: boolean;
}

/** The flanges of the pump that have dimensions on the sheet. */
export function flangeFaces(duty: Duty): readonly FlangeFace[] {
  const { cells } = workedDuty(duty).worked;
  return FLANGES.flatMap(({ label: name, dimensions }) => {
    type Column = (typeof dimensions)["columns"][number]["key"];
    const at = (column: Column): unknown => cells.get(cell(dimensions, 0, column).key);
    const number = (column: Column): number | undefined => {
      const found = at(column);
      return typeof found === "number" ? found : undefined;
    };
    const outside = number("outside");
    const boltCircle = number("circle");
    const bolts = number("bolts");
    const hole = number("holeDiameter");
    const isFullFace = duty.gasketShape === "full face";
    const gasketOutside = isFullFace ? outside : number("gasketOutside");
    const gasketInside = number("gasketInside");
    if (outside === undefined || boltCircle === undefined || bolts === undefined || hole === undefined) return [];
    if (gasketOutside === undefined || gasketInside === undefined) return [];
    const raisedFace = number("raisedFace");
    const boltSize = String(at("boltSize"));
    const raised = duty.facing === "both flat" || isFullFace ? undefined : raisedFace;
    const gasket = { gasketOutside, gasketInside, isFullFace };
    return [{ name, outside, boltCircle, bolts, boltSize, hole, raisedFace: raised, ...gasket }];
  });
}
