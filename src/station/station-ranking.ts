import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { all, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headLost } from "../head/head-lost.ts";
import { type PumpingSystem, totalHeadMethod } from "../head/total-head.ts";
import { kinematicViscosityOf } from "../liquid/liquid.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { lineLoss } from "../pipework/line-loss.ts";
import type { Arrangement, HeadCurve } from "../pump/head-curve.ts";
import { type Selection, type SelectionInput, selectPumps } from "../pump/selection.ts";
import { askedOfEach, type SelectionDuty, selectionCurve, selectionSystem } from "../pump/selection-duty.ts";
import { usualFillingFlow } from "../route/filling.ts";
import { asPumped, type OnWater, onWater } from "../slurry/selection-on-water.ts";
import { suctionState } from "../suction/suction-state.ts";
import type { ServiceName } from "../tables/services.ts";
import { operatingPointMethod } from "./operating-point.ts";

/** A case of a station of equal pumps: what flows, between which ends, through which lines, by how many pumps. */
export interface StationCase extends PumpingSystem {
  /** What the reader calls it, where there are several. */
  readonly name?: string;
  /** An end of a range that the duty covers: more flow than asked is no fault there. */
  readonly isRangeEnd?: boolean;
  /** Of all pumps together, m³/s; the lines' shares are of it. */
  readonly flow: number;
  /** Gauge, over the source and the destination, Pa. */
  readonly sourcePressure: number;
  readonly deliveryPressure: number;
  /** Fraction of the losses that is added to them. */
  readonly frictionMargin: number;
  /** Over the datum of the levels of the discharge line, m; where left out the pumps are held to none of them. */
  readonly sourceLevel?: number;
  /** The fall beyond the summit of the line is counted on. */
  readonly runsFull?: boolean;
  readonly pumps: number;
  readonly arrangement: Arrangement;
  /** Height of the pumps over the source, m; where nobody knows it NPSH is not judged. */
  readonly suctionLift?: number;
  /** Absolute pressure of the air, Pa. */
  readonly atmosphericPressure: number;
  /** NPSH to keep in hand, m; by the service where left out, and on a lift that of a lift. */
  readonly npshMargin?: number;
  readonly service?: ServiceName;
  /** With the source at its highest, m; `suctionLift` where left out. */
  readonly leastLift?: number;
  /** Greatest gauge pressure at the inlet, where it is more than the source gives, Pa. */
  readonly greatestSuctionPressure?: number;
}

const { sourcePressure, deliveryPressure } = totalHeadMethod.inputs;

export const stationRankingMethod = {
  cites: totalHeadMethod.cites,
  inputs: {
    sourcePressure,
    deliveryPressure,
    pumps: { ...operatingPointMethod.inputs.pumps, isWhole: true },
    frictionMargin: { name: "friction margin", quantity: "percent", atLeast: 0 },
    npshMargin: { name: "NPSH margin", quantity: "head", atLeast: 0 },
  },
} as const satisfies Method<"sourcePressure" | "deliveryPressure" | "pumps" | "frictionMargin" | "npshMargin">;

/** What a station of equal pumps asks of each, held against curves for water. */
export interface StationAsked {
  /** In the order of the cases. */
  readonly cases: readonly [OnWater, ...OnWater[]];
}

/** As the ranking takes them: the duty as stated, and its other cases after it. */
export type StationCases = readonly [StationCase, ...StationCase[]];

/**
 * What is asked of each of the equal pumps of a station in every case: its share of the flow, or of the head in series;
 * NPSH available on its own suction; pressure against a shut valve, with the suction pressure at its greatest and no less
 * than the air's; of a slurry, by its curve for water.
 * Fails: out-of-range inputs as the method bounds them, a number of pumps that is not whole; as `selectionSystem` and
 * `onWater`; with the name of the case.
 * Warns: as those.
 */
export function stationAsked(cases: StationCases): Result<StationAsked> {
  return andThen(all(cases.map(askedIn)), (found) =>
    succeed({ cases: found as unknown as readonly [OnWater, ...OnWater[]] }),
  );
}

/**
 * The pumps of a table held against a station of equal ones in every case, best first; heads, efficiencies and NPSH of the
 * answer are on the liquid as pumped.
 * Fails: as `stationAsked` and `selectPumps`.
 */
export function rankedForStation({ cases }: StationAsked, by: Omit<SelectionInput, "duties">): Result<Selection> {
  const [first, ...others] = cases;
  const duties = [first.duty, ...others.map(({ duty }) => duty)] as const;
  return andThen(selectPumps({ ...by, duties }), (found) => succeed(asPumped(found, cases)));
}

