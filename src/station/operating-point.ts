import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { Arrangement, HeadCurve } from "../pump/head-curve.ts";
import { regionRemark } from "../pump/operating-region.ts";
import { bestPointOf } from "../pump/pump-reading.ts";
import type { RunningPump } from "../pump/running-pump.ts";
import { SPECIFIC_GRAVITY } from "../pump/shaft-power.ts";
import { headerPoint, ofPump } from "./header.ts";
import { netCurve } from "./net-curve.ts";
import { type PumpAtFlow, pumpAtFlow } from "./pump-at-flow.ts";
import { type PumpState, type StationPoint, seriesPoint, stationMethod, stationPoint } from "./station-point.ts";
import { NUMBER_OF_PUMPS, type StationPump, unfitCount } from "./station-pump.ts";

export interface StationOperationInput {
  readonly pumps: readonly StationPump[];
  /** Of the common rows: head over the common source level, m over the flow of all, m³/s. */
  readonly system: HeadCurve;
  readonly arrangement: Arrangement;
  /** Side by side, pumps that stand still without a check valve and let liquid back. */
  readonly leaking?: readonly StationPump[];
  /** Of the liquid pumped, relative to 998.2 kg/m³; water where left out, and said. */
  readonly specificGravity?: number;
}

/** What one kind of pump does, with the figures of each that pumps. */
export interface PumpOperation extends PumpState, PumpAtFlow {}

/** Where the running pumps and the system meet. What a curve does not give is null. */
export interface StationOperation {
  /** Of all pumps together, m³/s. */
  readonly flow: number;
  /** Head the system asks for, m. */
  readonly head: number;
  /** Of all pumps together: what the liquid takes up over what the shafts take, 0 to 1. */
  readonly efficiency: number | null;
  /** Of all pumps together, W. */
  readonly shaftPower: number | null;
  /** How many pumps pump. */
  readonly running: number;
  /** By kind, in the order given. */
  readonly pumps: readonly PumpOperation[];
}

export const operatingPointMethod = {
  cites: [...stationMethod.cites, { source: "ansi-hi-9.6.3", at: "preferred operating region" }],
  inputs: {
    pumps: NUMBER_OF_PUMPS,
    specificGravity: SPECIFIC_GRAVITY,
  },
} as const satisfies Method<"pumps" | "specificGravity">;

/**
 * Operating point of a station on a system, m³/s, m, W: pumps side by side or one behind the other, alike or not, each
 * crossed anew for its speed, for with static head the affinity laws alone do not give the new flow.
 * Fails: a number of alike pumps that is not whole, or of all not 1 to 100; as `stationPoint` and `seriesPoint`.
 * Warns: outside-preferred-region (without a specific speed as for n_s up to 87), one-pump-alone-outside-region or
 * -beyond-curve, small flow, best efficiency; power for water where no specific gravity is given; as the readings, whose
 * errors are remarks here; figures-of-several-pumps of one kind; as `stationPoint` and `seriesPoint`.
 * Formula: η = Σ ρ g Q H / Σ P
 * Source: White, Fluid Mechanics, ch. 11; ANSI/HI 9.6.3.
 */
export function stationOperation(input: StationOperationInput): Result<StationOperation> {
  const { pumps, system, arrangement, specificGravity = 1 } = input;
  const unfit = unfitCount(pumps);
  if (unfit !== undefined && pumps.length > 0) return fail([unfit]);
  const all = pumps.reduce((sum, { count }) => sum + count, 0);
  const checked = checkInputs(operatingPointMethod, { pumps: all, specificGravity });
  if (!checked.ok) return checked;
  const point = arrangement === "series" ? seriesPoint({ pumps, system }) : stationPoint(input);
  return andThen(point, (found) => {
    const { value, findings } = operationAt(input, found);
    const remarks = [...checked.findings, ...findings];
    if (all > 1) remarks.push(...severalAlike(input, value), ...oneAlone(input));
    return succeed(value, remarks);
  });
}

