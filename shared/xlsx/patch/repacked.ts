import { deflateSync } from "fflate";
import { type Archive, crcOf, type PackedPart } from "../read/archive.ts";

/** Parts by path with their new bytes; nothing for a part that is taken out. Paths the archive has not are added at its end. */
export type PartChanges = ReadonlyMap<string, Uint8Array | undefined>;

const PART_RECORD = 0x04034b50;
const DIRECTORY_RECORD = 0x02014b50;
const END_RECORD = 0x06054b50;
const VERSION = 20;
const NAMES_IN_UTF8 = 0x0800;
/** Midnight of 1 January 1980, the first a zip can say. */
const FIRST_DAY = 0x0021;

/** The file anew: parts that no change names are copied as they lie, still packed. */
export function repacked(archive: Archive, changes: PartChanges): Uint8Array {
  const left = new Map(changes);
  const parts: (readonly [string, PackedPart])[] = [];
  for (const path of archive.paths) {
    if (!left.has(path)) parts.push([path, archive.packed(path)]);
    else {
      const bytes = left.get(path);
      if (bytes !== undefined) parts.push([path, packed(bytes)]);
    }
    left.delete(path);
  }
  for (const [path, bytes] of left) if (bytes !== undefined) parts.push([path, packed(bytes)]);
  return zipOf(parts);
}

function packed(bytes: Uint8Array): PackedPart {
  return {
    method: 8,
    crc: (crcOf(bytes) ^ 0xffffffff) >>> 0,
    unpacked: bytes.length,
    bytes: deflateSync(bytes, { level: 6 }),
  };
}

function zipOf(parts: readonly (readonly [string, PackedPart])[]): Uint8Array {
  const named = parts.map(([path, part]) => ({ name: new TextEncoder().encode(path), part }));
  const size = named.reduce((sum, { name, part }) => sum + 30 + 46 + 2 * name.length + part.bytes.length, 22);
  const zip = new Uint8Array(size);
  const view = new DataView(zip.buffer);
  const offsets: number[] = [];
  let at = 0;
  const facts = (start: number, { name, part }: (typeof named)[number]): void => {
    view.setUint16(start, VERSION, true);
    view.setUint16(start + 2, NAMES_IN_UTF8, true);
    view.setUint16(start + 4, part.method, true);
    view.setUint16(start + 8, FIRST_DAY, true);
    view.setUint32(start + 10, part.crc, true);
    view.setUint32(start + 14, part.bytes.length, true);
    view.setUint32(start + 18, part.unpacked, true);
    view.setUint16(start + 22, name.length, true);
  };
  for (const each of named) {
    offsets.push(at);
    view.setUint32(at, PART_RECORD, true);
    facts(at + 4, each);
    zip.set(each.name, at + 30);
    zip.set(each.part.bytes, at + 30 + each.name.length);
    at += 30 + each.name.length + each.part.bytes.length;
  }
  const directory = at;
  for (const [i, each] of named.entries()) {
    view.setUint32(at, DIRECTORY_RECORD, true);
    view.setUint16(at + 4, VERSION, true);
    facts(at + 6, each);
    view.setUint32(at + 42, offsets[i] as number, true);
    zip.set(each.name, at + 46);
    at += 46 + each.name.length;
  }
  view.setUint32(at, END_RECORD, true);
  view.setUint16(at + 8, named.length, true);
  view.setUint16(at + 10, named.length, true);
  view.setUint32(at + 12, at - directory, true);
  view.setUint32(at + 16, directory, true);
  return zip;
}
