import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../shared/catalogue/entry.ts";
import type { Argument } from "../../shared/cells/cell.ts";
import { best } from "./timing.ts";

const ROWS = 10_000;
const CALLS = 200;

export interface PumpFigures {
  readonly pumpHeadColumnRow: number;
  readonly pumpPowerColumnRow: number;
  readonly pumpHeadSingle: number;
  readonly operatingPointSingle: number;
  readonly speedForSingle: number;
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
  };
}
