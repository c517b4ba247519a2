import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import webpack, { type Compilation } from "webpack";
import {
  isAllowed,
  licenceProblems,
  noticesText,
  packageFolders,
  type Shipped,
  shippedPackage,
} from "../../../tools/build/licences.mjs";

const APACHE = "Apache License\n   Version 2.0, January 2004";

describe("what is shipped", () => {
  let root = "";
  let packages: readonly Shipped[] = [];
  const put = (path: string, text: string | object): void => {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), typeof text === "string" ? text : JSON.stringify(text));
  };
  const shipped = (name: string): Shipped => packages.find((each) => each.name === name) as Shipped;

  beforeAll(async () => {
    root = mkdtempSync(join(tmpdir(), "shipped-"));
    const facts = { version: "1.0.0", main: "index.js", sideEffects: false };
    put("index.js", 'import { a } from "free"; import b from "copyleft"; import "@scope/styled"; console.log(a, b);');
    put("node_modules/free/package.json", {
      ...facts,
      name: "free",
      license: "MIT",
      author: "A. Author <a@b.example>",
    });
    put("node_modules/free/index.js", 'export { a } from "./deep/a.js"; export { c } from "unused";');
    // A package.json that only tells what kind of modules stand below it.
    put("node_modules/free/deep/package.json", { type: "module" });
    put("node_modules/free/deep/a.js", "export const a = () => document.title;");
    put("node_modules/copyleft/package.json", { ...facts, name: "copyleft", license: "GPL-3.0-only" });
    put("node_modules/copyleft/LICENSE", "copyleft");
    put("node_modules/copyleft/index.js", "module.exports = 2;");
    put("node_modules/unused/package.json", { ...facts, name: "unused", license: "AGPL-3.0-only" });
    put("node_modules/unused/index.js", "export const c = 3;");
    put("node_modules/@scope/styled/package.json", {
      ...facts,
      name: "@scope/styled",
      sideEffects: true,
      licenses: [{ type: "ISC" }, { type: "Apache-2.0" }],
    });
    put("node_modules/@scope/styled/index.js", "globalThis.styled = true;");
    put("node_modules/@scope/styled/LICENSE.md", APACHE);
    put("node_modules/@scope/styled/NOTICE", "made by many");
    put("node_modules/@scope/styled/README.md", "not this");
    const compilation = await new Promise<Compilation>((resolve, reject) => {
      const compiler = webpack({
        context: root,
        entry: "./index.js",
        mode: "production",
        output: { path: join(root, "out") },
      });
      compiler?.run((fault, stats) => (fault ? reject(fault) : resolve((stats as webpack.Stats).compilation)));
    });
    packages = [...packageFolders(compilation)].map(shippedPackage);
  });
  afterAll(() => rmSync(root, { recursive: true }));

  it("is every package with a module in a bundle, joined or not, and no other", () => {
    expect(packages.map(({ name }) => name).toSorted()).toEqual(["@scope/styled", "copyleft", "free"]);
  });

  it("is refused where a package may not be passed on under notices alone", () => {
    expect(licenceProblems(packages)).toEqual([
      expect.stringMatching(/^copyleft 1\.0\.0 is under GPL-3\.0-only, which is none of /),
    ]);
  });

  it("tells licence, authors and texts", () => {
    expect(shipped("free")).toMatchObject({ licence: "MIT", people: ["A. Author <a@b.example>"], texts: [] });
    expect(shipped("@scope/styled")).toMatchObject({ licence: "ISC OR Apache-2.0", texts: [APACHE, "made by many"] });
  });

  it("is told in the notices, with the text of the licence where the package carries none", () => {
    const text = noticesText(packages, undefined);
    expect(text).toContain("free 1.0.0\nLicence: MIT\nBy: A. Author <a@b.example>\n");
    expect(text).toContain("Copyright (c) A. Author <a@b.example>\n\nPermission is hereby granted, free of charge");
    expect(text).toContain(`${APACHE}\n\nmade by many`);
    expect(text).not.toContain("Office");
  });
});

describe("a licence", () => {
  const one = (facts: Partial<Shipped>): Shipped => ({
    name: "one",
    version: "1.0.0",
    licence: "MIT",
    people: [],
    home: undefined,
    texts: [],
    ...facts,
  });

  it.each(["MIT", "(MIT OR GPL-2.0-only)", "MIT AND Zlib", "(MIT AND (ISC OR GPL-3.0-only))", "mit OR MIT"])(
    "of %s is met by what is allowed",
    (expression) => expect(isAllowed(expression)).toBe(true),
  );

  it.each([
    ...["GPL-3.0-only", "MIT AND GPL-2.0-only", "(MIT AND LGPL-3.0-only) OR MPL-2.0", "MIT WITH a-thing", "MIT+"],
    ...["SEE LICENSE IN LICENSE.md", "UNLICENSED", "", "(MIT", "MIT)", "MIT GPL-3.0-only"],
  ])("of %s is not", (expression) => expect(isAllowed(expression)).toBe(false));

  it("is known by its text where the package names none", () => {
    const folder = mkdtempSync(join(tmpdir(), "unnamed-"));
    writeFileSync(join(folder, "package.json"), '{"name":"unnamed","version":"2.0.0"}');
    expect(licenceProblems([shippedPackage(folder)])).toEqual(["unnamed 2.0.0 names no licence"]);
    writeFileSync(join(folder, "LICENSE"), APACHE);
    expect(shippedPackage(folder)).toMatchObject({ licence: "Apache-2.0", texts: [APACHE] });
    rmSync(folder, { recursive: true });
  });

  it("without a text of its own takes that of another package, or is refused", () => {
    const bare = one({ licence: "Apache-2.0", people: ["B. Author"] });
    expect(licenceProblems([bare])).toEqual(["the text of Apache-2.0, under which one 1.0.0 is, is not here"]);
    const beside = [bare, one({ name: "two", texts: [APACHE] })];
    expect(licenceProblems(beside)).toEqual([]);
    expect(noticesText(beside, undefined)).toContain(`Copyright (c) B. Author\n\n${APACHE}`);
  });

  it("of the Office library stands with its copy, and what follows from it", () => {
    const terms = readFileSync("node_modules/@microsoft/office-js/LICENSE.md", "utf8").trim();
    const text = noticesText([one({})], terms);
    expect(text).toContain(terms);
    expect(text).toContain("asks them to agree to terms that protect the library at least as much");
  });
});
