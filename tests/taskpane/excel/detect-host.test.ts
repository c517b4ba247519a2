import { afterEach, describe, expect, it } from "vitest";
import { detectHost } from "../../../taskpane/excel/detect-host.ts";
import { isInOffice, type OfficePlaces } from "../../../taskpane/excel/office-address.ts";

const BROWSER: OfficePlaces = {
  location: { search: "?duty=1" },
  name: "a window",
  sessionStorage: { getItem: () => null },
  external: {},
};
const EXCEL: OfficePlaces = { ...BROWSER, location: { search: "?_host_Info=Excel$Win32$16.01$en-US$$$$16" } };

const officeThat = (onReady: () => Promise<unknown>): void => {
  Object.assign(globalThis, { Office: { onReady } });
};

afterEach(() => {
  Reflect.deleteProperty(globalThis, "Office");
});

describe("a page opened by a program of the suite", () => {
  // The places in which office.js 1.1.110 looks for its host, read in its own source (_retrieveHostInfo).
  it.each<{ where: string; page: OfficePlaces }>([
    { where: "its address", page: EXCEL },
    { where: "an object that the program put into it", page: { ...BROWSER, external: { GetHostInfo: () => "Excel" } } },
    { where: "another such object", page: { ...BROWSER, agaveHost: { GetHostInfo: () => "Excel" } } },
    { where: "the name of its window", page: { ...BROWSER, name: '{"hostInfo":"Excel$Web$16.00$en-GB"}' } },
    {
      where: "what was kept over a reload",
      page: { ...BROWSER, sessionStorage: { getItem: (key) => (key === "hostInfoValue" ? "Excel$Mac$16.00" : null) } },
    },
  ])("is known by $where", ({ page }) => {
    expect(isInOffice(page)).toBe(true);
  });

  it.each<{ why: string; page: OfficePlaces }>([
    { why: "none of them says so", page: BROWSER },
    { why: "its window has no name", page: { ...BROWSER, name: "" } },
    { why: "the name of its window is a text of another's", page: { ...BROWSER, name: '"hostInfo"' } },
    {
      why: "storage is walled off",
      page: {
        ...BROWSER,
        sessionStorage: {
          getItem: () => {
            throw new Error("denied");
          },
        },
      },
    },
  ])("is a browser's own where $why", ({ page }) => {
    expect(isInOffice(page)).toBe(false);
  });
});

describe("the program the page is open in", () => {
  it.each([
    { why: "Excel", host: "Excel", answer: "excel" },
    { why: "another program of the suite", host: "Word", answer: "other office" },
    { why: "no program", host: null, answer: "browser" },
  ])("is told from what office.js says: $why", async ({ host, answer }) => {
    officeThat(() => Promise.resolve({ host }));
    expect(await detectHost(EXCEL)).toBe(answer);
  });

  it("is a browser where nothing says otherwise, and the library is not asked", async () => {
    officeThat(() => Promise.reject(new Error("asked")));
    expect(await detectHost(BROWSER)).toBe("browser");
  });

  it("is not known where Excel opened the page and its library could not be had", async () => {
    expect(await detectHost(EXCEL)).toBe("no library");
  });

  it("is waited for without limit inside Excel", async () => {
    let answer: (info: unknown) => void = () => undefined;
    officeThat(() => new Promise((resolve) => (answer = resolve)));
    let told: string | undefined;
    const detecting = detectHost(EXCEL).then((name) => {
      told = name;
    });
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(told).toBeUndefined();
    answer({ host: "Excel" });
    await detecting;
    expect(told).toBe("excel");
  });
});
