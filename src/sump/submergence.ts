import { isAtMost } from "../basis/at-most.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { brent } from "../numeric/brent.ts";
import { meanVelocity } from "../pipework/pipe-velocity.ts";
import {
  BELL_CLEARANCES,
  BELL_VELOCITIES,
  BELL_VELOCITY_WANTED,
  SUBMERGENCE_BY_VELOCITY,
} from "../tables/suction-inlet.ts";

export interface SubmergenceInput {
  /** Into this one bell or open end, m³/s. */
  readonly flow: number;
  /** Outside diameter of the bell or of the plain end, m. */
  readonly bellDiameter: number;
  /** Water over it at the lowest level, m; nothing is judged without it. */
  readonly submergence: number | null;
}

export interface Submergence {
  /** Water needed over the rim, m. */
  readonly needed: number;
  /** Over the mouth, m/s. */
  readonly velocity: number;
  readonly froude: number;
  /** Water there is over what is needed, m. */
  readonly margin: number | null;
  /** Nearest bell that would do with the water there is, m; null where none would, or none is needed. */
  readonly bellThatDoes: number | null;
  /** Greatest flow that this bell draws without a vortex from the water there is, m³/s. */
  readonly flowThatDoes: number | null;
}

/** Of S = D + c Q/D^1.5 in SI: the 0.574 that the standard prints for in and US gpm; 1/1069 for m and L/s is 4e-5 less. */
const COEFFICIENT = (0.574 * unitOf("in").factor ** 2.5) / unitOf("US gpm").factor;

export const submergenceMethod = {
  cites: [
    {
      source: "ansi-hi-9.8",
      at: "minimum submergence S = D (1 + 2.3 F_D), as reprinted in public texts",
      unverified: true,
    },
    { source: "mil-hdbk-1005-9a", at: "suction inlets: submergence by entrance velocity" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0, atMost: 1000 },
    bellDiameter: { name: "bell diameter", symbol: "D", quantity: "size", above: 0, atMost: 20 },
    submergence: { name: "submergence", symbol: "S", quantity: "length", atLeast: 0, atMost: 1000 },
  },
} as const satisfies Method<keyof SubmergenceInput>;

const [BELL_RULE, VELOCITY_RULE] = submergenceMethod.cites;

/**
 * Water a suction bell or open end needs over it so that no vortex draws air, m, held against what there is.
 * Formula: S = D + 0.574 Q/D^1.5 (in, US gpm), which is D (1 + 2.3 F_D) rounded
 * Fails: out-of-range inputs.
 * Warns: submergence-short (limit); submergence-not-judged; bell-velocity-outside; submergence-by-velocity, the older
 * rule; bell-clearances.
 * Source: ANSI/HI 9.8; MIL-HDBK-1005/9A.
 */
export function submergenceOf({ flow, bellDiameter, submergence }: SubmergenceInput): Result<Submergence> {
  const checked = checkInputs(submergenceMethod, { flow, bellDiameter, submergence: submergence ?? 0 });
  if (!checked.ok) return checked;
  const velocity = meanVelocity(flow, bellDiameter);
  const needed = neededOver(flow, bellDiameter);
  const isShort = submergence !== null && !isAtMost(needed, submergence);
  const answer = {
    needed,
    velocity,
    froude: velocity / Math.sqrt(STANDARD_GRAVITY * bellDiameter),
    margin: submergence === null ? null : submergence - needed,
    bellThatDoes: isShort ? nearestBell(flow, bellDiameter, submergence) : null,
    flowThatDoes: submergence === null ? null : flowFrom(bellDiameter, submergence),
  };
  return succeed(answer, [
    ...(submergence === null ? [NOT_JUDGED] : []),
    ...(isShort ? [short(answer, submergence)] : []),
    ...velocityRemarks(flow, velocity),
    clearances(bellDiameter),
  ]);
}

function neededOver(flow: number, bellDiameter: number): number {
  return bellDiameter + (COEFFICIENT * flow) / bellDiameter ** 1.5;
}

