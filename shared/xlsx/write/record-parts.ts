import { RECORD_NAMESPACE } from "../../ports/sheet-record.ts";
import { DECLARATION } from "../xml-text.ts";
import type { FreePath } from "./free-paths.ts";
import type { Part } from "./package.ts";
import { CUSTOM_XML } from "./schemas.ts";

/** XML texts that travel in the workbook unseen, each with the part that names it (ECMA-376 part 1, 15.2.4 and 15.2.5). */
export function recordParts(records: readonly string[], freePath: FreePath): readonly Part[] {
  return records.map((text, i): Part => {
    const path = freePath("customXml/item", "xml");
    const properties: Part = {
      path: freePath("customXml/itemProps", "xml"),
      type: "customXmlProperties",
      text: `${DECLARATION}<ds:datastoreItem xmlns:ds="${CUSTOM_XML}" ds:itemID="${itemId(text, i)}"><ds:schemaRefs><ds:schemaRef ds:uri="${RECORD_NAMESPACE}"/></ds:schemaRefs></ds:datastoreItem>`,
    };
    return { path, type: "customXml", text, pointsTo: [properties] };
  });
}

/** A GUID made of the text, so that the same workbook always has the same bytes. */
function itemId(text: string, i: number): string {
  let [a, b] = [0x811c9dc5 ^ i, 0x9e3779b9 ^ i];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b);
  }
  const hex = [a, b, a ^ b, Math.imul(a, b)]
    .map((part) => (part >>> 0).toString(16).padStart(8, "0"))
    .join("")
    .toUpperCase();
  return `{${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20)}}`;
}
