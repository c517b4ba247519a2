/** Unit system of a standard's table: psi and °F, or bar and °C. */
export type RatingSystem = "US" | "SI";

export type FlangeClassName =
  | "Class 125"
  | "Class 150"
  | "Class 250"
  | "Class 300"
  | "PN6"
  | "PN10"
  | "PN16"
  | "PN25"
  | "PN40";

/** Materials as the standards group them. */
export type RatedGroup =
  | "A395 ductile iron"
  | "1.1"
  | "1.2"
  | "2.1"
  | "2.2"
  | "2.3"
  | "2.8"
  | "3.17"
  | "A126 Class A"
  | "A126 Class B"
  | "EN-GJS-400-15 / 400-18 (LT)"
  | "EN-GJS-500-7 / 600-3"
  | "EN-GJL-250"
  | "3E0"
  | "10E0"
  | "11E0"
  | "12E0"
  | "13E0"
  | "14E0"
  | "15E0"
  | "16E0";

/** Nominal sizes a column holds for, inches; named as the standard names them. */
export interface RatedSizes {
  readonly name: string;
  readonly least: number;
  readonly most: number;
}

export const NPS_HALF_TO_24: RatedSizes = { name: "NPS 1/2 to 24", least: 0.5, most: 24 };
export const NPS_1_TO_24: RatedSizes = { name: "NPS 1 to 24", least: 1, most: 24 };
export const NPS_1_TO_12: RatedSizes = { name: "NPS 1 to 12", least: 1, most: 12 };
export const NPS_14_TO_24: RatedSizes = { name: "NPS 14 to 24", least: 14, most: 24 };
export const ALL_SIZES: RatedSizes = { name: "all sizes of the PN", least: 0, most: Number.POSITIVE_INFINITY };

/** read: in a reprint of the standard. memory: recalled. computed: interpolated here, no figure of the standard. */
export type Trust = "read" | "memory" | "computed";

export interface RatingColumn {
  readonly flangeClass: FlangeClassName;
  readonly sizes: RatedSizes;
  readonly trust: Trust;
  /** Of the first row, where it is another: a PN is its own rating while the metal is cold. */
  readonly coldTrust?: Trust;
  readonly howVerified: string;
}

/** Temperature, then the rating of each column; null where a column has ended. */
export type RatingRow = readonly [temperature: number, ...ratings: readonly (number | null)[]];

export interface RatingTable {
  readonly group: RatedGroup;
  readonly system: RatingSystem;
  readonly columns: readonly RatingColumn[];
  readonly rows: readonly RatingRow[];
}
