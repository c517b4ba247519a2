import { execFileSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { inchesOf } from "../../src/pipework/nominal-size.ts";
import type { Pipe } from "../../src/pipework/pipe.ts";
import { allPipes } from "../../src/pipework/pipe-name.ts";
import { PVC_PIPE_D1785 } from "../../src/tables/pvc-pipe-d1785.ts";
import { SURFACES } from "../../src/tables/roughness.ts";

// Source: dimension tables of the open library fluids for Python (piping, friction), which took them from the
// standards and from the Handbook of Hydraulic Resistance on its own. Needs that package; fails without it.
const SCRIPT = `
import json
from fluids import piping, friction
print(json.dumps({
  "schedules": {name: [list(part) for part in table] for name, table in piping.schedule_lookup.items()},
  "moody": friction._roughness,
  "steel": {name: list(value) for name, value in friction.seamless_steel.items()},
}))`;

interface Oracle {
  /** Nominal size, inside diameter, outside diameter, wall; mm. */
  readonly schedules: Readonly<Record<string, readonly [number[], number[], number[], number[]]>>;
  /** One value each, m. */
  readonly moody: Readonly<Record<string, number>>;
  /** Least, greatest and mean of seamless steel, m. */
  readonly steel: Readonly<Record<string, readonly (number | null)[]>>;
}

function ask(): Oracle {
  for (const python of ["python3", "/usr/bin/python3"]) {
    try {
      return JSON.parse(
        execFileSync(python, ["-c", SCRIPT], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] }),
      );
    } catch {
      // The next interpreter may have the package.
    }
  }
  throw new Error("no Python with the package fluids was found");
}

const oracle = ask();
const millimetres = (metres: number | undefined): number => (metres ?? Number.NaN) * 1e3;

function rowsOf(key: string): readonly { size: number; outside: number; wall: number }[] {
  const [sizes, , outside, walls] = oracle.schedules[key] as Oracle["schedules"][string];
  return sizes.map((size, i) => ({ size, outside: outside[i] as number, wall: walls[i] as number }));
}

describe.each([
  ..."5 10 20 30 40 60 80 100 120 140 160".split(" ").map((number) => [number, `sch${number}`] as const),
  ...["STD", "XS", "XXS"].map((name) => [name, name] as const),
  ...["5S", "10S", "40S", "80S"].map((name) => [name, `sch${name}`] as const),
])("schedule %s", (key, family) => {
  const pipes = new Map<number | undefined, Pipe>(
    allPipes()
      .filter((pipe) => pipe.family === family)
      .map((pipe) => [pipe.nominalInches, pipe]),
  );
  const rows = rowsOf(key);

  it("has the same sizes", () => {
    expect([...pipes.keys()].toSorted()).toEqual(rows.map(({ size }) => size).toSorted());
  });

  it("has the same dimensions within the rounding of the millimetre columns", () => {
    for (const { size, outside, wall } of rows) {
      expect(Math.abs(millimetres(pipes.get(size)?.wall) - wall), `NPS ${size} wall`).toBeLessThan(0.0101);
      // The library's outside diameters are rounded to 0.1 mm to NPS 16 and to 1 mm above.
      const rounding = size > 16 ? 0.51 : 0.11;
      expect(Math.abs(millimetres(pipes.get(size)?.outsideDiameter) - outside), `NPS ${size}`).toBeLessThan(rounding);
    }
  });
});

it.each([
  ["40D1785", 2],
  ["80D1785", 3],
  ["120D1785", 4],
] as const)("has the PVC walls of %s", (key, column) => {
  const ours = PVC_PIPE_D1785.filter((row) => row[column] !== null);
  const rows = rowsOf(key);
  expect(ours.map(([nps]) => inchesOf(nps))).toEqual(rows.map(({ size }) => size));
  rows.forEach(({ outside, wall }, i) => {
    expect((ours[i]?.[1] as number) * 25.4).toBeCloseTo(outside, 3);
    expect((ours[i]?.[column] as number) * 25.4).toBeCloseTo(wall, 3);
  });
});

describe.each([
  ["DR73F2619IPS", 7.3],
  ["DR9F2619IPS", 9],
  ["DR11F2619IPS", 11],
  ["DR135F2619IPS", 13.5],
  ["DR17F2619IPS", 17],
  ["DR21F2619IPS", 21],
  ["DR26F2619IPS", 26],
  ["DR325F2619IPS", 32.5],
])("polyethylene %s, DR %f", (key, ratio) => {
  const rows = rowsOf(key);

  it("has the outside diameter and the minimum wall of every shared size", () => {
    const pipes = allPipes().filter(({ family }) => family === `HDPE DR${ratio}`);
    const shared = rows.filter(({ size }) => pipes.some(({ nominalInches }) => nominalInches === size));
    // ASTM F2619 has 2-1/2 in, which F714 has not, and 63 and 65 in, which are not offered.
    expect(rows.length - shared.length).toBeLessThanOrEqual(3);
    for (const { size, outside, wall } of shared) {
      const pipe = pipes.find(({ nominalInches }) => nominalInches === size);
      expect(Math.abs(millimetres(pipe?.outsideDiameter) - outside), `${size} in`).toBeLessThan(0.011);
      const least = millimetres(pipe?.wall) / 1.06;
      expect(Math.abs(least - wall), `${size} in wall`).toBeLessThan(0.03);
    }
  });
});

it.each([
  ["used steel", "Following multiple years of operation, generally corroded or with small amounts of scale"],
  ["old steel", "Used water piping"],
  ["steel", "New and unused"],
] as const)("finds %s in the range that the Handbook of Hydraulic Resistance prints", (surface, name) => {
  const { least, greatest } = SURFACES[surface];
  expect([least / 1e3, greatest / 1e3, null]).toEqual(
    oracle.steel[name]?.map((value) => (value === null ? null : expect.closeTo(value, 9))),
  );
});

// The library keeps the chart's values in metres, to three figures; ours are the trade's two figures.
it.each([
  ["drawn tube", "Brass"],
  ["asphalted iron", "Asphalted cast iron"],
  ["galvanised steel", "Galvanized iron"],
  ["cast iron", "Cast iron"],
] as const)("takes %s from the chart", (surface, name) => {
  expect(Math.abs(SURFACES[surface].design / 1e3 / (oracle.moody[name] as number) - 1)).toBeLessThan(0.02);
});
