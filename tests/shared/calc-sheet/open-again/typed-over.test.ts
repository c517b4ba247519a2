import { describe, expect, it } from "vitest";
import type { Scalar } from "../../../../shared/cells/cell.ts";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../../shared/duty/samples.ts";
import { addressOf, boxOf, rangeOf } from "../../../../shared/ports/a1.ts";
import { RECORD_NAME, WORKINGS_NAME } from "../../../../shared/ports/sheet-record.ts";
import type { CellSpec, SheetSpec } from "../../../../shared/ports/sheet-spec.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { setOfDuty } from "../../../support/laid-out.ts";
import { after, dutiesAfter, dutiesInFile, type Edit, fileOf } from "../../../support/opened-again.ts";

const PRICED: DutyText = { ...QUARRY, fields: { ...QUARRY.fields, directCost: "46000", margin: "20" } };

function specOf(duty: DutyText, kind: RegExp): SheetSpec {
  const set = setOfDuty(duty);
  return set.sheets(set.wanted).find(({ name }) => kind.test(name)) as SheetSpec;
}

const WORKINGS = /workings/i;
const isFormula = ({ f }: CellSpec): boolean => f !== undefined;

/** What stands in these cells of a sheet is typed over, or taken away. */
function over(kind: RegExp, wanted: (cell: CellSpec) => boolean, v: Scalar): Edit {
  return (sheets) =>
    sheets.map((sheet) =>
      kind.test(sheet.name)
        ? {
            ...sheet,
            cells: sheet.cells.flatMap((cell) => {
              if (!wanted(cell)) return [cell];
              return v === null ? [] : [{ at: cell.at, v }];
            }),
          }
        : sheet,
    );
}

/** A row is put in above this one. */
function rowAbove(kind: RegExp, row: number): Edit {
  const moved = (at: string): string => {
    const box = boxOf(at);
    const by = (of: number): number => (of >= row ? of + 1 : of);
    return rangeOf({ ...box, top: by(box.top), bottom: by(box.bottom) });
  };
  return (sheets) =>
    sheets.map((sheet) =>
      kind.test(sheet.name)
        ? {
            ...sheet,
            cells: sheet.cells.map((cell) => ({ ...cell, at: moved(cell.at) })),
            names: Object.fromEntries(Object.entries(sheet.names ?? {}).map(([name, at]) => [name, moved(at)])),
          }
        : sheet,
    );
}

const texts = (duty: DutyText, ...edits: readonly Edit[]): readonly string[] =>
  after(duty, ...edits).remarks.map(({ text }) => text);

describe("formulas of the workings typed over", () => {
  const { cells, name: sheetName } = specOf(QUARRY, WORKINGS);
  const formulas = cells.filter(isFormula);
  const [first] = formulas as [CellSpec];

  it("are none on sheets as they were written", () => {
    for (const { duty } of SAMPLE_DUTIES) expect(texts(duty)).toEqual([]);
  });

  it("are named with their cell, their table and what they hold", () => {
    const one = ({ at }: CellSpec): boolean => at === first.at;
    const said = new RegExp(
      `^A formula was typed over on “${sheetName}”: ${first.at}, of “.+”, holds 12345\\. Not taken: all is worked out again\\.$`,
    );
    expect(texts(QUARRY, over(WORKINGS, one, 12345))).toEqual([expect.stringMatching(said)]);
    expect(texts(QUARRY, over(WORKINGS, one, null))).toEqual([expect.stringContaining(`${first.at}, of `)]);
    expect(texts(QUARRY, over(WORKINGS, one, null))).toEqual([expect.stringContaining("is empty. Not taken")]);
  });

  it("are all of them, each counted once", () => {
    const [said = "", ...others] = texts(QUARRY, over(WORKINGS, isFormula, 0));
    expect(others).toEqual([]);
    expect(formulas.length).toBeGreaterThan(300);
    expect(said).toMatch(
      new RegExp(`^${formulas.length} formulas were typed over .*; and ${formulas.length - 5} more\\. `),
    );
  });

  it("come to what the file itself says", () => {
    const one = ({ at }: CellSpec): boolean => at === first.at;
    const [found] = dutiesInFile(fileOf(QUARRY, over(WORKINGS, one, 12345)));
    expect(found?.back.remarks.map(({ kind, text }) => [kind, text])).toEqual([
      ["overwritten", expect.stringContaining(`${first.at}, of `)],
    ]);
    expect(found?.back.duty).toEqual(QUARRY);
    expect(dutiesInFile(fileOf(QUARRY))[0]?.back.remarks).toEqual([]);
  });

  it("are found where rows were put in above them, and not told of a table that was changed itself", () => {
    const last = formulas.at(-1) as CellSpec;
    const was = boxOf(last.at);
    const now = addressOf(was.top + 1, was.left);
    const label = cells.find(({ style }) => style === "workingLabel") as CellSpec;
    const moved = rowAbove(WORKINGS, boxOf(label.at).top);
    const one = ({ at }: CellSpec): boolean => at === now;
    expect(texts(QUARRY, moved)).toEqual([]);
    expect(texts(QUARRY, moved, over(WORKINGS, one, 7))).toEqual([expect.stringContaining(`${now}, of `)]);
    expect(texts(QUARRY, rowAbove(WORKINGS, boxOf(first.at).top))).toEqual([
      expect.stringMatching(/^Rows were put in or taken out on “.*”, at “[^;]+”: whether its formulas stand cannot/),
    ]);
  });

  it("leave the workings no duty of their own, with the record or without", () => {
    const alone: Edit = (sheets) => sheets.filter(({ name }) => WORKINGS.test(name));
    expect(dutiesAfter(QUARRY, alone)).toEqual([]);
    expect(specOf(QUARRY, WORKINGS).names).toMatchObject({
      [RECORD_NAME]: expect.anything(),
      [WORKINGS_NAME]: expect.anything(),
    });
    const [found, ...others] = dutiesAfter(QUARRY);
    expect(others).toEqual([]);
    expect(found?.sheet).not.toMatch(WORKINGS);
  });
});

describe("formulas at the foot of the estimate typed over", () => {
  const ESTIMATE = /estimate/i;

  it("are told beside those of the page", () => {
    const { cells, names } = specOf(PRICED, ESTIMATE);
    const foot = boxOf(names?.[RECORD_NAME] ?? "").bottom;
    const below = cells.filter((cell) => isFormula(cell) && boxOf(cell.at).top > foot);
    const isBelow = ({ at }: CellSpec): boolean => below.some((cell) => cell.at === at);
    expect(below.length).toBeGreaterThan(10);
    expect(texts(PRICED)).toEqual([]);
    expect(texts(PRICED, over(ESTIMATE, isBelow, 1))).toEqual([
      expect.stringMatching(new RegExp(`^${below.length} formulas were typed over on “P-101 estimate”`)),
    ]);
  });
});
