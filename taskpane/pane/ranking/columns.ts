import type { RankingKey, RankingRow } from "../../../shared/pump-table/ranking-table.ts";
import { figures } from "../../../shared/text/words.ts";
import { printedUnit, type Quantity, UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";

/** A column of the ranking. Figures stand without their unit, which is in the heading. */
export interface RankingColumn {
  readonly key: RankingKey | "curve";
  /** In full, for a reader that hears one cell at a time. */
  readonly label: (units: UnitSetName) => string;
  readonly head: (units: UnitSetName) => string;
}

const unit = (quantity: Quantity, units: UnitSetName): string => printedUnit(quantity, units);

export const RANKING_COLUMNS: readonly RankingColumn[] = [
  { key: "rank", label: () => "Rank, and mark for comparison", head: () => "Rank" },
  { key: "name", label: () => "Pump", head: () => "Pump" },
  { key: "curve", label: () => "Head curve with the duty", head: () => "Curve" },
  { key: "efficiency", label: () => "Efficiency, %", head: () => "Eff., %" },
  { key: "bestFlowRatio", label: () => "Flow, % of BEP", head: () => "Flow, % BEP" },
  {
    key: "npshMargin",
    label: (units) => `NPSH margin, ${unit("head", units)}`,
    head: (units) => `NPSH margin, ${unit("head", units)}`,
  },
  {
    key: "speed",
    label: (units) => `Speed, ${unit("speed", units)}, and impeller, ${unit("size", units)}`,
    head: (units) => `${unit("speed", units)} / imp., ${unit("size", units)}`,
  },
  {
    key: "power",
    label: (units) => `Shaft power, ${unit("power", units)}`,
    head: (units) => `Power, ${unit("power", units)}`,
  },
  { key: "verdict", label: () => "Verdict", head: () => "Verdict" },
];

/** Columns of figures: in the row of a pump that is left out its reason takes their place. */
export const FIRST_FIGURE = 3;
export const LAST_FIGURE = 7;

/** What stands where a table gives no figure. */
export const NOT_KNOWN = "–";

/** A figure of a ranked pump to three digits, speed and impeller to four; the row that opens has four of each. */
export function figureText({ ranked }: RankingRow, key: RankingColumn["key"], units: UnitSetName): string {
  if (ranked === undefined) return NOT_KNOWN;
  const { efficiency, bestFlowRatio, npshMargin, speed, diameter, power } = ranked;
  const say = (quantity: Quantity, value: number | undefined): string =>
    value === undefined ? NOT_KNOWN : threeFigures(fromEngine(value, UNIT_SETS[units][quantity]));
  switch (key) {
    case "efficiency":
      return say("percent", efficiency);
    case "bestFlowRatio":
      return say("percent", bestFlowRatio);
    case "npshMargin":
      return say("head", npshMargin);
    case "power":
      return say("power", power);
    case "speed":
      return speedText(speed, diameter, units);
    default:
      return "";
  }
}

function speedText(speed: number | undefined, diameter: number | undefined, units: UnitSetName): string {
  const turns = speed === undefined ? NOT_KNOWN : turnsText(fromEngine(speed, UNIT_SETS[units].speed));
  if (diameter === undefined) return turns;
  return `${turns} / ${figures(fromEngine(diameter, UNIT_SETS[units].size))}`;
}

function turnsText(value: number): string {
  return value >= 100 ? String(Math.round(value)) : figures(value);
}

function threeFigures(value: number): string {
  return Math.abs(value) >= 1000 ? figures(value) : String(Number(value.toPrecision(3)));
}
