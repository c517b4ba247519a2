import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { FIELD_KEYS, type FieldKey } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import { VERDICT_STATES, type VerdictState, type VerdictSubject } from "../../../src/judgement/verdict.ts";
import { dutyText } from "../../support/duty-of.ts";

/** The invented duties that hold a pump. */
const DUTIES = SAMPLE_DUTIES.filter(({ duty }) => duty.pump !== undefined);

function states(typed: DutyText): ReadonlyMap<VerdictSubject, VerdictState> {
  return new Map(shownVerdicts(decodeDuty(typed).duty).map(({ subject, state }) => [subject, state]));
}

/** 0 for fail, the gravest. */
function rank(state: VerdictState): number {
  return VERDICT_STATES.indexOf(state);
}

/** A stated amount raised step by step: the field, its values from the duty's own on, and what it can only worsen. */
const RAISED: readonly (readonly [FieldKey, readonly number[], unit: string, readonly VerdictSubject[]])[] = [
  ["sourcePressure", [0, 5, 20, 60, 200, 400], "psi", ["pressure", "pipe", "bolting"]],
  // More pressure to pump against throttles a pump that gives too much: head may improve.
  ["deliveryPressure", [0, 5, 20, 60, 200], "psi", ["pressure", "pipe", "bolting"]],
  ["temperature", [20, 30, 38, 45, 55, 61, 75, 90], "°C", ["npsh", "pressure", "pipe", "bolting", "priming"]],
  ["altitude", [300, 900, 1100, 1600, 2100, 3100, 4000], "m", ["npsh", "driver", "priming"]],
  ["solids", [5, 10, 20, 30, 40], "%", ["head", "npsh", "solids", "pressure", "pipe", "bolting", "driver", "priming"]],
];

/** Left out, other pumps run: another station, not the same with less said of it. */
const OF_THE_STATION: readonly FieldKey[] = ["pumpsRunning", "arrangement"];

describe.each(DUTIES)("the verdicts on $name", ({ duty }) => {
  // By reason: each of these makes the task harder for the subjects named, so that no verdict on them may improve.
  it.each(RAISED)("never improve as %s rises", (key, values, unit, subjects) => {
    const worst = new Map<VerdictSubject, number>();
    for (const value of values) {
      const found = states(dutyText({ [key]: `${value} ${unit}` }, duty));
      for (const subject of subjects) {
        const state = found.get(subject);
        if (state === undefined || (state === "open" && !worst.has(subject))) continue;
        const before = worst.get(subject) ?? rank("pass");
        expect(rank(state), `${subject} at ${value} ${unit}`).toBeLessThanOrEqual(before);
        worst.set(subject, rank(state));
      }
    }
  });

  it("never improve as the pump is lifted", () => {
    const source = Number.parseFloat(duty.fields.sourceLevel);
    const worst = new Map<VerdictSubject, number>();
    for (const lift of [0.5, 2, 4, 8, 16, 24, 30]) {
      const level = String(source + lift);
      const found = states(dutyText({ pumpLevel: level }, duty));
      for (const subject of ["head", "npsh", "pressure", "priming"] as const) {
        const state = found.get(subject) as VerdictState;
        expect(rank(state), `${subject} at a lift of ${lift}`).toBeLessThanOrEqual(worst.get(subject) ?? rank("pass"));
        worst.set(subject, rank(state));
      }
    }
  });

  it("do not turn from fail to pass because less is said: a figure left out never excuses what it broke", () => {
    const stated = states(duty);
    for (const key of FIELD_KEYS) {
      if (duty.fields[key].trim() === "") continue;
      const found = states(dutyText({ [key]: "" }, duty));
      for (const [subject, state] of stated) {
        if (state !== "fail") continue;
        expect(found.get(subject), `${subject} without ${key}`).not.toBe("pass");
      }
    }
  });

  it("do not turn from fail to pass because more is said", () => {
    const stated = states(duty);
    for (const key of FIELD_KEYS) {
      if (duty.fields[key].trim() === "" || OF_THE_STATION.includes(key)) continue;
      for (const [subject, state] of states(dutyText({ [key]: "" }, duty))) {
        if (state === "fail") expect(stated.get(subject), `${subject} with ${key}`).not.toBe("pass");
      }
    }
  });
});
