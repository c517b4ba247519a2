import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";

/** Keys that say something else beside some functions, and why the name is right all the same. */
const SEVERAL_ABOUTS: Readonly<Record<string, string>> = {
  NPSHR: "at the flow asked, or at best efficiency",
  curveSpeed: "by which the region goes, or which measured speeds are held against",
  curve: "of one pump, of all that run, or those of several, one below the other",
  dischargeLine: "with the levels of its rows where they count",
  flangeClass: "of a rating, or of a drilling, which has tables beside the classes",
  flow: "through the pipe, of the pump, of the slurry: the flow the function is about",
  head: "of the duty, or of the pump",
  length: "developed length, or a piece of pipe",
  liquid: "as pumped, or between solids that have arguments of their own",
  numberOfPumps: "that run together, or that a suction line serves",
  pipe: "some functions take only some pipes",
  pressure: "the greatest at the flange, of the joint, in the line: the pressure the function is about",
  ratedPower: "net, or gross with the losses beside it",
  shaftPower: "the greatest where a driver is chosen, that while running where energy or fuel is counted",
  sourceLevel: "as it stands, or the highest it rises to",
  startLevel: "of a line, or of a sump pumped down",
  suctionLine: "priming fills all of its length, air above the liquid and all",
};

const KEYS = new Map<string, Set<string>>();
for (const { parameters } of CATALOGUE) {
  for (const [key, { about }] of parameters) KEYS.set(key, (KEYS.get(key) ?? new Set()).add(about));
}
const SEVERAL = [...KEYS].filter(([, abouts]) => abouts.size > 1).map(([key]) => key);

describe("the names of arguments", () => {
  it("mean one thing each, but for those with a reason", () => {
    expect(SEVERAL.filter((key) => !(key in SEVERAL_ABOUTS))).toEqual([]);
    expect(Object.keys(SEVERAL_ABOUTS).filter((key) => !SEVERAL.includes(key))).toEqual([]);
  });

  it("are one for each thing", () => {
    const keysOf = new Map<string, string[]>();
    for (const [key, abouts] of KEYS)
      for (const about of abouts) keysOf.set(about, [...(keysOf.get(about) ?? []), key]);
    expect([...keysOf.values()].filter((keys) => keys.length > 1)).toEqual([]);
  });

  it("say the ends of a range as maximum and minimum", () => {
    expect(
      [...KEYS.keys()].filter((key) => /^(greatest|least|max|min|most|highest|lowest)(?![a-z])/.test(key)),
    ).toEqual([]);
  });
});

// What a workbook in use has written down. The list is kept by hand: a line of it changes where the founders decide that
// formulas in use may break, and the changelog says so. A new function or a new last argument, one that may be left out,
// is added to it by hand as well.
it("keeps every released name, and the order of the arguments", () => {
  const released = readFileSync(new URL("./released-names.txt", import.meta.url), "utf8")
    .trim()
    .split("\n");
  const now = CATALOGUE.map(({ id, parameters, unitless, repeating }) => {
    const names = parameters.map(([key, parameter], i) => {
      const repeated = repeating && i === parameters.length - 1;
      return repeated ? `…${key}` : "fallback" in parameter ? `[${key}]` : key;
    });
    return `${id}(${[...names, ...(unitless ? [] : ["[units]"])].join(", ")})`;
  });
  expect(
    now.toSorted(),
    "A released name, or the order of arguments, has changed: formulas in use would break. This is a decision, not a " +
      "repair: agree it, say it in the changelog, and only then change tests/shared/catalogue/released-names.txt by hand.",
  ).toEqual(released.toSorted());
});
