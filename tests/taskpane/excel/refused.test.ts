import { beforeEach, describe, expect, it } from "vitest";
import { cellsOf } from "../../support/memory-sheet.ts";
import { WIDE_PNG } from "../../support/pictures.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

/*
 * What Excel takes and what it refuses, asked of the workbook in memory through the maker's library. Sources of the
 * limits stand in tests/support/excel/limits.ts.
 */

let host: WorkbookHost;

beforeEach(() => {
  host = new WorkbookHost();
});

type Ask = (sheet: Excel.Worksheet, context: Excel.RequestContext) => unknown;

async function asked(ask: Ask): Promise<void> {
  await host.Excel.run(async (context) => {
    ask(context.workbook.worksheets.getItem("Sheet1"), context);
    await context.sync();
  });
}

/** The code of the refusal, "taken" where there was none. */
async function outcome(ask: Ask): Promise<string> {
  return asked(ask).then(
    () => "taken",
    (thrown: { readonly code?: string }) => thrown.code ?? String(thrown),
  );
}

function formula(text: string): Ask {
  return (sheet) => {
    sheet.getRange("A1").formulas = [[text]];
  };
}

const long = (letters: number): string => "x".repeat(letters);

interface Case {
  readonly what: string;
  readonly taken: Ask;
  readonly refused: Ask;
  /** InvalidArgument where left out. */
  readonly code?: string;
}

