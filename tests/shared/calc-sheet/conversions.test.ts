import { describe, expect, it } from "vitest";
import * as made from "../../../shared/calc-sheet/conversions.ts";
import { constant, type Expression } from "../../../shared/calc-sheet/expression.ts";
import { type Addresses, formulaOf } from "../../../shared/calc-sheet/formula.ts";
import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { UNIT_SET_NAMES, UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { unitOf } from "../../../src/basis/units.ts";

const NOWHERE: Addresses = {
  cell: () => undefined,
  range: () => "",
  column: () => "",
  part: () => ({ first: "", cell: "" }),
};

/** What a formula of numbers alone comes to: the signs of a spreadsheet are those of the language. */
function answerOf(expression: Expression, units: UnitSetName): number {
  const formula = formulaOf(expression, NOWHERE, units);
  expect(formula).toMatch(/^[0-9.e()*/+-]+$/);
  return Number(new Function(`return ${formula};`)());
}

const one = constant(1);
const WATER = SPECIFIC_GRAVITY_REFERENCE;
const G = STANDARD_GRAVITY;

describe.each(UNIT_SET_NAMES)("figures between the units of %s", (units) => {
  const size = Object.fromEntries(
    Object.entries(UNIT_SETS[units]).map(([quantity, { factor }]) => [quantity, factor]),
  ) as Record<keyof (typeof UNIT_SETS)["SI"], number>;

  // Each by the sizes of the units (NIST SP 811, appendix B), for a figure of 1 of each.
  it.each<readonly [string, Expression, number]>([
    ["density of water", made.densityOfWater(units), WATER / size.density],
    ["atmosphere", made.atmosphere(units), STANDARD_ATMOSPHERE / size.gaugePressure],
    ["a height", made.converted(7, "head", units), 7 / size.head],
    ["an absolute pressure", made.converted(30_000, "absolutePressure", units), 30_000 / size.absolutePressure],
    ["a velocity", made.converted(3, "velocity", units), 3 / size.velocity],
    ["p/(ρ g)", made.headOf(one, one, units), size.gaugePressure / (size.density * G * size.head)],
    ["ρ g h", made.pressureOf(one, one, units), (size.density * G * size.head) / size.gaugePressure],
    ["ρ_w g h", made.pressureOfSG(one, one, units), (WATER * G * size.head) / size.gaugePressure],
    ["ρ V²/2", made.dynamicPressure(one, one, units), (size.density * size.velocity ** 2) / 2 / size.gaugePressure],
    ["V²/2g", made.velocityHead(one, units), size.velocity ** 2 / (2 * G) / size.head],
    ["π/4 d² V", made.flowThrough(one, one, units), ((Math.PI / 4) * size.size ** 2 * size.velocity) / size.flow],
    ["π/4 d² L", made.volumeOfBore(one, one, units), ((Math.PI / 4) * size.size ** 2 * size.length) / size.volume],
    ["ρ_w g Q H", made.powerOfWater(units), (WATER * G * size.flow * size.head) / size.power],
    ["P/(2 π n)", made.torqueOf(one, one, units), size.power / (2 * Math.PI * size.speed) / size.torque],
    ["π d n", made.rimSpeed(one, one, units), (Math.PI * size.size * size.speed) / size.velocity],
    ["kW", made.kilowatts(one, units), size.power / unitOf("kW").factor],
    ["fuel of an hour", made.fuelOfAnHour(one, units), (size.fuelFlow * 3600) / size.volume],
    [
      "volume in bulk",
      made.volumeInBulk(one, one, units),
      (size.flow * 3600) / (units === "US" ? 1e6 * unitOf("US gal").factor : 1000),
    ],
  ])("%s", (_, expression, expected) => {
    expect(answerOf(expression, units) / expected).toBeCloseTo(1, 13);
  });
});

// Handbook figures, from memory: 2.31 ft of water of 62.4 lb/ft³ a psi, 5252 and 9549 of torque, 3960 of hydraulic power.
describe("figures known by sight", () => {
  it.each([
    [made.torqueOf(one, one, "US"), "US", 5252.1131],
    [made.torqueOf(one, one, "SI"), "SI", 9549.2966],
    [made.headOf(one, constant(62.4), "US"), "US", 2.3077],
    [made.headOf(one, constant(1000), "METRIC"), "METRIC", 10.1972],
    [made.velocityHead(constant(10), "US"), "US", 100 / 64.3481],
    [made.volumeOfBore(one, one, "US"), "US", 0.0408],
  ] as const)("stand", (expression, units, expected) => {
    expect(answerOf(expression, units) / expected).toBeCloseTo(1, 4);
  });
});
