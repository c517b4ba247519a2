import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freeSheetNames, tagFor, validSheetName } from "../../../shared/ports/sheet-name.ts";

// "31 characters", none of \ / ? * : [ ], no apostrophe at an end, not blank, not "History": Microsoft, "Rename a
// worksheet".
const LONGEST = 31;

const anyText = fc.string({
  unit: fc.oneof(
    fc.constantFrom(..."'[]:*?/\\ \t\n\u0000\ud83d"),
    fc.constant("💧"),
    fc.string({ minLength: 1, maxLength: 1 }),
  ),
  maxLength: 60,
});

describe("names of sheets", () => {
  it("are what a sheet may be called, whatever is asked for", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const name = validSheetName(text);
        expect(name.length).toBeGreaterThan(0);
        expect(name.length).toBeLessThanOrEqual(LONGEST);
        expect(name).not.toMatch(/[[\]:*?/\\]|^'|'$|^\s|\s$|\p{Cc}/u);
        expect(name).not.toMatch(/\p{Cs}/u);
        expect(validSheetName(name)).toBe(name);
      }),
    );
  });

  it("of a set are free, apart and of one number, whatever is taken", () => {
    fc.assert(
      fc.property(anyText, fc.nat(30), (text, taken) => {
        const tag = tagFor(text, " workings".length);
        const wanted = [`Duty ${tag}`, `${tag} estimate`, `${tag} workings`];
        const before: string[] = [];
        for (let i = 0; i < taken; i += 1) before.push(...freeSheetNames(wanted.slice(i % 3, (i % 3) + 1), before));
        const names = freeSheetNames(wanted, before);
        const keys = new Set([...before, ...names].map((name) => name.toLowerCase()));
        expect(keys.size).toBe(before.length + wanted.length);
        for (const name of names) expect(validSheetName(name)).toBe(name);
        const numbers = names.map((name) => / \((\d+)\)$/.exec(name)?.[1]);
        if (!/\(\d+\)\s*$/.test(text)) expect(new Set(numbers).size).toBe(1);
      }),
    );
  });

  it("alike in all that fits beside a number are told apart all the same", () => {
    const wanted = ["a".repeat(30), `${"a".repeat(30)}b`];
    const names = freeSheetNames(wanted, wanted);
    expect(new Set([...wanted, ...names].map((name) => name.toLowerCase())).size).toBe(4);
  });
});

describe("the tag in a name", () => {
  it.each([
    ["P-101", "P-101"],
    ["Dewatering pump set number 4", "Dewatering pump"],
    ["Booster station west", "Booster station"],
    ["A very-long-word-that-does-not-end", "A very-long-word-t"],
  ])("of %s is %s", (tag, short) => {
    expect(tagFor(tag, " workings".length)).toBe(short);
  });
});
