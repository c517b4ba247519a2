import type { FUniver } from "@univerjs/core/facade";
import type {} from "@univerjs/sheets-formula/facade";

/** Whether every edit of the grid has been calculated, and its answers stand in the cells. */
export interface Settling {
  readonly isSettled: () => boolean;
  /** Resolves then; where a limit in ms is given, fails if that takes longer. */
  readonly settled: (limit?: number) => Promise<void>;
}

const ASKED = "formula.mutation.set-trigger-formula-calculation-start";
const STARTED = "formula.mutation.set-formula-calculation-start";
const BROKEN_OFF = "formula.mutation.set-formula-calculation-stop";

/**
 * The grid begins to calculate only some time after an edit, and cells hold old answers meanwhile. Edits are therefore
 * followed, not calculations alone. What changes no answer (a width, a colour) is followed too, for a second.
 */
export function settling(api: FUniver): Settling {
  let edits = 0;
  /** So many of the edits the latest calculation knows of. */
  let known = 0;
  let isBrokenOff = false;
  let isGone = false;
  api.disposeWithMe(() => {
    isGone = true;
  });
  let following: Promise<void> | undefined;

  const follow = async (): Promise<void> => {
    // Ends with the calculation that runs, which may be older than the edit, or with one that begins within half a
    // second. After two such without an edit between them there is none to come.
    for (let quiet = 0; quiet < 2 && known !== edits && !isGone; ) {
      const seen = edits;
      await api.getFormula().onCalculationResultApplied();
      quiet = seen === edits ? quiet + 1 : 0;
    }
  };

  const begin = (): void => {
    following = follow();
    // Whether it ended well is told to whoever waits; the next edit is followed anew.
    const end = (): void => {
      following = undefined;
    };
    following.then(end, end);
  };

  api.addEvent(api.Event.CommandExecuted, ({ id, options }) => {
    if (id === BROKEN_OFF) isBrokenOff = true;
    if (id === STARTED) {
      // One that is begun again does not know of edits made since it was broken off.
      if (!isBrokenOff) known = edits;
      isBrokenOff = false;
    }
    if (id === ASKED || (id.includes(".mutation.") && options?.["onlyLocal"] !== true)) {
      edits += 1;
      if (following === undefined) begin();
    }
  });

  return {
    isSettled: () => following === undefined,
    settled: (limit) =>
      new Promise((resolve, reject) => {
        const fail = (): void => reject(new Error("The calculation does not end"));
        const timer = limit === undefined || following === undefined ? undefined : setTimeout(fail, limit);
        (following ?? Promise.resolve()).then(resolve, reject).finally(() => clearTimeout(timer));
      }),
  };
}