function askedIn(one: StationCase): Result<OnWater> {
  const { name, liquid, flow, pumps, arrangement, deliveryPressure, sourcePressure } = one;
  const system = selectionSystem({ ...one, pressureDifference: deliveryPressure - sourcePressure });
  const checked = checkInputs(stationRankingMethod, { ...one, npshMargin: one.npshMargin ?? 0 });
  const asked = andThen(checked.ok ? overSummit(one, system) : checked, (curve) => {
    const npshAvailable = npshAvailableOf(one);
    const together: SelectionDuty = {
      ...(name !== undefined && { name }),
      ...(one.isRangeEnd && { isRangeEnd: true }),
      flow,
      system: curve,
      density: liquid.density,
      kinematicViscosity: kinematicViscosityOf(liquid),
      ...(one.npshMargin !== undefined && { npshMargin: one.npshMargin }),
      ...(one.service !== undefined && !((one.suctionLift ?? 0) > 0) && { service: one.service }),
      ...(npshAvailable !== undefined && { npshAvailable }),
      ...fillingOf(one),
      shutIn: { suctionPressure: suctionPressureOf(one), perMetre: liquid.density * STANDARD_GRAVITY },
    };
    return onWater(liquid, askedOfEach(together, pumps, arrangement));
  });
  return asked.ok || name === undefined ? asked : fail(asked.findings.map((finding) => named(finding, name)));
}

/**
 * The system with the margin on its losses; where the fall of the line is not counted on, at every flow no less than over
 * its summit, which the pumps then see at all times.
 */
function overSummit(one: StationCase, system: Result<HeadCurve>): Result<HeadCurve> {
  return andThen(system, (curve) => {
    const through = withMargin(curve, one.frictionMargin);
    if (one.runsFull || !hasSummit(one)) return succeed(through);
    return andThen(
      selectionCurve(one.flow, (flow) => headOver(one, flow)),
      (over) => succeed({ ...through, headAt: (flow) => Math.max(through.headAt(flow), over.headAt(flow)) }),
    );
  });
}

/** Whether a level of the discharge line before its outlet is stated, and that of the source over the same datum. */
function hasSummit({ dischargeLine, sourceLevel }: StationCase): boolean {
  return sourceLevel !== undefined && dischargeLine.slice(0, -1).some(({ endLevel }) => endLevel !== undefined);
}

/** The greatest of level and losses, these with their margin, to a place of the discharge line before its outlet. */
function headOver(one: StationCase, flow: number): Result<number> {
  const { dischargeLine, suctionLine, sourceLevel = 0, sourcePressure, liquid, frictionMargin } = one;
  const still = sourceLevel + sourcePressure / (liquid.density * STANDARD_GRAVITY);
  return andThen(headLost(suctionLine, flow, liquid), (suction) =>
    andThen(lineLoss({ flow, line: dischargeLine, liquid }), ({ segments }) => {
      let lost = suction;
      const heads = dischargeLine.slice(0, -1).map(({ endLevel }, i) => {
        lost += (segments[i]?.head ?? 0) + (segments[i]?.fittingHead ?? 0);
        return endLevel === undefined ? Number.NEGATIVE_INFINITY : endLevel - still + (1 + frictionMargin) * lost;
      });
      return succeed(greatestOf(heads));
    }),
  );
}

/** At the usual filling velocity in the largest bore, or the flow asked for, if that is less. */
function fillingOf(one: StationCase): Pick<SelectionDuty, "fill"> {
  if (!hasSummit(one)) return {};
  const flow = Math.min(one.flow, usualFillingFlow(one.dischargeLine));
  const head = headOver(one, flow);
  return head.ok ? { fill: { flow, head: head.value } } : {};
}

function named(finding: Finding, name: string): Finding {
  return { ...finding, subject: `${finding.subject} (${name})` };
}

/** A system whose losses, all that comes with flow, are greater by a fraction. */
function withMargin(system: HeadCurve, margin: number): HeadCurve {
  if (margin === 0) return system;
  const still = system.headAt(0);
  return { ...system, headAt: (flow) => still + (1 + margin) * (system.headAt(flow) - still) };
}

/** NPSH available against the flow of all pumps, m; nothing where it cannot be known at the flow asked for. */
function npshAvailableOf(one: StationCase): ((flow: number) => number) | undefined {
  const { suctionLift, suctionLine, atmosphericPressure, sourcePressure, liquid } = one;
  if (suctionLift === undefined) return undefined;
  const at = (flow: number): number | undefined => {
    const state = suctionState({
      flow,
      suctionLift,
      suctionLine,
      atmosphericPressure,
      surfacePressure: sourcePressure,
      liquid,
    });
    return state.ok ? state.value.npshAvailable : undefined;
  };
  // A suction line that fails at a greater flow has nothing to offer there.
  return at(one.flow) === undefined ? undefined : (flow) => at(flow) ?? 0;
}

/** At the inlet without flow; a lift takes nothing from what stands behind a shut valve. */
function suctionPressureOf(one: StationCase): number {
  const { liquid, sourcePressure, suctionLift = 0, leastLift = suctionLift, greatestSuctionPressure = 0 } = one;
  const bySource = sourcePressure - liquid.density * STANDARD_GRAVITY * Math.min(leastLift, suctionLift);
  return Math.max(0, bySource, greatestSuctionPressure);
}
