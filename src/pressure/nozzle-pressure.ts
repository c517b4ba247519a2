import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Input, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { FlangeSize } from "./flange-size.ts";

export type NozzleSide = "suction" | "discharge";

/** A part under the pressure of a pump's nozzles and what it may carry, Pa gauge: "casing", "suction hose". */
export interface PressurePart {
  readonly name: string;
  readonly workingPressure: number;
  /** Stands at this nozzle alone; at both where left out. */
  readonly side?: NozzleSide;
}

/** One pump of a series, in the order of flow. */
export interface SeriesPump {
  readonly name: string;
  /** Head added between its nozzles, m: greatest for a class check, at the flow for a real one. */
  readonly head: number;
  /** Of its nozzles above a datum common to all, m. */
  readonly elevation: number;
  /** Head lost from the pump before it, m. 0 against a shut valve. */
  readonly lineLoss: number;
  readonly parts?: readonly PressurePart[];
  /** Nominal sizes of its flanges, where stated. */
  readonly flanges?: Readonly<Partial<Record<NozzleSide, FlangeSize>>>;
}

/** The column left standing on the pumps when they stop with the valve shut. */
export interface StandingColumn {
  /** Top of the system above the datum, m. */
  readonly top: number;
  /** Gauge pressure there, Pa. */
  readonly pressure: number;
}

export interface NozzlePressuresInput {
  readonly pumps: readonly SeriesPump[];
  /** Greatest gauge pressure at the first suction nozzle, Pa. */
  readonly suctionPressure: number;
  /** kg/m³ */
  readonly density: number;
  readonly standing?: StandingColumn;
}

export interface NozzlePressure {
  readonly pump: string;
  readonly side: NozzleSide;
  /** Pump running, Pa gauge. */
  readonly running: number;
  /** Column standing, Pa gauge; missing where none was given. */
  readonly standing?: number;
  /** The greater of the two. */
  readonly greatest: number;
  /** What stands at this nozzle besides the flange. */
  readonly parts: readonly PressurePart[];
  /** Nominal size of the flange, where stated. */
  readonly size?: FlangeSize;
}

const INPUTS = {
  suctionPressure: {
    name: "suction pressure",
    symbol: "P_s",
    quantity: "gaugePressure",
    atLeast: -STANDARD_ATMOSPHERE,
  },
  density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
} as const;

export const nozzlePressuresMethod = {
  cites: [{ source: "ansi-hi-14.3", at: "pumps in series; discharge pressure against a closed valve" }],
  inputs: INPUTS,
} as const satisfies Method<keyof typeof INPUTS>;

export const seriesPumpMethod = {
  cites: nozzlePressuresMethod.cites,
  inputs: {
    // A pump without head is a figure left out: it would take from the pressure of all after it.
    head: { name: "greatest head", symbol: "H_max", quantity: "head", above: 0, atMost: 20_000 },
    elevation: { name: "nozzle elevation", symbol: "z", quantity: "elevation" },
    lineLoss: { name: "head lost before it", symbol: "h_L", quantity: "head", atLeast: 0 },
  },
} as const satisfies Method<"head" | "elevation" | "lineLoss">;

export const standingColumnMethod = {
  cites: nozzlePressuresMethod.cites,
  inputs: {
    top: { name: "standing level", symbol: "z_top", quantity: "elevation" },
    pressure: { name: "standing pressure", quantity: "gaugePressure", atLeast: -STANDARD_ATMOSPHERE },
  },
} as const satisfies Method<keyof StandingColumn>;

const PART_PRESSURE: Input = { name: "working pressure", quantity: "gaugePressure", above: 0 };

const VACUUM_RULE: Citation = {
  source: "house",
  at: "a suction below atmosphere is taken as atmosphere for the greatest pressure",
};

/**
 * Greatest pressure at every nozzle of pumps in series, in the order of flow, Pa gauge; surge is not in it.
 * Formula: P_d,i = P_s,i + ρ g H_i,  P_s,i+1 = P_d,i − ρ g (z_i+1 − z_i + h_L);  standing: ρ g (z_top − z_i) + P_top
 * Fails: inputs outside the bounds of the method, of its pumps or of the column.
 * Warns: caution where a suction below atmosphere is taken as atmosphere, lest a vacuum ease later stages.
 * Source: ANSI/HI 14.3, pumps in series.
 */
export function nozzlePressures(input: NozzlePressuresInput): Result<readonly NozzlePressure[]> {
  const { pumps, suctionPressure, density, standing } = input;
  const errors = [
    ...checkInputs(nozzlePressuresMethod, { suctionPressure, density }).findings,
    ...(standing === undefined ? [] : checkInputs(standingColumnMethod, standing).findings),
    ...pumps.flatMap(errorsOf),
  ];
  if (errors.length > 0) return fail(errors);
  const weight = density * STANDARD_GRAVITY;
  const findings: Finding[] = [];
  const nozzles: NozzlePressure[] = [];
  let arriving = suctionPressure;
  let previous: SeriesPump | undefined;
  for (const pump of pumps) {
    if (previous !== undefined) arriving -= weight * (pump.elevation - previous.elevation + pump.lineLoss);
    if (arriving < 0) {
      const found = amount("gaugePressure", arriving);
      const subject = `suction of ${pump.name}`;
      findings.push({ code: "suction-vacuum-as-zero", kind: "check", subject, found, cites: VACUUM_RULE });
      arriving = 0;
    }
    const still = standing && weight * (standing.top - pump.elevation) + standing.pressure;
    const leaving = arriving + weight * pump.head;
    nozzles.push(nozzle(pump, "suction", arriving, still), nozzle(pump, "discharge", leaving, still));
    arriving = leaving;
    previous = pump;
  }
  return succeed(nozzles, findings);
}

function errorsOf({ name, head, elevation, lineLoss, parts = [] }: SeriesPump): readonly Finding[] {
  const findings = [
    ...checkInputs(seriesPumpMethod, { head, elevation, lineLoss }).findings,
    ...parts.flatMap((part) => {
      const inputs = { part: { ...PART_PRESSURE, name: `${part.name}: ${PART_PRESSURE.name}` } };
      const { cites } = seriesPumpMethod;
      return checkInputs({ cites, inputs }, { part: part.workingPressure }).findings;
    }),
  ];
  return findings.map((finding) => ({ ...finding, subject: `${name}: ${finding.subject}` }));
}

function nozzle(pump: SeriesPump, side: NozzleSide, running: number, standing: number | undefined): NozzlePressure {
  const { name, parts = [], flanges } = pump;
  const size = flanges?.[side];
  return {
    pump: name,
    side,
    running,
    ...(standing === undefined ? {} : { standing }),
    greatest: standing === undefined ? running : Math.max(running, standing),
    parts: parts.filter((part) => part.side === undefined || part.side === side),
    ...(size === undefined ? {} : { size }),
  };
}
