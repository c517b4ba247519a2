import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../shared/cells/cell.ts";
import { readCurveTable } from "../../shared/pump-table/curve-table.ts";
import { joinedPumps } from "../../shared/pump-table/joined-tables.ts";
import { inventedPumps } from "../../shared/pump-table/library/library.ts";
import { STANDARD_ATMOSPHERE } from "../../src/basis/constants.ts";
import { UNIT_SETS } from "../../src/basis/quantities.ts";
import { andThen } from "../../src/basis/result.ts";
import { unitOf } from "../../src/basis/units.ts";
import { WATER } from "../../src/liquid/water.ts";
import { pipeNamed } from "../../src/pipework/pipe-name.ts";
import type { OfferedPump } from "../../src/pump/offered-pump.ts";
import { readyPump } from "../../src/pump/ready-pump.ts";
import { selectPumps } from "../../src/pump/selection.ts";
import { selectionSystem } from "../../src/pump/selection-duty.ts";
import type { SpeedControl } from "../../src/pump/selection-setting.ts";
import {
  rankedForStation,
  type StationCase,
  type StationCases,
  stationAsked,
} from "../../src/station/station-ranking.ts";
import { best } from "./timing.ts";

export interface RankingFigures {
  /** ms for RANKPUMPS over so many curves of ten points, range and all. */
  readonly cellFunction: readonly { readonly curves: number; readonly ms: number }[];
  /** ms for 1,000 duties against 24 pumps of the library, system curves and all. */
  readonly thousandDuties: number;
  /** ms for 10,000 pumps over 12 cases of a station, their systems and curves and all, at one speed or each at its own. */
  readonly overTwelveCases: Readonly<Record<SpeedControl, number>>;
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
  const pumps = offered(10_000);
  const over = (speedControl: SpeedControl): number => 1000 * best(() => overTwelveCases(pumps, speedControl));
  return {
    cellFunction,
    thousandDuties: 1000 * best(thousandDuties),
    overTwelveCases: { fixed: over("fixed"), variable: over("variable") },
  };
}

function offered(curves: number): readonly OfferedPump[] {
  const table = readCurveTable(tableOf(curves), { place: { name: "pump table" }, units: UNIT_SETS.US });
  if (!table.ok) throw new Error("the bench has a table that cannot be read");
  return joinedPumps([{ source: "the bench", curves: table.value }]).pumps;
}

/** Two pumps on a suction each and one main: 900 to 1,010 gpm each, twelve levels, water of two temperatures. */
function overTwelveCases(pumps: readonly OfferedPump[], speedControl: SpeedControl): number {
  const [gallons, feet] = [unitOf("US gpm").factor, unitOf("ft").factor];
  const [own, main] = [pipeNamed("10in sch40"), pipeNamed("16in HDPE DR17")];
  if (!own.ok || !main.ok) throw new Error("the bench names what the product does not know");
  const cases = Array.from({ length: 12 }, (_, i): StationCase => {
    const liquid = WATER.at(i % 2 === 0 ? 283.15 : 303.15);
    if (!liquid.ok) throw new Error("the bench has a liquid that cannot be worked out");
    return {
      name: `case ${i + 1}`,
      flow: 2 * (900 + 10 * i) * gallons,
      staticHead: (40 + i) * feet,
      suctionLine: [{ pipe: own.value, length: 12, fittings: [], share: 0.5, runs: 2 }],
      dischargeLine: [{ pipe: main.value, length: 700, fittings: [] }],
      sourcePressure: 0,
      deliveryPressure: 0,
      liquid: liquid.value,
      frictionMargin: 0.1,
      pumps: 2,
      arrangement: "parallel",
      suctionLift: (5 + (i % 3)) * feet,
      atmosphericPressure: STANDARD_ATMOSPHERE,
    };
  }) as unknown as StationCases;
  const selection = andThen(stationAsked(cases), (asked) =>
    rankedForStation(asked, { pumps: pumps.map(readyPump), speedControl }),
  );
  if (!selection.ok) throw new Error("the bench has a station that cannot be ranked for");
  return selection.value.ranked.length;
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
  const library = joinedPumps([{ source: "the library", ...inventedPumps() }]);
  const pumps = library.pumps.slice(0, 24).map(readyPump);
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
