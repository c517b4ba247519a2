import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { isMainThread, parentPort, Worker } from "node:worker_threads";
import { bundleSizes } from "./bench/bundles.ts";
import { engineFigures } from "./bench/engine.ts";
import { gridRecalculation } from "./bench/grid.ts";
import { type KeystrokeFigures, keystrokeFigures } from "./bench/keystroke.ts";
import { libreOfficeColebrookRows } from "./bench/libreoffice.ts";
import { fileTimes } from "./bench/open-file.ts";
import { pageTimes } from "./bench/page.ts";
import { pumpFigures } from "./bench/pump.ts";
import { rankingFigures } from "./bench/rank.ts";
import { sheetTimes } from "./bench/sheet.ts";
import { dutyRates, evaluatorRun } from "./bench/terminal.ts";

/**
 * `npm run bench`: speed and sizes, each beside its target, all measured now on this machine. Targets in units of time are
 * for a machine on which the friction factor, measured first, reaches 20 million a second.
 */
async function main(): Promise<void> {
  const dist = join(process.cwd(), "dist");
  const engine = engineFigures();
  line("Friction factor, full precision", `${millions(engine.colebrookPerSecond)} a second`);
  line("  Swamee–Jain explicit formula", `${millions(engine.swameeJainPerSecond)} a second (target: ours no dearer)`);
  if (typeof engine.pythonPerSecond === "number") {
    const times = (engine.colebrookPerSecond / engine.pythonPerSecond).toFixed(0);
    line("  python3-fluids, scalar", `${millions(engine.pythonPerSecond)} a second; ours ${times} times (target 8)`);
  } else line("  python3-fluids, scalar", engine.pythonPerSecond);
  line("FRICTIONHEAD, single cell", `${micro(engine.frictionHeadSingle)} a call`);
  line("FRICTIONHEAD, 10,000-row column", `${micro(engine.frictionHeadColumnRow)} a row (target 0.5 µs)`);

  const pump = pumpFigures();
  line("PUMPHEAD, 10,000-row column", `${micro(pump.pumpHeadColumnRow)} a row`);
  line("PUMPPOWER, 10,000-row column", `${micro(pump.pumpPowerColumnRow)} a row`);
  line("PUMPHEAD, single cell with its curve", `${micro(pump.pumpHeadSingle)} a call`);
  line("OPERATINGPOINT, single cell", `${micro(pump.operatingPointSingle)} a call`);
  line("SPEEDRATIO, single cell", `${micro(pump.speedForSingle)} a call`);
  line("Operating point of 4 unlike pumps", `${micro(pump.fourUnlikePumps)} (target 50 µs)`);

  // On a machine of 20 million friction factors a second.
  const scaled = (ms: number): number => ms * (engine.colebrookPerSecond / 20e6);
  const { median, slowest } = await lettersTyped();
  line(
    "A letter typed, 12 cases of a route of 50 runs",
    `${median.toFixed(0)} ms, scaled ${scaled(median).toFixed(0)} ms (target 50 ms); ${slowest.ms.toFixed(0)} ms in ${slowest.box}`,
  );

  const ranking = rankingFigures();
  for (const { curves, ms } of ranking.cellFunction) {
    const target = curves === 10_000 ? " (target 100 ms)" : "";
    line(
      `RANKPUMPS over ${curves} curves of 10 points`,
      `${ms.toFixed(1)} ms, scaled ${scaled(ms).toFixed(1)} ms${target}`,
    );
  }
  const there = (ms: number): string => `${(scaled(ms) / 1000).toFixed(2)} s`;
  const { fixed, variable } = ranking.overTwelveCases;
  line("Ranking 10,000 pumps over 12 cases", `${fixed.toFixed(0)} ms, scaled ${there(fixed)} (target 1 s)`);
  line("  each case at its own speed", `${variable.toFixed(0)} ms, scaled ${there(variable)}`);
  line("1,000 duties against 24 pumps", `${ranking.thousandDuties.toFixed(0)} ms (target 1000 ms)`);

  const { cores, onOneCore, onAll } = await dutyRates();
  line("Duties with a pump, one core", `${onOneCore.toFixed(1)} a second`);
  line(
    "  1,000 through the duties command",
    `${onAll.toFixed(1)} a second on ${cores} cores, ${(onAll / onOneCore).toFixed(2)} times (target 1.8 on two)`,
  );
  const evaluator = await evaluatorRun();
  line("Evaluator, 1,000,000 lines", `${evaluator.perSecond.toFixed(0)} a second`);
  line(
    "  memory in the first and last quarter",
    `${(evaluator.firstQuarter / 1e6).toFixed(0)} MB and ${(evaluator.lastQuarter / 1e6).toFixed(0)} MB (target: no more)`,
  );

  const office = await libreOfficeColebrookRows();
  if ("skipped" in office) line("  LibreOffice, the same rows", `not measured: ${office.skipped}`);
  else {
    const ours = engine.frictionHeadColumnRow * 10_000 * 1000;
    const times = (office.msRecalculateAll / ours).toFixed(0);
    line(
      "  LibreOffice, native Colebrook, 10,000 rows",
      `${office.msRecalculateAll.toFixed(0)} ms; ours ${ours.toFixed(1)} ms, ${times} times faster (target 10)`,
    );
  }

  const grid = await gridRecalculation();
  line("Workbench grid, 10,000 function cells", `${grid.customMs.toFixed(0)} ms to recalculate`);
  line("  10,000 cells of built-in formulas", `${grid.builtInMs.toFixed(0)} ms`);

  const sheet = await sheetTimes();
  line(
    "The sheets of the quarry sample, file",
    `${sheet.fileMs.toFixed(0)} ms, scaled ${there(sheet.fileMs)} (target 0.4 s); laid out in ${sheet.laidOutMs.toFixed(0)} ms`,
  );
  line("  into the grid", `${sheet.gridMs.toFixed(0)} ms, scaled ${there(sheet.gridMs)} (target 1 s)`);

  const file = await fileTimes();
  const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;
  line(
    `A workbook of ${file.megabytes.toFixed(0)} MB and 100,000 cells`,
    `opened in ${seconds(file.openMs)}, downloaded in ${seconds(file.downloadMs)}, scaled ${there(file.openMs + file.downloadMs)} together (target 5 s)`,
  );

  if (!existsSync(dist)) {
    line("Bundles and page", "not measured: run npm start or npm run build first");
    return;
  }
  for (const { name, bytes, gzipped } of bundleSizes(dist)) {
    line(`Bundle ${name}`, `${kilobytes(bytes)}, ${kilobytes(gzipped)} gzipped${TARGETS[name] ?? ""}`);
  }
  const { serve } = (await import(join(process.cwd(), "tools", "serve.mjs"))) as {
    serve: (folder: string, port: number) => Promise<{ address: string; close: () => Promise<void> }>;
  };
  const server = await serve(dist, 0);
  try {
    const { pane, workbench, again } = await pageTimes(server.address);
    const inSeconds = (s: number, target: string): string => `${s.toFixed(2)} s (median of 5; target ${target})`;
    line("Chromium: the pane page to a live pane", inSeconds(pane, "1.2 s"));
    line("  the workbench to a live pane", inSeconds(workbench.pane, "1.5 s"));
    line("  to its grid", inSeconds(workbench.grid, "6 s"));
    line("  to its grid, opened once more", inSeconds(again.grid, "3 s"));
    line("  the longest it then answers nothing", inSeconds(workbench.longestBlock, "0.2 s"));
    line("    opened once more", inSeconds(again.longestBlock, "0.2 s"));
  } finally {
    await server.close();
  }
}

/** A pane is a page of its own: what else is run here would slow it, and it what else is run. */
function lettersTyped(): Promise<KeystrokeFigures> {
  return new Promise((resolve, reject) => {
    new Worker(fileURLToPath(import.meta.url)).once("message", resolve).once("error", reject);
  });
}

const TARGETS: Readonly<Record<string, string>> = {
  "functions.js": " (target 120 kB)",
  "taskpane.js": " (target 150 kB)",
};

function line(label: string, figure: string): void {
  process.stdout.write(`${label.padEnd(46)} ${figure}\n`);
}

function millions(rate: number): string {
  return `${(rate / 1e6).toFixed(2)} million`;
}

function micro(seconds: number): string {
  return `${(seconds * 1e6).toFixed(2)} µs`;
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`;
}

if (isMainThread) await main();
else parentPort?.postMessage(keystrokeFigures());
