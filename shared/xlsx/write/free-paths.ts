/** Answers with a path inside the file that no part has yet: "xl/charts/chart" and "xml" give xl/charts/chart1.xml, then chart2.xml. */
export type FreePath = (stem: string, ending: string) => string;

/** Parts are told apart without regard to case. */
export function freePaths(taken: Iterable<string> = []): FreePath {
  const used = new Set([...taken].map((path) => path.toLowerCase()));
  const last = new Map<string, number>();
  return (stem, ending) => {
    for (let n = (last.get(stem) ?? 0) + 1; ; n += 1) {
      const path = `${stem}${n}.${ending}`;
      if (used.has(path.toLowerCase())) continue;
      used.add(path.toLowerCase());
      last.set(stem, n);
      return path;
    }
  };
}
