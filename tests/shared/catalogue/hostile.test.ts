import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call, type Outcome } from "../../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import { type Argument, type Cell, isCellError, isRange } from "../../../shared/cells/cell.ts";

const DIVISION = { error: "#DIV/0!" };
const REFERENCE = { error: "#REF!", message: "the reference is gone" };

const CELLS: readonly Cell[] = [
  null,
  "",
  "   ",
  true,
  false,
  0,
  -0,
  1,
  -1,
  0.5,
  1e-300,
  Number.MIN_VALUE,
  1e9,
  1e300,
  -1e300,
  Number.MAX_VALUE,
  -Number.MAX_VALUE,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  "abc",
  "12",
  "1,234",
  "12 furlong",
  "45 L/s",
  "14 ft",
  "2 bar(a)",
  "300 K",
  "-1e300 m",
  "1e308 ft",
  "-5 gpm",
  "NaN",
  "Infinity ft",
  "=1+1",
  "water",
  "6in sch40",
  "__proto__",
  "constructor",
  "5 constructor",
  "ID 100 mm constructor",
  "6in __proto__",
  "\u0000\ud800",
  "x".repeat(20_000),
  "1 gate, ".repeat(2000),
  DIVISION,
  REFERENCE,
];

const RANGES: readonly Argument[] = [
  [],
  [[]],
  [[null]],
  [
    ["", null],
    [null, "  "],
  ],
  [[1], [1, 2]],
  [[1, 2], [1]],
  [[1, 2, 3]],
  [[1], [2], [3]],
  [
    [0, 0],
    [0, 0],
  ],
  [[Number.NaN, Number.POSITIVE_INFINITY]],
  [[1e300, -1e300]],
  [["abc", "45 L/s"]],
  [[true], [null], ["12 furlong"]],
  [[DIVISION]],
  [[1, DIVISION]],
  [["pipe", "length", "fittings"]],
  [["chainage", "elevation", "pipe"]],
  [["6in sch40", 1e300, "1 gate"]],
  [["6in sch40", -1, "1 gate"]],
  [["6in sch40", Number.NaN, "1 gate"]],
  [["6in sch40", 10, "K 1e300"]],
  [["ID 1e-300 mm rough 0 mm", 10, ""]],
  [["ID 1e300 mm rough 0 mm", 10, ""]],
  [
    [0, 0, "6in sch40"],
    [1e300, 1e300],
  ],
  [
    [0, -1e300, "6in sch40"],
    [1, 1e300],
  ],
  Array.from({ length: 300 }, (_, i) => [i]),
];
const HOSTILE: readonly Argument[] = [...CELLS, ...RANGES];

const OWN_ERRORS = ["#VALUE!", "#N/A"];

/** The first example of an entry, filled up with nothing as far as its arguments go, units among them. */
function baseOf(entry: Entry): readonly Argument[] {
  const args = entry.examples[0].args;
  const most = entry.parameters.length + (entry.unitless ? 0 : 1);
  return Array.from({ length: Math.max(most, args.length) }, (_, i) => args[i] ?? null);
}

/** What is wrong with an outcome; nothing where it is a value or a named error in one sentence. */
function faultsOf(outcome: Outcome, args: readonly Argument[]): readonly string[] {
  if (!outcome.ok) return errorFaults(outcome.error, args);
  const cells = Array.isArray(outcome.value) ? (outcome.value as readonly (readonly Cell[])[]).flat() : [outcome.value];
  return (cells as readonly Cell[]).flatMap((cell) => {
    if (typeof cell === "number") return Number.isFinite(cell) ? [] : [`answers ${cell}`];
    if (isCellError(cell)) return errorFaults(cell, args);
    return typeof cell === "string" || typeof cell === "boolean" ? [] : [`answers ${String(cell)}`];
  });
}

function errorFaults({ error, message }: { error: string; message?: string }, args: readonly Argument[]): string[] {
  if (!OWN_ERRORS.includes(error)) {
    return givenErrors(args).includes(error) ? [] : [`makes up the error ${error}`];
  }
  if (message === undefined || message === "") return ["says nothing"];
  const faults: string[] = [];
  const own = message.replace(/“[^”]*”/g, "“…”");
  if (!/[.!?]$/.test(message)) faults.push(`does not end its sentence: ${message}`);
  if (/[.!?]\s+\p{Lu}/u.test(own)) faults.push(`says more than one sentence: ${message}`);
  if (/\b(NaN|Infinity|undefined|null)\b|\[object/.test(own)) faults.push(`shows its insides: ${message}`);
  if (message.length > 700) faults.push(`is ${message.length} characters long: ${message.slice(0, 150)}`);
  return faults;
}

function givenErrors(args: readonly Argument[]): readonly string[] {
  return args.flatMap((argument) =>
    (isRange(argument) ? argument.flat() : [argument]).filter(isCellError).map(({ error }) => error),
  );
}

function faultsOfCall(entry: Entry, args: readonly Argument[]): readonly string[] {
  const shown = JSON.stringify(args).slice(0, 300);
  try {
    return faultsOf(call(entry, args), args).map((fault) => `${entry.id} ${fault} for ${shown}`);
  } catch (error) {
    return [`${entry.id} throws ${String(error)} for ${shown}`];
  }
}

describe.each(CATALOGUE)("$id with hostile arguments", (entry) => {
  const base = baseOf(entry);

  it("answers its example", () => {
    expect(call(entry, base).ok).toBe(true);
    expect(faultsOfCall(entry, base)).toEqual([]);
  });

  it("answers or refuses in one sentence whatever stands in any one place", () => {
    const faults = base.flatMap((_, i) =>
      HOSTILE.flatMap((hostile) =>
        faultsOfCall(
          entry,
          base.map((argument, j) => (j === i ? hostile : argument)),
        ),
      ),
    );
    expect(faults).toEqual([]);
  });

  it("answers or refuses in one sentence when arguments are left out or too many", () => {
    const short = base.map((_, i) => base.slice(0, i));
    const faults = [...short, [...base, null], [...base, 7], [...base, ...base]].flatMap((args) =>
      faultsOfCall(entry, args),
    );
    expect(faults).toEqual([]);
  });

  it("hands back an error value it is given", () => {
    // NOTES passes what comes after the name on unread, and says of an error in it what it is.
    const read = entry.repeating ? base.slice(0, entry.parameters.length - 1) : base;
    for (const i of read.keys()) {
      const outcome = call(
        entry,
        base.map((argument, j) => (j === i ? DIVISION : argument)),
      );
      expect(outcome.ok ? outcome.value : outcome.error).toEqual(DIVISION);
    }
  });

  it("answers or refuses in one sentence whatever stands in every place", () => {
    const anything = fc.array(fc.constantFrom(...HOSTILE), { maxLength: base.length + 1 });
    const mixed = fc.tuple(...base.map((argument) => fc.oneof(fc.constant(argument), fc.constantFrom(...HOSTILE))));
    fc.assert(
      fc.property(fc.oneof(anything, mixed), (args) => {
        expect(faultsOfCall(entry, args)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});
