import { writeFileSync } from "node:fs";
import { inventedLibrary } from "./invent/invented-library.ts";

/** `node tools/run.mjs invent-pumps FILE`: writes the library of invented pumps anew. */
const file = process.argv[2];
if (file === undefined) process.stdout.write(inventedLibrary());
else writeFileSync(file, inventedLibrary());
