import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headerPoint, ofPump } from "./header.ts";
import { reverseResistance } from "./idle-flow.ts";
import { netCurve } from "./net-curve.ts";
import { type StationOperation, type StationOperationInput, stationOperation } from "./operating-point.ts";
import type { StationPump } from "./station-pump.ts";

/** A station with some of its pumps stopped. */
export interface PumpStop {
  /** How many of each kind run and stand still, in the order given. */
  readonly running: readonly number[];
  readonly stopped: readonly number[];
  /**
   * The rest, the stopped ones shut off by their check valves, letting liquid back where they have none, or by-passed in
   * series; no point, and why.
   */
  readonly rest: Result<StationOperation>;
  /**
   * Were none of the stopped ones shut off by a check valve: flow back through all of them and what is left for the
   * system, m³/s; null in series, and where the rest or the flow back is not known.
   */
  readonly leak: { readonly back: number; readonly forward: number } | null;
}

/** Each pump of up to so many is looked at alone. */
const FEW = 4;

/**
 * What happens when pumps stop: each kind with one stopped, and each pump of up to four left alone; m³/s. A stopped pump
 * without a check valve passes liquid back by `reverseResistance`, a screen.
 * Fails: left-out, of one pump alone; a number of pumps as `stationOperation`. Findings are those of each rest.
 * Warns: reverse-flow-unknown of a pump without a check valve, back-flow-left-blank of one with, where its best
 * efficiency point is not known.
 * Source: as `stationOperation`.
 */
export function pumpStops(input: StationOperationInput): Result<readonly PumpStop[]> {
  const { pumps } = input;
  const counts = pumps.map(({ count }) => count);
  const all = counts.reduce((sum, count) => sum + count, 0);
  if (counts.every(Number.isInteger) && all === 1) {
    return fail([{ code: "left-out", kind: "error", subject: "pumps", suggestions: ["two pumps or more"] }]);
  }
  return andThen(checkedAtLeast(input), () => {
    const unknown =
      input.arrangement === "series" ? [] : pumps.filter(({ pump }) => reverseResistance(pump) === undefined);
    return succeed(
      leftRunning(counts).map((running) => stopAt(input, running)),
      unknown.map((of) => backUnknown(of, "check")),
    );
  });
}

/** How many of each kind are left running, of so many, in the order of `pumpStops`. */
export function leftRunning(counts: readonly number[]): readonly (readonly number[])[] {
  const all = counts.reduce((sum, count) => sum + count, 0);
  const withOneStopped = counts.map((_, i) => counts.map((count, other) => (other === i ? count - 1 : count)));
  const alone = all > FEW ? [] : counts.map((_, i) => counts.map((_, other) => (other === i ? 1 : 0)));
  const some = [...withOneStopped, ...alone].filter((running) => running.some((count) => count > 0));
  return [...new Map(some.map((running) => [running.join(" "), running])).values()];
}

/** The number of pumps and the liquid alone; what the pumps do together is not asked here. */
function checkedAtLeast(input: StationOperationInput): Result<null> {
  const found = stationOperation(input);
  const isBad = ({ code, subject }: Finding): boolean =>
    code === "not-a-whole-number" || code === "left-out" || (code === "out-of-range" && subject !== "flow");
  return !found.ok && found.findings.some(isBad) ? fail(found.findings) : succeed(null);
}

function stopAt(input: StationOperationInput, running: readonly number[]): PumpStop {
  const { pumps, system, arrangement } = input;
  const stopped = pumps.map(({ count }, i) => count - (running[i] as number));
  const left = pumps.flatMap((pump, i): readonly StationPump[] => {
    const count = running[i] as number;
    return count === 0 ? [] : [{ ...pump, count }];
  });
  const rest = restOf(input, left, stopped);
  const isKnown = pumps.every(({ pump }, i) => stopped[i] === 0 || reverseResistance(pump) !== undefined);
  if (arrangement === "series" || !isKnown) return { running, stopped, rest, leak: null };
  const nets = pumps.map((of) => ({ of, net: netCurve(of) }));
  const leaking = headerPoint({ pumps: nets, open: running, leaking: stopped, system });
  if (!leaking.ok || !leaking.value.isSteady) return { running, stopped, rest, leak: null };
  const { back, total } = leaking.value;
  const lost = back.reduce((sum, flow, i) => sum + flow * (stopped[i] as number), 0);
  return { running, stopped, rest, leak: { back: lost, forward: total } };
}

/** What happens as the pumps stand: back through each that stops without a check valve. */
function restOf(
  input: StationOperationInput,
  left: readonly StationPump[],
  stopped: readonly number[],
): Result<StationOperation> {
  if (input.arrangement === "series") return stationOperation({ ...input, pumps: left });
  const leaking = input.pumps.flatMap((of, i): readonly StationPump[] => {
    const count = stopped[i] as number;
    return count === 0 || of.hasCheckValve ? [] : [{ ...of, count }];
  });
  const unknown = leaking.filter(({ pump }) => reverseResistance(pump) === undefined);
  if (unknown.length > 0) return fail(unknown.map((of) => backUnknown(of, "error")));
  return stationOperation({ ...input, pumps: left, leaking });
}

function backUnknown(of: StationPump, kind: "check" | "error"): Finding {
  const code = of.hasCheckValve ? "back-flow-left-blank" : "reverse-flow-unknown";
  return ofPump({ code, kind, subject: "pump" }, of);
}
