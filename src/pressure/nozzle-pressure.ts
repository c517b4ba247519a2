import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Input, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { PressureMaterial } from "../tables/pressure-materials.ts";
import type { FlangeClass } from "./flange-class.ts";
import type { FlangeSize } from "./flange-size.ts";

export type NozzleSide = "suction" | "discharge";

/** A part under the pressure of a pump's nozzles and what it may carry, Pa gauge: "casing", "suction hose". */
export interface PressurePart {
  readonly name: string;
  readonly workingPressure: number;
  /** Stands at this nozzle alone; at both where left out. */
  readonly side?: NozzleSide;
  /** Stands between two pumps that follow each other, the first of them counted from 1; "all": between any two. */
  readonly between?: number | "all";
  /** Taken out or shut off before the package is tested: a hose, a coupling. */
  readonly isIsolatedForTest?: true;
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
  /** Its own, where they differ from those of the set. */
  readonly material?: PressureMaterial;
  readonly flangeClass?: FlangeClass;
  /** A check valve in the line right after it. */
  readonly hasCheckValve?: boolean;
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
  /** Check valves are trusted: that they fail is no case. Where there are none, the column stands on the pumps anyway. */
  readonly strikesCheckFailure?: boolean;
}

/** What a nozzle's greatest pressure comes of: pumps against a shut valve, pumps stopped, or stopped with failed checks. */
export type PressureCase = "closed valve" | "pumps stopped" | "check valve failed";

export interface NozzlePressure {
  readonly pump: string;
  readonly side: NozzleSide;
  /** Pump running, Pa gauge. */
  readonly running: number;
  /** Pumps stopped and check valves tight, Pa gauge; missing where no column was given. */
  readonly standing?: number;
  /** Pumps stopped and the column on every nozzle, Pa gauge; as standing where that case does not count. */
  readonly checkFailed?: number;
  /** The greatest of those that count, and which it is. */
  readonly greatest: number;
  readonly governs: PressureCase;
  /** What stands at this nozzle besides the flange. */
  readonly parts: readonly PressurePart[];
  /** Nominal size of the flange, where stated. */
  readonly size?: FlangeSize;
  readonly material?: PressureMaterial;
  readonly flangeClass?: FlangeClass;
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
    head: { name: "maximum head", symbol: "H_max", quantity: "head", above: 0, atMost: 20_000 },
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
  at: "a suction below atmosphere is taken as atmosphere for the maximum pressure",
};

/**
 * Greatest pressure at every nozzle of pumps in series, in the order of flow, Pa gauge; surge is not in it. A check valve
 * holds the column off every pump before it, which then stand under the source alone.
 * Formula: P_d,i = P_s,i + ρ g H_i,  P_s,i+1 = P_d,i − ρ g (z_i+1 − z_i + h_L);  standing: ρ g (z_top − z_i) + P_top
 * Fails: inputs outside the bounds of the method, of its pumps or of the column.
 * Warns: suction below atmosphere, a column that ends below a nozzle (both taken as 0, lest a vacuum ease later stages);
 * a part between pumps that the set has not.
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
  const lastCheck = pumps.findLastIndex(({ hasCheckValve }) => hasCheckValve === true);
  const findings: Finding[] = partsOutOfPlace(pumps);
  const nozzles: NozzlePressure[] = [];
  let arriving = suctionPressure;
  let previous: SeriesPump | undefined;
  for (const [i, pump] of pumps.entries()) {
    if (previous !== undefined) arriving -= weight * (pump.elevation - previous.elevation + pump.lineLoss);
    if (arriving < 0) {
      const found = amount("vacuum", -arriving);
      const subject = `suction of ${pump.name}`;
      findings.push({ code: "suction-vacuum-as-zero", kind: "check", subject, found, cites: VACUUM_RULE });
      arriving = 0;
    }
    const leaving = arriving + weight * pump.head;
    const stopped = standing && stoppedPressures(input, standing, i <= lastCheck, pump);
    if (standing !== undefined && columnOn(pump, standing, weight) < 0) {
      findings.push({ code: "column-ends-below", kind: "check", subject: pump.name, cites: VACUUM_RULE });
    }
    const parts = partsAt(pumps, i);
    nozzles.push(nozzle(pump, "suction", arriving, stopped, parts), nozzle(pump, "discharge", leaving, stopped, parts));
    arriving = leaving;
    previous = pump;
  }
  return succeed(nozzles, findings);
}

function columnOn({ elevation }: SeriesPump, { top, pressure }: StandingColumn, weight: number): number {
  return weight * (top - elevation) + pressure;
}

/** Pressures on a pump that stands still. */
interface Stopped {
  readonly standing: number;
  readonly checkFailed: number;
}

