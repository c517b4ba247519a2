import { DECLARATION, xmlText } from "../xml-text.ts";
import type { Part } from "./package.ts";
import { PACKAGE, PROPERTIES } from "./schemas.ts";

/** What a file says about itself. */
export interface WorkbookProperties {
  readonly title?: string;
  readonly subject?: string;
  readonly author?: string;
  readonly description?: string;
  /** "2026-11-25T08:00:00Z". Left out, the file names no time, so that the same sheets give the same bytes. */
  readonly created?: string;
}

export function propertyParts({ title, subject, author, description, created }: WorkbookProperties): readonly Part[] {
  const line = (name: string, text: string | undefined): string =>
    text === undefined ? "" : `<${name}>${xmlText(text)}</${name}>`;
  const time =
    created === undefined ? "" : `<dcterms:created xsi:type="dcterms:W3CDTF">${xmlText(created)}</dcterms:created>`;
  return [
    {
      path: "docProps/core.xml",
      type: "coreProperties",
      text: `${DECLARATION}<cp:coreProperties xmlns:cp="${PACKAGE}/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">${line("dc:title", title)}${line("dc:subject", subject)}${line("dc:creator", author)}${line("dc:description", description)}${time}</cp:coreProperties>`,
    },
    {
      path: "docProps/app.xml",
      type: "extendedProperties",
      text: `${DECLARATION}<Properties xmlns="${PROPERTIES}"><Application>Dutybook</Application></Properties>`,
    },
  ];
}
