import { decodeDuty } from "../../../shared/duty/decode.ts";
import { type Duty, hasFields, isLifted, segmentsOf } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { isSlurry, stateAsPumped } from "../../../shared/duty/slurry.ts";
import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { kinematicViscosityOf, type LiquidState } from "../../../src/liquid/liquid.ts";
import type { LineSegment } from "../../../src/pipework/line.ts";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { type Selection, selectPumps } from "../../../src/pump/selection.ts";
import { askedOfEach, type SelectionDuty, selectionSystem } from "../../../src/pump/selection-duty.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { type OnWater, onWater } from "../../../src/slurry/selection-on-water.ts";
import { suctionState } from "../../../src/suction/suction-state.ts";
import type { Candidates } from "./candidates.ts";

/** What the duty asks of each pump, and how the pumps at hand answer. */
export interface Ranking {
  readonly duty: Duty;
  /** Nothing where the duty cannot be worked out; `selection` then says why. */
  readonly asked: SelectionDuty | undefined;
  /** Of a slurry: the share of its head on water a pump keeps; `asked` is then on water. */
  readonly headRatio?: number;
  readonly selection: Result<Selection>;
}

interface Last {
  readonly candidates: Candidates;
  readonly typed: DutyText;
  readonly ranking: Ranking | undefined;
}

let last: Last | undefined;

/**
 * The candidates held against the duty as typed, whatever pump stands in it; nothing until the duty is complete. Worked
 * out anew only when a figure of the duty or the candidates change, not while a chosen pump is edited.
 */
export function rankingOf(typed: DutyText, candidates: Candidates): Ranking | undefined {
  if (last?.candidates === candidates && isSameDuty(last.typed, typed)) return last.ranking;
  const ranking = rank(typed, candidates);
  last = { candidates, typed, ranking };
  return ranking;
}

/** Texts are never changed in place, so that equal parts of two duties are the same objects. */
function isSameDuty(one: DutyText, other: DutyText): boolean {
  return (["unitSet", "fields", "suctionLine", "dischargeLine"] as const).every((key) => one[key] === other[key]);
}

function rank(typed: DutyText, candidates: Candidates): Ranking | undefined {
  const { pump: _, ...withoutPump } = typed;
  const { duty, isComplete } = decodeDuty(withoutPump);
  if (!isComplete) return undefined;
  const asked = askedOf(duty);
  if (!asked.ok) return { duty, asked: undefined, selection: asked };
  const { duty: onCurves, asPumped, headRatio } = asked.value;
  const selection = andThen(selectPumps({ pumps: candidates.pumps, duty: onCurves }), (found) =>
    succeed(asPumped(found)),
  );
  return { duty, asked: onCurves, selection, ...(isSlurry(duty) && { headRatio }) };
}

const NEEDED = [
  "pumpsRunning",
  "arrangement",
  "flow",
  "liquid",
  "temperature",
  "altitude",
  "sourceLevel",
  "pumpLevel",
  "deliveryLevel",
  "sourcePressure",
  "deliveryPressure",
  "frictionMargin",
] as const;
type Asked = Duty & { readonly [K in (typeof NEEDED)[number]]: NonNullable<Duty[K]> };

/**
 * The duty as pumps are held against it: the flow, and the head with the margin on losses, at the altitude, suction lift
 * and temperature stated, of the liquid as pumped: of a slurry, the equivalent water head. A liquid without a vapour pressure leaves NPSH unjudged.
 */
function askedOf(duty: Duty): Result<OnWater> {
  // What is missing is said at its box.
  const suctionLine = segmentsOf(duty.suctionLine);
  const dischargeLine = segmentsOf(duty.dischargeLine);
  if (!hasFields(duty, ...NEEDED) || suctionLine === undefined || dischargeLine === undefined) return fail([]);
  const { flow, deliveryLevel, sourceLevel, sourcePressure, deliveryPressure } = duty;
  return andThen(stateAsPumped(duty), (state) => {
    const system = selectionSystem({
      flow,
      staticHead: deliveryLevel - sourceLevel,
      suctionLine,
      dischargeLine,
      pressureDifference: deliveryPressure - sourcePressure,
      liquid: state,
    });
    return andThen(system, (curve) => {
      const npshAvailable = npshAvailableOf(duty, suctionLine, state);
      const together: SelectionDuty = {
        flow,
        system: withMargin(curve, duty.frictionMargin),
        density: state.density,
        kinematicViscosity: kinematicViscosityOf(state),
        ...(duty.npshMargin !== undefined && { npshMargin: duty.npshMargin }),
        ...(duty.service !== undefined && !isLifted(duty) && { service: duty.service }),
        ...(npshAvailable === undefined ? {} : { npshAvailable }),
      };
      return onWater(state, askedOfEach(together, duty.pumpsRunning, duty.arrangement));
    });
  });
}

/** A system whose losses, all that comes with flow, are greater by a fraction. */
function withMargin(system: HeadCurve, margin: number): HeadCurve {
  if (margin === 0) return system;
  const still = system.headAt(0);
  return { ...system, headAt: (flow) => still + (1 + margin) * (system.headAt(flow) - still) };
}

/** NPSH available against flow, m; nothing where it cannot be known at the flow asked for. */
function npshAvailableOf(
  duty: Asked,
  suctionLine: readonly LineSegment[],
  liquid: LiquidState,
): ((flow: number) => number) | undefined {
  const atmosphere = standardAtmosphere(duty.altitude);
  if (!atmosphere.ok) return undefined;
  const at = (flow: number): number | undefined => {
    const state = suctionState({
      flow,
      suctionLift: duty.pumpLevel - duty.sourceLevel,
      suctionLine,
      atmosphericPressure: atmosphere.value,
      surfacePressure: duty.sourcePressure,
      liquid,
    });
    return state.ok ? state.value.npshAvailable : undefined;
  };
  // A suction line that fails at a greater flow has nothing to offer there.
  return at(duty.flow) === undefined ? undefined : (flow) => at(flow) ?? 0;
}
