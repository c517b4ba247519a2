import { readFileSync, writeFileSync } from "node:fs";
import { dutyPlan } from "../shared/calc-sheet/duty-plan.ts";
import { rangeName } from "../shared/calc-sheet/layout/range-name.ts";
import { layOut } from "../shared/calc-sheet/layout.ts";
import { resultsCopy } from "../shared/calc-sheet/results-copy.ts";
import { isCellError, isRange } from "../shared/cells/cell.ts";
import { decodeDuty } from "../shared/duty/decode.ts";
import { loadDuty } from "../shared/duty/saved.ts";
import { type WorkedDuty, workedDuty } from "../shared/package/worked-duty.ts";
import { boxOf } from "../shared/ports/a1.ts";
import { HostFault } from "../shared/ports/host-fault.ts";
import { textOfBytes } from "../shared/text/encoding.ts";
import { findingText } from "../shared/text/finding-text.ts";
import { type Book, bookOfSet } from "../shared/xlsx/book-of-set.ts";
import type { UnitSetName } from "../src/basis/quantities.ts";
import type { Finding } from "../src/basis/result.ts";
import { dutyWorkbook } from "./duty-workbook.ts";

/** Who a file is for, by the words for it; the last two say how it is made. */
const READERS: Readonly<Record<string, "internal" | "customer">> = {
  internal: "internal",
  customer: "customer",
  "add-in": "internal",
  values: "customer",
};

/** `npm run sheet -- DUTY.json OUT.xlsx [customer]`: writes the calc sheet of a saved duty as a workbook file. */
function main(args: readonly string[]): number {
  const [input, output, word = "internal"] = args;
  const reader = Object.hasOwn(READERS, word) ? READERS[word] : undefined;
  if (input === undefined || output === undefined || reader === undefined) {
    process.stderr.write(
      "Usage: npm run sheet -- DUTY.json OUT.xlsx [internal|customer]\n" +
        "  internal  live formulas for Excel with the add-in, and the estimate (the default; or: add-in)\n" +
        "  customer  a copy of the results: no formula, no price, nothing can be changed (or: values)\n",
    );
    return 2;
  }
  let text: string;
  try {
    text = textOfBytes(new Uint8Array(readFileSync(input)));
  } catch (error) {
    process.stderr.write(`${input} cannot be read: ${(error as Error).message}\n`);
    return 1;
  }
  const saved = loadDuty(text);
  if (!saved.ok) return refuse(input, saved.findings, "US");
  const { duty, findings, isComplete } = decodeDuty(saved.value);
  if (!isComplete) return refuse(input, [...findings.values()].flat(), duty.unitSet);
  let workbook: Book;
  try {
    workbook =
      reader === "customer"
        ? bookOfSet(resultsCopy(dutyPlan(duty), workedDuty(duty).worked, today()))
        : dutyWorkbook(duty, saved.value);
  } catch (error) {
    process.stderr.write(`No sheet can be written from ${input}: ${inWords(error)}\n`);
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
  const errors = resultsInError(workedDuty(duty));
  if (errors.length > 0)
    process.stderr.write(`Results that are errors:\n${errors.map((one) => `  ${one}\n`).join("")}`);
  return 0;
}

/** What happened, and what would do. */
function inWords(fault: unknown): string {
  return fault instanceof HostFault ? `${fault.message} ${fault.remedy}` : (fault as Error).message;
}

/** Worked figures that have none, by the number of their line, with the reason. */
function resultsInError({ plan, worked }: WorkedDuty): readonly string[] {
  const inError = plan.items.flatMap((item) => {
    const answer = item.kind === "result" ? worked.cells.get(item.key) : undefined;
    if (item.kind !== "result" || answer === undefined || isRange(answer) || !isCellError(answer)) return [];
    return [{ ...item, reason: answer.message ?? answer.error }];
  });
  if (inError.length === 0) return [];
  const lines = linesOf({ plan, worked });
  return inError.map(({ key, label, reason }) => `${lines(key) ?? ""} ${label}: ${reason}`.trimStart());
}

/** The numbers by which lines are quoted, by what stands in them; beyond the first sheet, with its name. */
function linesOf({ plan, worked }: Pick<WorkedDuty, "plan" | "worked">): (key: string) => string | undefined {
  const set = layOut(plan, worked);
  const lines = new Map(
    set.sheets(set.wanted).flatMap(({ name: sheet, names = {}, cells }, i) => {
      const texts = new Map(cells.map(({ at, v }) => [at, v]));
      return Object.entries(names).flatMap(([name, range]): (readonly [string, string])[] => {
        const number = texts.get(`A${boxOf(range).top + 1}`);
        if (typeof number !== "string" || !/^\d+\.\d+$/.test(number)) return [];
        return [[name, i === 0 ? number : `“${sheet}” ${number}`]];
      });
    }),
  );
  return (key) => lines.get(rangeName(key));
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
