import { describe, expect, it } from "vitest";
import { curve } from "../../../shared/catalogue/parameters/curve.ts";
import { line } from "../../../shared/catalogue/parameters/line.ts";
import { pumpTable } from "../../../shared/catalogue/parameters/pump-table.ts";
import { route } from "../../../shared/catalogue/parameters/route.ts";
import { seriesPumps } from "../../../shared/catalogue/parameters/series-pumps.ts";
import { systemCurve } from "../../../shared/catalogue/parameters/system-curve.ts";
import type { Cell } from "../../../shared/cells/cell.ts";
import { CURVE_COLUMNS, PUMP_COLUMNS } from "../../../shared/pump-table/columns.ts";
import { readPumpList } from "../../../shared/pump-table/pump-list.ts";
import { columnFinder } from "../../../shared/tables/column.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { andThen, type Result } from "../../../src/basis/result.ts";

// The grammar of headings is a choice of this product; common practice, no source.

type Rows = readonly (readonly Cell[])[];

interface Kind {
  readonly kind: string;
  readonly read: (rows: Rows) => Result<unknown>;
  /** A good table in US units, its column of lengths second. */
  readonly heading: readonly string[];
  readonly rows: Rows;
  /** The heading of the second column, as its findings call it, and in other spellings. */
  readonly column: string;
  readonly spellings: readonly string[];
}

const reading = { name: "table", unitSet: "US", units: UNIT_SETS.US } as const;
const POINTS: Rows = [
  [0, 140],
  [300, 128],
  [600, 88],
];

const KINDS: readonly Kind[] = [
  {
    kind: "a line",
    read: (rows) => line("").read(rows, reading),
    heading: ["pipe", "length"],
    rows: [
      ["6in sch40", 100],
      ["4in sch40", 50],
    ],
    column: "length",
    spellings: ["LENGTH", "Developed length", "FT"],
  },
  {
    kind: "a route",
    read: (rows) =>
      andThen(route("").read(rows, reading), (placed) => placed({ startLevel: 0, outletLevel: null, altitude: null })),
    heading: ["chainage", "elevation", "pipe"],
    rows: [
      [0, 10, "6in sch40"],
      [500, 60, null],
      [900, 20, null],
    ],
    column: "elevation",
    spellings: ["Level", "ELEVATION:"],
  },
  {
    kind: "a curve",
    read: (rows) => curve.read(rows, reading),
    heading: ["flow", "head"],
    rows: POINTS,
    column: "head",
    spellings: ["H", "T.D.H.", "Total head", "FT", "(ft)"],
  },
  {
    kind: "a system curve",
    read: (rows) => systemCurve.read(rows, reading),
    heading: ["flow", "head"],
    rows: [
      [0, 60],
      [300, 83],
      [600, 148],
    ],
    column: "head",
    spellings: ["H", "TDH", "FT"],
  },
  {
    kind: "pumps in series",
    read: (rows) => seriesPumps.read(rows, reading),
    heading: ["pump", "maximum head"],
    rows: [
      ["A", 100],
      ["B", 120],
    ],
    column: "maximum head",
    spellings: ["HEAD", "Shut-off head"],
  },
  {
    kind: "a table of pump curves",
    read: (rows) => pumpTable.read(rows, reading),
    heading: ["pump", "head", "flow"],
    rows: POINTS.map(([flow, head]) => ["A", head, flow] as Cell[]),
    column: "head",
    spellings: ["H", "Total dynamic head", "FT"],
  },
  {
    kind: "a list of pumps",
    read: (rows) => readPumpList(rows, { place: { name: "table" }, units: UNIT_SETS.US }),
    heading: ["pump", "solids passage"],
    rows: [
      ["A", 2],
      ["B", 3],
    ],
    column: "solids passage",
    spellings: ["SOLIDS", "Largest solid"],
  },
];

/** What was read, without the rows of the sheet it stood in. */
function valuesOf(result: Result<unknown>): unknown {
  if (!result.ok) throw new Error(wordsOf(result));
  return JSON.parse(
    JSON.stringify(result.value, (key, value) => (["row", "units", "outline"].includes(key) ? undefined : value)),
  );
}

