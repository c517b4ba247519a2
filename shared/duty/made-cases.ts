import { type Quantity, UNIT_SETS } from "../../src/basis/quantities.ts";
import { fromEngine } from "../../src/basis/units.ts";
import { type Duty, pumpsSideBySide } from "./duty.ts";
import type { CaseText } from "./duty-text.ts";

/**
 * Cases made of what the duty states of its range: each end of the static head, in new pipe and in aged; and of several
 * pumps side by side one out. It is the source that is taken to rise and fall.
 */
export function madeCases(duty: Duty): readonly CaseText[] {
  const { leastStaticHead, greatestStaticHead, agedRoughness, deliveryLevel, pumpsRunning = 1 } = duty;
  const levels = [
    { name: "minimum static head", head: leastStaticHead },
    { name: "maximum static head", head: greatestStaticHead },
  ].flatMap(({ name, head }) => {
    if (head === undefined || deliveryLevel === undefined) return [];
    return [{ name, fields: { sourceLevel: bare(deliveryLevel - head, "elevation", duty) } }];
  });
  const ends = levels.length === 0 && agedRoughness !== undefined ? [{ name: "as stated", fields: {} }] : levels;
  const pipes = agedRoughness === undefined ? [undefined] : (["new", "aged"] as const);
  const corners = ends.flatMap(({ name, fields }) =>
    pipes.map((pipe) => ({
      name: pipe === undefined ? name : `${name}, ${pipe} pipe`,
      fields: { ...fields, ...(pipe && { pipe }) },
    })),
  );
  const out =
    pumpsSideBySide(duty) > 1 && pumpsRunning > 1
      ? [{ name: "one pump out", fields: { pumpsRunning: String(pumpsRunning - 1) } }]
      : [];
  return [...corners, ...out].map((one) => ({ ...one, hours: "" }));
}

/** Those that no case of this name stands for yet. */
export function casesToMake(duty: Duty, typed: readonly CaseText[]): readonly CaseText[] {
  const names = new Set(typed.map(({ name }) => name.trim().toLowerCase()));
  return madeCases(duty).filter(({ name }) => !names.has(name));
}

/** A bare number of the unit set, as a reader would type it. */
function bare(value: number, quantity: Quantity, { unitSet }: Duty): string {
  return String(Number(fromEngine(value, UNIT_SETS[unitSet][quantity]).toPrecision(10)));
}
