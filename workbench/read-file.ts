import type { BookRead } from "../shared/file-reading/read-file.ts";
import { readInWorker } from "../taskpane/pane/reading/read-in-worker.ts";
import { wait } from "./ask.ts";

/** A file that is read at once needs no words, ms. */
const AT_ONCE = 300;

/** Reads a workbook in a thread of its own and says how far it has come; nothing where the user would rather not wait. */
export async function readBook(name: string, bytes: Uint8Array): Promise<BookRead | undefined> {
  const stop = new AbortController();
  const words = (share: number): string => `Reading ${name} … ${Math.round(100 * share)} %`;
  let share = 0;
  let say: (words: string) => void = () => {};
  const progress = (now: number): void => {
    share = now;
    say(words(share));
  };
  const reading = readInWorker({ kind: "workbook", bytes }, { progress, signal: stop.signal });
  const isThere = reading.then(() => true);
  const later = new Promise<boolean>((resolve) => setTimeout(() => resolve(false), AT_ONCE));
  if (await Promise.race([isThere, later])) return reading;
  const isAwaited = await wait(words(share), isThere, (told) => {
    say = told;
  });
  if (!isAwaited) stop.abort();
  return reading;
}
