import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { HOSTING_VARIABLES } from "./hosting.mjs";

/** All that a build reads. Of installed packages the lock files tell the versions. */
export const READ = [
  ...["assets", "docs", "functions", "help", "shared", "src", "taskpane", "tools", "workbench"],
  ...[
    "LICENSE",
    "manifest.xml",
    "package.json",
    "package-lock.json",
    "tsconfig.json",
    join("node_modules", ".package-lock.json"),
  ],
];
export const VARIABLES = [...HOSTING_VARIABLES, "NODE_ENV"];

/**
 * Tells whether the dist/ of a folder still stands as it was built, and from what now stands there. Taken before a
 * build, kept after it: what changes while it runs makes the next one.
 *
 * @param {string} root
 * @param {Readonly<Record<string, string | undefined>>} environment
 */
export function buildStamp(root, environment) {
  const file = join(root, ".cache", "built.json");
  const facts = [process.versions.node, ...VARIABLES.map((name) => environment[name] ?? null)];
  const from = fingerprint(root, READ, facts);
  const made = () => fingerprint(root, ["dist"], []);
  return {
    isCurrent: () => existsSync(file) && readFileSync(file, "utf8") === `${from} ${made()}`,
    drop: () => rmSync(file, { force: true }),
    keep: () => {
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, `${from} ${made()}`);
    },
  };
}

/** One text for all that stands in files and folders: other once a name or a byte is. */
function fingerprint(root, paths, facts) {
  const hash = createHash("sha256").update(JSON.stringify(facts));
  for (const path of paths.flatMap((each) => filesIn(root, each)).sort()) {
    const content = existsSync(join(root, path)) ? readFileSync(join(root, path)) : undefined;
    hash.update(JSON.stringify([path, content?.length ?? "missing"])).update(content ?? "");
  }
  return hash.digest("hex");
}

function filesIn(root, path) {
  const full = join(root, path);
  if (!existsSync(full) || !statSync(full).isDirectory()) return [path];
  return readdirSync(full, { withFileTypes: true, recursive: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));
}
