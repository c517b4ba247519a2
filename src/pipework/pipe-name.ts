import { nearestNames } from "../basis/nearest.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { familyIn, finishedPipe, isSize, ofAnyMaterial, pipeOf, sizesIn } from "./family-pipe.ts";
import { pipesWithCoefficient, pipeWithCoefficient } from "./hazen-williams-name.ts";
import { measuredPipe, splitRoughness } from "./measured-pipe.ts";
import { metricPlasticName } from "./metric-plastic-name.ts";
import {
  inQuotes,
  measuredInstead,
  NAMES_THAT_DO,
  namesWithoutSpareWords,
  nearestPipes,
  nearestSizes,
  quoted,
  sizeWords,
} from "./nearest-pipes.ts";
import type { Pipe } from "./pipe.ts";
import { PIPE_FAMILIES, PIPE_SELECTIONS } from "./pipe-families.ts";
import type { PipeSize, SizeSystem } from "./pipe-family.ts";
import { readSize, sizeWithin, tidyPipeText, type WrittenSize } from "./pipe-words.ts";

/** No name of a pipe is longer; a longer text is refused unread. */
const LONGEST = 100;

/** Texts kept read. A column holds few different pipes; the bound keeps a long session from growing. */
const MOST_KEPT = 4000;

const read = new Map<string, Result<Pipe>>();

/**
 * The pipe a text names, in m; upper or lower case and spacing do not matter. The forms:
 * <size> <family> in either order [condition or grade] [rough <amount> or C <number>]: 6in sch40, 10in HDPE DR17 C 150, DN150 sch40 used, 10in HDPE DR17 PE4710 rough 0.05 mm;
 * metric plastic pipe by outside diameter, SDR, grade and PN in any order: 250mm HDPE SDR17 PE100, PE100 250 SDR 17 PN10;
 * [DN] [EN10220] <outside diameter>x<wall> [steel]: DN150 EN10220 168.3x4.5; by measure, as `measuredPipe` reads it.
 * Fails: name-unknown, with the nearest names; left-out, pipe-size-missing, pipe-family-missing; as `measuredPipe`.
 * Warns: surface-uncertain, hose-corrugated, bore-is-nominal.
 */
export function pipeNamed(text: string, subject = "pipe"): Result<Pipe> {
  let result = read.get(text);
  if (result === undefined) {
    result = readPipe(text);
    if (read.size >= MOST_KEPT) read.clear();
    if (text.length <= 4 * LONGEST) read.set(text, result);
  }
  return subject === "pipe" ? result : about(subject, result);
}

const listed = new Map<string, Result<readonly Pipe[]>>();

/**
 * The pipes of a family in rising bore, named by inches or by metric sizes: "sch40", "HDPE DR17", "sch40 galvanised".
 * "EN10220 seamless" and "EN10220 welded" list the usual wall of each size.
 * Fails: name-unknown, with the nearest families; as `readRoughness`.
 * Warns: surface-uncertain, hose-corrugated.
 */
export function pipesOf(text: string, sizes: SizeSystem = "inch", subject = "family"): Result<readonly Pipe[]> {
  const key = `${sizes} ${text}`;
  let result = listed.get(key);
  if (result === undefined) {
    const given = shortened(text);
    result = pipesWithCoefficient(tidyPipeText(text.slice(0, LONGEST + 1)), given, (words) =>
      readFamily(words, given, sizes),
    );
    if (listed.size >= MOST_KEPT) listed.clear();
    if (text.length <= 4 * LONGEST) listed.set(key, result);
  }
  return subject === "family" ? result : about(subject, result);
}

const everyPipe = new Map<SizeSystem, readonly Pipe[]>();

/** Every pipe of every family, in the order of the families and then of rising bore. */
export function allPipes(sizes: SizeSystem = "inch"): readonly Pipe[] {
  let pipes = everyPipe.get(sizes);
  if (pipes === undefined) {
    pipes = PIPE_FAMILIES.flatMap((family) => sizesIn(family, sizes).map((size) => pipeOf({ family, size, sizes })));
    everyPipe.set(sizes, pipes);
  }
  return pipes;
}

