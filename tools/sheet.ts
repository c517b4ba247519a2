import { readFileSync, writeFileSync } from "node:fs";
import { decodeDuty } from "../shared/duty/decode.ts";
import { loadDuty } from "../shared/duty/saved.ts";
import { workedDuty } from "../shared/package/worked-duty.ts";
import { findingText } from "../shared/text/finding-text.ts";
import type { UnitSetName } from "../src/basis/quantities.ts";
import type { Finding } from "../src/basis/result.ts";
import { dutyWorkbook } from "./duty-workbook.ts";

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
  const saved = loadDuty(text);
  if (!saved.ok) return refuse(input, saved.findings, "US");
  const { duty, findings, isComplete } = decodeDuty(saved.value);
  if (!isComplete) return refuse(input, [...findings.values()].flat(), duty.unitSet);
  const { sheetNames, bytes } = dutyWorkbook(workedDuty(duty), form);
  try {
    writeFileSync(output, bytes);
  } catch (error) {
    process.stderr.write(`${output} cannot be written: ${(error as Error).message}\n`);
    return 1;
  }
  process.stdout.write(`Written: ${output}, ${sheetNames.map((name) => `“${name}”`).join(", ")}\n`);
  return 0;
}

function refuse(input: string, findings: readonly Finding[], units: UnitSetName): number {
  const reasons = findings.filter(({ kind }) => kind === "error").map((finding) => findingText(finding, units));
  process.stderr.write(`No sheet can be written from ${input}:\n${reasons.map((reason) => `  ${reason}\n`).join("")}`);
  return 1;
}

process.exitCode = main(process.argv.slice(2));
