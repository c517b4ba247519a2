import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { billOfMaterials } from "../../../tools/release/bill-of-materials.mjs";
import { releasedChanges } from "../../../tools/release/changelog.mjs";
import { packed } from "../../../tools/release/packed.mjs";
import { commitOf, git, treeProblems } from "../../../tools/release/tree.mjs";

const DATE = new Date("2027-01-02T03:04:06Z");

describe("the tree of a release", () => {
  let root = "";
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), "tree-"));
  });
  afterEach(() => rmSync(root, { recursive: true }));

  const commit = (name: string): void => {
    writeFileSync(join(root, name), name);
    git(root, "add", "-A");
    git(root, "-c", "user.name=A", "-c", "user.email=a@b.example", "commit", "-qm", name);
  };

  it("is a commit, and nothing beside it", () => {
    expect(treeProblems(root)).toEqual(["this folder has no commit to release"]);
    git(root, "init", "-q");
    expect(treeProblems(root)).toEqual(["this folder has no commit to release"]);
    commit("one");
    expect(treeProblems(root)).toEqual([]);
    writeFileSync(join(root, "one"), "changed");
    writeFileSync(join(root, "two"), "new");
    expect(treeProblems(root)).toEqual(["not committed: M one, ?? two"]);
  });

  it("has a number that counts commits, so it needs them all", () => {
    git(root, "init", "-q");
    for (const name of ["one", "two", "three"]) commit(name);
    expect(commitOf(root)).toMatchObject({ build: 3, name: git(root, "rev-parse", "HEAD") });
    git(root, "clone", "-q", "--depth", "1", `file://${root}`, "short");
    expect(treeProblems(join(root, "short"))).toEqual([expect.stringContaining("history is cut short")]);
  });
});

describe("the zip of a release", () => {
  it("holds every file of the folder, and is the same whenever it is made", () => {
    const folder = mkdtempSync(join(tmpdir(), "packed-"));
    mkdirSync(join(folder, "deep"));
    writeFileSync(join(folder, "b.txt"), "m³/h");
    writeFileSync(join(folder, "deep", "a.txt"), "");
    const zip = packed(folder, DATE);
    const files = unzipSync(zip);
    expect(Object.keys(files)).toEqual(["b.txt", "deep/a.txt"]);
    expect(new TextDecoder().decode(files["b.txt"])).toBe("m³/h");
    utimesSync(join(folder, "b.txt"), 0, 0);
    expect(packed(folder, DATE)).toEqual(zip);
    writeFileSync(join(folder, "b.txt"), "L/s");
    expect(packed(folder, DATE)).not.toEqual(zip);
    rmSync(folder, { recursive: true });
  });
});

