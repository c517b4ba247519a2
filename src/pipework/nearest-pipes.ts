import { nearestNames } from "../basis/nearest.ts";
import { unitOf } from "../basis/units.ts";
import { isSize, nameOf, type PipeFacts, sizesIn } from "./family-pipe.ts";
import { nominalInches } from "./nominal-size.ts";
import { PIPE_FAMILIES, PIPE_SELECTIONS } from "./pipe-families.ts";
import type { PipeFamily, PipeSize, SizeSystem } from "./pipe-family.ts";
import { readSize, readWords, sizeWithin, tidyPipeText, type WrittenSize } from "./pipe-words.ts";

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;

/** One name of each kind, for a text that resembles none. */
export const NAMES_THAT_DO: readonly string[] = [
  '"6in sch40"',
  '"DN150 sch40"',
  '"10in HDPE DR17"',
  '"ID 154.1 mm rough 0.045 mm"',
];

/** The sizes of a family nearest the one written, quoted. */
export function nearestSizes(family: PipeFamily, written: WrittenSize): readonly string[] {
  const inches = inchesWanted(written);
  const sizes: SizeSystem = written.by === "inches" ? "inch" : "metric";
  const bore = inches * inch;
  const byDiameter = written.by !== "inches" && sizes === "metric" ? written.size : undefined;
  const offBy = ({ size, nominalInches, bore: actual }: PipeSize): number =>
    byDiameter !== undefined && size.endsWith("mm")
      ? Math.abs(Number.parseFloat(size) - byDiameter)
      : nominalInches === undefined
        ? Math.abs(actual - bore) / inch
        : Math.abs(nominalInches - inches);
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
  return nominalInches(size) ?? (size * millimetre) / inch;
}

/** For a known family with a word too many: its plain name, its conditions, and how to state a roughness. */
export function namesWithoutSpareWords(size: WrittenSize, sizes: SizeSystem): readonly string[] {
  const words = readWords(size.rest) ?? [];
  const holding = PIPE_FAMILIES.filter((family) => family.words.every((word) => words.includes(word)));
  const [family] = holding.toSorted((a, b) => b.words.length - a.words.length);
  const found = family?.sizes.find((candidate) => isSize(candidate, size));
  if (family === undefined || found === undefined) return [];
  const plain = { family, size: found, sizes };
  const conditions = Object.keys(family.conditions).slice(0, 2);
  return [
    nameOf(plain),
    ...conditions.map((condition) => nameOf({ ...plain, condition })),
    `${nameOf(plain)} rough 0.15 mm`,
  ].map(inQuotes);
}

/** Every family is shown in one of these sizes, so a text without a size is compared with few names. */
const USUAL_SIZES = ["6in", "DN150", "160mm", "150mm"];

/** What a text asks for, whatever its slip, the names that are of the same kind, and families of it that are usual. */
const KINDS: readonly (readonly [asked: RegExp, named: RegExp, usual: readonly string[]])[] = [
  [/\bdips\b/, / HDPE DIPS /, ["HDPE DIPS DR17", "HDPE DIPS DR11"]],
  [
    /hdpe|pehd|pead|mdpe|hppe|\bpoly\b|polyethylene|\bpe ?-?\d*\b/,
    / HDPE (?!DIPS)/,
    ["HDPE DR17", "HDPE DR11", "HDPE SDR17", "HDPE SDR11"],
  ],
  [/hose|lay-?flat/, / (?:.* )?(?:hose|layflat)/, ["layflat", "suction hose", "discharge hose"]],
  [/c-?90[05]/, / PVC C900 /, ["PVC C900 DR18", "PVC C900 DR25"]],
  [
    /pvc|\bsdr[- ]?35\b|sewer pipe/,
    / PVC(?! layflat| suction)/,
    ["PVC sch40", "PVC DR21", "PVC C900 DR18", "PVC-U SDR26"],
  ],
  [/\bs?dr[- ]?\d/, / (?:HDPE|PVC)/, []],
  [
    /ductile|\bdip?\b|\bk ?9\b|\bc ?(?:25|30|40)\b/,
    / ductile iron /,
    ["ductile iron cl350", "ductile iron cl250", "ductile iron K9", "ductile iron C30"],
  ],
  [/copper/, / copper /, ["copper L"]],
  [/concrete|\brcp\b/, / concrete/, ["concrete"]],
  [/quick|alumin|irrigation|\bqd\b/, / quick-connect /, ["quick-connect galvanised", "quick-connect aluminium"]],
  [/steel|\bsch|\bstd\b|\bxs\b|\bs40\b|en ?10220/, / (?:sch|STD|XS|XXS|EN10220)/, ["sch40", "STD"]],
];

