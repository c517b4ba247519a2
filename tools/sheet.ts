import { readFileSync, writeFileSync } from "node:fs";
import { isCellError, isRange } from "../shared/cells/cell.ts";
import { decodeDuty } from "../shared/duty/decode.ts";
import { loadDuty } from "../shared/duty/saved.ts";
import { type WorkedDuty, workedDuty } from "../shared/package/worked-duty.ts";
import { findingText } from "../shared/text/finding-text.ts";
import type { UnitSetName } from "../src/basis/quantities.ts";
import type { Finding } from "../src/basis/result.ts";
import { copyWorkbook, type DutyWorkbook, dutyWorkbook } from "./duty-workbook.ts";

/** `npm run sheet -- DUTY.json OUT.xlsx [values]`: writes the calc sheet of a saved duty as a workbook file. */
function main(args: readonly string[]): number {
  const [input, output, form = "add-in"] = args;
  if (input === undefined || output === undefined || (form !== "add-in" && form !== "values")) {
    process.stderr.write(
      "Usage: npm run sheet -- DUTY.json OUT.xlsx [add-in|values]\n" +
        "  add-in  live formulas for Excel with the add-in (the default)\n" +
        "  values  a copy of the results, without any formula and without the estimate\n",
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
  const worked = workedDuty(duty);
  let workbook: DutyWorkbook;
  try {
    workbook = form === "values" ? copyWorkbook(worked, today()) : dutyWorkbook(worked, saved.value);
  } catch (error) {
    process.stderr.write(`No sheet can be written from ${input}: ${(error as Error).message}\n`);
    return 1;
  }
  const { sheetNames, bytes } = workbook;
  try {
    writeFileSync(output, bytes);
  } catch (error) {
    process.stderr.write(`${output} cannot be written: ${(error as Error).message}\n`);
    return 1;
  }
  for (const finding of saved.findings) process.stderr.write(`${findingText(finding, duty.unitSet)}\n`);
  process.stdout.write(`Written: ${output}, ${sheetNames.map((name) => `“${name}”`).join(", ")}\n`);
  const errors = resultsInError(worked);
  if (errors.length > 0)
    process.stderr.write(`Results that are errors:\n${errors.map((one) => `  ${one}\n`).join("")}`);
  return 0;
}

/** Worked figures that have none, with the reason. */
function resultsInError({ plan, worked }: WorkedDuty): readonly string[] {
  return plan.items.flatMap((item) => {
    const answer = item.kind === "result" ? worked.cells.get(item.key) : undefined;
    if (item.kind !== "result" || answer === undefined || isRange(answer) || !isCellError(answer)) return [];
    return [`${item.label}: ${answer.message ?? answer.error}`];
  });
}

/** "2026-03-09" by this machine's clock and time zone. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
}

function refuse(input: string, findings: readonly Finding[], units: UnitSetName): number {
  const reasons = findings.filter(({ kind }) => kind === "error").map((finding) => findingText(finding, units));
  process.stderr.write(`No sheet can be written from ${input}:\n${reasons.map((reason) => `  ${reason}\n`).join("")}`);
  return 1;
}

process.exitCode = main(process.argv.slice(2));
