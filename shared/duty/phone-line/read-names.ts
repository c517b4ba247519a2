import type { Result } from "../../../src/basis/result.ts";
import { liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import type { LineKey } from "../duty-text.ts";
import { FIELDS } from "../fields.ts";
import { amountsAt, type SaidAmount } from "./amounts.ts";
import { refusedBy } from "./reading.ts";
import type { ReadPart } from "./said.ts";
import { beginnings, mayNameFitting, mayNamePipe, PIPE_WORDS } from "./words.ts";

/** As many words as names of pipes, fittings and liquids have. */
const MOST_WORDS = 9;

const SIDE =
  /^(?:on (?:the )?|at (?:the )?|in (?:the )?)?(suction|discharge|delivery)(?: side| line| piping| pipework)?(?!\w)\s*:?\s*/i;
const SIDE_BEHIND =
  /^\s*(?:(?:on|for|in|at) (?:the )?)?(suction|discharge|delivery)(?: side| line| piping| pipework)?(?!\w)/i;

function lineOf(words: string): LineKey {
  return /suction|foot valve/i.test(words) ? "suctionLine" : "dischargeLine";
}

/** The longest beginning of a text that a reader takes, and what it makes of it. */
function longest<T>(
  text: string,
  read: (name: string) => Result<T>,
  mayBe: (name: string) => boolean = () => true,
): { readonly name: string; readonly value: T } | undefined {
  for (const name of beginnings(text, MOST_WORDS)) {
    if (!mayBe(name)) continue;
    const found = read(name);
    if (found.ok) return { name, value: found.value };
  }
  return undefined;
}

/** Whether a text goes on where a word ends. */
function stands(text: string): boolean {
  return !/^[\p{L}\d]/u.test(text);
}

/** "20 ft of 8in suction hose", "8in HDPE DR17, 900 ft", a pipe alone; the side said beside it, or told by its words. */
export function runPart(text: string, clause: string): ReadPart | undefined {
  const said = SIDE.exec(clause);
  const start = said?.[0].length ?? 0;
  const rest = clause.slice(start);
  const run = lengthThenPipe(rest) ?? pipeThenLength(rest, text.slice(start));
  if (run === undefined) return unknownPipe(clause, start);
  const behind = said === null ? SIDE_BEHIND.exec(clause.slice(start + run.length)) : null;
  const side = (said ?? behind)?.[1];
  const line = side === undefined ? lineOf(run.pipe) : lineOf(side);
  const length = start + run.length + (behind?.[0].length ?? 0);
  if (run.amount === undefined) return { length, said: { what: "pipe", pipe: run.pipe, line } };
  return { length, said: { what: "run", pipe: run.pipe, length: run.amount, line } };
}

interface Run {
  readonly length: number;
  readonly pipe: string;
  readonly amount: SaidAmount | undefined;
}

function lengthThenPipe(text: string): Run | undefined {
  // "900 ft 8in HDPE" is 900 ft of it: the shorter reading first.
  for (const amount of [...amountsAt(text)].reverse()) {
    const rest = text.slice(amount.text.length);
    const link = (amount.unit === undefined ? /^\s+of\s+/i : /^\s*(?:(?:long|run)\s+)?(?:of|x|×)?\s+|^\s*/i).exec(
      rest,
    )?.[0];
    if (link === undefined || (amount.unit !== undefined && amount.unit.dimension !== "length")) continue;
    const pipe = longest(rest.slice(link.length), pipeNamed, mayNamePipe);
    if (pipe === undefined) continue;
    return { length: amount.text.length + link.length + pipe.name.length, pipe: pipe.name, amount };
  }
  return undefined;
}

const LENGTH = "\\d[\\d.,]*\\s*(?:ft|feet|m|metres?|meters?|['’′])";
const LENGTH_FIRST = new RegExp(`^(${LENGTH}\\s*(?:of\\s+)?)(\\S.*)$`, "is");
const SIZE_FIRST = new RegExp(
  `^()((?:dn ?\\d+|\\d[\\d./-]* ?(?:in\\b|inch|["”″]|mm)).*?)(\\s+(?:x |× )?${LENGTH})?$`,
  "is",
);

/** What looks like a pipe and is none, with the length said beside it, which waits for its name. */
function unknownPipe(clause: string, start: number): ReadPart | undefined {
  const said = clause.slice(start).trimEnd();
  const [, before = "", name = "", behind = ""] = LENGTH_FIRST.exec(said) ?? SIZE_FIRST.exec(said) ?? [];
  // A size alone may be that of a fitting.
  const words = name.split(/\s+/);
  if (!PIPE_WORDS.test(words.slice(before === "" ? 1 : 0, 2).join(" "))) return undefined;
  const found = pipeNamed(name);
  if (found.ok) return undefined;
  const { refused, instead } = refusedBy(found.findings, "US", (other) => pipeNamed(other).ok);
  const offers = instead.map((other) => `${clause.slice(0, start)}${before}${other}${behind}`);
  return { length: start + said.length, said: { what: "refused", remark: refused, instead: offers, isRun: true } };
}

function pipeThenLength(clause: string, text: string): Run | undefined {
  const pipe = longest(clause, pipeNamed, mayNamePipe);
  if (pipe === undefined) return undefined;
  const rest = text.slice(pipe.name.length);
  const link = /^\s*,?\s*(?:x|×)?\s*/i.exec(rest)?.[0].length ?? 0;
  const amount = amountsAt(rest.slice(link)).at(-1);
  const end = pipe.name.length + link + (amount?.text.length ?? 0);
  // A figure that more is said of is another's: "8in layflat, 12 ft lift".
  const isItsLength =
    amount?.unit?.dimension === "length" && /^\s*(?:long|run)?\s*(?:$|[,;.\n)]|and\b)/i.test(text.slice(end));
  if (!isItsLength) return { length: pipe.name.length, pipe: pipe.name, amount: undefined };
  return { length: end, pipe: pipe.name, amount };
}

