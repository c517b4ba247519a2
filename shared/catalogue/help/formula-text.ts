import { type Argument, type Cell, isCellError, isRange } from "../../cells/cell.ts";
import { NAMESPACE } from "../../ports/namespace.ts";
import type { Entry } from "../entry.ts";
import { parameterName } from "../entry.ts";

/** "=DUTY.NPSHA(flow, suction lift, suction line, [altitude], …, [units])". */
export function syntaxOf({ id, parameters, unitless, repeating }: Entry): string {
  const names = parameters.map(([key, parameter]) => {
    const name = parameterName(key);
    return "fallback" in parameter ? `[${name}]` : name;
  });
  const tail = repeating ? ["…"] : unitless ? [] : ["[units]"];
  return `=${NAMESPACE}.${id}(${[...names, ...tail].join(", ")})`;
}

/** A call as it is typed in a cell; a range stands as an array constant. */
export function formulaText({ id }: Entry, args: readonly Argument[]): string {
  return `=${NAMESPACE}.${id}(${args.map(argumentText).join(", ")})`;
}

function argumentText(argument: Argument): string {
  if (!isRange(argument)) return argument === null ? "" : cellText(argument);
  return `{${argument.map((row) => row.map(cellText).join(",")).join("; ")}}`;
}

function cellText(cell: Cell): string {
  if (cell === null) return '""';
  if (isCellError(cell)) return cell.error;
  if (typeof cell === "string") return `"${cell.replaceAll('"', '""')}"`;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}
