// `npm run build`: makes dist/, unless it still stands as made and nothing it is made from has changed.
import { statSync } from "node:fs";
import { relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { buildStamp, READ } from "./build/stamp.mjs";
import { npmPackages, ROOT, say, stop } from "./setup.mjs";

export async function built() {
  const stamp = buildStamp(ROOT, process.env);
  if (stamp.isCurrent()) return;
  say("Building … (the first build takes a minute or two)");
  stamp.drop();
  await build();
  stamp.keep();
}

async function build() {
  const [{ default: webpack }, { addin }, { workbench }] = await Promise.all([
    import("webpack"),
    import("./build/addin.mjs"),
    import("./build/workbench.mjs"),
  ]);
  const compiler = webpack([addin("production"), workbench("production")]);
  const stats = await new Promise((resolve, reject) => {
    compiler.run((fault, all) => (fault ? reject(fault) : resolve(all)));
  });
  // The caches on disk are written as it closes.
  await new Promise((resolve, reject) => {
    compiler.close((fault) => (fault ? reject(fault) : resolve()));
  });
  if (stats.hasErrors() || stats.hasWarnings()) say(stats.toString("errors-warnings"));
  if (stats.hasErrors()) stop("The build did not succeed.");
  const unknown = stats.stats.flatMap(({ compilation }) => [...compilation.fileDependencies]).filter(isUnknown);
  if (unknown.length > 0) stop(`The build read files that tools/build/stamp.mjs does not watch: ${unknown.join(", ")}`);
}

function isUnknown(file) {
  const path = relative(ROOT, file);
  const isWatched =
    path.startsWith("node_modules") || READ.some((each) => path === each || path.startsWith(each + sep));
  return !isWatched && statSync(file).isFile();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  npmPackages();
  await built();
}
