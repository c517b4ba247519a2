import { expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { functionList } from "../../../shared/catalogue/help/function-list.ts";

it("keeps docs/functions.md in step with the catalogue", async () => {
  await expect(functionList(CATALOGUE)).toMatchFileSnapshot("../../../docs/functions.md");
});
