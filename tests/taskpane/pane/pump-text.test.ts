import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { stateAsPumped } from "../../../shared/duty/slurry.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { andThen } from "../../../src/basis/result.ts";
import { fromEngine, unitOf } from "../../../src/basis/units.ts";
import { headAtFlow, npshRequiredAtFlow } from "../../../src/pump/pump-reading.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import type { RankedPump } from "../../../src/pump/selection.ts";
import { curveOn } from "../../../src/slurry/curve-as-pumped.ts";
import { candidatesOf } from "../../../taskpane/pane/pump/candidates.ts";
import { choiceOf, isSimilar, pumpTextOf } from "../../../taskpane/pane/pump/pump-text.ts";
import { rankingOf } from "../../../taskpane/pane/pump/ranking.ts";
import { QUARRY } from "../../support/duty-of.ts";

const candidates = candidatesOf("a test", [{ source: "a test", ...inventedPumps() }]);

function rankedFor(duty: DutyText): readonly RankedPump[] {
  const selection = rankingOf(duty, candidates)?.selection;
  if (selection?.ok !== true) throw new Error("the sample cannot be ranked");
  return selection.value.ranked;
}

const CHOICES = SAMPLE_DUTIES.flatMap(({ name, duty }) =>
  rankedFor(duty).map((ranked) => ({ id: `${ranked.pump.name} for ${name}`, ranked, duty })),
);

describe.each(CHOICES)("$id", ({ ranked, duty }) => {
  // A law: what is written into the duty, read back, runs where it was ranked.
  it("written into the duty and read back, runs where it was ranked", () => {
    const text = pumpTextOf(ranked, duty.unitSet);
    const read = decodeDuty({ ...duty, pump: text });
    const { pump } = read.duty;
    if (pump === undefined) throw new Error(JSON.stringify([...read.findings]));
    // On the liquid as pumped, as the sheet has it.
    const onPumped = andThen(stateAsPumped(read.duty), (state) => curveOn(state, pump.curve));
    if (!onPumped.ok) throw new Error(JSON.stringify(onPumped.findings));
    const running = runningPump({ curve: onPumped.value, speedRatio: pump.speedRatio, trimRatio: pump.trimRatio });
    if (!running.ok) throw new Error("does not run");
    const head = headAtFlow(running.value, Math.min(ranked.flow, running.value.mostFlow));
    expect((head.ok ? head.value : 0) / ranked.head).toBeCloseTo(1, 5);
    if (ranked.npshRequired !== undefined) {
      const npsh = npshRequiredAtFlow(running.value, Math.min(ranked.flow, running.value.mostFlow));
      // Of a trim written down as its own curve the points between are drawn anew.
      expect((npsh.ok ? npsh.value : 0) / ranked.npshRequired).toBeCloseTo(1, isSimilar(ranked.running) ? 5 : 2);
    }
    const state = stateAsPumped(read.duty);
    if (ranked.power !== undefined && ranked.efficiency !== undefined && state.ok) {
      // P = ρ g Q H/η of the liquid as pumped, in m of it.
      const hydraulic = state.value.density * STANDARD_GRAVITY * ranked.flow * ranked.head;
      // Power and efficiency are each drawn through the points of the curve: between them they differ by up to one per cent.
      expect(Math.abs(ranked.power / (hydraulic / ranked.efficiency) - 1)).toBeLessThan(0.01);
    }
    if (ranked.speed !== undefined) expect((pump.speed ?? 0) * pump.speedRatio).toBeCloseTo(ranked.speed, 4);
    if (ranked.diameter !== undefined) {
      expect((pump.impellerDiameter ?? 0) * pump.trimRatio).toBeCloseTo(ranked.diameter, 6);
    }
  });
});

