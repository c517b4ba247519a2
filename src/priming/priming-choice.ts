import { isAtMost } from "../basis/at-most.ts";
import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import type { PrimingFindings } from "../basis/finding-code.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Draft, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Line } from "../pipework/line.ts";
import { HOT_VAPOUR_PRESSURE } from "../suction/suction-practice.ts";
import { layFlatCollapse, vapourPressureMissing } from "../suction/suction-state.ts";
import { AIR_EDUCTOR, DIAPHRAGM_AIR_PUMP } from "../tables/suction-air-pumps.ts";
import { type AirPump, BETTER_BLANK_OFF, blankOffVacuum, DEFAULT_BLANK_OFF, USUAL_AIR_PUMP } from "./air-pump.ts";
import type { StatedAirPump } from "./described-air-pump.ts";
import { type EductorAirInput, eductorAir } from "./eductor-air.ts";
import { primeTime } from "./prime-time.ts";
import { type LiftRule, primingLift } from "./priming-lift.ts";
import type { PrimingSolids } from "./priming-solids.ts";
import { checkPumps } from "./pumps-on-line.ts";
import { verticalFirst } from "./vertical-first.ts";

export interface PrimingChoiceInput {
  /** Height of the pump datum over the liquid surface, m. Negative where the pump is flooded. */
  readonly suctionLift: number;
  readonly suctionLine: Line;
  readonly solids: PrimingSolids;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
  readonly liquid: LiquidState;
  /** Null where the usual one is taken. */
  readonly airPump: StatedAirPump | null;
  /** Air in casing and priming chamber, m³; null where not stated. */
  readonly casingVolume: number | null;
  /** Greatest lift of all rules, NPSH among them, m; null where NPSH was not judged. */
  readonly greatestLift: number | null;
  /** How many pumps the suction line serves, each with its part of runs side by side; null where not stated. */
  readonly pumps: number | null;
}

export const PRIMING_METHODS = [
  "vacuum-assisted dry prime",
  "self-priming casing",
  "compressed-air eductor",
  "foot valve and filled line",
  "flooded suction or submerged pump",
] as const;
export type PrimingMethod = (typeof PRIMING_METHODS)[number];

/** Best first. */
export const PRIMING_VERDICTS = ["suits", "suits with care", "not needed", "not suited"] as const;
export type PrimingVerdict = (typeof PRIMING_VERDICTS)[number];

/** One way to prime, judged for a suction. The findings are remarks on the row, in the order they matter. */
export interface PrimingOption {
  readonly method: PrimingMethod;
  readonly verdict: PrimingVerdict;
  /** With the usual air pump, line alone, s; null where the method is not timed by it. */
  readonly time: number | null;
  readonly reasons: readonly Finding[];
  readonly needs: readonly Finding[];
  readonly cautions: readonly Finding[];
}

export const primingChoiceMethod = {
  cites: [
    { source: "practice", at: "choice of priming by lift, length of line, solids and temperature" },
    DIAPHRAGM_AIR_PUMP.cites,
    AIR_EDUCTOR.cites,
  ],
  inputs: {
    suctionLift: { name: "suction lift", quantity: "head" },
    atmosphericPressure: { name: "atmospheric pressure", quantity: "absolutePressure", above: 0 },
    massFraction: { name: "solids", quantity: "percent", atLeast: 0, below: 0.7 },
  },
} as const satisfies Method<"suctionLift" | "atmosphericPressure" | "massFraction">;

/** Longest suction line that a liquid-filled casing primes readily, m. */
const SHORT_LINE = 6;
/** Longest time to prime that is put up with on bypass duty, and on dewatering, s. */
const LONGEST_BYPASS = 300;
const LONGEST_DEWATERING = 600;

/** Solids by weight from which a line that stands does not prime again. */
const SETTLING_SOLIDS = 0.2;
/** Nearer to the limit than this share of it, or this height [m], a lift is a doubtful one (house choice). */
const NEAR = { share: 0.05, height: 0.3 };

const PRACTICE: Citation = primingChoiceMethod.cites[0];

/** A remark of a row: an observation resting on practice. */
function remark(draft: Draft<keyof PrimingFindings>): Finding {
  return { subject: "priming", cites: PRACTICE, ...draft, kind: "check" };
}

