import type { Citation } from "../basis/citation.ts";
import { remembered } from "../basis/remembered.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { EQUIVALENT_LENGTHS, type EquivalentLengthRow, type SizeBand } from "../tables/fittings-equivalent-length.ts";
import { CLEAN_STRAINER, FIXED_FITTINGS, type FixedRow } from "../tables/fittings-fixed.ts";
import { THREE_K, type ThreeKRow } from "../tables/fittings-three-k.ts";
import { TRADE_FITTINGS, TRADE_LENGTHS, type TradeLength } from "../tables/fittings-trade.ts";
import type { Fitting } from "./fitting.ts";
import { fullyRoughFactor } from "./friction-factor.ts";
import type { Pipe } from "./pipe.ts";

/** A fitting the product knows by name, with what a list of fittings shows of it. */
export interface KnownFitting {
  readonly fitting: Fitting;
  readonly also: readonly string[];
  readonly basis: "L/D" | "K" | "K1, Ki, Kd";
  /** The tabled figure, or figures in words. */
  readonly value: number | string;
}

const EQUIVALENT_LENGTH: Citation = { source: "tp-410", at: "resistance coefficients, K = (L/D) f_T" };
const THREE_K_METHOD: Citation = { source: "darby-2001", at: "3-K coefficients" };
const TRADE_LENGTH: Citation = {
  source: "practice",
  at: "L/D of bends of small angle, and of valves of sewage and slurry lines",
};
const INCH = unitOf("in").factor;

/** Nominal size in inches; of a measured bore, the bore. */
function nominalInches({ nominalInches: nominal, bore }: Pipe): number {
  return nominal ?? bore / INCH;
}

/** L/D of a row at a pipe's size. Between two bands the cut is midway; outside the table the nearest band, with a caution. */
function ratioAt({ name, ratio }: EquivalentLengthRow, pipe: Pipe): { ratio: number; findings: readonly Finding[] } {
  if (typeof ratio === "number") return { ratio, findings: [] };
  const size = nominalInches(pipe);
  const band = ratio.find(({ to }, i) => size <= (to + (ratio[i + 1]?.from ?? to)) / 2) ?? (ratio.at(-1) as SizeBand);
  const first = ratio[0] as SizeBand;
  const last = ratio.at(-1) as SizeBand;
  if (size >= first.from && size <= last.to) return { ratio: band.ratio, findings: [] };
  const outside: Finding = {
    code: "fitting-size-outside-table",
    kind: "check",
    subject: name,
    found: amount("size", size * INCH),
    facts: { least: amount("size", first.from * INCH), most: amount("size", last.to * INCH) },
    cites: EQUIVALENT_LENGTH,
  };
  return { ratio: band.ratio, findings: [outside] };
}

function ofEquivalentLength(row: EquivalentLengthRow): KnownFitting {
  const { name, also, heldOpenFrom } = row;
  const coefficientIn = remembered((pipe: Pipe): Result<number> => {
    const { ratio, findings } = ratioAt(row, pipe);
    return succeed(ratio * fullyRoughFactor(pipe.bore), findings);
  });
  const fitting: Fitting = {
    name,
    isExit: false,
    cites: EQUIVALENT_LENGTH,
    method: "equivalent length",
    ...(heldOpenFrom === undefined ? {} : { heldOpenFrom }),
    lossCoefficient: (pipe) => coefficientIn(pipe),
  };
  return { fitting, also, basis: "L/D", value: typeof row.ratio === "number" ? row.ratio : bandsInWords(row.ratio) };
}

function ofTradeLength({ name, also, ratio, range }: TradeLength): KnownFitting {
  const fitting: Fitting = {
    name,
    isExit: false,
    cites: TRADE_LENGTH,
    method: "equivalent length",
    lossCoefficient: ({ bore }) => {
      const coefficient = ratio * fullyRoughFactor(bore);
      return succeed(coefficient, [assumed(name, Number(coefficient.toPrecision(2)), range)]);
    },
  };
  return { fitting, also, basis: "L/D", value: ratio };
}

function bandsInWords(bands: readonly SizeBand[]): string {
  return bands.map(({ from, to, ratio }) => `${ratio} (${from} to ${to} in)`).join(", ");
}

function ofFixedCoefficient({ name, also, coefficient, cites, range, isExit }: FixedRow): KnownFitting {
  const findings = range === undefined ? [] : [assumed(name, coefficient, range)];
  const answer = succeed(coefficient, findings);
  const fitting: Fitting = { name, isExit: isExit ?? false, cites, lossCoefficient: () => answer };
  return { fitting, also, basis: "K", value: coefficient };
}

function assumed(subject: string, coefficient: number, range: string): Finding {
  return { code: "fitting-assumed", kind: "assumed", subject, facts: { coefficient, range } };
}

function ofThreeK({ name, k1, ki, kd }: ThreeKRow): KnownFitting {
  const fitting: Fitting = {
    name,
    isExit: false,
    cites: THREE_K_METHOD,
    method: "3-K",
    lossCoefficient: (pipe, reynolds) => {
      if (reynolds === undefined) return fail([{ code: "fitting-needs-flow", kind: "error", subject: name }]);
      const turbulent = ki * (1 + kd / nominalInches(pipe) ** 0.3);
      return succeed(reynolds === 0 ? turbulent : k1 / reynolds + turbulent);
    },
  };
  return { fitting, also: [], basis: "K1, Ki, Kd", value: `${k1}, ${ki}, ${kd} (Kd for inches)` };
}

/** Every fitting with a name, as listed. */
export const KNOWN_FITTINGS: readonly KnownFitting[] = [
  ...EQUIVALENT_LENGTHS.map(ofEquivalentLength),
  ...FIXED_FITTINGS.map(ofFixedCoefficient),
  ...TRADE_LENGTHS.map(ofTradeLength),
  ...TRADE_FITTINGS.map(ofFixedCoefficient),
  ...THREE_K.map(ofThreeK),
];

/**
 * A strainer with a share b of its open area blocked.
 * Formula: K = K_clean/(1 − b)²
 * Warns: fitting-assumed.
 * Source: common practice.
 */
export function blockedStrainer(name: string, blocked: number, clean: FixedRow = CLEAN_STRAINER): Fitting {
  const coefficient = clean.coefficient / (1 - blocked) ** 2;
  const findings = [assumed(name, coefficient, clean.range ?? "")];
  return { name, isExit: false, cites: clean.cites, lossCoefficient: () => succeed(coefficient, findings) };
}
