import { failureText } from "../../../shared/ports/host-fault.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import type { PumpSheetsInput } from "../../../shared/pump-table/pump-sheets.ts";
import { part } from "../../part.ts";
import type { PaneContext } from "../context.ts";
import { readInWorker, tooLarge } from "../reading/read-in-worker.ts";
import { candidatesBeside } from "./candidates.ts";
import type { OffersEvent } from "./offers.ts";
import { readPumpSheets } from "./read-sheets.ts";

const INVENTED_NOTE = "Invented: nobody makes these pumps, and every figure here is made up. For trying out only.";

const NONE_FOUND =
  "No sheet has a row of headings with pump, flow and head above rows of curves. Write the rows of a curve under such headings, type the sheets or ranges to read, or add pumps.";

type Wanting = Pick<PaneContext, "host" | "send" | "state">;

/** Reads the pumps of the workbook: of the places typed, or of every sheet that has the headings. */
export async function readWorkbookPumps({ send, state }: Wanting, host: SheetHost): Promise<void> {
  const { unitSet } = state.duty;
  await attempt(send, "Reading the sheets …", async () => {
    const typed = state.offers.places;
    const read = await readPumpSheets(host, typed, unitSet);
    if (read.ok) return { type: "offers-read", candidates: read.value };
    const reason = read.findings.length === 0 ? NONE_FOUND : "The pumps could not be read.";
    return { type: "offers-failed", reason, findings: read.findings };
  });
}

/** Reads files of pumps, beside those read before; in a workbook they become sheets of their own, and no sheet that is there is touched. */
export async function importPumpFiles({ host, send, state }: Wanting, files: readonly File[]): Promise<void> {
  const { unitSet } = state.duty;
  const names = files.map(({ name }) => `“${name}”`).join(", ");
  const stop = new AbortController();
  const progress = (share: number): void => send({ type: "offers-progress", share });
  await attempt(
    send,
    `Reading ${names} …`,
    async () => {
      const reason = tooLarge(files);
      if (reason !== undefined) return failed(reason);
      const loaded = await Promise.all(
        files.map(async (file) => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) })),
      );
      const imported = await readInWorker({ kind: "pumps", files: loaded, unitSet }, { progress, signal: stop.signal });
      if (imported === undefined) return failed(`reading ${names} was stopped; nothing was imported.`);
      if (!imported.ok) {
        return { type: "offers-failed", reason: `${names}: nothing was imported.`, findings: imported.findings };
      }
      const { curves, list } = imported.value;
      const source = files.map(({ name }) => name).join(", ");
      const candidates = candidatesBeside(state.offers.candidates, {
        from: names,
        tables: [{ source, curves, ...(list && { list }) }],
        findings: imported.findings,
      });
      const note = `Imported from ${source}.`;
      return { type: "offers-read", candidates, ...(await addedTo(host, { curves, ...(list && { list }), note })) };
    },
    stop,
  );
}

/** Offers the invented pumps beside those read before; in a workbook they become sheets of their own. */
export async function addInventedPumps({ host, send, state }: Wanting): Promise<void> {
  await attempt(send, "Adding the invented library …", async () => {
    const { inventedPumps } = await part(import("../../../shared/pump-table/library/library.ts"));
    const tables = inventedPumps();
    const candidates = candidatesBeside(state.offers.candidates, {
      from: "the invented library (nobody makes these pumps)",
      tables: [{ source: "the invented library", ...tables }],
      findings: [],
    });
    return { type: "offers-read", candidates, ...(await addedTo(host, { ...tables, note: INVENTED_NOTE })) };
  });
}

/** The sheets of the pumps, once added; nothing without a workbook. */
async function addedTo(
  host: SheetHost | undefined,
  tables: PumpSheetsInput,
): Promise<Pick<Extract<OffersEvent, { type: "offers-read" }>, "sheets">> {
  if (host === undefined) return {};
  const { addPumpSheets } = await part(import("../../../shared/pump-table/pump-sheets.ts"));
  return { sheets: await addPumpSheets(host, tables) };
}

async function attempt(
  send: PaneContext["send"],
  what: string,
  act: () => Promise<OffersEvent>,
  stop?: AbortController,
): Promise<void> {
  send({ type: "offers-asked", what, ...(stop && { stop }) });
  try {
    send(await act());
  } catch (error) {
    send(failed(failureText(error)));
  }
}

function failed(reason: string): OffersEvent {
  return { type: "offers-failed", reason, findings: [] };
}
