import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { buildStamp, READ, VARIABLES } from "../../tools/build/stamp.mjs";

describe("the stamp of a build", () => {
  let root = "";
  const put = (path: string, content: string): void => {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), content);
  };
  const fileOf = (read: string): string => (/\.\w+$/.test(read) ? read : join(read, "deep", "one.ts"));
  const isCurrent = (environment = {}): boolean => buildStamp(root, environment).isCurrent();
  const build = (environment = {}): void => {
    const stamp = buildStamp(root, environment);
    put("dist/workbench/workbench.js", "built");
    stamp.keep();
  };

  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), "stamp-"));
    for (const read of READ) put(fileOf(read), "as it was");
    build();
  });
  afterEach(() => rmSync(root, { recursive: true }));

  it("holds where nothing has changed", () => expect(isCurrent()).toBe(true));

  it("is none before the first build, and after one that did not end", () => {
    buildStamp(root, {}).drop();
    expect(isCurrent()).toBe(false);
  });

  it.each(READ)("does not hold once something in %s is changed, gone or new", (read) => {
    put(fileOf(read), "as it is");
    expect(isCurrent()).toBe(false);
    put(fileOf(read), "as it was");
    expect(isCurrent()).toBe(true);
    rmSync(join(root, fileOf(read)));
    expect(isCurrent()).toBe(false);
  });

  it("tells a file that is missing from an empty one", () => {
    rmSync(join(root, "manifest.xml"));
    build();
    put("manifest.xml", "");
    expect(isCurrent()).toBe(false);
  });

  it("tells one name from another, and what stands in two files from what stands in one", () => {
    put("src/a.ts", "ab");
    put("src/b.ts", "");
    build();
    put("src/a.ts", "a");
    put("src/b.ts", "b");
    expect(isCurrent()).toBe(false);
    put("src/a.ts", "ab");
    put("src/b.ts", "");
    expect(isCurrent()).toBe(true);
    renameSync(join(root, "src/a.ts"), join(root, "src/c.ts"));
    expect(isCurrent()).toBe(false);
  });

  it.each(VARIABLES)("does not hold for another %s", (name) => {
    expect(isCurrent({ [name]: "other" })).toBe(false);
    build({ [name]: "other" });
    expect(isCurrent({ [name]: "other" })).toBe(true);
    expect(isCurrent()).toBe(false);
    expect(isCurrent({ [name]: "" })).toBe(false);
  });

  it("does not hold where what was built is lost or made otherwise", () => {
    put("dist/workbench/workbench.js", "built by hand");
    expect(isCurrent()).toBe(false);
    put("dist/workbench/workbench.js", "built");
    put("dist/more.js", "");
    expect(isCurrent()).toBe(false);
    rmSync(join(root, "dist"), { recursive: true });
    expect(isCurrent()).toBe(false);
  });

  it("is that of the sources as they stood when the build began", () => {
    const stamp = buildStamp(root, {});
    put("src/deep/one.ts", "typed meanwhile");
    stamp.keep();
    expect(isCurrent()).toBe(false);
  });
});
