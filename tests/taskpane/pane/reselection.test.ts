import { describe, expect, it } from "vitest";
import { type DutyText, EMPTY_CURVE_POINT, type PumpText } from "../../../shared/duty/duty-text.ts";
import { readAmount } from "../../../shared/duty/read-amount.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { fromEngine, unitOf } from "../../../src/basis/units.ts";
import type { RankedPump } from "../../../src/pump/selection.ts";
import type { PaneContext } from "../../../taskpane/pane/context.ts";
import { convertNumbers } from "../../../taskpane/pane/convert-numbers.ts";
import { candidatesOf } from "../../../taskpane/pane/pump/candidates.ts";
import { type Ranking, rankingOf } from "../../../taskpane/pane/pump/ranking.ts";
import { pumpSetAgain, reselection, selectedPumpText } from "../../../taskpane/pane/pump/reselection.ts";
import { next, openingState } from "../../../taskpane/pane/state.ts";
import { reselectionView } from "../../../taskpane/pane/views/reselection.ts";
import { workedOut } from "../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../support/duty-of.ts";
import { markup } from "../../support/markup.ts";

const candidates = candidatesOf("a test", [{ source: "a test", ...inventedPumps() }]);

function rankedOn(duty: DutyText): { readonly ranking: Ranking; readonly ranked: readonly RankedPump[] } {
  const ranking = rankingOf(duty, candidates);
  if (ranking?.selection.ok !== true) throw new Error("cannot be ranked");
  return { ranking, ranked: ranking.selection.value.ranked };
}

const gpm = (flow: number): number => fromEngine(flow, unitOf("US gpm"));

/** The quarry sample for one duty alone without a margin, at a flow. */
function quarryAt(flow: string, units: UnitSetName = "US"): DutyText {
  const blank = { leastStaticHead: "", greatestStaticHead: "", agedRoughness: "", frictionMargin: "" };
  return convertNumbers({ ...QUARRY, fields: { ...QUARRY.fields, ...blank, flow } }, units);
}

/** A duty with a pump selected for another flow, that runs slower than its curve there. */
function slowed(at: string, now: string): DutyText {
  const duty = quarryAt(at);
  const { ranking, ranked } = rankedOn(duty);
  const found = ranked.find(({ running }) => running.speedRatio < 1);
  if (found === undefined) throw new Error("no pump is slowed");
  return { ...quarryAt(now), pump: selectedPumpText(ranking, found, "US") };
}

function contextOf(duty: DutyText): PaneContext {
  return { state: { duty }, worked: workedOut(duty) } as unknown as PaneContext;
}

/** What the line of a selection says, without its markup. */
function said(duty: DutyText): string {
  const text = markup(reselectionView(contextOf(duty), duty.pump as PumpText));
  return text
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}

const SELECTIONS = SAMPLE_DUTIES.flatMap(({ name, duty }) => {
  const { otherPumps: _, ...alone } = duty;
  const { ranking, ranked } = rankedOn(alone);
  return ranked.map((one) => ({ id: `${one.pump.name} for ${name}`, duty: alone, ranking, one }));
});

