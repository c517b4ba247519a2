import { nearestNames } from "../basis/nearest.ts";
import { unitOf } from "../basis/units.ts";
import { isSize, nameOf, type PipeFacts, sizesIn } from "./family-pipe.ts";
import { nominalInches } from "./nominal-size.ts";
import { PIPE_FAMILIES, PIPE_SELECTIONS } from "./pipe-families.ts";
import type { PipeFamily, PipeSize, SizeSystem } from "./pipe-family.ts";
import { readSize, readWords, tidyPipeText, type WrittenSize } from "./pipe-words.ts";

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
const USUAL_SIZES = ["6in", "DN150"];

/** Of all names, those of the size written, or of a usual size, that resemble a text most; quoted. */
export function nearestPipes(all: readonly string[], given: string): readonly string[] {
  const tidied = sizeFirst(tidyPipeText(given));
  const written = readSize(tidied);
  const size = written === undefined ? undefined : sizeWords(written);
  const ofSize = (sizes: readonly string[]): readonly string[] =>
    all.filter((name) => sizes.some((beginning) => name.startsWith(`${beginning} `)));
  const same = size === undefined ? [] : ofSize([size]);
  const near = nearestNames(tidied, same.length > 0 ? same : ofSize(USUAL_SIZES));
  return near.length > 0 ? near.map(inQuotes) : NAMES_THAT_DO;
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
