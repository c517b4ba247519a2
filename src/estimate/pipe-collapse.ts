import { STANDARD_ATMOSPHERE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { betweenRows } from "../numeric/between-rows.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { degrees } from "../pressure/pipe-temperature.ts";
import { MILL_TOLERANCE } from "../pressure/steel-pipe-pressure.ts";
import {
  POLYETHYLENE_MODULUS,
  POLYETHYLENE_MODULUS_TEMPERATURE,
  POLYETHYLENE_POISSON,
} from "../tables/polyethylene-modulus.ts";

const PSI = unitOf("psi").factor;
const HOUR = 3600;
/** The longest duration of the table, s. */
export const FIFTY_YEARS = 438_000 * HOUR;

/** Out of round where nothing is stated, a share; house choice. */
const USUAL_OVALITY = 0.03;

/** Modulus, Pa, and Poisson's ratio of walls that do not creep; of PVC the short-term modulus. From memory of handbooks. */
const STIFF = {
  steel: { modulus: 30e6 * PSI, poisson: 0.3 },
  "stainless steel": { modulus: 28e6 * PSI, poisson: 0.3 },
  "ductile iron": { modulus: 24e6 * PSI, poisson: 0.28 },
  aluminium: { modulus: 10e6 * PSI, poisson: 0.33 },
  PVC: { modulus: 400_000 * PSI, poisson: 0.38 },
} as const;

/** Factor against the vacuum of a suction line, or one that lasts. */
export const VACUUM_FACTOR = 2;

export interface PipeCollapseInput {
  readonly pipe: Pipe;
  /** How long the vacuum lasts without a rest, s; 50 years where left out. */
  readonly duration: number | null;
  /** Of the wall, K. */
  readonly temperature: number;
  /** Greatest less least diameter over their sum, a share; 3 % where left out. */
  readonly outOfRound: number | null;
}

export interface PipeCollapse {
  /** Outside diameter over the wall that is counted. */
  readonly dimensionRatio: number;
  /** Outside less inside pressure at which the pipe buckles within the duration, Pa; of a grade not stated the lower. */
  readonly pressure: number;
  /** The same of the stronger grade it may be and, where no duration is stated, for half an hour. */
  readonly atBest: number;
  /** The same after 50 years. */
  readonly longTerm: number;
  /** Pressure over a full vacuum at sea level. */
  readonly factor: number;
  readonly holds: boolean;
  /** What was taken because it is not stated; empty where nothing was. */
  readonly assumed: string;
}

export const pipeCollapseMethod = {
  cites: [
    {
      source: "ppi-handbook",
      at: "ch. 3, tables B.1.1 and B.1.2, apparent modulus; unsupported pipe under external pressure",
    },
    { source: "astm-f1216", at: "X1, reduction for ovality" },
    { source: "practice", at: "a factor of 2 against the vacuum of a suction line, or one that lasts" },
  ],
  inputs: {
    duration: { name: "duration", quantity: "hours", above: 0, atMost: FIFTY_YEARS },
    temperature: { name: "temperature", quantity: "temperature", above: 0 },
    outOfRound: { name: "out of round", quantity: "percent", atLeast: 0, atMost: 0.1, usual: { atMost: 0.06 } },
  },
} as const satisfies Method<"duration" | "temperature" | "outOfRound">;

/**
 * Pressure difference at which an unsupported pipe buckles under a vacuum that lasts, Pa, and whether it stands a full
 * vacuum twice over. Of polyethylene the modulus falls with time and warmth; what is not stated is taken careful.
 * Formula: P_cr = 2 E/(1 − μ²) × (1/(DR − 1))³ × ((1 − q)/(1 + q)²)³
 * Fails: collapse-not-held for hose and pipe of unknown wall; collapse-too-warm above 140 °F; inputs outside the bounds.
 * Warns: collapse-rests-on (check); collapse-assumed (assumed); outside-usual-range, above 6 % out of round.
 * Source: Handbook of Polyethylene Pipe, ch. 3; ASTM F1216, X1; the factor of 2 by common practice.
 */
export function pipeCollapse({ pipe, duration, temperature, outOfRound }: PipeCollapseInput): Result<PipeCollapse> {
  const ovality = outOfRound ?? USUAL_OVALITY;
  const checked = checkInputs(pipeCollapseMethod, {
    duration: duration ?? FIFTY_YEARS,
    temperature,
    outOfRound: ovality,
  });
  return andThen(checked, () =>
    andThen(wallsOf(pipe, temperature), ({ dimensionRatio, poisson, modulusFor, assumed }) => {
      const shape = ((1 - ovality) / (1 + ovality) ** 2) ** 3 / (dimensionRatio - 1) ** 3;
      const buckling = (time: number, grade: Grade): number =>
        ((2 * modulusFor(time, grade)) / (1 - poisson ** 2)) * shape;
      const pressure = buckling(duration ?? FIFTY_YEARS, "weaker");
      const factor = pressure / STANDARD_ATMOSPHERE;
      const creeps = pipe.make?.material === "HDPE";
      const taken = [...(assumed === "" ? [] : [assumed]), ...(duration === null && creeps ? ["50 years"] : [])].join(
        ", ",
      );
      const found: PipeCollapse = {
        dimensionRatio,
        pressure,
        atBest: buckling(duration ?? 0, "stronger"),
        longTerm: buckling(FIFTY_YEARS, "weaker"),
        factor,
        holds: factor >= VACUUM_FACTOR,
        assumed: taken,
      };
      const modulus = modulusFor(duration ?? FIFTY_YEARS, "weaker");
      return succeed(found, [restsOn(pipe, modulus), ...(taken === "" ? [] : [assumedOf(pipe, taken)])]);
    }),
  );
}

type Grade = "weaker" | "stronger";

interface Walls {
  readonly dimensionRatio: number;
  readonly poisson: number;
  /** Pa, for a load that lasts so many s. */
  readonly modulusFor: (duration: number, grade: Grade) => number;
  readonly assumed: string;
}

function wallsOf(pipe: Pipe, temperature: number): Result<Walls> {
  const { make, outsideDiameter, wall } = pipe;
  if (make === undefined || outsideDiameter === undefined || wall === undefined) return fail([notHeld(pipe)]);
  const { material } = make;
  const dimensionRatio =
    make.dimensionRatio ?? outsideDiameter / (make.leastWall ?? wall * (isMetal(pipe) ? 1 - MILL_TOLERANCE : 1));
  if (material === "HDPE") {
    const wallTemperature = degrees(temperature, "°F");
    const [last] = POLYETHYLENE_MODULUS_TEMPERATURE.at(-1) as readonly [number, number];
    if (wallTemperature > last) return fail([tooWarm(temperature)]);
    const factor = betweenRows(POLYETHYLENE_MODULUS_TEMPERATURE, wallTemperature);
    const isStated = make.grade !== undefined;
    const isWeaker = make.grade === "PE3608" || make.grade === "PE3408" || make.grade === "PE80";
    return succeed({
      dimensionRatio,
      poisson: POLYETHYLENE_POISSON,
      modulusFor: (duration, grade) => {
        const isThird = isStated ? isWeaker : grade === "weaker";
        return apparentModulus(duration / HOUR, isThird) * factor * PSI;
      },
      assumed: isStated ? "" : make.rule === "ISO 4427" ? "grade PE80" : "grade PE3608",
    });
  }
  if (!(material in STIFF)) return fail([notHeld(pipe)]);
  const { modulus, poisson } = STIFF[material as keyof typeof STIFF];
  return succeed({ dimensionRatio, poisson, modulusFor: () => modulus, assumed: "" });
}

/** Whether the wall is a nominal one of metal, from which the mill tolerance goes off. */
function isMetal({ family, make }: Pipe): boolean {
  return family !== "measured" && make?.material !== "PVC";
}

/** psi at 73 °F, log against log between the rows. */
function apparentModulus(hours: number, isPe3: boolean): number {
  const rows = POLYETHYLENE_MODULUS.map(([at, pe3, pe4]) => [Math.log(at), Math.log(isPe3 ? pe3 : pe4)] as const);
  return Math.exp(betweenRows(rows, Math.log(hours)));
}

function notHeld({ name }: Pipe): Finding {
  return { code: "collapse-not-held", kind: "error", subject: "pipe", given: name };
}

function tooWarm(temperature: number): Finding {
  const limit = { quantity: "temperature", value: 333.15, side: "at most" } as const;
  return {
    code: "collapse-too-warm",
    kind: "error",
    subject: "pipe",
    found: amount("temperature", temperature),
    limit,
  };
}

function restsOn({ make }: Pipe, modulus: number): Finding {
  const creeps = make?.material === "HDPE" || make?.material === "PVC";
  const [cites] = pipeCollapseMethod.cites;
  const found = amount("stress", modulus);
  return {
    code: creeps ? "collapse-rests-on" : "collapse-of-round-pipe",
    kind: "check",
    subject: "collapse pressure",
    found,
    cites,
  };
}

function assumedOf({ name }: Pipe, assumed: string): Finding {
  return { code: "collapse-assumed", kind: "assumed", subject: "collapse pressure", given: name, facts: { assumed } };
}
