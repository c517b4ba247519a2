import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { type WorkedPlan, workOut } from "../../../shared/calc-sheet/work-out.ts";
import { call } from "../../../shared/catalogue/call.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { CaseText, DutyText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { HOSTILE, hostilePlaces, othersFor } from "../../support/hostile-places.ts";

/** Of all samples together. */
const EDITS = 100;

const CASES: readonly CaseText[] = [
  { name: "low", hours: "100", fields: { sourceLevel: "1 m" } },
  { name: "warm", hours: "", fields: { temperature: "30 degC", pumpsRunning: "2" } },
];

/** The samples, each with two cases. */
const DUTIES: readonly DutyText[] = SAMPLE_DUTIES.map(({ duty }) => ({ ...duty, cases: CASES }));

/** A row more, a row less, a case more or less, or the units. */
const WHOLE: readonly ((typed: DutyText) => DutyText)[] = [
  (typed) => ({ ...typed, dischargeLine: [...typed.dischargeLine, ...typed.dischargeLine.slice(-1)] }),
  (typed) => ({ ...typed, dischargeLine: typed.dischargeLine.slice(0, Math.max(1, typed.dischargeLine.length - 1)) }),
  (typed) => ({ ...typed, suctionLine: [...typed.suctionLine, ...typed.suctionLine.slice(0, 1)].slice(-3) }),
  (typed) => ({ ...typed, cases: [...(typed.cases ?? []), ...CASES].slice(0, 4) }),
  (typed) => ({ ...typed, cases: (typed.cases ?? []).slice(1) }),
  (typed) => ({ ...typed, unitSet: typed.unitSet === "US" ? "METRIC" : "US" }),
];

/** One change of one box, to a good text or a bad one; now and then of a row, a case or the units. */
function edited(typed: DutyText, [which, kind, text]: readonly [number, number, number]): DutyText {
  const of = <T>(list: readonly T[], number: number): T => list[number % list.length] as T;
  if (kind % 8 === 0) return of(WHOLE, which)(typed);
  const box = of(hostilePlaces(typed), which);
  const good = [...othersFor(box), box.own, ""];
  return box.holding(kind % 8 < 7 ? of(good, text) : of(HOSTILE, text));
}

function planOf(typed: DutyText) {
  return dutyPlan(decodeDuty(typed).duty);
}

/** Cell by cell, finding by finding, table by table. */
function textsOf({ cells, findings, ranges }: WorkedPlan): ReadonlyMap<string, string> {
  const parts = { cells, findings, ranges };
  return new Map(
    Object.entries(parts).flatMap(([part, map]) =>
      [...map].map(([key, held]) => [`${part} ${key}`, JSON.stringify(held)] as const),
    ),
  );
}

function differences(one: WorkedPlan, other: WorkedPlan): readonly string[] {
  const [a, b] = [textsOf(one), textsOf(other)];
  return [...new Set([...a.keys(), ...b.keys()])].filter((key) => a.get(key) !== b.get(key));
}

/** The same function without anything that its parameters have read before, nor what was found of the lines they read. */
function forgetful(entry: Entry): Entry {
  return { ...entry, parameters: entry.parameters.map(([key, parameter]) => [key, { ...parameter }]) };
}

/** Calls of a plan whose answers are others where they are made anew, nothing remembered. */
function oldAnswers({ calls }: WorkedPlan): readonly string[] {
  return [...calls].flatMap(([entry, made]) =>
    made.flatMap(({ args, outcome }) =>
      JSON.stringify(call(forgetful(entry), args)) === JSON.stringify(outcome) ? [] : [entry.id],
    ),
  );
}

/** Collects all that nothing holds any more; what was looked at is held to the end of its turn. */
async function collect(): Promise<void> {
  setFlagsFromString("--expose-gc");
  const gc = runInNewContext("gc") as () => void;
  await new Promise((resolve) => setTimeout(resolve, 0));
  gc();
}

describe("a plan worked out after another", () => {
  it("does not keep the one before the last", async () => {
    const [start] = DUTIES;
    const cells: WeakRef<WorkedPlan["cells"]>[] = [];
    let last: WorkedPlan | undefined;
    for (let flow = 100; flow < 106; flow += 1) {
      last = workOut(
        planOf({ ...(start as DutyText), fields: { ...(start as DutyText).fields, flow: `${flow} gpm` } }),
        last,
      );
      cells.push(new WeakRef(last.cells));
    }
    await collect();
    expect(cells.map((one) => one.deref() !== undefined)).toEqual([false, false, false, false, false, true]);
    expect(last?.cells.get("flow")).toBe(105);
  });

  it.each(DUTIES.map((typed, i) => [SAMPLE_DUTIES[i]?.name, typed, i] as const))(
    "answers as one worked out alone, cell by cell, whatever was changed: %s",
    (_, start, sample) => {
      let typed = start;
      let worked = workOut(planOf(typed));
      let remembered = 0;
      const step = fc.tuple(fc.nat(), fc.nat(), fc.nat());
      const all = fc.sample(step, EDITS);
      for (const [i, change] of all.filter((__, edit) => edit % DUTIES.length === sample).entries()) {
        const before = worked;
        // From the start again now and then, for a duty of bad texts alone works little out.
        typed = edited(i % 10 === 0 ? start : typed, change);
        worked = workOut(planOf(typed), before);
        const kept = new Set([...before.calls.values()].flat());
        remembered += [...worked.calls.values()].flat().filter((made) => kept.has(made)).length;
        expect([i, differences(worked, workOut(planOf(typed)))]).toEqual([i, []]);
        if (i % 5 === 4) expect([i, oldAnswers(worked)]).toEqual([i, []]);
      }
      expect(remembered).toBeGreaterThan(EDITS);
    },
    300_000,
  );
});