let names: readonly string[] | undefined;

function everyName(): readonly string[] {
  names ??= [...new Set([...allPipes("inch"), ...allPipes("metric")].map(({ name }) => name))];
  return names;
}

function about<T>(subject: string, result: Result<T>): Result<T> {
  if (result.findings.length === 0) return result;
  const findings = result.findings.map((finding) =>
    finding.subject === "pipe" || finding.subject === "family" ? { ...finding, subject } : finding,
  );
  return { ...result, findings };
}

function readPipe(text: string): Result<Pipe> {
  const given = shortened(text);
  if (text.length > LONGEST) return unknown("pipe", given, NAMES_THAT_DO);
  const tidied = tidyPipeText(text);
  if (tidied === "") return fail([{ code: "left-out", kind: "error", subject: "pipe", suggestions: NAMES_THAT_DO }]);
  return pipeWithCoefficient(tidied, given, (words) => pipeInWords(words, given));
}

function pipeInWords(tidied: string, given: string): Result<Pipe> {
  return (
    measuredPipe(tidied, given) ??
    metricSteelPipe(tidied, given) ??
    plasticPipe(tidied, given) ??
    pipeBySize(tidied, given)
  );
}

/** A metric plastic pipe whose parts stand in any order. */
function plasticPipe(tidied: string, given: string): Result<Pipe> | undefined {
  const { before, rough } = splitRoughness(tidied);
  const name = metricPlasticName(before);
  if (name === undefined) return undefined;
  if (!("text" in name)) {
    const suggestions = name.instead.map(inQuotes);
    if (name.due.length === 0) return unknown("pipe", given, suggestions);
    const facts = { stated: name.stated, due: name.due.join(" or ") };
    return fail([{ code: "pipe-class-contradicts", kind: "error", subject: "pipe", given, suggestions, facts }]);
  }
  return pipeBySize(`${tidyPipeText(name.text)}${rough === undefined ? "" : ` rough ${rough}`}`, given);
}

/** The ratio of plastic pipe as the standards of the size write it: DR of inch pipe, SDR of metric pipe. */
function ratioOf(sizes: SizeSystem, words: string): string {
  return words.replace(/s?dr(?=[- ]?\d)/g, sizes === "inch" ? "dr" : "sdr");
}

function pipeBySize(tidied: string, given: string): Result<Pipe> {
  const { before, rough } = splitRoughness(tidied);
  const size = readSize(before) ?? sizeWithin(before);
  if (size === undefined) {
    if (familyIn(before) === undefined) return unknown("pipe", given, nearestPipes(everyName(), given));
    return fail([{ code: "pipe-size-missing", kind: "error", subject: "pipe", given, suggestions: NAMES_THAT_DO }]);
  }
  if (size.rest === "") return familyMissing(size, given);
  const sizes: SizeSystem = size.by === "inches" ? "inch" : "metric";
  const family = familyIn(ratioOf(sizes, size.rest));
  if (family === undefined) {
    const ofAny = ofAnyMaterial(ratioOf(sizes, size.rest), size);
    const [only] = ofAny;
    if (only !== undefined) {
      const suggestions = ofAny.map((facts) => quoted({ ...facts, sizes }));
      const finding = { code: "pipe-material-not-stated", subject: "pipe", given, suggestions } as const;
      if (ofAny.length > 1) return fail([{ ...finding, kind: "error" }]);
      return andThen(finishedPipe({ ...only, sizes }, rough), (pipe) =>
        succeed(pipe, [{ ...finding, kind: "assumed" }]),
      );
    }
    const near = namesWithoutSpareWords(size, sizes);
    const others = near.length > 0 ? near : nearestPipes(everyName(), given);
    return unknown("pipe", given, [...others, ...measuredInstead(size, size.rest)]);
  }
  const found = family.family.sizes.find((candidate) => isSize(candidate, size));
  if (found === undefined) {
    return unknown("pipe", given, [...nearestSizes(family.family, size), ...measuredInstead(size, size.rest)]);
  }
  return finishedPipe({ ...family, size: found, sizes }, rough);
}