function wordsOf({ findings }: Result<unknown>): string {
  return findings.map((finding) => `${finding.kind}: ${findingText(finding, "US")}`).join("\n");
}

describe.each(KINDS)("the heading of $kind", ({ read, heading, rows, column, spellings }) => {
  const others = heading.filter((name) => name !== column);
  const at = heading.indexOf(column);
  const headed = (name: string): readonly string[] => heading.map((one, i) => (i === at ? name : one));
  const good = valuesOf(read([heading, ...rows]));
  /** One of its figures in metres or millimetres, whatever the unit set says. */
  const inUnit = (perUnit: number): Rows =>
    rows.map((row) => row.map((cell, i) => (i === at ? (cell as number) * perUnit : cell)));
  const perUnit = column === "solids passage" ? 0.0254 : 0.3048;
  const close = (result: Result<unknown>): void => {
    const rounded = (value: unknown): unknown =>
      JSON.parse(JSON.stringify(value, (_, one) => (typeof one === "number" ? Number(one.toPrecision(9)) : one)));
    expect(rounded(valuesOf(result))).toEqual(rounded(good));
  };

  it.each(spellings)("may say %s", (name) => {
    expect(valuesOf(read([headed(name), ...rows]))).toEqual(good);
  });

  it("may stand in any order and any case", () => {
    const turned = [[...heading].reverse(), ...rows.map((row) => heading.map((_, i) => row[i] ?? null).reverse())];
    expect(valuesOf(read(turned))).toEqual(good);
    expect(valuesOf(read([heading.map((name) => name.toUpperCase()), ...rows]))).toEqual(good);
  });

  it.each([", m", " (m)", " [m]", " / m", ": m", " in m", " m"])("takes its unit from “%s” behind the name", (unit) => {
    close(read([headed(`${column}${unit}`), ...inUnit(perUnit)]));
  });

  it("takes its unit from a row of units below", () => {
    close(read([heading, heading.map((_, i) => (i === at ? "(m)" : null)), ...inUnit(perUnit)]));
  });

  it("refuses a row of units that says otherwise", () => {
    const units = heading.map((_, i) => (i === at ? "ft" : null));
    expect(wordsOf(read([headed(`${column}, m`), units, ...rows]))).toMatch(
      /unit “ft” but the heading above it says m/,
    );
  });

  it("may have titles and blank rows above it, and blank rows below", () => {
    const title = ["Job of the week", null, null];
    const blank = heading.map(() => null);
    expect(valuesOf(read([title, blank, heading, blank, ...rows, blank]))).toEqual(good);
  });

  it("says which row above it looks like one of the table", () => {
    const first = rows[0] as readonly Cell[];
    const words = wordsOf(read([first, heading, ...rows]));
    expect(words).toMatch(/^check: Table row 1 stands above the heading and is not read\.$/m);
  });

  it("refuses a unit of another kind, and one nobody knows", () => {
    expect(wordsOf(read([headed(`${column} (gpm)`), ...rows]))).toContain(
      `error: Table column “${column}” was given as “gpm”, a unit of another kind`,
    );
    expect(wordsOf(read([headed(`${column}, bathtubs`), ...rows]))).toContain(
      `error: Table column “${column}” has the unit “bathtubs”, which is not known`,
    );
  });

  it("says which headings it does not read", () => {
    const more = [
      [...heading, "sweetness", "my notes"],
      ...rows.map((row) => [...row, ...Array(heading.length - row.length).fill(null), 1, "x"]),
    ];
    const result = read(more);
    expect(valuesOf(result)).toEqual(good);
    expect(wordsOf(result)).toContain("check: Table is not read where it is headed “sweetness”, “my notes”");
  });

  it("refuses a column headed twice", () => {
    expect(wordsOf(read([[...heading, `${column}, m`], ...rows]))).toContain(
      `error: Table column “${column}” is named by more than one heading: “${column}” and “${column}, m”; keep one.`,
    );
  });

  it("refuses figures without their column", () => {
    const without = read([others, ...rows.map((row) => row.filter((_, i) => i !== at))]);
    expect(without.ok).toBe(column === "solids passage");
  });

  it("reads numbers kept as text, and texts with their own unit", () => {
    const texts = rows.map((row) => row.map((cell) => (typeof cell === "number" ? String(cell) : cell)));
    expect(valuesOf(read([heading, ...texts]))).toEqual(good);
    const unit = column === "solids passage" ? "in" : "ft";
    const withUnits = rows.map((row) => row.map((cell, i) => (i === at ? `${String(cell)} ${unit}` : cell)));
    expect(valuesOf(read([headed(`${column}, m`), ...withUnits]))).toEqual(good);
  });

  it("has rows under it", () => {
    expect(wordsOf(read([heading]))).toMatch(/^error: Table has no filled rows; give rows of /);
    expect(wordsOf(read([heading, heading.map(() => null)]))).toMatch(/no filled rows/);
  });

  it("names table, row and column of a cell that cannot be read", () => {
    const wrong = rows.map((row, i) => row.map((cell, j) => (i === 1 && j === at ? "about ten" : cell)));
    expect(wordsOf(read([heading, ...wrong]))).toContain(`error: Table row 3: ${column} is not a number: “about ten”`);
  });
});

