import { PUMPHEAD } from "../../catalogue/entries/pump.ts";
import { STATIONCURVE } from "../../catalogue/entries/station.ts";
import type { Duty, DutyOtherPump } from "../../duty/duty.ts";
import {
  callOf,
  cell,
  column,
  constant,
  type Expression,
  part,
  product,
  range,
  ratio,
  spillOf,
  sum,
  tableOf,
} from "../expression.ts";
import { type PlanItem, spill, type WorkingItem, working } from "../plan.ts";
import { CURVE_ROWS, HEAD_CURVE } from "./drawn-curves.ts";
import { asStated, isStation } from "./duty-cases.ts";
import { liquidOfDuty, otherAsPumped, otherLastFlow } from "./other-curves.ts";
import { otherCells } from "./other-pump-inputs.ts";
import { stationCurveArguments } from "./station-states.ts";

/** Head that all unlike pumps hold together at the header, over their flow. */
export const COMBINED = spillOf("stationCurve", STATIONCURVE);

const DRAWN = { flow: "flow", head: "head" } as const;

/** Head of a further pump over its own flow, as it runs. */
export function otherHeadCurve({ index }: DutyOtherPump) {
  return tableOf(`otherPump${index + 1}HeadCurve`, DRAWN);
}

/** The curve of all pumps of a station together, and of each further one, to be drawn; nothing of one kind of pump. */
export function stationHeadCurves(duty: Duty): readonly PlanItem[] {
  const stated = asStated(duty);
  if (!isStation(stated, duty)) return [];
  const call = callOf(STATIONCURVE, { ...stationCurveArguments(stated, duty), numberOfPoints: constant(CURVE_ROWS) });
  return [
    ...duty.otherPumps.map((pump) => otherHeads(duty, pump)),
    spill(COMBINED, "Head of all pumps together, at their header", call, CURVE_ROWS + 1),
  ];
}

function otherHeads(duty: Duty, pump: DutyOtherPump): WorkingItem {
  const table = otherHeadCurve(pump);
  const { speedRatio, trimRatio } = otherCells(pump);
  const curve = otherAsPumped(pump, liquidOfDuty(duty));
  const first = product(cell(curve, 0, "flow"), speedRatio, trimRatio);
  const last = otherLastFlow(pump, curve);
  const flow = (row: number): Expression => {
    // The ends as they stand: a step added up might pass the end of the curve by a rounding.
    if (row === 0) return first;
    if (row === CURVE_ROWS - 1) return last;
    const part = (rows: number): Expression => ratio(constant(rows), constant(CURVE_ROWS - 1));
    return sum(product(first, part(CURVE_ROWS - 1 - row)), product(last, part(row)));
  };
  const heads = callOf(PUMPHEAD, { curve: range(curve), flow: column(table, "flow"), speedRatio, trimRatio });
  return working(table, `Head of ${pump.name} as it runs`, CURVE_ROWS, [
    ["flow", "flow", flow],
    ["head", "head", { spill: heads }],
  ]);
}

/** Head of all pumps that run over their flow, as total head counts it: the losses of every row are the line's. */
export const PUMPS_TOGETHER = tableOf("pumpsTogether", DRAWN);

/** Pumps alike by their own curve; unlike ones by what they hold at the header, and what their own rows lose at equal shares. */
export function headsTogether(duty: Duty): WorkingItem {
  const isUnlike = isStation(asStated(duty), duty);
  return working(PUMPS_TOGETHER, "Head of all pumps together", CURVE_ROWS, [
    ["flow", "flow", (row) => (isUnlike ? part(COMBINED, "flow", row) : cell(HEAD_CURVE, row, "together"))],
    [
      "head",
      "head",
      (row) =>
        isUnlike
          ? sum(part(COMBINED, "head", row), part(COMBINED, "ownLost", row))
          : cell(HEAD_CURVE, row, "headTogether"),
    ],
  ]);
}
