import { decodeDuty } from "../../shared/duty/decode.ts";
import type { Duty } from "../../shared/duty/duty.ts";
import {
  CURVE_PLACE,
  type DutyText,
  type LineKey,
  type Place,
  type PumpText,
  placeKey,
} from "../../shared/duty/duty-text.ts";
import { CURVE_POINT, POINT_COLUMNS, PUMP_BOXES, PUMP_KEYS } from "../../shared/duty/fields/pump.ts";
import { FIELD_KEYS, FIELDS } from "../../shared/duty/fields.ts";
import { type HeadAndSuction, headAndSuction, type SegmentWorked } from "../../shared/package/head-and-suction.ts";
import { type PumpOnDuty, pumpOnDuty } from "../../shared/package/pump-on-duty.ts";
import { type Finding, withoutRepeats } from "../../src/basis/result.ts";
import { LINE_TITLES } from "./state.ts";

/** A box that keeps the duty from being complete, and its name. */
export interface OpenPoint {
  readonly place: string;
  readonly name: string;
}

/** Everything the views show that follows from what is typed. */
export interface WorkedOut {
  /** As far as it can be read. */
  readonly read: Duty;
  /** Once it is complete. */
  readonly duty: Duty | undefined;
  readonly results: HeadAndSuction | undefined;
  /** Nothing until a pump is chosen. */
  readonly pump: PumpOnDuty | undefined;
  /** What a mistake of ours in the calculation says of itself; the pane stays usable over it. */
  readonly fault: string | undefined;
  /** Boxes still to fill, and boxes to correct, in the order of the pane. */
  readonly missing: readonly OpenPoint[];
  readonly wrong: readonly OpenPoint[];
  /** Findings to show beside a box. A box not yet filled is no mistake; `missing` names it. */
  readonly at: (key: string) => readonly Finding[];
  /** What was worked out for a row of a line, by the row as it stands in the pane. */
  readonly segmentAt: (line: LineKey, row: number) => RowWorked | undefined;
  readonly remarks: Remarks;
}

/** What the results give cause to say, by the state it is said of. */
export interface Remarks {
  /** The gravest first. */
  readonly atDuty: readonly Finding[];
  readonly atGreatestLift: readonly Finding[];
  /** At flows of the system curve other than the duty's. */
  readonly onCurve: readonly Finding[];
}

export interface RowWorked extends SegmentWorked {
  /** What the calls of this row remarked. */
  readonly findings: readonly Finding[];
}

const NONE: readonly Finding[] = [];
const NO_REMARKS: Remarks = { atDuty: NONE, atGreatestLift: NONE, onCurve: NONE };
/** Plan cells of head and suction at the duty itself; the pump and the package have remarks of their own. */
const AT_DUTY = /^(density|viscosity|vapourPressure|atmosphere|totalHead|npshAvailable|(suction|discharge)Line\..*)$/;
const GRAVITY = { error: 0, warning: 1, caution: 2 } as const;

/** Reads and works out a duty. The same duty gives the same object again without working. */
export function workedOut(typed: DutyText): WorkedOut {
  if (last?.typed === typed) return last.worked;
  const worked = workOutAnew(typed);
  last = { typed, worked };
  return worked;
}

let last: { readonly typed: DutyText; readonly worked: WorkedOut } | undefined;

function workOutAnew(typed: DutyText): WorkedOut {
  const { duty: read, findings, isComplete } = decodeDuty(typed);
  const duty = isComplete ? read : undefined;
  const { results, pump, fault } = duty === undefined ? {} : resultsOf(duty);
  const points = pointsOf(typed);
  const isLeftOut = ({ code }: Finding): boolean => code === "left-out";
  const errorsAt = (key: string): readonly Finding[] =>
    (findings.get(key) ?? NONE).filter(({ severity }) => severity === "error");
  return {
    read,
    duty,
    results,
    pump,
    fault,
    missing: points.filter(({ place }) => errorsAt(place).some(isLeftOut)),
    wrong: points.filter(({ place }) => errorsAt(place).some((finding) => !isLeftOut(finding))),
    at: (key) => (findings.get(key) ?? NONE).filter((finding) => !isLeftOut(finding)),
    segmentAt: (line, row) => {
      if (duty === undefined || results === undefined) return undefined;
      const index = duty[line].findIndex((segment) => segment.row === row);
      const segment = results[line][index];
      if (segment === undefined) return undefined;
      return { ...segment, findings: withoutRepeats(findingsUnder(results, `${line}.${index}.`)) };
    },
    remarks: results === undefined ? NO_REMARKS : remarksOn(results),
  };
}

/** The engine throws only for our own mistakes; one of those must not lock the estimator out of what was typed. */
function resultsOf(duty: Duty): {
  readonly results?: HeadAndSuction;
  readonly pump?: PumpOnDuty | undefined;
  readonly fault?: string;
} {
  try {
    return { results: headAndSuction(duty), pump: pumpOnDuty(duty) };
  } catch (error) {
    return { fault: error instanceof Error ? error.message : String(error) };
  }
}

/** Every box that can keep a duty from being complete, in the order of the pane, with its name. */
function pointsOf(typed: DutyText): readonly OpenPoint[] {
  const fields = FIELD_KEYS.map((field) => ({ place: placeKey({ field }), name: FIELDS[field].label }));
  const cells = (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    typed[line].flatMap((_, row) =>
      (["pipe", "length", "fittings"] as const).map((column) => {
        const place: Place = { line, row, column };
        return { place: placeKey(place), name: `${LINE_TITLES[line]}, row ${row + 1}: ${column}` };
      }),
    ),
  );
  return [...fields, ...cells, ...(typed.pump === undefined ? [] : pumpPoints(typed.pump))];
}

function pumpPoints({ points }: PumpText): readonly OpenPoint[] {
  const boxes = PUMP_KEYS.map((pump) => ({ place: placeKey({ pump }), name: `Pump: ${PUMP_BOXES[pump].label}` }));
  const cells = points.flatMap((_, row) =>
    POINT_COLUMNS.map((column) => ({
      place: placeKey({ pump: "points", row, column }),
      name: `Pump curve, point ${row + 1}: ${CURVE_POINT[column].label}`,
    })),
  );
  return [...boxes, ...cells, { place: CURVE_PLACE, name: "Pump curve" }];
}

function findingsUnder({ findings }: HeadAndSuction, start: string): readonly Finding[] {
  return [...findings].flatMap(([key, found]) => (key.startsWith(start) ? found : NONE));
}

/** The same thing said by several calls is shown once; at another state than the duty's, only what is new there. */
function remarksOn({ findings }: HeadAndSuction): Remarks {
  const under = (key: string): readonly Finding[] => findings.get(key) ?? NONE;
  const atDuty = [...findings].flatMap(([key, found]) => (AT_DUTY.test(key) ? found : NONE));
  const said = new Set(atDuty.map(meaning));
  const fresh = (found: readonly Finding[]): readonly Finding[] =>
    found.filter((finding) => !said.has(meaning(finding)));
  return {
    atDuty: withoutRepeats(atDuty).toSorted((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]),
    atGreatestLift: fresh(under("greatestLift")),
    onCurve: fresh(under("systemCurve")),
  };
}

function meaning({ code, subject }: Finding): string {
  return `${code} ${subject}`;
}
