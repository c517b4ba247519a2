import { strToU8, type Zippable, zipSync } from "fflate";
import { DECLARATION, xmlAttribute } from "../xml-text.ts";
import { PACKAGE, RELATIONSHIPS } from "./schemas.ts";

const TYPES = {
  workbook: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
  worksheet: "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml",
  styles: "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml",
  sharedStrings: "application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml",
  sheetMetadata: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml",
  theme: "application/vnd.openxmlformats-officedocument.theme+xml",
  drawing: "application/vnd.openxmlformats-officedocument.drawing+xml",
  chart: "application/vnd.openxmlformats-officedocument.drawingml.chart+xml",
  coreProperties: "application/vnd.openxmlformats-package.core-properties+xml",
  extendedProperties: "application/vnd.openxmlformats-officedocument.extended-properties+xml",
  customXml: "application/xml",
  customXmlProperties: "application/vnd.openxmlformats-officedocument.customXmlProperties+xml",
} as const;

/** Pictures, by their extension. */
const MEDIA_TYPES = { png: "image/png", jpeg: "image/jpeg" } as const;
export type MediaType = keyof typeof MEDIA_TYPES;
type TextType = keyof typeof TYPES;
export type PartType = TextType | MediaType;

const RELATION: Readonly<Record<PartType, string>> = {
  workbook: `${RELATIONSHIPS}/officeDocument`,
  worksheet: `${RELATIONSHIPS}/worksheet`,
  styles: `${RELATIONSHIPS}/styles`,
  sharedStrings: `${RELATIONSHIPS}/sharedStrings`,
  sheetMetadata: `${RELATIONSHIPS}/sheetMetadata`,
  theme: `${RELATIONSHIPS}/theme`,
  drawing: `${RELATIONSHIPS}/drawing`,
  chart: `${RELATIONSHIPS}/chart`,
  coreProperties: `${PACKAGE}/relationships/metadata/core-properties`,
  extendedProperties: `${RELATIONSHIPS}/extended-properties`,
  png: `${RELATIONSHIPS}/image`,
  jpeg: `${RELATIONSHIPS}/image`,
  customXml: `${RELATIONSHIPS}/customXml`,
  customXmlProperties: `${RELATIONSHIPS}/customXmlProps`,
};

/** A part and the parts it points to; the first of those is rId1 in its text. */
export type Part = TextPart | MediaPart;

interface TextPart {
  /** Path inside the file, without a leading slash. */
  readonly path: string;
  readonly type: TextType;
  readonly text: string;
  readonly pointsTo?: readonly Part[];
}

/** A picture as its file is. */
export interface MediaPart {
  readonly path: string;
  readonly type: MediaType;
  readonly bytes: Uint8Array;
  readonly pointsTo?: undefined;
}

/** The bytes of a file of these parts and all they point to. The same parts always give the same bytes. */
export function packageOf(top: readonly Part[]): Uint8Array {
  const parts = withAll(top);
  const files: Record<string, string | Uint8Array> = {
    "[Content_Types].xml": contentTypes(parts),
    "_rels/.rels": relations(top, ""),
  };
  for (const part of parts) {
    files[part.path] = isMedia(part) ? part.bytes : part.text;
    if (part.pointsTo === undefined || part.pointsTo.length === 0) continue;
    files[relationsPath(part.path)] = relations(part.pointsTo, folderOf(part.path));
  }
  // Zip keeps local time: this is midnight of its first day wherever the code runs.
  const mtime = new Date(1980, 0, 1);
  const zip: Zippable = {};
  for (const [path, content] of Object.entries(files)) {
    zip[path] = [typeof content === "string" ? strToU8(content) : content, { level: 6, mtime }];
  }
  return zipSync(zip);
}

/** The parts and all they point to. */
export function withAll(parts: readonly Part[]): readonly Part[] {
  return parts.flatMap((part) => [part, ...withAll(part.pointsTo ?? [])]);
}

function contentTypes(parts: readonly Part[]): string {
  const overrides = parts.flatMap((part) => (isMedia(part) ? [] : contentType(part)));
  const media = [...new Set(parts.filter(isMedia).map(({ type }) => type))].map(
    (type) => `<Default Extension="${type}" ContentType="${MEDIA_TYPES[type]}"/>`,
  );
  return `${DECLARATION}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${media.join("")}${overrides.join("")}</Types>`;
}

export function isMedia(part: Part): part is MediaPart {
  return part.type in MEDIA_TYPES;
}

/** What kind of part it is, named for this part alone. */
export function contentType(part: Part): string {
  const type = isMedia(part) ? MEDIA_TYPES[part.type] : TYPES[part.type];
  return `<Override PartName="/${part.path}" ContentType="${type}"/>`;
}

/** What a part in that folder, or the file itself, points to. */
export function relations(targets: readonly Part[], folder: string): string {
  const lines = targets.map((target, i) => relation(target, `rId${i + 1}`, folder));
  return `${DECLARATION}<Relationships xmlns="${PACKAGE}/relationships">${lines.join("")}</Relationships>`;
}

export function relation({ path, type }: Part, id: string, folder: string): string {
  const target = path.startsWith(folder) ? path.slice(folder.length) : `/${path}`;
  return `<Relationship Id="${id}" Type="${RELATION[type]}" Target="${xmlAttribute(target)}"/>`;
}

export function folderOf(path: string): string {
  return path.slice(0, path.lastIndexOf("/") + 1);
}

/** Where it stands what a part points to. */
export function relationsPath(path: string): string {
  const folder = folderOf(path);
  return `${folder}_rels/${path.slice(folder.length)}.rels`;
}
