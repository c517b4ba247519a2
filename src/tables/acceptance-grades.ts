// ISO 9906:2012, table 8, tolerance factors of the acceptance grades in per cent of the guaranteed figure (ANSI/HI 14.6
// has the same). The grades of 2012 are written from memory, and pages that print them contradict one another: confirm
// against a licensed copy before a test is judged by them. All figures of the 1999 classes agree with a pump maker's
// lexicon. A dash in print is null here: no tolerance on that side. No reading between rows.

export interface AcceptanceGradeRow {
  readonly grade: string;
  /** Lower and upper tolerance of flow and head, %. */
  readonly flow: readonly [lower: number, upper: number];
  readonly head: readonly [lower: number, upper: number];
  /** Upper tolerance of power, %; null where the edition sets none. */
  readonly power: number | null;
  /** Lower tolerance of efficiency, %. */
  readonly efficiency: number;
  /** Edition of the standard. */
  readonly edition: 2012 | 1999;
}

export const ACCEPTANCE_GRADES: readonly AcceptanceGradeRow[] = [
  { grade: "1B", flow: [-5, 5], head: [-3, 3], power: 4, efficiency: -3, edition: 2012 },
  { grade: "1E", flow: [-5, 5], head: [-3, 3], power: 4, efficiency: 0, edition: 2012 },
  { grade: "1U", flow: [0, 10], head: [0, 6], power: 10, efficiency: 0, edition: 2012 },
  { grade: "2B", flow: [-8, 8], head: [-5, 5], power: 8, efficiency: -5, edition: 2012 },
  { grade: "2U", flow: [0, 16], head: [0, 10], power: 16, efficiency: -5, edition: 2012 },
  { grade: "3B", flow: [-9, 9], head: [-7, 7], power: 9, efficiency: -7, edition: 2012 },
  // The older edition, which contracts still name.
  { grade: "1999 class 1", flow: [-4.5, 4.5], head: [-3, 3], power: null, efficiency: -3, edition: 1999 },
  { grade: "1999 class 2", flow: [-8, 8], head: [-5, 5], power: null, efficiency: -5, edition: 1999 },
];

/**
 * Pumps of small shaft power, clause 4.4.2 of the same: wider in both directions, %. A pump maker's article on ANSI/HI 14.6
 * of 2015 and a page on GB/T 3216 print the same.
 */
export const SMALL_PUMP_TOLERANCES = { flow: 10, head: 8, leastPower: 1000, mostPower: 10_000 } as const;
