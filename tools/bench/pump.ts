import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../shared/catalogue/entry.ts";
import type { Argument } from "../../shared/cells/cell.ts";
import type { Result } from "../../src/basis/result.ts";
import { pumpCurve } from "../../src/pump/pump-curve.ts";
import { asGiven } from "../../src/pump/running-pump.ts";
import { systemCurveThrough } from "../../src/pump/system-curve-through.ts";
import { stationPoint } from "../../src/station/station-point.ts";
import type { StationPump } from "../../src/station/station-pump.ts";
import { best } from "./timing.ts";

const ROWS = 10_000;
const CALLS = 200;

export interface PumpFigures {
  readonly pumpHeadColumnRow: number;
  readonly pumpPowerColumnRow: number;
  readonly pumpHeadSingle: number;
  readonly operatingPointSingle: number;
  readonly speedForSingle: number;
  readonly fourUnlikePumps: number;
}

/** Times in seconds of the pump functions through the whole cell-function path, each call with its curve to read. */
export function pumpFigures(): PumpFigures {
  const curve: Argument = [
    ["flow", "head", "efficiency", "NPSHR"],
    [0, 140, 0, null],
    [100, 139, 0.34, 5],
    [200, 135, 0.56, 5.5],
    [300, 128, 0.7, 6.5],
    [400, 118, 0.77, 8],
    [500, 105, 0.78, 10.5],
    [600, 88, 0.73, 14],
  ];
  const system: Argument = Array.from({ length: 11 }, (_, i) => [60 * i, 60 + (60 * i) ** 2 / 2500]);
  const flows = Array.from({ length: ROWS }, (_, i) => [100 + i * 0.05]);
  const perCall = (name: string, ...args: readonly Argument[]): number => {
    const entry = entryNamed(name) as Entry;
    const run = () => {
      for (let i = 0; i < CALLS; i += 1) call(entry, args);
    };
    return best(run) / CALLS;
  };
  const perRow = (name: string): number => best(() => call(entryNamed(name) as Entry, [curve, flows])) / ROWS;
  return {
    pumpHeadColumnRow: perRow("PUMPHEAD"),
    pumpPowerColumnRow: perRow("PUMPPOWER"),
    pumpHeadSingle: perCall("PUMPHEAD", curve, 350),
    operatingPointSingle: perCall("OPERATINGPOINT", curve, system),
    speedForSingle: perCall("SPEEDRATIO", curve, 400, 100),
    fourUnlikePumps: fourUnlikePumps(),
  };
}

/** Time in seconds of the operating point of four unlike pumps, each of ten points and with losses of its own. */
function fourUnlikePumps(): number {
  const through = (headAt: (flow: number) => number, most: number) =>
    Array.from({ length: 10 }, (_, i) => ({ flow: (most * i) / 9, head: headAt((most * i) / 9) }));
  const labels = Array.from({ length: 10 }, (_, i) => `row ${i + 1}`);
  const ownLoss = taken(systemCurveThrough({ points: through((q) => 900 * q * q, 0.1), subject: "own", labels }));
  const system = taken(
    systemCurveThrough({ points: through((q) => 20 + 150 * q * q, 0.4), subject: "system", labels }),
  );
  const pumps = [60, 52, 47, 43].map((shutoff, i): StationPump => {
    const points = through((q) => shutoff - 4000 * q * q, 0.08 + 0.003 * i);
    const pump = asGiven(taken(pumpCurve({ points, subject: "curve", labels })));
    return { name: `pump ${i + 1}`, pump, level: 0.5 * i, ownLoss, hasCheckValve: true, count: 1 };
  });
  taken(stationPoint({ pumps, system }));
  const run = () => {
    for (let i = 0; i < CALLS; i += 1) stationPoint({ pumps, system });
  };
  return best(run) / CALLS;
}

function taken<T>(read: Result<T>): T {
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}
