import { expect, it } from "vitest";
import { type FileAnswer, type FileAsked, readFile } from "../../../../shared/file-reading/read-file.ts";
import { inventedPumps } from "../../../../shared/pump-table/library/library.ts";
import { pumpSheets } from "../../../../shared/pump-table/pump-sheets.ts";
import { writeWorkbook } from "../../../../shared/xlsx/write-workbook.ts";
import type { FromWorker } from "../../../../taskpane/pane/reading/messages.ts";
import { type FileWorker, readInWorker, tooLarge } from "../../../../taskpane/pane/reading/read-in-worker.ts";

const ROWS = "Pump;Flow, L/s;Head, m\nA;0;30\nA;10;28\nA;20;20\nB;0;40\nB;10;35\nB;20;25\n";
const PUMPS: FileAsked = {
  kind: "pumps",
  files: [{ name: "pumps.csv", bytes: new TextEncoder().encode(ROWS) }],
  unitSet: "SI",
};

/** A thread's worker: what goes in and comes out is copied, as between threads. */
function workerThat(act: (asked: FileAsked, say: (message: FromWorker) => void, worker: FileWorker) => void) {
  const seen = { isEnded: false };
  const worker: FileWorker = {
    onmessage: null,
    onerror: null,
    postMessage: (asked) => {
      const copy = structuredClone(asked);
      queueMicrotask(() => act(copy, (message) => worker.onmessage?.({ data: structuredClone(message) }), worker));
    },
    terminate: () => {
      seen.isEnded = true;
    },
  };
  return { seen, start: () => worker };
}

function working(): ReturnType<typeof workerThat> {
  return workerThat((asked, say) => {
    const answer = readFile(asked, (share) => say({ share }));
    say({ answer });
  });
}

const follow = (signal = new AbortController().signal, shares: number[] = []) => ({
  signal,
  progress: (share: number) => shares.push(share),
});

it("gives what reading in place gives, though all of it was copied from thread to thread", async () => {
  const { seen, start } = working();
  const read = await readInWorker(PUMPS, follow(), start);
  expect(read).toEqual(readFile(PUMPS, () => {}));
  expect((read as FileAnswer<Extract<FileAsked, { kind: "pumps" }>>).ok).toBe(true);
  expect(seen.isEnded).toBe(true);
});

it("reads in place where there are no threads", async () => {
  expect(await readInWorker(PUMPS, follow(), () => undefined)).toEqual(readFile(PUMPS, () => {}));
});

it("tells how far it has come, up to all of it", async () => {
  const bytes = writeWorkbook({ sheets: pumpSheets({ ...inventedPumps(), note: "Invented." }) });
  const shares: number[] = [];
  const read = await readInWorker({ kind: "workbook", bytes }, follow(undefined, shares), working().start);
  expect(read?.outcome.ok).toBe(true);
  expect(shares.length).toBeGreaterThan(3);
  expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  expect(shares.at(-1)).toBeGreaterThan(0.9);
  expect(shares.at(-1)).toBeLessThanOrEqual(1);
});

it("is broken off by the user, and its thread ended", async () => {
  const stop = new AbortController();
  const { seen, start } = workerThat((_asked, say) => {
    say({ share: 0.5 });
    stop.abort();
  });
  expect(await readInWorker(PUMPS, follow(stop.signal), start)).toBeUndefined();
  expect(seen.isEnded).toBe(true);
});

it("says so where the thread ends without an answer", async () => {
  const { seen, start } = workerThat((_asked, _say, worker) => worker.onerror?.({ message: "out of memory" }));
  await expect(readInWorker(PUMPS, follow(), start)).rejects.toThrow(/without an answer \(out of memory\)/);
  expect(seen.isEnded).toBe(true);
});

it("says so where the script of the thread cannot be loaded", async () => {
  const { seen, start } = workerThat((_asked, _say, worker) => worker.onerror?.({}));
  await expect(readInWorker(PUMPS, follow(), start)).rejects.toThrow("A part of Dutybook could not be loaded.");
  expect(seen.isEnded).toBe(true);
});

it("does not load a file beyond 50 MB", () => {
  expect(tooLarge([{ name: "a.xlsx", size: 50e6 }])).toBeUndefined();
  expect(
    tooLarge([
      { name: "a.xlsx", size: 1 },
      { name: "b.csv", size: 50e6 + 1 },
    ]),
  ).toMatch(/^b\.csv has more than 50 MB/);
});
