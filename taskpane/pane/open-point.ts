import { curvePlace, type DutyText, type Place, type PumpText, placeKey } from "../../shared/duty/duty-text.ts";
import {
  CURVE_POINT,
  OWN_BOXES,
  OWN_KEYS,
  POINT_COLUMNS,
  PUMP_BOXES,
  PUMP_KEYS,
} from "../../shared/duty/fields/pump.ts";
import { FIELD_KEYS, FIELDS } from "../../shared/duty/fields.ts";
import { spelt } from "../../shared/text/spelling.ts";
import { LINE_TITLES } from "./state.ts";

/** A box that keeps the duty from being complete, and its name. */
export interface OpenPoint {
  readonly place: string;
  readonly name: string;
}

/** Every box that can keep a duty from being complete, in the order of the pane, with its name. */
export function pointsOf(typed: DutyText): readonly OpenPoint[] {
  const fields = FIELD_KEYS.map((field) => ({
    place: placeKey({ field }),
    name: spelt(FIELDS[field].label, typed.unitSet),
  }));
  const cells = (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    typed[line].flatMap((_, row) =>
      (["pipe", "length", "fittings"] as const).map((column) => {
        const place: Place = { line, row, column };
        return { place: placeKey(place), name: `${LINE_TITLES[line]}, row ${row + 1}: ${column}` };
      }),
    ),
  );
  return [
    ...fields,
    ...cells,
    ...(typed.pump === undefined ? [] : pumpPoints(typed.pump, "Pump")),
    ...(typed.otherPumps ?? []).flatMap((pump, other) => [
      ...pumpPoints(pump, `Further pump ${other + 1}`, other),
      ...OWN_KEYS.map((own) => ({
        place: placeKey({ own, other }),
        name: `Further pump ${other + 1}: ${OWN_BOXES[own].label}`,
      })),
    ]),
  ];
}

function pumpPoints({ points }: PumpText, of: string, other?: number): readonly OpenPoint[] {
  const boxes = PUMP_KEYS.map((pump) => ({
    place: placeKey({ pump, other }),
    name: `${of}: ${PUMP_BOXES[pump].label}`,
  }));
  const cells = points.flatMap((_, row) =>
    POINT_COLUMNS.map((column) => ({
      place: placeKey({ pump: "points", row, column, other }),
      name: `${of} curve, point ${row + 1}: ${CURVE_POINT[column].label}`,
    })),
  );
  return [...boxes, ...cells, { place: curvePlace(other), name: `${of} curve` }];
}
