import { inBritish } from "../basis/spelling.ts";

/**
 * Words of a pipe's family and condition in a text without spaces, lower case. Each rule reads from where the one
 * before ended; the first that fits wins, so longer words stand before the shorter they begin with.
 */
const RULES: readonly (readonly [RegExp, (match: RegExpExecArray) => string | readonly string[]])[] = [
  [/(?:asme|ansi)?b36\.?(?:10|19)m?/y, () => "pipe"],
  [/(?:schedule|sched\.?|sch\.?)(std|xxs|xs)/y, (m) => m[1] as string],
  [/(?:schedule|sched\.?|sch\.?)(\d+)(s(?![ts]))?/y, (m) => `sch${m[1]}${m[2] ?? ""}`],
  [/(5|10|40|80)s(?![ts])/y, (m) => `sch${m[1]}s`],
  [/doubleextra(?:strong|heavy)|xxs|xxh/y, () => "xxs"],
  [/extra(?:strong|heavy)|xs|xh/y, () => "xs"],
  [/standard-?duty/y, () => "standardduty"],
  [/heavy-?duty/y, () => "heavyduty"],
  [/soft-?wall/y, () => "softwall"],
  [/(?:hard-?wall|wirehelix|helix)/y, () => "helix"],
  [/(?:wall([abc])|([abc])wall)(?![a-z])/y, (m) => `wall${m[1] ?? m[2]}`],
  [/standard|std\.?/y, () => "std"],
  [/weight|wt\.?|wall/y, () => "pipe"],
  [/pvc-u|u-?pvc|pvc/y, () => "pvc"],
  [/pe-?(4710|3608|3408|100|80)(?:-?rc(?![a-z]))?/y, (m) => ["hdpe", `PE${m[1]}`]],
  [/hdpe|pehd|pead|poly(?:ethylene)?(?=$|[^a-z]|pipe|i?ps|s?dr)|pe(?!\d)/y, () => "hdpe"],
  [/(?:butt-?)?fus(?:ion|ed)/y, () => "pipe"],
  [/dips/y, () => "dips"],
  [/ips/y, () => "ips"],
  [/(s?dr)-?(\d+(?:\.\d+)?)/y, (m) => `${m[1]}${m[2]}`],
  [/dischargehose/y, () => "dischargehose"],
  [/ductileiron|ductile|dip(?![rs])|di(?!ps)/y, () => "di"],
  [/(?:pressureclass|class|cl\.?|pc)(\d+)/y, (m) => `cl${m[1]}`],
  [/c-?90[05]/y, () => "c900"],
  [/(?:class)?k-?9(?!\d)/y, () => "k9"],
  [/(?:class)?c-?(25|30|40)(?!\d)/y, (m) => `c${m[1]}`],
  [/copper(?:tube|tubing|pipe)?(?:type)?([klm])(?![a-z])/y, (m) => `copper${m[1]}`],
  [/type([klm])copper(?:tube|tubing|pipe)?/y, (m) => `copper${m[1]}`],
  [/en10220/y, () => "en10220"],
  [/seamless/y, () => "seamless"],
  [/welded/y, () => "welded"],
  [/lay-?flat(?:hose)?/y, () => "layflat"],
  [/corrugated|corrugatedbore/y, () => "corrugated"],
  [/firehose/y, () => "firehose"],
  [/suction(?:(?:and|&|\/)discharge)?hose/y, () => "suctionhose"],
  [/smooth(?:bore)?/y, () => "smooth"],
  [/rubber/y, () => "rubber"],
  [/tpu|polyurethane|nitrile/y, () => "tpu"],
  [/cam-?lock|cam(?:and|&)groove/y, () => "camlock"],
  [/quick-?(?:connect(?:or)?|disconnect|coupling|coupled|coupler|release)/y, () => "quickconnect"],
  [/aluminium/y, () => "aluminium"],
  [/irrigation/y, () => "irrigation"],
  [/bare/y, () => "bare"],
  [/(?:reinforced)?concrete|rcp/y, () => "concrete"],
  [/hose/y, () => "hose"],
  [/stainlesssteel|stainless|ss/y, () => "stainless"],
  [/carbonsteel|carbon|cs|black|blk\.?/y, () => "carbon"],
  [/steel/y, () => "steel"],
  [/galvanised|galv\.?/y, () => "galvanised"],
  [/double-?lined|doublelining/y, () => "double lined"],
  [/cement-?(?:mortar)?/y, () => "cement"],
  [/un-?lined/y, () => "unlined"],
  [/lined/y, () => "lined"],
  [/used|worn/y, () => "used"],
  [/old/y, () => "old"],
  [/new/y, () => "new"],
  [/pipe/y, () => "pipe"],
  [/tubing|tube/y, () => "tube"],
  [/[,;()]/y, () => "pipe"],
];

