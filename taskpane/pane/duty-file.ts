import type { DutyText } from "../../shared/duty/duty-text.ts";
import { loadDuty, saveDuty } from "../../shared/duty/saved.ts";
import { textOfBytes } from "../../shared/text/encoding.ts";
import type { Result } from "../../src/basis/result.ts";
import { handOver } from "./hand-over.ts";

/** Hands the duty to the browser as a file to keep. */
export function downloadDuty(duty: DutyText): string {
  const name = fileName(duty);
  handOver(name, saveDuty(duty), "application/json");
  return name;
}

/** Reads a chosen file. */
export async function readDutyFile(file: File): Promise<Result<DutyText>> {
  return loadDuty(textOfBytes(new Uint8Array(await file.arrayBuffer())));
}

/** "duty P-101.json": letters, figures and hyphens that every disk takes. */
export function fileName({ fields }: DutyText): string {
  const subject = (fields.item.trim() || fields.project.trim())
    .replace(/[^\p{L}\p{N}._-]+/gu, " ")
    .trim()
    .slice(0, 60);
  return subject === "" ? "duty.json" : `duty ${subject}.json`;
}