const MILLIMETRES = String.raw`(\d+(?:[.,]\d+)?) ?(?:mm)?`;
const BY_WALL = new RegExp(`^(?:dn ?(\\d+)[ ,]*)?(?:en ?10220)?[ ,]*${MILLIMETRES} ?x ?${MILLIMETRES}(.*)$`);

/** "DN150 EN10220 168.3x4.5", with the outside diameter and wall that settle it. */
function metricSteelPipe(tidied: string, given: string): Result<Pipe> | undefined {
  const { before, rough } = splitRoughness(tidied);
  const match = BY_WALL.exec(before);
  if (match === null) return undefined;
  const [outside, wall] = [match[2], match[3]].map((written) => Number((written as string).replace(",", ".")));
  const family = familyIn(`en10220 ${(match[4] as string).replace(/en ?10220/, "")}`);
  if (family === undefined) return unknown("pipe", given, nearestPipes(everyName(), given));
  const dn = match[1] === undefined ? undefined : `DN${match[1]}`;
  const sameOutside = family.family.sizes.filter(({ variant }) => Number(variant?.split("x")[0]) === outside);
  const size = sameOutside.find(({ variant }) => Number(variant?.split("x")[1]) === wall);
  if (size !== undefined && (dn === undefined || size.size === dn)) {
    return finishedPipe({ ...family, size, sizes: "metric" }, rough);
  }
  const near = sameOutside
    .toSorted((a, b) => Math.abs(wallOf(a) - (wall as number)) - Math.abs(wallOf(b) - (wall as number)))
    .slice(0, 3)
    .map((near) => quoted({ family: family.family, size: near, sizes: "metric" }));
  const measured = `"OD ${outside} mm wall ${wall} mm steel"`;
  return unknown("pipe", given, size === undefined ? [...near, measured] : near);
}

function wallOf({ variant }: PipeSize): number {
  return Number(variant?.split("x")[1]);
}

function readFamily(text: string, given: string, sizes: SizeSystem): Result<readonly Pipe[]> {
  const families = PIPE_FAMILIES.map(({ family }) => family);
  const { before, rough } = splitRoughness(text);
  const written = text.length > LONGEST ? [] : [before, ratioOf("inch", before), ratioOf("metric", before)];
  const [found] = written.flatMap((words) => familyIn(words) ?? familyIn(words, PIPE_SELECTIONS) ?? []);
  if (found === undefined) {
    const near = text.length > LONGEST ? [] : nearestNames(given, families);
    const suggestions = near.length > 0 ? near : ["sch40", "STD", "HDPE DR17", "ductile iron cl350", "layflat"];
    return unknown("family", given, suggestions.map(inQuotes));
  }
  const pipes: Pipe[] = [];
  let remarks: readonly Finding[] = [];
  for (const size of sizesIn(found.family, sizes)) {
    const pipe = finishedPipe({ ...found, size, sizes }, rough);
    if (!pipe.ok) return pipe;
    remarks = pipe.findings;
    pipes.push(pipe.value);
  }
  return succeed(
    pipes.toSorted((a, b) => a.bore - b.bore),
    remarks,
  );
}

function familyMissing(size: WrittenSize, given: string): Result<Pipe> {
  const beginning = sizeWords(size);
  const families = size.by === "millimetres" ? ["layflat", "suction hose"] : ["sch40", "STD", "layflat"];
  // A size that no family has is not put before one: what is left of such a text may ask for a family again.
  const named =
    beginning === undefined
      ? []
      : families.map((family) => `${beginning} ${family}`).filter((name) => readPipe(name).ok);
  const measured = size.by === "inches" ? "ID 6.065 in rough 0.0018 in" : "ID 154.1 mm rough 0.045 mm";
  const suggestions = [...named, measured].map(inQuotes);
  return fail([{ code: "pipe-family-missing", kind: "error", subject: "pipe", given, suggestions }]);
}

function unknown(subject: string, given: string, suggestions: readonly string[]): Result<never> {
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions }]);
}

function shortened(text: string): string {
  const clean = text.trim();
  return clean.length > 60 ? `${clean.slice(0, 57)}…` : clean;
}