/** Before the blanks go: “sch 40 316L” is no schedule 40316. */
const GRADE_OF_STAINLESS = /\b(?:tp ?)?(?:304|316)l?(?:\/l)?\b/g;

/** The words a text is made of, or nothing where some of it is none. */
export function readWords(text: string): readonly string[] | undefined {
  const letters = text.replace(GRADE_OF_STAINLESS, "stainless").replace(/\s+/g, "");
  const words: string[] = [];
  let at = 0;
  while (at < letters.length) {
    const before = at;
    for (const [rule, word] of RULES) {
      rule.lastIndex = at;
      const match = rule.exec(letters);
      if (match === null) continue;
      words.push(...[word(match)].flat());
      at = rule.lastIndex;
      break;
    }
    if (at === before) return undefined;
  }
  return words;
}

const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
};

/** One way of writing for quotes, fractions, signs, case and spelling. */
export function tidyPipeText(text: string): string {
  const tidied = text
    .replace(/(\d)?\s*([½¼¾⅛⅜⅝])/g, (_, whole: string | undefined, sign: string) =>
      whole === undefined ? (FRACTIONS[sign] as string) : `${whole}-${FRACTIONS[sign]}`,
    )
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[“”″‟]|''|’’|′′/g, '"')
    .replace(/[‐‑‒–—−]/g, "-")
    .replace(/[×✕✖]/g, "x")
    .replace(/\s+/g, " ")
    .trim();
  return inBritish(tidied);
}

/** A size at the beginning of a pipe's name, and what follows. */
export type WrittenSize = (
  | { readonly by: "inches"; readonly size: number }
  | { readonly by: "DN"; readonly size: number }
  | { readonly by: "millimetres"; readonly size: number }
) & { readonly rest: string };

const NUMBER = String.raw`(\d+[- ]\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?|\.\d+)`;
const SIZE_RULES = [
  ["inches", new RegExp(`^nps ?${NUMBER} ?(?:inches|inch|in\\b\\.?|")?`)],
  ["DN", /^dn ?(\d+)(?: ?mm)?/],
  ["DN", /^(\d+)(?: ?mm)? ?nb\b/],
  ["inches", new RegExp(`^${NUMBER}[- ]?(?:inches|inch|in\\.?|")`)],
  ["millimetres", /^(\d+(?:\.\d+)?) ?mm/],
] as const;

/** Reads "6in", "2-1/2 in", "NPS 6", "DN150" or "150mm"; nothing where the text begins with none of them. */
export function readSize(tidied: string): WrittenSize | undefined {
  for (const [by, rule] of SIZE_RULES) {
    const match = rule.exec(tidied);
    if (match === null) continue;
    return { by, size: fractionOf(match[1] as string), rest: tidied.slice(match[0].length).trim() };
  }
  return undefined;
}

/** A size inside or behind the words of a name; not a number of schedule, class or ratio before it. */
const WITHIN = new RegExp(
  `(?<![\\w./-])(?<!(?:sch|sched|schedule|dr|sdr|class|cl)\\.? ?)(?:nps ?${NUMBER}|dn ?\\d+(?: ?mm)?|\\d+(?: ?mm)? ?nb\\b|${NUMBER}[- ]?(?:inches|inch|in\\b\\.?|")|\\d+(?:\\.\\d+)? ?mm\\b)(?!\\w)`,
  "g",
);

/** The one size that stands inside a name or behind it, "C900 DR18 8 in"; nothing where there is none, or more than one. */
export function sizeWithin(tidied: string): WrittenSize | undefined {
  const [match, ...more] = tidied.matchAll(WITHIN);
  if (match === undefined || more.length > 0) return undefined;
  const size = readSize(match[0]);
  if (size === undefined) return undefined;
  const rest = `${tidied.slice(0, match.index)} ${tidied.slice(match.index + match[0].length)}`;
  return { ...size, rest: rest.replace(/\s+/g, " ").replace(/^[ ,]+|[ ,]+$/g, "") };
}

function fractionOf(written: string): number {
  return written.split(/[- ]/).reduce((sum, part) => {
    const [over, under] = part.split("/");
    return sum + Number(over) / Number(under ?? 1);
  }, 0);
}
