// `npm test`: installs what is missing, checks types and style, builds, and runs every test.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { npmPackages, ROOT, say, testTools } from "./setup.mjs";

npmPackages();
testTools();

const report = join(ROOT, ".cache", "test-report.json");
mkdirSync(join(ROOT, ".cache"), { recursive: true });
rmSync(report, { force: true });

let passed = 0;
let failed = 0;

step("types", "npx", ["tsc", "--noEmit"]);
step("engine types", "npx", ["tsc", "--noEmit", "-p", "src"]);
step("lint and format", "npx", ["biome", "check", "--error-on-warnings", "."]);
step("build", process.execPath, ["tools/build.mjs"]);
spawnSync("npx", ["vitest", "run", "--reporter=default", "--reporter=json", `--outputFile.json=${report}`], {
  cwd: ROOT,
  stdio: ["ignore", "inherit", "inherit"],
});
if (existsSync(report)) {
  const { numPassedTests, numFailedTests, numPendingTests, numFailedTestSuites, success } = JSON.parse(
    readFileSync(report, "utf8"),
  );
  passed += numPassedTests;
  // A file that fails to load counts as one failure; so does a skipped test, since none may be skipped silently.
  failed += numFailedTests + numPendingTests;
  if (!success && numFailedTests === 0) failed += Math.max(1, numFailedTestSuites);
} else {
  say("The test run left no report.");
  failed += 1;
}
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 ? 0 : 1);

function step(name, command, args) {
  const { status } = spawnSync(command, args, { cwd: ROOT, stdio: ["ignore", 2, 2] });
  say(`${status === 0 ? "passed" : "FAILED"}: ${name}`);
  if (status === 0) passed += 1;
  else failed += 1;
}
