import { describe, expect, it } from "vitest";
import { STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { inUnit } from "../../../src/basis/conversion.ts";
import { fromEngine, toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import { expectPublished, inputAmount } from "../../support/expect-published.ts";
import { type PublishedAmount, publishedCases } from "../../support/published-cases.ts";

const cases = publishedCases("1-units");

/** Cases no function answers, and why. */
const NOT_APPLICABLE = new Map([
  ["1-units-047", "uses the trade constant 2.31 ft/psi, which no function uses: head is always Δp/(ρg)"],
]);

/** Units the source writes with a remark, as a user writes them. */
const WRITTEN: Readonly<Record<string, string>> = {
  "hp (550 ft lbf/s)": "hp",
  "mH2O (conventional)": "mH2O conventional",
  "ftH2O (conventional)": "ftH2O conventional",
  "inHg (conventional)": "inHg conventional",
  "mmHg (conventional)": "mmHg conventional",
};

function unit(written: string): Unit {
  const found = unitNamed(WRITTEN[written] ?? written);
  if (found === undefined) throw new Error(`unit ${written}`);
  return found;
}

function converted(from: PublishedAmount, to: string): number {
  const result = inUnit({ value: from.value, unit: unit(from.unit) }, unit(to), "amount");
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

describe("published unit conversions (hydraulics-1-units)", () => {
  const conversions = cases.filter(({ inputs }) => "quantity" in inputs);
  it.each(conversions)("$id: $source", (one) => {
    expectPublished(converted(inputAmount(one, "quantity"), one.inputs["to"] as string), "result", one);
  });

  const temperatures = cases.filter(({ inputs }) => "T" in inputs);
  it.each(temperatures)("$id: temperature reading, $source", (one) => {
    expectPublished(converted(inputAmount(one, "T"), (one.expected["T"] as PublishedAmount).unit), "T", one);
  });

  const heads = cases.filter(({ inputs }) => "dp" in inputs);
  it.each(heads)("$id: the factors and g give the head of a pressure, $source", (one) => {
    const pressure = inputAmount(one, "dp");
    const density = inputAmount(one, "rho").value;
    expect(inputAmount(one, "g").value).toBe(STANDARD_GRAVITY);
    const head = toEngine(pressure.value, unit(pressure.unit)) / (density * STANDARD_GRAVITY);
    expectPublished(fromEngine(head, unit("ft")), "head", one);
  });

  it("leaves no case aside without a reason", () => {
    const checked = [...conversions, ...temperatures, ...heads].map(({ id }) => id);
    expect([...checked, ...NOT_APPLICABLE.keys()].sort()).toEqual(cases.map(({ id }) => id).sort());
  });
});
