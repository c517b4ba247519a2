import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Liquid } from "../../src/liquid/liquid.ts";
import type { LineSegment } from "../../src/pipework/line.ts";
import type { Arrangement } from "../../src/pump/head-curve.ts";
import type { PumpCurve } from "../../src/pump/pump-curve.ts";
import type { AcceptanceGradeRow } from "../../src/tables/acceptance-grades.ts";
import type { DutyPackage } from "./decode-package.ts";
import type { FieldKey, PumpText, SegmentText } from "./duty-text.ts";

/** A row of a line: what was typed, and what it means. */
export interface DutySegment {
  readonly typed: SegmentText;
  readonly segment: LineSegment;
}

/** The chosen pump, read. Ratios are of the speed and diameter its curve was drawn at. */
export interface DutyPump {
  readonly typed: PumpText;
  readonly name: string;
  /** As the curve was drawn, where stated: r/s and m. */
  readonly speed: number | undefined;
  readonly impellerDiameter: number | undefined;
  readonly curve: PumpCurve;
  readonly speedRatio: number;
  readonly trimRatio: number;
  readonly count: number;
  readonly arrangement: Arrangement;
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
  /** The range the pump must cover; an end not stated is the duty itself. */
  readonly leastStaticHead: number | undefined;
  readonly greatestStaticHead: number | undefined;
  readonly agedRoughness: number | undefined;
  readonly acceptanceGrade: AcceptanceGradeRow | undefined;
  /** Missing until a pump is chosen. */
  readonly pump: DutyPump | undefined;
  readonly package: DutyPackage;
}
