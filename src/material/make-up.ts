import { CELSIUS_ZERO } from "../basis/constants.ts";
import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { CONSTITUENTS, type Constituent, constituentRow } from "./constituent.ts";

/** What a text says where the liquid holds nothing but salts and solids. */
export const NOTHING_ELSE = "nothing else";

/** A name, and the rows it may mean: more than one where strength, temperature or pH decides. */
export interface NamedLiquid {
  readonly name: string;
  readonly meanings: readonly Meaning[];
}

export interface Meaning {
  readonly row: Constituent;
  /** It means this row only when hotter, K. */
  readonly above?: number;
}

/** What else is in the liquid; nothing named means nothing but salts and solids. */
export interface MakeUp {
  readonly named: readonly NamedLiquid[];
  /** It stands in the pump for long. */
  readonly isStanding: boolean;
}

const SULPHURIC = [
  "sulphuric acid to 1 %",
  "sulphuric acid 1 to 5 %",
  "sulphuric acid 5 to 10 %",
  "sulphuric acid 10 to 70 %",
  "sulphuric acid 70 to 90 %",
  "sulphuric acid 93 to 98 %",
];
const WEAK_CAUSTIC = "caustic soda to 30 %";
const STRONG_CAUSTIC = "caustic soda 30 to 50 %";
const HOT = { "sea water, warm or stagnant": 20, "caustic soda, hot": 50 } as const;

/** Names that mean several rows. What is stated of pH, temperature and chloride decides; as far as it does not, the worst. */
const SEVERAL: readonly (readonly [names: string, rows: readonly string[]])[] = [
  ["sulphuric acid; h2so4", SULPHURIC],
  ["sea water; seawater; salt water; marine", ["sea water, cold and flowing", "sea water, warm or stagnant"]],
  ["caustic; caustic soda; sodium hydroxide; naoh", [WEAK_CAUSTIC, STRONG_CAUSTIC, "caustic soda, hot"]],
  [
    "raffinate; leach solution; leach liquor; pls; pregnant leach solution",
    ["copper raffinate or leach liquor, low chloride", "copper raffinate or leach liquor, with chloride"],
  ],
  ["ferric; ferric solution", ["ferric sulphate solution", "ferric chloride solution"]],
  ["mine water", ["acid mine water", "mine water, weakly acid", "mine water, saline neutral"]],
  ["tailings; mill slurry", ["tailings, neutral", "tailings, acid"]],
  [
    "sulphate; sulphates",
    [
      "ferric sulphate solution",
      "aluminium sulphate solution",
      "copper sulphate solution",
      "mine water, weakly acid",
      "mine water, saline neutral",
    ],
  ],
];

/** Further words for one row. */
const ONE: readonly (readonly [names: string, row: string])[] = [
  ["diesel; diesel oil; fuel; hydrocarbon", "oil"],
  ["sewage; municipal sewage; sanitary sewage", "sewage, fresh"],
  ["sewage with hydrogen sulphide", "sewage, septic with hydrogen sulphide"],
  ["hydrogen sulphide", "hydrogen sulphide, sour service"],
  ["hypochlorite solution; sodium hypochlorite", "sodium hypochlorite 10 to 15 %"],
  ["nitric acid", "nitric acid to 20 %"],
  ["phosphoric acid", "phosphoric acid to 50 %"],
  ["gypsum", "flue-gas gypsum slurry"],
];

/** Rows by strength in per cent: each to its figure, the next above it. */
const STRENGTHS: readonly (readonly [names: string, rows: readonly (readonly [to: number, row: string])[]])[] = [
  [
    "sulphuric acid; h2so4",
    [1, 5, 10, 70, 93, 98].map((to, i): readonly [number, string] => [to, SULPHURIC[i] as string]),
  ],
  [
    "caustic; caustic soda; sodium hydroxide; naoh",
    [
      [30, WEAK_CAUSTIC],
      [50, STRONG_CAUSTIC],
    ],
  ],
  ["nitric acid; hno3", [[20, "nitric acid to 20 %"]]],
  ["phosphoric acid; h3po4", [[50, "phosphoric acid to 50 %"]]],
];

const STANDING_WORDS = new Set(["stagnant", "standing", "standing water", "stagnant water"]);
const NOTHING_WORDS = new Set([NOTHING_ELSE, "none", "nothing"]);

/** One way of writing: no case, commas, brackets or "and"; British spelling. */
function tidy(text: string): string {
  return inBritish(text.toLowerCase())
    .replace(/[,;()/-]|\band\b/g, " ")
    .replace(/(\d) ?%/g, "$1 %")
    .replace(/\s+/g, " ")
    .trim();
}

const names = (list: string): readonly string[] => list.split("; ").map(tidy);

