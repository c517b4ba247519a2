import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { USES } from "../../../shared/help/examples/uses.ts";
import { findingWords } from "../../../shared/help/finding-words.ts";
import { codesOf } from "../../../shared/help/raised.ts";
import type { FindingCode } from "../../../src/basis/finding-code.ts";
import { RAISED } from "../../support/help.ts";

/** Things people type in the wrong box. */
const WRONG: readonly Cell[] = [null, 0, -1, 1e9, "", "x", "6in sch40", "12 psi", "1,200", "1 cSt", true, "20 %"];

/** Calls of a function: what its page shows and checks, and each of those with one argument gone wrong. */
function callsOf(entry: Entry): readonly (readonly Argument[])[] {
  const good = [...(USES[entry.id]?.examples ?? []), ...entry.examples].map(({ args }) => args);
  const wrong = good.slice(0, 1).flatMap((args) =>
    entry.parameters.flatMap((_, place) =>
      WRONG.map((cell) => {
        const filled = Array.from({ length: Math.max(args.length, place + 1) }, (__, i) => args[i] ?? null);
        return filled.with(place, cell);
      }),
    ),
  );
  return [...good, ...wrong];
}

const declared = [...readFileSync("src/basis/finding-code.ts", "utf8").matchAll(/^ {2}"([a-z0-9-]+)":/gm)].map(
  ([, code]) => code as FindingCode,
);

describe("the findings a page lists", () => {
  it("are read from the sources for every function", () => {
    expect(Object.keys(RAISED.own).toSorted()).toEqual(CATALOGUE.map(({ id }) => id).toSorted());
  });

  it.each(CATALOGUE)("hold every finding that calls of $id bring, by its kind", (entry) => {
    const own = new Map(codesOf(RAISED.own[entry.id] ?? {}));
    const common = new Map(codesOf(RAISED.common));
    const missing = new Set<string>();
    for (const args of callsOf(entry)) {
      for (const { code, kind } of call(entry, args).findings) {
        if (!(own.get(code) ?? common.get(code))?.includes(kind)) missing.add(`${kind} ${code}`);
      }
    }
    expect([...missing]).toEqual([]);
  });

  it("leave out what a function cannot say", () => {
    expect(RAISED.own["MOTORSIZE"]).not.toHaveProperty("velocity-high");
    expect(RAISED.own["FRICTIONHEAD"]).toHaveProperty("velocity-high", ["check"]);
    expect(RAISED.own["SHUTOFFHEATING"]).toHaveProperty("shut-in-heats", ["safety"]);
  });

  it("have words for every code, with gaps for names and figures", () => {
    expect(declared.length).toBeGreaterThan(500);
    for (const code of declared) {
      const words = findingWords(code, "check");
      expect(words, code).not.toMatch(/undefined|NaN|1e308|\[object/i);
      expect(words.length, code).toBeGreaterThan(8);
    }
  });
});
