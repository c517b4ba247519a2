import { it } from "vitest";
import { expectNoAxeViolations, expectNoSidewaysScroll, panePages, startFrom } from "../support/pane-page.ts";
const ENTRY = `
  import { mountPane } from "./taskpane/pane/pane.ts";
  mountPane(document.getElementById("pane"), { host: undefined });
`;
it("looks", async () => {
  const panes = await panePages(ENTRY);
  for (const [width, dark] of [[320, false], [450, true]] as const) {
    const page = await panes.open({ width, dark });
    await startFrom(page, 3);
    await page.evaluate(() => {
      for (const step of document.querySelectorAll<HTMLDetailsElement>("details.step")) step.open = ["slurry", "priming", "materials"].some((k) => step.id === `duty-step-${k}`);
    });
    await page.locator("#duty-step-slurry svg.picture").waitFor();
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await page.locator("#duty-step-slurry").screenshot({ path: `/tmp/slurry-${width}.png` });
    await page.locator("#duty-flow").count();
    await page.evaluate(() => { const s = document.querySelector<HTMLDetailsElement>("#duty-step-flow") ; if (s) s.open = true; });
    const ids = await page.evaluate(() => { const all = [...document.querySelectorAll("[id]")].map((e) => e.id); return all.filter((id, i) => all.indexOf(id) !== i); });
    console.log("twice", ids);
    await page.locator("#duty-medianSize").fill("1.2");
    await page.waitForTimeout(1200);
    await page.locator("#duty-step-slurry").screenshot({ path: `/tmp/slurry-bed-${width}.png` });
  }
  await panes.close();
}, 120000);
