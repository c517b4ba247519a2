import type { Scalar } from "../../cells/cell.ts";
import { FIELDS, type FieldKey } from "../../duty/fields.ts";
import type { WrittenBlock } from "../open-again/written-blocks.ts";
import type {
  InputSheet,
  WrittenBox,
  WrittenInputs,
  WrittenResult,
  WrittenTable,
  WrittenWorked,
} from "../open-again/written-inputs.ts";

/** A cell by its key in the plan, and what was written into it. */
export interface WrittenAt {
  readonly sheet: InputSheet;
  readonly key: string;
  readonly label: string;
  readonly written: Scalar;
}

/** The inputs of a plan as they are placed, and the named results that stand beside them. */
export class InputBook implements WrittenInputs {
  readonly boxes: WrittenBox[] = [];
  readonly tables: WrittenTable[] = [];
  readonly results: WrittenResult[] = [];
  readonly worked: WrittenWorked[] = [];
  readonly blocks: WrittenBlock[] = [];
  /** Each input cell on its own, those of tables among them. */
  readonly cells: WrittenAt[] = [];
  /** Each table of inputs by its key, and the rows that its range had. */
  readonly ranges: {
    readonly sheet: InputSheet;
    readonly key: string;
    readonly label: string;
    readonly rows: number;
  }[] = [];
}

/** The place of an input's box: the field of its key where nothing else is said. */
export function boxOfInput(input: { readonly key: string; readonly box?: string; readonly of?: FieldKey }): {
  readonly place?: string;
} {
  const { key, box, of } = input;
  if (box !== undefined) return { place: box };
  return of === undefined && Object.hasOwn(FIELDS, key) ? { place: key } : {};
}
