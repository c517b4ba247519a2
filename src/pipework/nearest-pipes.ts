import { nearestNames } from "../basis/nearest.ts";
import { unitOf } from "../basis/units.ts";
import { isSize, nameOf, type PipeFacts, sizesIn } from "./family-pipe.ts";
import { nominalInches } from "./nominal-size.ts";
import { PIPE_FAMILIES, PIPE_SELECTIONS } from "./pipe-families.ts";
import type { PipeFamily, PipeSize, SizeSystem } from "./pipe-family.ts";
import { readSize, readWords, tidyPipeText, type WrittenSize } from "./pipe-words.ts";

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

/** What a text asks for, whatever its slip, and the names that are of the same kind. */
const KINDS: readonly (readonly [asked: RegExp, named: RegExp])[] = [
  [/hdpe|pehd|pead|polyethylene|\bpe ?-?\d*\b/, / HDPE /],
  [/c-?90[05]/, / PVC C900 /],
  [/pvc/, / PVC/],
  [/\bs?dr ?\d/, / (?:HDPE|PVC)/],
  [/ductile|\bdi\b|\bk ?9\b|\bc ?(?:25|30|40)\b/, / ductile iron /],
  [/copper/, / copper /],
  [/hose|lay-?flat/, / (?:.* )?(?:hose|layflat)/],
  [/concrete|\brcp\b/, / concrete/],
  [/quick|alumin/, / quick-connect /],
  [/steel|\bsch|\bstd\b|\bxs\b|en ?10220/, / (?:sch|STD|XS|XXS|EN10220)/],
];

/** Of all names, those of the kind and of the size written, or of a usual size, that resemble a text most; quoted. */
export function nearestPipes(all: readonly string[], given: string): readonly string[] {
  const tidied = sizeFirst(tidyPipeText(given));
  const written = readSize(tidied);
  const size = written === undefined ? undefined : sizeWords(written);
  const kind = KINDS.find(([asked]) => asked.test(tidied))?.[1] ?? /./;
  const ofKind = all.filter((name) => kind.test(name));
  const ofSize = (sizes: readonly string[]): readonly string[] =>
    ofKind.filter((name) => sizes.some((beginning) => name.startsWith(`${beginning} `)));
  const same = size === undefined ? [] : ofSize([size]);
  const ratio = Number(RATIO.exec(tidied)?.[1]);
  if (ratio > 0 && same.length > 0) {
    const off = (name: string): number =>
      Math.abs(Number(NAMED_RATIO.exec(name)?.[1] ?? Number.POSITIVE_INFINITY) - ratio);
    return same
      .toSorted((a, b) => off(a) - off(b))
      .slice(0, 3)
      .map(inQuotes);
  }
  const near = nearestNames(tidied, same.length > 0 ? same : ofSize(USUAL_SIZES));
  return near.length > 0 ? near.map(inQuotes) : NAMES_THAT_DO;
}

const NAMED_RATIO = /DR(\d+(?:\.\d+)?)/;
const RATIO = /\bs?dr ?(\d+(?:\.\d+)?)\b/;

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
  if (!(ratio > 2) || outside === undefined) return [];
  const unit = isInch ? inch : millimetre;
  const places = isInch ? 1000 : 10;
  const wall = Math.ceil((outside / unit / ratio) * places - 1e-6) / places;
  return [
    inQuotes(
      `OD ${Number((outside / unit).toFixed(3))} ${isInch ? "in" : "mm"} wall ${wall} ${isInch ? "in" : "mm"} ${material}`,
    ),
  ];
}

const SIZE_LAST = /^(.*?)[ ,]+((?:dn ?|nps ?)?\d[\d./-]*(?: \d+\/\d+)? ?(?:inches|inch|in|"|mm)?)$/;

/** "layflat 6in" as "6in layflat", to find what may have been meant. */
function sizeFirst(tidied: string): string {
  const match = SIZE_LAST.exec(tidied);
  return match === null ? tidied : `${match[2]} ${match[1]}`;
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
