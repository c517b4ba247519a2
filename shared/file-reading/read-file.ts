import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Result } from "../../src/basis/result.ts";
import { type ImportedPumps, importPumps, type PumpFile } from "../pump-table/import/import-pumps.ts";
import { type Unseen, unseenIn } from "../xlsx/patch/unseen.ts";
import { type ReadOutcome, readWorkbook } from "../xlsx/read-workbook.ts";

/** What is wanted of files. */
export type FileAsked =
  | { readonly kind: "pumps"; readonly files: readonly PumpFile[]; readonly unitSet: UnitSetName }
  | { readonly kind: "workbook"; readonly bytes: Uint8Array };

/** A workbook, and what of its file a grid does not show. */
export interface BookRead {
  readonly outcome: ReadOutcome;
  readonly unseen: readonly Unseen[];
}

export type FileAnswer<A extends FileAsked = FileAsked> = A extends { readonly kind: "pumps" }
  ? Result<ImportedPumps>
  : BookRead;

/** How far a reading has come, from 0 to 1. */
export type Progress = (share: number) => void;

/** Reads files. All of it is plain data on the way in and out, so that a thread of its own can do it. */
export function readFile(asked: FileAsked, progress: Progress): FileAnswer {
  if (asked.kind === "pumps") return importPumps(asked.files, asked.unitSet, progress);
  const outcome = readWorkbook(asked.bytes, undefined, progress);
  return { outcome, unseen: outcome.ok ? unseenIn(asked.bytes) : [] };
}
