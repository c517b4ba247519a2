import { afterEach, describe, expect, it } from "vitest";
import { detectHost } from "../../../taskpane/excel/detect-host.ts";

afterEach(() => {
  Reflect.deleteProperty(globalThis, "Office");
});

describe("the program the page is open in", () => {
  it.each([
    { why: "Excel", host: "Excel", answer: "excel" },
    { why: "another program of the suite", host: "Word", answer: "other office" },
    { why: "no program", host: null, answer: "browser" },
  ])("is told from what office.js says: $why", async ({ host, answer }) => {
    Object.assign(globalThis, { Office: { onReady: () => Promise.resolve({ host }) } });
    expect(await detectHost()).toBe(answer);
  });

  it("is a browser where office.js is not there", async () => {
    expect(await detectHost()).toBe("browser");
  });

  it("is a browser where office.js never settles", async () => {
    Object.assign(globalThis, { Office: { onReady: () => new Promise(() => undefined) } });
    expect(await detectHost(20)).toBe("browser");
  });
});