function operationAt(
  { pumps, specificGravity }: StationOperationInput,
  { flow, head, pumps: states }: StationPoint,
): { readonly value: StationOperation; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const operations = states.map((state, i): PumpOperation => {
    const of = pumps[i] as StationPump;
    if (state.running === 0 || state.flow < 0) return { ...state, ...NOTHING };
    const { pump, specificSpeed } = of;
    const read = pumpAtFlow({ pump, flow: state.flow, specificGravity, specificSpeed });
    findings.push(...read.findings.map((finding) => ofPump(finding, of)));
    return { ...state, ...read.figures };
  });
  const density = (specificGravity ?? 1) * SPECIFIC_GRAVITY_REFERENCE;
  const working = operations.filter(({ running, flow: each }) => running > 0 && each >= 0);
  const shaftPower = sumOf(working, (one) => one.shaftPower);
  const carried = working.reduce((sum, one) => sum + one.running * density * STANDARD_GRAVITY * one.flow * one.head, 0);
  const [first] = working;
  // Of one kind it is that of each, known at no flow too.
  const efficiency =
    working.length === 1 ? (first?.efficiency ?? null) : shaftPower === null ? null : carried / shaftPower;
  const running = working.reduce((sum, one) => sum + one.running, 0);
  return { value: { flow, head, efficiency, shaftPower, running, pumps: operations }, findings };
}

const NOTHING: PumpAtFlow = { efficiency: null, shaftPower: null, npshRequired: null, bestFlowRatio: null };

function sumOf(working: readonly PumpOperation[], of: (one: PumpOperation) => number | null): number | null {
  let sum = 0;
  for (const one of working) {
    const each = of(one);
    if (each === null) return null;
    sum += one.running * each;
  }
  return sum;
}

/** What each of several alike gives of the figures of all. */
function severalAlike(
  { pumps, arrangement }: StationOperationInput,
  { running, pumps: states }: StationOperation,
): readonly Finding[] {
  const [state] = states;
  if (pumps.length > 1 || state === undefined || running === 0) return [];
  const facts = {
    pumps: running,
    arrangement,
    flow: amount("flow", state.flow),
    head: amount("head", state.head),
    ...(state.shaftPower === null ? {} : { power: amount("power", state.shaftPower) }),
  };
  return [{ code: "figures-of-several-pumps", kind: "check", subject: "answer", facts }];
}

/** Pumps side by side start and stop one by one: what befalls the last one left running. */
function oneAlone({ pumps, system, arrangement }: StationOperationInput): readonly Finding[] {
  if (arrangement === "series") return [];
  const nets = pumps.map((of) => ({ of, net: netCurve(of) }));
  return pumps.flatMap((of, i): readonly Finding[] => {
    const { pump, specificSpeed } = of;
    const alone = headerPoint({ pumps: nets, open: pumps.map((_, other) => (other === i ? 1 : 0)), system });
    if (!alone.ok) {
      if (!alone.findings.some(({ code }) => code === "operating-point-beyond-curve")) return [];
      const limit = { quantity: "flow", value: pump.mostFlow, side: "at most" } as const;
      const cites = { source: "pump-handbook", at: "parallel operation" } as const;
      return [ofPump({ code: "one-pump-alone-beyond-curve", kind: "limit", subject: "pump", limit, cites }, of)];
    }
    const best = bestPointOf(pump);
    if (!best.ok) return [];
    const remark = regionRemark("one-pump-alone-outside-region", alone.value.total / best.value.flow, specificSpeed);
    return remark === undefined ? [] : [ofPump(remark, of)];
  });
}

export interface OperatingPointInput extends Omit<StationOperationInput, "pumps"> {
  readonly pump: RunningPump;
  /** How many equal pumps run; 1 or more. */
  readonly pumps: number;
  readonly specificSpeed?: number;
}

/** The operating point of equal pumps, none of the line their own: the figures of all, with those of each that pumps. */
export interface OperatingPoint extends PumpAtFlow {
  readonly flow: number;
  readonly head: number;
  /** Of each that pumps, m³/s. */
  readonly pumpFlow: number;
  readonly running: number;
}

/** As `stationOperation`, of one kind of pump. */
export function operatingPoint({ pump, pumps, specificSpeed, ...rest }: OperatingPointInput): Result<OperatingPoint> {
  const alike: StationPump = {
    name: "",
    pump,
    level: 0,
    hasCheckValve: true,
    count: pumps,
    ...(specificSpeed !== undefined && { specificSpeed }),
  };
  return andThen(
    stationOperation({ ...rest, pumps: [alike] }),
    ({ flow, head, shaftPower, running, pumps: [each] }) => {
      const { efficiency, npshRequired, bestFlowRatio, flow: pumpFlow } = each as PumpOperation;
      return succeed({ flow, head, pumpFlow, running, efficiency, shaftPower, npshRequired, bestFlowRatio });
    },
  );
}
