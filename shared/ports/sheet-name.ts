const LONGEST = 31;

/** A name that a sheet may have: no []:*?/\, no quote at an end, at most 31 characters, never empty. */
export function validSheetName(wanted: string): string {
  const clean = wanted
    .replace(/[[\]:*?/\\]/g, " ")
    .replace(/\s+/g, " ")
    .replace(/^['\s]+|['\s]+$/g, "");
  const name = clean.slice(0, LONGEST).trim();
  return name === "" || name.toLowerCase() === "history" ? "Calc sheet" : name;
}

/** The first of "Duty", "Duty (2)", … that no sheet has. Hosts read names without regard to case. */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  const base = validSheetName(wanted);
  let free = base;
  for (let n = 2; used.has(free.toLowerCase()); n += 1) {
    const tail = ` (${n})`;
    free = `${base.slice(0, LONGEST - tail.length).trim()}${tail}`;
  }
  return free;
}

/** A sheet name as it stands in a reference. */
export function quotedSheetName(name: string): string {
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name) && !/^[rc]\d*(c\d*)?$/i.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;
}
