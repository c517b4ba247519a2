/** The part of a list of fittings, such as "2 elbow 90 long, 1 ga", that the caret stands in. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  /** "2", or nothing where no count is typed yet. */
  readonly count: string;
  readonly name: string;
}

const PARTING = /[,;\n]/g;

/** "90 elb" is the beginning of a name, not ninety elbows. */
const COUNT_AND_NAME = /^\s*(?!(?:45|90|180)\b)(\d*)\s*(?:[x×*]\s+)?(.*?)\s*$/is;

export function pieceAt(text: string, caret: number): Piece {
  let start = 0;
  let end = text.length;
  for (const { index } of text.matchAll(PARTING)) {
    if (index < caret) start = index + 1;
    else {
      end = index;
      break;
    }
  }
  const piece = text.slice(start, end);
  const match = COUNT_AND_NAME.exec(piece);
  return { start, end, count: match?.[1] ?? "", name: match?.[2] ?? piece.trim() };
}

/** The list with the piece at the caret made into a counted fitting; a count already typed stays. */
export function withPiece(text: string, caret: number, name: string): string {
  const { start, end, count } = pieceAt(text, caret);
  const before = text.slice(0, start);
  const gap = before === "" ? "" : " ";
  return `${before}${gap}${count === "" ? "1" : count} ${name}${text.slice(end)}`;
}

/** The list with one more fitting at its end. */
export function withFitting(text: string, name: string): string {
  const before = text.trim().replace(/[,;]$/, "").trimEnd();
  return before === "" ? `1 ${name}` : `${before}, 1 ${name}`;
}
