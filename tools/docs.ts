import { writeFileSync } from "node:fs";
import { CATALOGUE } from "../shared/catalogue/catalogue.ts";
import { functionList } from "./docs/function-list.ts";

/** `npm run docs`: writes docs/functions.md anew from the catalogue. */
writeFileSync("docs/functions.md", functionList(CATALOGUE));