const CASES: readonly Case[] = [
  {
    what: "the height of a row",
    taken: (sheet) => {
      sheet.getRange("1:1").format.rowHeight = 409.5;
    },
    refused: (sheet) => {
      sheet.getRange("1:1").format.rowHeight = 500;
    },
  },
  {
    what: "the width of a column",
    taken: (sheet) => {
      sheet.getRange("A:A").format.columnWidth = (255 * 7 + 5) * 0.75;
    },
    refused: (sheet) => {
      sheet.getRange("A:A").format.columnWidth = (300 * 7 + 5) * 0.75;
    },
  },
  { what: "a formula that does not end", taken: formula("=SUM((1))"), refused: formula("=SUM((") },
  { what: "a formula without its second half", taken: formula("=A2+1"), refused: formula("=A2+") },
  {
    what: "a long formula",
    taken: formula(`=${"1+".repeat(4095)}1`),
    refused: formula(`=${"1+".repeat(4500)}1`),
    code: "FormulaLengthExceedsLimit",
  },
  { what: "a long text in a formula", taken: formula(`="${long(255)}"`), refused: formula(`="${long(300)}"`) },
  {
    what: "functions within functions",
    taken: formula(`=${"ABS(".repeat(60)}1${")".repeat(60)}`),
    refused: formula(`=${"ABS(".repeat(65)}1${")".repeat(65)}`),
  },
  {
    what: "a reference to a sheet that is not there",
    taken: formula("='Sheet1'!A2"),
    refused: formula("='Not there'!A2"),
  },
  ...["TDH1", "R", "c", "R1C1", "a b", "1st", "a-b", long(256), ""].map(
    (name): Case => ({
      what: `the name ${name.slice(0, 9)}`,
      taken: (sheet) => sheet.names.add("flow", sheet.getRange("A1")),
      refused: (sheet) => sheet.names.add(name, sheet.getRange("A1")),
    }),
  ),
  {
    what: "two names but for case",
    taken: (sheet) => [sheet.names.add("flow", sheet.getRange("A1")), sheet.names.add("head", sheet.getRange("A1"))],
    refused: (sheet) => [sheet.names.add("flow", sheet.getRange("A1")), sheet.names.add("Flow", sheet.getRange("A2"))],
  },
  {
    what: "merges that overlap",
    taken: (sheet) => [sheet.getRange("A1:B2").merge(), sheet.getRange("C1:D2").merge()],
    refused: (sheet) => [sheet.getRange("A1:B2").merge(), sheet.getRange("B2:C3").merge()],
    code: "MergedRangeConflict",
  },
  {
    what: "a page header",
    taken: (sheet) => {
      sheet.pageLayout.headersFooters.defaultForAllPages.leftHeader = long(253);
    },
    refused: (sheet) => {
      sheet.pageLayout.headersFooters.defaultForAllPages.leftHeader = long(400);
    },
  },
  {
    what: "a page footer in two parts",
    taken: (sheet) => {
      sheet.pageLayout.headersFooters.defaultForAllPages.leftFooter = long(125);
      sheet.pageLayout.headersFooters.defaultForAllPages.rightFooter = long(126);
    },
    refused: (sheet) => {
      sheet.pageLayout.headersFooters.defaultForAllPages.leftFooter = long(126);
      sheet.pageLayout.headersFooters.defaultForAllPages.rightFooter = long(126);
    },
  },
  {
    what: "the title of a chart",
    taken: (sheet) => {
      chartOn(sheet).title.text = long(255);
    },
    refused: (sheet) => {
      chartOn(sheet).title.text = long(400);
    },
  },
  { what: "a long text", taken: formula(long(32_767)), refused: formula(long(40_000)) },
  { what: "a long text marked as one", taken: formula(`'${long(32_767)}`), refused: formula(`'${long(32_768)}`) },
  {
    what: "a number format",
    taken: (sheet) => {
      sheet.getRange("A1").numberFormat = [['#,##0.0" m"']];
    },
    refused: (sheet) => {
      sheet.getRange("A1").numberFormat = [["nonsense"]];
    },
  },
  {
    what: "a colour",
    taken: (sheet) => {
      sheet.getRange("A1").format.font.color = "#12435C";
    },
    refused: (sheet) => {
      sheet.getRange("A1").format.font.color = "#12435";
    },
  },
  {
    what: "the size of letters",
    taken: (sheet) => {
      sheet.getRange("A1").format.font.size = 409;
    },
    refused: (sheet) => {
      sheet.getRange("A1").format.font.size = 900;
    },
  },
  {
    what: "the formula of a rule",
    taken: (sheet) => {
      sheet.getRange("A1").conditionalFormats.add("Custom").custom.rule.formula = "=A1>2";
    },
    refused: (sheet) => {
      sheet.getRange("A1").conditionalFormats.add("Custom").custom.rule.formula = "=A1>(";
    },
  },
  {
    what: "an alignment",
    taken: (sheet) => {
      sheet.getRange("A1").format.horizontalAlignment = "Center";
    },
    refused: (sheet) => {
      sheet.getRange("A1").format.horizontalAlignment = "Middle" as "Center";
    },
  },
  {
    what: "the last cell",
    taken: (sheet) => sheet.getRange("XFD1048576").merge(),
    refused: (sheet) => sheet.getRange("XFE1").merge(),
  },
  {
    what: "the last row",
    taken: (sheet) => sheet.getRange("1:1048576").format.font,
    refused: (sheet) => sheet.getRange("A1:A1048577").merge(),
  },
  {
    what: "where a page ends",
    taken: (sheet) => sheet.horizontalPageBreaks.add("A2"),
    refused: (sheet) => sheet.horizontalPageBreaks.add("A1"),
  },
  {
    what: "many ends of pages",
    taken: (sheet) => breaks(sheet, 1026),
    refused: (sheet) => breaks(sheet, 1027),
  },
  {
    what: "the scale of a page",
    taken: (sheet) => {
      sheet.pageLayout.zoom = { scale: 10 };
    },
    refused: (sheet) => {
      sheet.pageLayout.zoom = { scale: 9 };
    },
  },
  {
    what: "a list in a rule of cells",
    taken: (sheet) => {
      sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source: long(255) } };
    },
    refused: (sheet) => {
      sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source: long(256) } };
    },
  },
  {
    what: "a hint",
    taken: (sheet) => {
      sheet.getRange("A1").dataValidation.prompt = { showPrompt: true, title: long(32), message: long(255) };
    },
    refused: (sheet) => {
      sheet.getRange("A1").dataValidation.prompt = { showPrompt: true, title: long(33), message: "" };
    },
  },
  ...["a:b", "a/b", "[a]", "what?", "'a", "a'", "History", long(32), ""].map(
    (name): Case => ({
      what: `the sheet name ${name.slice(0, 9)}`,
      taken: (_, { workbook }) => workbook.worksheets.add("P-101A B's"),
      refused: (_, { workbook }) => workbook.worksheets.add(name),
    }),
  ),
  {
    what: "a sheet name that stands",
    taken: (sheet) => {
      sheet.name = "SHEET1";
    },
    refused: (_, { workbook }) => workbook.worksheets.add("SHEET1"),
    code: "ItemAlreadyExists",
  },
  {
    what: "a sheet, a name, a chart that is not there",
    taken: (_, { workbook }) => workbook.worksheets.getItemOrNullObject("Nowhere"),
    refused: (_, { workbook }) => workbook.worksheets.getItem("Nowhere").activate(),
    code: "ItemNotFound",
  },
  {
    what: "a picture",
    taken: (sheet) => sheet.shapes.addImage(WIDE_PNG),
    refused: (sheet) => sheet.shapes.addImage("bm8gcGljdHVyZQ=="),
  },
  {
    what: "rows as many as the range has",
    taken: (sheet) => {
      sheet.getRange("A1:A2").values = [[1], [2]];
    },
    refused: (sheet) => {
      sheet.getRange("A1:A3").values = [[1], [2]];
    },
  },
];