/** What every method is judged by. */
interface Situation {
  readonly lift: number;
  readonly length: number;
  readonly isClean: boolean;
  readonly isStringy: boolean;
  /** The least of the lifts, and what rules it. */
  readonly greatest: number;
  readonly rule: string;
  readonly airPump: AirPump;
  readonly isSettling: boolean;
  /** Why no method that lifts is offered; nothing where one may be. */
  readonly refusal: Finding | undefined;
  /** With the air pump; nothing where the lift is refused. */
  readonly time: number | undefined;
}

/**
 * Every way to prime with a verdict, best first. Flooded: none is needed. Hotter than water at 60 °C, or a lift above the
 * least of those by air pump, practice and NPSH: no lift. Else solids or 6 m of line ask for a vacuum-assisted dry prime
 * (with care where it takes over 5 minutes), a short clean line for a self-priming casing; near the least lift, and with
 * 20 % of solids by weight and more, none suits freely.
 * Fails: out-of-range; vapour-pressure-missing; suction-lay-flat-collapses; as `verticalFirst`, `primingLift`.
 * Warns: caution priming-npsh-not-judged.
 * Source: common practice.
 */
export function primingChoice(input: PrimingChoiceInput): Result<readonly PrimingOption[]> {
  const { suctionLift, suctionLine, solids, atmosphericPressure, liquid, greatestLift } = input;
  const massFraction = solids.massFraction ?? 0;
  const checked = checkInputs(primingChoiceMethod, { suctionLift, atmosphericPressure, massFraction });
  if (!checked.ok) return checked;
  const counted = checkPumps(input.pumps);
  if (!counted.ok) return counted;
  const { density, vapourPressure } = liquid;
  if (vapourPressure === undefined) return fail([vapourPressureMissing()]);
  if (suctionLift < 0) return succeed(floodedOptions(-suctionLift));

  const vacuum = density * STANDARD_GRAVITY * suctionLift;
  const collapse = suctionLift > 0 ? layFlatCollapse(suctionLine, vacuum) : undefined;
  if (collapse !== undefined) return fail([collapse]);
  const site = { atmosphericPressure, density, vapourPressure };
  const airPump = airPumpOf(input.airPump);
  return andThen(verticalFirst(suctionLine, suctionLift, input.pumps), (runs) =>
    andThen(primingLift({ ...site, airPump, npshLift: null }), (limits) => {
      const timed = primeTime({ ...site, runs, casingVolume: input.casingVolume ?? 0, airPump });
      const isStatedLess = greatestLift !== null && greatestLift < limits.greatest;
      const greatest = isStatedLess ? greatestLift : limits.greatest;
      const rule = isStatedLess ? "the maximum lift stated" : RULES[limits.rules];
      const situation: Situation = {
        lift: suctionLift,
        length: suctionLine.reduce((sum, { length }) => sum + length, 0),
        isClean: solids.kind === "none",
        isStringy: solids.kind === "stringy",
        isSettling: massFraction >= SETTLING_SOLIDS,
        greatest,
        rule,
        airPump,
        refusal: refusalOf(suctionLift, greatest, rule, vapourPressure),
        time: timed.ok ? timed.value.total : undefined,
      };
      const found = amount("head", limits.greatest);
      return succeed(
        ranked(situation),
        greatestLift === null ? [remark({ code: "priming-npsh-not-judged", subject: "suction lift", found })] : [],
      );
    }),
  );
}

const RULES: Readonly<Record<LiftRule, string>> = {
  practice: "practice",
  "blank-off": "the air pump",
  NPSH: "NPSH",
  "hot liquid": "hot liquid",
};

function airPumpOf(stated: StatedAirPump | null): AirPump {
  if (stated === null) return USUAL_AIR_PUMP;
  const { freeAir, blankOff, leak } = stated;
  return { freeAir, blankOff: blankOff ?? DEFAULT_BLANK_OFF, leak: leak ?? 0 };
}

function refusalOf(lift: number, greatest: number, rule: string, vapourPressure: number): Finding | undefined {
  if (vapourPressure > HOT_VAPOUR_PRESSURE) {
    const found = amount("absolutePressure", vapourPressure);
    const limit = { quantity: "absolutePressure", value: HOT_VAPOUR_PRESSURE, side: "at most" } as const;
    return remark({ code: "prime-liquid-hot", subject: "liquid", found, limit });
  }
  return isAtMost(lift, greatest) ? undefined : againstLift("prime-lift-beyond", lift, greatest, rule);
}

