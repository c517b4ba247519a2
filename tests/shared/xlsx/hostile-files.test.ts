import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { HOSTILE_FILES } from "../../support/hostile-files.ts";

// Each file is read by a process that has no more memory to give, so that one which fills it ends without a word.
const HEAP_MEGABYTES = 200;
const MOST_MEGABYTES = 300;

const folder = mkdtempSync(path.join(tmpdir(), "hostile-"));
const program = path.join(folder, "read-file.mjs");
beforeAll(async () => {
  await build({
    entryPoints: ["tests/support/read-file-in-child.ts"],
    outfile: program,
    bundle: true,
    platform: "node",
    format: "esm",
    logLevel: "error",
  });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function read(how: "workbook" | "pumps", file: string): { readonly said: string; readonly megabytes: number } {
  const heap = `--max-old-space-size=${HEAP_MEGABYTES}`;
  const { stdout, stderr } = spawnSync(process.execPath, [heap, program, how, file], { encoding: "utf8" });
  expect(stdout, stderr.slice(0, 300)).not.toBe("");
  return JSON.parse(stdout) as { said: string; megabytes: number };
}

describe("a file made to fill the memory", () => {
  it.each(HOSTILE_FILES)("is answered in words: $name", { timeout: 180_000 }, ({ bytes, workbook, pumps }) => {
    const file = path.join(folder, "hostile.xlsx");
    writeFileSync(file, bytes());
    expect(statSync(file).size).toBeLessThan(12e6);
    for (const [how, words] of [
      ["workbook", workbook],
      ["pumps", pumps],
    ] as const) {
      const { said, megabytes } = read(how, file);
      expect(said, how).toMatch(words);
      expect(megabytes, `${how}: ${said}`).toBeLessThan(MOST_MEGABYTES);
    }
  });
});
