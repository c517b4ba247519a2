import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { CATALOGUE, entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import { implausible } from "../../../shared/catalogue/plausible.ts";
import type { Argument } from "../../../shared/cells/cell.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { gatheredFindings } from "../../../shared/package/gathered-findings.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { noteText } from "../../../shared/text/finding-text.ts";
import { QUANTITIES, type Quantity } from "../../../src/basis/quantities.ts";
import { toEngine, unitOf } from "../../../src/basis/units.ts";

const entry = (id: string): Entry => entryNamed(id) as Entry;
const notes = (id: string, ...args: readonly Argument[]): string => {
  const outcome = call(entry(id), args);
  return outcome.findings.map((finding) => noteText(finding, outcome.unitSet)).join("\n");
};

describe("a figure far beyond what anybody meets", () => {
  it("is raised as a check beside the answer, with the bound and whose choice it is", () => {
    // Water horsepower is flow × head / 3960: 1e9 gpm over 1e6 ft is 2.525e11 hp, and at 75 % a shaft of 3.367e11 hp.
    expect(notes("SHAFTPOWER", 1e9, 1e6, 75)).toMatch(
      /^Check: Shaft power of 336,[5-7]\d\d,\d{3},\d{3} hp is far beyond anything met with pumps \(at most .* hp, a house choice\)/m,
    );
  });

  it("is raised once for a whole column", () => {
    const column = [[1e9], [2e9], [3e9]];
    expect(notes("SHAFTPOWER", column, 1e6, 75).match(/far beyond/g)?.length).toBeGreaterThanOrEqual(1);
  });

  it("is known on either side of zero and at either side of the bound", () => {
    const kPa = (value: number): number => toEngine(value, unitOf("bar"));
    expect(implausible("p", "gaugePressure", kPa(10_000))).toBeUndefined();
    expect(implausible("p", "gaugePressure", kPa(10_001))).toMatchObject({ limit: { side: "at most" } });
    expect(implausible("p", "gaugePressure", kPa(-10_001))).toMatchObject({ limit: { side: "at least" } });
    expect(implausible("n", undefined, 1e15)).toBeUndefined();
    expect(implausible("n", undefined, -1.1e15)).toBeDefined();
    expect(implausible("t", "temperature", "a text")).toBeUndefined();
  });

  it("is known of every quantity", () => {
    for (const quantity of Object.keys(QUANTITIES) as Quantity[]) {
      expect(implausible("x", quantity, 0), quantity).toBeUndefined();
      expect(implausible("x", quantity, 1e200), quantity).toMatchObject({ code: "answer-implausible", kind: "check" });
    }
  });

  it("is none of the answers of the examples", () => {
    for (const { id, examples } of CATALOGUE) {
      for (const { args } of examples) expect(notes(id, ...args), id).not.toMatch(/far beyond/);
    }
  });

  it("is none of those of the sample duties", () => {
    for (const { name, duty } of SAMPLE_DUTIES) {
      const { duty: read, findings } = decodeDuty(duty);
      const codes = gatheredFindings(findings, workedDuty(read)).map(({ finding }) => finding.code);
      expect(codes, name).not.toContain("answer-implausible");
    }
  });
});

describe("a row of a column whose figure is beyond computation", () => {
  it("has its error, and no note that speaks of infinity", () => {
    for (const id of CATALOGUE.map((one) => one.id)) {
      const [example] = entry(id).examples;
      if (!example.args.some((arg) => typeof arg === "number")) continue;
      const at = example.args.findIndex((arg) => typeof arg === "number");
      const args = example.args.map((arg, i) => (i === at ? [[1.7e308], [1]] : arg));
      expect(notes(id, ...args), id).not.toMatch(/Infinity|NaN/);
    }
  });
});
