/**
 * What Excel takes at most. Source where none is named: the maker's page "Excel specifications and limits" (read
 * November 2026). The .xlsx format itself is ISO/IEC 29500-1 (ECMA-376 part 1).
 */
export const LIMITS = {
  rows: 1_048_576,
  columns: 16_384,
  /** Characters. */
  columnWidth: 255,
  /** Points. The page says 409; the program itself takes one half more (546 pixels at 96 to the inch). */
  rowHeight: 409.5,
  pageBreaks: 1026,
  /** Characters. */
  cellText: 32_767,
  /** Characters of a page header or footer, its marks counted. */
  marginText: 255,
  formula: 8192,
  /** Characters between quotes in a formula. */
  literal: 255,
  nesting: 64,
  /** Percent, smallest and largest. */
  zoom: [10, 400],
  /** ISO/IEC 29500-1, 18.18.84 (ST_CellSpanType) has none; the maker's object model: 1 to 409. */
  fontSize: 409,
  /** ISO/IEC 29500-1, 18.8.1 has no bound; the maker's object model: 0 to 250. */
  indent: 250,
  /** ISO/IEC 29500-1, 18.18.92 (ST_Xstring of a sheet's name): 31 characters. */
  sheetName: 31,
  name: 255,
  /** Common practice, no source. */
  chartTitle: 255,
  /** ISO/IEC 29500-1, 18.3.1.32: list typed into the rule, hint and alert; titles. */
  listSource: 255,
  hint: 255,
  hintTitle: 32,
  /** ISO/IEC 29500-1, 21.2.3.44 (ST_MarkerSize). */
  markerSize: [2, 72],
  /** Characters of an address of several areas; the maker's page on RangeAreas. */
  address: 8192,
  /** Bytes of a request or an answer; the maker's page on resource limits (Excel on the web). */
  payload: 5 * 1024 * 1024,
} as const;
