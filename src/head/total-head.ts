import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Line } from "../pipework/line.ts";
import { headLost } from "./head-lost.ts";
import { dischargeLineRemarks, LAY_FLAT_PRACTICE, layFlatIn, suctionLineRemarks } from "./line-remarks.ts";

/** A pipe system between two liquid surfaces, or a surface and a jet. */
export interface PumpingSystem {
  /** Level at the destination less level at the source, m. Negative downhill. */
  readonly staticHead: number;
  readonly suctionLine: Line;
  readonly dischargeLine: Line;
  readonly liquid: LiquidState;
}

export interface TotalHeadInput extends PumpingSystem {
  /** m³/s */
  readonly flow: number;
  /** Gauge pressure over the source and over the destination, Pa. 0 where open to the air. */
  readonly sourcePressure: number;
  readonly deliveryPressure: number;
}

/** Total head and what it is made of, m of the pumped liquid. */
export interface TotalHead {
  readonly total: number;
  readonly staticHead: number;
  readonly pressureHead: number;
  readonly suctionLoss: number;
  readonly dischargeLoss: number;
}

export const totalHeadMethod = {
  cites: [
    { source: "iso-17769-1", at: "pump total head" },
    { source: "white-fluid-mechanics", at: "steady-flow energy equation" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    staticHead: { name: "static head", symbol: "z_d − z_s", quantity: "head" },
    // More vacuum than the standard atmosphere is no pressure at all.
    sourcePressure: {
      name: "source pressure",
      symbol: "p_s",
      quantity: "gaugePressure",
      atLeast: -STANDARD_ATMOSPHERE,
    },
    deliveryPressure: {
      name: "delivery pressure",
      symbol: "p_d",
      quantity: "gaugePressure",
      atLeast: -STANDARD_ATMOSPHERE,
    },
  },
} as const satisfies Method<"flow" | "staticHead" | "sourcePressure" | "deliveryPressure">;

/**
 * Total head a pump must add [m of the liquid]. The ends are at rest (a free surface), or at the jet, the exit among
 * the fittings of the discharge line: the velocity head at the outlet is lost once, free or submerged alike.
 * Formula: H = (z_d − z_s) + (p_d − p_s)/(ρ g) + h_suction + h_discharge
 * Fails: out-of-range inputs as the method bounds them; as `headAt`.
 * Warns: as `headAt`.
 * Source: ISO 17769-1, pump total head; White, steady-flow energy equation.
 */
export function totalHead(input: TotalHeadInput): Result<TotalHead> {
  const { flow, staticHead, sourcePressure, deliveryPressure } = input;
  return andThen(checkInputs(totalHeadMethod, { flow, staticHead, sourcePressure, deliveryPressure }), () =>
    headAt(input, flow, deliveryPressure - sourcePressure),
  );
}

/**
 * Total head of a system at one flow [m], for inputs the caller has checked.
 * Fails: as `lineLoss`.
 * Warns: lay-flat-in-suction (a warning); total-head-not-positive, head-leans-on-fall; as `lineLoss`, `suctionLineRemarks` and
 * `dischargeLineRemarks`.
 */
export function headAt(system: PumpingSystem, flow: number, pressureDifference: number): Result<TotalHead> {
  const { staticHead, suctionLine, dischargeLine, liquid } = system;
  return andThen(headLost(suctionLine, flow, liquid), (suctionLoss) =>
    andThen(headLost(dischargeLine, flow, liquid), (dischargeLoss) => {
      const pressureHead = pressureDifference / (liquid.density * STANDARD_GRAVITY);
      const total = staticHead + pressureHead + suctionLoss + dischargeLoss;
      return succeed(
        { total, staticHead, pressureHead, suctionLoss, dischargeLoss },
        remarks(suctionLine, dischargeLine, flow, total, staticHead + pressureHead),
      );
    }),
  );
}

function remarks(
  suctionLine: Line,
  dischargeLine: Line,
  flow: number,
  total: number,
  still: number,
): readonly Finding[] {
  const findings: Finding[] = [...suctionLineRemarks(suctionLine, flow), ...dischargeLineRemarks(dischargeLine, flow)];
  const layFlat = layFlatIn(suctionLine);
  if (layFlat !== undefined) {
    findings.push({
      code: "lay-flat-in-suction",
      kind: "limit",
      subject: "suction line",
      given: layFlat.pipe.name,
      cites: LAY_FLAT_PRACTICE,
    });
  }
  if (flow > 0 && total <= 0) {
    const found = amount("head", total);
    findings.push({ code: "total-head-not-positive", kind: "check", subject: "total head", found });
  } else if (flow > 0 && still < 0) {
    findings.push({ code: "head-leans-on-fall", kind: "check", subject: "static head", found: amount("head", still) });
  }
  return findings;
}
