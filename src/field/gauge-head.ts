import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, type Result, succeed } from "../basis/result.ts";
import { pressureHeadMethod } from "../head/pressure-head.ts";
import { meanVelocity, velocityHeadOf } from "../pipework/pipe-velocity.ts";
import { TAPE_UNCERTAINTY } from "../tables/field-instruments.ts";
import { rootSumSquare, type Uncertainty, uncertaintyOf, uncertaintyOfGauge } from "./uncertainty.ts";

/** A gauge on a side of the pump, or the open surface it draws from. Heights over one datum. */
export interface Tap {
  /** Gauge pressure, Pa; a vacuum below 0. */
  readonly pressure: number;
  /** Of the gauge, or of the surface, m. */
  readonly height: number;
  /** Of the tap, m, where the line to the gauge is full of air: the pressure is that at the tap then. */
  readonly airTapHeight: number | null;
  /** Of the pipe at the tap, m; null for an open surface, or where it is not known. */
  readonly bore: number | null;
  readonly instrument: Uncertainty | null;
}

export interface GaugeHeadInput {
  /** m³/s */
  readonly flow: number;
  readonly flowInstrument: Uncertainty | null;
  readonly suction: Tap;
  readonly discharge: Tap;
  /** Head lost between the taps and the flanges of the pump, m; with an open surface the loss of the suction line. */
  readonly lossToFlanges: number;
  /** Of the difference of heights, m. */
  readonly heightUncertainty: number | null;
  /** kg/m³ */
  readonly density: number;
}

export interface GaugeHead {
  /** m */
  readonly head: number;
  readonly pressurePart: number;
  readonly heightPart: number;
  readonly velocityPart: number;
  /** m/s */
  readonly suctionVelocity: number | null;
  readonly dischargeVelocity: number | null;
  /** Of the head at two standard deviations, m. */
  readonly uncertainty: number;
}

const TAP_HEIGHT = { quantity: "length", atLeast: -10_000, atMost: 10_000 } as const;
const { pressure: gauge } = pressureHeadMethod.inputs;
const BORE = { quantity: "size", above: 0, atMost: 20 } as const;

export const gaugeHeadMethod = {
  cites: [
    { source: "iso-9906", at: "total head from gauges at the inlet and the outlet section", unverified: true },
    { source: "jcgm-100", at: "5.1.2, combined standard uncertainty of independent quantities" },
    { source: "practice", at: "what usual instruments are good for, at two standard deviations" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    suctionReading: { ...gauge, name: "suction reading" },
    dischargeReading: { ...gauge, name: "discharge reading" },
    suctionHeight: { ...TAP_HEIGHT, name: "suction height" },
    dischargeHeight: { ...TAP_HEIGHT, name: "discharge height" },
    suctionTapHeight: { ...TAP_HEIGHT, name: "suction tap height" },
    dischargeTapHeight: { ...TAP_HEIGHT, name: "discharge tap height" },
    suctionSize: { ...BORE, name: "suction size" },
    dischargeSize: { ...BORE, name: "discharge size" },
    lossToFlanges: { name: "loss to flanges", quantity: "head", atLeast: 0, atMost: 1000 },
    heightTolerance: { name: "height tolerance", quantity: "length", atLeast: 0, atMost: 100 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
  },
} as const satisfies Method<string>;

/**
 * Total head of a pump from what its gauges read, m, with its uncertainty.
 * Formula: H = (p_d − p_s)/(ρ g) + (y_d − y_s) + (V_d² − V_s²)/2g + losses to the flanges;
 * u_H² = (u_p,d/ρ g)² + (u_p,s/ρ g)² + u_y² + (2 Δh_v u_Q/Q)²
 * Fails: out-of-range inputs.
 * Warns: velocity-head-left-out; suction-size-missing; as `uncertaintyOf` and `uncertaintyOfGauge`.
 * Source: ISO 9906 (from memory); JCGM 100, 5.1.2.
 */
export function gaugeHead(input: GaugeHeadInput): Result<GaugeHead> {
  const { flow, suction, discharge, lossToFlanges, heightUncertainty, density } = input;
  const checked = checkInputs(gaugeHeadMethod, {
    flow,
    suctionReading: suction.pressure,
    dischargeReading: discharge.pressure,
    suctionHeight: suction.height,
    dischargeHeight: discharge.height,
    suctionTapHeight: suction.airTapHeight ?? 0,
    dischargeTapHeight: discharge.airTapHeight ?? 0,
    suctionSize: suction.bore ?? 1,
    dischargeSize: discharge.bore ?? 1,
    lossToFlanges,
    heightTolerance: heightUncertainty ?? 0,
    density,
  });
  if (!checked.ok) return checked;
  const weight = density * STANDARD_GRAVITY;
  const velocityIn = ({ bore }: Tap): number | null => (bore === null ? null : meanVelocity(flow, bore));
  const [suctionVelocity, dischargeVelocity] = [velocityIn(suction), velocityIn(discharge)];
  // One velocity alone says nothing of the difference, but for an open surface, which has none.
  const velocityPart =
    dischargeVelocity === null ? 0 : velocityHeadOf(dischargeVelocity) - velocityHeadOf(suctionVelocity ?? 0);
  const pressurePart = (discharge.pressure - suction.pressure) / weight;
  const heightPart = effectiveHeight(discharge) - effectiveHeight(suction);
  const ofFlow = uncertaintyOf(flow, input.flowInstrument, "flow");
  const ofDischarge = uncertaintyOfGauge(discharge.pressure, discharge.instrument, "discharge gauge");
  const ofSuction = isOpenSurface(suction)
    ? succeed(0)
    : uncertaintyOfGauge(suction.pressure, suction.instrument, "suction gauge");
  if (!ofFlow.ok || !ofDischarge.ok || !ofSuction.ok) {
    return { ok: false, findings: [ofFlow, ofDischarge, ofSuction].flatMap(({ findings }) => findings) };
  }
  const uncertainty = rootSumSquare(
    ofDischarge.value / weight,
    ofSuction.value / weight,
    heightUncertainty ?? TAPE_UNCERTAINTY,
    flow === 0 ? 0 : (2 * velocityPart * ofFlow.value) / flow,
  );
  const head = pressurePart + heightPart + velocityPart + lossToFlanges;
  return succeed({ head, pressurePart, heightPart, velocityPart, suctionVelocity, dischargeVelocity, uncertainty }, [
    ...checked.findings,
    ...velocityRemarks(input, velocityPart),
    ...(velocityPart === 0 ? [] : ofFlow.findings),
    ...ofDischarge.findings,
    ...ofSuction.findings,
  ]);
}

/** A line full of liquid carries the pressure to the gauge; one full of air holds it at the tap. */
function effectiveHeight({ height, airTapHeight }: Tap): number {
  return airTapHeight ?? height;
}

/** Nothing read and no pipe named: the surface the pump draws from. */
function isOpenSurface({ pressure, bore, instrument }: Tap): boolean {
  return pressure === 0 && bore === null && instrument === null;
}

function velocityRemarks({ flow, suction, discharge }: GaugeHeadInput, velocityPart: number): readonly Finding[] {
  if (flow === 0) return [];
  if (discharge.bore === null) return [{ code: "velocity-head-left-out", kind: "check", subject: "discharge size" }];
  if (suction.bore !== null || isOpenSurface(suction)) return [];
  const found = amount("head", velocityPart);
  return [{ code: "suction-size-missing", kind: "check", subject: "suction size", found }];
}
