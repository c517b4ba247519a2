import { absolute, boxOf } from "../../../shared/ports/a1.ts";
import { referenceParts } from "../../../shared/ports/reference.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import type { MemorySheet } from "../memory-sheet.ts";
import { checkedAddress, refOf } from "./addresses.ts";
import { LIMITS } from "./limits.ts";
import type { Members, NodeOf } from "./node.ts";
import { invalid, problem } from "./problems.ts";
import { checkOpen } from "./protection.ts";

/** A name as the sheet spells it: names are read without regard to case. */
function spelt(sheet: MemorySheet, name: unknown): string | undefined {
  const wanted = String(name).toLowerCase();
  return Object.keys(sheet.names).find((own) => own.toLowerCase() === wanted);
}

function checkName(name: string): void {
  if (name.length > LIMITS.name || !/^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u.test(name) || isCell(name))
    throw invalid(`name ${name}`);
}

/** The maker's page on names in formulas: none like a cell, in either way of writing one. */
function isCell(name: string): boolean {
  if (/^(r\d*c\d*|r\d*|c\d*)$/i.test(name)) return true;
  if (!/^[a-z]{1,3}[1-9]\d{0,6}$/i.test(name)) return false;
  const { bottom, right } = boxOf(name);
  return bottom < LIMITS.rows && right < LIMITS.columns;
}

function item({ sheet }: NodeOf<"names">, [name]: readonly unknown[]): NodeOf<"name"> {
  const own = spelt(sheet, name);
  if (own === undefined) throw problem("ItemNotFound", `no name ${String(name)}`);
  return { kind: "name", sheet, name: own };
}

function formulaOf(sheet: MemorySheet, ref: string): string {
  return `=${quotedSheetName(sheet.name)}!${absolute(ref)}`;
}

/** The cells that a formula such as "='Duty 1'!$B$5" names on its own sheet. */
function rangeIn(formula: string, own: MemorySheet): string {
  const { sheet, target } = referenceParts(formula.replace(/^=/, ""));
  if (!formula.startsWith("=") || sheet !== own.name) throw invalid(`name that stands for ${formula}`);
  return checkedAddress(target).replaceAll("$", "");
}

export const NAMES: Members<"names"> = {
  steps: {
    add: ({ sheet }, [given, range], book) => {
      checkOpen(book, sheet);
      const name = String(given);
      checkName(name);
      if (spelt(sheet, name) !== undefined) throw invalid(`there is a name ${name}`);
      sheet.names[name] = typeof range === "string" ? rangeIn(range, sheet) : refOf(range);
      return { kind: "name", sheet, name };
    },
    getItemOrNullObject: (node, args) =>
      spelt(node.sheet, args[0]) === undefined ? { kind: "missing" } : item(node, args),
    "": item,
    getItem: item,
  },
  items: ({ sheet }) =>
    Object.entries(sheet.names).map(([name, ref]) => ({ id: name, facts: { name, formula: formulaOf(sheet, ref) } })),
};

export const NAME: Members<"name"> = {
  steps: {
    getRange: ({ sheet, name }) => ({ kind: "range", sheet, ref: sheet.names[name] as string }),
  },
  reads: {
    name: ({ name }) => name,
    formula: ({ sheet, name }) => formulaOf(sheet, sheet.names[name] as string),
  },
};
