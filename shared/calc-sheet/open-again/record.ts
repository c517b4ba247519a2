import { type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import type { DutyText } from "../../duty/duty-text.ts";
import { loadDuty, saveDuty } from "../../duty/saved.ts";
import { RECORD_NAMESPACE } from "../../ports/sheet-record.ts";
import { attributes, DECLARATION, xmlText } from "../../xlsx/xml-text.ts";
import { type Prices, withoutPrices } from "./prices.ts";
import { inputsOn, readWrittenInputs, type WrittenInputs } from "./written-inputs.ts";

/** A duty as it was saved when its sheets were written. */
export interface SavedWith {
  readonly id: string;
  readonly revision: string;
  /** As saveDuty writes it, without its prices and costs. */
  readonly saved: string;
  readonly prices: Prices;
}

/** A record read back. */
export interface DutyRecord {
  readonly id: string;
  readonly revision: string;
  /** Without its prices and costs. */
  readonly duty: DutyText;
  /** Those of the sheet of the duty. */
  readonly inputs: WrittenInputs;
}

/** The duty to go with its sheets. The same duty and mark always give the same record. */
export function savedWith(duty: DutyText, mark: string): SavedWith {
  const { open, prices } = withoutPrices(duty);
  const saved = saveDuty(open);
  return { id: digest(`${mark}\n${saved}`), revision: duty.fields.revision.trim(), saved, prices };
}

/** What the cell says by which a sheet is known. */
export function recordWords({ id }: Pick<SavedWith, "id">): string {
  return `Opens again in Dutybook: record ${id}`;
}

/** The id in such a cell. */
export function recordIdIn(words: unknown): string | undefined {
  return typeof words === "string" ? /\brecord ([0-9a-f]{32})$/.exec(words.trim())?.[1] : undefined;
}

export function recordText({ id, revision, saved }: SavedWith, all: WrittenInputs): string {
  const inputs = JSON.stringify(inputsOn("duty", all));
  return `${DECLARATION}<duty${attributes({ xmlns: RECORD_NAMESPACE, id, revision })}><saved>${inXml(saved)}</saved><inputs>${inXml(inputs)}</inputs></duty>`;
}

/** A record out of its XML; what is wrong with it where it is none. */
export function readRecord(xml: string): Result<DutyRecord> {
  const root = /<(?:[\w.-]+:)?duty\b([^>]*)>/.exec(xml)?.[1] ?? "";
  const [id, revision] = [attributeIn(root, "id"), attributeIn(root, "revision")];
  const [saved, inputs] = [elementIn(xml, "saved"), elementIn(xml, "inputs")];
  if (id === undefined || saved === undefined || inputs === undefined)
    return fail([unreadable("parts of it are missing")]);
  const duty = loadDuty(saved);
  if (!duty.ok) return duty;
  const written = readWrittenInputs(inputs);
  if (written === undefined) return fail([unreadable("what it says of the inputs cannot be read")]);
  return succeed({ id, revision: revision ?? "", duty: duty.value, inputs: written }, duty.findings);
}

function unreadable(reason: string): Finding {
  return { code: "duty-unreadable", kind: "error", subject: "record of the sheet", facts: { reason } };
}

/** A JSON text without characters that XML cannot hold or would change. */
function inXml(json: string): string {
  return xmlText(
    json.replace(
      /[\u007f-\u009f\ufffe\uffff]/g,
      (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
    ),
  );
}

function attributeIn(tag: string, name: string): string | undefined {
  const match = new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
  return match === null ? undefined : withoutEntities(match[1] ?? match[2] ?? "");
}

/** The text of an element that has no other in it, whatever prefix a program gave it. */
function elementIn(xml: string, name: string): string | undefined {
  const match = new RegExp(`<((?:[\\w.-]+:)?)${name}\\b[^>]*>([^<]*)</\\1${name}\\s*>`).exec(xml);
  return match === null ? undefined : withoutEntities(match[2] as string);
}

const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

function withoutEntities(text: string): string {
  return text.replace(
    /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|(\w+));/gi,
    (whole, hex?: string, decimal?: string, name?: string) => {
      if (name !== undefined) return ENTITIES[name] ?? whole;
      const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
      return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    },
  );
}

/** 128 bits of a text, to tell records apart (FNV-1a with four offsets). */
function digest(text: string): string {
  const bytes = new TextEncoder().encode(text);
  return [0x811c9dc5, 0x01000193, 0x9e3779b9, 0x85ebca6b]
    .map((offset) => {
      let hash = offset;
      for (const byte of bytes) hash = Math.imul(hash ^ byte, 0x01000193);
      return (hash >>> 0).toString(16).padStart(8, "0");
    })
    .join("");
}
