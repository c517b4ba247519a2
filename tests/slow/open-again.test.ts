import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { serve } from "../../tools/serve.mjs";
import { builtPages, startChromium, type WatchedPage, watchedPage } from "../support/browser.ts";
import { dutyText, STRAIGHT_PUMP } from "../support/duty-of.ts";
import { INVENTED_DUTIES } from "../support/invented-duties.ts";
import { allConverted } from "../support/libreoffice.ts";
import { fileOf, openedAgain, rowAt, typed } from "../support/opened-again.ts";
import { showStage } from "../support/pane-page.ts";
import { editsOf, withEdits } from "../support/sheet-edits.ts";

const CASES = dutyText(
  { item: "P-7", directCost: "46000", margin: "20", date: "2026-01-02", reference: "007" },
  {
    pump: STRAIGHT_PUMP,
    dischargeLine: [
      { pipe: "8in sch40", length: "500 ft", fittings: "1 gate" },
      { pipe: "8in sch40", length: "20 ft", fittings: "1 exit" },
    ],
    cases: [{ name: "high water", hours: "", fields: { sourceLevel: "3 m" } }],
  },
);

// Another program's reading and writing of the file between ours: names, constants and XML are as it keeps them.
describe("a duty whose file LibreOffice saved", () => {
  const samples = SAMPLE_DUTIES.map(({ duty }) => duty);
  let saved: readonly Uint8Array[];
  beforeAll(async () => {
    saved = await allConverted(
      [
        ...samples.map((duty) => fileOf(duty)),
        fileOf(CASES, typed("flow", 650), typed("direct_cost", 47000), typed("cases", "flood", 0, 0)),
        fileOf(CASES, rowAt("discharge_line", 1, ["6in sch40", 12, "1 gate"])),
      ],
      "xlsx",
    );
  });

  it.each(samples.map((duty, i) => ({ name: SAMPLE_DUTIES[i]?.name, duty, i })))(
    "is the same: $name",
    ({ duty, i }) => {
      const { back } = openedAgain(saved[i] as Uint8Array);
      expect(back.taken).toEqual([]);
      expect(back.duty).toEqual(duty);
    },
  );

  it("has what was typed into its cells", () => {
    const { back } = openedAgain(saved[samples.length] as Uint8Array);
    expect(back.duty.fields).toEqual({ ...CASES.fields, flow: "650", directCost: "47000" });
    expect(back.duty.cases?.[0]?.name).toBe("flood");
    expect(back.taken).toHaveLength(3);
  });

  it("has the run that was put between two others", () => {
    const { duty } = openedAgain(saved[samples.length + 1] as Uint8Array).back;
    expect(duty.dischargeLine.map(({ length }) => length)).toEqual(["500 ft", "12", "20 ft"]);
  });
});

// Every kind of duty, its sheets edited as a user does before the other program saves them.
describe("an edited duty whose file LibreOffice saved", () => {
  const duties = [...SAMPLE_DUTIES, ...INVENTED_DUTIES].map(({ name, duty }) => ({ name, duty, edits: editsOf(duty) }));
  let saved: readonly Uint8Array[];
  beforeAll(async () => {
    const files = duties.map(({ duty, edits }) => fileOf(duty, ...edits.map(({ edit }) => edit)));
    const batches = Array.from({ length: Math.ceil(files.length / 6) }, (_, i) => files.slice(6 * i, 6 * i + 6));
    const done: Uint8Array[] = [];
    for (const batch of batches) done.push(...(await allConverted(batch, "xlsx")));
    saved = done;
  });

  it.each(duties.map((one, i) => ({ ...one, i })))("has the edits, and all else as it was: $name", (one) => {
    const { back } = openedAgain(saved[one.i] as Uint8Array);
    expect(back.duty).toEqual(withEdits(one.duty, one.edits));
    expect(back.taken.map(({ place }) => place).toSorted()).toEqual(one.edits.map(({ place }) => place).toSorted());
    expect(back.remarks.filter(({ kind }) => kind !== "unread")).toEqual([]);
  });
});

describe("the pane beside the sheets of a duty", () => {
  let server: Awaited<ReturnType<typeof serve>>;
  let browser: Browser;
  let watched: WatchedPage;
  beforeAll(async () => {
    server = await serve(builtPages());
    browser = await startChromium();
    watched = await watchedPage(browser, server.address, { width: 1280, height: 900 });
    await watched.page.goto(`${server.address}/workbench/`);
    await watched.page.waitForFunction(() => window.dutybook !== undefined);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });

  it("says what differs, takes the sheet’s, and writes the pane’s as a new revision", async () => {
    const { page, problems } = watched;
    await page.locator(".samples > summary").click();
    await page.getByRole("button", { name: "Process water, flooded suction (metric)" }).click();
    await showStage(page, "sheet");
    await page.getByRole("button", { name: "Write the calc sheet" }).click();
    const duties = page.locator(".sheet-duties");
    await duties.getByText("“Duty P-202” and the pane agree.").waitFor();
    await page.evaluate(() => window.dutybook?.host.write({ "'Duty P-202'!flow": 111 }));
    await duties.getByText("1 input differs between the pane and “Duty P-202”").waitFor();
    await duties.locator("summary").click();
    const picture = process.env["PICTURES"];
    if (picture !== undefined) await page.screenshot({ path: `${picture}/differs.png` });
    await page.getByRole("button", { name: "Write as a new revision" }).click();
    await page.getByText("What changed:").waitFor();
    if (picture !== undefined) await page.screenshot({ path: `${picture}/revision.png` });
    const names = await page.evaluate(() => window.dutybook?.host.sheetNames());
    expect(names).toContain("Duty P-202");
    expect(names).toContain("Duty P-202 (2)");
    expect(problems).toEqual([]);
  });
});
