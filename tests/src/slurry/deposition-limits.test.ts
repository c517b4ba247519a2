import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { depositionVelocity } from "../../../src/slurry/deposition-velocity.ts";
import { slurryLine } from "../../../src/slurry/slurry-line.ts";
import { pipeOf } from "../../support/pipes.ts";

/*
 * Velocities under which solids rest and above which they pass, worked out apart from this product from the printed
 * equations: Durand with F_L of Schiller and Herbich, Wasp, Oroskar and Turian, Thomas for fine grains. Water at 20 °C,
 * 1.0034 cSt. "Just inside" and "just outside" are the last printed digit or a little more.
 */
const FOOT = 0.3048;
const WATER = { density: 998.2, dynamicViscosity: 1.0034e-6 * 998.2 };
const EIGHT_INCH = 7.981 * 0.0254;

interface Row {
  readonly what: string;
  readonly bore: number;
  readonly sg: number;
  readonly byVolume: number;
  /** mm */
  readonly d50: number;
  /** m/s in the unit below. */
  readonly unit: number;
  readonly durand: number;
  readonly wasp: number;
  readonly oroskarTurian: number;
  readonly fine: number;
  readonly limiting: number;
  readonly design: number;
  readonly pass: number;
  readonly check: readonly [number, number];
  readonly fail: number;
}

const us = (d50: number, byVolume: number, of: readonly number[], at: readonly number[]): Row =>
  row({ what: `8 in, ${d50} mm, ${byVolume * 100} %`, bore: EIGHT_INCH, sg: 2.65, byVolume, d50, unit: FOOT }, of, at);

function row(
  facts: Pick<Row, "what" | "bore" | "sg" | "byVolume" | "d50" | "unit">,
  [durand, wasp, oroskarTurian, fine, limiting, design]: readonly number[],
  [pass, check, near, fail]: readonly number[],
): Row {
  return { ...facts, durand, wasp, oroskarTurian, fine, limiting, design, pass, check: [check, near], fail } as Row;
}

const ROWS: readonly Row[] = [
  us(0.04, 0.15, [2.08, 4.44, 5.91, 1.91, 2.08, 5.91], [5.91, 2.08, 5.89, 2.06]),
  us(0.08, 0.15, [3.66, 4.98, 6.63, 1.91, 3.66, 6.63], [6.64, 3.66, 6.62, 3.64]),
  us(0.1, 0.15, [4.3, 5.17, 6.89, 1.91, 4.3, 6.89], [6.89, 4.3, 6.87, 4.28]),
  us(0.12, 0.15, [4.85, 5.33, 7.1, 1.91, 4.85, 7.1], [7.1, 4.86, 7.08, 4.84]),
  us(0.15, 0.15, [5.56, 5.53, 7.37, 1.91, 5.56, 7.37], [7.37, 5.56, 7.35, 5.54]),
  us(0.5, 0.15, [8.34, 6.76, 9.01, 1.91, 8.34, 10.01], [10.02, 8.35, 10.0, 8.33]),
  row(
    { what: "150 mm, 0.30 mm, 20 %", bore: 0.15, sg: 2.65, byVolume: 0.2, d50: 0.3, unit: 1 },
    [2.05, 1.81, 2.24, 0.56, 2.05, 2.46],
    [2.46, 2.05, 2.44, 2.03],
  ),
  row(
    { what: "300 mm, magnetite 0.10 mm, 10 %", bore: 0.3, sg: 4.9, byVolume: 0.1, d50: 0.1, unit: 1 },
    [2.33, 2.56, 3.86, 0.84, 2.33, 3.86],
    [3.87, 2.33, 3.85, 2.31],
  ),
  us(0.3, 0.45, [8.64, 7.62, 8.59, 1.91, 8.64, 10.37], [10.37, 8.64, 10.35, 8.62]),
];

