import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** The texts inside a file by path. */
export function partsOf(bytes: Uint8Array): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
}

export function fileOf(parts: Readonly<Record<string, string>>): Uint8Array {
  return zipSync(Object.fromEntries(Object.entries(parts).map(([path, text]) => [path, strToU8(text)])));
}

const OPEN = "http://schemas.openxmlformats.org";
const MAIN = `${OPEN}/spreadsheetml/2006/main`;
const LINKS = `${OPEN}/officeDocument/2006/relationships`;

/** A workbook of one sheet "Data" from the inside of its worksheet element, as other programs write them. */
export function workbookOf(
  sheet: string,
  {
    strings = "",
    styles = "",
    workbook = "",
    names = "",
  }: { readonly strings?: string; readonly styles?: string; readonly workbook?: string; readonly names?: string } = {},
): Record<string, string> {
  const link = (id: string, type: string, target: string): string =>
    `<Relationship Id="${id}" Type="${LINKS}/${type}" Target="${target}"/>`;
  return {
    "[Content_Types].xml": `<Types xmlns="${OPEN}/package/2006/content-types"/>`,
    "_rels/.rels": `<Relationships xmlns="${OPEN}/package/2006/relationships">${link("rId1", "officeDocument", "xl/workbook.xml")}</Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${LINKS}">${workbook}<sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets>${names}</workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${OPEN}/package/2006/relationships">${link("rId1", "worksheet", "worksheets/sheet1.xml")}${link("rId2", "sharedStrings", "sharedStrings.xml")}${link("rId3", "styles", "/xl/styles.xml")}</Relationships>`,
    "xl/worksheets/sheet1.xml": `<worksheet xmlns="${MAIN}" xmlns:r="${LINKS}">${sheet}</worksheet>`,
    "xl/sharedStrings.xml": `<sst xmlns="${MAIN}">${strings}</sst>`,
    "xl/styles.xml": `<styleSheet xmlns="${MAIN}">${styles}</styleSheet>`,
  };
}
