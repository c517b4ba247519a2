import type { PumpText } from "../../../shared/duty/duty-text.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { TracingEvent, TracingState } from "./state.ts";
import type { TracingWorked } from "./worked.ts";

/** What every view of the tracing step gets. */
export interface TracingContext {
  readonly state: TracingState;
  readonly worked: TracingWorked;
  readonly host: SheetHost | undefined;
  readonly units: UnitSetName;
  /** Takes an event, and has drawn the step anew when it returns. */
  readonly send: (event: TracingEvent) => void;
  /** Opens a picture that was chosen, dropped or pasted. */
  readonly open: (file: File) => void;
  /** Takes a traced curve as the pump of the duty. */
  readonly use: (pump: PumpText) => void;
  readonly focusBoard: () => void;
  /** What just happened, for the screen reader. */
  readonly announcement: string;
}

export const BOARD_ID = "duty-tracing-board";
/** The box of the value beside an axis point. */
export const VALUE_ID = "duty-tracing-value";
