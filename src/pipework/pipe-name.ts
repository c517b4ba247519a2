import { nearestNames } from "../basis/nearest.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { SURFACES } from "../tables/roughness.ts";
import { measuredPipe, readRoughness, type StatedRoughness, splitRoughness, surfaceRemarks } from "./measured-pipe.ts";
import { nominalInches } from "./nominal-size.ts";
import type { Pipe } from "./pipe.ts";
import { PIPE_FAMILIES, PIPE_SELECTIONS } from "./pipe-families.ts";
import type { PipeFamily, PipeSize, SizeSystem } from "./pipe-family.ts";
import { readSize, readWords, tidyPipeText, type WrittenSize } from "./pipe-words.ts";

/** No name of a pipe is longer; a longer text is refused unread. */
const LONGEST = 100;

/** Texts kept read. A column holds few different pipes; the bound keeps a long session from growing. */
const MOST_KEPT = 4000;

const NAMES_THAT_DO = ['"6in sch40"', '"DN150 sch40"', '"10in HDPE DR17"', '"ID 154.1 mm rough 0.045 mm"'];

const read = new Map<string, Result<Pipe>>();

/**
 * The pipe a text names.
 *
 *   <size> <family> [condition] [rough <amount>]      6in sch40, DN150 sch40 used, 10in HDPE DR17 rough 0.05 mm
 *   [DN] [EN10220] <outside diameter>x<wall> [steel]  DN150 EN10220 168.3x4.5
 *   ID <amount> <surface, or rough amount>            ID 154.1 mm rough 0.045 mm
 *   OD <amount> wall <amount> <the same>              OD 168.3 mm wall 4.5 mm steel
 *
 * Upper or lower case and spacing do not matter. Fails with `name-unknown` and the nearest names, or says what is
 * missing: the family, the size, the roughness. Cautions where the surface leaves the roughness open.
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
 * "EN10220 seamless" and "EN10220 welded" list the usual wall of each size. Fails with the nearest families.
 */
