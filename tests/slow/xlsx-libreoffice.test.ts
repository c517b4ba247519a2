import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { type Cell, isCellError } from "../../shared/cells/cell.ts";
import { addressOf, boxOf } from "../../shared/ports/a1.ts";
import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../../shared/xlsx/to-sheet-spec.ts";
import { writeWorkbook } from "../../shared/xlsx/write-workbook.ts";
import { SAMPLE } from "../shared/xlsx/sample-sheet.ts";
import { converted, dotsOfColor, pagesOf } from "../support/libreoffice.ts";
import { BASELINE_JPEG, WIDE_PNG } from "../support/pictures.ts";

/** The sample with what the add-in answers in place of its calls; native formulas stay, and LibreOffice works them out. */
const ANSWERED: SheetSpec = {
  ...SAMPLE,
  cells: SAMPLE.cells.flatMap((cell): readonly CellSpec[] => {
    const { f, spill, cached, ...rest } = cell;
    if (f?.startsWith("DUTY.") !== true) return cell.at === "E13" ? [] : [cell];
    const { top, left } = boxOf(cell.at);
    const rows = (Array.isArray(cached) ? cached : [[cached]]) as readonly (readonly Cell[])[];
    return rows.flatMap((row, i) =>
      row.map((value, j) => {
        const at = addressOf(top + i, left + j);
        return isCellError(value) ? { ...rest, at, f: value.error, cached: value } : { ...rest, at, v: value };
      }),
    );
  }),
};

// An outside reader of the file format: what LibreOffice shows and saves of a sheet.
describe("a sheet opened in LibreOffice", () => {
  const file = writeWorkbook({ sheets: [ANSWERED], properties: { title: "Sample" } });
  let pdf: Uint8Array;
  let csv: string;
  beforeAll(async () => {
    pdf = await converted(file, "pdf");
    csv = new TextDecoder().decode(await converted(file, "csv"));
  });

  it("shows the answers the add-in gave and those of native formulas", () => {
    const lines = csv.split("\n");
    expect(lines[1]).toContain("=not a formula");
    expect(lines[4]).toContain("2.28");
    expect(lines[5]).toContain("4.56");
    expect(lines[7]).toContain("#N/A");
    expect(lines[9]).toContain('"Flow, L/s, Pipe, Velocity"');
    // 20 × 60.25 + 40 × 55 + 60 × 46.5 + 80 × 34.75, worked out by LibreOffice itself from an array formula.
    expect(lines[10]).toContain("8975");
    expect(lines[14]).toContain("40,30.5");
  });

  it("prints two pages, broken where asked, the title row on both, all columns on each", async () => {
    const { count, text } = await pagesOf(pdf);
    expect(count).toBe(2);
    const [first = "", second = ""] = text.split("\f");
    expect(first).toContain("Page 1 of 2");
    expect(second).toContain("after the break");
    for (const page of [first, second]) expect(page.match(/Duty sheet/g)).toHaveLength(2);
    expect(first).toContain("30.5");
  });

  it("draws the chart with its titles and its curve", async () => {
    const { text } = await pagesOf(pdf);
    for (const words of ["Pump & system", "Flow, L/s", "Head, m", "Efficiency"]) expect(text).toContain(words);
    const withoutChart = await converted(writeWorkbook({ sheets: [{ ...ANSWERED, charts: [] }] }), "pdf");
    const [curve, none] = [await dotsOfColor(pdf, 1, "#3B7A57"), await dotsOfColor(withoutChart, 1, "#3B7A57")];
    expect(curve).toBeGreaterThan(100);
    expect(none).toBe(0);
  });

  it("saves names, drop-downs, merges and conditional formats again, as we read them", async () => {
    const outcome = readWorkbook(await converted(file, "xlsx"));
    if (!outcome.ok) throw new Error(outcome.refusal.message);
    const sheet = outcome.workbook.sheets.find(({ name }) => name === SAMPLE.name);
    if (sheet === undefined) throw new Error("the sheet is gone");
    const spec = toSheetSpec(sheet);
    expect(spec.names).toMatchObject(SAMPLE.names ?? {});
    expect(spec.merges).toEqual(SAMPLE.merges);
    expect(spec.lists?.find(({ ref }) => ref === "B4")?.items).toEqual(SAMPLE.lists?.[0]?.items);
    expect(spec.lists?.find(({ ref }) => ref === "B10")?.items).toEqual(SAMPLE.lists?.[1]?.items);
    expect(spec.lists?.find(({ ref }) => ref === "B11")?.items).toEqual({ from: "A14:A18" });
    expect(spec.rules?.[0]).toMatchObject({ ref: "B14:B18", when: "$B14<50" });
    const at = (address: string) => spec.cells.find((cell) => cell.at === address);
    expect(at("B5")?.v).toBe(2.28);
    expect(at("B6")).toMatchObject({ f: "2*B5", cached: 4.56 });
    expect(at("A2")?.v).toBe("=not a formula");
    expect(at("A20")?.v).toContain('line two\u0007 _x0041_ <&> "quoted"');
  });

  it("shows a picture in its own proportions, and saves it byte for byte", async () => {
    const pictures = [
      { at: "D3:E8", type: "png", base64: WIDE_PNG, widthPx: 120, heightPx: 48, altText: "Logo" },
      { at: "E9:E12", type: "jpeg", base64: BASELINE_JPEG, widthPx: 120, heightPx: 48, altText: "Logo again" },
    ] as const;
    const drawn = writeWorkbook({ sheets: [{ ...ANSWERED, pictures }] });
    // The bar of the picture.
    expect(await dotsOfColor(await converted(drawn, "pdf"), 1, "#B5541C")).toBeGreaterThan(
      (await dotsOfColor(pdf, 1, "#B5541C")) + 300,
    );
    const saved = unzipSync(await converted(drawn, "xlsx"));
    const media = Object.entries(saved).filter(([path]) => path.startsWith("xl/media/"));
    expect(media.map(([, bytes]) => Buffer.from(bytes).toString("base64")).sort()).toEqual(
      [WIDE_PNG, BASELINE_JPEG].sort(),
    );
    const xml = Object.entries(saved).find(([path]) => /^xl\/drawings\/drawing\d\.xml$/.test(path))?.[1];
    const shapes = (strFromU8(xml as Uint8Array).match(/<xdr:pic>.*?<\/xdr:pic>/gs) ?? []).map((shape) =>
      /<a:ext cx="(\d+)" cy="(\d+)"\/>/.exec(shape),
    );
    expect(shapes).toHaveLength(2);
    for (const shape of shapes) expect(Number(shape?.[1]) / Number(shape?.[2])).toBeCloseTo(120 / 48, 2);
  });
});
