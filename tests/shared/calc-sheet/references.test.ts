import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { SOURCES, type SourceKey } from "../../../src/basis/citation.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

/** Cells of the sheet of a duty as they are printed, by column, rows in order. */
function rowsOf(typed: DutyText): readonly Readonly<Record<string, string>>[] {
  const rows = new Map<number, Record<string, string>>();
  for (const { at, v, cached } of sheetsOf(typed).duty.cells) {
    const text = v ?? cached;
    const [, column = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
    if (text === undefined || text === null) continue;
    const cells = rows.get(Number(row)) ?? {};
    cells[column] = String(text);
    rows.set(Number(row), cells);
  }
  return [...rows].sort(([a], [b]) => a - b).map(([, cells]) => cells);
}

/** The documents under these headings, wherever their running text is cut into paragraphs. */
function listed(
  typed: DutyText,
  ...headings: readonly string[]
): readonly { readonly number: number; readonly text: string }[] {
  const rows = rowsOf(typed);
  const texts = headings.flatMap((heading) => {
    const after = rows.slice(rows.findIndex(({ B }) => B === heading) + 1);
    const end = after.findIndex(({ A = "", B = "" }) => /^\d+$/.test(A) && !B.endsWith(", continued"));
    return after.slice(0, end < 0 ? undefined : end).flatMap(({ A = "" }) => (A.startsWith("[") ? [A] : []));
  });
  return texts
    .join(" ")
    .split(/(?<=\.) (?=\[\d+\] )/)
    .map((one) => {
      const [, number, text = ""] = /^\[(\d+)\] (.*)$/.exec(one) ?? [];
      return { number: Number(number), text };
    });
}

const PRINTED = ["References"] as const;
const ALL = ["References", "References of what is not printed"] as const;

/** "[4–6, 9]" as 4, 5, 6, 9. */
function numbersIn(text: string): readonly number[] {
  return text
    .slice(1, -1)
    .split(", ")
    .flatMap((part) => {
      const [first = 0, last = first] = part.split("–").map(Number);
      return Array.from({ length: last - first + 1 }, (_, i) => first + i);
    });
}

const METRIC = (SAMPLE_DUTIES[1] as (typeof SAMPLE_DUTIES)[number]).duty;
const SEA = (SAMPLE_DUTIES[2] as (typeof SAMPLE_DUTIES)[number]).duty;
const SAND = (SAMPLE_DUTIES[3] as (typeof SAMPLE_DUTIES)[number]).duty;

const SEA_WATER: readonly SourceKey[] = ["sharqawy-2010", "nayar-2016"];
const GLYCOL: readonly SourceKey[] = ["melinder-2010"];
const COLD: readonly SourceKey[] = ["murphy-koop-2005"];
const MOTOR: readonly SourceKey[] = ["nema-mg1", "iec-60072-1", "iec-60034-30-1", "en-50347", "nfpa-70"];
const ENGINE: readonly SourceKey[] = ["sae-j617", "sae-j620", "iso-3046-1", "nfpa-20"];
const PN: readonly SourceKey[] = ["en-1092-1", "en-1092-2", "en-1514-1"];
const CLASS: readonly SourceKey[] = ["asme-b16.1", "asme-b16.42", "asme-b16.5", "asme-b16.21"];

interface Case {
  readonly name: string;
  readonly typed: DutyText;
  readonly cited: readonly SourceKey[];
  readonly not: readonly SourceKey[];
}

describe("the references of a sheet", () => {
  it.each(SAMPLE_DUTIES)(
    "stand at the lines that rest on them, each number in the list and at a line: $name",
    ({ duty }) => {
      const numbers = listed(duty, ...ALL).map(({ number }) => number);
      expect(numbers).toEqual(numbers.map((_, i) => i + 1));
      expect(numbers.length).toBeGreaterThan(8);
      const atLines = rowsOf(duty).flatMap(({ J = "" }) => (/^\[/.test(J) ? numbersIn(J) : []));
      expect([...new Set(atLines)].sort((a, b) => a - b)).toEqual(numbers);
    },
  );

  it.each(SAMPLE_DUTIES)("name each document once and none of the program's own choices: $name", ({ duty }) => {
    const titles = listed(duty, ...ALL).map(({ text }) => text.split(": ")[0]);
    expect(new Set(titles).size).toBe(titles.length);
    for (const { text } of listed(duty, ...ALL)) expect(text).not.toMatch(/Common practice|own choice/);
    const rows = rowsOf(duty);
    const heading = rows.findIndex(({ B }) => B === "Assumptions of this program");
    expect(rows[heading + 1]?.["A"]).toMatch(/^Common practice, no source: /);
  });

  it.each<Case>([
    {
      name: "cold plain water, an engine, Class 150",
      typed: QUARRY,
      cited: ["iapws-if97", "asme-b16.5", "asme-b16.42", "sae-j617", "awwa-m55"],
      not: [...SEA_WATER, ...GLYCOL, ...COLD, ...MOTOR, ...PN, "iso-4427", "en-545", "iso-15156", "asme-b16.1"],
    },
    {
      name: "the same with grey iron",
      typed: dutyText({ casingMaterial: "grey iron" }, QUARRY),
      cited: ["asme-b16.1"],
      not: ["asme-b16.42"],
    },
    {
      name: "the same with a motor",
      typed: dutyText({ driver: "motor" }, QUARRY),
      cited: ["nema-mg1"],
      not: [...ENGINE, "iec-60072-1", "en-50347"],
    },
    {
      name: "the same with PN 16 flanges",
      typed: dutyText({ flangeClass: "PN16" }, QUARRY),
      cited: ["en-1092-2"],
      not: CLASS,
    },
    {
      name: "the same with glycol",
      typed: dutyText({ liquid: "ethylene glycol 40 %" }, QUARRY),
      cited: GLYCOL,
      not: [...SEA_WATER, ...COLD, "iapws-if97"],
    },
    {
      name: "water in metric units",
      typed: METRIC,
      cited: ["iapws-if97"],
      not: [...SEA_WATER, ...GLYCOL, ...MOTOR, ...CLASS],
    },
    { name: "sea water", typed: SEA, cited: SEA_WATER, not: [...GLYCOL, ...COLD] },
    {
      name: "a motor at 50 Hz",
      typed: SAND,
      cited: ["iec-60034-30-1"],
      not: [...ENGINE, ...SEA_WATER, ...CLASS, "nema-mg1"],
    },
  ])("are those of the branch taken: $name", ({ typed, cited, not }) => {
    const texts = listed(typed, ...PRINTED).map(({ text }) => text);
    // A standard goes by its number.
    const isListed = (source: SourceKey): boolean => {
      const { title } = SOURCES[source];
      const [number = title] = title.split(", ");
      return texts.some(
        (text) => text.startsWith(title) || (/^[ :]/.test(text.replace(number, "")) && text.startsWith(number)),
      );
    };
    expect(cited.filter((source) => !isListed(source))).toEqual([]);
    expect(not.filter(isListed)).toEqual([]);
  });
});
