// `node tools/run.mjs NAME …`: bundles tools/NAME.ts for Node and runs it with the remaining arguments.
import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { npmPackages, ROOT } from "./setup.mjs";

npmPackages();
const [name, ...args] = process.argv.slice(2);
const { build } = await import("esbuild");
const folder = join(ROOT, ".cache", "tools");
mkdirSync(folder, { recursive: true });
const outfile = join(folder, `${name}.mjs`);
// Written under another name first: a program that starts meanwhile never reads half of it.
const { outputFiles } = await build({
  entryPoints: [join(ROOT, "tools", `${name}.ts`)],
  outfile,
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  packages: "external",
  logLevel: "warning",
  write: false,
});
const draft = `${outfile}.${process.pid}`;
writeFileSync(draft, outputFiles[0].contents);
renameSync(draft, outfile);
process.argv = [process.argv[0], outfile, ...args];
await import(pathToFileURL(outfile).href);
