import type { CaseFieldKey, CurvePointText, DutyText, SegmentText } from "../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../shared/duty/fields.ts";
import { workedOut } from "../../taskpane/pane/worked.ts";
import { routeDuty } from "./route-duty.ts";

export interface KeystrokeFigures {
  /** ms from a changed text to all answers of the pane, over all letters typed. */
  readonly median: number;
  /** The box whose letters take longest, the median of its own. */
  readonly slowest: { readonly box: string; readonly ms: number };
}

/** No two letters leave the same text behind, so that none finds its own answers again. */
const LETTERS = 12;
/** Typed first, for a pane that is warm. */
const WARM_UP = 3;

/** A duty with another text in one of its boxes. */
type Typed = (letter: number) => DutyText;

/** Time from text to all answers of the pane: twelve cases of a route of fifty runs, one box after another typed in. */
export function keystrokeFigures(): KeystrokeFigures {
  const boxes = Object.entries(boxesOf(routeDuty()));
  for (const [, typed] of boxes) for (let i = 0; i < WARM_UP; i += 1) workedOut(typed(LETTERS + i));
  const times = boxes.map(([box, typed]) => ({
    box,
    times: Array.from({ length: LETTERS }, (_, letter) => {
      const text = typed(letter);
      const start = performance.now();
      workedOut(text);
      return performance.now() - start;
    }),
  }));
  const slowest = times
    .map(({ box, times: own }) => ({ box, ms: medianOf(own) }))
    .reduce((worst, one) => (one.ms > worst.ms ? one : worst));
  return { median: medianOf(times.flatMap(({ times: own }) => own)), slowest };
}

function boxesOf(duty: DutyText): Readonly<Record<string, Typed>> {
  const { pump, cases = [], dischargeLine } = duty;
  if (pump === undefined) throw new Error("the duty of the bench has no pump");
  const field =
    (key: FieldKey, text: (letter: number) => string): Typed =>
    (letter) => ({ ...duty, fields: { ...duty.fields, [key]: text(letter) } });
  const run =
    (row: number, column: keyof SegmentText, text: (letter: number) => string): Typed =>
    (letter) => ({ ...duty, dischargeLine: withRow(dischargeLine, row, { [column]: text(letter) }) });
  const inCase =
    (row: number, key: CaseFieldKey, text: (letter: number) => string): Typed =>
    (letter) => ({
      ...duty,
      cases: withRow(cases, row, { fields: { ...cases[row]?.fields, [key]: text(letter) } }),
    });
  const point =
    (row: number, column: keyof CurvePointText, text: (letter: number) => string): Typed =>
    (letter) => ({ ...duty, pump: { ...pump, points: withRow(pump.points, row, { [column]: text(letter) }) } });
  return {
    flow: field("flow", (i) => `${1200 + i}`),
    "delivery level": field("deliveryLevel", (i) => `${174 - i / 20}`),
    temperature: field("temperature", (i) => `${60 + i / 10}`),
    "length of a run": run(20, "length", (i) => `${40 + i / 2}`),
    "fittings of a run": run(20, "fittings", (i) => `${i + 1} elbow 45`),
    "level of a run": run(30, "level", (i) => `${150 + i / 10}`),
    "pipe of a run": run(25, "pipe", (i) => `10in sch40 C ${100 + i}`),
    "flow of a case": inCase(0, "flow", (i) => `${900 + i}`),
    "level of a case": inCase(2, "sourceLevel", (i) => `${105 + i / 100}`),
    "head of the pump": point(1, "head", (i) => `${137 - i / 100}`),
    "fuel price": field("fuelPrice", (i) => `${3.9 + i / 100} per US gal`),
    pH: field("pH", (i) => `${7 + i / 100}`),
  };
}

function withRow<T>(rows: readonly T[], row: number, change: Partial<T>): readonly T[] {
  return rows.map((one, i) => (i === row ? { ...one, ...change } : one));
}

function medianOf(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] as number;
}
