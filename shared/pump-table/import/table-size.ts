/** The rows of a file nobody's pumps fill; more is taken for a mistake. House choice. */
const MOST_ROWS = 200_000;
/** And its rows times its columns, blank cells counted, for a table is as wide as its widest row. House choice. */
export const MOST_CELLS = 2_000_000;

/** Why a table of that size is not read; nothing where it is. */
export function tooGreat(rows: number, columns: number): string | undefined {
  const most = "at most 200,000 rows and 2,000,000 cells of a table are read";
  if (rows > MOST_ROWS) return `it has ${rows} rows; ${most}`;
  if (rows * columns > MOST_CELLS) return `it reaches over ${rows} rows and ${columns} columns; ${most}`;
  return undefined;
}
