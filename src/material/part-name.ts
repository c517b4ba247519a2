import { fail, type Result, succeed } from "../basis/result.ts";
import { pipeNamed } from "../pipework/pipe-name.ts";
import { ELASTOMERS } from "../tables/elastomers.ts";
import { SEAL_FACES } from "../tables/seal-faces.ts";
import { BARE_IRON_LINE, BOLTS, GALVANISED_LINE, type Hardware, LINES } from "./line-and-bolts.ts";

const [CARBON, COBALT, NICKEL, REACTION, SINTERED] = SEAL_FACES.map(({ name }) => name) as [
  string,
  string,
  string,
  string,
  string,
];
const [NBR, EPDM, FKM, NATURAL, PTFE] = ELASTOMERS.map(({ name }) => name) as [string, string, string, string, string];
const [PLAIN_BOLTS, GALVANISED_BOLTS, STAINLESS_BOLTS] = BOLTS as [Hardware, Hardware, Hardware];
const [STEEL, HDPE, PVC, CEMENT, STAINLESS] = LINES as [Hardware, Hardware, Hardware, Hardware, Hardware];

export const SEAL_NAMES: readonly string[] = SEAL_FACES.map(({ name }) => name);
export const ELASTOMER_NAMES: readonly string[] = ELASTOMERS.map(({ name }) => name);

type Patterns<T> = readonly (readonly [pattern: RegExp, meant: T])[];

function firstOf<T>(patterns: Patterns<T>, text: string, subject: string, suggestions: readonly string[]): Result<T> {
  const found = patterns.find(([pattern]) => pattern.test(text.slice(0, 200)))?.[1];
  if (found !== undefined) return succeed(found);
  return fail([{ code: "name-unknown", kind: "error", subject, given: text.trim(), suggestions }]);
}

const NICKEL_WORDS = /nickel|\bni\b|wc-?ni/i;
const FACES: Patterns<readonly string[]> = [
  [/carbon|graphite/i, [CARBON]],
  [/reaction|\brb|silicised/i, [REACTION]],
  [/sinter|\bss?sic|alpha/i, [SINTERED]],
  // Carbide of tungsten without its binder is cobalt-bound.
  [/tungsten|\bwc\b|\btc\b/i, [COBALT]],
  [/silicon carbide|\bsic\b/i, [REACTION, SINTERED]],
];

/**
 * The pairs a text may mean: "tungsten carbide", "nickel-bound tungsten carbide", "SiC on SiC" (either kind), "carbon".
 * Fails: `name-unknown`.
 */
export function sealFacesNamed(text: string, subject: string): Result<readonly string[]> {
  const exact = SEAL_NAMES.find((name) => name === text.trim().toLowerCase());
  if (exact !== undefined) return succeed([exact]);
  if (/tungsten|\bwc\b|wc-?ni|\btc\b/i.test(text) && NICKEL_WORDS.test(text)) return succeed([NICKEL]);
  return firstOf(FACES, text, subject, SEAL_NAMES);
}

const RUBBERS: Patterns<readonly string[]> = [
  [/ptfe/i, [PTFE]],
  [/epdm|epm\b/i, [EPDM]],
  [/\bfkm|\bfpm|fluoroelastomer/i, [FKM]],
  [/nbr|nitrile|buna/i, [NBR]],
  [/natural|gum|\bnr\b/i, [NATURAL]],
  [/rubber|hose/i, [NBR, EPDM, NATURAL]],
];

/** The elastomers a text may mean; plain "rubber" is NBR, EPDM or natural rubber. Fails: `name-unknown`. */
export function elastomersNamed(text: string, subject: string): Result<readonly string[]> {
  return firstOf(RUBBERS, text, subject, ELASTOMER_NAMES);
}

const BOLT_WORDS: Patterns<Hardware> = [
  [/b8m|a4-|316/i, STAINLESS_BOLTS],
  [/galvan|zinc|hdg/i, GALVANISED_BOLTS],
  [/b7|l7|4\.6|8\.8|10\.9|a307|sae|grade ?[258]|carbon steel|steel/i, PLAIN_BOLTS],
];

/** Bolts by material and coating: "A193 B7", "galvanised", "A193 B8M". Fails: `name-unknown`. */
export function boltsNamed(text: string, subject: string): Result<Hardware> {
  return firstOf(
    BOLT_WORDS,
    text,
    subject,
    BOLTS.map(({ name }) => name),
  );
}

/** What a run of a line is made of. */
export type LineStuff =
  | { readonly kind: "pipe"; readonly hardware: Hardware }
  | { readonly kind: "hose"; readonly elastomers: readonly string[] }
  | { readonly kind: "unknown"; readonly name: string };

const HOSE = /hose|lay-?flat/i;
const PIPES: Patterns<Hardware> = [
  [/hdpe|polyethylene|\bpe ?\d{2,4}\b|pe(?:4710|3608|100|80)|\b(?:dr|sdr) ?\d/i, HDPE],
  [/pvc/i, PVC],
  [/galvan/i, GALVANISED_LINE],
  [/316|stainless|sch ?\d+s\b/i, STAINLESS],
  [/unlined|cast iron|\bci\b/i, BARE_IRON_LINE],
  [/ductile|cement/i, CEMENT],
  [/sch|\bxs\b|\bxxs\b|\bstd\b|steel|en ?10220/i, STEEL],
];

/**
 * What a pipe or hose is made of, by its name: "6in sch40", "10in HDPE DR17", "DN150 sch40 galvanised", "suction hose".
 * Copper and a bare bore are known as pipe and not judged. Fails: `name-unknown` for what is no pipe either.
 */
export function lineNamed(text: string, subject: string): Result<LineStuff> {
  const written = text.slice(0, 200);
  if (HOSE.test(written)) {
    const rubber = elastomersNamed(written, subject);
    return rubber.ok ? succeed({ kind: "hose", elastomers: rubber.value }) : rubber;
  }
  const hardware = PIPES.find(([pattern]) => pattern.test(written))?.[1];
  if (hardware !== undefined) return succeed({ kind: "pipe", hardware });
  const pipe = pipeNamed(written);
  return pipe.ok ? succeed({ kind: "unknown", name: written.trim() }) : pipe;
}