const known = new Map<string, NamedLiquid>([
  ...CONSTITUENTS.flatMap((row) =>
    [row.name, ...row.otherNames].map((name) => [tidy(name), { name: row.name, meanings: [{ row }] }] as const),
  ),
  ...ONE.flatMap(([list, row]) =>
    names(list).map((name) => [name, { name: row, meanings: [{ row: constituentRow(row) }] }] as const),
  ),
  ...SEVERAL.flatMap(([list, rows]) => {
    const meanings = rows.map((name): Meaning => {
      const above = Object.hasOwn(HOT, name) ? HOT[name as keyof typeof HOT] : undefined;
      return { row: constituentRow(name), ...(above !== undefined && { above: above + CELSIUS_ZERO }) };
    });
    const [first = ""] = names(list);
    return names(list).map((name) => [name, { name: first, meanings }] as const);
  }),
]);

const BY_STRENGTH = STRENGTHS.map(([list, rows]) => [names(list), rows] as const);

/** Every name offered: those of the table, and those that mean several of its rows. */
export const CONSTITUENT_NAMES: readonly string[] = [
  ...CONSTITUENTS.map(({ name }) => name),
  ...SEVERAL.map(([list]) => names(list)[0] as string),
];

function namedLiquid(written: string): NamedLiquid | undefined {
  const found = known.get(written);
  if (found !== undefined) return found;
  // "ethylene glycol 40 %", "sea water 38 g/kg": how much of it does not change what it is, but for acids and caustic.
  const plain = written.replace(/ \d.*$/, "");
  if (!BY_STRENGTH.some(([list]) => list.includes(plain)) && known.has(plain)) return known.get(plain);
  const strength = /^(?:(.+) )?(\d+(?:\.\d+)?) %(?: (.+))?$/.exec(written);
  if (strength === null) return undefined;
  const base = `${strength[1] ?? ""} ${strength[3] ?? ""}`.trim();
  const rows = BY_STRENGTH.find(([list]) => list.includes(base))?.[1];
  const row = rows?.find(([to]) => Number(strength[2]) <= to)?.[1];
  return row === undefined ? undefined : { name: row, meanings: [{ row: constituentRow(row) }] };
}

/**
 * Reads "acid mine water", "sewage, diesel" or "nothing else": names of the table, its other names and formulas, with a
 * strength for sulphuric, nitric and phosphoric acid and caustic ("sulphuric acid 5 %"); commas, semicolons or "and"
 * between; "standing" where the liquid stays in the pump.
 * Fails: `name-unknown`, with the nearest names; `make-up-contradicts` where "nothing else" stands beside something.
 */
export function makeUpNamed(text: string, subject: string): Result<MakeUp> {
  const read = readMakeUp(text);
  if ("named" in read) return succeed(read);
  const { unknown } = read;
  if (unknown === undefined) {
    return fail([{ code: "make-up-contradicts", kind: "error", subject, given: text.trim() }]);
  }
  const near = nearestNames(unknown.slice(0, 60), [NOTHING_ELSE, ...known.keys()]);
  const suggestions = near.length > 0 ? near : [NOTHING_ELSE, ...COMMON];
  return fail([{ code: "name-unknown", kind: "error", subject, given: unknown, suggestions }]);
}

/** The same of a text that need name nothing, such as "water": nothing where `makeUpNamed` fails, and no name is looked for. */
export function makeUpIn(text: string): MakeUp | undefined {
  const read = readMakeUp(text);
  return "named" in read ? read : undefined;
}

/** What a text names; else the first part that is unknown, or none where its parts contradict one another. */
function readMakeUp(text: string): MakeUp | { readonly unknown: string | undefined } {
  const parts = text
    .slice(0, 400)
    .split(/[,;+&]|\band\b/i)
    .map(tidy)
    .filter((part) => part !== "");
  if (parts.length === 0) return { unknown: text.trim() };
  const named = new Map<string, NamedLiquid>();
  let [isNothing, isStanding] = [false, false];
  for (let from = 0; from < parts.length; ) {
    // A name of the table may hold a comma: the longest run of parts that is one counts.
    const to = [4, 3, 2, 1].find((length) => namedLiquid(parts.slice(from, from + length).join(" ")) !== undefined);
    const part = parts[from] as string;
    if (to !== undefined) {
      const found = namedLiquid(parts.slice(from, from + to).join(" ")) as NamedLiquid;
      named.set(found.name, found);
    } else if (NOTHING_WORDS.has(part)) isNothing = true;
    else if (STANDING_WORDS.has(part)) isStanding = true;
    else return { unknown: part };
    from += to ?? 1;
  }
  if (isNothing && named.size > 0) return { unknown: undefined };
  return { named: [...named.values()], isStanding };
}

const COMMON = ["acid mine water", "raw sewage", "sea water", "brine", "caustic soda", "diesel", "hydrogen sulphide"];
