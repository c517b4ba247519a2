import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Liquid } from "../../src/liquid/liquid.ts";
import type { LineSegment } from "../../src/pipework/line.ts";
import type { FieldKey, SegmentText } from "./duty-text.ts";

/** A row of a line: what was typed, and what it means. */
export interface DutySegment {
  readonly typed: SegmentText;
  readonly segment: LineSegment;
}

/** A duty read and found complete, in engine units. */
export interface Duty {
  readonly unitSet: UnitSetName;
  /** Title-block texts as typed, and the basis of each figure. */
  readonly texts: Readonly<Record<FieldKey, string>>;
  readonly basis: Readonly<Partial<Record<FieldKey, string>>>;
  /** Fields left blank that took their default. */
  readonly assumed: ReadonlySet<FieldKey>;
  readonly liquid: Liquid;
  readonly temperature: number;
  readonly altitude: number;
  readonly flow: number;
  readonly sourceLevel: number;
  readonly pumpLevel: number;
  readonly deliveryLevel: number;
  readonly sourcePressure: number;
  readonly deliveryPressure: number;
  /** Fraction of the line losses. */
  readonly frictionMargin: number;
  readonly npshRequired: number | undefined;
  readonly npshMargin: number;
  readonly curveFlow: number;
  readonly suctionLine: readonly DutySegment[];
  readonly dischargeLine: readonly DutySegment[];
}
