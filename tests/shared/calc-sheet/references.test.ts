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

function listed(typed: DutyText): readonly { readonly number: number; readonly text: string }[] {
  return rowsOf(typed).flatMap(({ A = "", B = "" }) => {
    const [, number] = /^\[(\d+)\]$/.exec(A) ?? [];
    return number === undefined ? [] : [{ number: Number(number), text: B }];
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
      const numbers = listed(duty).map(({ number }) => number);
      expect(numbers).toEqual(numbers.map((_, i) => i + 1));
      expect(numbers.length).toBeGreaterThan(8);
      const atLines = rowsOf(duty).flatMap(({ J = "" }) =>
        /^\[/.test(J) ? J.slice(1, -1).split(", ").map(Number) : [],
      );
      expect([...new Set(atLines)].sort((a, b) => a - b)).toEqual(numbers);
    },
  );

  it.each(SAMPLE_DUTIES)("name each document once and none of the program's own choices: $name", ({ duty }) => {
    const titles = listed(duty).map(({ text }) => text.split("): ")[0]);
    expect(new Set(titles).size).toBe(titles.length);
    for (const { text } of listed(duty)) expect(text).not.toMatch(/Common practice|own choice|not yet verified/);
    const rows = rowsOf(duty);
    const heading = rows.findIndex(({ B }) => B === "Assumptions of this program");
    expect(rows[heading + 1]?.["B"]).toMatch(/^Common practice, no source: /);
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
    const texts = listed(typed).map(({ text }) => text);
    const isListed = (source: SourceKey): boolean => texts.some((text) => text.startsWith(SOURCES[source].title));
    expect(cited.filter((source) => !isListed(source))).toEqual([]);
    expect(not.filter(isListed)).toEqual([]);
  });
});