function stoppedPressures(
  { pumps: [first], suctionPressure, density, strikesCheckFailure }: NozzlePressuresInput,
  column: StandingColumn,
  isHeldOff: boolean,
  pump: SeriesPump,
): Stopped {
  const weight = density * STANDARD_GRAVITY;
  const climb = pump.elevation - (first as SeriesPump).elevation;
  const source = Math.max(0, Math.max(0, suctionPressure) - weight * climb);
  const under = Math.max(0, columnOn(pump, column, weight));
  const standing = isHeldOff ? source : under;
  // A column that ends below the source adds nothing to it.
  return { standing, checkFailed: strikesCheckFailure ? standing : Math.max(standing, under) };
}

/** The parts at the nozzles of a pump: its own, and those between it and a neighbour, wherever they were named. */
function partsAt(pumps: readonly SeriesPump[], at: number): readonly PressurePart[] {
  const own = pumps[at]?.parts ?? [];
  const between = pumps.flatMap(({ parts = [] }) => parts.filter((part) => hasPlaceBetween(part, pumps.length)));
  return [
    ...own.filter((part) => !hasPlaceBetween(part, pumps.length)),
    ...withoutTwins(between).flatMap((part): readonly PressurePart[] => {
      const after = part.between === "all" ? at + 1 < pumps.length : part.between === at + 1;
      const before = part.between === "all" ? at > 0 : part.between === at;
      const { name, workingPressure, isIsolatedForTest } = part;
      const bare = { name, workingPressure, ...(isIsolatedForTest && { isIsolatedForTest }) };
      return [
        ...(before ? [{ ...bare, side: "suction" } as const] : []),
        ...(after ? [{ ...bare, side: "discharge" } as const] : []),
      ];
    }),
  ];
}

/** A part stated beside each pump of a set is one part still. */
function withoutTwins(parts: readonly PressurePart[]): readonly PressurePart[] {
  return parts.filter(
    ({ name, workingPressure }, i) =>
      parts.findIndex((one) => one.name === name && one.workingPressure === workingPressure) === i,
  );
}

function hasPlaceBetween({ between }: PressurePart, pumps: number): boolean {
  return between === "all" ? pumps > 1 : between !== undefined && between >= 1 && between < pumps;
}

/** Parts between pumps that the set has not: they are held against every pressure of the pump they stand beside. */
function partsOutOfPlace(pumps: readonly SeriesPump[]): Finding[] {
  const parts = pumps.flatMap(({ parts: own = [] }) => own);
  const lost = parts.filter((part) => part.between !== undefined && !hasPlaceBetween(part, pumps.length));
  return withoutTwins(lost).map(({ name }) => ({
    code: "part-out-of-place",
    kind: "check",
    subject: name,
    facts: { pumps: pumps.length },
  }));
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

function nozzle(
  pump: SeriesPump,
  side: NozzleSide,
  running: number,
  stopped: Stopped | undefined,
  parts: readonly PressurePart[],
): NozzlePressure {
  const { name, flanges, material, flangeClass } = pump;
  const size = flanges?.[side];
  const cases: readonly (readonly [PressureCase, number])[] = [
    ["closed valve", running],
    ...(stopped === undefined
      ? []
      : ([
          ["pumps stopped", stopped.standing],
          ["check valve failed", stopped.checkFailed],
        ] as const)),
  ];
  const [governs, greatest] = cases.reduce((worst, one) => (one[1] > worst[1] ? one : worst));
  return {
    pump: name,
    side,
    running,
    ...stopped,
    greatest,
    governs,
    parts: parts.filter((part) => part.side === undefined || part.side === side),
    ...(size === undefined ? {} : { size }),
    ...(material === undefined ? {} : { material }),
    ...(flangeClass === undefined ? {} : { flangeClass }),
  };
}
