import { spawnSync } from "node:child_process";
import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../shared/catalogue/entry.ts";
import type { Argument } from "../../shared/cells/cell.ts";
import { darcyFactor } from "../../src/pipework/friction-factor.ts";
import { best } from "./timing.ts";

const POINTS = 20_000;
const ROWS = 10_000;

export interface EngineFigures {
  readonly colebrookPerSecond: number;
  readonly swameeJainPerSecond: number;
  readonly pythonPerSecond: number | string;
  readonly frictionHeadSingle: number;
  readonly frictionHeadColumnRow: number;
}

/** Rates of the friction factor and of FRICTIONHEAD through the whole cell-function path; times in seconds. */
export function engineFigures(): EngineFigures {
  const reynolds = Float64Array.from({ length: POINTS }, (_, i) => 4000 * 10 ** ((i / POINTS) * 4));
  const roughness = Float64Array.from({ length: POINTS }, (_, i) => 1e-6 + ((i * 7919) % POINTS) * (0.05 / POINTS));
  const factors = new Float64Array(POINTS);
  const perPoint = (factor: (re: number, rr: number) => number): number =>
    best(() => {
      for (let i = 0; i < POINTS; i += 1) factors[i] = factor(reynolds[i] as number, roughness[i] as number);
    }) / POINTS;
  const frictionHead = entryNamed("FRICTIONHEAD") as Entry;
  const flows = Array.from({ length: ROWS }, (_, i) => [100 + i * 0.2]);
  const single: Argument[] = [1200, "10in HDPE DR17", 1800];
  return {
    colebrookPerSecond: 1 / perPoint(darcyFactor),
    swameeJainPerSecond: 1 / perPoint(swameeJain),
    pythonPerSecond: pythonRate(),
    frictionHeadSingle:
      best(() => {
        for (let i = 0; i < ROWS; i += 1) call(frictionHead, single);
      }) / ROWS,
    frictionHeadColumnRow: best(() => call(frictionHead, [flows, "10in HDPE DR17", 1800])) / ROWS,
  };
}

/** The explicit formula of Swamee and Jain (1976): one logarithm and one power, up to 3 % off. */
function swameeJain(reynolds: number, relativeRoughness: number): number {
  const log = Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9);
  return 0.25 / (log * log);
}

function pythonRate(): number | string {
  const code = `
import time
from fluids.friction import friction_factor
points = [(4000*10**(i/5000*4), 1e-6+((i*7919)%5000)*(0.05/5000)) for i in range(5000)]
best = 1e9
for _ in range(5):
    start = time.perf_counter()
    for re, rr in points: friction_factor(re, rr)
    best = min(best, time.perf_counter()-start)
print(len(points)/best)`;
  const { status, stdout } = spawnSync("/usr/bin/python3", ["-c", code], { encoding: "utf8" });
  return status === 0 ? Number(stdout) : "python3-fluids is not installed";
}
