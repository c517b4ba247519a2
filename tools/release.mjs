// `ADDIN_ORIGIN=https://host/folder/ npm run release`: makes release/dutybook-VERSION.zip of the commit that stands
// here, and writes down that its version is released. OFFICE_JS and SUPPORT_URL as for a build.
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { hostingOf } from "./build/hosting.mjs";
import { billOfMaterials } from "./release/bill-of-materials.mjs";
import { releasedChanges } from "./release/changelog.mjs";
import { brokenNames, signaturesOf } from "./release/released-names.mjs";
import { commitOf, treeProblems } from "./release/tree.mjs";
import { npmPackages, ROOT, run, say, stop } from "./setup.mjs";

const RELEASES = join("tools", "release", "releases.json");
const NAMES = join("shared", "catalogue", "released.json");
const CHANGES = "CHANGELOG.md";

const textOf = (file) => readFileSync(join(ROOT, file), "utf8");
const jsonOf = (file) => JSON.parse(textOf(file));
const { version } = jsonOf("package.json");
const releases = jsonOf(RELEASES);

const problems = [...addressProblems(), ...treeProblems(ROOT), ...versionProblems()];
if (problems.length > 0) stop(`No release: ${problems.join("; ")}.`);

const commit = commitOf(ROOT);
npmPackages();
run(process.execPath, ["tools/build.mjs"], { ...process.env, ADDIN_BUILD: String(commit.build) });

const released = jsonOf(NAMES);
const names = signaturesOf(jsonOf(join("dist", "functions.json")));
const broken = brokenNames(released, names);
if (broken.length > 0) stop(`No release, formulas in use would break: ${broken.join("; ")}.`);

writeFileSync(join(ROOT, "dist", "sbom.json"), billOfMaterials(ROOT, commit.date));
const { packed } = await import("./release/packed.mjs");
const zip = packed(join(ROOT, "dist"), commit.date);
const file = join("release", `dutybook-${version}.zip`);
mkdirSync(join(ROOT, "release"), { recursive: true });
writeFileSync(join(ROOT, file), zip);

// Last, so that a release that fails on the way is none.
const record = {
  version,
  build: commit.build,
  commit: commit.name,
  sha256: createHash("sha256").update(zip).digest("hex"),
};
writeFileSync(join(ROOT, RELEASES), `${JSON.stringify([...releases, record], null, 2)}\n`);
writeFileSync(join(ROOT, NAMES), `${JSON.stringify(names, null, 2)}\n`);
writeFileSync(join(ROOT, CHANGES), releasedChanges(textOf(CHANGES), version, commit.date));
say(`${file}, ${(zip.length / 1e6).toFixed(1)} MB, sha256 ${record.sha256}
administrator.html in it says how it is served. Commit what was written down: ${[RELEASES, NAMES, CHANGES].join(", ")}.`);

function addressProblems() {
  try {
    const { isLocal } = hostingOf(process.env, version);
    return isLocal ? ["name the address it will be served from: ADDIN_ORIGIN=https://your.host/dutybook/"] : [];
  } catch (fault) {
    return [fault.message.replace(/\.$/, "")];
  }
}

function versionProblems() {
  if (!releases.some((each) => each.version === version)) return [];
  return [
    `${version} is released already: raise the version in package.json, manifest.xml and shared/ports/version.ts`,
  ];
}