function velocitiesOf({ bore, sg, byVolume, d50 }: Pick<Row, "bore" | "sg" | "byVolume" | "d50">) {
  const found = depositionVelocity({
    bore,
    particleSize: d50 / 1e3,
    solidsSG: sg,
    solidsByVolume: byVolume,
    liquid: WATER,
  });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

function verdictAt(of: Pick<Row, "bore" | "sg" | "byVolume" | "d50" | "unit">, velocity: number): string {
  const run = slurryLine({
    flow: (velocity * of.unit * Math.PI * of.bore ** 2) / 4,
    pipe: pipeOf(of.bore, 4.5e-5),
    particleSize: of.d50 / 1e3,
    coarseSize: null,
    solidsSG: of.sg,
    solidsByVolume: of.byVolume,
    liquid: WATER,
  });
  if (!run.ok) throw new Error(JSON.stringify(run.findings));
  return run.value.verdict;
}

describe("the velocities of a slurry by every fit", () => {
  it.each(ROWS)("$what", (of) => {
    const found = velocitiesOf(of);
    for (const fit of ["durand", "wasp", "oroskarTurian", "fine", "limiting", "design"] as const) {
      expect(Math.abs(found[fit] / of.unit - of[fit]), fit).toBeLessThanOrEqual(0.01);
    }
    // A printed figure may be rounded past the limit by half its last digit.
    expect(verdictAt(of, of.pass + 0.005)).toBe("keeps moving");
    expect(of.check.map((velocity, i) => verdictAt(of, i === 0 ? velocity + 0.005 : velocity))).toEqual([
      "below the design minimum",
      "below the design minimum",
    ]);
    expect(verdictAt(of, of.fail)).toBe("SETTLES");
  });

  it("has no cliff at 0.1 or 0.15 mm: a hair of size is a hair of velocity", () => {
    for (const size of [0.1, 0.15]) {
      const of = { bore: EIGHT_INCH, sg: 2.65, byVolume: 0.15 };
      const [below, above] = [velocitiesOf({ ...of, d50: size - 1e-6 }), velocitiesOf({ ...of, d50: size + 1e-6 })];
      expect(Math.abs(above.limiting - below.limiting)).toBeLessThan(1e-4);
      expect(Math.abs(above.design - below.design)).toBeLessThan(1e-4);
    }
  });

  it("settles at 4.17 ft/s with 10 % of 0.11 mm, where 4.38 is slow", () => {
    // By hand as above: V_L 4.36 ft/s. At 0.09 mm the same velocity was once “one liquid” and passed.
    const of = { bore: EIGHT_INCH, sg: 2.65, byVolume: 0.1, d50: 0.11, unit: FOOT };
    expect(velocitiesOf(of).limiting / FOOT).toBeCloseTo(4.36, 2);
    expect(verdictAt(of, 4.17)).toBe("SETTLES");
    expect(verdictAt(of, 4.38)).toBe("below the design minimum");
    expect(verdictAt({ ...of, d50: 0.09 }, 4.17)).toBe("below the design minimum");
  });

  it("never passes more solids more easily, up to where they pack", () => {
    const share = fc.double({ min: 0.001, max: 0.6, noNaN: true });
    const size = fc.double({ min: 0.02, max: 3, noNaN: true });
    fc.assert(
      fc.property(share, size, (byVolume, d50) => {
        const of = { bore: 0.2, sg: 2.65, d50 };
        const [less, more] = [velocitiesOf({ ...of, byVolume }), velocitiesOf({ ...of, byVolume: byVolume + 0.01 })];
        expect(more.limiting).toBeGreaterThanOrEqual(less.limiting);
        expect(more.design).toBeGreaterThanOrEqual(less.design);
      }),
    );
  });

  it("goes by Thomas for grains so fine that Durand's fit falls off", () => {
    // By hand: 9.0 × (9.80665 × 1.0034e-6 × 1.65)^0.37 × (0.2027174/1.0034e-6)^0.11 = 0.5831 m/s, 1.913 ft/s.
    const { limiting, durand } = velocitiesOf({ bore: EIGHT_INCH, sg: 2.65, byVolume: 0.15, d50: 0.02 });
    expect(limiting / FOOT).toBeCloseTo(1.913, 3);
    expect(durand).toBeLessThan(limiting);
  });

  it("asks for the rheology of solids finer than 0.02 mm", () => {
    const codesOf = (particleSize: number) =>
      depositionVelocity({ bore: 0.2, particleSize, solidsSG: 2.65, solidsByVolume: 0.1, liquid: WATER }).findings.map(
        ({ code }) => code,
      );
    expect(codesOf(1.99e-5)).toContain("slurry-not-newtonian");
    expect(codesOf(2e-5)).not.toContain("slurry-not-newtonian");
  });
});

describe("the loss of a slurry in a run", () => {
  const lossAt = (velocity: number, byVolume: number, d50: number): number => {
    const bore = 0.2;
    const run = slurryLine({
      flow: (velocity * Math.PI * bore ** 2) / 4,
      pipe: pipeOf(bore, 4.5e-5),
      particleSize: d50 / 1e3,
      coarseSize: null,
      solidsSG: 2.65,
      solidsByVolume: byVolume,
      liquid: WATER,
    });
    return run.ok ? run.value.slurryGradient : Number.NaN;
  };

  it("never falls with more solids, in head of slurry, whether they move, slide or rest", () => {
    const velocity = fc.double({ min: 0.2, max: 8, noNaN: true });
    const share = fc.double({ min: 0.005, max: 0.4, noNaN: true });
    fc.assert(
      fc.property(velocity, share, fc.constantFrom(0.05, 0.2, 0.6, 2, 5), (v, byVolume, d50) => {
        expect(lossAt(v, byVolume * 1.1, d50)).toBeGreaterThanOrEqual(lossAt(v, byVolume, d50) * (1 - 1e-12));
      }),
    );
  });

  it("joins at the deposition velocity without a step", () => {
    const { limiting } = velocitiesOf({ bore: 0.2, sg: 2.65, byVolume: 0.15, d50: 0.4 });
    expect(lossAt(limiting * (1 - 1e-9), 0.15, 0.4)).toBeCloseTo(lossAt(limiting * (1 + 1e-9), 0.15, 0.4), 7);
    expect(lossAt(limiting / 3, 0.15, 0.4)).toBeCloseTo(lossAt(limiting, 0.15, 0.4), 9);
  });
});
