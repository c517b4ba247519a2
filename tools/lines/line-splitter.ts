/** Longer than any duty there is: a line beyond it is refused, so that one without an end cannot fill the memory. */
export const LONGEST_LINE = 8_000_000;

/** A line, or undefined for one that is too long to be read. */
export type Line = string | undefined;

/** Cuts a text that comes in pieces into its lines, whichever way they end; blank ones are left out. */
export class LineSplitter {
  #rest = "";
  #isTooLong = false;
  #isFirst = true;

  /** The lines that end in this piece. */
  take(piece: string): readonly Line[] {
    const lines: Line[] = [];
    let start = 0;
    for (let end = piece.indexOf("\n"); end >= 0; end = piece.indexOf("\n", start)) {
      this.#keep(piece.slice(start, end));
      lines.push(...this.end());
      start = end + 1;
    }
    this.#keep(piece.slice(start));
    return lines;
  }

  /** The last line, where no line end stands behind it. */
  end(): readonly Line[] {
    const text = this.#isFirst ? this.#rest.replace(/^\uFEFF/, "") : this.#rest;
    const isTooLong = this.#isTooLong;
    this.#rest = "";
    this.#isTooLong = false;
    this.#isFirst = false;
    return isTooLong ? [undefined] : text.split("\r").filter((line) => line.trim() !== "");
  }

  #keep(text: string): void {
    if (this.#rest.length + text.length > LONGEST_LINE) {
      this.#isTooLong = true;
      this.#rest = "";
    }
    if (!this.#isTooLong) this.#rest += text;
  }
}
