import type { RankingKey, RankingRow } from "../../../shared/pump-table/ranking-table.ts";
import { bareMargin } from "../../../shared/text/margin-text.ts";
import { bareFigure } from "../../../shared/text/words.ts";
import { printedUnit, type Quantity, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";

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

/** A figure of a ranked pump; its unit stands in the heading. */
export function figureText({ ranked }: RankingRow, key: RankingColumn["key"], units: UnitSetName): string {
  if (ranked === undefined) return NOT_KNOWN;
  const { efficiency, bestFlowRatio, npshMargin, speed, diameter, power } = ranked;
  const say = (quantity: Quantity, value: number | undefined): string =>
    value === undefined ? NOT_KNOWN : bareFigure(amount(quantity, value), units);
  switch (key) {
    case "efficiency":
      return say("percent", efficiency);
    case "bestFlowRatio":
      return say("percent", bestFlowRatio);
    case "npshMargin":
      return npshMargin === undefined ? NOT_KNOWN : bareMargin(amount("head", npshMargin), units);
    case "power":
      return say("power", power);
    case "speed":
      return speedText(speed, diameter, units);
    default:
      return "";
  }
}

function speedText(speed: number | undefined, diameter: number | undefined, units: UnitSetName): string {
  const turns = speed === undefined ? NOT_KNOWN : bareFigure(amount("speed", speed), units);
  return diameter === undefined ? turns : `${turns} / ${bareFigure(amount("size", diameter), units)}`;
}
