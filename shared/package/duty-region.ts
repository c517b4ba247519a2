import { UNIT_SETS } from "../../src/basis/quantities.ts";
import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import { kinematicViscosityOf } from "../../src/liquid/liquid.ts";
import { type DutyRegion, dutyRegion } from "../../src/pump/envelope.ts";
import type { HeadCurve } from "../../src/pump/head-curve.ts";
import { runningPump } from "../../src/pump/running-pump.ts";
import { systemCurveThrough } from "../../src/pump/system-curve-through.ts";
import { viscousPumpCurve } from "../../src/pump/viscous-curve.ts";
import { standardAtmosphere } from "../../src/site/atmosphere.ts";
import { curveOn } from "../../src/slurry/curve-as-pumped.ts";
import { npshAvailableIn } from "../../src/suction/suction-state.ts";
import { asStated, type DutyState, dutyCases, FULL, systemOf } from "../calc-sheet/sections/duty-cases.ts";
import { specificSpeedOf } from "../calc-sheet/sections/preferred-region.ts";
import { viscousNeedOf } from "../calc-sheet/sections/viscous-curve.ts";
import { isRange } from "../cells/cell.ts";
import { growsRougher } from "../duty/aged-pipe.ts";
import { type Duty, type DutyPump, hasFields, segmentsOf } from "../duty/duty.ts";
import { stateAsPumped } from "../duty/slurry.ts";
import type { WorkedDuty } from "./worked-duty.ts";

const NEEDED = [
  "pumpsRunning",
  "arrangement",
  "liquid",
  "temperature",
  "altitude",
  "sourceLevel",
  "pumpLevel",
  "deliveryLevel",
  "sourcePressure",
] as const;

/**
 * All corners of the region of a duty with its extremes, on the system curves of the sheet. The source stands at the
 * level stated, its lowest, in all of them. Findings are those of the region alone; the sheet's calls say the others.
 */
export function regionOf(duty: Duty, pump: DutyPump, worked: WorkedDuty): Result<DutyRegion> {
  const { speedRatio, trimRatio } = pump;
  // The region drawn is that of pumps alike; of a station it stands in its table.
  if (duty.otherPumps.length > 0) return fail([]);
  // What is missing is said at its box.
  const suctionLine = segmentsOf(duty.suctionLine);
  if (!hasFields(duty, ...NEEDED) || suctionLine === undefined) return fail([]);
  const { pumpsRunning, arrangement, acceptanceGrade, leastStaticHead, greatestStaticHead, npshMargin } = duty;
  const normal = duty.deliveryLevel - duty.sourceLevel;
  const state = stateAsPumped(duty);
  if (!state.ok) return state;
  const onCarrier = curveOnCarrier(duty, pump, kinematicViscosityOf(state.value));
  if (!onCarrier.ok) return onCarrier;
  const onPumped = curveOn(state.value, onCarrier.value);
  if (!onPumped.ok) return onPumped;
  const running = runningPump({ curve: onPumped.value, speedRatio, trimRatio });
  const newPipe = systemThrough(asStated(duty), duty, worked);
  const { staticHead } = asStated(duty);
  const aged = dutyCases(duty).find((one) => one.roughness !== undefined && one.staticHead === staticHead);
  const agedPipe = aged && systemThrough(aged, duty, worked);
  const full = dutyCases(duty).find(({ key }) => key === FULL);
  const fullPipe = full && systemThrough(full, duty, worked);
  const agedSuction = suctionLine.map((segment) => {
    const { agedRoughness: roughness } = duty;
    if (roughness === undefined || !growsRougher(segment.pipe, roughness)) return segment;
    return { ...segment, pipe: { ...segment.pipe, roughness } };
  });
  const air = standardAtmosphere(duty.altitude);
  if (!running.ok) return running;
  if (!newPipe.ok) return newPipe;
  if (agedPipe !== undefined && !agedPipe.ok) return agedPipe;
  if (fullPipe !== undefined && !fullPipe.ok) return fullPipe;
  if (!air.ok) return air;
  const specificSpeed = specificSpeedOf(pump);
  const [lower, upper] = acceptanceGrade?.head ?? [0, 0];
  return dutyRegion({
    pump: running.value,
    pumps: pumpsRunning,
    arrangement,
    // A head typed to a hundredth may pass the difference of the levels by a rounding.
    staticHeads: {
      normal,
      ...(leastStaticHead === undefined ? {} : { least: Math.min(leastStaticHead, normal) }),
      ...(greatestStaticHead === undefined ? {} : { greatest: Math.max(greatestStaticHead, normal) }),
    },
    newPipe: newPipe.value,
    ...(agedPipe === undefined ? {} : { agedPipe: agedPipe.value }),
    ...(fullPipe === undefined
      ? {}
      : { fullPipe: raised(fullPipe.value, normal - Math.min(leastStaticHead ?? normal, normal)) }),
    headBand: { least: 1 + lower / 100, most: 1 + upper / 100 },
    density: state.value.density,
    npshAvailable: (flow, { pipe }) =>
      npshAvailableIn({
        flow,
        suctionLift: duty.pumpLevel - duty.sourceLevel,
        suctionLine: pipe === "aged" ? agedSuction : suctionLine,
        atmosphericPressure: air.value,
        surfacePressure: duty.sourcePressure,
        liquid: state.value,
      }),
    ...(npshMargin === undefined ? {} : { npshMargin }),
    ...(specificSpeed === undefined ? {} : { specificSpeed }),
  });
}

/** A system of the least static head as one of the normal. */
function raised(system: HeadCurve, by: number): HeadCurve {
  return by === 0 ? system : { ...system, headAt: (flow) => system.headAt(flow) + by };
}

/** The curve with water, or corrected for a viscous liquid as the pump runs. */
function curveOnCarrier(duty: Duty, pump: DutyPump, kinematicViscosity: number): Result<DutyPump["curve"]> {
  const { curve, speed, speedRatio, trimRatio } = pump;
  if (viscousNeedOf(duty, pump) === "none") return succeed(curve);
  // Why it cannot be corrected is said by the call of the sheet.
  return speed === undefined ? fail([]) : viscousPumpCurve({ curve, speed, speedRatio, trimRatio, kinematicViscosity });
}

/** A system curve of the plan as the functions read it. */
function systemThrough(one: DutyState, duty: Duty, { worked: { cells }, findings }: WorkedDuty): Result<HeadCurve> {
  const { key } = systemOf(one, duty);
  const spilled = cells.get(key) ?? null;
  // Why the system cannot be worked out is said by the call itself.
  if (!isRange(spilled)) return fail(findings.get(key) ?? []);
  const units = UNIT_SETS[duty.unitSet];
  const points = spilled.slice(1).map(([flow, head]) => ({
    flow: toEngine(Number(flow), units.flow),
    head: toEngine(Number(head), units.head),
  }));
  const labels = points.map((_, i) => `system curve row ${i + 2}`);
  const through = systemCurveThrough({ points, subject: "system curve", labels });
  return through.ok ? succeed(through.value) : through;
}
