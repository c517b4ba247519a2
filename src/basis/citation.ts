/** The works the engine leans on. A method or table names one by its key. */
export interface Source {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number;
}

export const SOURCES = {
  "iso-17769-1": {
    title:
      "ISO 17769-1, Liquid pumps and installation: general terms, definitions, quantities, letter symbols and units, part 1",
    publisher: "ISO",
    year: 2012,
  },
  "nist-sp-811": {
    title: "NIST Special Publication 811, Guide for the Use of the International System of Units (SI)",
    publisher: "NIST",
    year: 2008,
  },
  practice: { title: "Common practice, no source", publisher: "the trade" },
  house: { title: "Choice of this product, stated on the sheet", publisher: "this product" },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

/** Where a rule, formula or number was read: the work, and the place in it. */
export interface Citation {
  readonly source: SourceKey;
  readonly at: string;
}

/** "IAPWS R7-97 …, region 1" — a citation as one printed line. */
export function citationText({ source, at }: Citation): string {
  const { title, publisher, year }: Source = SOURCES[source];
  if (source === "practice" || source === "house") return `${title}: ${at}`;
  return `${title} (${year === undefined ? publisher : `${publisher}, ${year}`}), ${at}`;
}
