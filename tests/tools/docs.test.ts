import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { functionList } from "../../tools/docs/function-list.ts";

it("docs/functions.md tells of the catalogue as it is", () => {
  const words = "docs/functions.md is behind the catalogue: `npm run docs` writes it again";
  expect(readFileSync("docs/functions.md", "utf8"), words).toBe(functionList(CATALOGUE));
});
