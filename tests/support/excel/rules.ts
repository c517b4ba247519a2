import { boxAt } from "./addresses.ts";
import { checkFormula } from "./formulas.ts";
import { LIMITS } from "./limits.ts";
import type { Book, Members, NodeOf } from "./node.ts";
import { invalid, unknown } from "./problems.ts";
import { checkOpen } from "./protection.ts";
import { isBoolean, oneOf, slot, textUpTo } from "./values.ts";

const namesOf = (book: Book): readonly string[] => book.sheets.map(({ name }) => name);

function keep({ sheet, ref }: NodeOf<"validation">, key: string, value: unknown, book: Book): void {
  checkOpen(book, sheet);
  boxAt(ref);
  slot(sheet.lists, ref)[key] = value;
}

const isAlert = oneOf("Stop", "Warning", "Information");
const isTitle = textUpTo(LIMITS.hintTitle);
const isHint = textUpTo(LIMITS.hint);

export const VALIDATION: Members<"validation"> = {
  settings: {
    rule: (node, value, book) => {
      const { list } = value as { readonly list?: { readonly inCellDropDown?: unknown; readonly source?: unknown } };
      if (list === undefined) throw unknown("a rule of cells that is no list");
      const { source, inCellDropDown } = list;
      if (!isBoolean(inCellDropDown) || typeof source !== "string" || source === "") throw invalid("the rule of cells");
      if (source.startsWith("=")) checkFormula(source, namesOf(book));
      else if (source.length > LIMITS.listSource) throw invalid(`a list of ${source.length} characters`);
      keep(node, "rule", value, book);
    },
    errorAlert: (node, value, book) => {
      const { showAlert, style, title, message } = value as Readonly<Record<string, unknown>>;
      if (!isBoolean(showAlert) || !isAlert(style) || !isTitle(title) || !isHint(message)) throw invalid("the alert");
      keep(node, "errorAlert", value, book);
    },
    prompt: (node, value, book) => {
      const { showPrompt, title, message } = value as Readonly<Record<string, unknown>>;
      if (!isBoolean(showPrompt) || !isTitle(title) || !isHint(message)) throw invalid("the hint");
      keep(node, "prompt", value, book);
    },
  },
};

export const RULES: Members<"rules"> = {
  steps: {
    add: ({ sheet, ref }, [type], book) => {
      checkOpen(book, sheet);
      if (type !== "Custom") throw unknown(`a rule of type ${String(type)}`);
      const rule = { ref, set: {} as Record<string, unknown> };
      sheet.rules.push(rule);
      return {
        kind: "bag",
        sheet,
        path: "conditionalFormat",
        set: (key, value) => {
          if (key === "rule.formula") checkRule(String(value), book);
          rule.set[key] = value;
        },
      };
    },
  },
};

function checkRule(formula: string, book: Book): void {
  if (!formula.startsWith("=")) throw invalid(`rule ${formula}`);
  checkFormula(formula, namesOf(book));
}
