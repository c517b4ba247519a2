import { strFromU8, unzipSync } from "fflate";

/** How two packages differ; nothing here is read by the code under test. */
export interface PartDifferences {
  /** Parts that one of the two has not, or whose bytes differ. */
  readonly parts: readonly string[];
  readonly cells: readonly ChangedCell[];
  /** Sheets whose text differs outside their cells. */
  readonly around: readonly string[];
}

export interface ChangedCell {
  readonly path: string;
  readonly at: string;
  /** It has the formula it had, to the letter. */
  readonly keepsFormula: boolean;
}

export function differences(before: Uint8Array, after: Uint8Array): PartDifferences {
  const [was, is] = [unzipSync(before), unzipSync(after)];
  const paths = [...new Set([...Object.keys(was), ...Object.keys(is)])].filter((path) => !path.endsWith("/"));
  const parts = paths.filter((path) => !sameBytes(was[path], is[path])).sort();
  const sheets = parts.filter((path) => /worksheets\/[^/]+\.xml$/.test(path) && path in was && path in is);
  const cells: ChangedCell[] = [];
  const around: string[] = [];
  for (const path of sheets) {
    const [old, now] = [
      partedSheet(strFromU8(was[path] as Uint8Array)),
      partedSheet(strFromU8(is[path] as Uint8Array)),
    ];
    if (old.around !== now.around) around.push(path);
    for (const at of new Set([...old.cells.keys(), ...now.cells.keys()])) {
      const [a, b] = [old.cells.get(at), now.cells.get(at)];
      if (a === b) continue;
      const formula = formulaIn(a);
      cells.push({ path, at, keepsFormula: formula !== undefined && formula === formulaIn(b) });
    }
  }
  return { parts, cells, around };
}

/** The part of a sheet, by the name on its tab. */
export function partOfSheet(bytes: Uint8Array, name: string): string {
  const parts = Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
  const escaped = name.replaceAll("&", "&amp;");
  const sheet = [...(parts["xl/workbook.xml"] ?? "").matchAll(/<sheet\b[^>]*>/g)]
    .map(([tag]) => tag)
    .find((tag) => tag.includes(`name="${escaped}"`) || tag.includes(`name="${escaped.replaceAll("'", "&apos;")}"`));
  const id = /\br:id="([^"]+)"/.exec(sheet ?? "")?.[1];
  const link = [...(parts["xl/_rels/workbook.xml.rels"] ?? "").matchAll(/<Relationship\b[^>]*>/g)]
    .map(([tag]) => tag)
    .find((tag) => tag.includes(`Id="${id}"`));
  const target = /\bTarget="([^"]+)"/.exec(link ?? "")?.[1] ?? "";
  return target.startsWith("/") ? target.slice(1) : `xl/${target}`;
}

function partedSheet(text: string): { readonly cells: ReadonlyMap<string, string>; readonly around: string } {
  const cells = new Map<string, string>();
  const around = text.replace(/<c\b[^>]*?(?:\/>|>[\s\S]*?<\/c>)/g, (cell) => {
    cells.set(/\br="([A-Z]+\d+)"/.exec(cell)?.[1] ?? cell, cell);
    return "";
  });
  return { cells, around };
}

function formulaIn(cell: string | undefined): string | undefined {
  return /<f\b[^>]*?(?:\/>|>[\s\S]*?<\/f>)/.exec(cell ?? "")?.[0];
}

function sameBytes(a: Uint8Array | undefined, b: Uint8Array | undefined): boolean {
  return a !== undefined && b !== undefined && a.length === b.length && a.every((byte, i) => byte === b[i]);
}