/** Materials that no table here holds: such pipe is stated as measured, and no other is offered for it. */
const UNTABLED =
  /\b(?:cmp|corrugated metal|frp|grp|fib(?:re|er)glass|asbestos|ac pipe|cast iron|ci|clay|vcp|wood|abs|polypropylene|pp|brass)\b/;

/** Such a pipe as measured: the form, not its figures. */
const AS_MEASURED = NAMES_THAT_DO.slice(-1);

/** Of all names, those of the kind and of the size written, or of a usual size, that resemble a text most; quoted. */
export function nearestPipes(all: readonly string[], given: string): readonly string[] {
  const words = tidyPipeText(given);
  if (UNTABLED.test(words)) return AS_MEASURED;
  const written = readSize(words) ?? sizeWithin(words) ?? readSize(words.replace(BARE_SIZE, "$1in "));
  const size = written === undefined ? undefined : sizeWords(written);
  const [, kind, usual] = KINDS.find(([asked]) => asked.test(words)) ?? [/./, /./, []];
  const ofKind = all.filter((name) => kind.test(name));
  const ofSize = (sizes: readonly string[]): readonly string[] =>
    ofKind.filter((name) => sizes.some((beginning) => name.startsWith(`${beginning} `)));
  const same = size === undefined ? [] : ofSize([size]);
  const ratio = Number(RATIO.exec(words)?.[1]);
  if (ratio > 0 && same.length > 0) {
    const off = (name: string): number =>
      Math.abs(Number(NAMED_RATIO.exec(name)?.[1] ?? Number.POSITIVE_INFINITY) - ratio);
    return same
      .toSorted((a, b) => off(a) - off(b))
      .slice(0, 3)
      .map(inQuotes);
  }
  const near = alike(size === undefined ? words : (written?.rest ?? ""), same.length > 0 ? same : ofSize(USUAL_SIZES));
  if (near.length > 0) return near.map(inQuotes);
  const metric = written?.by === "millimetres" ? [`DN${written.size}`] : [];
  const usualNames = [...(size === undefined ? [] : [size]), ...metric, ...USUAL_SIZES].map((beginning) =>
    usual.map((family) => `${beginning} ${family}`).filter((name) => ofKind.includes(name)),
  );
  return usualNames.find((names) => names.length > 0)?.map(inQuotes) ?? NAMES_THAT_DO;
}

/** Names whose words behind the size resemble those of a text: a size alone resembles nothing. */
function alike(rest: string, names: readonly string[]): readonly string[] {
  const byFamily = new Map(names.toReversed().map((name) => [name.slice(name.indexOf(" ") + 1), name]));
  return nearestNames(rest, [...byFamily.keys()].toReversed()).map((family) => byFamily.get(family) as string);
}

const BARE_SIZE = /^(\d+(?:[- ]\d+\/\d+|\.\d+|\/\d+)?) (?=[a-z])/;

const NAMED_RATIO = /DR(\d+(?:\.\d+)?)/;
const RATIO = /\bs?dr[- ]?(\d+(?:\.\d+)?)\b/;

/** Sewer pipe, whose outside diameters are its own. */
const SEWER = /\bsdr[- ]?35\b/;

/** Plastic pipe that no table has, as measured: its outside diameter, and the least wall of its ratio; quoted. */
export function measuredInstead(written: WrittenSize, rest: string): readonly string[] {
  const ratio = Number(RATIO.exec(rest)?.[1]);
  const material = /pvc|c-?90[05]/.test(rest) ? "PVC" : "HDPE";
  const isInch = written.by === "inches";
  const kind = /c-?90[05]/.test(rest) ? /^PVC C900/ : material === "PVC" ? /^PVC DR/ : /^HDPE DR/;
  const tabled = PIPE_FAMILIES.find(
    ({ family, sizes }) => kind.test(family) && sizes.some((one) => isSize(one, written)),
  );
  const outside = isInch
    ? tabled?.sizes.find((one) => isSize(one, written))?.outsideDiameter
    : written.size * millimetre;
  if (!(ratio > 2) || outside === undefined || SEWER.test(rest)) return [];
  const unit = isInch ? inch : millimetre;
  const places = isInch ? 1000 : 10;
  const wall = Math.ceil((outside / unit / ratio) * places - 1e-6) / places;
  return [
    inQuotes(
      `OD ${Number((outside / unit).toFixed(3))} ${isInch ? "in" : "mm"} wall ${wall} ${isInch ? "in" : "mm"} ${material}`,
    ),
  ];
}

/** A size as the names write it, where any has it. */
export function sizeWords({ by, size }: WrittenSize): string | undefined {
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

/** A name as a suggestion shows it. */
export function quoted(facts: PipeFacts): string {
  return inQuotes(nameOf(facts));
}

/** A name between the quotes that suggestions carry. */
export function inQuotes(name: string): string {
  return `"${name}"`;
}
