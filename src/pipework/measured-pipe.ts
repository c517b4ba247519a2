import type { Citation } from "../basis/citation.ts";
import { outOfRange } from "../basis/method.ts";
import { readQuantity, readWrittenAmount, unitsThatDo } from "../basis/quantity-text.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { CORRUGATION_FACTOR, SURFACES, type Surface, type SurfaceName } from "../tables/roughness.ts";
import { STEEL_PIPE_B36_10M } from "../tables/steel-pipe-b36-10m.ts";
import { inchesOf } from "./nominal-size.ts";
import type { Pipe } from "./pipe.ts";
import type { PipeMake } from "./pipe-make.ts";

const STATED: Citation = { source: "stated", at: "measured pipe" };
const STATED_ROUGHNESS: Citation = { source: "stated", at: "roughness" };

/** m. Wider than any pipe a pump is piped up with: a slip of the unit. */
const GREATEST_BORE = 10;

/** Other ways of writing the surfaces, without spaces. */
const SURFACE_SPELLINGS: Readonly<Record<string, SurfaceName>> = {
  commercialsteel: "steel",
  newsteel: "steel",
  steelnew: "steel",
  steelused: "used steel",
  steelold: "old steel",
  stainless: "stainless steel",
  galvanised: "galvanised steel",
  galvanisediron: "galvanised steel",
  pvc: "plastic",
  hdpe: "polyethylene",
  pe: "polyethylene",
  copper: "drawn tube",
  brass: "drawn tube",
  glass: "drawn tube",
  asphaltedcastiron: "asphalted iron",
  cementlined: "cement lining",
  hose: "smooth hose",
  cementlinedsteel: "lined steel",
  steelcementlined: "lined steel",
};
const surfaceBySpelling = new Map<string, SurfaceName>([
  ...(Object.keys(SURFACES) as SurfaceName[]).map((name) => [name.replace(/ /g, ""), name] as const),
  ...Object.entries(SURFACE_SPELLINGS),
]);

/** What a surface is of, and the rule that rates such pipe by its measured wall; of polyethylene the lower of two. */
const SURFACE_MAKES: readonly (readonly [surface: RegExp, make: PipeMake])[] = [
  [/hose$/, { material: "hose", rule: "hose" }],
  [/^stainless steel$/, { material: "stainless steel", rule: "ASME B31.3" }],
  [/steel$/, { material: "steel", rule: "ASME B31.3" }],
  [/^(?:asphalted iron|cement lining)$/, { material: "ductile iron" }],
  [/cast iron$/, { material: "cast iron" }],
  [/^plastic$/, { material: "PVC" }],
  [/^polyethylene$/, { material: "HDPE", rule: "ASTM F714" }],
  [/^concrete/, { material: "concrete" }],
  [/^aluminium/, { material: "aluminium" }],
];

/** Roughness of a pipe as its text states it: in m, with the words that state it again. */
export interface StatedRoughness {
  readonly roughness: number;
  readonly words: string;
  readonly cites: Citation;
}

/** Splits "6in sch40 rough 0.15 mm" before "rough". */
export function splitRoughness(tidied: string): { readonly before: string; readonly rough: string | undefined } {
  const match = /^(.*?)[ ,]*rough(?:ness)?[ =:]*(.*)$/.exec(tidied);
  if (match === null) return { before: tidied, rough: undefined };
  return { before: match[1] as string, rough: match[2] as string };
}

/**
 * Reads "0.15 mm" as the roughness of a pipe of this bore [m].
 * Fails: as `readQuantity`; out-of-range below 0 and from half the bore on.
 */
export function readRoughness(text: string, bore: number): Result<StatedRoughness> {
  const subject = "roughness of the pipe";
  const read = readQuantity(text, "size", subject);
  if (!read.ok) return read;
  const roughness = read.value;
  if (roughness < 0) return fail([outOfRange(subject, "size", roughness, "at least", 0)]);
  if (roughness >= bore / 2) return fail([outOfRange(subject, "size", roughness, "below", bore / 2)]);
  return succeed({ roughness, words: `rough ${asWritten(text)}`, cites: STATED_ROUGHNESS });
}

