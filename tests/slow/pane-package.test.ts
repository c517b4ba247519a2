import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Argument } from "../../shared/cells/cell.ts";
import { QUARRY } from "../support/duty-of.ts";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  openStage,
  openStep,
  type PanePages,
  panePages,
  shownFigure,
  startFrom,
  textOf,
} from "../support/pane-page.ts";

const STEPS = ["pressure", "bolting", "drive", "priming", "materials", "estimate"] as const;

let panes: PanePages;

beforeAll(async () => {
  panes = await panePages();
});

afterAll(async () => {
  await panes?.close();
});

/** The quarry sample in the stage of the package, every step of it open. */
async function openPackage(width: number, dark = false): Promise<Page> {
  const page = await panes.open({ width, dark });
  await startFrom(page, 0);
  await openStage(page, "package");
  await page.locator("#duty-step-materials svg.picture").waitFor();
  return page;
}

function answerOf(id: string, ...args: readonly Argument[]): Argument {
  const entry = entryNamed(id);
  const outcome = entry === undefined ? undefined : call(entry, [...args]);
  if (outcome?.ok !== true) throw new Error(id);
  return outcome.value;
}

describe.each([
  { width: 320, dark: false },
  { width: 450, dark: true },
])("the package steps at $width px", ({ width, dark }) => {
  it("fit, and are accessible", async () => {
    const page = await openPackage(width, dark);
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await openStage(page, "cost");
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
  });

  it("have a picture each, said in words too, with no label over another or over the edge", async () => {
    const page = await openPackage(width, dark);
    for (const key of STEPS) {
      const picture = (await openStep(page, key)).locator("svg.picture").first();
      expect((await picture.getAttribute("aria-label"))?.length ?? 0, key).toBeGreaterThan(40);
      const clashes = await picture.evaluate((svg) => {
        const frame = svg.getBoundingClientRect();
        const boxes = [...svg.querySelectorAll("text")].map((text) => ({
          said: text.textContent?.trim() ?? "",
          box: text.getBoundingClientRect(),
        }));
        const outside = boxes
          .filter(
            ({ box }) => box.left < frame.left - 1 || box.right > frame.right + 1 || box.bottom > frame.bottom + 1,
          )
          .map(({ said }) => `${said} is over the edge`);
        const small = boxes.filter(({ box }) => box.height < 11).map(({ said }) => `${said} is too small`);
        const over = boxes.flatMap((one, i) =>
          boxes.slice(i + 1).flatMap((other) => {
            const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
            const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
            return across > 1 && down > 3 ? [`${one.said} / ${other.said}`] : [];
          }),
        );
        return [...outside, ...small, ...over];
      });
      expect(clashes, key).toEqual([]);
    }
  });

  it("show what the cell functions answer", async () => {
    const page = await openPackage(width, dark);
    const line = QUARRY.suctionLine.map(({ pipe, length, fittings }) => [pipe, Number(length), fittings]);
    const { fields } = QUARRY;
    const lift = Number(fields.pumpLevel) - Number(fields.sourceLevel);
    const time = answerOf(
      "PRIMETIME",
      line,
      lift,
      fields.airPump,
      Number(fields.casingVolume),
      Number(fields.altitude),
      "water",
      Number(fields.temperature),
    );
    // Shown in whole seconds.
    expect(
      Math.abs((await shownFigure(await openStep(page, "priming"), "Time to prime", "s")) - Number(time)),
    ).toBeLessThanOrEqual(0.5);
    const power = answerOf(
      "ENGINESITEPOWER",
      Number(fields.engineRating),
      Number(fields.altitude),
      Number(fields.airTemperature),
      fields.aspiration,
    );
    expect(
      (await shownFigure(await openStep(page, "drive"), "Engine power on site", "hp")) / Number(power),
    ).toBeCloseTo(1, 3);
    const rating = answerOf("FLANGERATING", fields.casingMaterial, fields.flangeClass, Number(fields.temperature));
    expect(await shownFigure(await openStep(page, "pressure"), "Rating of the class offered", "psig")).toBe(rating);
  });

  it("rank the options, each opening to what speaks for and against it", async () => {
    const page = await openPackage(width, dark);
    const first = (await openStep(page, "materials")).locator(".options > li").first();
    expect(await textOf(first.locator(".option-name"))).toMatch(/iron/);
    await first.locator("details").evaluate((one) => one.removeAttribute("open"));
    expect(await first.locator("p").first().isVisible()).toBe(false);
    await first.locator("summary").click();
    expect(await first.locator("p").first().isVisible()).toBe(true);
  });

  it("offer the known names of a material", async () => {
    const page = await openPackage(width, dark);
    const box = page.locator("#duty-casingMaterial");
    await box.fill("cf8");
    await page.getByRole("option", { name: "CF8M" }).click();
    expect(await box.inputValue()).toBe("CF8M");
    await expect
      .poll(() => textOf(page.locator("#duty-step-pressure .remarks-of-section")))
      .toMatch(/2\.2|not yet verified/);
  });
});
