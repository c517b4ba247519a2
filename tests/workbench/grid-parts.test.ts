import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

const source = (file: string): string => readFileSync(new URL(`../../workbench/${file}`, import.meta.url), "utf8");

it("starts every library that the grid is made of by itself, before the grid that would start them in one go", () => {
  const ofGrid = [...source("page-grid.ts").matchAll(/^import (?!type ).* from "(@univerjs\/[^/"]+)"/gm)];
  const byThemselves = new Set(
    [...source("grid-parts.ts").matchAll(/import\([^"]*"grid"[^"]*"([^"]+)"\)/g)].map(([, name]) => name),
  );
  expect(ofGrid.length).toBeGreaterThan(4);
  expect(ofGrid.map(([, name]) => name).filter((name) => !byThemselves.has(name))).toEqual([]);
});
