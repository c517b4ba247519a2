import { boxOf } from "../../shared/ports/a1.ts";
import { MARGINS } from "../../shared/ports/paper.ts";
import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import type { PrintedWord } from "./libreoffice.ts";

/*
 * Where the cells of a sheet come to stand on paper: LibreOffice takes 7.04 px for a character of a column, and 5 px
 * between; found to hold within a point on A4 and Letter. What it leaves above the first row it is asked itself.
 */
const DIGIT = 7.04;
const INCH = 72;
const ROW_HEIGHT = 13.5;
/** Points by which a word may stand off its place. */
const OFF = 2;

interface Held {
  readonly text: string;
  readonly left: number;
  readonly right: number;
}

/** The rows of a printed sheet, page by page, and the texts that each shows between which edges. */
export class PrintedSheet {
  /** First and last row of each page, 0-based. */
  readonly pages: readonly (readonly [first: number, last: number])[];
  readonly #sheet: SheetSpec;
  readonly #scale: number;
  readonly #rows = new Map<number, CellSpec[]>();
  readonly #merges: ReturnType<typeof boxOf>[];
  readonly #covered: readonly ReturnType<typeof boxOf>[];
  readonly #title: number | undefined;

  /** @param sheet without a formula in it */
  constructor(sheet: SheetSpec) {
    const { print, cells, merges = [], charts = [], pictures = [] } = sheet;
    if (print?.scale === undefined) throw new Error("a sheet that is not printed at a scale");
    this.#sheet = sheet;
    this.#scale = print.scale / 100;
    const area = boxOf(print.area);
    for (const cell of cells) {
      const { top, left } = boxOf(cell.at);
      if (left > area.right || top > area.bottom) continue;
      this.#rows.set(top, [...(this.#rows.get(top) ?? []), cell]);
    }
    this.#merges = merges.map(boxOf);
    this.#covered = [...charts, ...pictures].map(({ at }) => boxOf(at));
    this.#title = print.titleRows === undefined ? undefined : Number(print.titleRows.split(":")[0]) - 1;
    const starts = [area.top, ...(print.breaks ?? [])];
    this.pages = starts.map((start, i) => [start, (starts[i + 1] ?? area.bottom + 1) - 1]);
  }

  styleOf(row: number): ReadonlySet<string> {
    return new Set((this.#rows.get(row) ?? []).flatMap(({ style }) => style ?? []));
  }

  textsOf(row: number): readonly string[] {
    return (this.#rows.get(row) ?? []).map((cell) => this.#shown(cell)).filter((text) => text !== "");
  }

  /** Rows as they come on a page, the repeated row first. */
  rowsOf(page: number): readonly number[] {
    const [first = 0, last = -1] = this.pages[page] ?? [];
    const rows = Array.from({ length: last - first + 1 }, (_, i) => first + i);
    return this.#title === undefined || this.#title >= first ? rows : [this.#title, ...rows];
  }

  /**
   * What is wrong with a printed page: a cell of which a letter is missing, or where one stands that is none of it.
   * @param above points above the first row, less the top margin
   */
  faults(page: number, words: readonly PrintedWord[], above: number): readonly string[] {
    const found: string[] = [];
    let top = MARGINS.top * INCH + above;
    for (const row of this.rowsOf(page)) {
      const bottom = top + this.#heightOf(row) * this.#scale;
      const own = words.filter(({ middle }) => middle > top && middle <= bottom);
      if (!this.#covered.some((box) => row >= box.top && row <= box.bottom)) found.push(...this.#rowFaults(row, own));
      top = bottom;
    }
    return found;
  }

  /** How far the row numbers of a page stand from where its rows would be without anything above them. */
  above(page: number, words: readonly PrintedWord[]): number | undefined {
    const off: number[] = [];
    let top = MARGINS.top * INCH;
    for (const row of this.rowsOf(page)) {
      const height = this.#heightOf(row) * this.#scale;
      const number = (this.#rows.get(row) ?? []).find(({ style }) => style === "lineNumber");
      const word = words.find(({ text, left }) => text === number?.v && left < 60);
      if (word !== undefined) off.push(word.middle - top - height / 2);
      top += height;
    }
    return off.sort((a, b) => a - b)[Math.floor(off.length / 2)];
  }

  #heightOf(row: number): number {
    return this.#sheet.rowHeights?.[row + 1] ?? ROW_HEIGHT;
  }

  #edge(column: number): number {
    const points = this.#sheet.columns.slice(0, column).reduce((sum, width) => sum + (width * DIGIT + 5) * 0.75, 0);
    return MARGINS.left * INCH + points * this.#scale;
  }

  /** The texts of a row between the edges they may take: over empty cells where they are not wrapped. */
  #held(row: number): readonly Held[] {
    const shown = (this.#rows.get(row) ?? []).flatMap((cell) => {
      const text = this.#shown(cell);
      const { left } = boxOf(cell.at);
      const merge = this.#merges.find((box) => box.top === row && box.left === left);
      return text === "" ? [] : [{ cell, text, left, right: merge?.right ?? left, isMerged: merge !== undefined }];
    });
    return shown
      .sort((a, b) => a.left - b.left)
      .map(({ cell, text, left, right, isMerged }, i, all) => {
        const { wrap, align } = (cell.style === undefined ? undefined : this.#sheet.styles[cell.style]) ?? {};
        const mayRun = typeof cell.v === "string" && wrap !== true && !isMerged;
        const before = mayRun && align === "right" ? (all[i - 1]?.right ?? -1) + 1 : left;
        const after = mayRun && align !== "right" ? (all[i + 1]?.left ?? this.#sheet.columns.length) - 1 : right;
        return { text, left: this.#edge(before), right: this.#edge(after + 1) };
      });
  }

  #rowFaults(row: number, words: readonly PrintedWord[]): readonly string[] {
    const held = this.#held(row);
    const inside = ({ left, right }: Held, word: PrintedWord): boolean =>
      word.left >= left - OFF && word.right <= right + OFF;
    const faults = words
      .filter((word) => !held.some((one) => inside(one, word)))
      .map(({ text }) => `row ${row + 1}: “${text}” stands outside its cell`);
    for (const one of held) {
      // A short word at an edge stands within reach of the next cell too: it is of the one that it stands in.
      const isOwn = (word: PrintedWord): boolean =>
        inside(one, word) && word.left + word.right >= 2 * one.left && word.left + word.right <= 2 * one.right;
      const own = words.filter(isOwn).map(({ text }) => text);
      if (letters(own.join("")) !== letters(one.text)) {
        faults.push(`row ${row + 1}: “${one.text}” is printed as “${own.join(" ")}”`);
      }
    }
    return faults;
  }

  #shown({ v, style }: CellSpec): string {
    if (typeof v === "string") return v.trim();
    if (typeof v !== "number") return "";
    const format = style === undefined ? undefined : this.#sheet.styles[style]?.numFmt;
    if (format === undefined) return String(v);
    const places = /^#,##0(?:\.(0+))?$/.exec(format);
    if (places === null) throw new Error(`a format that is not known here: ${format}`);
    const digits = places[1]?.length ?? 0;
    return v.toLocaleString("en-US", { minimumFractionDigits: digits, maximumFractionDigits: digits });
  }
}

/** The letters of a text in any order: lines are broken between words, and in them. */
function letters(text: string): string {
  return [...text.normalize("NFKC").replace(/\s/g, "")].sort().join("");
}
