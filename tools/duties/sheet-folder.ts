import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Duty } from "../../shared/duty/duty.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { dutyWorkbook } from "../duty-workbook.ts";

/** A folder that takes the workbooks of duties; what stands in it already is never written over. */
export class SheetFolder {
  readonly #folder: string;

  /** Makes the folder where there is none. Throws where it cannot. */
  constructor(folder: string) {
    mkdirSync(folder, { recursive: true });
    this.#folder = folder;
  }

  /** Writes the calc sheet under this name, or with a number behind it where the name is taken. */
  write(duty: Duty, typed: DutyText, wanted: string): { readonly file: string } | { readonly error: string } {
    const { bytes } = dutyWorkbook(duty, typed);
    const name = fileName(wanted);
    for (let n = 1; ; n += 1) {
      const file = join(this.#folder, `${name}${n === 1 ? "" : ` ${n}`}.xlsx`);
      try {
        writeFileSync(file, bytes, { flag: "wx" });
        return { file };
      } catch (error) {
        const { code, message } = error as NodeJS.ErrnoException;
        if (code !== "EEXIST") return { error: `${file} cannot be written: ${message}` };
      }
    }
  }
}

/** Letters, figures and signs that every disk takes. */
function fileName(wanted: string): string {
  const name = wanted
    .replace(/[^\p{L}\p{N}._-]+/gu, " ")
    .replace(/^[. ]+|[. ]+$/g, "")
    .slice(0, 80)
    .trim();
  return name === "" ? "Duty" : name;
}
