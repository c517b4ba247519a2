import { call } from "../../shared/catalogue/call.ts";
import { CATALOGUE, entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Argument, Cell } from "../../shared/cells/cell.ts";
import { LONGEST_TEXT } from "../../shared/cells/long-text.ts";
import { noteText } from "../../shared/text/finding-text.ts";
import { nearestNames } from "../../src/basis/nearest.ts";

/** The answer to one line of the evaluator: the value (with notes, where there are any) or the error and its message. */
export function evaluateLine(line: string): object {
  let asked: unknown;
  try {
    asked = JSON.parse(line);
  } catch {
    return refused("the line is not JSON");
  }
  if (typeof asked !== "object" || asked === null || Array.isArray(asked))
    return refused("the line is not a JSON object");
  const { call: name, args = [] } = asked as { call?: unknown; args?: unknown };
  if (typeof name !== "string") return refused('“call” is missing; give a function name such as "FRICTIONHEAD"');
  if (name.length > LONGEST_TEXT) return { error: "#NAME?", message: notAName(name) };
  const entry = entryNamed(name);
  if (entry === undefined) {
    const near = nearestNames(
      name,
      CATALOGUE.map(({ id }) => id),
    );
    return {
      error: "#NAME?",
      message: `“${name}” is not a function${near.length > 0 ? `; the nearest are ${near.join(", ")}` : ""}.`,
    };
  }
  if (!Array.isArray(args)) return refused("“args” must be a list");
  const given: Argument[] = [];
  for (const [i, arg] of args.entries()) {
    if (!isArgument(arg))
      return refused(`argument ${i + 1} must be a number, a text, true, false, null, or rows of cells`);
    given.push(arg);
  }
  const outcome = call(entry, given);
  if (!outcome.ok) return outcome.error;
  const notes = outcome.findings.map((finding) => noteText(finding, outcome.unitSet));
  return notes.length === 0 ? { value: outcome.value } : { value: outcome.value, notes };
}

/** No function has so long a name, and the answer does not repeat it. */
function notAName({ length }: string): string {
  return `“call” is a text of ${length} letters; give a function name such as "FRICTIONHEAD".`;
}

function isArgument(arg: unknown): arg is Argument {
  return Array.isArray(arg) ? arg.every((row) => Array.isArray(row) && row.every(isCell)) : isCell(arg);
}

function isCell(cell: unknown): cell is Cell {
  if (cell === null || ["number", "string", "boolean"].includes(typeof cell)) return true;
  return typeof cell === "object" && "error" in cell && typeof cell.error === "string";
}

/** The answer to a line that cannot be read. */
export function refused(message: string): object {
  return { error: "#VALUE!", message: `${message.charAt(0).toUpperCase()}${message.slice(1)}.` };
}
