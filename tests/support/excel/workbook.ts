import type { Members } from "./node.ts";
import { invalid, problem } from "./problems.ts";
import { checkValue, oneOf } from "./values.ts";

export const WORKBOOK: Members<"workbook"> = {
  steps: {
    worksheets: () => ({ kind: "worksheets" }),
    customXmlParts: () => ({ kind: "xmlParts" }),
    application: () => ({ kind: "application" }),
    getActiveCell: (_, __, { sheets, active, selected }) => {
      const sheet = sheets.find(({ id, name }) => id === active || name === active);
      if (sheet === undefined) throw problem("ItemNotFound", `no sheet ${active}`);
      return { kind: "range", sheet, ref: selected };
    },
  },
  // The library lets go of a range it asked to be kept.
  calls: { _RemoveReference: () => null },
};

export const APPLICATION: Members<"application"> = {
  calls: {
    suspendApiCalculationUntilNextSync: () => null,
    suspendScreenUpdatingUntilNextSync: () => null,
    calculate: (_, [kind]) => {
      checkValue("calculationType", kind, oneOf("Recalculate", "Full", "FullRebuild"));
      return null;
    },
  },
  settings: {
    calculationMode: (_, value, book) => {
      if (value !== "Automatic" && value !== "AutomaticExceptTables" && value !== "Manual")
        throw invalid(`calculation mode ${String(value)}`);
      book.calculationMode = value;
    },
  },
  reads: { calculationMode: (_, book) => book.calculationMode },
};

export const XML_PARTS: Members<"xmlParts"> = {
  steps: {
    add: (_, [given], book) => {
      const part = { id: book.newId("xml"), xml: String(given) };
      if (!/^\s*<[\s\S]+>\s*$/.test(part.xml)) throw invalid("no XML");
      book.xmlParts.push(part);
      return { kind: "xmlPart", part };
    },
    getByNamespace: (_, [given]) => ({ kind: "xmlParts", namespace: String(given) }),
    "": (_, [given], book) => {
      const part = book.xmlParts.find(({ id }) => id === given);
      if (part === undefined) throw problem("ItemNotFound", `no XML part ${String(given)}`);
      return { kind: "xmlPart", part };
    },
  },
  items: ({ namespace }, { xmlParts }) =>
    xmlParts
      .filter(({ xml }) => namespace === undefined || xml.includes(`xmlns="${namespace}"`))
      .map(({ id }) => ({ id, facts: { id } })),
};

export const XML_PART: Members<"xmlPart"> = {
  calls: {
    getXml: ({ part }) => part.xml,
    delete: ({ part }, _, { xmlParts }) => {
      xmlParts.splice(xmlParts.indexOf(part), 1);
      return null;
    },
  },
  reads: { id: ({ part }) => part.id },
};
