import type { FileAnswer, FileAsked, Progress } from "../../../shared/file-reading/read-file.ts";
import { notLoaded, part } from "../../part.ts";
import type { FromWorker } from "./messages.ts";

/** As much of a browser's worker as is used. */
export interface FileWorker {
  onmessage: ((event: { readonly data: FromWorker }) => void) | null;
  onerror: ((event: { readonly message?: string; preventDefault?(): void }) => void) | null;
  postMessage(asked: FileAsked): void;
  terminate(): void;
}

export interface Follow {
  readonly progress: Progress;
  /** Breaks the reading off: nothing comes of it. */
  readonly signal: AbortSignal;
}

/** The files of a reading may have no more bytes than are read of one; said before they are loaded. */
const MOST_BYTES = 50e6;

/** Why files of that size are not even loaded; nothing where they are. */
export function tooLarge(files: readonly { readonly name: string; readonly size: number }[]): string | undefined {
  const large = files.find(({ size }) => size > MOST_BYTES);
  if (large === undefined) return undefined;
  return `${large.name} has more than ${MOST_BYTES / 1e6} MB, the most that is read.`;
}

/**
 * Reads files in a thread of its own; in place where there are no threads. Nothing comes of a reading that is broken off.
 * Throws where the thread ends without an answer, as it does without memory.
 */
export async function readInWorker<const A extends FileAsked>(
  asked: A,
  follow: Follow,
  start: () => FileWorker | undefined = startWorker,
): Promise<FileAnswer<A> | undefined> {
  const worker = start();
  if (worker === undefined) {
    const { readFile } = await part(import("../../../shared/file-reading/read-file.ts"));
    return readFile(asked, follow.progress) as FileAnswer<A>;
  }
  try {
    return (await answerOf(worker, asked, follow)) as FileAnswer<A> | undefined;
  } finally {
    worker.terminate();
  }
}

function answerOf(worker: FileWorker, asked: FileAsked, { progress, signal }: Follow): Promise<FileAnswer | undefined> {
  return new Promise((resolve, reject) => {
    const stop = (): void => resolve(undefined);
    if (signal.aborted) stop();
    signal.addEventListener("abort", stop, { once: true });
    worker.onmessage = ({ data }) => {
      if ("share" in data) progress(data.share);
      else resolve(data.answer);
    };
    worker.onerror = (event) => {
      event.preventDefault?.();
      const { message = "" } = event;
      const fault = `The reading ended without an answer (${message}): the file may take more memory than there is.`;
      // An error without words is that of a thread whose script could not be loaded.
      reject(message === "" ? notLoaded(event) : new Error(fault));
    };
    worker.postMessage(asked);
  });
}

/** Nothing where the page cannot have one. */
function startWorker(): FileWorker | undefined {
  try {
    return new Worker(new URL("./file-worker.ts", import.meta.url)) as unknown as FileWorker;
  } catch {
    return undefined;
  }
}
