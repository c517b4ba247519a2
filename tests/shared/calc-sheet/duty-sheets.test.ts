import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { dutySheets } from "../../../shared/calc-sheet/duty-sheets.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { bypass } from "../../support/bypass.ts";
import { dutyRead, dutyText } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";

const samples = SAMPLE_DUTIES.map(({ name, duty }) => ({ name, typed: duty }));

function sheetOf(typed: DutyText): SheetSpec {
  return sheetsOf(typed).duty;
}

/** What a keyed cell of the worked plan shows. */
function shown(typed: DutyText, key: string): number {
  return workOut(dutyPlan(dutyRead(typed))).cells.get(key) as number;
}

/** A duty around measured pipes and a described liquid, so that every figure is stated. */
const STATED = dutyText(
  {
    liquid: "999.70154017 kg/m3, 1.30590142065 mPa.s, pv 1.2282 kPa",
    flow: "150",
    sourceLevel: "-5",
    pumpLevel: "0",
    deliveryLevel: "9",
  },
  {
    unitSet: "SI",
    suctionLine: [{ pipe: "ID 303.18 mm rough 0.02 mm", length: "15", fittings: "K 2.1" }],
    dischargeLine: [{ pipe: "ID 303.18 mm rough 0.01 mm", length: "1600", fittings: "K 8.0, 1 exit" }],
  },
);

/** A line that climbs over a levee and falls to its outlet. */
const LEVEE_LINE = [
  { pipe: "18in HDPE DR17", length: "2000", fittings: "1 swing check", level: "640" },
  { pipe: "18in HDPE DR17", length: "2200", fittings: "1 exit", level: "612" },
];