describe("a name that holds a mark itself", () => {
  it("is found before its unit", () => {
    expect(columnFinder(CURVE_COLUMNS)(["NPSH (R), m", "N.P.S.H. (r) [ft]", "T.D.H. (ft)"])).toEqual([
      { key: "npshRequired", unitText: "m" },
      { key: "npshRequired", unitText: "ft" },
      { key: "head", unitText: "ft" },
    ]);
  });
});

describe("a unit standing alone", () => {
  const find = (...cells: readonly string[]) => columnFinder(CURVE_COLUMNS)(cells).map((one) => one?.key);

  it("heads flow, head, power and speed of a pump", () => {
    expect(find("GPM", "FT", "BHP", "RPM")).toEqual(["flow", "head", "power", "speed"]);
    expect(find("Capacity", "Ft.", "Eff %", "BHP")).toEqual(["flow", "head", "efficiency", "power"]);
    expect(find("Q m3/h", "H m", "NPSHr m")).toEqual(["flow", "head", "npshRequired"]);
    expect(find("m³/h", "m", "(kW)", "1/min")).toEqual(["flow", "head", "power", "speed"]);
  });

  it("heads nothing where another heading names its column", () => {
    expect(find("Q (gpm)", "ft", "H / m", "hp")).toEqual(["flow", undefined, "head", "power"]);
  });

  it("heads no column of a list of pumps", () => {
    expect(columnFinder(PUMP_COLUMNS)(["rpm", "mm", "psi"]).map((one) => one?.key)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("is read in that unit", () => {
    const rows = [["GPM", "FT", "BHP"], ...POINTS.map(([q, h]) => [q, h, 20] as Cell[])];
    const metric = { ...reading, unitSet: "SI", units: UNIT_SETS.SI } as const;
    const read = curve.read(rows, metric);
    // 1 US gpm = 231 in³/min, 1 ft = 0.3048 m, exactly; 1 hp = 550 ft·lbf/s (NIST SP 811).
    expect(read.ok && read.value.points[1]?.flow).toBeCloseTo((300 * 231 * 0.0254 ** 3) / 60, 12);
    expect(read.ok && read.value.points[1]?.head).toBeCloseTo(128 * 0.3048, 12);
    expect(read.ok && read.value.points[1]?.power).toBeCloseTo(20 * 745.699_871_582, 6);
  });
});

describe("a table without a heading", () => {
  it("is read in its usual order", () => {
    for (const { kind, read, heading, rows } of KINDS) {
      if (!/line|route|curve$/.test(kind)) continue;
      expect(valuesOf(read(rows)), kind).toEqual(valuesOf(read([heading, ...rows])));
    }
  });

  it("is refused where it begins with words, or where it must have one", () => {
    const words = ["what", "ever", "this is"];
    for (const { kind, read, rows } of KINDS) {
      expect(wordsOf(read([words, ...rows])), kind).toMatch(/^error: Table has no heading that names its columns/);
    }
  });

  it("is refused where a row has more than the columns it may have", () => {
    expect(wordsOf(line("").read([["6in sch40", 10, "1 gate", "1/2", 5, "x"]], reading))).toBe(
      "error: Table row 1 was given as x; give pipe, length, fittings, share, level, or a header row that names them.",
    );
  });
});