/**
 * A pipe by its measured dimensions: "ID 154.1 mm rough 0.045 mm", "OD 168.3 mm wall 4.5 mm steel", '24" OD x .375" wall steel'. Nothing where the
 * text is no measured pipe.
 * Fails: pipe-roughness-missing; name-unknown for a surface; out-of-range dimensions; as `readQuantity`.
 * Warns: bore-is-nominal, surface-uncertain, hose-corrugated.
 */
export function measuredPipe(tidied: string, given: string): Result<Pipe> | undefined {
  const { before, rough } = splitRoughness(tidied);
  const inside = /^(?:i\.?d\.?(?![a-z])|inside dia(?:meter)?|bore)[ =:]*(.*)$/.exec(before);
  if (inside !== null) return byBore(inside[1] as string, rough, given);
  const outside = /^(?:o\.?d\.?(?![a-z])|outside dia(?:meter)?)[ =:]*(.*?)[ ,x]*(?:wall|wt)[ =:]*(.*)$/.exec(before);
  if (outside !== null) return byWall(outside[1] as string, outside[2] as string, rough, given);
  const behind = LABELS_BEHIND.exec(before);
  if (behind !== null) return byWall(behind[1] as string, `${behind[2]}${behind[3]}`, rough, given);
  return undefined;
}

const LENGTH = String.raw`((?:\d+[- ])?(?:\d+\/\d+|\d*\.?\d+) ?(?:in\b\.?|inch(?:es)?|"|mm))`;
/** '24" OD x .375" wall steel': the words behind their amounts. */
const LABELS_BEHIND = new RegExp(`^${LENGTH} ?o\\.?d\\.?[ ,x]*${LENGTH} ?(?:wall|w\\.?t\\.?)(?: thick(?:ness)?)?(.*)$`);

function byBore(dimensions: string, rough: string | undefined, given: string): Result<Pipe> {
  const { amount, words } = splitSurface(dimensions, rough);
  const bore = readQuantity(amount, "size", "bore of the pipe");
  if (!bore.ok) return bore;
  if (bore.value <= 0) return fail([outOfRange("bore of the pipe", "size", bore.value, "above", 0)]);
  if (bore.value > GREATEST_BORE)
    return fail([outOfRange("bore of the pipe", "size", bore.value, "at most", GREATEST_BORE)]);
  const name = `ID ${asWritten(amount)}`;
  return finished({ name, bore: bore.value, words, rough, given, remarks: nominalRemark(amount) });
}

function byWall(outside: string, rest: string, rough: string | undefined, given: string): Result<Pipe> {
  const { amount, words } = splitSurface(rest, rough);
  const outsideDiameter = readQuantity(outside, "size", "outside diameter of the pipe");
  if (!outsideDiameter.ok) return outsideDiameter;
  const wall = readQuantity(amount, "size", "wall of the pipe");
  if (!wall.ok) return wall;
  const most = GREATEST_BORE;
  if (outsideDiameter.value <= 0) {
    return fail([outOfRange("outside diameter of the pipe", "size", outsideDiameter.value, "above", 0)]);
  }
  if (outsideDiameter.value > most) {
    return fail([outOfRange("outside diameter of the pipe", "size", outsideDiameter.value, "at most", most)]);
  }
  if (wall.value <= 0) return fail([outOfRange("wall of the pipe", "size", wall.value, "above", 0)]);
  if (wall.value >= outsideDiameter.value / 2) {
    return fail([outOfRange("wall of the pipe", "size", wall.value, "below", outsideDiameter.value / 2)]);
  }
  return finished({
    name: `OD ${asWritten(outside)} wall ${asWritten(amount)}`,
    bore: outsideDiameter.value - 2 * wall.value,
    outsideDiameter: outsideDiameter.value,
    wall: wall.value,
    words,
    rough,
    given,
    remarks: [],
  });
}

interface Measured {
  readonly name: string;
  readonly bore: number;
  readonly outsideDiameter?: number;
  readonly wall?: number;
  readonly words: string;
  readonly rough: string | undefined;
  readonly given: string;
  readonly remarks: readonly Finding[];
}

