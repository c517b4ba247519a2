import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../shared/cells/cell.ts";
import { inventedPumps } from "../../shared/pump-table/library/library.ts";
import { offeredPumps } from "../../shared/pump-table/offered-pumps.ts";
import { unitOf } from "../../src/basis/units.ts";
import { WATER } from "../../src/liquid/water.ts";
import { pipeNamed } from "../../src/pipework/pipe-name.ts";
import { readyPump } from "../../src/pump/ready-pump.ts";
import { selectPumps } from "../../src/pump/selection.ts";
import { selectionSystem } from "../../src/pump/selection-duty.ts";
import { best } from "./timing.ts";

export interface RankingFigures {
  /** ms for RANKPUMPS over so many curves of ten points, range and all. */
  readonly cellFunction: readonly { readonly curves: number; readonly ms: number }[];
  /** ms for 1,000 duties against 24 pumps of the library, system curves and all. */
  readonly thousandDuties: number;
}

const SUCTION = [["8in suction hose", 30, "1 entrance bell, 2 hose bend"]];
const DISCHARGE = [
  ["8in sch40", 20, "1 swing check, 1 gate, 2 elbow 90 long"],
  ["10in HDPE DR17", 1800, "4 elbow 45, 1 exit"],
];

/** Times of RANKPUMPS and of the ranking engine on this machine. */
export function rankingFigures(): RankingFigures {
  const rankPumps = entryNamed("RANKPUMPS") as Entry;
  const cellFunction = [1000, 10_000, 100_000].map((curves) => {
    const args: readonly Argument[] = [tableOf(curves), 1200, 64, SUCTION, DISCHARGE];
    return { curves, ms: 1000 * best(() => call(rankPumps, args)) };
  });
  return { cellFunction, thousandDuties: 1000 * best(thousandDuties) };
}

/** So many pumps of one curve and ten points, spread over 50 to 6,000 gpm and 20 to 600 ft by a fixed sequence. */
function tableOf(curves: number): Cell[][] {
  const rows: Cell[][] = [["pump", "speed", "impeller diameter", "flow", "head", "efficiency", "NPSHR", "power"]];
  let seed = 12_345;
  const next = (): number => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return seed / 2_147_483_648;
  };
  for (let i = 0; i < curves; i += 1) {
    const flow = 50 * 120 ** next();
    const head = 20 * 30 ** next();
    const peak = 0.6 + 0.25 * next();
    for (let k = 0; k < 10; k += 1) {
      const x = (1.35 * k) / 9;
      const [q, h, e] = [flow * x, head * (1.25 - 0.25 * x * x), peak * (2 * x - x * x)];
      rows.push([`Pump ${i}`, 1750, 11, q, h, e, 8 + 4 * x * x, e > 0 ? (q * h) / 3960 / e : 0]);
    }
  }
  return rows;
}

function thousandDuties(): number {
  const library = inventedPumps();
  const pumps = offeredPumps(library.curves, library.list).slice(0, 24).map(readyPump);
  const pipe = pipeNamed("8in sch40");
  const water = WATER.at(293.15);
  if (!pipe.ok || !water.ok) throw new Error("the bench names what the product does not know");
  const [gallons, feet] = [unitOf("US gpm").factor, unitOf("ft").factor];
  const line = [{ pipe: pipe.value, length: 300, fittings: [] }];
  let ranked = 0;
  for (let i = 0; i < 1000; i += 1) {
    const flow = (100 + 2 * i) * gallons;
    const system = selectionSystem({
      flow,
      staticHead: (30 + (i % 100)) * feet,
      suctionLine: [],
      dischargeLine: line,
      pressureDifference: 0,
      liquid: water.value,
    });
    if (!system.ok) throw new Error("the bench has a system that cannot be worked out");
    const { density } = water.value;
    const selection = selectPumps({
      pumps,
      duties: [{ flow, system: system.value, density, npshAvailable: (at) => 8 - 500 * at * at }],
    });
    if (selection.ok) ranked += selection.value.ranked.length;
  }
  return ranked;
}