function againstLift(
  code: "prime-lift-beyond" | "prime-lift-within" | "prime-lift-near",
  lift: number,
  most: number,
  rule: string,
): Finding {
  const found = amount("head", lift);
  const limit = { quantity: "head", value: most, side: "at most" } as const;
  return remark({ code, subject: "suction lift", found, limit, facts: { rule } });
}

/** Whether a lift that holds is a doubtful one all the same: near the limit, or of slurry that settles in the line. */
function isDoubtful({ lift, greatest, isSettling }: Situation): boolean {
  return isSettling || isNear(lift, greatest);
}

function isNear(lift: number, greatest: number): boolean {
  return !isAtMost(lift, greatest - Math.max(NEAR.share * greatest, NEAR.height));
}

function heldLift({ lift, greatest, rule, isSettling }: Situation): readonly Finding[] {
  return [
    againstLift(isNear(lift, greatest) ? "prime-lift-near" : "prime-lift-within", lift, greatest, rule),
    ...(isSettling ? [remark({ code: "prime-slurry-settles" })] : []),
  ];
}

/** Methods by verdict, and among equals by how well they serve this suction. */
function ranked(situation: Situation): readonly PrimingOption[] {
  const { isClean, length } = situation;
  const isShort = length < SHORT_LINE;
  const options = [
    dryPrime(situation),
    selfPriming(situation),
    eductor(situation),
    footValve(situation),
    submerged(situation),
  ];
  const order: readonly PrimingMethod[] =
    isClean && isShort
      ? ["self-priming casing", "vacuum-assisted dry prime", "foot valve and filled line", "compressed-air eductor"]
      : ["vacuum-assisted dry prime", "self-priming casing", "compressed-air eductor", "foot valve and filled line"];
  const place = ({ method }: PrimingOption): number => {
    const at = order.indexOf(method);
    return at < 0 ? order.length : at;
  };
  return options.toSorted((a, b) => verdictRank(a.verdict) - verdictRank(b.verdict) || place(a) - place(b));
}

function verdictRank(verdict: PrimingVerdict): number {
  return PRIMING_VERDICTS.indexOf(verdict);
}

function floodedOptions(depth: number): readonly PrimingOption[] {
  const found = amount("head", depth);
  return [
    {
      method: "flooded suction or submerged pump",
      verdict: "suits",
      time: null,
      reasons: [remark({ code: "prime-by-gravity", found })],
      needs: [remark({ code: "prime-needs-gate-and-vent" })],
      cautions: [remark({ code: "prime-lowest-level" })],
    },
    ...PRIMING_METHODS.filter((method) => method !== "flooded suction or submerged pump").map(
      (method): PrimingOption => ({
        method,
        verdict: "not needed",
        time: null,
        reasons: [remark({ code: "prime-not-needed", found })],
        needs: [],
        cautions: [],
      }),
    ),
  ];
}

function notSuited(method: PrimingMethod, refusal: Finding): PrimingOption {
  return { method, verdict: "not suited", time: null, reasons: [refusal], needs: [], cautions: [] };
}

function dryPrime(situation: Situation): PrimingOption {
  const { refusal, time, isStringy, isClean, airPump } = situation;
  const method = "vacuum-assisted dry prime";
  if (refusal !== undefined) return notSuited(method, refusal);
  const isLong = time !== undefined && time > LONGEST_BYPASS;
  return {
    method,
    verdict: isLong || isDoubtful(situation) ? "suits with care" : "suits",
    time: time ?? null,
    reasons: [
      ...heldLift(situation),
      ...(time === undefined ? [] : [timeReason(time, airPump)]),
      remark({ code: isClean ? "prime-dry-long-lines" : "prime-dry-passes-solids" }),
    ],
    needs: [
      remark({ code: "prime-needs-air-pump" }),
      ...(isLong ? [largerAirPump(time, airPump)] : []),
      remark({ code: "prime-needs-discharge-check" }),
    ],
    cautions: [
      remark({ code: "prime-float-valve" }),
      ...(isStringy ? [remark({ code: "prime-float-stringy" })] : []),
      blankOffVaries(airPump),
      remark({ code: "prime-hazardous-area" }),
    ],
  };
}

