import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { isAllowed, shippedPackage } from "../build/licences.mjs";

/**
 * The packages that are not for development alone, as CycloneDX, from the lock file. Of one commit it is always the
 * same.
 *
 * @param {string} root
 * @param {Date} date That of the commit.
 */
export function billOfMaterials(root, date) {
  const args = ["sbom", "--sbom-format=cyclonedx", "--sbom-type=application", "--package-lock-only"];
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  const text = execFileSync(npm, args, { cwd: root, encoding: "utf8", maxBuffer: 1 << 26, shell: npm === "npm.cmd" });
  const { serialNumber, ...bill } = JSON.parse(text);
  // npm's own --omit=dev leaves out what a package for development needs too.
  const kept = neededPackages(root);
  const isKept = (name) => kept.has(name) || name === bill.metadata.component["bom-ref"];
  bill.components = bill.components.filter((each) => isKept(each["bom-ref"]));
  bill.dependencies = bill.dependencies
    .filter(({ ref }) => isKept(ref))
    .map(({ ref, dependsOn = [] }) => ({ ref, dependsOn: dependsOn.filter(isKept) }));
  bill.metadata.timestamp = date.toISOString();
  // npm names the folder.
  bill.metadata.component.name = "dutybook";
  for (const component of bill.components.filter(({ licenses = [] }) => licenses.length === 0)) {
    const { licence = "" } = shippedPackage(join(root, "node_modules", component.name));
    component.licenses = [{ license: isAllowed(licence) ? { id: licence } : { name: "terms of its maker" } }];
  }
  return `${JSON.stringify(bill, null, 1)}\n`;
}

/** "lit@3.3.3" of each package that is not there for development alone. */
function neededPackages(root) {
  const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8"));
  const needed = Object.entries(packages).filter(([path, { dev, devOptional }]) => path !== "" && !dev && !devOptional);
  return new Set(needed.map(([path, { version }]) => `${path.split("node_modules/").at(-1)}@${version}`));
}