function chartOn(sheet: Excel.Worksheet): Excel.Chart {
  return sheet.charts.add("XYScatter", sheet.getRange("A1:B3"), "Columns");
}

function breaks(sheet: Excel.Worksheet, count: number): void {
  for (let row = 2; row < count + 2; row += 1) sheet.horizontalPageBreaks.add(`A${row}`);
}

describe("Excel in memory", () => {
  it.each(CASES)("knows what is too much: $what", async ({ taken, refused, code = "InvalidArgument" }) => {
    expect(await outcome(taken)).toBe("taken");
    host = new WorkbookHost();
    expect(await outcome(refused)).toBe(code);
  });

  it("keeps what came before the action it refused, and nothing after it", async () => {
    const code = await outcome((sheet) => {
      sheet.getRange("A1").values = [[1]];
      sheet.getRange("A2").formulas = [["=SUM(("]];
      sheet.getRange("A3").values = [[3]];
    });
    expect(code).toBe("InvalidArgument");
    expect(host.sheet("Sheet1").cells).toEqual({ A1: 1 });
  });

  it.each([
    ["a filled cell", { A1: "=SPILL()", B2: 5 }, []],
    ["a merge", { A1: "=SPILL()" }, ["B1:B2"]],
    ["another spill", { B1: "=SPILL()", A1: "=SPILL()" }, []],
  ])("shows #SPILL! where an answer would run over %s", async (_, cells, merges) => {
    const sheet = host.sheet("Sheet1");
    host.answers["=SPILL()"] = [
      [1, 2],
      [3, 4],
    ];
    Object.assign(sheet.cells, { A1: "=SPILL()" });
    expect(await valuesAt("A1:B2")).toEqual([
      [1, 2],
      [3, 4],
    ]);
    for (const at of Object.keys(sheet.cells)) delete sheet.cells[at];
    Object.assign(sheet.cells, cells);
    sheet.merges.push(...merges);
    expect((await valuesAt("A1:B2"))[0]?.[0]).toBe("#SPILL!");
  });

  it("keeps nothing under a merge but its first cell", async () => {
    await asked((sheet) => {
      sheet.getRange("A1:B1").values = [[1, 2]];
      sheet.getRange("A1:B1").merge();
    });
    expect(host.sheet("Sheet1").cells).toEqual({ A1: 1 });
    await asked((sheet) => {
      sheet.getRange("B1").values = [[3]];
    });
    expect(host.sheet("Sheet1").cells).toEqual({ A1: 1 });
  });

  it("writes more than 1,500 cells in pieces, and every one arrives", async () => {
    const values = Array.from({ length: 700 }, (_, i) => [i, 1 - i, i / 2]);
    await asked((sheet) => {
      sheet.getRange("B3:D702").values = values;
    });
    const { cells } = host.sheet("Sheet1");
    expect(host.kinds.flat().some((kind) => kind.includes("_ValidateArraySize"))).toBe(true);
    expect(cellsOf({ top: 2, left: 1, bottom: 701, right: 3 }).map((row) => row.map((at) => cells[at]))).toEqual(
      values,
    );
  });

  it.each<[string, Ask]>([
    ["contents", (sheet) => (sheet.getRange("A1").values = [[1]])],
    ["formats", (sheet) => (sheet.getRange("A1").format.font.bold = true)],
    ["number formats", (sheet) => (sheet.getRange("A1").numberFormat = [["0"]])],
    ["heights", (sheet) => (sheet.getRange("1:1").format.rowHeight = 20)],
    ["names", (sheet) => sheet.names.add("flow", sheet.getRange("A1"))],
    ["merges", (sheet) => sheet.getRange("A1:B1").merge()],
    ["rules", (sheet) => sheet.getRange("A1").conditionalFormats.add("Custom")],
    ["lists", (sheet) => (sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source: "a" } })],
    ["charts", chartOn],
    ["pictures", (sheet) => sheet.shapes.addImage(WIDE_PNG)],
    ["pages", (sheet) => (sheet.pageLayout.orientation = "Landscape")],
    ["page headers", (sheet) => (sheet.pageLayout.headersFooters.defaultForAllPages.leftHeader = "a")],
    ["page breaks", (sheet) => sheet.horizontalPageBreaks.add("A5")],
    ["frozen rows", (sheet) => sheet.freezePanes.freezeRows(2)],
    ["gridlines", (sheet) => (sheet.showGridlines = false)],
  ])("takes no %s on a protected sheet", async (_, ask) => {
    expect(await outcome(ask)).toBe("taken");
    host = new WorkbookHost();
    host.protected.add("Sheet1");
    const before = host.snapshot();
    expect(await outcome(ask)).toBe("AccessDenied");
    expect(host.snapshot()).toBe(before);
  });

  it("takes contents of unlocked cells of a protected sheet", async () => {
    await asked((sheet) => {
      sheet.getRange("B2:B9").format.protection.locked = false;
      sheet.protection.protect();
    });
    const fill =
      (at: string): Ask =>
      (sheet) =>
        (sheet.getRange(at).values = [[1]]);
    expect(await outcome(fill("B3"))).toBe("taken");
    expect(await outcome(fill("C3"))).toBe("AccessDenied");
    expect(await outcome((sheet) => sheet.protection.protect())).toBe("InvalidOperation");
  });

  it.each<[string, Ask]>([
    ["added", (_, { workbook }) => workbook.worksheets.add("New")],
    ["named", (sheet) => (sheet.name = "Other")],
    ["deleted", (sheet) => sheet.delete()],
  ])("has no sheet %s where the structure is protected", async (_, ask) => {
    host.isStructureProtected = true;
    const before = host.snapshot();
    expect(await outcome(ask)).toBe("AccessDenied");
    expect(host.snapshot()).toBe(before);
  });

  it("lets only what was loaded be read", async () => {
    await host.Excel.run(async (context) => {
      const sheets = context.workbook.worksheets.load("items/name");
      const sheet = context.workbook.worksheets.getItem("Sheet1").load("id");
      await context.sync();
      expect(sheets.items.map(({ name }) => name)).toEqual(["Sheet1"]);
      expect(() => sheets.items[0]?.id).toThrow("not available");
      expect(sheet.id).toBe("sheet-1");
      expect(() => sheet.name).toThrow("not available");
    });
  });

  it("counts formatted cells as used, unless only values are asked for", async () => {
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange("B2").values = [[1]];
      sheet.getRange("D5:E6").format.font.bold = true;
      sheet.getRange("A:C").format.columnWidth = 40;
      const [used, filled] = [sheet.getUsedRange(), sheet.getUsedRangeOrNullObject(true)];
      for (const range of [used, filled]) range.load("address,rowCount,columnCount");
      await context.sync();
      expect([used.address, used.rowCount, used.columnCount]).toEqual(["Sheet1!B2:E6", 5, 4]);
      expect([filled.address, filled.rowCount, filled.columnCount]).toEqual(["Sheet1!B2", 1, 1]);
    });
  });

  it("tells a text that begins like an error from an error", async () => {
    await asked((sheet) => (sheet.getRange("A1:C1").values = [["'#1 pump", "'#N/A", "=NA()"]]));
    host.answers["=NA()"] = "#N/A";
    await host.Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:D1").load("values,valueTypes");
      await context.sync();
      expect(range.values).toEqual([["#1 pump", "#N/A", "#N/A", ""]]);
      expect(range.valueTypes).toEqual([["String", "String", "Error", "Empty"]]);
    });
  });

  it("takes requests and gives answers of 5 MB at most", async () => {
    const fill: Ask = (sheet) => (sheet.getRange("A1:A300").values = Array.from({ length: 300 }, () => [long(20_000)]));
    expect(await outcome(fill)).toBe("RequestPayloadSizeLimitExceeded");
    expect(host.sheet("Sheet1").cells).toEqual({});
    for (let row = 1; row <= 300; row += 1) host.sheet("Sheet1").cells[`A${row}`] = long(20_000);
    expect(await outcome((sheet) => sheet.getRange("A1:A300").load("values"))).toBe("ResponsePayloadSizeLimitExceeded");
  });

  it("refuses while a cell is being edited, or waits where it may", async () => {
    host.editCell();
    const fill: Ask = (sheet) => (sheet.getRange("A1").values = [[1]]);
    expect(await outcome(fill)).toBe("InvalidOperationInCellEditMode");
    let isDone = false;
    const waiting = host.Excel.run({ delayForCellEdit: true }, async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A2").values = [[2]];
      await context.sync();
      isDone = true;
    });
    await host.settled();
    expect([isDone, host.sheet("Sheet1").cells]).toEqual([false, {}]);
    host.leaveCell();
    await waiting;
    expect([isDone, host.sheet("Sheet1").cells]).toEqual([true, { A2: 2 }]);
  });

  it("knows nothing of a member whose requirement set it has not", async () => {
    host.supports = (set, version) => set !== "ExcelApi" || Number(version) < 1.9;
    expect(await outcome((sheet) => sheet.shapes.addImage(WIDE_PNG))).toBe("ApiNotFound");
    expect(await outcome((sheet) => (sheet.getRange("A1").values = [[1]]))).toBe("taken");
  });

  it("tells how it calculates", async () => {
    host.calculationMode = "Manual";
    await host.Excel.run(async (context) => {
      const { application } = context.workbook;
      application.suspendApiCalculationUntilNextSync();
      application.suspendScreenUpdatingUntilNextSync();
      application.load("calculationMode");
      await context.sync();
      expect(application.calculationMode).toBe("Manual");
    });
  });

  it("carries out what stands beside a range that is let go of", async () => {
    await asked((sheet, { workbook }) => {
      const range = sheet.getRange("A1").load("values");
      workbook.worksheets.getItem("Sheet1").getRange("B1").values = [[2]];
      range.untrack();
    });
    expect(host.sheet("Sheet1").cells).toEqual({ B1: 2 });
  });
});

async function valuesAt(address: string): Promise<readonly (readonly unknown[])[]> {
  return host.Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange(address).load("values");
    await context.sync();
    return range.values;
  });
}
