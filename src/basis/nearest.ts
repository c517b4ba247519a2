/**
 * The names that resemble a text most, best first: names that hold every word of it, then names within a few
 * typing slips (edit distance). Empty when nothing is near.
 */
export function nearestNames(given: string, names: readonly string[], most = 4): readonly string[] {
  const wanted = given.trim().toLowerCase();
  const words = wanted.split(/[\s,]+/).filter((word) => word !== "");
  const limit = Math.max(2, Math.floor(wanted.length / 3));
  return names
    .map((name) => {
      const lower = name.toLowerCase();
      const held = words.filter((word) => lower.includes(word)).length / Math.max(1, words.length);
      return { name, held, distance: editDistance(wanted, lower) };
    })
    .filter(({ held, distance }) => held >= 0.5 || distance <= limit)
    .sort((a, b) => b.held - a.held || a.distance - b.distance)
    .slice(0, most)
    .map(({ name }) => name);
}

/** The names within a few typing slips of a text, the nearest first. */
export function slipsOf(given: string, names: readonly string[], most = 4): readonly string[] {
  const wanted = given.trim().toLowerCase();
  const limit = Math.max(2, Math.floor(wanted.length / 4));
  return names
    .map((name) => ({ name, distance: editDistance(wanted, name.toLowerCase()) }))
    .filter(({ distance }) => distance <= limit)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, most)
    .map(({ name }) => name);
}

/** Least number of letters to insert, drop or change (Levenshtein). */
function editDistance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const current = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (previous[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      current.push(Math.min(change, (previous[j] as number) + 1, (current[j - 1] as number) + 1));
    }
    previous = current;
  }
  return previous[b.length] as number;
}
