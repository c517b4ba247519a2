import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { constant, type Expression, handle } from "../../../shared/calc-sheet/expression.ts";
import { formulaOf } from "../../../shared/calc-sheet/formula.ts";
import { figure, type PlanItem } from "../../../shared/calc-sheet/plan.ts";
import { statesAt, type WorstFacts, worstNames, worstTable } from "../../../shared/calc-sheet/sections/worst-states.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { cell } from "../../support/cells.ts";
import { dutyRead, dutyText, pumpText } from "../../support/duty-of.ts";
import { publishedCases } from "../../support/published-cases.ts";

const KEY = "worst";
const NOWHERE = { cell: () => undefined, range: String, column: String, part: () => ({ first: "", cell: "" }) };

/** Which states are worst, of a row of figures each; a text is no figure. */
function worst(names: readonly string[], side: "least" | "greatest", figures: readonly (number | string)[]): string {
  const at = (i: number): Expression => constant(figures[i] as number | string);
  const facts: readonly WorstFacts<string>[] = [{ key: "of", label: "of", quantity: "ratio", side, figure: at }];
  const items: readonly PlanItem[] = [
    ...worstTable({ key: KEY, label: "worst" }, names, facts),
    figure(handle("named", null), "named", worstNames(KEY, "of", names.length), ""),
  ];
  const { cells } = workOut({ unitSet: "SI", items });
  return String(cells.get("named"));
}

describe("the worst of all states", () => {
  interface Row {
    readonly name: string;
    readonly [figure: string]: number | string;
  }
  const one = publishedCases("7-cases", "station").find(({ id }) => id === "s7-cases-003");
  if (one === undefined) throw new Error("no such case");
  const rows = (one.inputs as unknown as { readonly cases: readonly Row[] }).cases;
  const names = rows.map(({ name }) => name);
  const of = (key: string) => rows.map((row) => row[key] as number);
  const expected = (key: string): string => String((one.expected[key] as { value: unknown }).value);

  it.each([
    ["worst_NPSH", "NPSH margin", "least"],
    ["worst_power", "power", "greatest"],
    ["worst_pressure", "discharge psi", "greatest"],
    ["worst_region", "% BEP", "greatest"],
    ["least_flow", "flow", "least"],
  ] as const)("is named as the published case has it: %s", (key, figures, side) => {
    const found = worst(names, side, of(figures));
    expect(expected(key).replace(/ \(.*/, "")).toBe(found);
  });

  it("makes the verdict: what fails in one case fails", () => {
    const heading = ["verdict on", "what", "found", "limit", "must be", "if broken", "if kept", "when"];
    const criteria = names.map((name, i) => [
      "npsh",
      "NPSH margin",
      of("NPSH margin")[i] as number,
      0,
      "at least",
      "fail",
      "pass",
      name,
    ]);
    const verdicts = cell("VERDICTS", [heading, ...criteria]) as readonly (readonly unknown[])[];
    const npsh = verdicts.find(([subject]) => subject === "npsh");
    expect([npsh?.[1], String(npsh?.[2]).includes("one pump out")]).toEqual(["fail", true]);
    expect(expected("overall")).toBe("fails: one pump out, NPSH");
  });

  it("names all that are as bad, but for rounding", () => {
    expect(worst(["a", "b", "c"], "least", [1, 1 + 1e-12, 2])).toBe("a; b");
    expect(worst(["a", "b", "c"], "greatest", [2, 1, 2 - 1e-12])).toBe("a; c");
    expect(worst(["a", "b"], "least", [-1, -1 - 1e-6])).toBe("b");
  });

  it("lists them with their mark once, as a formula too", () => {
    const slack = "1e-9*MAX(2,-1*2)";
    const [a, b] = [1, 2].map((of, i) => `IF(${of}>=2-${slack},"; ${"ab"[i]}","")`);
    expect(formulaOf(statesAt(["a", "b"], [constant(1), constant(2)], constant(2), "greatest"), NOWHERE, "SI")).toBe(
      `MID(${a}&${b},3,32767)`,
    );
  });

  it("still names the worst of those that can be judged, and then the others", () => {
    expect(worst(["a", "b", "c", "d"], "least", [3, "none", 2, "not known"])).toBe("c (not sure: b; d)");
    expect(worst(["a", "b"], "greatest", ["none", "none"])).toBe("not known (not sure: a; b)");
  });
});

describe("the corners of a range", () => {
  const pump = pumpText(
    Array.from({ length: 9 }, (_, i) => {
      const x = i / 6;
      return [
        `${250 * i} gpm`,
        `${72 - 18 * x * x} ft`,
        i === 0 ? "" : String(78 * (2 * x - x * x)),
        `${5 + 8 * x * x} ft`,
      ];
    }),
    { speed: "1750 rpm" },
  );
  // Static head 12 to 24 ft; the pipe new (0.0018 in) and aged (0.05 in).
  const typed = dutyText(
    {
      flow: "1200 gpm",
      sourceLevel: "0",
      pumpLevel: "6 ft",
      deliveryLevel: "18 ft",
      leastStaticHead: "12 ft",
      greatestStaticHead: "24 ft",
      agedRoughness: "0.05 in",
    },
    { dischargeLine: [{ pipe: "10in sch40", length: "1500 ft", fittings: "1 exit" }], pump },
  );
  const { cells } = workOut(dutyPlan(dutyRead(typed)));

  // Case s7-cases-007: dQ/d(static) < 0, dQ/d(loss) < 0.
  it.each([
    ["greatestFlowIn", "Minimum static head"],
    ["greatestShareIn", "Minimum static head"],
    ["powerIn", "Minimum static head"],
    ["npshMarginIn", "Minimum static head"],
    ["leastFlowIn", "Maximum static head, aged pipe"],
    ["leastShareIn", "Maximum static head, aged pipe"],
    ["dutyMetIn", "Maximum static head, aged pipe"],
  ])("is worst where the published case says: %s", (key, state) => {
    expect(cells.get(key)).toBe(state);
  });
});
