import { boxAt, checkedAddress } from "./addresses.ts";
import { LIMITS } from "./limits.ts";
import type { Book, Members, NodeOf } from "./node.ts";
import { invalid } from "./problems.ts";
import { checkOpen } from "./protection.ts";
import { type Check, checkValue, oneOf, takesNone } from "./values.ts";

const MARGIN_TEXTS = ["leftHeader", "centerHeader", "rightHeader", "leftFooter", "centerFooter", "rightFooter"];

const [SMALLEST, LARGEST] = LIMITS.zoom;

const isZoom: Check = (value) => {
  const { scale, horizontalFitToPages, verticalFitToPages } = value as Readonly<Record<string, unknown>>;
  if (scale !== undefined)
    return typeof scale === "number" && Number.isInteger(scale) && scale >= SMALLEST && scale <= LARGEST;
  return [horizontalFitToPages, verticalFitToPages].some((pages) => Number.isInteger(pages) && Number(pages) >= 1);
};

const setting =
  (key: string, check: Check) =>
  ({ sheet }: NodeOf<"pageLayout">, value: unknown, book: Book): void => {
    checkOpen(book, sheet);
    checkValue(key, value, check);
    sheet.set[key] = value;
  };

export const PAGE_LAYOUT: Members<"pageLayout"> = {
  steps: { headersFooters: ({ sheet }) => ({ kind: "headersFooters", sheet }) },
  calls: {
    setPrintArea: ({ sheet }, [area], book) => {
      checkOpen(book, sheet);
      sheet.set["printArea"] = checkedAddress(area);
      return null;
    },
    setPrintMargins: ({ sheet }, [unit, margins], book) => {
      checkOpen(book, sheet);
      checkValue("margin unit", unit, oneOf("Points", "Inches", "Centimeters"));
      for (const [side, size] of Object.entries(margins as object)) {
        if (!/^(left|right|top|bottom|header|footer)$/.test(side) || !(Number(size) >= 0))
          throw invalid(`margin ${side}`);
      }
      sheet.set["margins"] = { unit, ...(margins as object) };
      return null;
    },
    setPrintTitleRows: ({ sheet }, [rows], book) => {
      checkOpen(book, sheet);
      if (!/^\$?\d+:\$?\d+$/.test(checkedAddress(rows))) throw invalid(`title rows ${String(rows)}`);
      sheet.set["titleRows"] = rows;
      return null;
    },
  },
  settings: {
    orientation: setting("orientation", oneOf("Portrait", "Landscape")),
    // Those we name, among the maker's list.
    paperSize: setting("paperSize", oneOf("Letter", "Legal", "A3", "A4", "A5")),
    zoom: setting("zoom", isZoom),
  },
};

export const HEADERS_FOOTERS: Members<"headersFooters"> = {
  steps: { defaultForAllPages: ({ sheet }) => ({ kind: "margins", sheet }) },
};

/** Three parts make one text, which is counted with the marks that part them. */
function setMargin(key: string) {
  return ({ sheet }: NodeOf<"margins">, value: unknown, book: Book): void => {
    checkOpen(book, sheet);
    checkValue(key, value, (text) => typeof text === "string");
    const end = key.endsWith("Header") ? "Header" : "Footer";
    const parts = MARGIN_TEXTS.filter((name) => name.endsWith(end)).map((name) =>
      String(name === key ? value : (sheet.set[name] ?? "")),
    );
    const written = parts.reduce((sum, part) => sum + (part === "" ? 0 : part.length + 2), 0);
    if (written > LIMITS.marginText) throw invalid(`a page ${end.toLowerCase()} of ${written} characters`);
    sheet.set[key] = value;
  };
}

export const MARGINS: Members<"margins"> = {
  settings: Object.fromEntries(MARGIN_TEXTS.map((key) => [key, setMargin(key)])),
};

export const BREAKS: Members<"breaks"> = {
  steps: {
    add: ({ sheet }, [given], book) => {
      checkOpen(book, sheet);
      const at = checkedAddress(given);
      // Nothing stands before the first row that could be parted from it.
      if (boxAt(at).top === 0) throw invalid("a page break above the first row");
      if (sheet.breaks.length >= LIMITS.pageBreaks) throw invalid("too many page breaks");
      sheet.breaks.push(at);
      return { kind: "bag", sheet, path: "break", set: takesNone("break") };
    },
  },
};
