/** "18:12" of today, "28 Nov 18:12" of another day. */
export function timeWords(at: number, now = Date.now()): string {
  const [then, today] = [new Date(at), new Date(now)];
  const time = then.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  if (then.toDateString() === today.toDateString()) return time;
  return `${then.toLocaleDateString("en-GB", { day: "numeric", month: "short" })} ${time}`;
}

export function backWords(at: number, others: number): string {
  const more =
    others === 0
      ? ""
      : ` ${others === 1 ? "1 other is" : `${others} others are`} kept: open the workbench in another tab for ${others === 1 ? "it" : "the next"}.`;
  return `Restored your workbook of ${timeWords(at)}.${more}`;
}

export const FRESH = "Started from the sample. The duty in the pane stays.";

export function notBackWords(at: number, why: string): string {
  return `Your workbook of ${timeWords(at)} could not be restored: ${why} It is still kept.`;
}

export const BROKEN_OFF = "it was tried twice, and the page ended each time.";

export const GONE =
  "The browser no longer has the workbook of this tab: its storage was cleared. What you downloaded is not touched.";

/** Why nothing is kept, by what the storage threw. */
export function unkeptWords(fault: unknown): string {
  const why =
    fault instanceof Error && fault.name === "QuotaExceededError"
      ? "its storage is full"
      : "its storage is switched off, or does not answer";
  return `This browser keeps no copy of your workbook: ${why}. Download it before you close or reload this page.`;
}

export function handedWords(name: string): string {
  return `“${name}” was handed to the browser, which does not say whether it was saved. Is it among your downloads?`;
}