function timeReason(time: number, { freeAir }: AirPump): Finding {
  const facts = {
    capacity: amount("freeAirFlow", freeAir),
    bypass: amount("duration", LONGEST_BYPASS),
    dewatering: amount("duration", LONGEST_DEWATERING),
  };
  const found = amount("duration", time);
  if (time > LONGEST_DEWATERING) return remark({ code: "prime-time-very-long", found, facts });
  return remark({ code: time > LONGEST_BYPASS ? "prime-time-long" : "prime-time-short", found, facts });
}

/** The time goes as the inverse of the capacity, so the capacity that primes in the longest time follows. */
function largerAirPump(time: number, { freeAir }: AirPump): Finding {
  const needed = (freeAir * time) / LONGEST_BYPASS;
  const facts = { time: amount("duration", LONGEST_BYPASS) };
  return remark({ code: "prime-needs-larger-air-pump", found: amount("freeAirFlow", needed), facts });
}

function blankOffVaries({ blankOff }: AirPump): Finding {
  const facts = { better: blankOffVacuum(BETTER_BLANK_OFF) };
  return remark({ code: "prime-blank-off-varies", found: blankOffVacuum(blankOff), facts });
}

function selfPriming(situation: Situation): PrimingOption {
  const { length, refusal, isClean, isStringy } = situation;
  const method = "self-priming casing";
  if (refusal !== undefined) return notSuited(method, refusal);
  const isLong = length >= SHORT_LINE;
  const line = {
    found: amount("length", length),
    limit: { quantity: "length", value: SHORT_LINE, side: "below" },
  } as const;
  return {
    method,
    verdict: isLong || isStringy || isDoubtful(situation) ? "suits with care" : "suits",
    time: null,
    reasons: [
      ...heldLift(situation),
      remark({ code: isLong ? "prime-self-long-line" : "prime-self-short-line", ...line }),
      ...(isClean ? [] : [remark({ code: "prime-self-solids" })]),
    ],
    needs: [remark({ code: "prime-self-needs" })],
    cautions: [remark({ code: "prime-self-cautions" })],
  };
}

/** A nozzle of 1/4 in at 100 psi over one atmosphere, for scale; air at 60 °F. */
const NOZZLE: EductorAirInput = {
  nozzleBore: 0.25 * unitOf("in").factor,
  motivePressure: 100 * unitOf("psi").factor,
  airTemperature: 288.71,
  atmosphericPressure: STANDARD_ATMOSPHERE,
};

function eductor(situation: Situation): PrimingOption {
  const { refusal, isStringy } = situation;
  const method = "compressed-air eductor";
  if (refusal !== undefined) return notSuited(method, refusal);
  const air = eductorAir(NOZZLE);
  return {
    method,
    verdict: "suits with care",
    time: null,
    reasons: [...heldLift(situation), remark({ code: "prime-eductor-no-moving-parts" })],
    needs: air.ok
      ? [
          remark({
            code: "prime-eductor-motive-air",
            found: amount("freeAirFlow", air.value.motiveAir),
            facts: {
              nozzle: amount("size", NOZZLE.nozzleBore),
              pressure: amount("gaugePressure", NOZZLE.motivePressure),
            },
          }),
          remark({ code: "prime-needs-discharge-check" }),
        ]
      : [],
    cautions: [
      remark({ code: "prime-eductor-cautions" }),
      ...(isStringy ? [remark({ code: "prime-float-stringy" })] : []),
    ],
  };
}

function footValve(situation: Situation): PrimingOption {
  const { refusal, isClean } = situation;
  const method = "foot valve and filled line";
  if (refusal !== undefined) return notSuited(method, refusal);
  if (!isClean) return notSuited(method, remark({ code: "prime-foot-valve-clogs" }));
  return {
    method,
    verdict: "suits with care",
    time: null,
    reasons: [...heldLift(situation), remark({ code: "prime-foot-valve-cheap" })],
    needs: [remark({ code: "prime-foot-valve-needs" })],
    cautions: [remark({ code: "prime-foot-valve-cautions" })],
  };
}

function submerged({ refusal }: Situation): PrimingOption {
  return {
    method: "flooded suction or submerged pump",
    verdict: refusal === undefined ? "suits with care" : "suits",
    time: null,
    reasons: [refusal ?? remark({ code: "prime-submerged-no-priming" })],
    needs: [remark({ code: refusal?.code === "prime-liquid-hot" ? "prime-hot-needs" : "prime-submerged-needs" })],
    cautions: [remark({ code: "prime-submerged-cautions" })],
  };
}
