import type { DutyText } from "../shared/duty/duty-text.ts";
import { loadDuty, saveDuty } from "../shared/duty/saved.ts";
import type { UnitSetName } from "../src/basis/quantities.ts";
import { keptHereAt } from "../taskpane/pane/remember.ts";
import { type SavedMark, savedMark } from "./keep/saved-mark.ts";
import type { Slot } from "./keep/slots.ts";

/** The duty in the pane, which is kept with the workbook. The pane is there before the grid, and so is this. */
export interface PaneDuty {
  /** How far it is known to be saved. */
  readonly mark: SavedMark;
  readonly now: () => Slot["duty"];
  /** That of the reader: the unit set typed in last. */
  readonly unitSet: () => UnitSetName;
  /** What the pane opens with; nothing where it keeps a newer one itself. */
  readonly opening: () => DutyText | undefined;
  readonly changed: (duty: DutyText) => void;
  /** Has every change told from now on; at once where there was one before. */
  readonly follow: (changed: () => void) => void;
}

/** @param kept with the workbook that comes back */
export function startPaneDuty(kept: Slot["duty"], isUnsaved: boolean): PaneDuty {
  const mark = savedMark();
  mark.restart(isUnsaved);
  let duty = kept;
  let unitSet: UnitSetName = "US";
  let isChanged = false;
  let tell = (): void => {
    isChanged = true;
  };
  return {
    mark,
    now: () => duty,
    unitSet: () => unitSet,
    opening: () => {
      if (duty === undefined || duty.at <= keptHereAt()) return undefined;
      const loaded = loadDuty(duty.text);
      return loaded.ok ? loaded.value : undefined;
    },
    changed: (changed) => {
      unitSet = changed.unitSet;
      duty = { text: saveDuty(changed), at: Date.now() };
      mark.edited();
      tell();
    },
    follow: (changed) => {
      tell = changed;
      if (isChanged) changed();
    },
  };
}
