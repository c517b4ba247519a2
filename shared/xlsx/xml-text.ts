/** Characters that XML 1.0 cannot hold: control characters (and a few it could, of no use), the two non-characters, half a surrogate pair. */
const UNWRITABLE = /(?![\t\n\r])\p{Control}|[\ufffe\uffff]|\p{Surrogate}/gu;

export const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** Text for the body of an element. What XML cannot hold is left out. */
export function xmlText(text: string): string {
  return text.replace(UNWRITABLE, "").replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}

/** Text for an attribute in double quotes. */
export function xmlAttribute(text: string): string {
  return xmlText(text).replace(/"/g, "&quot;").replace(/\r/g, "&#13;").replace(/\n/g, "&#10;").replace(/\t/g, "&#9;");
}

/** Text of a cell: what XML cannot hold stands as _xHHHH_, and a text that happens to read so is marked (ECMA-376, ST_Xstring). */
export function cellText(text: string): string {
  return xmlText(
    text
      .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
      .replace(UNWRITABLE, escaped)
      .replace(/\r/g, escaped),
  );
}

/** The text that cellText wrote. */
export function readCellText(stored: string): string {
  return stored.includes("_x")
    ? stored.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : stored;
}

/** ` name="value"` for each value that is there; true is written as 1. */
export function attributes(values: Readonly<Record<string, string | number | boolean | undefined>>): string {
  return Object.entries(values)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([name, value]) => ` ${name}="${value === true ? "1" : xmlAttribute(String(value))}"`)
    .join("");
}

function escaped(character: string): string {
  return `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
}