const JUST_A_NUMBER = /^[\d.,\s]+$/;

/** "2 ells", "foot valve", "1 gate on the suction". */
export function fittingsPart(text: string): ReadPart | undefined {
  const side = SIDE.exec(text);
  const start = side?.[0].length ?? 0;
  const mayBe = (name: string): boolean => !JUST_A_NUMBER.test(name) && mayNameFitting(name);
  const found = longest(text.slice(start), (name) => fittingsNamed(name), mayBe);
  if (found === undefined || found.value.length === 0) return undefined;
  // "12 foot" is a length.
  if ((amountsAt(text)[0]?.text.length ?? 0) >= start + found.name.length) return undefined;
  const end = start + found.name.length;
  const behind = SIDE_BEHIND.exec(text.slice(end));
  const said = (side ?? behind)?.[1];
  const line = said === undefined ? sideOf(found.name) : lineOf(said);
  return { length: end + (behind?.[0].length ?? 0), said: { what: "fittings", text: found.name, line } };
}

/** Fittings that stand at one end of a line alone. */
function sideOf(name: string): LineKey | undefined {
  if (/\b(?:foot|entrance|entry|inlet|strainer|bell ?mouth)\b/i.test(name)) return "suctionLine";
  return /\b(?:exit|outlet)\b/i.test(name) ? "dischargeLine" : undefined;
}

/** A side by itself: what follows stands there. */
export function sidePart(text: string): ReadPart | undefined {
  const side = SIDE.exec(text);
  if (side === null || !/:\s*$|^(?:on|at|in)\b/i.test(side[0])) return undefined;
  return { length: side[0].trimEnd().length, said: { what: "side", line: lineOf(side[1] as string) } };
}

const FIGURES_OF_A_LIQUID = /^(?:sg|s\.g\.|sp\.? ?gr|specific gravity|density)\b/i;

/** "sea water", "water 20 C", "SG 1.12, 3.5 cP": its temperature apart, for that has a box. */
export function liquidPart(text: string, clause: string): ReadPart | undefined {
  const found = longest(FIGURES_OF_A_LIQUID.test(text) ? text : clause, (name) => liquidNamed(name));
  if (found === undefined) return undefined;
  const { name, value } = found;
  const length = name.length;
  if (value.statedTemperature === undefined)
    return { length, said: { what: "liquid", text: name, temperature: undefined } };
  const temperature = /[-+]?\d[\d.,]*\s*\S*(?:\s[cf])?$/i.exec(name)?.[0] ?? "";
  const bare = name.slice(0, length - temperature.length).replace(/[\s,;]*(?:\b(?:at|is)|@)?\s*$/i, "");
  return { length, said: { what: "liquid", text: liquidNamed(bare).ok ? bare : name, temperature } };
}

/** "dewatering", "bypass". */
export function servicePart(text: string): ReadPart | undefined {
  const found = longest(text, (name) => FIELDS.service.read(name, "US", ""));
  if (found === undefined || !stands(text.slice(found.name.length))) return undefined;
  return { length: found.name.length, said: { what: "field", key: "service", text: found.name } };
}