describe("the changes of a release", () => {
  it("stand under its number and date, below an empty section for the next", () => {
    const before = readFileSync("CHANGELOG.md", "utf8");
    const after = releasedChanges(before, "1.2.0", DATE);
    expect(after.match(/^## .*/gm)?.slice(0, 2)).toEqual(["## Unreleased", "## 1.2.0, 2027-01-02"]);
    const [head, rest] = before.split("## Unreleased\n") as [string, string];
    expect(after.startsWith(head)).toBe(true);
    expect(after.endsWith(`## 1.2.0, 2027-01-02\n${rest}`)).toBe(true);
    expect(releasedChanges(after, "1.3.0", DATE)).toContain("## 1.3.0, 2027-01-02\n\n### Moved answers\n\n### Names");
  });

  it("need their section", () => {
    expect(() => releasedChanges("# Changes\n", "1.2.0", DATE)).toThrow("no section");
  });
});

describe("the bill of materials", () => {
  const bill = JSON.parse(billOfMaterials(process.cwd(), DATE)) as {
    bomFormat: string;
    specVersion: string;
    metadata: { timestamp: string; component: { name: string } };
    components: { name: string; version: string; licenses: { license?: { id?: string; name?: string } }[] }[];
  };

  it("is CycloneDX of what is not for development alone", () => {
    const { dependencies } = JSON.parse(readFileSync("package.json", "utf8")) as {
      dependencies: Record<string, string>;
    };
    expect(bill).toMatchObject({ bomFormat: "CycloneDX", specVersion: "1.5" });
    expect(bill.metadata).toMatchObject({ timestamp: "2027-01-02T03:04:06.000Z", component: { name: "dutybook" } });
    const versions = new Map(bill.components.map(({ name, version }) => [name, version]));
    for (const [name, version] of Object.entries(dependencies)) expect(versions.get(name), name).toBe(version);
    // What a package for development needs as well stays in.
    expect(versions.has("xmlchars")).toBe(true);
    for (const name of ["vitest", "webpack", "typescript", "jsdom"]) expect(versions.has(name), name).toBe(false);
  });

  it("names a licence of each", () => {
    expect(bill.components.filter(({ licenses = [] }) => licenses.length === 0)).toEqual([]);
  });

  it("tells nothing of the machine it was made on, nor where packages were had from", () => {
    const text = JSON.stringify(bill);
    expect(text).not.toContain(process.cwd());
    expect(text).not.toMatch(/registry\.|"distribution"|file:/);
    expect(billOfMaterials(process.cwd(), DATE)).toBe(billOfMaterials(process.cwd(), DATE));
  });
});

describe("the command", () => {
  let root = "";
  afterEach(() => rmSync(root, { recursive: true }));

  /** A copy of what the command reads before it builds, as a commit of its own. */
  function scratch(): void {
    root = mkdtempSync(join(tmpdir(), "release-"));
    for (const path of [
      "tools",
      "shared/catalogue/released.json",
      "package.json",
      "package-lock.json",
      "CHANGELOG.md",
      ".gitignore",
    ]) {
      cpSync(path, join(root, path), { recursive: true });
    }
    symlinkSync(join(process.cwd(), "node_modules"), join(root, "node_modules"));
    writeFileSync(join(root, ".gitignore"), "node_modules\ndist\nrelease\n");
    // Stands in for the build: three files of one.
    writeFileSync(
      join(root, "tools", "build.mjs"),
      `import { cpSync, mkdirSync, writeFileSync } from "node:fs";
       mkdirSync("dist", { recursive: true });
       writeFileSync("dist/build.txt", process.env.ADDIN_BUILD);
       writeFileSync("dist/functions.json", process.env.FUNCTIONS ?? JSON.stringify({ functions: ${JSON.stringify(FUNCTIONS)} }));`,
    );
    writeFileSync(join(root, "shared/catalogue/released.json"), JSON.stringify({ BORE: "pipe" }));
    git(root, "init", "-q");
    saved();
  }

  function saved(): void {
    git(root, "add", "-A");
    git(root, "-c", "user.name=A", "-c", "user.email=a@b.example", "commit", "-qm", "all");
  }

  function release(environment: Record<string, string>): { ok: boolean; said: string } {
    const env = { PATH: process.env["PATH"], HOME: process.env["HOME"], ...environment };
    try {
      execFileSync(process.execPath, ["tools/release.mjs"], { cwd: root, env, stdio: "pipe" });
      return { ok: true, said: "" };
    } catch (fault) {
      return { ok: false, said: String((fault as { stderr: Buffer }).stderr) };
    }
  }

  const read = (path: string): string => readFileSync(join(root, path), "utf8");
  const HOSTED = { ADDIN_ORIGIN: "https://pumps.example/dutybook/" };

  it("makes a zip of a clean tree once, and writes down what it released", () => {
    scratch();
    const { version } = JSON.parse(read("package.json")) as { version: string };
    expect(release(HOSTED)).toEqual({ ok: true, said: "" });
    const files = unzipSync(readFileSync(join(root, "release", `dutybook-${version}.zip`)));
    expect(Object.keys(files)).toEqual(["build.txt", "functions.json", "sbom.json"]);
    expect(new TextDecoder().decode(files["build.txt"])).toBe("1");
    expect(JSON.parse(read("tools/release/releases.json"))).toMatchObject([
      { version, build: 1, commit: git(root, "rev-parse", "HEAD") },
    ]);
    expect(JSON.parse(read("shared/catalogue/released.json"))).toEqual({ BORE: "pipe, [units]", NEW: "flow" });
    expect(read("CHANGELOG.md")).toContain(`\n## ${version}, `);
    expect(release(HOSTED).said).toContain("not committed: M CHANGELOG.md");
    saved();
    expect(release(HOSTED).said).toContain(`${version} is released already: raise the version`);
  });

  it("refuses without an address, or with one that would not do", () => {
    scratch();
    expect(release({}).said).toContain("ADDIN_ORIGIN=https://your.host/dutybook/");
    expect(release({ ADDIN_ORIGIN: "http://pumps.example/" }).said).toContain("https alone");
    writeFileSync(join(root, "more.txt"), "");
    expect(release(HOSTED).said).toContain("No release: not committed: ?? more.txt.");
  });

  it("refuses what would break formulas in use, and writes nothing down", () => {
    scratch();
    const functions = [{ id: "BORE", parameters: [{ name: "line" }] }];
    expect(release({ ...HOSTED, FUNCTIONS: JSON.stringify({ functions }) }).said).toContain(
      "BORE(pipe) would be BORE(line)",
    );
    expect(treeProblems(root)).toEqual([]);
  });
});

const FUNCTIONS = [
  { id: "NEW", parameters: [{ name: "flow" }] },
  { id: "BORE", parameters: [{ name: "pipe" }, { name: "units", optional: true }] },
];
