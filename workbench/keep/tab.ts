import { dropText, storedText, storeText } from "../../taskpane/pane/browser-storage.ts";

/** Outlives a reload of the tab, and a duplicate of the tab has it too. */
const KEY = "dutybook.workbook";
const LOCK = "dutybook.workbook.";
/** A tab that is being reloaded lets go of its workbook as the page goes, ms. */
const LETTING_GO = 1000;

/** The workbook this tab had before it was reloaded. */
export function ownBefore(): string | undefined {
  return storedText("sessionStorage", KEY);
}

export function rememberOwn(id: string): void {
  storeText("sessionStorage", KEY, id);
}

export function forgetOwn(): void {
  dropText("sessionStorage", KEY);
}

export function newSlot(): string {
  return crypto.randomUUID();
}

/** Whether the workbook is this tab's from now on, until it goes; not, while another has it. */
export async function claim(id: string): Promise<boolean> {
  return new Promise((resolve) => {
    const until = { signal: AbortSignal.timeout(LETTING_GO) };
    const held = async (): Promise<void> => {
      resolve(true);
      await new Promise(() => {});
    };
    // Where the browser has no locks, or refuses them, only the tab itself is known to have had it.
    const locks = navigator.locks as LockManager | undefined;
    if (locks === undefined) resolve(ownBefore() === id);
    else locks.request(LOCK + id, until, held).catch(() => resolve(false));
  });
}

/** The workbooks that other tabs have open now; nothing where that cannot be told. */
export async function claimedElsewhere(): Promise<ReadonlySet<string> | undefined> {
  try {
    const { held = [] } = await navigator.locks.query();
    return new Set(
      held.map(({ name = "" }) => name).flatMap((name) => (name.startsWith(LOCK) ? [name.slice(LOCK.length)] : [])),
    );
  } catch {
    return undefined;
  }
}
