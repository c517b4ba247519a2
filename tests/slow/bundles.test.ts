import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { builtPages } from "../support/browser.ts";

const DIST = builtPages();

// What a pane loads over a slow line, gzipped. The limits are this project's own.
describe("the built scripts", () => {
  it.each([
    { file: "functions.js", limit: 335_000 },
    { file: "taskpane.js", limit: 230_000 },
  ])("$file stays within $limit bytes gzipped", ({ file, limit }) => {
    expect(gzipSync(readFileSync(join(DIST, file)), { level: 9 }).length).toBeLessThan(limit);
  });

  it("leave out what only the help pages need", () => {
    // From the method text of TDH, which its help page must show.
    const words = "The velocity head at the outlet is lost once";
    expect(readFileSync(join(DIST, "functions.js"), "utf8")).not.toContain(words);
    expect(readFileSync(join(DIST, "help", "TDH.html"), "utf8")).toContain(words);
  });
});
