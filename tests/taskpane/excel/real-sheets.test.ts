import { beforeEach, describe, expect, it } from "vitest";
import { type Cell, isCellError } from "../../../shared/cells/cell.ts";
import { addressOf, boxOf } from "../../../shared/ports/a1.ts";
import { absoluteReference } from "../../../shared/ports/reference.ts";
import type { CellSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { valuesOf } from "../../../shared/ports/sheet-values.ts";
import { addSheets } from "../../../taskpane/excel/add-sheets.ts";
import { areaBox } from "../../support/excel/addresses.ts";
import { cellsOf, type MemorySheet } from "../../support/memory-sheet.ts";
import { REAL_SETS } from "../../support/real-sets.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

let host: WorkbookHost;

beforeEach(() => {
  host = new WorkbookHost();
  Object.assign(globalThis, {
    Excel: host.Excel,
    Office: { context: { requirements: { isSetSupported: () => true } } },
  });
});

/** As Excel tells a value: an error by its code, nothing as an empty text. */
function told(cell: Cell): unknown {
  return isCellError(cell) ? cell.error : (cell ?? "");
}

function answerOf({ cached, spill }: CellSpec): unknown {
  if (Array.isArray(cached)) return (cached as readonly (readonly Cell[])[]).map((row) => row.map(told));
  const alone = told((cached ?? null) as Cell);
  return spill === undefined ? alone : [[alone]];
}

/** What the sheet shows of an area's property by row or column: "rowHeight" by 1-based row. */
function sizes(sheet: MemorySheet, key: "rowHeight" | "columnWidth"): Readonly<Record<number, unknown>> {
  const found: Record<number, unknown> = {};
  for (const [area, format] of Object.entries(sheet.formats)) {
    if (format[key] === undefined) continue;
    const { top, bottom, left, right } = areaBox(area);
    const [from, to] = key === "rowHeight" ? [top + 1, bottom + 1] : [left, right];
    for (let i = from; i <= to; i += 1) found[i] = format[key];
  }
  return found;
}

async function shownOn(name: string): Promise<ReadonlyMap<string, unknown>> {
  return host.Excel.run(async (context) => {
    const used = context.workbook.worksheets.getItem(name).getUsedRange().load("values,rowIndex,columnIndex");
    await context.sync();
    const { rowIndex, columnIndex } = used;
    return new Map(
      (used.values as readonly (readonly unknown[])[]).flatMap((row, i) =>
        row.map((value, j) => [addressOf(rowIndex + i, columnIndex + j), value] as const),
      ),
    );
  });
}

describe.each(REAL_SETS)("the sheets of everyday in Excel: $name", ({ made }) => {
  it("arrive whole: every cell, name, merge, size, list, rule, chart, and every answer that spills", async () => {
    const set = made();
    const names = await addSheets(set, []);
    const specs = set.sheets(names);
    expect(specs.flatMap(({ cells }) => cells).length).toBeGreaterThan(700);
    const cells = new Map(
      specs.flatMap((spec) => spec.cells.map((cell) => [`${spec.name}!${cell.at}`, cell] as const)),
    );
    host.worksOut = (sheet, at) => answerOf(cells.get(`${sheet}!${at}`) as CellSpec);
    for (const spec of specs) {
      const sheet = host.sheet(spec.name);
      expect(sheet.cells, spec.name).toEqual(contentsOf(spec));
      expect(sheet.names, spec.name).toEqual(spec.names ?? {});
      expect(sheet.merges.toSorted(), spec.name).toEqual([...(spec.merges ?? [])].toSorted());
      expect(offersOf(sheet), spec.name).toEqual(offersMeant(spec));
      expect(ruledBy(sheet.rules), spec.name).toEqual(ruledBy(spec.rules ?? []));
      expect(sheet.charts.map(({ series }) => series.length)).toEqual(
        (spec.charts ?? []).map(({ series }) => series.length),
      );
      expect(sheet.breaks).toEqual((spec.print?.breaks ?? []).map((row) => `A${row + 1}`));
      expect(sizes(sheet, "rowHeight"), spec.name).toEqual({ ...spec.rowHeights });
      expect(Object.keys(sizes(sheet, "columnWidth"))).toHaveLength(spec.columns.length);
      const shown = await shownOn(spec.name);
      const wanted = [...valuesOf(spec)].map(([at, value]) => [at, told(value)] as const);
      const other = wanted.filter(([at, value]) => (shown.get(at) ?? "") !== value);
      expect(other, spec.name).toEqual([]);
      expect([...shown.values()]).not.toContain("#SPILL!");
      const spills = spec.cells.flatMap(({ spill }) => (spill === undefined ? [] : [boxOf(spill)]));
      expect(spills.every(({ top, left }) => shown.has(addressOf(top, left)))).toBe(true);
    }
  });
});

/** What each cell offers to choose from: several cells may share one list. */
function offersOf({ lists }: MemorySheet): Readonly<Record<string, string>> {
  return byCell(
    Object.entries(lists).map(([ref, { rule }]) => [ref, (rule as { list: { source: string } }).list.source]),
  );
}

function offersMeant({ lists = [] }: SheetSpec): Readonly<Record<string, string>> {
  return byCell(
    lists.map(({ ref, items }) => [ref, "from" in items ? `=${absoluteReference(items.from)}` : items.join(",")]),
  );
}

function byCell(offers: readonly (readonly [ref: string, source: string])[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    offers.flatMap(([ref, source]) =>
      cellsOf(boxOf(ref))
        .flat()
        .map((at) => [at, source] as const),
    ),
  );
}

/** The cells that rules colour. */
function ruledBy(rules: readonly { readonly ref: string }[]): readonly string[] {
  const cells = rules.flatMap(({ ref }) => cellsOf(boxOf(ref)).flat());
  return [...new Set(cells)].toSorted();
}

function contentsOf({ cells }: SheetSpec): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    cells.flatMap(({ at, f, v = null }) => {
      if (f !== undefined) return [[at, `=${f}`] as const];
      return v === null || v === "" ? [] : [[at, v] as const];
    }),
  );
}
