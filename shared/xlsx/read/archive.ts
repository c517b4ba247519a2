import { Inflate } from "fflate";
import type { Limits } from "./limits.ts";
import { FileRefused, refuse } from "./refusal.ts";

/** The parts inside a file. Nothing is unpacked until it is asked for, and never more than the file declares. */
export interface Archive {
  /** The paths as the file spells them, in its order. */
  readonly paths: readonly string[];
  readonly has: (path: string) => boolean;
  /** What all its XML unpacks to, bytes. */
  readonly xmlBytes: number;
  /** A part as it lies in the file. */
  readonly packed: (path: string) => PackedPart;
  /** Hands over the bytes of a part piece by piece; `last` comes with the final piece. */
  readonly unpack: (path: string, take: (bytes: Uint8Array, last: boolean) => void) => void;
}

export interface PackedPart {
  readonly method: number;
  readonly crc: number;
  readonly unpacked: number;
  readonly bytes: Uint8Array;
}

interface Entry {
  /** As the file spells it. */
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly unpacked: number;
  readonly offset: number;
}

const OLE_FILE = 0xd0cf11e0;
const END_RECORD = 0x06054b50;
const DIRECTORY_RECORD = 0x02014b50;
const PART_RECORD = 0x04034b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;
const PIECE = 1 << 16;
/** Little parts of nothing but blanks pack to almost nothing and do no harm. */
const RATIO_FROM = 1e6;
/** How often all parts may be unpacked: cells, what else is in the file, and a patch of it each read some once. */
const READINGS = 3;

/** Reads the directory and checks the declared sizes before anything is unpacked. */
export function openArchive(bytes: Uint8Array, limits: Limits): Archive {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  checkKind(bytes, view, limits);
  const entries = directory(bytes, view, limits);

  const entryOf = (path: string): Entry =>
    entries.get(path.toLowerCase()) ??
    refuse("not-xlsx", `The file has no part ${path}, so it is not a whole workbook.`);

  let unpacked = 0;
  const unpack: Archive["unpack"] = (path, take) => {
    const entry = entryOf(path);
    unpacked += entry.unpacked;
    if (unpacked > READINGS * limits.totalBytes)
      refuse("too-large", `The file points to its part ${path} over and over, which no workbook does.`);
    const packed = packedBytes(bytes, view, path, entry);
    let length = 0;
    let crc = 0xffffffff;
    const check = (piece: Uint8Array, last: boolean): void => {
      length += piece.length;
      if (length > entry.unpacked) refuse("damaged", `Part ${path} unpacks to more than the file declares.`);
      crc = crcOf(piece, crc);
      take(piece, last);
    };
    if (entry.method === 0) check(packed, true);
    else if (entry.method === 8) inflate(packed, path, check);
    else refuse("damaged", `Part ${path} is packed in a way that is not known.`);
    if (length !== entry.unpacked || (crc ^ 0xffffffff) >>> 0 !== entry.crc)
      refuse("damaged", `Part ${path} is damaged: its checksum does not agree. Save the workbook again.`);
  };
  return {
    paths: [...entries.values()].map(({ name }) => name),
    xmlBytes: [...entries.values()]
      .filter(({ name }) => /\.(xml|rels)$/i.test(name))
      .reduce((total, { unpacked }) => total + unpacked, 0),
    has: (path) => entries.has(path.toLowerCase()),
    packed: (path) => {
      const entry = entryOf(path);
      const { method, crc, unpacked } = entry;
      return { method, crc, unpacked, bytes: packedBytes(bytes, view, path, entry) };
    },
    unpack,
  };
}

function checkKind(bytes: Uint8Array, view: DataView, limits: Limits): void {
  if (bytes.length === 0) refuse("empty", "The file is empty.");
  if (bytes.length > limits.fileBytes)
    refuse("too-large", `The file has more than ${megabytes(limits.fileBytes)}, the most that is read.`);
  if (bytes.length >= 8 && view.getUint32(0) === OLE_FILE)
    refuse(
      "old-or-locked",
      "This is an old .xls file or a workbook with a password. Save it as .xlsx without a password.",
    );
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) refuse("not-xlsx", "This is not an .xlsx file.");
}

