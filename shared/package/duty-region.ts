import { andThen, type Result } from "../../src/basis/result.ts";
import { systemCurve } from "../../src/head/system-curve.ts";
import type { LiquidState } from "../../src/liquid/liquid.ts";
import type { Line } from "../../src/pipework/line.ts";
import { type DutyRegion, dutyRegion } from "../../src/pump/envelope.ts";
import type { HeadCurve } from "../../src/pump/head-curve.ts";
import { runningPump } from "../../src/pump/running-pump.ts";
import { systemCurveThrough } from "../../src/pump/system-curve-through.ts";
import { standardAtmosphere } from "../../src/site/atmosphere.ts";
import { suctionState } from "../../src/suction/suction-state.ts";
import { dutyCases, growsRougher } from "../calc-sheet/sections/duty-cases.ts";
import { specificSpeedOf } from "../calc-sheet/sections/preferred-region.ts";
import type { Duty, DutyPump, DutySegment } from "../duty/duty.ts";

/** As many points as the system curves of the sheet. */
const POINTS = 25;
/** The system is followed this far past the end of the pumps' curve. */
const REACH = 1.1;

/** All corners of the duty's ranges and what is worst between them. Engine units. */
export function regionOf(duty: Duty, pump: DutyPump): Result<DutyRegion> {
  const { curve, speedRatio, trimRatio, count, arrangement } = pump;
  return andThen(runningPump({ curve, speedRatio, trimRatio }), (running) =>
    andThen(duty.liquid.at(duty.temperature), (liquid) =>
      andThen(standardAtmosphere(duty.altitude), (atmosphericPressure) => {
        const greatestFlow = REACH * running.mostFlow * (arrangement === "parallel" ? count : 1);
        const suctionLine = lineOf(duty.suctionLine);
        const hasAged = dutyCases(duty).some(({ pipe }) => pipe === "aged");
        const staticHead = duty.deliveryLevel - duty.sourceLevel;
        return andThen(systemOf(duty, liquid, lineOf, greatestFlow), (newPipe) =>
          andThen(
            systemOf(duty, liquid, (line) => agedLine(line, duty), greatestFlow),
            (agedPipe) => {
              const [lower, upper] = duty.acceptanceGrade?.head ?? [0, 0];
              const specificSpeed = specificSpeedOf(pump);
              return dutyRegion({
                pump: running,
                pumps: count,
                arrangement,
                staticHeads: {
                  normal: staticHead,
                  ...(duty.leastStaticHead === undefined ? {} : { least: duty.leastStaticHead }),
                  ...(duty.greatestStaticHead === undefined ? {} : { greatest: duty.greatestStaticHead }),
                },
                newPipe,
                ...(hasAged ? { agedPipe } : {}),
                headBand: { least: 1 + lower / 100, most: 1 + upper / 100 },
                density: liquid.density,
                // The source is taken at the level stated in every state, as the sheet does: it should be the lowest.
                npshAvailable: (flow) =>
                  andThen(
                    suctionState({
                      flow,
                      suctionLift: duty.pumpLevel - duty.sourceLevel,
                      suctionLine,
                      atmosphericPressure,
                      surfacePressure: duty.sourcePressure,
                      liquid,
                    }),
                    ({ npshAvailable }) => ({ ok: true, value: npshAvailable, findings: [] }),
                  ),
                npshMargin: duty.npshMargin,
                ...(specificSpeed === undefined ? {} : { specificSpeed }),
              });
            },
          ),
        );
      }),
    ),
  );
}

function systemOf(
  duty: Duty,
  liquid: LiquidState,
  line: (segments: readonly DutySegment[]) => Line,
  greatestFlow: number,
): Result<HeadCurve> {
  const points = systemCurve({
    staticHead: duty.deliveryLevel - duty.sourceLevel,
    suctionLine: line(duty.suctionLine),
    dischargeLine: line(duty.dischargeLine),
    liquid,
    greatestFlow,
    points: POINTS,
    pressureDifference: duty.deliveryPressure - duty.sourcePressure,
  });
  if (!points.ok) return points;
  const labels = points.value.map((_, i) => `system curve point ${i + 1}`);
  return systemCurveThrough({ points: points.value, subject: "system curve", labels });
}

function lineOf(segments: readonly DutySegment[]): Line {
  return segments.map(({ segment }) => segment);
}

/** The line with its pipes as rough as stated for old age; those that do not age stand as they are. */
function agedLine(segments: readonly DutySegment[], { agedRoughness }: Duty): Line {
  return segments.map(({ segment }) =>
    agedRoughness !== undefined && growsRougher(segment.pipe, agedRoughness)
      ? { ...segment, pipe: { ...segment.pipe, roughness: agedRoughness } }
      : segment,
  );
}
