import { defineConfig } from "vitest/config";

// "unit" runs in Node alone; "slow" drives Chromium, LibreOffice and Python.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          setupFiles: ["tests/support/property-seed.ts"],
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/slow/**"],
          environment: "node",
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: "slow",
          setupFiles: ["tests/support/property-seed.ts"],
          include: ["tests/slow/**/*.test.ts"],
          environment: "node",
          testTimeout: 120_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
