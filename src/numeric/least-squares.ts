/** A polynomial c₀ + c₁ x + c₂ x² … fitted to points. */
export interface PolynomialFit {
  readonly coefficients: readonly number[];
  /** y given less y fitted, point by point. */
  readonly residuals: readonly number[];
  /** Root of the mean square of the residuals. */
  readonly rms: number;
}

/**
 * The polynomial of a degree with the least sum of squared residuals, by Householder QR. Good to some 1e-13 of the
 * greatest y for x scaled to 1 and degrees up to 4. Undefined where the points do not determine it: fewer points than
 * coefficients, or too few different x.
 */
export function fitPolynomial(x: readonly number[], y: readonly number[], degree: number): PolynomialFit | undefined {
  const rows = x.length;
  const columns = degree + 1;
  if (rows < columns) return undefined;
  const matrix = x.map((place) => Array.from({ length: columns }, (_, power) => place ** power));
  const right = [...y];
  for (let column = 0; column < columns; column += 1) {
    if (!reflect(matrix, right, column)) return undefined;
  }
  const coefficients = new Array<number>(columns).fill(0);
  for (let row = columns - 1; row >= 0; row -= 1) {
    const line = matrix[row] as number[];
    let sum = right[row] as number;
    for (let column = row + 1; column < columns; column += 1) {
      sum -= (line[column] as number) * (coefficients[column] as number);
    }
    coefficients[row] = sum / (line[row] as number);
  }
  const residuals = x.map((place, i) => (y[i] as number) - polynomialAt(coefficients, place));
  const rms = Math.sqrt(residuals.reduce((sum, residual) => sum + residual * residual, 0) / rows);
  return { coefficients, residuals, rms };
}

/** c₀ + c₁ x + c₂ x² …, by Horner. */
export function polynomialAt(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

/** Mirrors the rows so that a column is zero below the diagonal; false where the column depends on those before it. */
function reflect(matrix: readonly number[][], right: number[], column: number): boolean {
  const below = matrix.slice(column).map((row) => row[column] as number);
  const length = Math.hypot(...below);
  const whole = Math.hypot(...matrix.map((row) => row[column] as number));
  if (!(length > 1e-12 * whole)) return false;
  const first = below[0] as number;
  const mirror = [...below];
  mirror[0] = first + (first < 0 ? -length : length);
  const scale = 2 / mirror.reduce((sum, part) => sum + part * part, 0);
  const apply = (part: (row: number) => number, change: (row: number, by: number) => void): void => {
    const along = scale * mirror.reduce((sum, weight, i) => sum + weight * part(column + i), 0);
    for (const [i, weight] of mirror.entries()) change(column + i, along * weight);
  };
  for (let j = column; j < (matrix[0] as number[]).length; j += 1) {
    apply(
      (row) => (matrix[row] as number[])[j] as number,
      (row, by) => {
        const line = matrix[row] as number[];
        line[j] = (line[j] as number) - by;
      },
    );
  }
  apply(
    (row) => right[row] as number,
    (row, by) => {
      right[row] = (right[row] as number) - by;
    },
  );
  return true;
}
