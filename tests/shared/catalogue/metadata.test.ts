import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { defineEntry, type Entry } from "../../../shared/catalogue/entry.ts";
import { functionMetadata } from "../../../shared/catalogue/metadata.ts";
import { quantity } from "../../../shared/catalogue/parameter.ts";
import { catalogueProblems } from "../../support/catalogue-problems.ts";
import { REPEATING, SAMPLES } from "../../support/sample-entries.ts";

const BASE = "https://localhost:3000/";

describe("the catalogue as Excel is told of it", () => {
  it("keeps Excel's rules", () => {
    expect(catalogueProblems()).toEqual([]);
  });

  it("is well under the megabyte that desktop Excel takes", () => {
    expect(CATALOGUE.length).toBeGreaterThan(0);
    expect(JSON.stringify(functionMetadata(BASE), null, 1).length).toBeLessThan(1_000_000);
  });

  it("names every function and argument within Excel's lengths", () => {
    for (const { id, name, description, helpUrl, parameters } of functionMetadata(BASE).functions) {
      expect(name).toBe(id);
      expect(description.length).toBeLessThanOrEqual(255);
      expect(helpUrl).toBe(`${BASE}help/${id}.html`);
      expect(parameters.length).toBeLessThanOrEqual(255);
      for (const parameter of parameters) {
        expect(parameter.name, id).toMatch(/^[A-Za-z][A-Za-z0-9_%]{0,63}$/);
        expect(parameter.description.length, `${id} ${parameter.name}`).toBeLessThanOrEqual(255);
      }
    }
  });

  it("offers the words of each choice where an argument takes few", () => {
    const described = new Map(
      functionMetadata(BASE).functions.map(({ id, parameters }) => [
        id,
        parameters.map(({ description }) => description),
      ]),
    );
    const choices = CATALOGUE.flatMap(({ id, parameters }) =>
      parameters.map(([key, { about, choices = [] }], i) => ({
        where: `${id} ${key}`,
        choices,
        whole: `${about}; ${choices.map((word) => `"${word}"`).join(", ")}`,
        said: described.get(id)?.[i],
      })),
    );
    expect(choices.filter(({ choices }) => choices.length > 0).length).toBeGreaterThan(20);
    const unsaid = choices.filter(({ choices, said }) => !choices.every((word) => said?.includes(`"${word}"`)));
    // A list longer than Excel's hint is on the help page alone.
    expect(unsaid.filter(({ whole }) => whole.length <= 255)).toEqual([]);
    expect(described.get("DRIVEARRANGEMENT")?.[0]).toContain('"');
  });

  it("lets ranges, blanks and errors through, and marks what may be left out", () => {
    const metadata = functionMetadata(BASE, [SAMPLES[0], REPEATING]);
    expect(metadata).toMatchObject({ allowErrorForDataTypeAny: true, allowCustomDataForDataTypeAny: true });
    const [sum, counted] = metadata.functions;
    expect(sum?.result).toEqual({ dimensionality: "matrix" });
    const any = { type: "any", dimensionality: "matrix" };
    expect(sum?.parameters).toEqual([
      { name: "first_head", description: "First head; ft or m", ...any },
      { name: "second_head", description: "Second head; 10 ft when left out; ft or m", ...any, optional: true },
      { name: "units", description: expect.stringContaining('"US" when left out'), ...any, optional: true },
    ]);
    expect(counted?.parameters.at(-1)).toEqual({ name: "argument", description: "Any cells", ...any, repeating: true });
  });
});

describe("the rules of Excel", () => {
  const sound: Entry = SAMPLES[0];
  const head = quantity("head", { about: "Head" });
  const optional = quantity("head", { about: "Head", whenLeftOut: { value: 1, shown: "1 m" } });

  it.each<{ why: string; entries: readonly Entry[]; say: string }>([
    { why: "a name that looks like a cell", entries: [{ ...sound, id: "ABC12" }], say: "cell address" },
    { why: "a name in lower case", entries: [{ ...sound, id: "tdh" }], say: "A-Z" },
    { why: "a name too short", entries: [{ ...sound, id: "KV" }], say: "3 to 128" },
    {
      why: "names alike in a file",
      entries: [
        { ...sound, id: "A.BC" },
        { ...sound, id: "A_BC" },
      ],
      say: "like another",
    },
    { why: "an over-long summary", entries: [{ ...sound, summary: "x".repeat(256) }], say: "too long" },
    {
      why: "a required argument after an optional one",
      entries: [
        {
          ...sound,
          parameters: [
            ["a", optional],
            ["b", head],
          ],
        },
      ],
      say: "required after",
    },
    { why: "two arguments of one name", entries: [{ ...sound, parameters: [["units", head]] }], say: "used twice" },
    {
      why: "an argument that is not described",
      entries: [{ ...sound, parameters: [["a", { ...head, about: "" }]] }],
      say: "description",
    },
    { why: "a repeated argument before units", entries: [{ ...sound, repeating: true }], say: "nothing can follow" },
  ])("find $why", ({ entries, say }) => {
    expect(catalogueProblems(entries).join("\n")).toContain(say);
  });

  it("find nothing wrong with a sound entry", () => {
    expect(catalogueProblems([...SAMPLES, REPEATING, defineEntry({ ...sampleSpec, id: "EXTRA" })])).toEqual([]);
  });
});

const sampleSpec = {
  group: "Lists",
  summary: "Head again",
  method: "Gives back.",
  cites: [{ source: "house", at: "made for the tests" }],
  parameters: { totalHead: quantity("head", { about: "Head" }) },
  answer: { kind: "quantity", name: "head", quantity: "head" },
  examples: [{ args: [1], answer: 1, within: 1e-12, source: "by definition" }],
  run: ({ totalHead }: { readonly totalHead: number }) => ({ ok: true, value: totalHead, findings: [] }),
} as const;
