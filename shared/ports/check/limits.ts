/**
 * What a sheet may ask of any host, by what Excel takes: the maker's page "Excel specifications and limits" (read
 * November 2026), where nothing else is named.
 */
export const LIMITS = {
  rows: 1_048_576,
  columns: 16_384,
  cellText: 32_767,
  formula: 8192,
  /** Characters between quotes in a formula. */
  literal: 255,
  nesting: 64,
  arguments: 255,
  /** Points. */
  rowHeight: 409,
  /** Characters. */
  columnWidth: 255,
  /** Points; the maker's object model. */
  fontSize: 409,
  indent: 250,
  name: 255,
  /** Characters of a page header or footer, its marks counted. */
  marginText: 255,
  pageBreaks: 1026,
  zoom: { least: 10, most: 400 },
  /** Common practice, no source. */
  chartTitle: 255,
  /** ISO/IEC 29500-1, 18.3.1.32. */
  hint: 255,
  numberFormat: 255,
} as const;
