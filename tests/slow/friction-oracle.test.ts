import { execFileSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { fittingNamed } from "../../src/pipework/fitting-name.ts";
import { frictionFactor } from "../../src/pipework/friction-factor.ts";
import { THREE_K } from "../../src/tables/fittings-three-k.ts";
import { pipeOf } from "../support/pipes.ts";

// Source: the open library fluids for Python (Colebrook factor, Darby's 3-K coefficients), and the Colebrook equation
// solved to 40 digits with Python's decimal arithmetic. Needs that package; fails without it.
const SCRIPT = `
import json, sys
from decimal import Decimal, getcontext
from fluids.friction import friction_factor
from fluids.fittings import Darby, Darby3K
getcontext().prec = 40
asked = json.load(sys.stdin)
two = Decimal(2) / Decimal(10).ln()
def exact(re, ed, start):
    x = 1 / Decimal(start).sqrt()
    a, b = Decimal(ed) / Decimal("3.7"), Decimal("2.51") / Decimal(re)
    for _ in range(6):
        inside = a + b * x
        x -= (x + two * inside.ln()) / (1 + two * b / inside)
    return str(1 / (x * x))
factors = [friction_factor(Re=re, eD=ed, Method="Colebrook") for re, ed in asked["points"]]
print(json.dumps({
  "library": factors,
  "digits": [exact(re, ed, f) for (re, ed), f in zip(asked["points"], factors)],
  "names": list(Darby),
  "threeK": [[Darby3K(NPS=size, Re=re, name=name) for size, re in asked["sizes"]] for name in Darby],
}))`;

interface Oracle {
  readonly library: readonly number[];
  readonly digits: readonly string[];
  readonly names: readonly string[];
  readonly threeK: readonly (readonly number[])[];
}

function ask(question: object): Oracle {
  for (const python of ["python3", "/usr/bin/python3"]) {
    try {
      return JSON.parse(
        execFileSync(python, ["-c", SCRIPT], {
          encoding: "utf8",
          input: JSON.stringify(question),
          stdio: ["pipe", "pipe", "ignore"],
          maxBuffer: 1e8,
        }),
      );
    } catch {
      // The next interpreter may have the package.
    }
  }
  throw new Error("no Python with the package fluids was found");
}

/** Even spread over 0 to 1 without a clock: the fractional parts of multiples of an irrational number. */
function spread(count: number, step: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => (i * step) % 1);
}

const COUNT = 2500;
const reynolds = spread(COUNT, Math.SQRT2).map((share) => 4000 * 10 ** (share * 5.3));
const roughness = spread(COUNT, (Math.sqrt(5) - 1) / 2).map((share, i) => (i % 20 === 0 ? 0 : 1e-7 * 5e5 ** share));
const sizes = [
  [1, 500],
  [2.5, 8000],
  [6, 3e5],
  [24, 1e6],
] as const;
const oracle = ask({ points: reynolds.map((re, i) => [re, roughness[i]]), sizes });

function worstAgainst(expected: readonly number[]): number {
  const errors = reynolds.map((re, i) => {
    const found = frictionFactor({ reynolds: re, relativeRoughness: roughness[i] as number });
    if (!found.ok) throw new Error(JSON.stringify(found));
    return Math.abs(found.value / (expected[i] as number) - 1);
  });
  return errors.reduce((worst, error) => Math.max(worst, error), 0);
}

describe(`the friction factor at ${COUNT} points, Reynolds number 4000 to 8e8, relative roughness 0 to 0.05`, () => {
  it("is the library's", () => {
    expect(oracle.library).toHaveLength(COUNT);
    const worst = worstAgainst(oracle.library);
    console.log(`friction factor against fluids: worst relative difference ${worst.toExponential(2)}`);
    expect(worst).toBeLessThan(1e-13);
  });

  it("is the 40-digit solution, to the last digits of a double", () => {
    const worst = worstAgainst(oracle.digits.map(Number));
    console.log(`friction factor against 40 digits: worst relative difference ${worst.toExponential(2)}`);
    expect(worst).toBeLessThan(3e-15);
  });
});

describe("3-K coefficients", () => {
  it("have the library's rows", () => expect(THREE_K).toHaveLength(oracle.names.length));

  it.each(THREE_K.map((row, i) => ({ ...row, printed: oracle.names[i], i })))("$name is “$printed”", ({ name, i }) => {
    const fitting = fittingNamed(name);
    if (!fitting.ok) throw new Error(name);
    for (const [j, [nominalInches, re]] of sizes.entries()) {
      const found = fitting.value.lossCoefficient(pipeOf(0.1, 0, { nominalInches }), re);
      const due = oracle.threeK[i]?.[j] as number;
      expect(Math.abs((found.ok ? found.value : 0) / due - 1)).toBeLessThan(1e-12);
    }
  });
});
