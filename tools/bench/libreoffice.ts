import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { writeWorkbook } from "../../shared/xlsx/write-workbook.ts";

export interface LibreOfficeFigures {
  /** Shortest time to recalculate all rows, ms. */
  readonly msRecalculateAll: number;
  /** Greatest relative difference of a head from the converged solution. */
  readonly worst: number;
}

const run = promisify(execFile);
const PYTHON = "/usr/bin/python3";
const SOFFICE = "/usr/bin/soffice";
const ROWS = 10_000;
const STEPS = 6;
const TIMEOUT = 180_000;

/** What LibreOffice takes for 10,000 rows of friction head by native formulas, checked to be calculated anew each time. */
export async function libreOfficeColebrookRows(): Promise<LibreOfficeFigures | { readonly skipped: string }> {
  for (const program of [PYTHON, SOFFICE]) if (!existsSync(program)) return { skipped: `${program} is not installed` };
  try {
    await run(PYTHON, ["-c", "import uno"]);
  } catch {
    return { skipped: "python3-uno is not installed" };
  }
  const folder = await mkdtemp(join(tmpdir(), "bench-"));
  try {
    const book = join(folder, "colebrook.xlsx");
    await writeFile(book, writeWorkbook({ sheets: [colebrookSheet()] }));
    const script = join(process.cwd(), "tools", "bench", "libreoffice", "colebrook_rows.py");
    const { stdout } = await run(PYTHON, [script, book], { timeout: TIMEOUT });
    return JSON.parse(stdout) as LibreOfficeFigures;
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 3 });
  }
}

/**
 * Flow (m³/s), bore, roughness, length (m) and kinematic viscosity (m²/s) in A to E; velocity, Reynolds number,
 * 1/√f and head in F to I; a factor on all viscosities in K1. All rows are turbulent. One cell holds all the steps
 * for 1/√f, which LibreOffice calculates faster than a column a step.
 */
function colebrookSheet(): SheetSpec {
  const cells: CellSpec[] = [{ at: "K1", v: 1 }];
  const titles = ["flow", "bore", "roughness", "length", "viscosity", "velocity", "Reynolds", "1/√f", "head"];
  titles.forEach((v, i) => {
    cells.push({ at: `${"ABCDEFGHI"[i]}1`, v });
  });
  for (let i = 0; i < ROWS; i += 1) {
    const row = i + 2;
    const bore = 0.1 + 0.02 * (i % 20);
    const velocity = 0.8 + 0.0003 * i;
    cells.push(
      { at: `A${row}`, v: (Math.PI / 4) * bore ** 2 * velocity },
      { at: `B${row}`, v: bore },
      { at: `C${row}`, v: 1.5e-6 * (1 + (i % 100)) },
      { at: `D${row}`, v: 50 + (i % 950) },
      { at: `E${row}`, v: 0.8e-6 + 1e-9 * (i % 700) },
      { at: `F${row}`, f: `A${row}/(PI()/4*B${row}^2)` },
      { at: `G${row}`, f: `F${row}*B${row}/(E${row}*$K$1)` },
      { at: `H${row}`, f: colebrook(`C${row}/B${row}`, `G${row}`) },
      { at: `I${row}`, f: `D${row}/B${row}*F${row}^2/(2*9.80665)/H${row}^2` },
    );
  }
  return { name: "Colebrook", columns: [], styles: {}, cells };
}

/** Colebrook by steps of substitution from the Swamee–Jain value. */
function colebrook(roughness: string, reynolds: string): string {
  let root = `-2*LOG10(${roughness}/3.7+5.74/${reynolds}^0.9)`;
  for (let i = 0; i < STEPS; i += 1) root = `-2*LOG10(${roughness}/3.7+2.51*(${root})/${reynolds})`;
  return root;
}
