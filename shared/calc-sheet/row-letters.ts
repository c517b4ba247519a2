/** A, B … Z, AA, AB …: names on a sheet hold no digits, so that none looks like a cell address. */
export function letters(row: number): string {
  const last = String.fromCharCode(65 + (row % 26));
  return row < 26 ? last : letters(Math.floor(row / 26) - 1) + last;
}
