import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { builtPages } from "../support/browser.ts";

const DIST = builtPages();

/** A script by the name of its entry; behind that it carries one of its content. */
function builtScript(entry: string): Buffer {
  const files = readdirSync(DIST).filter((file) => new RegExp(`^${entry}\\.[0-9a-f]{8}\\.js$`).test(file));
  expect(files).toHaveLength(1);
  return readFileSync(join(DIST, files[0] as string));
}

// What a pane loads over a slow line, gzipped. The limits are this project's own.
describe("the built scripts", () => {
  it.each([
    { entry: "functions", limit: 310_000 },
    { entry: "taskpane", limit: 110_000 },
    { entry: "later", limit: 45_000 },
    { entry: "calculation", limit: 93_000 },
  ])("$entry stays within $limit bytes gzipped", ({ entry, limit }) => {
    expect(gzipSync(builtScript(entry), { level: 9 }).length).toBeLessThan(limit);
  });

  it("have the functions under the name that the manifest has for every version, too", () => {
    expect(readFileSync(join(DIST, "functions.js")).equals(builtScript("functions"))).toBe(true);
  });

  it("leave out what only the help pages need", () => {
    // From the method text of TDH, which its help page must show.
    const words = "The velocity head at the outlet is lost once";
    expect(builtScript("functions").toString("utf8")).not.toContain(words);
    expect(readFileSync(join(DIST, "help", "TDH.html"), "utf8")).toContain(words);
  });
});
