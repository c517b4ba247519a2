// `npm run picture`: builds, does what the README says under “Try it”, and takes the picture beside it.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { npmPackages, ROOT, stop } from "./setup.mjs";

const MOST_BYTES = 150_000;
const PATIENCE = 120_000;

npmPackages();
const { built } = await import("./build.mjs");
await built();
const { serveNear } = await import("./serve.mjs");
const { chromium } = await import("playwright-core");
const server = await serveNear(join(ROOT, "dist"), 3001, () => undefined);
const browser = await chromium.launch({
  executablePath: "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu", "--disable-lcd-text"],
});
try {
  const page = await browser.newPage({ viewport: { width: 960, height: 540 } });
  page.setDefaultTimeout(PATIENCE);
  await page.goto(`${server.address}/workbench/`);
  await page.waitForFunction(() => window.dutybook !== undefined);
  await page.getByText("File", { exact: true }).click();
  await page.getByRole("button", { name: "Quarry sump, suction lift (US)" }).click();
  await page.locator("#duty-tab-sheet").click();
  await page.getByRole("button", { name: "Write the calc sheet" }).click();
  await page
    .getByText(/^Written to/)
    .first()
    .waitFor();
  await page.evaluate(() => window.dutybook.host.settled(60_000));
  await page.locator("#duty-tab-duty").click();
  // Nothing says that the grid has drawn.
  await page.waitForTimeout(2000);
  const picture = await page.screenshot();
  if (picture.length > MOST_BYTES) stop(`The picture has ${picture.length} bytes; the README takes ${MOST_BYTES}.`);
  writeFileSync(join(ROOT, "docs", "workbench.png"), picture);
} finally {
  await browser.close();
  await server.close();
}
