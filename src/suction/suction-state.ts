import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headLost } from "../head/head-lost.ts";
import { layFlatIn, suctionLineRemarks } from "../head/line-remarks.ts";
import { velocityHead } from "../head/velocity-head.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { flowIn, type Line } from "../pipework/line.ts";
import { npshAvailable, npshAvailableMethod } from "./npsh-available.ts";
import { gasRemarks, liftRemarks } from "./suction-practice.ts";
import { vacuumRemarks } from "./vacuum-collapse.ts";

export interface SuctionStateInput {
  /** m³/s */
  readonly flow: number;
  /** Height of the pump datum over the liquid surface, m. Negative where the pump is flooded. */
  readonly suctionLift: number;
  readonly suctionLine: Line;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
  /** Gauge pressure on the liquid surface, Pa. 0 where open to the air. */
  readonly surfacePressure: number;
  readonly liquid: LiquidState;
}

/** What a pump finds at its inlet. */
export interface SuctionState {
  /** m of the liquid, at the pump datum. */
  readonly npshAvailable: number;
  /** Head lost in the suction line, m. */
  readonly suctionLoss: number;
  /** Absolute pressure at the inlet, Pa, in the bore of the last segment of the line. */
  readonly inletPressure: number;
}

export const suctionStateMethod = {
  cites: npshAvailableMethod.cites,
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    suctionLift: npshAvailableMethod.inputs.suctionLift,
    atmosphericPressure: { name: "atmospheric pressure", quantity: "absolutePressure", above: 0 },
    surfacePressure: { name: "source pressure", symbol: "p_s", quantity: "gaugePressure" },
  },
} as const satisfies Method<"flow" | "suctionLift" | "atmosphericPressure" | "surfacePressure">;

/**
 * NPSH available [m], suction loss [m] and absolute pressure at the inlet [Pa] of a pump that draws through a line.
 * Formula: p_inlet = p_s − ρ g (lift + h_L,s) − ρ V²/2; NPSHA as `npshAvailable`
 * Fails: out-of-range inputs as the method bounds them, or a surface below absolute zero; vapour-pressure-missing,
 * suction-lay-flat-collapses; as `lineLoss`.
 * Warns: as `vacuumRemarks`, `npshAvailable`, `lineLoss`, `suctionLineRemarks`, `liftRemarks` and `gasRemarks`.
 * Source: ISO 17769-1, net positive suction head available.
 */
export function suctionState(input: SuctionStateInput): Result<SuctionState> {
  return andThen(figuresIn(input), (state) => succeed(state, remarksOn(input, state)));
}

/** NPSH available alone [m], for a search over many flows. Fails as `suctionState`; warns as `npshAvailable` and `lineLoss`. */
export function npshAvailableIn(input: SuctionStateInput): Result<number> {
  return andThen(figuresIn(input), (state) => succeed(state.npshAvailable));
}

function figuresIn(input: SuctionStateInput): Result<SuctionState> {
  const { flow, suctionLift, suctionLine, atmosphericPressure, surfacePressure, liquid } = input;
  const checked = checkInputs(suctionStateMethod, { flow, suctionLift, atmosphericPressure, surfacePressure });
  if (!checked.ok) return checked;
  const { density, vapourPressure } = liquid;
  if (vapourPressure === undefined) return fail([vapourPressureMissing()]);
  const absoluteSurface = atmosphericPressure + surfacePressure;
  if (absoluteSurface < 0) {
    return fail([outOfRange("source pressure", "gaugePressure", surfacePressure, "at least", -atmosphericPressure)]);
  }

  return andThen(headLost(suctionLine, flow, liquid), (suctionLoss) =>
    andThen(
      npshAvailable({ surfacePressure: absoluteSurface, vapourPressure, density, suctionLift, suctionLoss }),
      (available) => {
        const last = suctionLine.at(-1);
        const inletVelocityHead = last === undefined ? 0 : velocityHead(flowIn(last, flow), last.pipe.bore);
        const inletPressure =
          absoluteSurface - density * STANDARD_GRAVITY * (suctionLift + suctionLoss + inletVelocityHead);
        if (inletPressure < atmosphericPressure) {
          const collapses = layFlatCollapse(suctionLine, atmosphericPressure - inletPressure);
          if (collapses !== undefined) return fail([collapses]);
        }
        return succeed({ npshAvailable: available, suctionLoss, inletPressure });
      },
    ),
  );
}

function remarksOn(input: SuctionStateInput, { npshAvailable: available, inletPressure }: SuctionState) {
  const { flow, suctionLift, suctionLine, atmosphericPressure, surfacePressure, liquid } = input;
  const { density, vapourPressure = 0 } = liquid;
  return [
    ...suctionLineRemarks(suctionLine, flow),
    ...vacuumRemarks(
      "suction line",
      suctionLine.map(({ pipe }) => ({ pipe, vacuum: atmosphericPressure - inletPressure })),
    ),
    ...liftRemarks("suction lift", suctionLift, atmosphericPressure + surfacePressure, density, vapourPressure),
    // A liquid that boils has more to be said of it than its air.
    ...(available > 0 ? gasRemarks(inletPressure) : []),
  ];
}

/** The refusal of a liquid that states no vapour pressure. */
export function vapourPressureMissing(): Finding {
  return { code: "vapour-pressure-missing", kind: "error", subject: "liquid" };
}

/** The refusal of lay-flat hose in a suction line under this vacuum, Pa. */
export function layFlatCollapse(line: Line, vacuum: number): Finding | undefined {
  const layFlat = layFlatIn(line);
  if (layFlat === undefined) return undefined;
  const found = amount("vacuum", vacuum);
  return {
    code: "suction-lay-flat-collapses",
    kind: "error",
    subject: "suction line",
    given: layFlat.pipe.name,
    found,
  };
}