describe("a pump that was selected", () => {
  // A law: nothing is said of a selection that stands as it was made.
  it.each(SELECTIONS)("says nothing as long as the duty stands: $id", ({ duty, ranking, one }) => {
    const typed = { ...duty, pump: selectedPumpText(ranking, one, duty.unitSet) };
    expect(reselection(typed)?.hasMoved ?? false).toBe(false);
    expect(said(typed)).toBe("");
    // Taken as it is ranked it is not short of the duty by a rounded figure.
    const head = workedOut(typed).verdicts.find(({ subject }) => subject === "head");
    expect([head?.text, ...(head?.besides ?? []).map(({ text }) => text)].join(" ")).not.toMatch(/Fails: head at/);
  });

  it("keeps the duty it was selected for, with units, and the limits of its table", () => {
    const { pump } = slowed("1000", "1000");
    expect(pump?.selectedFor?.flow).toBe("1000 US gpm");
    expect(pump?.selectedFor?.head).toMatch(/^\d+\.\d+ ft$/);
    expect(pump?.selectedFor?.maximumSpeed).toMatch(/^\d+ rpm$/);
  });

  it.each(["US", "SI", "METRIC"] as const)("keeps amounts that read back in units %s", (units: UnitSetName) => {
    const { ranking, ranked } = rankedOn(quarryAt("1000", units));
    const changed = ranked.flatMap((one) => {
      const pump = selectedPumpText(ranking, one, units);
      return reselection({ ...quarryAt("1150", units), pump }) ?? [];
    });
    expect(changed.length).toBeGreaterThan(0);
    for (const { before } of changed) expect(gpm(before.flow) / 1000).toBeCloseTo(1, 5);
    const pressed = { ...ranked[0], pump: { ...ranked[0]?.pump, limits: { greatestPressure: 300_000 } } } as RankedPump;
    const kept = selectedPumpText(ranking, pressed, units).selectedFor?.maximumPressure ?? "";
    const read = readAmount(kept, "gaugePressure", units, "casing");
    expect(read.ok && read.value).toBeCloseTo(300_000, -1);
  });

  it("stays as it is set when the duty changes, and its new speed meets the duty once it is taken", () => {
    const duty = slowed("1000", "1150");
    const again = reselection(duty);
    if (again?.set === undefined || duty.pump === undefined) throw new Error("no speed meets it");
    expect(gpm(again.before.flow)).toBeCloseTo(1000, 6);
    expect(gpm(again.now.flow)).toBeCloseTo(1150, 6);
    // The pump as it was set falls short: the finding this line exists for.
    const short = workedOut(duty).pump?.flowOverDuty;
    expect(short).toBeLessThan(-0.05);
    const before = openingState(duty);
    const pump = pumpSetAgain(duty.pump, again, "US");
    const set = next(before, { type: "pump-set", pump, what: "setting the speed", notice: "Speed set." });
    expect(workedOut(set.duty).pump?.headOverDuty).toBeGreaterThan(-1e-3);
    expect(Number(set.duty.pump?.speedRatio)).toBeGreaterThan(Number(duty.pump.speedRatio));
    expect(set.duty.pump?.points).toEqual(duty.pump.points);
    expect(reselection(set.duty)).toBeUndefined();
    const line = said(duty);
    expect(line).toMatch(
      /^Selected at 1,?000 US gpm and [\d.]+ ft; the duty is now 1,?150 US gpm and [\d.]+ ft. As it is set it is [\d.]+ % short of the flow. At [\d,]+ rpm it meets the duty, .* Open the ranking$/,
    );
    expect(Number(/is ([\d.]+) % short/.exec(line)?.[1])).toBeCloseTo(-100 * (short as number), 0);
    const rpm = Math.round(60 * (again.set.speed ?? 0));
    expect(Number(/Set speed to ([\d,]+) rpm/.exec(line)?.[1]?.replace(",", ""))).toBe(rpm);
    // One step back, and all stands as before.
    expect(set.past).toHaveLength(1);
    expect(next(set, { type: "undone" }).duty).toEqual(duty);
  });

  // Affinity by hand: a duty with no losses to speak of, so that the head stays; H ∝ n² on a curve flat at the duty.
  it("is given the speed at which its curve goes through the duty", () => {
    const again = reselection(slowed("1000", "1150"));
    const { set } = again ?? {};
    if (set === undefined || again === undefined) throw new Error("no speed meets it");
    expect(set.flow).toBeCloseTo(again.now.flow, 6);
    expect(set.head).toBeCloseTo(again.now.head, 3);
  });

  it("is offered no speed beyond its limits, with the reason", () => {
    const again = reselection(slowed("1000", "1900"));
    expect(again?.set).toBeUndefined();
    expect(["head-too-low", "curve-ends-before"]).toContain(again?.missed?.code);
    expect(said(slowed("1000", "1900"))).toMatch(
      /At no speed of its table, [\d,]+ rpm to [\d,]+ rpm, does it meet the duty: /,
    );
    expect(said(slowed("1000", "1900"))).not.toContain("Set speed");
  });

  it("is held by the pressure of its casing as its table has it", () => {
    const duty = slowed("1000", "1150");
    const selectedFor = { ...duty.pump?.selectedFor, flow: "1000 US gpm", head: "90 ft", maximumPressure: "5 psig" };
    const again = reselection({ ...duty, pump: { ...(duty.pump as PumpText), selectedFor } });
    expect([again?.set, again?.missed?.code]).toEqual([undefined, "pressure-too-high"]);
  });

  it("is offered no speed where its table gives no limits", () => {
    const duty = slowed("1000", "1150");
    const selectedFor = { flow: "1000 US gpm", head: "90 ft" };
    const again = reselection({ ...duty, pump: { ...(duty.pump as PumpText), selectedFor } });
    expect(again?.speeds).toBeUndefined();
    expect(again?.set?.onWater.speedRatio ?? 1).toBe(1);
  });

  it("says nothing of a pump by hand, of one beside unlike pumps, and of what cannot be read", () => {
    const duty = slowed("1000", "1150");
    const { selectedFor, ...byHand } = duty.pump as PumpText;
    expect(reselection({ ...duty, pump: byHand })).toBeUndefined();
    const flow = "a good deal";
    const head = selectedFor?.head ?? "";
    expect(reselection({ ...duty, pump: { ...byHand, selectedFor: { flow, head } } })).toBeUndefined();
    expect(reselection({ ...duty, fields: { ...duty.fields, flow: "" } })).toBeUndefined();
  });
});

describe("what a pump was selected for", () => {
  const duty = slowed("1000", "1000");

  it("is saved with the duty and read back, and may be absent", () => {
    const back = loadDuty(saveDuty(duty));
    expect(back.ok && [back.value.pump, back.findings]).toEqual([duty.pump, []]);
    expect(loadDuty(saveDuty(QUARRY)).ok).toBe(true);
  });

  it("is dropped with a curve that is typed, pasted or cut, and stays with its name, speed ratio and trim", () => {
    const after = (event: Parameters<typeof next>[1]) => next(openingState(duty), event).duty.pump;
    for (const place of [
      { pump: "points", row: 1, column: "head" },
      { pump: "speed" },
      { pump: "impellerDiameter" },
    ] as const) {
      expect(after({ type: "typed", place, text: "1" })?.selectedFor, JSON.stringify(place)).toBeUndefined();
    }
    for (const pump of ["name", "speedRatio", "trimRatio"] as const) {
      expect(after({ type: "typed", place: { pump }, text: "0.9" })?.selectedFor, pump).toEqual(duty.pump?.selectedFor);
    }
    const points = [EMPTY_CURVE_POINT];
    expect(after({ type: "curve-pasted", pasted: { points, about: {}, curves: 1 } })?.selectedFor).toBeUndefined();
    expect(after({ type: "point-removed", row: 0 })?.selectedFor).toBeUndefined();
    expect(after({ type: "block-pasted", rows: [["1"]], row: 0, column: "flow" })?.selectedFor).toBeUndefined();
  });
});