function directory(bytes: Uint8Array, view: DataView, limits: Limits): ReadonlyMap<string, Entry> {
  const end = endRecord(view);
  const count = view.getUint16(end + 10, true);
  const start = view.getUint32(end + 16, true);
  if (count === 0xffff || start === 0xffffffff)
    refuse("not-allowed", "The file is packed in the zip64 form, which is not read. Save it as .xlsx again.");
  if (count > limits.parts) refuse("too-large", `The file has ${count} parts; at most ${limits.parts} are read.`);
  const entries = new Map<string, Entry>();
  const decoder = new TextDecoder();
  let total = 0;
  let at = start;
  for (let i = 0; i < count; i += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== DIRECTORY_RECORD)
      refuse("damaged", "The list of parts in the file is damaged. Save the workbook again.");
    const nameLength = view.getUint16(at + 28, true);
    const name = decoder.decode(bytes.subarray(at + 46, at + 46 + nameLength)).replaceAll("\\", "/");
    if ((view.getUint16(at + 8, true) & 1) === 1)
      refuse("locked", "The file is encrypted. Save it as .xlsx without a password.");
    if (entries.has(name.toLowerCase())) refuse("damaged", `The file holds part ${name} twice.`);
    const entry: Entry = {
      name,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      unpacked: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
    };
    total += entry.unpacked;
    checkSizes(entry, total, limits);
    entries.set(name.toLowerCase(), entry);
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

/** Both sizes are what the file declares; a part that unpacks to more is stopped as it does. */
function checkSizes({ name, packed, unpacked }: Entry, total: number, limits: Limits): void {
  if (unpacked > limits.partBytes)
    refuse(
      "too-large",
      `Part ${name} would unpack to ${megabytes(unpacked)}; at most ${megabytes(limits.partBytes)} are read.`,
    );
  if (total > limits.totalBytes)
    refuse(
      "too-large",
      `The workbook would unpack to more than ${megabytes(limits.totalBytes)}, the most that is read.`,
    );
  if (unpacked > RATIO_FROM && unpacked > limits.ratio * packed)
    refuse(
      "too-large",
      `Part ${name} would unpack to more than ${limits.ratio} times its size, which no workbook does.`,
    );
}

function endRecord(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at -= 1)
    if (view.getUint32(at, true) === END_RECORD) return at;
  return refuse("cut-short", "The file is incomplete: its end is missing. Copy or download it again.");
}

function packedBytes(bytes: Uint8Array, view: DataView, path: string, { offset, packed }: Entry): Uint8Array {
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== PART_RECORD)
    return refuse("damaged", `Part ${path} is not where the file says it is.`);
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + packed > bytes.length) return refuse("cut-short", `Part ${path} is cut off.`);
  return bytes.subarray(start, start + packed);
}

function inflate(packed: Uint8Array, path: string, take: (piece: Uint8Array, last: boolean) => void): void {
  const stream = new Inflate(take);
  try {
    // In pieces, so that a part that lies about its size is stopped early.
    for (let at = 0; at === 0 || at < packed.length; at += PIECE)
      stream.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
  } catch (problem) {
    if (problem instanceof FileRefused) throw problem;
    refuse("damaged", `Part ${path} is damaged and cannot be unpacked. Save the workbook again.`);
  }
}

function megabytes(bytes: number): string {
  return `${Math.round(bytes / 1e6)} MB`;
}

/** The running checksum of a zip file; the final one is its complement. */
export function crcOf(bytes: Uint8Array, before = 0xffffffff): number {
  let crc = before;
  for (const byte of bytes) crc = (CRC_TABLE[(crc ^ byte) & 0xff] as number) ^ (crc >>> 8);
  return crc;
}

const CRC_TABLE: Uint32Array = Uint32Array.from({ length: 256 }, (_, i) => {
  let c = i;
  for (let k = 0; k < 8; k += 1) c = (c & 1) === 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});