function finished({ name, words, rough, given, remarks, ...dimensions }: Measured): Result<Pipe> {
  const pipe = { family: "measured", cites: STATED, ...dimensions };
  if (rough !== undefined) {
    const stated = readRoughness(rough, dimensions.bore);
    if (!stated.ok) return stated;
    const { roughness, cites } = stated.value;
    return succeed({ ...pipe, name: `${name} ${stated.value.words}`, roughness, roughnessCites: cites }, remarks);
  }
  const surface = surfaceBySpelling.get(words.replace(/[ ,]/g, ""));
  if (surface === undefined) {
    const suggestions = [`"${name} rough 0.045 mm"`, `"${name} steel"`, `"${name} concrete"`];
    if (words === "")
      return fail([{ code: "pipe-roughness-missing", kind: "error", subject: "pipe", given, suggestions }]);
    return fail([{ code: "name-unknown", kind: "error", subject: "surface of the pipe", given: words, suggestions }]);
  }
  return succeed(
    {
      ...pipe,
      name: `${name} ${surface}`,
      ...madeOf(surface, dimensions),
      roughness: SURFACES[surface].design * unitOf("mm").factor,
      roughnessCites: SURFACES[surface].cites,
      ...(surface === "corrugated hose" ? { frictionMultiplier: CORRUGATION_FACTOR.taken } : {}),
    },
    [...(surface.endsWith("steel") ? remarks : []), ...surfaceRemarks(surface)],
  );
}

/** What the surface says the pipe is made of; the wall typed counts as the least wall, and a ratio follows from it. */
function madeOf(
  surface: SurfaceName,
  { outsideDiameter, wall }: Pick<Measured, "outsideDiameter" | "wall">,
): { readonly make?: PipeMake } {
  const make = SURFACE_MAKES.find(([words]) => words.test(surface))?.[1];
  if (make === undefined) return {};
  if (make.rule === undefined || wall === undefined || outsideDiameter === undefined) {
    return { make: { material: make.material } };
  }
  if (make.material !== "HDPE") return { make };
  return { make: { ...make, dimensionRatio: outsideDiameter / wall, leastWall: wall } };
}

/** "300 mm concrete" into the amount and the words after it. With a roughness stated, all of it is the amount. */
function splitSurface(text: string, rough: string | undefined): { readonly amount: string; readonly words: string } {
  if (rough !== undefined) return { amount: text, words: "" };
  const match =
    /^([-+]?[\d.,]+(?:e[-+]?\d+)? ?(?:mm|cm|inches|inch|in\.?|feet|foot|ft|metres?|meters?|m|"|')?)[ ,]*(.*)$/.exec(
      text,
    );
  return match === null ? { amount: text, words: "" } : { amount: match[1] as string, words: match[2] as string };
}

/** What a surface leaves to be checked. Warns: surface-uncertain, hose-corrugated. */
export function surfaceRemarks(surface: SurfaceName): readonly Finding[] {
  if (surface === "corrugated hose") {
    const { taken, least, greatest } = CORRUGATION_FACTOR;
    const { cites } = SURFACES[surface];
    return [{ code: "hose-corrugated", kind: "check", subject: "pipe", cites, facts: { taken, least, greatest } }];
  }
  const { uncertain, design, least, greatest, cites }: Surface = SURFACES[surface];
  if (uncertain === undefined) return [];
  const size = (millimetres: number) => ({ quantity: "size", value: millimetres * unitOf("mm").factor }) as const;
  const facts = { surface, taken: size(design), least: size(least), greatest: size(greatest) };
  return [{ code: "surface-uncertain", kind: "check", subject: "pipe", cites, facts }];
}

/** "ID 6 in" may be the nominal size of a steel pipe whose bore is 6.065 in. */
function nominalRemark(amount: string): readonly Finding[] {
  const written = readWrittenAmount(amount, "pipe", "");
  if (!written.ok || written.value.unit.symbol !== "in") return [];
  const inches = written.value.value;
  const row = STEEL_PIPE_B36_10M.find(
    ([nps, , , names]) => names.split(" ").includes("40") && inchesOf(nps) === inches,
  );
  if (row === undefined) return [];
  const [nps, outsideDiameter, wall] = row;
  const bore = (outsideDiameter - 2 * wall) * unitOf("in").factor;
  const facts = { bore: { quantity: "size", value: bore } } as const;
  return [{ code: "bore-is-nominal", kind: "check", subject: "pipe", facts, suggestions: [`"${nps}in sch40"`] }];
}

/** "0.15 mm": the amount as it stands in a name. Only for a text already read. */
function asWritten(text: string): string {
  const read = readWrittenAmount(text, "pipe", unitsThatDo("size"));
  if (!read.ok) return text;
  const { value, unit } = read.value;
  return `${value} ${unit.symbol}`;
}
