import { RECORD_NAMESPACE } from "../../ports/sheet-record.ts";
import type { Archive } from "./archive.ts";
import type { Limits } from "./limits.ts";
import { FileRefused } from "./refusal.ts";
import { readPart } from "./xml-part.ts";

const ITEM = /(^|\/)customxml\/item\d*\.xml$/i;

/**
 * The XML texts of ours that a workbook carries, by their folder: programs differ in which part points to them. One that
 * cannot be read is passed over, for it may be anybody's.
 */
export function readRecords(archive: Archive, limits: Limits): readonly string[] {
  return archive.paths.filter((path) => ITEM.test(path)).flatMap((path) => recordIn(archive, path, limits) ?? []);
}

function recordIn(archive: Archive, path: string, limits: Limits): string | undefined {
  try {
    return isOurs(archive, path, limits) ? textOf(archive, path) : undefined;
  } catch (problem) {
    if (problem instanceof FileRefused) return undefined;
    throw problem;
  }
}

function isOurs(archive: Archive, path: string, limits: Limits): boolean {
  let is = false;
  let depth = 0;
  readPart(
    archive,
    path,
    {
      open: (name, attributes) => {
        if (depth === 0) is = name === "duty" && Object.values(attributes).includes(RECORD_NAMESPACE);
        depth += 1;
      },
    },
    limits,
  );
  return is;
}

function textOf(archive: Archive, path: string): string {
  const decoder = new TextDecoder();
  let text = "";
  archive.unpack(path, (bytes, last) => {
    text += decoder.decode(bytes, { stream: !last });
  });
  return text;
}
