import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { functionMetadata } from "../../../shared/catalogue/metadata.ts";
import released from "../../../shared/catalogue/released.json" with { type: "json" };
import { brokenNames, signaturesOf } from "../../../tools/release/released-names.mjs";

/** Keys that say something else beside some functions, and why the name is right all the same. */
const SEVERAL_ABOUTS: Readonly<Record<string, string>> = {
  NPSHR: "at the flow asked, or at best efficiency",
  curveSpeed: "by which the region goes, or which measured speeds are compared with",
  curve: "of one pump, of all that run, or those of several, one below the other",
  dischargeLine: "with the levels of its rows where they count",
  flangeClass: "of a rating, or of a drilling, which has tables beside the classes",
  flow: "through the pipe, of the pump, of the slurry: the flow the function is about",
  head: "of the duty, or of the pump",
  length: "developed length, or a piece of pipe",
  liquid: "as pumped, or between solids that have arguments of their own",
  numberOfPumps: "that run together, or that a suction line serves",
  pipe: "some functions take only some pipes",
  pressure: "the maximum at the flange, of the joint, in the line: the pressure the function is about",
  ratedPower: "net, or gross with the losses beside it",
  shaftPower: "the maximum where a driver is chosen, that while running where energy or fuel is counted",
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

// What workbooks in use have written down. `npm run release` adds what is new to the list; nothing else changes it.
describe("released names", () => {
  const now = signaturesOf(functionMetadata("https://localhost:3000/"));

  it("are kept, with their arguments in order", () => {
    expect(
      brokenNames(released, now),
      "Formulas in use would break. An argument may be added after those there are, units too, and one that may be " +
        "left out; a function may be added.",
    ).toEqual([]);
  });

  const had = { HEAD: "flow, [liquid], [units]", LIST: "" };

  it.each([
    { why: "a function that is no more", has: { LIST: "" }, say: "HEAD is no more" },
    { why: "a function of another name", has: { HEADS: had.HEAD, LIST: "" }, say: "HEAD is no more" },
    { why: "an argument of another name", has: { HEAD: "rate, [liquid], [units]" }, say: "would be HEAD(rate" },
    { why: "an argument before others", has: { HEAD: "flow, [liquid], [temperature], [units]" }, say: "would be" },
    { why: "an argument less", has: { HEAD: "flow, [liquid]" }, say: "would be" },
    { why: "another order", has: { HEAD: "[liquid], flow, [units]" }, say: "would be" },
    { why: "an argument that must be stated now", has: { HEAD: "flow, liquid, [units]" }, say: "would be" },
    { why: "a new argument that must be stated", has: { HEAD: "flow, [liquid], [units], level" }, say: "would be" },
    { why: "a first argument that must be stated", has: { ...had, LIST: "flow" }, say: "LIST() would be LIST(flow)" },
  ])("are not kept by $why", ({ has, say }) => {
    expect(brokenNames(had, { LIST: "", ...has }).join("\n")).toContain(say);
  });

  it("are kept beside what is new", () => {
    expect(brokenNames(had, { ...had, HEAD: `${had.HEAD}, [level]`, LIST: "[units]", NEW: "flow" })).toEqual([]);
  });
});
