/** The page of the help that a step leads to, by its key. */
const PAGES: Readonly<Record<string, string>> = {
  job: "first-duty",
  liquid: "typed-liquids",
  levels: "first-duty",
  station: "two-pumps",
  suctionLine: "typed-pipes",
  dischargeLine: "typed-pipes",
  results: "high-suction-lift",
  "system-curve": "method-friction",
  pumps: "importing-pumps",
  pump: "method-affinity",
  range: "two-pumps",
  cases: "schedule-of-duties",
  slurry: "slurry",
  sump: "SUBMERGENCE",
  route: "SIPHONCREDIT",
  pressure: "series-and-flange-class",
  pipe: "PIPERATING",
  bolting: "method-bolt-torque",
  drive: "method-engine-derating",
  priming: "priming",
  materials: "materials",
  field: "FIELDCHECK",
  settings: "calc-sheet",
  estimate: "method-life-cycle-cost",
  toConfirm: "calc-sheet",
  write: "calc-sheet",
  tracing: "tracing",
};

/** File of the help page of a step. */
export function helpOfStep(key: string): string | undefined {
  const page = PAGES[key];
  return page === undefined ? undefined : `${page}.html`;
}
