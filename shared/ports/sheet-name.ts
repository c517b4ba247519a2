const LONGEST = 31;

/** What no sheet name holds: []:*?/\, and what a file cannot keep. */
const REFUSED = /[[\]:*?/\\\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/** A name that a sheet may have: no []:*?/\, no quote at an end, at most 31 characters, never empty. */
export function validSheetName(wanted: string): string {
  const name = cut(bareTag(wanted), LONGEST);
  return name === "" || name.toLowerCase() === "history" ? "Calc sheet" : name;
}

/** The first of "Duty", "Duty (2)", … that no sheet has. Hosts read names without regard to case. */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n += 1) {
    const name = numbered(wanted, n);
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** The same for sheets that belong together: one number for all of them, so that they are known by it. */
export function freeSheetNames(wanted: readonly string[], taken: readonly string[]): readonly string[] {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; n <= MOST_TOGETHER; n += 1) {
    const names = wanted.map((name) => numbered(name, n));
    const keys = new Set(names.map((name) => name.toLowerCase()));
    if (keys.size === names.length && [...keys].every((key) => !used.has(key))) return names;
  }
  // Names alike in all that fits beside a number: each takes the next that is free.
  const all = [...taken];
  return wanted.map((name) => {
    const free = freeSheetName(name, all);
    all.push(free);
    return free;
  });
}

const MOST_TOGETHER = 1000;

/** Room for " (9)" after a name. */
const NUMBER_ROOM = 4;

/**
 * What a tag may come to in the name of a sheet, between so many other letters: whole words where one would be cut, and
 * a number fits after it.
 */
export function tagFor(tag: string, others: number): string {
  const room = LONGEST - NUMBER_ROOM - others;
  const clean = bareTag(tag);
  const short = cut(clean, room);
  if (short === clean || /\s/.test(clean.charAt(short.length))) return short;
  const words = cut(short, short.lastIndexOf(" "));
  return words.length >= room / 2 ? words : short;
}

/** A sheet name as it stands in a reference. */
export function quotedSheetName(name: string): string {
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name) && !/^[rc]\d*(c\d*)?$/i.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;
}

function numbered(wanted: string, n: number): string {
  const base = validSheetName(wanted);
  if (n === 1) return base;
  const tail = ` (${n})`;
  return `${cut(base, LONGEST - tail.length)}${tail}`;
}

function bareTag(text: string): string {
  return withoutEnds(text.replace(REFUSED, " ").replace(/\s+/g, " "));
}

/** The first letters of a name, none of them halved. */
function cut(name: string, letters: number): string {
  return withoutEnds(name.slice(0, Math.max(0, letters)).replace(/[\ud800-\udbff]$/, ""));
}

function withoutEnds(name: string): string {
  return name.replace(/^['\s]+|['\s]+$/g, "");
}