describe("the pump in the duty beside the ranking", () => {
  const first = (flow: string): RankedPump => {
    const [ranked] = rankedFor({ ...QUARRY, fields: { ...QUARRY.fields, flow } }).filter(
      ({ pump, running }) => pump.name === chosen.pump.name && running.speedRatio !== 1,
    );
    if (ranked === undefined) throw new Error("not ranked with a speed of its own");
    return ranked;
  };
  const [chosen] = rankedFor({ ...QUARRY, fields: { ...QUARRY.fields, flow: "1000" } }).filter(
    ({ running }) => running.speedRatio !== 1,
  ) as [RankedPump];

  // A pump chosen at 1000 gpm keeps its speed ratio when the flow rises to 1150: it no longer runs right at the duty.
  it("is told apart from a setting for another duty", () => {
    const text = pumpTextOf(chosen, "US");
    expect(choiceOf(text, chosen, "US")).toBe("as ranked");
    expect(choiceOf(text, first("1050"), "US")).toBe("set otherwise");
    expect(choiceOf({ ...text, speedRatio: "" }, chosen, "US")).toBe("set otherwise");
    expect(choiceOf({ ...text, name: "another" }, chosen, "US")).toBe("not chosen");
    expect(choiceOf(undefined, chosen, "US")).toBe("not chosen");
  });
});

describe("the ranking", () => {
  it("covers enough pumps to mean something", () => {
    expect(CHOICES.length).toBeGreaterThan(20);
    expect(CHOICES.some(({ ranked }) => !isSimilar(ranked.running))).toBe(true);
  });

  it("is for the head with the margin on losses, at the flow asked", () => {
    // By hand: static 76 ft (174 − 98), and 1.1 times what the losses come to without the margin of 10 %.
    const without = rankingOf({ ...QUARRY, fields: { ...QUARRY.fields, frictionMargin: "" } }, candidates);
    const asked = rankingOf(QUARRY, candidates)?.asked;
    const headOf = (ranking: typeof asked): number =>
      fromEngine(ranking?.system.headAt(ranking.flow) ?? Number.NaN, unitOf("ft"));
    const losses = headOf(without?.asked) - 76;
    expect(losses).toBeGreaterThan(10);
    expect(headOf(asked)).toBeCloseTo(76 + 1.1 * losses, 9);
  });

  it("judges NPSH at the lift and altitude of the duty", () => {
    const margin = (duty: DutyText, name: string): number | undefined =>
      rankedFor(duty).find(({ pump }) => pump.name === name)?.npshMargin;
    const best = rankedFor(QUARRY)[0]?.pump.name ?? "";
    const lifted = { ...QUARRY, fields: { ...QUARRY.fields, pumpLevel: "112" } };
    // A law: two feet more of lift take two feet of NPSH, 0.3048 m each.
    expect((margin(QUARRY, best) ?? 0) - (margin(lifted, best) ?? 0)).toBeCloseTo(0.6096, 9);
  });

  it("does not judge NPSH of a liquid without a vapour pressure", () => {
    const described = { ...QUARRY, fields: { ...QUARRY.fields, liquid: "SG 1.1, 1.2 cP" } };
    const ranked = rankedFor(described);
    expect(ranked.length).toBeGreaterThan(0);
    expect(ranked.every(({ npshMargin }) => npshMargin === undefined)).toBe(true);
  });

  it("is not worked out again while the selected pump is edited", () => {
    const first = rankingOf(QUARRY, candidates);
    const [ranked] = rankedFor(QUARRY);
    const withPump: DutyText = { ...QUARRY, pump: pumpTextOf(ranked as RankedPump, "US") };
    expect(rankingOf(withPump, candidates)).toBe(first);
    expect(rankingOf({ ...QUARRY, fields: { ...QUARRY.fields, flow: "900" } }, candidates)).not.toBe(first);
  });

  it("is nothing for a duty that is not complete", () => {
    expect(rankingOf({ ...QUARRY, fields: { ...QUARRY.fields, flow: "" } }, candidates)).toBeUndefined();
  });
});
