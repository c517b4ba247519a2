/**
 * How much a file may hold before it is refused: a small file can unpack to more than a machine's memory. Sheets, cells and
 * sizes are house choices, far beyond any workbook of pumps or duties; the lengths of a text and of a formula are those of
 * the format's usual programs.
 */
export interface Limits {
  readonly fileBytes: number;
  readonly parts: number;
  readonly partBytes: number;
  readonly totalBytes: number;
  /** How many times its packed size a part of more than a million bytes may unpack to. Sheets pack to a tenth or so. */
  readonly ratio: number;
  readonly sheets: number;
  readonly cells: number;
  readonly strings: number;
  /** Letters of one text. */
  readonly text: number;
  /** Letters of one formula. */
  readonly formula: number;
  /** Letters of all formulas together: those that share one each hold a whole one once read. */
  readonly formulas: number;
  readonly names: number;
  /** Areas of merged cells, of rules and of drop-downs, of one sheet. */
  readonly areas: number;
  readonly depth: number;
}

export const LIMITS: Limits = {
  fileBytes: 50e6,
  parts: 2000,
  partBytes: 60e6,
  totalBytes: 120e6,
  ratio: 200,
  sheets: 500,
  cells: 500_000,
  strings: 500_000,
  text: 32_767,
  formula: 8192,
  formulas: 10e6,
  names: 50_000,
  areas: 100_000,
  depth: 64,
};