describe("the calc sheet of a duty", () => {
  it("adds up to the head of a published-method case worked out elsewhere", () => {
    // Case 6-tdh-007 of tests/published/hydraulics-6-tdh.csv, found by another program: static 14 m, suction
    // 0.615848 m, discharge 17.669755 m without the exit, exit 0.220115 m.
    expect(shown(STATED, "staticHead")).toBe(14);
    expect(shown(STATED, "totalHead")).toBeCloseTo(32.5057183175, 7);
    expect(shown(STATED, "suctionPipe") + shown(STATED, "suctionFittings")).toBeCloseTo(0.615848210103, 9);
  });

  it("takes NPSH available from the stated pressures", () => {
    // Hand calculation: (101325 − 1228.2)/(999.70154 × 9.80665) − 5 − 0.615848 = 4.594232 m.
    expect(shown(STATED, "npshAvailable")).toBeCloseTo(4.594232, 5);
  });

  it.each(samples)("has no error in any worked cell: $name", ({ typed }) => {
    const { cells } = workOut(dutyPlan(dutyRead(typed)));
    const inError = [...cells].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
  });

  it.each(samples)("has build-ups that add up to what one function says: $name", ({ typed }) => {
    // The lines come of FRICTIONHEAD and FITTINGHEAD row by row, the totals of TDH and NPSHA over whole ranges.
    expect(Math.abs(shown(typed, "headCheck"))).toBeLessThan(1e-9);
    expect(Math.abs(shown(typed, "npshCheck"))).toBeLessThan(1e-9);
  });

  it.each(samples)("chains no more than three of our functions: $name", ({ typed }) => {
    const longest = longestChain(dutyPlan(dutyRead(typed)));
    expect(longest).toBeGreaterThan(0);
    expect(longest).toBeLessThanOrEqual(3);
  });

  it.each(samples)(
    "keeps every cell it prints inside the printed area, and says what stands below it: $name",
    ({ typed }) => {
      const sheet = sheetOf(typed);
      const area = boxOf(sheet.print?.area ?? "A1");
      expect(sheet.cells.filter(({ at }) => boxOf(at).right > area.right)).toEqual([]);
      const isBelow = ({ at }: { readonly at: string }): boolean => boxOf(at).top > area.bottom;
      const texts = sheet.cells.filter(isBelow).map(({ v }) => String(v));
      const said = texts.find((text) => text.startsWith("From here on not printed: "));
      const titles = sheet.cells.filter((cell) => isBelow(cell) && cell.style === "section" && /^B/.test(cell.at));
      for (const { v } of titles) expect(said).toContain(v);
      expect(titles.length).toBeGreaterThan(0);
      // No input but settings that stand as usual and what priming takes where nobody states anything of it.
      const topOf = ({ at }: { readonly at: string }): number => boxOf(at).top;
      const unlocked = sheet.cells.filter(
        (cell) => isBelow(cell) && cell.style !== undefined && sheet.styles[cell.style]?.unlocked === true,
      );
      const headOf = (row: number) => titles.filter((head) => topOf(head) < row).at(-1)?.v;
      for (const cell of unlocked) expect(["Settings as usual", "Priming"]).toContain(headOf(topOf(cell)));
      expect(texts.filter((text) => text === "stated" || text.startsWith("stated;"))).toEqual([]);
    },
  );

  it.each([...samples, { name: "a line with levels", typed: bypass({}, { dischargeLine: LEVEE_LINE }) }])(
    "prints every worked figure in a number format: $name",
    ({ typed }) => {
      const sheet = sheetOf(typed);
      const raw = sheet.cells.filter(
        ({ f, cached, style }) =>
          f !== undefined &&
          typeof cached === "number" &&
          !Number.isInteger(cached) &&
          style !== undefined &&
          sheet.styles[style]?.numFmt === undefined,
      );
      expect(raw.map(({ at, cached, style }) => [at, cached, style])).toEqual([]);
    },
  );

  it.each(samples)("puts nothing in a cell twice, save the frame of a spill: $name", ({ typed }) => {
    const seen = new Map<string, number>();
    for (const { at, v, f } of sheetOf(typed).cells) {
      if (v !== undefined || f !== undefined) seen.set(at, (seen.get(at) ?? 0) + 1);
    }
    expect([...seen].filter(([, times]) => times > 1)).toEqual([]);
  });

  it.each(samples)("names inputs and main results on the sheet: $name", ({ typed }) => {
    const names = sheetOf(typed).names ?? {};
    const wanted = [
      "flow",
      "source_level",
      "total_head",
      "total_head_with_margin",
      "npsh_available",
      "suction_line",
      "discharge_line",
    ];
    expect(Object.keys(names)).toEqual(expect.arrayContaining(wanted));
    for (const name of Object.keys(names)) expect(name).toMatch(/^([a-z]{4,}|[a-z]+\d?(_[a-z]+)+)$/);
  });

  it("writes every result as a formula and every stated figure as a constant of its own", () => {
    const { cells, names = {} } = sheetOf(STATED);
    const at = (name: string) => cells.find((cell) => cell.at === names[name]);
    expect(at("flow")).toMatchObject({ v: 150 });
    expect(at("source_level")).toMatchObject({ v: -5 });
    for (const name of ["density", "static_head", "total_head", "npsh_available", "total_head_with_margin"]) {
      expect(at(name)?.f, name).toBeTypeOf("string");
      expect(at(name)?.v, name).toBeUndefined();
    }
    expect(at("total_head")?.f).toMatch(/^DUTY\.TDH\(flow,static_head,suction_line,discharge_line,.*,"SI"\)$/);
  });

  it("keeps a text that begins with = as a text", () => {
    const typed = { ...STATED, fields: { ...STATED.fields, project: '=HYPERLINK("x")', item: "+1" } };
    const { cells, name } = sheetOf(typed);
    expect(cells.filter(({ v }) => v === '=HYPERLINK("x")')).toHaveLength(1);
    expect(cells.some(({ f }) => f?.includes("HYPERLINK"))).toBe(false);
    expect(name).toBe("Duty +1");
  });

  it("converts an amount with its own unit and says how it was given", () => {
    const typed = { ...STATED, unitSet: "US" as const, fields: { ...STATED.fields, flow: "100 L/s" } };
    const { cells, names = {} } = sheetOf(typed);
    const flow = cells.find(({ at }) => at === names["flow"]);
    // 100 L/s over 0.0630901964 L/s per US gpm (NIST SP 811).
    expect(flow?.v).toBeCloseTo(1585.0323, 3);
    const row = /\d+$/.exec(names["flow"] ?? "")?.[0];
    expect(cells.find(({ at }) => at === `E${row}`)?.v).toContain("given as 100 L/s");
  });

  it("adds the margin on losses as a line of its own", () => {
    const typed = { ...STATED, fields: { ...STATED.fields, frictionMargin: "10" } };
    const losses = shown(typed, "totalHead") - shown(typed, "staticHead");
    expect(shown(typed, "marginHead")).toBeCloseTo(0.1 * losses, 9);
    expect(shown(typed, "ratedHead")).toBeCloseTo(shown(typed, "totalHead") + 0.1 * losses, 9);
  });

  it("writes a run without fittings so that its cells still answer", () => {
    const typed = { ...STATED, suctionLine: [{ pipe: "ID 303.18 mm rough 0.02 mm", length: "15", fittings: "" }] };
    const { cells } = workOut(dutyPlan(dutyRead(typed)));
    expect(cells.get("suctionFittings")).toBe(0);
    // The suction line's K of 2.1 gone, 2.1 × 0.220115 m (V²/2g, case 6-tdh-007) less.
    expect(cells.get("totalHead")).toBeCloseTo(32.5057183175 - 2.1 * 0.220115126998, 7);
  });

  it("answers the same in every unit set", () => {
    const inSi = shown(STATED, "totalHead");
    const inMetric = shown({ ...STATED, unitSet: "METRIC", fields: { ...STATED.fields, flow: "540" } }, "totalHead");
    expect(Math.abs(inMetric / inSi - 1)).toBeLessThan(1e-12);
  });

  it("refuses an incomplete duty and says what is missing", () => {
    const sheet = dutySheets({ ...STATED, fields: { ...STATED.fields, flow: "" } });
    expect(sheet.ok).toBe(false);
    expect(sheet.findings).toEqual([expect.objectContaining({ code: "left-out", subject: "Flow" })]);
  });
});
