import { defineEntry, type Entry } from "../../shared/catalogue/entry.ts";
import { choice, quantity, type RangeParameter, text } from "../../shared/catalogue/parameter.ts";
import type { Cell } from "../../shared/cells/cell.ts";
import { fail, succeed } from "../../src/basis/result.ts";

const house = { source: "house", at: "made for the tests" } as const;

const cells: RangeParameter<readonly (readonly Cell[])[]> = {
  takes: "range",
  about: "Any cells",
  example: "a range",
  read: (rows) => succeed(rows),
};

/** Entries whose answers anyone can work out in the head, one for each shape of call. */
export const SAMPLES = [
  defineEntry({
    id: "SUMOFHEADS",
    group: "Lists",
    summary: "Sum of two heads",
    method: "Adds.",
    cites: [house],
    parameters: {
      firstHead: quantity("head", { about: "First head", range: "any" }),
      secondHead: quantity("head", { about: "Second head", whenLeftOut: { value: 3.048, shown: "10 ft" } }),
    },
    answer: { kind: "quantity", name: "sum", quantity: "head" },
    examples: [{ args: [1, 2], answer: 3, within: 1e-12, source: "arithmetic" }],
    run: ({ firstHead, secondHead }) =>
      firstHead < 0
        ? fail([
            {
              code: "out-of-range",
              kind: "error",
              subject: "first head",
              found: { quantity: "head", value: firstHead },
              limit: { quantity: "head", value: 0, side: "at least" },
            },
          ])
        : succeed(firstHead + secondHead),
  }),
  defineEntry({
    id: "SHAPEOF",
    group: "Lists",
    summary: "Rows and columns of a range",
    method: "Counts.",
    cites: [house],
    parameters: { cells },
    unitless: true,
    answer: { kind: "record", name: "shape", columns: { rows: { name: "rows" }, columns: { name: "columns" } } },
    examples: [{ args: [[[1, 2]]], part: [1, 1], answer: 2, source: "counted" }],
    run: ({ cells: rows }) => succeed({ rows: rows.length, columns: rows[0]?.length ?? 0 }),
  }),
  defineEntry({
    id: "LIQUIDOF",
    group: "Lists",
    summary: "The name given, if it is known",
    method: "Looks up.",
    cites: [house],
    parameters: {
      name: text({ about: "Name", example: '"water"' }, (given, name) =>
        given === "water"
          ? succeed(given)
          : fail([{ code: "name-unknown", kind: "error", subject: name, given, suggestions: ["water"] }]),
      ),
    },
    unitless: true,
    answer: { kind: "text", name: "name" },
    examples: [{ args: ["water"], answer: "water", source: "by definition" }],
    run: ({ name }) => succeed(name),
  }),
  defineEntry({
    id: "HOLED",
    group: "Lists",
    summary: "A table with an empty cell",
    method: "Gives a fixed table.",
    cites: [house],
    parameters: { kind: choice(["a", "b"], { about: "Kind", whenLeftOut: "a" }) },
    answer: {
      kind: "table",
      name: "table",
      columns: { length: { name: "length", quantity: "length" }, note: { name: "note" } },
    },
    examples: [{ args: ["a"], part: [1, 0], answer: 1, source: "by definition" }],
    run: () =>
      succeed([
        { length: 0.3048, note: null },
        { length: 0.6096, note: "two feet" },
      ]),
  }),
  defineEntry({
    id: "FAULTY",
    group: "Lists",
    summary: "A function with a fault",
    method: "Throws.",
    cites: [house],
    parameters: {},
    unitless: true,
    answer: { kind: "number", name: "nothing" },
    examples: [{ args: [], answer: 0, source: "never answers" }],
    run: () => {
      throw new Error("the tests made it fail");
    },
  }),
] as const satisfies readonly Entry[];

/** Takes a name and any number of further arguments, as NOTES does; answers with how many there were. */
export const REPEATING: Entry = defineEntry({
  id: "COUNTARGS",
  group: "Lists",
  summary: "How many further arguments there are",
  method: "Counts.",
  cites: [house],
  parameters: { name: text({ about: "Name", example: '"x"' }, (given) => succeed(given)), argument: cells },
  unitless: true,
  repeating: true,
  answer: { kind: "text", name: "count" },
  examples: [{ args: ["x", 1, 2], answer: "x: 2", source: "counted" }],
  run: ({ name }, { rest }) => succeed(`${name}: ${rest.length}`),
});
