import type { RankingRow } from "../../../shared/pump-table/ranking-table.ts";
import { figureIn } from "../../../shared/text/figure.ts";
import type { SelectionDuty } from "../../../src/pump/selection-duty.ts";
import type { Point } from "../pictures/pump-curves-frame.ts";
import { sparklinePath } from "../pictures/sparkline.ts";
import { headPoints } from "../pump/family.ts";

/** The head curve of a row as a small picture, and what it shows in words. */
export interface RowCurve {
  readonly path: string;
  readonly words: string;
}

/** Flows nearer than this to the one asked are it. */
const RIGHT_AT_DUTY = 0.005;

const kept = new WeakMap<RankingRow, RowCurve>();

/** Drawn when its row first comes in sight; rows are made for one duty. */
export function rowCurve(row: RankingRow, asked: SelectionDuty | undefined): RowCurve {
  const known = kept.get(row) ?? drawn(row, asked);
  kept.set(row, known);
  return known;
}

function drawn(row: RankingRow, asked: SelectionDuty | undefined): RowCurve {
  const words = wordsOf(row, asked);
  if (asked === undefined) return { path: "", words };
  const duty = { flow: asked.flow, value: asked.system.headAt(asked.flow) };
  return { path: sparklinePath(pointsOf(row), duty), words };
}

/** As it would run; of a pump that is left out the first curve of its table. */
function pointsOf({ ranked, pump }: RankingRow): readonly Point[] {
  if (ranked !== undefined) return headPoints(ranked.running, 1, "parallel");
  return (pump.curves[0]?.points ?? []).map(({ flow, head }) => ({ flow, value: head }));
}

function wordsOf({ ranked }: RankingRow, asked: SelectionDuty | undefined): string {
  if (ranked === undefined || asked === undefined) return "Curve of its table";
  const excess = ranked.flow / asked.flow - 1;
  if (excess <= RIGHT_AT_DUTY) return "Goes through the duty";
  return `Runs at ${figureIn("%", 100 * excess)} % more flow than the duty`;
}
