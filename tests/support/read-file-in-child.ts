import { existsSync, readFileSync } from "node:fs";
import { importPumps } from "../../shared/pump-table/import/import-pumps.ts";
import { findingText } from "../../shared/text/finding-text.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";

// Run as a process of its own, with a heap of its own: reads the file as the workbook does, or as pumps.
const [how, path = ""] = process.argv.slice(2);
const bytes = new Uint8Array(readFileSync(path));

function pumps(): string {
  const read = importPumps([{ name: "file.xlsx", bytes }], "US");
  return read.ok ? "read" : read.findings.map((finding) => findingText(finding, "US")).join(" ");
}

function workbook(): string {
  const read = readWorkbook(bytes);
  return read.ok ? "read" : read.refusal.message;
}

const said = how === "pumps" ? pumps() : workbook();
process.stdout.write(JSON.stringify({ said, megabytes: megabytes() }));

/** The most memory this process has had, without what its parent had before it: where the system tells that. */
function megabytes(): number {
  const status = "/proc/self/status";
  const most = existsSync(status) ? /^VmHWM:\s+(\d+) kB$/m.exec(readFileSync(status, "utf8")) : null;
  return most === null ? process.memoryUsage().rss / 1e6 : (Number(most[1]) * 1024) / 1e6;
}
