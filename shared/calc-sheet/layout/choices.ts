import { greatestOf } from "../../../src/numeric/extremes.ts";
import type { SeriesRange } from "../plan.ts";
import type { Page } from "./page.ts";

/** Letters of a list that a cell itself can hold, commas between its names. */
const LONGEST = 255;

/** The lists of names to choose from that no cell can hold itself, each once. */
export class ChoiceBook {
  readonly #lists = new Map<string, readonly string[]>();

  /** Where the names will stand in the workings; nothing where the cell holds them itself. */
  placeOf(names: readonly string[]): SeriesRange | undefined {
    const text = names.join(",");
    if (text.length <= LONGEST && names.every((name) => !name.includes(","))) return undefined;
    const known = [...this.#lists].find(([, other]) => other.join(",") === text)?.[0];
    const key = known ?? `choices${this.#lists.size + 1}`;
    this.#lists.set(key, names);
    return { op: "column", key, column: NAME };
  }

  /** Writes the lists side by side. */
  place(workings: Page): void {
    if (this.#lists.size === 0) return;
    workings.beginBlock("Names to choose from", this.#lists.size);
    const top = workings.row;
    const longest = greatestOf([...this.#lists.values()].map(({ length }) => length));
    [...this.#lists].forEach(([key, names], column) => {
      names.forEach((v, i) => {
        workings.put(column, { v, style: "working" }, top + i);
      });
      const bottom = top + names.length - 1;
      const range = { top, left: column, bottom, right: column };
      workings.keepTable(key, { range, top, bottom, columns: { [NAME]: column } });
    });
    workings.row = top + longest + 1;
  }
}

const NAME = "name";
