import type { DutyText } from "../../shared/duty/duty-text.ts";
import { loadDuty, saveDuty } from "../../shared/duty/saved.ts";
import type { Result } from "../../src/basis/result.ts";

const KEY = "dutybook.duty";
/** Where a kept text goes that cannot be read back or shown, so that the next letter typed does not wipe it. */
const UNREAD_KEY = "dutybook.duty.unread";

/**
 * Keeps the duty over a reload: for this pane, and for the next pane opened. A browser that refuses storage
 * loses nothing else.
 */
export function keepDuty(duty: DutyText): void {
  const text = saveDuty(duty);
  for (const storage of storages()) attempt(() => storage.setItem(KEY, text));
}

/** Takes a duty that cannot be shown out of the way of the next start, without losing it. */
export function putAside(duty: DutyText): void {
  const text = saveDuty(duty);
  for (const storage of storages()) {
    attempt(() => storage.setItem(UNREAD_KEY, text));
    attempt(() => storage.removeItem(KEY));
  }
}

/** The duty kept last, or why it cannot be read; nothing where none was kept. */
export function keptDuty(): Result<DutyText> | undefined {
  for (const storage of storages()) {
    const text = attempt(() => storage.getItem(KEY));
    if (text === null || text === undefined) continue;
    const loaded = loadDuty(text);
    if (!loaded.ok) attempt(() => storage.setItem(UNREAD_KEY, text));
    return loaded;
  }
  return undefined;
}

/** This pane's own first: two workbooks may be open at a time. */
function storages(): readonly Storage[] {
  return [attempt(() => window.sessionStorage), attempt(() => window.localStorage)].filter(
    (storage): storage is Storage => storage !== undefined && storage !== null,
  );
}

/** Storage may be switched off, full or walled off from the pane; each of these throws. */
function attempt<T>(act: () => T): T | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}
