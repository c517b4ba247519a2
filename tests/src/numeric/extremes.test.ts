import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, it } from "vitest";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";

it("finds the minimum and the largest of a column as long as a sheet", () => {
  const column = Array.from({ length: 1_048_576 }, (_, i) => (i * 7) % 1_048_576);
  expect(leastOf(column)).toBe(0);
  expect(greatestOf(column)).toBe(1_048_575);
});

it("answers as Math.min and Math.max do for nothing and for what is no number", () => {
  expect([leastOf([]), greatestOf([])]).toEqual([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]);
  expect([leastOf([1, Number.NaN, 2]), greatestOf([1, Number.NaN, 2])]).toEqual([Number.NaN, Number.NaN]);
});

/** What the linter says of a source of the engine, under the rules of this project. */
function remarksOn(source: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), "lint-"));
  try {
    cpSync("biome.json", path.join(folder, "biome.json"));
    cpSync("tools/lint", path.join(folder, "tools", "lint"), { recursive: true });
    mkdirSync(path.join(folder, "src"));
    writeFileSync(path.join(folder, "src", "tried.ts"), source);
    const { stdout, stderr } = spawnSync(path.resolve("node_modules/.bin/biome"), ["lint", "src"], {
      cwd: folder,
      encoding: "utf8",
    });
    return stdout + stderr;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

it("is what the linter asks for in the place of a spread", () => {
  const values = "(values: readonly number[]): number =>";
  expect(remarksOn(`export const one = ${values} Math.max(0, ...values);\n`)).toMatch(/overflows the call stack/);
  expect(remarksOn(`export const one = ${values} Math.min(...values);\n`)).toMatch(/overflows the call stack/);
  expect(remarksOn(`export const one = ${values} Math.min(0, [...values].length);\n`)).not.toMatch(/overflows/);
});