export function pipesOf(text: string, sizes: SizeSystem = "inch", subject = "family"): Result<readonly Pipe[]> {
  const key = `${sizes} ${text}`;
  let result = listed.get(key);
  if (result === undefined) {
    result = readFamily(text, sizes);
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
  if (tidied === "")
    return fail([{ code: "left-out", severity: "error", subject: "pipe", suggestions: NAMES_THAT_DO }]);
  return measuredPipe(tidied, given) ?? metricSteelPipe(tidied, given) ?? pipeBySize(tidied, given);
}

function pipeBySize(tidied: string, given: string): Result<Pipe> {
  const { before, rough } = splitRoughness(tidied);
  const size = readSize(before);
  if (size === undefined) {
    if (familyIn(before) === undefined) return unknown("pipe", given, nearestPipes(sizeFirst(before)));
    return fail([{ code: "pipe-size-missing", severity: "error", subject: "pipe", given, suggestions: NAMES_THAT_DO }]);
  }
  if (size.rest === "") return familyMissing(size, given);
  const family = familyIn(size.rest);
  if (family === undefined) return unknown("pipe", given, nearestPipes(given, size));
  const sizes: SizeSystem = size.by === "inches" ? "inch" : "metric";
  const found = family.family.sizes.find((candidate) => isSize(candidate, size));
  if (found === undefined) return unknown("pipe", given, nearestSizes(family.family, size));
  return finish({ ...family, size: found, sizes }, rough);
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
  if (family === undefined) return unknown("pipe", given, nearestPipes(given));
  const dn = match[1] === undefined ? undefined : `DN${match[1]}`;
  const sameOutside = family.family.sizes.filter(({ variant }) => Number(variant?.split("x")[0]) === outside);
  const size = sameOutside.find(({ variant }) => Number(variant?.split("x")[1]) === wall);
  if (size !== undefined && (dn === undefined || size.size === dn)) {
    return finish({ ...family, size, sizes: "metric" }, rough);
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

interface FoundFamily {
  readonly family: PipeFamily;
  /** Word for another surface than the family's own. */
  readonly condition?: string;
}

/** The family whose words a text is made of, with at most one condition. */
function familyIn(text: string, families: readonly PipeFamily[] = PIPE_FAMILIES): FoundFamily | undefined {
  const words = readWords(text);
  if (words === undefined || words.length === 0) return undefined;
  for (const family of families) {
    if (!family.words.every((word) => words.includes(word))) continue;
    const others = [...new Set(words.filter((word) => !family.words.includes(word)))];
    const conditions = others.filter((word) => word in family.conditions);
    if (conditions.length > 1) continue;
    if (!others.every((word) => word in family.conditions || family.mayAlsoSay.includes(word))) continue;
    const [condition] = conditions;
    return condition === undefined ? { family } : { family, condition };
  }
  return undefined;
}

function readFamily(text: string, sizes: SizeSystem): Result<readonly Pipe[]> {
  const given = shortened(text);
  const families = PIPE_FAMILIES.map(({ family }) => family);
  const { before, rough } = splitRoughness(tidyPipeText(text.slice(0, LONGEST + 1)));
  const found =
    text.length > LONGEST ? undefined : (familyIn(before, PIPE_FAMILIES) ?? familyIn(before, PIPE_SELECTIONS));
  if (found === undefined) {
    const near = text.length > LONGEST ? [] : nearestNames(given, families);
    const suggestions = near.length > 0 ? near : ["sch40", "STD", "HDPE DR17", "ductile iron cl350", "layflat"];
    return unknown("family", given, suggestions.map(inQuotes));
  }
  const pipes: Pipe[] = [];
  let remarks: readonly Finding[] = [];
  for (const size of sizesIn(found.family, sizes)) {
    const pipe = finish({ ...found, size, sizes }, rough);
    if (!pipe.ok) return pipe;
    remarks = pipe.findings;
    pipes.push(pipe.value);
  }
  return succeed(
    pipes.toSorted((a, b) => a.bore - b.bore),
    remarks,
  );
}

interface PipeFacts extends FoundFamily {
  readonly size: PipeSize;
  readonly sizes: SizeSystem;
}

function finish(facts: PipeFacts, rough: string | undefined): Result<Pipe> {
  if (rough === undefined) {
    const { family, condition } = facts;
    return succeed(pipeOf(facts), surfaceRemarks(conditionOf(family, condition)?.surface ?? family.surface));
  }
  const bare = pipeOf(facts);
  const stated = readRoughness(rough, bare.bore);
  if (!stated.ok) return stated;
  // A stated roughness overrules the surface, not the corrugations.
  const remarks = bare.frictionMultiplier === undefined ? [] : surfaceRemarks(facts.family.surface);
  return succeed(pipeOf(facts, stated.value), remarks);
}

function pipeOf(facts: PipeFacts, stated?: StatedRoughness): Pipe {
  const { family, size, condition } = facts;
  const state = conditionOf(family, condition);
  const lining = (size.lining ?? 0) * (state?.linings ?? 1);
  const surface = SURFACES[state?.surface ?? family.surface];
  const { frictionMultiplier, collapsible } = family;
  const { outsideDiameter, wall } = size;
  return {
    name: stated === undefined ? nameOf(facts) : `${nameOf(facts)} ${stated.words}`,
    family: family.family,
    bore: size.bore + 2 * ((size.lining ?? 0) - lining),
    roughness: stated?.roughness ?? surface.design * unitOf("mm").factor,
    roughnessCites: stated?.cites ?? surface.cites,
    cites: family.standard,
    ...(outsideDiameter === undefined ? {} : { outsideDiameter }),
    ...(wall === undefined ? {} : { wall }),
    ...(lining === 0 ? {} : { lining }),
    ...(size.nominalInches === undefined ? {} : { nominalInches: size.nominalInches }),
    ...(frictionMultiplier === undefined ? {} : { frictionMultiplier }),
    ...(collapsible === undefined ? {} : { collapsible }),
  };
}

function conditionOf(family: PipeFamily, condition: string | undefined) {
  return condition === undefined ? undefined : family.conditions[condition];
}

function nameOf({ family, size, sizes, condition }: PipeFacts): string {
  const written = sizes === "metric" ? (size.dnSize ?? size.size) : size.size;
  return [written, family.family, size.variant, condition].filter((part) => part !== undefined).join(" ");
}

function sizesIn(family: PipeFamily, sizes: SizeSystem): readonly PipeSize[] {
  return family.sizes.filter(({ onlyIn }) => onlyIn === undefined || onlyIn === sizes);
}

/** Sizes that come in several walls are no match: the wall must be named. */
function isSize(candidate: PipeSize, { by, size }: WrittenSize): boolean {
  if (candidate.variant !== undefined) return false;
  if (by === "inches") return candidate.onlyIn !== "metric" && candidate.nominalInches === size;
  if (candidate.onlyIn === "metric") return candidate.size === `${size}mm`;
  return by === "DN" && candidate.dnSize === `DN${size}`;
}

function nearestSizes(family: PipeFamily, written: WrittenSize): readonly string[] {
  const inches = inchesWanted(written);
  const sizes: SizeSystem = written.by === "inches" ? "inch" : "metric";
  const bore = inches * unitOf("in").factor;
  const offBy = ({ nominalInches, bore: actual }: PipeSize): number =>
    nominalInches === undefined ? Math.abs(actual - bore) / unitOf("in").factor : Math.abs(nominalInches - inches);
  // Of a family with several walls a size, the usual ones.
  const several = family.sizes.some(({ variant }) => variant !== undefined);
  const candidates = several ? PIPE_SELECTIONS.flatMap((usual) => usual.sizes) : sizesIn(family, sizes);
  const names = candidates
    .toSorted((a, b) => offBy(a) - offBy(b))
    .slice(0, 8)
    .map((size) => quoted({ family, size, sizes }));
  return [...new Set(names)].slice(0, 4);
}

function inchesWanted({ by, size }: WrittenSize): number {
  if (by === "inches") return size;
  return nominalInches(size) ?? (size * unitOf("mm").factor) / unitOf("in").factor;
}

function nearestPipes(given: string, written?: WrittenSize): readonly string[] {
  const names = [...allPipes("inch"), ...allPipes("metric")].map(({ name }) => name);
  const beginning = written === undefined ? undefined : sizeWords(written);
  const sameSize = beginning === undefined ? [] : names.filter((name) => name.startsWith(`${beginning} `));
  const near = nearestNames(tidyPipeText(given), [...new Set(sameSize.length > 0 ? sameSize : names)]);
  return near.length > 0 ? near.map(inQuotes) : NAMES_THAT_DO;
}

const SIZE_LAST = /^(.*?)[ ,]+((?:dn ?|nps ?)?\d[\d./-]*(?: \d+\/\d+)? ?(?:inches|inch|in|"|mm)?)$/;

/** "layflat 6in" as "6in layflat", to find what may have been meant. */
function sizeFirst(tidied: string): string {
  const match = SIZE_LAST.exec(tidied);
  return match === null ? tidied : `${match[2]} ${match[1]}`;
}

function sizeWords({ by, size }: WrittenSize): string | undefined {
  if (by === "DN") return `DN${size}`;
  if (by === "millimetres") return `${size}mm`;
  return sizeNames.get(size);
}

/** "2-1/2in" of 2.5. */
const sizeNames = new Map(
  PIPE_FAMILIES.flatMap(({ sizes }) => sizes)
    .filter(({ size }) => size.endsWith("in"))
    .map(({ nominalInches, size }) => [nominalInches, size] as const),
);

function familyMissing(size: WrittenSize, given: string): Result<Pipe> {
  const beginning = sizeWords(size) ?? given;
  const families = size.by === "millimetres" ? ["layflat", "suction hose"] : ["sch40", "STD", "layflat"];
  const named = families.map((family) => `${beginning} ${family}`).filter((name) => readPipe(name).ok);
  const measured = size.by === "inches" ? "ID 6.065 in rough 0.0018 in" : "ID 154.1 mm rough 0.045 mm";
  const suggestions = [...named, measured].map(inQuotes);
  return fail([{ code: "pipe-family-missing", severity: "error", subject: "pipe", given, suggestions }]);
}

function unknown(subject: string, given: string, suggestions: readonly string[]): Result<never> {
  return fail([{ code: "name-unknown", severity: "error", subject, given, suggestions }]);
}

function quoted(facts: PipeFacts): string {
  return inQuotes(nameOf(facts));
}

function inQuotes(name: string): string {
  return `"${name}"`;
}

function shortened(text: string): string {
  const clean = text.trim();
  return clean.length > 60 ? `${clean.slice(0, 57)}…` : clean;
}
