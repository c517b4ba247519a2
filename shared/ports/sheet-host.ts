import type { Cell, Scalar } from "../cells/cell.ts";
import type { SheetSpec } from "./sheet-spec.ts";

/** The few calls we need of whatever holds the cells: Excel or the workbench grid. */
export interface SheetHost {
  readonly kind: "excel" | "workbench";
  /**
   * Adds the sheet, whole, under its own name or the next free one, and answers with the name used when the host
   * has calculated it. An existing sheet is never touched; if a step fails, no half-written sheet stays.
   */
  readonly addSheet: (spec: SheetSpec) => Promise<string>;
  readonly sheetNames: () => Promise<readonly string[]>;
  /** Reads ranges written "Sheet!A1:B2" (quoted sheet name where needed) or "Sheet!name" for a sheet-scoped name. */
  readonly read: (refs: readonly string[]) => Promise<readonly (readonly (readonly Cell[])[])[]>;
  /** Writes single input cells, by the same references. Text goes in as text. */
  readonly write: (values: Readonly<Record<string, Scalar>>) => Promise<void>;
  /** Calls back after each recalculation or edit; the answer unsubscribes. Hosts that never calculate never call. */
  readonly onCalculated: (callback: () => void) => () => void;
  /** Whether pictures can stand on its sheets; where they cannot, a sheet is added without them. */
  readonly holdsPictures: () => boolean;
}
