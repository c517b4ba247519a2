/** Longer than any duty there is: a line beyond it is refused, so that one without an end cannot fill the memory. */
export const LONGEST_LINE = 8_000_000;

/** A line and its number as an editor counts it; without a text where that is too long to be read. */
export interface Line {
  readonly number: number;
  readonly text: string | undefined;
}

/** Cuts a text that comes in pieces into its lines, whichever way they end; blank ones count and are left out. */
export class LineSplitter {
  #rest = "";
  #isTooLong = false;
  #number = 0;

  /** The lines that end in this piece. */
  take(piece: string): readonly Line[] {
    const lines: Line[] = [];
    let start = 0;
    for (let end = piece.indexOf("\n"); end >= 0; end = piece.indexOf("\n", start)) {
      this.#keep(piece.slice(start, end));
      for (const line of this.end()) lines.push(line);
      start = end + 1;
    }
    this.#keep(piece.slice(start));
    return lines;
  }

  /** The last line, where no line end stands behind it. */
  end(): readonly Line[] {
    const text = this.#rest;
    const isTooLong = this.#isTooLong;
    this.#rest = "";
    this.#isTooLong = false;
    if (isTooLong) {
      this.#number += 1;
      return [{ number: this.#number, text: undefined }];
    }
    // Of CR LF the LF is gone already.
    return text
      .replace(/\r$/, "")
      .split("\r")
      .flatMap((line) => {
        this.#number += 1;
        return line.trim() === "" ? [] : [{ number: this.#number, text: line }];
      });
  }

  #keep(text: string): void {
    if (this.#rest.length + text.length > LONGEST_LINE) {
      this.#isTooLong = true;
      this.#rest = "";
    }
    if (!this.#isTooLong) this.#rest += text;
  }
}