/** Needed water has its least value over the diameter where its slope, 1 − 1.5 c Q/D^2.5, is nothing. */
function nearestBell(flow: number, bellDiameter: number, submergence: number): number | null {
  const best = (1.5 * COEFFICIENT * flow) ** 0.4;
  const excess = (tried: number): number => neededOver(flow, tried) - submergence;
  if (excess(best) > 0) return null;
  return brent(excess, bellDiameter, best) ?? null;
}

function flowFrom(bellDiameter: number, submergence: number): number | null {
  return submergence > bellDiameter ? ((submergence - bellDiameter) * bellDiameter ** 1.5) / COEFFICIENT : null;
}

const NOT_JUDGED: Finding = { code: "submergence-not-judged", kind: "check", subject: "submergence" };

function short({ needed, margin, bellThatDoes, flowThatDoes }: Submergence, submergence: number): Finding {
  return {
    code: "submergence-short",
    kind: "limit",
    subject: "submergence",
    found: amount("length", submergence),
    limit: { quantity: "length", value: needed, side: "at least" },
    facts: {
      short: amount("size", -(margin as number)),
      ...(bellThatDoes !== null && { bell: amount("size", bellThatDoes) }),
      ...(flowThatDoes !== null && { flow: amount("flow", flowThatDoes) }),
    },
    cites: BELL_RULE,
  };
}

function velocityRemarks(flow: number, velocity: number): readonly Finding[] {
  if (flow === 0) return [];
  const findings: Finding[] = [];
  const subject = "velocity over the bell";
  const found = amount("velocity", velocity);
  const { least, most } = BELL_VELOCITIES.find(({ upTo }) => flow <= upTo) ?? BELL_VELOCITIES[0];
  if (velocity < least || velocity > most) {
    const facts = {
      least: amount("velocity", least),
      most: amount("velocity", most),
      wanted: amount("velocity", BELL_VELOCITY_WANTED),
    };
    findings.push({ code: "bell-velocity-outside", kind: "check", subject, found, facts, cites: BELL_RULE });
  }
  const older = submergenceByVelocity(velocity);
  const second = older.ok ? { needed: amount("length", older.value) } : {};
  findings.push({
    code: "submergence-by-velocity",
    kind: "check",
    subject,
    found,
    facts: second,
    cites: VELOCITY_RULE,
  });
  return findings;
}

const FOOT = unitOf("ft").factor;

/**
 * Submergence by the older rule [m], from the entrance velocity, m/s: along straight lines between its rows, the least
 * figure below the first.
 * Fails: out-of-range above 5 ft/s, where the rule ends.
 * Source: MIL-HDBK-1005/9A, suction inlets.
 */
export function submergenceByVelocity(velocity: number): Result<number> {
  const rows = SUBMERGENCE_BY_VELOCITY;
  const last = rows[rows.length - 1] as readonly [number, number];
  const asPrinted = velocity / FOOT;
  if (!isAtMost(asPrinted, last[0])) {
    return fail([outOfRange("entrance velocity", "velocity", velocity, "at most", last[0] * FOOT)]);
  }
  const upper = Math.max(
    1,
    rows.findIndex(([at]) => asPrinted <= at),
  );
  const [[from, less], [to, more]] = [rows[upper - 1] ?? rows[0], rows[upper] ?? last];
  const part = Math.max(0, (asPrinted - from) / (to - from));
  return succeed((less + (more - less) * part) * FOOT);
}

function clearances(bellDiameter: number): Finding {
  const size = (share: number) => amount("size", share * bellDiameter);
  const [low, high] = BELL_CLEARANCES.floor;
  const facts = {
    floorLeast: size(low),
    floorMost: size(high),
    backWall: size(BELL_CLEARANCES.backWall),
    width: size(BELL_CLEARANCES.width),
  };
  return { code: "bell-clearances", kind: "check", subject: "bell", facts, cites: BELL_RULE };
}
