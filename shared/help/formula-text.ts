import { type Entry, parameterName, withUnits } from "../catalogue/entry.ts";
import { type Argument, type Cell, isCellError, isRange } from "../cells/cell.ts";
import { NAMESPACE } from "../ports/namespace.ts";

/** "=DUTY.NPSHA(flow, suction lift, suction line, [altitude], …, [units])". */
export function syntaxOf(entry: Entry): string {
  const names = entry.parameters.map(([key, parameter]) => {
    const name = parameterName(key);
    return "fallback" in parameter ? `[${name}]` : name;
  });
  const all = [...withUnits(entry, names, "[units]"), ...(entry.repeating ? ["…"] : [])];
  return `=${NAMESPACE}.${entry.id}(${all.join(", ")})`;
}

/** Where on a sheet a range stands, in the place of its cells. */
export interface SheetPlace {
  readonly at: string;
}

/** A call as it is typed in a cell; a range without a place stands as an array constant. */
export function formulaText({ id }: Entry, args: readonly (Argument | SheetPlace)[]): string {
  const texts = args.map((argument) => (isPlace(argument) ? argument.at : argumentText(argument)));
  return `=${NAMESPACE}.${id}(${texts.join(", ")})`;
}

function isPlace(argument: Argument | SheetPlace): argument is SheetPlace {
  return typeof argument === "object" && argument !== null && Object.hasOwn(argument, "at");
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
