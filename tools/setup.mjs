// Plain JavaScript on Node alone: this runs before anything is installed.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

const LEAST_NODE = [20, 19];

/** What the tests need beside npm packages: the Debian package that brings each, and how its presence shows. */
const TEST_TOOLS = [
  { package: "chromium", present: () => runs("chromium", ["--version"]) },
  { package: "libreoffice-calc", present: () => runs("soffice", ["--version"]) },
  { package: "python3-uno", present: () => python("import uno") },
  { package: "python3-fluids", present: () => python("import fluids") },
  { package: "python3-iapws", present: () => python("import iapws") },
  { package: "poppler-utils", present: () => runs("pdftotext", ["-v"]) },
  // Sheets are laid out for letters as wide as those of Arial; without such a font LibreOffice and Chromium set wider ones.
  { package: "fonts-liberation", present: () => /Arial|Arimo|Liberation Sans/.test(font("Arial")) },
];

/** Installs the npm packages where they are missing or older than the lock file. */
export function npmPackages() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major < LEAST_NODE[0] || (major === LEAST_NODE[0] && minor < LEAST_NODE[1])) {
    stop(`Node.js ${LEAST_NODE.join(".")} or later is needed; this is ${process.versions.node}.`);
  }
  const lock = join(ROOT, "package-lock.json");
  const done = join(ROOT, "node_modules", ".package-lock.json");
  if (existsSync(done) && statSync(done).mtimeMs >= statSync(lock).mtimeMs) return;
  if (existsSync(done) && sameLock(lock, done)) return;
  say("Installing npm packages …");
  run("npm", ["ci", "--no-audit", "--no-fund"]);
}

/** Makes sure of the programs the tests drive: installs them as root on Debian, else names them and stops. */
export function testTools() {
  const missing = TEST_TOOLS.filter((tool) => !tool.present()).map((tool) => tool.package);
  if (missing.length === 0) return;
  const debian = existsSync("/etc/debian_version") && runs("apt-get", ["--version"]);
  if (!debian || process.getuid?.() !== 0) {
    const how = debian ? `sudo apt-get install ${missing.join(" ")}` : missing.join(", ");
    stop(`The tests need programs that are not here. Install them and run again: ${how}`);
  }
  say(`Installing Debian packages: ${missing.join(" ")} …`);
  const quiet = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  run("apt-get", ["update", "-qq"], quiet);
  run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...missing], quiet);
  const still = TEST_TOOLS.filter((tool) => !tool.present()).map((tool) => tool.package);
  if (still.length > 0) stop(`These were installed but do not run: ${still.join(", ")}`);
}

/** Runs a program with its output shown on standard error; stops where it fails. */
export function run(command, args, env = process.env) {
  const { status, error } = spawnSync(command, args, { cwd: ROOT, stdio: ["ignore", 2, 2], env });
  if (error !== undefined || status !== 0) stop(`${command} ${args[0] ?? ""} did not succeed.`);
}

export function say(text) {
  process.stderr.write(`${text}\n`);
}

function sameLock(lock, done) {
  const wanted = JSON.parse(readFileSync(lock, "utf8")).packages;
  const have = JSON.parse(readFileSync(done, "utf8")).packages;
  return Object.entries(wanted).every(
    ([path, { version, optional }]) => path === "" || optional === true || have[path]?.version === version,
  );
}

function runs(command, args) {
  return spawnSync(command, args, { stdio: "ignore" }).status === 0;
}

function python(code) {
  return runs("/usr/bin/python3", ["-c", code]);
}

/** The font that stands for another here. */
function font(name) {
  return spawnSync("fc-match", [name, "family"], { encoding: "utf8" }).stdout ?? "";
}

export function stop(reason) {
  say(reason);
  process.exit(1);
}
