// `npm run build`: makes dist/, unless it still stands as made and nothing it is made from has changed.
import { readFileSync, statSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { hostingOf } from "./build/hosting.mjs";
import { licenceProblems, noticesText, packageFolders, shippedPackage } from "./build/licences.mjs";
import { buildStamp, READ } from "./build/stamp.mjs";
import { npmPackages, ROOT, say, stop } from "./setup.mjs";

export async function built() {
  const hosting = wantedHosting();
  const stamp = buildStamp(ROOT, process.env);
  if (stamp.isCurrent()) return;
  say("Building … (the first build takes a minute or two)");
  stamp.drop();
  await build(hosting);
  stamp.keep();
}

/** What the environment asks for; where it would not do, says why and stops. */
function wantedHosting() {
  const { version } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  try {
    return hostingOf(process.env, version);
  } catch (fault) {
    return stop(fault.message);
  }
}

async function build(hosting) {
  const [{ default: webpack }, { addin, officeTerms }, { workbench }] = await Promise.all([
    import("webpack"),
    import("./build/addin.mjs"),
    import("./build/workbench.mjs"),
  ]);
  const compiler = webpack([addin("production", hosting), workbench("production")]);
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
  writeNotices(stats, hosting.isOfficeOwn ? officeTerms() : undefined);
}

/** Writes the notices of all packages in the bundles, those of the bundler's own lines in them too. */
function writeNotices({ stats }, terms) {
  const folders = stats.flatMap(({ compilation }) => [...packageFolders(compilation)]);
  const packages = [...new Set([...folders, join(ROOT, "node_modules", "webpack")])]
    .map(shippedPackage)
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  const problems = licenceProblems(packages);
  if (problems.length > 0) stop(`Not to be shipped: ${problems.join("; ")}.`);
  writeFileSync(join(ROOT, "dist", "THIRD-PARTY-NOTICES.txt"), noticesText(packages, terms));
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
