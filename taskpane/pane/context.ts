import type { TemplateResult } from "lit";
import type { SheetHost } from "../../shared/ports/sheet-host.ts";
import type { WorkedOut } from "./head-worked.ts";
import type { Later } from "./later/later.ts";
import type { PaneEvent, PaneState } from "./state.ts";

/** What every view gets: the state, what was worked out from it, and the way back. */
export interface PaneContext {
  readonly state: PaneState;
  readonly worked: WorkedOut;
  readonly host: SheetHost | undefined;
  /** Folder of the help pages, as seen from the page the pane is on; ends in "/". */
  readonly help: string;
  /** Takes an event, and has drawn the pane again when it returns. */
  readonly send: (event: PaneEvent) => void;
  /** Looks up what duties the workbook now holds. */
  readonly readSheets: () => Promise<void>;
  /** Enters formulas of ours again whose name the host does not know. */
  readonly repairFunctions: (which: "read before" | "misspelt") => Promise<void>;
  /** Puts the focus on a box, after showing the stage and opening the step it is in. */
  readonly goTo: (id: string) => void;
  /** What is loaded after the first screen, and the way to try that once more. */
  readonly later: Later;
  readonly loadLater: () => void;
  /** The words of the last pause in typing, for the screen reader. */
  readonly announcement: string;
}

/** Where a step stands in the pane. */
export interface StepPlace {
  readonly key: string;
  readonly title: string;
  /** Place keys that begin so belong to this step, for links to a box. */
  readonly holds?: readonly string[];
  /** It begins its stage and does not fold away. */
  readonly isFixed?: true;
  /** It holds work of its own, which a step that is not drawn while it is closed would lose. */
  readonly holdsWork?: true;
}

/** What a step shows. */
export interface StepContent {
  readonly view: (context: PaneContext) => TemplateResult;
  /** A few words beside the title. */
  readonly brief?: (context: PaneContext) => string;
}

/** One section of the pane. A further step is one more file with its content, and its place in `STAGES`. */
export interface Step extends StepPlace, StepContent {}

/** The element id of a box. */
export function boxId(key: string): string {
  return `duty-${key.replaceAll(".", "-")}`;
}
