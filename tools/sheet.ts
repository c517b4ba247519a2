import { readFileSync, writeFileSync } from "node:fs";
import { dutySheet } from "../shared/calc-sheet/duty-sheet.ts";
import { loadDuty } from "../shared/duty/saved.ts";
import { findingText } from "../shared/text/finding-text.ts";
import { writeWorkbook } from "../shared/xlsx/write-workbook.ts";

/** `npm run sheet -- DUTY.json OUT.xlsx [values]`: writes the calc sheet of a saved duty as a workbook file. */
function main(args: readonly string[]): number {
  const [input, output, form = "add-in"] = args;
  if (input === undefined || output === undefined || (form !== "add-in" && form !== "values")) {
    process.stderr.write(
      "Usage: npm run sheet -- DUTY.json OUT.xlsx [add-in|values]\n" +
        "  add-in  live formulas for Excel with the add-in (the default)\n" +
        "  values  results in place of add-in formulas, for readers without it\n",
    );
    return 2;
  }
  let text: string;
  try {
    text = readFileSync(input, "utf8");
  } catch (error) {
    process.stderr.write(`${input} cannot be read: ${(error as Error).message}\n`);
    return 1;
  }
  const duty = loadDuty(text);
  if (!duty.ok)
    return refuse(
      input,
      duty.findings.map((finding) => findingText(finding, "US")),
    );
  const sheet = dutySheet(duty.value);
  if (!sheet.ok)
    return refuse(
      input,
      sheet.findings.map((finding) => findingText(finding, duty.value.unitSet)),
    );
  writeFileSync(output, writeWorkbook({ sheets: [sheet.value], form }));
  process.stdout.write(`Written: ${output}, sheet “${sheet.value.name}”\n`);
  return 0;
}

function refuse(input: string, reasons: readonly string[]): number {
  process.stderr.write(`No sheet can be written from ${input}:\n${reasons.map((reason) => `  ${reason}\n`).join("")}`);
  return 1;
}

process.exitCode = main(process.argv.slice(2));
