import { describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import type { SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { SOURCES } from "../../../src/basis/citation.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { convertNumbers } from "../../../taskpane/pane/convert-numbers.ts";
import { dutyRead, dutyText, QUARRY } from "../../support/duty-of.ts";
import { allJudged } from "../../support/judged.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { foreignWords } from "../../support/spelling.ts";

/** What a sheet shows, texts in its formulas too; without titles of works, which are their publishers'. */
function shownOn({ cells, charts = [], lists = [] }: SheetSpec): readonly string[] {
  const inFormulas = (f = ""): readonly string[] => f.match(/"(?:[^"]|"")*"/g) ?? [];
  const ofCells = cells.flatMap(({ v, f, cached }) => [
    ...(typeof v === "string" ? [v] : []),
    ...inFormulas(f),
    ...[cached].flat(2).filter((one) => typeof one === "string"),
  ]);
  const ofCharts = JSON.stringify(charts.map((chart) => ({ ...chart, series: [] })));
  return [...ofCells, ofCharts, JSON.stringify(lists)].filter(isOurs);
}

/** Works, whose titles and places are cited as their publishers spell them. */
const TITLES = Object.entries(SOURCES).flatMap(([key, { title }]) =>
  ["practice", "house", "stated"].includes(key) ? [] : [title],
);

function isOurs(text: string): boolean {
  return TITLES.every((title) => !text.includes(title));
}

describe.each<UnitSetName>(["US", "SI"])("the sheets in %s", (units) => {
  it.each(SAMPLE_DUTIES)("have no word in the other spelling, but those typed: $name", ({ duty }) => {
    const typed = convertNumbers(duty, units);
    const wrong = sheetsOf(typed)
      .all.flatMap(shownOn)
      .filter((text) => foreignWords([text], typed.fields, units).length > 0);
    expect([...new Set(wrong)]).toEqual([]);
  });
});

it("keep what the estimator typed", () => {
  const item = "Grey harbour pumps";
  const texts = sheetsOf(dutyText({ item })).all.flatMap(shownOn);
  expect(texts.some((text) => text.includes(item))).toBe(true);
  expect(texts.some((text) => /gray harbor/i.test(text))).toBe(false);
});

it("a name read in either spelling gives the same verdicts", () => {
  const judged = (casingMaterial: string) => {
    const states = allJudged(dutyRead({ ...QUARRY, fields: { ...QUARRY.fields, casingMaterial } }));
    return JSON.stringify(states).replaceAll("gray", "grey");
  };
  expect(judged("gray iron")).toBe(judged("grey iron"));
});
