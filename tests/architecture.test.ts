import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";

/** Who may import whom. Tests and configuration may import anything. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  src: ["src"],
  shared: ["src", "shared"],
  functions: ["src", "shared", "functions"],
  help: ["src", "shared", "help"],
  taskpane: ["src", "shared", "taskpane"],
  workbench: ["src", "shared", "taskpane", "workbench"],
  tools: ["src", "shared", "taskpane", "workbench", "tools"],
};

/** The folders of shared, the ground first. */
const FLOORS = [
  "cells",
  "text",
  "ports",
  "xlsx",
  "tables",
  "pump-table",
  "file-reading",
  "catalogue",
  "duty",
  "calc-sheet",
  "package",
  "tracing",
  "help",
];

const TEXT = /\.(tsx?|mts|mjs|cjs|js|json|md|html|css|xml|svg|yml|yaml|csv|txt|npmrc|gitignore)$/;

function filesUnder(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.posix.join(entry.parentPath.replaceAll("\\", "/"), entry.name));
}

interface Import {
  readonly file: string;
  readonly wanted: string;
}

/** What the modules of a folder import, types included, whichever way it is written. */
function importsOf(folder: string): readonly Import[] {
  const statement = /(?:^|[\s;])(?:import|export)\s[^;'"]*?from\s*["']([^"']+)["']|\bimport\s*\(?\s*["']([^"']+)["']/g;
  return filesUnder(folder)
    .filter((file) => /\.(tsx?|mts|mjs)$/.test(file))
    .flatMap((file) =>
      [...readFileSync(file, "utf8").matchAll(statement)].map((match) => ({
        file,
        wanted: (match[1] ?? match[2]) as string,
      })),
    );
}

function fileOf({ file, wanted }: Import): string {
  return path.posix.join(path.posix.dirname(file), wanted);
}

function partOf(each: Import): string {
  return fileOf(each).split("/")[0] as string;
}

/** The files of a folder that import each other in a circle, types counted: what is left once the ends are taken off. */
function circlesIn(folder: string): readonly string[] {
  let left = importsOf(folder);
  for (let before = Number.POSITIVE_INFINITY; left.length < before; ) {
    before = left.length;
    const importing = new Set(left.map(({ file }) => file));
    const imported = new Set(left.map(fileOf));
    left = left.filter((each) => importing.has(fileOf(each)) && imported.has(each.file));
  }
  return left.map((each) => `${each.file} imports ${fileOf(each)}`);
}

describe("the parts of the project", () => {
  it.each(Object.entries(MAY_IMPORT))("%s imports only %s", (folder, allowed) => {
    const broken = importsOf(folder).filter((each) => each.wanted.startsWith(".") && !allowed.includes(partOf(each)));
    expect(broken).toEqual([]);
  });

  it("keep to the floors of shared: a folder imports only those named before it", () => {
    const floorOf = (file: string): number => FLOORS.indexOf(file.split("/")[1] as string);
    const files = importsOf("shared").filter(({ wanted }) => wanted.startsWith("."));
    const upwards = files.filter((each) => {
      const target = path.posix.normalize(path.posix.join(path.posix.dirname(each.file), each.wanted));
      return target.startsWith("shared/") && floorOf(target) > floorOf(each.file);
    });
    expect(upwards).toEqual([]);
    expect([...new Set(files.map(({ file }) => file.split("/")[1]))].sort()).toEqual([...FLOORS].sort());
  });

  it("are read by these tests", () => {
    for (const folder of ["src", "shared", "functions", "taskpane"]) {
      expect(importsOf(folder).length, folder).toBeGreaterThan(1);
    }
  });

  it("end their own imports in .ts, so that nothing is guessed", () => {
    const guessed = Object.keys(MAY_IMPORT)
      .flatMap(importsOf)
      .filter(({ wanted }) => wanted.startsWith(".") && !/\.(tsx?|mjs|css|json)$/.test(wanted));
    expect(guessed).toEqual([]);
  });

  it("word a value beyond a limit in one place", () => {
    const literal = Object.keys(MAY_IMPORT)
      .flatMap(filesUnder)
      .filter((file) => /\.tsx?$/.test(file) && !file.startsWith("src/basis/"))
      .filter((file) => /code:\s*"out-of-range"/.test(readFileSync(file, "utf8")));
    expect(literal).toEqual([]);
  });

  it("have no circle of imports in the engine, not even of types", () => {
    expect(circlesIn("src")).toEqual([]);
  });

  it("leave the engine without packages and without Node", () => {
    expect(importsOf("src").filter(({ wanted }) => !wanted.startsWith("."))).toEqual([]);
  });

  it("speak to Excel in two places only", () => {
    const speaking = Object.keys(MAY_IMPORT)
      .flatMap(filesUnder)
      .filter((file) => /\.tsx?$/.test(file) && !/^(functions|taskpane\/excel)\//.test(file))
      .filter((file) =>
        /\b(Excel|Office|CustomFunctions)\.[A-Za-z]|typeof (Excel|Office|CustomFunctions)\b/.test(codeOf(file)),
      );
    expect(speaking).toEqual([]);
  });
});

/** A module without its comments and texts. */
function codeOf(file: string): string {
  return readFileSync(file, "utf8")
    .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, "")
    .replace(/"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, '""');
}

describe("the project", () => {
  const own = [
    ...[
      "src",
      "shared",
      "functions",
      "help",
      "taskpane",
      "workbench",
      "tools",
      "tests",
      "docs",
      "assets",
      ".ci",
    ].flatMap(filesUnder),
    ...readdirSync(".", { withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ name }) => name),
  ].filter((file) => (TEXT.test(file) || file.startsWith(".ci/")) && file !== "tests/architecture.test.ts");

  it.each([
    { what: "a folder of one machine", pattern: /(?<![\w.~$/-])\/(work|root|home|Users)\/[\w.-]+|[A-Z]:\\Users\\\w/ },
    {
      what: "the host of a package registry",
      pattern: /registry\.(npmjs|yarnpkg)\.|npm\.pkg\.github|"resolved": "https?:/,
    },
  ])("mentions nowhere $what", ({ pattern }) => {
    expect(own.length).toBeGreaterThan(50);
    expect(own.filter((file) => pattern.test(readFileSync(file, "utf8")))).toEqual([]);
  });
});
