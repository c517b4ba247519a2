import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { DISCHARGE, SUCTION, SYSTEM } from "../../../shared/help/examples/ranges.ts";
import { USES } from "../../../shared/help/examples/uses.ts";
import { TASK_PAGES } from "../../../shared/help/pages.ts";
import { termsIn } from "../../../shared/help/reference/terms.ts";
import { STEP_TITLES, told } from "../../../shared/help/tasks/told.ts";
import { QUESTIONS } from "../../../shared/help/which-function.ts";
import { pointsOf } from "../../../shared/help/worked-call.ts";
import { STAGES } from "../../../taskpane/pane/stages.ts";
import { HELP_FILES } from "../../support/help.ts";

const ids = new Set(CATALOGUE.map(({ id }) => id));
const textOf = (file: string) =>
  (new JSDOM(HELP_FILES[file]).window.document.querySelector("main")?.textContent ?? "").replace(/\s+/g, " ");

describe("a task page", () => {
  it("speaks of steps as the pane titles them", () => {
    const titles = STAGES.flatMap(({ steps }) => steps.map(({ title }) => title));
    expect(STEP_TITLES.filter((title) => !titles.includes(title))).toEqual([]);
    expect(() => told("[[Nowhere]]")).toThrow("no step Nowhere");
    expect(() => told("{nothing}")).toThrow("no box nothing");
    expect(told("[[Drive]]: {flow}")).toBe("“Drive”: <strong>Flow</strong>");
  });

  it.each(TASK_PAGES)("$title is in steps and points, each of them short", ({ main }) => {
    const { document } = new JSDOM(main).window;
    expect(document.querySelectorAll("h2").length).toBeGreaterThanOrEqual(2);
    for (const item of document.querySelectorAll("main li, section > p")) {
      expect((item.textContent ?? "").split(" ").length).toBeLessThan(75);
    }
  });

  it("of the first duty gives the figures of the sample", () => {
    const text = textOf("first-duty.html");
    // By hand, as tests/shared/calc-sheet holds it for the sample: 76 ft of lift and some 20.6 ft of losses.
    const head = Number(/Total dynamic head ([\d.]+) ft/.exec(text)?.[1]);
    expect(head).toBeGreaterThan(76 + 18);
    expect(head).toBeLessThan(76 + 24);
  });

  it("of two pumps says that two give less than twice one, and more than one", () => {
    const flows = [...textOf("two-pumps.html").matchAll(/([\d,]+) US gpm/g)].map(([, flow = ""]) =>
      Number(flow.replace(",", "")),
    );
    const [one = 0, two = 0] = flows;
    expect(two).toBeGreaterThan(one);
    expect(two).toBeLessThan(2 * one);
  });
});

describe("what the pages rest on", () => {
  it("the system curve of the examples is that of their lines", () => {
    const due = pointsOf("SYSTEMCURVE", [76, SUCTION, DISCHARGE, 2000, 6], "flow", "head");
    expect(SYSTEM.slice(1).map(([flow]) => flow)).toEqual(due.map(([flow]) => flow));
    SYSTEM.slice(1).forEach(([, head], i) => {
      expect(Math.abs(Number(head) - (due[i]?.[1] as number))).toBeLessThanOrEqual(0.051);
    });
  });

  it("every function is named by an example, by a question or both, and none that there is not", () => {
    expect(Object.keys(USES).toSorted()).toEqual([...ids].toSorted());
    const named = [
      ...Object.values(USES).flatMap(({ see }) => see),
      ...QUESTIONS.flatMap(([, functions]) => functions),
    ];
    expect(named.filter((id) => !ids.has(id))).toEqual([]);
  });

  it("docs/terms.md is read row by row", () => {
    const rows =
      "| term | symbol | name in code | engine unit | what it is |\n| - | - | - | - | - |\n| flow | Q | `flow` | m³/s | volume a second |\n| station | – | `x` | – | pumps |";
    expect(termsIn(`# Terms\n\n${rows}\n\nMore.`)).toEqual([
      { names: "flow", symbol: "Q", meaning: "volume a second" },
      { names: "station", symbol: "", meaning: "pumps" },
    ]);
    expect(textOf("terms.html")).toContain("siphon credit");
    expect(textOf("terms.html")).toContain("NPSH3");
  });
});
