/** A range by its 0-based corners, both inside it. */
export interface Box {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export function columnLetters(column: number): string {
  let letters = "";
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26))
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  return letters;
}

/** "B3" of row 2, column 1. */
export function addressOf(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

export function boxOf(reference: string): Box {
  const [from, to] = reference.replaceAll("$", "").toUpperCase().split(":");
  const start = cellOf(from ?? "");
  const end = to === undefined ? start : cellOf(to);
  return {
    top: Math.min(start.row, end.row),
    left: Math.min(start.column, end.column),
    bottom: Math.max(start.row, end.row),
    right: Math.max(start.column, end.column),
  };
}

export function rangeOf({ top, left, bottom, right }: Box): string {
  const from = addressOf(top, left);
  return top === bottom && left === right ? from : `${from}:${addressOf(bottom, right)}`;
}

/** "B3" as "$B$3"; ranges too. */
export function absolute(reference: string): string {
  return reference.replaceAll("$", "").replace(/([A-Za-z]+)(\d+)/g, "$$$1$$$2");
}

function cellOf(address: string): { readonly row: number; readonly column: number } {
  const match = /^([A-Z]{1,3})([1-9]\d{0,6})$/.exec(address);
  if (match === null) throw new Error(`not a cell address: ${address}`);
  const column = [...(match[1] as string)].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(match[2]) - 1, column };
}
