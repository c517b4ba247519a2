import type { Handle } from "../../shared/calc-sheet/expression.ts";
import { HEAD } from "../../shared/calc-sheet/sections/head.ts";
import { LIQUID_FIGURES } from "../../shared/calc-sheet/sections/liquid.ts";
import { NPSH } from "../../shared/calc-sheet/sections/npsh.ts";
import { SYSTEM_CURVE } from "../../shared/calc-sheet/sections/system-curve.ts";
import { type Decoded, decodeDuty } from "../../shared/duty/decode.ts";
import type { Duty } from "../../shared/duty/duty.ts";
import type { DutyText, LineKey } from "../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../shared/duty/fields.ts";
import {
  type HeadAndSuction,
  headAndSuction,
  type SegmentWorked,
  segmentCells,
} from "../../shared/package/head-and-suction.ts";
import type { Mends } from "../../shared/package/mends/mends.ts";
import type { PumpOnDuty } from "../../shared/package/pump-on-duty.ts";
import type { ShownVerdict } from "../../shared/package/verdicts.ts";
import type { WorkedCalculation } from "../../shared/package/worked-calculation.ts";
import { workedHead } from "../../shared/package/worked-head.ts";
import { type Finding, gravestFirst, withoutRepeats } from "../../src/basis/result.ts";
import { type OpenPoint, pointsOf } from "./open-point.ts";

/** Everything the views show that follows from what is typed. */
export interface WorkedOut extends OfTheWhole {
  /** As far as it can be read; what needs a box that cannot be has no figure. */
  readonly duty: Duty;
  /** Whether nothing is missing or wrong: only then is a sheet written. */
  readonly isComplete: boolean;
  readonly results: HeadAndSuction;
  /** Boxes still to fill, and boxes to correct, in the order of the pane. */
  readonly missing: readonly OpenPoint[];
  readonly wrong: readonly OpenPoint[];
  /** Findings to show beside a box. A box not yet filled is no mistake; `missing` names it. */
  readonly at: (key: string) => readonly Finding[];
  /** What was worked out for a row of a line, by the row as it stands in the pane. */
  readonly segmentAt: (line: LineKey, row: number) => RowWorked | undefined;
  readonly remarks: Remarks;
}

/** What the whole calculation says beyond head and suction. */
export interface OfTheWhole {
  /** Nothing until a pump is chosen and its boxes can be read. */
  readonly pump: PumpOnDuty | undefined;
  /** Why a box that was filled has no use in this duty. */
  readonly notUsed: ReadonlyMap<FieldKey, string>;
  /** What clears a finding with one text in one box. */
  readonly mends: Mends;
  /** What holds, what fails and what is open, in the order of the sheet. */
  readonly verdicts: readonly ShownVerdict[];
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
/** Cells of head and suction at the duty itself, beside those of the lines; the package has remarks of its own. */
const AT_DUTY: readonly Handle[] = [...Object.values(LIQUID_FIGURES), HEAD.totalHead, NPSH.npshAvailable];

/** Of a duty whose head and suction alone are worked out, nothing else is said. */
const NOT_WORKED_OUT: OfTheWhole = {
  pump: undefined,
  notUsed: new Map(),
  mends: { at: () => [], of: () => [], ofVerdict: () => [] },
  verdicts: [],
};

/** Reads a duty and works out its head and suction, which takes the first part of the calculation alone. */
export const headWorkedOut = lastKept((typed) => {
  const decoded = decodeDuty(typed);
  return shownOf(typed, decoded, workedHead(decoded.duty), NOT_WORKED_OUT);
});

/** The same duty gives the same object again without working. */
export function lastKept(work: (typed: DutyText) => WorkedOut): (typed: DutyText) => WorkedOut {
  let last: { readonly typed: DutyText; readonly worked: WorkedOut } | undefined;
  return (typed) => {
    if (last?.typed !== typed) last = { typed, worked: work(typed) };
    return last.worked;
  };
}

/** A duty as read, its head and suction out of a calculation that holds them, and what is known of the whole. */
export function shownOf(
  typed: DutyText,
  { duty, findings, isComplete }: Decoded,
  calculation: WorkedCalculation,
  whole: OfTheWhole,
): WorkedOut {
  const results = headAndSuction(duty, calculation);
  const points = pointsOf(typed);
  const isLeftOut = ({ code }: Finding): boolean => code === "left-out";
  const errorsAt = (key: string): readonly Finding[] =>
    (findings.get(key) ?? NONE).filter(({ kind }) => kind === "error");
  return {
    ...whole,
    duty,
    isComplete,
    results,
    missing: points.filter(({ place }) => errorsAt(place).some(isLeftOut)),
    wrong: points.filter(({ place }) => errorsAt(place).some((finding) => !isLeftOut(finding))),
    at: (key) => (findings.get(key) ?? NONE).filter((finding) => !isLeftOut(finding)),
    segmentAt: (line, row) => {
      const index = duty[line].findIndex((segment) => segment.row === row);
      const segment = results[line][index];
      // What is wrong with a row that cannot be read stands at its boxes.
      if (segment === undefined || duty[line][index]?.segment === undefined) return undefined;
      return { ...segment, findings: withoutRepeats(findingsOn(results, segmentCells(line, index))) };
    },
    remarks: remarksOn(duty, results),
  };
}

function findingsOn({ findings }: HeadAndSuction, cells: readonly Handle[]): readonly Finding[] {
  return cells.flatMap(({ key }) => findings.get(key) ?? NONE);
}

/** The same thing said by several calls is shown once; at another state than the duty's, only what is new there. */
function remarksOn(duty: Duty, results: HeadAndSuction): Remarks {
  const cells = (line: LineKey): readonly Handle[] =>
    duty[line].flatMap(({ segment }, row) => (segment === undefined ? [] : segmentCells(line, row)));
  // What is assumed of a row, the row says; what is grave in it, everyone must see.
  const ofRows = findingsOn(results, [...cells("suctionLine"), ...cells("dischargeLine")]);
  const saidThere = new Set(ofRows.filter(({ kind }) => kind === "assumed").map(meaning));
  const atDuty = [...findingsOn(results, AT_DUTY), ...ofRows].filter((finding) => !saidThere.has(meaning(finding)));
  const said = new Set([...atDuty, ...ofRows].map(meaning));
  const fresh = (key: string): readonly Finding[] =>
    (results.findings.get(key) ?? NONE).filter((finding) => !said.has(meaning(finding)));
  return {
    atDuty: gravestFirst(atDuty),
    atGreatestLift: fresh(NPSH.greatestLift.key),
    onCurve: fresh(SYSTEM_CURVE.key),
  };
}

function meaning({ code, subject }: Finding): string {
  return `${code} ${subject}`;
}
