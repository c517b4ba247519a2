import { describe, expect, it } from "vitest";
import { fittingNamed } from "../../../src/pipework/fitting-name.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { pipeOf } from "../../support/pipes.ts";

const inch = 0.0254;
const SIX = pipeOf(6.065 * inch);
const EIGHT = pipeOf(7.981 * inch);

function loss(name: string, pipe: Pipe) {
  const found = fittingNamed(name);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  const coefficient = found.value.lossCoefficient(pipe);
  return { ...coefficient, findings: [...found.findings, ...coefficient.findings] };
}

function coefficient(name: string, pipe: Pipe): number {
  const found = loss(name, pipe);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

// 1 − β² between 6.065 and 7.981 in is 1 − 36.784225/63.696361 = 0.42250665, and (7.981/6.065)⁴ = 2.99848, by hand.
const OPEN = 0.42250665;
const REBASE = (7.981 / 6.065) ** 4;
const HALF_OF_30 = Math.sin(Math.PI / 12);

// Source: Technical Paper 410, gradual and sudden enlargement and contraction (from memory); Borda–Carnot.
describe("a change of size", () => {
  it.each([
    { name: "sudden expansion to 8in sch40", pipe: SIX, k: OPEN ** 2 },
    { name: "sudden enlargement to 8in sch40", pipe: SIX, k: OPEN ** 2 },
    { name: "expansion to 7.981 in", pipe: SIX, k: OPEN ** 2 },
    { name: "sudden contraction from 8in sch40", pipe: SIX, k: 0.5 * OPEN },
    { name: "Sudden Contraction from ID 202.7174 mm", pipe: SIX, k: 0.5 * OPEN },
    { name: "expander to 8in sch40", pipe: SIX, k: 2.6 * HALF_OF_30 * OPEN ** 2 },
    { name: "increaser to 8in sch40 30 degrees", pipe: SIX, k: 2.6 * HALF_OF_30 * OPEN ** 2 },
    { name: "gradual expansion to 8in sch40 30°", pipe: SIX, k: 2.6 * HALF_OF_30 * OPEN ** 2 },
    { name: "reducer from 8in sch40", pipe: SIX, k: 0.8 * HALF_OF_30 * OPEN },
    { name: "eccentric reducer from 8in sch40", pipe: SIX, k: 0.8 * HALF_OF_30 * OPEN },
    { name: "reducer from 8in sch40 60 deg", pipe: SIX, k: 0.5 * OPEN * Math.sqrt(0.5) },
    { name: "expander to 8in sch40 60 deg", pipe: SIX, k: OPEN ** 2 },
    { name: "sudden expansion from 6in sch40", pipe: EIGHT, k: OPEN ** 2 * REBASE },
    { name: "sudden contraction to 6in sch40", pipe: EIGHT, k: 0.5 * OPEN * REBASE },
    { name: "reducer to 6in sch40", pipe: EIGHT, k: 0.8 * HALF_OF_30 * OPEN * REBASE },
    { name: "expander from 6in sch40", pipe: EIGHT, k: 2.6 * HALF_OF_30 * OPEN ** 2 * REBASE },
    { name: "hose coupling ID 6.065 in", pipe: EIGHT, k: (0.5 * OPEN + OPEN ** 2) * REBASE },
  ])("$name", ({ name, pipe, k }) => expect(coefficient(name, pipe)).toBeCloseTo(k, 7));

  it("meets at 45°, where cones give way to sudden changes", () => {
    for (const name of ["expander to 8in sch40", "reducer from 8in sch40"]) {
      const [below, above] = [44.999, 45.001].map((angle) => coefficient(`${name} ${angle} deg`, SIX));
      // 2.6 sin 22.5° = 0.995 against 1; 0.8 sin 22.5° = 0.306 against 0.5 √sin 22.5° = 0.309, as published.
      expect(Math.abs((below as number) / (above as number) - 1)).toBeLessThan(0.011);
    }
  });

  it("is nothing between equal bores", () => expect(coefficient("reducer from ID 6.065 in", SIX)).toBeCloseTo(0, 12));

  it.each([
    { name: "reducer to 8in sch40", pipe: SIX },
    { name: "reducer from 6in sch40", pipe: EIGHT },
    { name: "expander to 6in sch40", pipe: EIGHT },
    { name: "sudden expansion from 8in sch40", pipe: SIX },
    { name: "hose coupling ID 8 in", pipe: SIX },
  ])("refuses $name in a pipe on the wrong side", ({ name, pipe }) => {
    expect(loss(name, pipe)).toMatchObject({ ok: false, findings: [{ code: "size-change-wrong-way" }] });
  });

  // ASME B36.10M: 8 in schedule 40 has a bore of 7.981 in.
  it("cautions of a bore in inches that is also a nominal size", () => {
    const codes = (name: string) => loss(name, SIX).findings.map(({ code }) => code);
    expect(codes("reducer from 8 in")).toEqual(["bore-is-nominal"]);
    expect(codes("reducer from ID 8 in")).toEqual(["bore-is-nominal"]);
    expect(codes("reducer from 7.981 in")).toEqual([]);
    expect(codes("reducer from 203.2 mm")).toEqual([]);
  });
});
