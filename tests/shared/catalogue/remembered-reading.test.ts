import { describe, expect, it } from "vitest";
import type { RangeParameter, Reading } from "../../../shared/catalogue/parameter.ts";
import { readRange, settle, settledReading } from "../../../shared/catalogue/remembered-reading.ts";
import type { Cell } from "../../../shared/cells/cell.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { succeed } from "../../../src/basis/result.ts";

type Cells = readonly (readonly Cell[])[];

const US: Reading = { name: "curve", unitSet: "US", units: UNIT_SETS.US };

/** A parameter that says what it was given, and how often it was asked. */
function told(): { readonly parameter: RangeParameter<string>; readonly count: () => number } {
  let asked = 0;
  const parameter: RangeParameter<string> = {
    takes: "range",
    about: "anything",
    example: "anything",
    read: (cells, { name, units }) => {
      asked += 1;
      const shown = cells.map((row) =>
        row.map((cell) => `${typeof cell} ${Object.is(cell, -0) ? "-0" : String(cell)}`),
      );
      return succeed(JSON.stringify([shown, name, units.flow.symbol]));
    },
  };
  return { parameter, count: () => asked };
}

function expectAsFresh(readings: readonly (readonly [cells: Cells, reading: Reading])[]): void {
  const { parameter } = told();
  for (const [cells, reading] of readings) {
    expect(readRange(parameter, cells, reading)).toEqual(told().parameter.read(cells, reading));
  }
}

describe("a range read lately", () => {
  it("is not read again", () => {
    const { parameter, count } = told();
    const first = readRange(parameter, [["a", 1]], US);
    expect(readRange(parameter, [["a", 1]], { ...US })).toBe(first);
    expect(count()).toBe(1);
  });

  it("is told from one with another cell, kind of cell, sign of nothing or shape", () => {
    const ranges: readonly Cells[] = [
      [["a", 1]],
      [["a", 2]],
      [["a", "1"]],
      [["b", 1]],
      [["a", null]],
      [["a", ""]],
      [["a", 0]],
      [["a", -0]],
      [["a", false]],
      [["a"], [1]],
      [["a", 1, null]],
      [["a", 1], ["a"]],
      [["a", 1], []],
      [],
      [[]],
    ];
    expectAsFresh([...ranges, ...ranges].map((cells) => [cells, US]));
  });

  it("is told from the same cells in other units, or under another name", () => {
    const readings: readonly Reading[] = [
      US,
      { ...US, name: "system curve" },
      { ...US, unitSet: "SI", units: UNIT_SETS.SI },
      { ...US, unitSet: "METRIC", units: UNIT_SETS.METRIC },
    ];
    expectAsFresh([...readings, ...readings].map((reading) => [[["a", 1]], reading]));
  });

  it("is read again once its own cells have changed", () => {
    const { parameter } = told();
    const row: Cell[] = ["a", 1];
    readRange(parameter, [row], US);
    row[1] = 2;
    expect(readRange(parameter, [row], US)).toEqual(told().parameter.read([row], US));
  });

  it("that is settled is not looked at again by that parameter, under that name", () => {
    const { parameter, count } = told();
    const range = settle([["a", 1]]);
    expect(settledReading(parameter, range, US)).toBeUndefined();
    const read = readRange(parameter, range, US);
    expect(settledReading(parameter, range, { ...US })).toBe(read);
    expect(settledReading(parameter, range, { ...US, name: "system curve" })).toBeUndefined();
    expect(settledReading(told().parameter, range, US)).toBeUndefined();
    expect(settledReading(parameter, [["a", 1]], US)).toBeUndefined();
    for (let i = 0; i <= 100; i += 1) readRange(parameter, [[i]], US);
    expect(settledReading(parameter, range, US)).toBe(read);
    expect(count()).toBe(102);
  });

  it("is forgotten after a few dozen others", () => {
    const { parameter, count } = told();
    for (let i = 0; i <= 100; i += 1) readRange(parameter, [[i]], US);
    readRange(parameter, [[100]], US);
    expect(count()).toBe(101);
    readRange(parameter, [[0]], US);
    expect(count()).toBe(102);
  });

  it("is forgotten after one or two others where it is long, and read again each time where it is longer still", () => {
    const long = (first: number, rows: number): Cells => Array.from({ length: rows }, (_, i) => [first, i]);
    const { parameter, count } = told();
    for (const first of [1, 2, 3]) readRange(parameter, long(first, 5000), US);
    readRange(parameter, long(3, 5000), US);
    readRange(parameter, long(2, 5000), US);
    expect(count()).toBe(3);
    readRange(parameter, long(1, 5000), US);
    expect(count()).toBe(4);
    for (const _ of [1, 2]) readRange(parameter, long(4, 20_000), US);
    expect(count()).toBe(6);
  });
});
