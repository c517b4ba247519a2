import { readFileSync, writeFileSync } from "node:fs";
import { dutiesIn, type FoundDuty } from "../shared/calc-sheet/open-again/duties-in.ts";
import { changeText } from "../shared/duty/change.ts";
import { saveDuty } from "../shared/duty/saved.ts";
import { findingText } from "../shared/text/finding-text.ts";
import { readWorkbook } from "../shared/xlsx/read-workbook.ts";
import { recordedSheets } from "../shared/xlsx/recorded-sheets.ts";

/** `npm run duty -- BOOK.xlsx OUT.json [SHEET]`: saves the duty of a workbook's sheets, with what was changed on them. */
function main(args: readonly string[]): number {
  const [input, output, sheet] = args;
  if (input === undefined || output === undefined) {
    process.stderr.write(
      "Usage: npm run duty -- BOOK.xlsx OUT.json [SHEET]\n" +
        "  SHEET  the sheet of the duty, where the workbook holds several\n",
    );
    return 2;
  }
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(readFileSync(input));
  } catch (error) {
    return refuse(`${input} cannot be read: ${(error as Error).message}`);
  }
  const outcome = readWorkbook(bytes);
  if (!outcome.ok) return refuse(`${input} cannot be read: ${outcome.refusal.message}`);
  const { duties, lost } = dutiesIn(recordedSheets(outcome.workbook));
  const reasons = lost.map((one) => `“${one.sheet}”: ${one.findings.map((each) => findingText(each, "US")).join(" ")}`);
  if (duties.length === 0) return refuse([`${input} holds no duty that can be opened again.`, ...reasons].join("\n  "));
  const named = sheet === undefined ? duties : duties.filter((one) => one.sheet.toLowerCase() === sheet.toLowerCase());
  const [found, ...others] = named;
  if (found === undefined || others.length > 0) {
    const names = duties.map((one) => `“${one.sheet}”`).join(", ");
    return refuse(`${input} holds the duties of ${names}: name the sheet of one.`);
  }
  try {
    writeFileSync(output, saveDuty(found.back.duty));
  } catch (error) {
    return refuse(`${output} cannot be written: ${(error as Error).message}`);
  }
  process.stdout.write(`Written: ${output}, the duty of “${found.sheet}”\n${report(found)}`);
  for (const reason of reasons) process.stderr.write(`Not opened: ${reason}\n`);
  return 0;
}

function report({ back: { taken, remarks } }: FoundDuty): string {
  const list = (title: string, lines: readonly string[]): string =>
    lines.length === 0 ? "" : `${title}:\n${lines.map((line) => `  ${line}\n`).join("")}`;
  return (
    list("Changed on the sheet", taken.map(changeText)) +
    list(
      "To look at",
      remarks.map(({ text }) => text),
    )
  );
}

function refuse(words: string): number {
  process.stderr.write(`${words}\n`);
  return 1;
}

process.exitCode = main(process.argv.slice(2));
