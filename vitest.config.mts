import { defineConfig } from "vitest/config";

const GRID = [
  "tests/workbench/**/*.test.ts",
  "tests/shared/catalogue/hostile.test.ts",
  "tests/shared/xlsx/hostile-files.test.ts",
  "tests/shared/calc-sheet/hostile-duty.test.ts",
  "tests/taskpane/excel/failing-calls.test.ts",
];
const SLOW = "tests/slow/**/*.test.ts";

/**
 * "unit" is quick and runs in Node alone; "grid" too, and takes longer: the workbench's grid, hostile arguments for
 * every function, texts for every box and files, and each kind of call of Excel made to fail. "slow" drives Chromium, LibreOffice and Python.
 */
export default defineConfig({
  test: {
    projects: [
      project("unit", ["tests/**/*.test.ts"], [SLOW, ...GRID]),
      project("grid", GRID),
      {
        test: {
          ...project("slow", [SLOW]).test,
          testTimeout: 300_000,
          hookTimeout: 300_000,
          fileParallelism: false,
          isolate: true,
          // Waits end with a state, and a busy machine comes to it late.
          expect: { poll: { timeout: 60_000 } },
        },
      },
    ],
  },
});

/** Files share one set of modules: no test may leave a mark on one. */
function project(name: string, include: string[], exclude: string[] = []) {
  const setupFiles = ["tests/support/property-seed.ts"];
  return {
    test: {
      name,
      include,
      exclude,
      setupFiles,
      environment: "node" as const,
      testTimeout: 60_000,
      hookTimeout: 120_000,
      isolate: false,
    },
  };
}
