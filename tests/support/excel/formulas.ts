import { LexerNode, LexerTreeBuilder } from "@univerjs/engine-formula";
import { LIMITS } from "./limits.ts";
import { invalid, problem } from "./problems.ts";

const lexer = new LexerTreeBuilder();
/** Formulas found well formed, the sheets they name left out. */
const wellFormed = new Set<string>();

const PARTS = /("(?:[^"]|"")*")/;
const SHEET = /'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)!/gu;

/**
 * Throws for what Excel would not take as a formula. How it is built is judged by the parser of a general-purpose
 * spreadsheet library, not by our own code.
 *
 * @param sheets names of the sheets of the workbook
 */
export function checkFormula(formula: string, sheets: readonly string[]): void {
  if (formula.length > LIMITS.formula) throw problem("FormulaLengthExceedsLimit", `${formula.length} characters`);
  const parts = formula.split(PARTS);
  let bare = "";
  for (const [i, part] of parts.entries()) {
    if (i % 2 === 0) {
      bare += part.replace(SHEET, (_, quoted?: string, plain?: string) => {
        const name = (quoted?.replaceAll("''", "'") ?? plain ?? "").toLowerCase();
        if (!sheets.some((sheet) => sheet.toLowerCase() === name)) throw invalid(`no sheet ${name} in ${formula}`);
        return "Other!";
      });
    } else {
      const literal = part.slice(1, -1).replaceAll('""', '"');
      if (literal.length > LIMITS.literal) throw invalid(`a text of ${literal.length} characters in a formula`);
      bare += part;
    }
  }
  if (wellFormed.has(bare)) return;
  checkNesting(bare);
  const tree: unknown = lexer.treeBuilder(bare, false);
  if (!(tree instanceof LexerNode)) throw invalid(`not a formula: ${formula}`);
  wellFormed.add(bare);
}

function checkNesting(bare: string): void {
  let depth = 0;
  for (const letter of bare.replace(/"(?:[^"]|"")*"/g, "")) {
    if (letter === "(") depth += 1;
    if (letter === ")") depth -= 1;
    if (depth > LIMITS.nesting) throw invalid("functions nested too deep");
  }
}
