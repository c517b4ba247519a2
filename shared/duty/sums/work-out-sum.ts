import type { MathNode } from "mathjs";
import { partsThousands } from "../../../src/basis/customary.ts";
import { type Quantity, UNIT_SETS, type UnitSetName, unitFits } from "../../../src/basis/quantities.ts";
import { readNumber, readWrittenAmount, thousandsIn, unitsThatDo } from "../../../src/basis/quantity-text.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { fromEngine, toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import { partsOfSum, type SumFigure, type SumParts } from "./sum-parts.ts";

/** Makes the tree of a sum of signs, brackets and "a0", "a1" …; throws where it is none. */
export type SumTree = (formula: string) => MathNode;

/** A box that a sum stands in. */
export interface SumBox {
  readonly quantity: Quantity;
  readonly unitSet: UnitSetName;
  readonly subject: string;
  /** The unit of the answer it had, which its bare figures were read in. */
  readonly unit?: Unit | undefined;
}

/** Figures an answer is kept to: beyond them stands what adding leaves behind. */
const FIGURES = 12;
/** No length or flow is a higher power of anything. House choice. */
const GREATEST_POWER = 6;

/**
 * What a sum comes to, as a box would take it: "155", "132.5 ft". Its figures are read as those of a box are; a sum without units
 * comes to a bare figure. A unit behind all of it is that of all of it. Bare figures beside others are in the box's unit, where
 * the others are too.
 * Fails: sum-unread, sum-beyond, sum-divides-by-zero, sum-units-apart, sum-bare-beside-unit; unit-wrong-kind; as `readNumber`.
 */
export function workOutSum(sum: string, box: SumBox, treeOf: SumTree): Result<string> {
  const parts = partsOfSum(sum, box.subject);
  if (!parts.ok) return parts;
  const tree = treeIn(parts.value.formula, treeOf);
  if (tree === undefined) return refused("sum-unread", box, sum);
  try {
    return succeed(answerOf(tree, parts.value, box));
  } catch (error) {
    if (error instanceof Refused) return fail([error.finding]);
    throw error;
  }
}

function treeIn(formula: string, treeOf: SumTree): MathNode | undefined {
  try {
    return treeOf(formula);
  } catch {
    return undefined;
  }
}

type SumCode = "sum-unread" | "sum-beyond" | "sum-divides-by-zero" | "sum-units-apart" | "sum-bare-beside-unit";

/** Ends a sum that cannot be worked out; it never leaves this file. */
class Refused extends Error {
  readonly finding: Finding;
  constructor(finding: Finding) {
    super(finding.code);
    this.finding = finding;
  }
}

function refused(code: SumCode, { subject }: SumBox, given: string): Result<never> {
  return fail([{ code, kind: "error", subject, given }]);
}

function refuse(code: SumCode, { subject }: SumBox, given: string, suggestions: readonly string[] = []): never {
  throw new Refused({ code, kind: "error", subject, given, suggestions });
}

/** A part of a sum, worked out: its value, and how often the unit is a factor of it. */
interface Part {
  readonly value: number;
  readonly units: number;
}

function answerOf(tree: MathNode, { figures, formula, unitOfAll }: SumParts, box: SumBox): string {
  const own = UNIT_SETS[box.unitSet][box.quantity];
  const units = figures.flatMap(({ unit }) => unit ?? []);
  const [unit = unitOfAll] = units;
  for (const each of [...units, ...(unitOfAll === undefined ? [] : [unitOfAll])]) holdUnit(each, box);
  const numbers = figures.map((figure) => numberOf(figure, unit, own, box));
  if (unitOfAll !== undefined && units.length > 0) refuse("sum-units-apart", box, unitOfAll.symbol);
  const bare = (): number => worked(tree, { parts: numbers.map((value) => ({ value, units: 0 })), box }).value;
  if (unit === undefined) return figureText(bare(), box);
  if (unitOfAll !== undefined) return `${figureText(bare(), box)} ${unit.symbol}`;
  const isAtEnd = units.length === 1 && figures.at(-1)?.unit !== undefined;
  const isOwn = unit === (box.unit ?? own);
  const parts = figures.map((figure, i) => ({ value: numbers[i] as number, units: figure.unit === undefined ? 0 : 1 }));
  const bareBeside = figures.find((figure) => figure.unit === undefined)?.written ?? "";
  const besides = isOwn ? undefined : { bare: bareBeside, unit, own };
  if (unit.offset === undefined) {
    const found = attempt(() => worked(tree, { parts, box, besides }));
    if (found.ok && found.value.units === 1) return `${figureText(found.value.value, box)} ${unit.symbol}`;
    if (!found.ok && found.error.finding.code !== "sum-units-apart") throw found.error;
  }
  // "(98+12)/2 ft": the unit behind the whole is that of the whole.
  if (!isAtEnd || (!isOwn && addsOutsideBrackets(formula))) refuse("sum-units-apart", box, unit.symbol);
  return `${figureText(bare(), box)} ${unit.symbol}`;
}

/** Whether the last unit of a sum may be meant for its last part alone. */
function addsOutsideBrackets(formula: string): boolean {
  let outside = formula;
  for (let before = ""; before !== outside; outside = outside.replace(/\([^()]*\)/g, "")) before = outside;
  return /\S\s*[-+]/.test(outside);
}

