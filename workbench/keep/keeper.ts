import type { Slot, Slots } from "./slots.ts";
import { forgetOwn, rememberOwn } from "./tab.ts";

/** Writes the workbook of this tab to the storage of the browser, a while after each change. */
export interface Keeper {
  readonly changed: () => void;
  /** There is nothing to keep, until the next change. */
  readonly drop: () => Promise<void>;
}

export interface Keeping {
  readonly slots: Slots;
  readonly id: string;
  /** All there is now. */
  readonly slot: () => Slot;
  readonly isUnsaved: () => boolean;
  /** Whether the workbook is whole: none is just coming into the grid. */
  readonly isWhole: () => boolean;
  /** Whether every edit has been calculated. */
  readonly isSettled: () => boolean;
  /** Told each time whether it was kept, and if not why. */
  readonly told: (fault: unknown) => void;
}

/** After the last change, and at the latest after the first, ms. */
const PAUSE = 1000;
const LATEST = 10_000;

export function startKeeper({ slots, id, slot, isUnsaved, isWhole, isSettled, told }: Keeping): Keeper {
  let since: number | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing = Promise.resolve();

  const write = async (): Promise<void> => {
    if (since === undefined) return;
    since = undefined;
    try {
      await slots.write({ id, at: Date.now(), isUnsaved: isUnsaved(), tries: 0 }, slot());
      rememberOwn(id);
      told(undefined);
    } catch (fault) {
      told(fault);
    }
  };
  const writeNow = (): void => {
    clearTimeout(timer);
    writing = writing.then(write);
  };
  const wait = (ms: number): void => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const isLate = since !== undefined && Date.now() - since > LATEST;
      if (isWhole() && (isSettled() || isLate)) writeNow();
      else wait(PAUSE);
    }, ms);
  };

  // The last chance before the page goes, or is put to sleep.
  const hurry = (): void => {
    if (isWhole()) writeNow();
  };
  window.addEventListener("beforeunload", hurry);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") hurry();
  });

  return {
    changed: () => {
      since ??= Date.now();
      wait(Math.max(0, Math.min(PAUSE, since + LATEST - Date.now())));
    },
    drop: async () => {
      clearTimeout(timer);
      since = undefined;
      await writing;
      forgetOwn();
      await slots.remove(id);
    },
  };
}
