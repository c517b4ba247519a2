import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { serve } from "../../tools/serve.mjs";
import { builtPages, PATIENCE, startChromium } from "../support/browser.ts";
import { openStep, type PanePages, panePages, showStage, startFrom, textOf } from "../support/pane-page.ts";

/** Draws the pane with all steps open for a duty with hostile texts in each of its boxes, as the pane draws itself. */
const ENTRY = `
import { html, render } from "lit";
import { SAMPLE_DUTIES } from "./shared/duty/samples.ts";
import { inBrief } from "./taskpane/pane/in-brief.ts";
import { LATER_PART } from "./taskpane/pane/later/later-part.ts";
import { openingState } from "./taskpane/pane/state.ts";
import { STAGES } from "./taskpane/pane/stages.ts";
import { footBarView } from "./taskpane/pane/views/foot-bar.ts";
import { paneHeadView } from "./taskpane/pane/views/pane-head.ts";
import { stepView } from "./taskpane/pane/views/step.ts";
import { workedOut } from "./taskpane/pane/worked.ts";
import { HOSTILE, hostilePlaces } from "./tests/support/hostile-places.ts";
import { STATION } from "./tests/support/station-duty.ts";
import "./taskpane/pane/pane.css";

const root = document.getElementById("pane");
root.className = "duty-pane";

function faultsOf(duty) {
  const state = { ...openingState(duty), closedSteps: new Set() };
  const worked = workedOut(duty);
  const announcement = inBrief(worked, duty.unitSet).join(". ");
  const context = { state, worked, host: undefined, help: "help/", send() {}, goTo() {}, later: LATER_PART, announcement };
  const steps = STAGES.flatMap((stage) => stage.steps).map((step) => stepView(context, step));
  render(html\`\${paneHeadView(context)} \${steps} \${footBarView(context)}\`, root);
  const text = root.textContent;
  const wrong = /.{0,40}(NaN|undefined|Infinity|\\[object|Not worked out for this duty).{0,40}/s.exec(text)?.[0];
  const markup = [...root.querySelectorAll("b")].some((b) => b.textContent === "x");
  return [...(wrong ? [wrong] : []), ...(markup ? ["markup taken for markup"] : []), ...(text.length < 2000 ? ["empty"] : [])];
}

const DUTIES = [...SAMPLE_DUTIES.map(({ duty }) => duty), STATION];

window.drawHostile = (which) => {
  const faults = [];
  let drawn = 0;
  hostilePlaces(DUTIES[which]).forEach((place, at) => {
    for (const text of ["", "<b>x</b>", HOSTILE[at % HOSTILE.length]]) {
      let found;
      try {
        found = faultsOf(place.holding(text));
      } catch (error) {
        found = [String(error)];
      }
      drawn += 1;
      faults.push(...found.map((fault) => place.key + " " + text + ": " + fault));
    }
  });
  return { drawn, faults };
};
`;

declare global {
  interface Window {
    drawHostile?: (which: number) => { readonly drawn: number; readonly faults: readonly string[] };
  }
}

describe("a pane with every step open", () => {
  let pages: PanePages;
  let page: Page;

  beforeAll(async () => {
    pages = await panePages(ENTRY);
    page = await pages.open({ width: 480 });
  });
  afterAll(() => pages?.close());

  it.each(
    [...SAMPLE_DUTIES.map(({ name }) => name), "a further pump and cases"].map((name, at) => [name, at] as const),
  )("is drawn with any text in any box of: %s", async (_, which) => {
    const found = await page.evaluate((at) => window.drawHostile?.(at), which);
    expect(found?.faults).toEqual([]);
    expect(found?.drawn).toBeGreaterThan(150);
  });
});

/** Figures of the quarry at 60 °F: total head, NPSH available, power needed. */
const WARM = ["96.6 ft", "19.1 ft", "50.3 hp"] as const;

/** What the pane says in duty and package; the power needed stands in the step of the driver. */
async function everyStage(page: Page): Promise<string> {
  const driver = await textOf(await openStep(page, "drive"));
  await showStage(page, "duty");
  return `${driver} ${await textOf(page.locator("body"))}`;
}

/** The error at the box, and no figure of the warm liquid. */
async function expectCold(page: Page): Promise<void> {
  await expect.poll(() => page.locator("#duty-temperature").inputValue()).toBe("15");
  expect(await page.locator("#duty-temperature").getAttribute("aria-invalid")).toBe("true");
  expect(await textOf(page.locator("#duty-temperature-findings"))).not.toBe("");
  expect(await page.locator("#duty-flow").inputValue()).toBe("2400");
  const shown = await everyStage(page);
  for (const figure of WARM) expect(shown).not.toContain(figure);
  expect(await page.locator(".failed[role=alert]").count()).toBe(0);
}

async function typeCold(page: Page): Promise<void> {
  await startFrom(page, 0);
  for (const figure of WARM) await expect.poll(() => everyStage(page)).toContain(figure);
  await page.locator("#duty-temperature").fill("15");
  await page.locator("#duty-flow").fill("2400");
}

describe("a liquid too cold, in the built task pane", () => {
  let server: Awaited<ReturnType<typeof serve>>;
  let browser: Browser;
  let context: BrowserContext;
  const problems: string[] = [];

  beforeAll(async () => {
    server = await serve(builtPages());
    browser = await startChromium();
    context = await browser.newContext({ viewport: { width: 400, height: 800 } });
    context.setDefaultTimeout(PATIENCE);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });

  async function open(): Promise<Page> {
    const page = await context.newPage();
    page.on("pageerror", (error) => problems.push(error.message));
    await page.goto(`${server.address}/taskpane.html`);
    await page.locator("#duty-temperature").waitFor();
    return page;
  }

  it("is told at its box, over a reload and in a new tab, and all is worked out again once it is warm", async () => {
    const page = await open();
    await typeCold(page);
    await expectCold(page);
    await page.reload();
    await expectCold(page);
    const tab = await open();
    await expectCold(tab);
    await tab.locator("#duty-flow").fill("1200");
    await tab.locator("#duty-temperature").fill("60");
    for (const figure of WARM) await expect.poll(() => everyStage(tab)).toContain(figure);
    expect(problems).toEqual([]);
  });
});
