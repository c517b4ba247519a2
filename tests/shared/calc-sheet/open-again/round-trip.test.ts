import { describe, expect, it } from "vitest";
import type { DutyText, SegmentText } from "../../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../../shared/duty/samples.ts";
import { dutyText, QUARRY, STRAIGHT_PUMP } from "../../../support/duty-of.ts";
import { INVENTED_DUTIES } from "../../../support/invented-duties.ts";
import { fileOf, openedAgain } from "../../../support/opened-again.ts";

const LONG = "A name that goes on & on <as names do>, \"quoted\", with 'marks', tabs\tand\nlines; ∅ 1,5 °C �� _x0041_ ";

const RUNS: readonly SegmentText[] = Array.from({ length: 24 }, (_, i) => ({
  pipe: i % 3 === 0 ? "8in sch40" : "DN 200 sch40",
  length: i % 2 === 0 ? `${i + 1}` : `${(i + 1) / 10} km`,
  fittings: i % 4 === 0 ? "" : `${i} elbow 90, 1 gate`,
}));

const DUTIES: readonly { readonly name: string; readonly duty: DutyText }[] = [
  ...SAMPLE_DUTIES.map(({ name, duty }) => ({ name, duty })),
  { name: "a minimal duty", duty: dutyText() },
  {
    name: "a motor at varying speed",
    duty: dutyText({ driver: "motor", motorStart: "VFD", leastSpeed: "1200" }, { pump: STRAIGHT_PUMP }),
  },
  ...INVENTED_DUTIES.filter(({ name }) => /comma|formulas|prices|unlike pumps in series/.test(name)),
  {
    name: "24 runs, cases and long texts",
    duty: dutyText(
      {
        project: LONG,
        exclusions: "civil works\n\ncables",
        reference: "=1+1",
        checkedBy: "007",
        runningHours: "1200 h",
      },
      {
        dischargeLine: RUNS,
        pump: { ...STRAIGHT_PUMP, name: LONG },
        cases: [
          { name: "high water", hours: "100", fields: { sourceLevel: "3 m" } },
          { name: "", hours: "", fields: { flow: "500", liquid: "sea water 10 C" } },
        ],
        revisions: [{ revision: "A", date: "2026-01-01", by: "X", change: "first" }],
        basis: { flow: "customer’s enquiry" },
      },
    ),
  },
  {
    name: "a pump selected for another duty",
    duty: {
      ...QUARRY,
      pump: {
        ...(QUARRY.pump ?? STRAIGHT_PUMP),
        selectedFor: { flow: "1000 US gpm", head: "90 ft", minimumSpeed: "900 rpm", maximumSpeed: "1780 rpm" },
      },
    },
  },
  {
    name: "sums in its boxes",
    duty: dutyText(
      { flow: "2*300 gpm = 600 US gpm", deliveryLevel: "=120+35 = 155", npshRequired: "2*3 = 6" },
      { dischargeLine: [{ pipe: "8in sch40", length: "3*40 + 12'6\" = 132.5 ft", fittings: "1 exit" }] },
    ),
  },
  {
    name: "blank rows among the runs",
    duty: dutyText(
      {},
      {
        dischargeLine: [
          { pipe: "", length: "", fittings: "" },
          ...RUNS.slice(0, 2),
          { pipe: "", length: "", fittings: "" },
        ],
      },
    ),
  },
  {
    name: "efficiencies as fractions",
    duty: {
      ...QUARRY,
      pump: {
        ...(QUARRY.pump as NonNullable<DutyText["pump"]>),
        points: (QUARRY.pump?.points ?? []).map((point) => ({
          ...point,
          efficiency: point.efficiency === "" ? "" : String(Number.parseFloat(point.efficiency) / 100),
        })),
      },
    },
  },
];

describe("a duty that goes to its sheets and comes back", () => {
  it.each(DUTIES)("is the same letter for letter: $name", ({ duty }) => {
    const { back, record } = openedAgain(fileOf(duty));
    expect(back.taken).toEqual([]);
    expect(back.remarks).toEqual([]);
    expect(back.duty).toEqual(duty);
    expect(record.revision).toBe(duty.fields.revision.trim());
  });
});
