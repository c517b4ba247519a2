import { execFile } from "node:child_process";
import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";

const run = promisify(execFile);
const SOFFICE = "/usr/bin/soffice";
const TIMEOUT = 90_000;

type Form = "pdf" | "csv" | "xlsx";

/**
 * Opens a workbook in LibreOffice and saves it in another form: "pdf", "csv" (the first sheet) or "xlsx". Each run
 * has a profile of its own, so that runs cannot meet; all of it is gone afterwards.
 */
export async function converted(workbook: Uint8Array, form: Form): Promise<Uint8Array> {
  return (await allConverted([workbook], form))[0] as Uint8Array;
}

/** Several in one run, which is far quicker than a run for each. */
export async function allConverted(workbooks: readonly Uint8Array[], form: Form): Promise<readonly Uint8Array[]> {
  return inFolder(async (folder) => {
    const names = workbooks.map((_, i) => `book${i}`);
    const files = names.map((name) => join(folder, `${name}.xlsx`));
    const out = join(folder, "out");
    for (const [i, file] of files.entries()) await writeFile(file, workbooks[i] as Uint8Array);
    await run(
      SOFFICE,
      [
        `-env:UserInstallation=${pathToFileURL(join(folder, "profile"))}`,
        "--headless",
        "--norestore",
        "--convert-to",
        form,
        "--outdir",
        out,
        ...files,
      ],
      { timeout: TIMEOUT, killSignal: "SIGKILL" },
    );
    return Promise.all(names.map(async (name) => new Uint8Array(await readFile(join(out, `${name}.${form}`)))));
  });
}

export interface Pages {
  readonly count: number;
  /** The text of the pages, laid out as printed; a form feed ends each. */
  readonly text: string;
}

export async function pagesOf(pdf: Uint8Array): Promise<Pages> {
  return inFolder(async (folder) => {
    const file = join(folder, "book.pdf");
    await writeFile(file, pdf);
    const { stdout: facts } = await run("pdfinfo", [file], { timeout: TIMEOUT });
    const { stdout: text } = await run("pdftotext", ["-layout", file, "-"], { timeout: TIMEOUT });
    return { count: Number(/^Pages:\s+(\d+)$/m.exec(facts)?.[1]), text };
  });
}

/** A word as it is printed, in points from the top left corner of its page. */
export interface PrintedWord {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly middle: number;
}

/** The words of each page, and its size in points. */
export async function printedPages(
  pdf: Uint8Array,
): Promise<readonly { readonly width: number; readonly height: number; readonly words: readonly PrintedWord[] }[]> {
  return inFolder(async (folder) => {
    const file = join(folder, "book.pdf");
    await writeFile(file, pdf);
    const { stdout } = await run("pdftotext", ["-bbox", file, "-"], { timeout: TIMEOUT, maxBuffer: 64_000_000 });
    return stdout
      .split("<page ")
      .slice(1)
      .map((page) => {
        const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(page) ?? [];
        const words = [
          ...page.matchAll(/xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">([^<]*)</g),
        ].map(([, left, top, right, bottom, text = ""]) => ({
          text: text.replace(/&(amp|lt|gt|quot|apos|#39);/g, (mark) => MARKS[mark] ?? mark),
          left: Number(left),
          right: Number(right),
          middle: (Number(top) + Number(bottom)) / 2,
        }));
        return { width: Number(width), height: Number(height), words };
      });
  });
}

const MARKS: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&apos;": "'",
  "&#39;": "'",
};

/** How many dots of that colour ("#RRGGBB") the page shows at 72 dots an inch; each channel may be off by 24. */
export async function dotsOfColor(pdf: Uint8Array, page: number, color: string): Promise<number> {
  return inFolder(async (folder) => {
    const file = join(folder, "book.pdf");
    await writeFile(file, pdf);
    await run("pdftoppm", ["-r", "72", "-f", String(page), "-l", String(page), file, join(folder, "page")], {
      timeout: TIMEOUT,
    });
    const image = (await readdir(folder)).find((name) => name.endsWith(".ppm"));
    if (image === undefined) throw new Error(`the file has no page ${page}`);
    const bytes = await readFile(join(folder, image));
    // Binary PPM: "P6\n<width> <height>\n255\n" and three bytes a dot.
    const header = /^P6\s+\d+\s+\d+\s+255\s/.exec(bytes.subarray(0, 64).toString("latin1"))?.[0] ?? "";
    const wanted = [1, 3, 5].map((i) => Number.parseInt(color.slice(i, i + 2), 16));
    let dots = 0;
    for (let at = header.length; at + 2 < bytes.length; at += 3)
      if (wanted.every((channel, i) => Math.abs(channel - (bytes[at + i] ?? 0)) <= 24)) dots += 1;
    return dots;
  });
}

async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "workbook-"));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 3 });
  }
}