function attempt<T>(
  work: () => T,
): { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Refused } {
  try {
    return { ok: true, value: work() };
  } catch (error) {
    if (error instanceof Refused) return { ok: false, error };
    throw error;
  }
}

function holdUnit(unit: Unit, { quantity, subject }: SumBox): void {
  if (unitFits(unit, quantity)) return;
  throw new Refused({
    code: "unit-wrong-kind",
    kind: "error",
    subject,
    given: unit.symbol,
    suggestions: [unitsThatDo(quantity)],
  });
}

/** A figure's number, one with a unit in the unit of the sum. */
function numberOf(figure: SumFigure, unit: Unit | undefined, own: Unit, box: SumBox): number {
  if (figure.unit !== undefined && unit !== undefined) {
    const read = readWrittenAmount(figure.written, box.subject, "");
    if (!read.ok) throw new Refused(read.findings[0] as Finding);
    const { value, unit: written } = read.value;
    return written === unit ? value : fromEngine(toEngine(value, written), unit);
  }
  const thousands = partsThousands(unit ?? own) ? thousandsIn(figure.number) : undefined;
  if (thousands !== undefined) return thousands;
  const read = figure.number.includes("/") ? mixed(figure.number, box) : readNumber(figure.number, box.subject);
  if (!read.ok) throw new Refused(read.findings[0] as Finding);
  return read.value;
}

/** "2-1/2", which amounts alone are written with. */
function mixed(number: string, { subject }: SumBox): Result<number> {
  return andThen(readWrittenAmount(`${number} in`, subject, ""), ({ value }) => succeed(value));
}

interface Walk {
  readonly parts: readonly Part[];
  readonly box: SumBox;
  /** Bare figures may not be taken to have the unit of those beside them. */
  readonly besides?: { readonly bare: string; readonly unit: Unit; readonly own: Unit } | undefined;
}

type TreeNode = MathNode & {
  readonly name?: string;
  readonly fn?: unknown;
  readonly implicit?: boolean;
  readonly content?: MathNode;
  readonly args?: readonly MathNode[];
};

/** Walks the tree of a sum; what is no sign, bracket or figure of it is refused. */
function worked(node: MathNode, walk: Walk): Part {
  const { type, name = "", fn, implicit, content, args = [] } = node as TreeNode;
  if (type === "ParenthesisNode" && content !== undefined) return worked(content, walk);
  const figure = /^a(\d+)$/.exec(name)?.[1];
  const part = figure === undefined ? undefined : walk.parts[Number(figure)];
  if (type === "SymbolNode" && part !== undefined) return part;
  const [first, second] = args;
  if (type !== "OperatorNode" || implicit === true || first === undefined) {
    return refuse("sum-unread", walk.box, asWritten(node, walk));
  }
  const left = worked(first, walk);
  if (second === undefined) {
    if (fn === "unaryMinus") return { ...left, value: -left.value };
    return fn === "unaryPlus" ? left : refuse("sum-unread", walk.box, asWritten(node, walk));
  }
  const right = worked(second, walk);
  switch (fn) {
    case "add":
      return { value: left.value + right.value, units: beside(left, right, walk) };
    case "subtract":
      return { value: left.value - right.value, units: beside(left, right, walk) };
    case "multiply":
      return { value: left.value * right.value, units: left.units + right.units };
    case "divide":
      if (right.value === 0) return refuse("sum-divides-by-zero", walk.box, asWritten(node, walk));
      return { value: left.value / right.value, units: left.units - right.units };
    case "pow":
      return power(left, right, walk);
    default:
      return refuse("sum-unread", walk.box, asWritten(node, walk));
  }
}

/** The units of two parts that are added: a bare one has the unit of the other, where nobody can mean another. */
function beside(left: Part, right: Part, { box, besides }: Walk): number {
  if (left.units === right.units) return left.units;
  const isBareBesideOne = Math.min(left.units, right.units) === 0 && Math.max(left.units, right.units) === 1;
  if (!isBareBesideOne) return refuse("sum-units-apart", box, "");
  if (besides === undefined) return 1;
  const { bare, unit, own } = besides;
  return refuse("sum-bare-beside-unit", box, bare, [`“${bare} ${unit.symbol}”`, `“${bare} ${own.symbol}”`]);
}

function power(base: Part, exponent: Part, { box }: Walk): Part {
  if (exponent.units !== 0 || (base.units !== 0 && exponent.value !== 1)) return refuse("sum-units-apart", box, "^");
  if (Math.abs(exponent.value) > GREATEST_POWER) return refuse("sum-beyond", box, `^${exponent.value}`);
  if (base.value === 0 && exponent.value < 0) return refuse("sum-divides-by-zero", box, "0");
  return { value: base.value ** exponent.value, units: base.units };
}

function figureText(value: number, box: SumBox): string {
  const figure = Number(value.toPrecision(FIGURES));
  return Number.isFinite(figure) ? String(figure) : refuse("sum-beyond", box, String(value));
}

/** A part of the tree in words for a message. */
function asWritten(node: MathNode, { parts }: Walk): string {
  return node.toString().replace(/a(\d+)/g, (_, i: string) => String(parts[Number(i)]?.value ?? ""));
}

/** The unit an answer is in; nothing for a bare one. */
export function unitOfAnswer(answer: string | undefined): Unit | undefined {
  const named = /^[-+]?[\d.e+-]+\s+(.+)$/i.exec(answer ?? "")?.[1];
  return named === undefined ? undefined : unitNamed(named);
}
