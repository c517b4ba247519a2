import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { type GaugeHeadInput, gaugeHead, type Tap } from "../../../src/field/gauge-head.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

const [INCH, FOOT, GPM, PSI] = ["in", "ft", "US gpm", "psi"].map((unit) => unitOf(unit as "in").factor) as [
  number,
  number,
  number,
  number,
];
const INHG = unitOf("inHg").factor;
const CASES = publishedCases("8-field", "station");

function caseOf(id: string) {
  const found = CASES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

const tap = (of: Partial<Tap>): Tap => ({
  pressure: 0,
  height: 0,
  airTapHeight: null,
  bore: null,
  instrument: null,
  ...of,
});

const EXACT = { kind: "part", part: 0 } as const;

function headOf(input: Partial<GaugeHeadInput>) {
  const read = gaugeHead({
    flow: 0.05,
    flowInstrument: EXACT,
    suction: tap({}),
    discharge: tap({}),
    lossToFlanges: 0,
    heightUncertainty: 0,
    density: 1000,
    ...input,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return { ...read.value, findings: read.findings };
}

const codes = (input: Partial<GaugeHeadInput>): readonly string[] => headOf(input).findings.map(({ code }) => code);

/** A density at which a psi is 2.31 ft, as the trade has it. */
const TRADE = PSI / (2.31 * FOOT * STANDARD_GRAVITY);

describe("head by gauges", () => {
  it("agrees with a trade journal's pump, and with what leaving out heights and velocities costs", () => {
    const of = caseOf("s8-field-001");
    const found = headOf({
      flow: 70 * GPM,
      density: TRADE,
      suction: tap({ pressure: 5 * PSI, height: 1 * FOOT, bore: 1.5 * INCH }),
      discharge: tap({ pressure: 80 * PSI, height: 6 * FOOT, bore: 1 * INCH }),
    });
    expectPublished((found.suctionVelocity ?? 0) / FOOT, "V_suction", of);
    expectPublished((found.dischargeVelocity ?? 0) / FOOT, "V_discharge", of);
    // The source's g is 32.174 ft/s².
    const velocityPart = (found.velocityPart * STANDARD_GRAVITY) / (32.174 * FOOT);
    const head = found.pressurePart + found.heightPart + velocityPart;
    expect(found.head / head).toBeCloseTo(1, 6);
    expectPublished(head / FOOT, "head", of);
    expectPublished(found.pressurePart / FOOT, "gauges_only", of);
    expectPublished(100 * (head / found.pressurePart - 1), "error_of_gauges_only", of);
  });

  it("agrees with a board examination, whose g is 9.81", () => {
    const of = caseOf("s8-field-002");
    const found = headOf({
      flow: 20 / 60,
      // What 13.6 of mercury weighs on 1000 of water by one g or another is the same head.
      density: (1000 * 9.81) / STANDARD_GRAVITY,
      suction: tap({ pressure: -0.127 * 13_600 * 9.81, height: -0.075, bore: 0.4 }),
      discharge: tap({ pressure: 75_000, height: 0.45, bore: 0.35 }),
    });
    expectPublished(found.heightPart, "gauge_height_term", of);
    expectPublished(found.suctionVelocity ?? 0, "V_suction", of);
    expectPublished(found.dischargeVelocity ?? 0, "V_discharge", of);
    const velocityPart = (found.velocityPart * STANDARD_GRAVITY) / 9.81;
    expectPublished(found.pressurePart + found.heightPart + velocityPart, "head", of);
  });

  it("takes the surface for the suction side where there is no gauge, as the extension service does", () => {
    const of = caseOf("s8-field-004");
    const found = headOf({
      flow: 600 * GPM,
      density: TRADE,
      suction: tap({ height: -70 * FOOT }),
      discharge: tap({ pressure: 60 * PSI }),
    });
    expectPublished(found.head / FOOT, "TDH", of);
    expect(found.findings.map(({ code }) => code)).toContain("velocity-head-left-out");
  });

  it("agrees with a case of its own, and its uncertainty", () => {
    const of = caseOf("s8-field-008");
    const state = WATER.at((60 - 32) / 1.8 + 273.15);
    if (!state.ok) throw new Error("no water");
    const found = headOf({
      flow: 1180 * GPM,
      flowInstrument: { kind: "part", part: 0.02 },
      density: state.value.density,
      heightUncertainty: 0.1 * FOOT,
      suction: tap({
        pressure: -6.2 * INHG,
        height: 1.5 * FOOT,
        bore: 10.02 * INCH,
        instrument: { kind: "amount", amount: 0.15 * PSI },
      }),
      discharge: tap({
        pressure: 34.5 * PSI,
        height: 4 * FOOT,
        bore: 7.981 * INCH,
        instrument: { kind: "span", part: 0.005, span: 100 * PSI },
      }),
    });
    expectPublished(found.head / FOOT, "head", of);
    expectPublished(found.velocityPart / FOOT, "velocity_head_difference", of);
    expectPublished(found.uncertainty / FOOT, "u_head", of);
  });

  it("counts the height of the tap where the line to the gauge is full of air, and the losses to the flanges", () => {
    const liquid = headOf({ suction: tap({ height: 1.2 }) }).head;
    expect(headOf({ suction: tap({ height: 1.2, airTapHeight: 0.2 }) }).head - liquid).toBeCloseTo(1, 12);
    expect(headOf({ discharge: tap({ height: 9, airTapHeight: 2 }) }).heightPart).toBeCloseTo(2, 12);
    expect(headOf({ lossToFlanges: 0.4 }).head - headOf({}).head).toBeCloseTo(0.4, 12);
  });

  it("does not change where pump, gauges and datum move together", () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (up) => {
        const at = (rise: number): number =>
          headOf({
            suction: tap({ pressure: -2e4, height: 0.5 + rise, bore: 0.25 }),
            discharge: tap({ pressure: 3e5, height: 1 + rise, bore: 0.2 }),
          }).head;
        expect(at(up)).toBeCloseTo(at(0), 9);
      }),
    );
  });

  it("says what it took for granted", () => {
    expect(codes({ discharge: tap({ pressure: 2e5, bore: 0.2 }) })).toEqual(["gauge-span-assumed"]);
    expect(codes({ suction: tap({ pressure: 1e4 }), discharge: tap({ pressure: 2e5, bore: 0.2 }) })).toContain(
      "suction-size-missing",
    );
    expect(codes({ flowInstrument: null, discharge: tap({ pressure: 2e5, bore: 0.2 }) })).toContain(
      "instrument-assumed",
    );
    // A span of 6 bar is read from 0.6 bar on.
    const gauge = { kind: "span", part: 0.01, span: 6e5 } as const;
    expect(codes({ discharge: tap({ pressure: 5.9e4, bore: 0.2, instrument: gauge }) })).toContain("gauge-read-low");
    expect(codes({ discharge: tap({ pressure: 6e4, bore: 0.2, instrument: gauge }) })).not.toContain("gauge-read-low");
  });

  it("takes a bourdon gauge of twice the reading where none is stated, of 1 bar at least", () => {
    const of = (pressure: number): number => headOf({ discharge: tap({ pressure, bore: 0.2 }) }).uncertainty;
    expect(of(3e5)).toBeCloseTo((0.02 * 3e5) / (1000 * STANDARD_GRAVITY), 9);
    expect(of(1e4)).toBeCloseTo(1000 / (1000 * STANDARD_GRAVITY), 9);
  });

  it("refuses what no gauge reads", () => {
    const refused = (input: Partial<GaugeHeadInput>): boolean => {
      const { findings: _, ...rest } = { findings: [], ...input };
      return !gaugeHead({
        flow: 0.05,
        flowInstrument: null,
        suction: tap({}),
        discharge: tap({}),
        lossToFlanges: 0,
        heightUncertainty: null,
        density: 1000,
        ...rest,
      }).ok;
    };
    expect(refused({ suction: tap({ pressure: -101_326 }) })).toBe(true);
    expect(refused({ suction: tap({ pressure: -101_325 }) })).toBe(false);
    expect(refused({ discharge: tap({ bore: 0 }) })).toBe(true);
    expect(refused({ flow: -1e-9 })).toBe(true);
    expect(refused({ lossToFlanges: -0.1 })).toBe(true);
    expect(refused({ heightUncertainty: -0.1 })).toBe(true);
    expect(refused({ density: 0 })).toBe(true);
  });
});
