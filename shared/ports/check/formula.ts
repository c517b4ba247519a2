import { LIMITS } from "./limits.ts";

/** What a formula is made of; a sheet's name goes before an operand, an operator between two, "%" and "#" behind one. */
const TOKENS =
  /(?<blank>\s+)|(?<text>"(?:[^"]|"")*")|(?<sheet>(?:'(?:[^']|'')+'|(?:\[[^\]]*\])?[\p{L}_\\][\p{L}\p{N}_.\\]*(?::[\p{L}_][\p{L}\p{N}_.]*)?)!)|(?<value>#(?:N\/A|[A-Z0-9_/]+[!?])|(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?(?![\p{L}\d_])|\$?\d+:\$?\d+|[\p{L}_\\$][\p{L}\p{N}_.\\?$]*(?:\[(?:[^[\]]|\[[^\]]*\])*\])?|\[(?:[^[\]]|\[[^\]]*\])*\])|(?<operator><=|>=|<>|[-+*/^&=<>:])|(?<behind>[%#])|(?<before>@)|(?<open>[({])|(?<close>[)}])|(?<part>[,;])/uy;

const CALLED = /^[\p{L}_\\]/u;

/** A bracket that is open: whether a function's, and how many parts it has so far. */
interface Bracket {
  readonly sign: string;
  readonly isCall: boolean;
  parts: number;
}

/** What keeps a text, without its "=", from being a formula; nothing where it is one. */
export function formulaProblem(formula: string): string | undefined {
  if (formula.length > LIMITS.formula)
    return `a formula has at most ${LIMITS.formula} characters, this one has ${formula.length}`;
  const open: Bracket[] = [];
  let wantsValue = true;
  let last = "";
  let afterBlank = false;
  for (let at = 0; at < formula.length; ) {
    TOKENS.lastIndex = at;
    const match = TOKENS.exec(formula);
    const groups = match?.groups;
    if (match === null || groups === undefined) return `“${formula.slice(at, at + 12)}” cannot be read in the formula`;
    const [token] = match;
    at += token.length;
    if (groups["blank"] !== undefined) {
      afterBlank = true;
      continue;
    }
    const bracket = open.at(-1);
    if (groups["text"] !== undefined || groups["value"] !== undefined || groups["sheet"] !== undefined) {
      // Two ranges with a blank between are the cells they share.
      if (!wantsValue && !afterBlank) return `two values stand side by side at “${token}”`;
      const letters = groups["text"] === undefined ? 0 : token.slice(1, -1).replaceAll('""', '"').length;
      if (letters > LIMITS.literal)
        return `a text in a formula has at most ${LIMITS.literal} characters, this one has ${letters}`;
      wantsValue = groups["sheet"] !== undefined;
    } else if (groups["operator"] !== undefined) {
      if (wantsValue && token !== "-" && token !== "+") return `nothing stands before “${token}”`;
      wantsValue = true;
    } else if (groups["behind"] !== undefined) {
      if (wantsValue) return `nothing stands before “${token}”`;
    } else if (groups["before"] !== undefined) {
      if (!wantsValue) return `two values stand side by side at “${token}”`;
    } else if (groups["open"] !== undefined) {
      const isCall = token === "(" && !wantsValue && (CALLED.test(last) || last === ")") && !afterBlank;
      if (!wantsValue && !isCall) return `two values stand side by side at “${token}”`;
      open.push({ sign: token, isCall, parts: 1 });
      if (open.length > LIMITS.nesting) return `functions stand in one another more than ${LIMITS.nesting} deep`;
      wantsValue = true;
    } else if (groups["close"] !== undefined) {
      if (bracket === undefined || (bracket.sign === "(") !== (token === ")")) return `“${token}” closes nothing`;
      if (wantsValue && !(bracket.isCall && (last === "(" || last === ","))) return `nothing stands before “${token}”`;
      open.pop();
      wantsValue = false;
    } else {
      if (bracket === undefined || (token === ";" && bracket.sign === "("))
        return `“${token}” stands outside a bracket`;
      if (wantsValue && !(bracket.isCall && (last === "(" || last === ","))) return `nothing stands before “${token}”`;
      bracket.parts += 1;
      if (bracket.isCall && bracket.parts > LIMITS.arguments)
        return `a function has at most ${LIMITS.arguments} arguments`;
      wantsValue = true;
    }
    last = token;
    afterBlank = false;
  }
  const left = open.at(-1);
  if (left !== undefined) return `“${left.sign}” is not closed in the formula`;
  return wantsValue ? "the formula ends before it is complete" : undefined;
}

const SHEET_NAMES = /"(?:[^"]|"")*"|'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)!/gu;

/** The sheets that a formula names. */
export function sheetsNamedIn(formula: string): readonly string[] {
  if (!formula.includes("!")) return [];
  return [...formula.matchAll(SHEET_NAMES)].flatMap(([, quoted, plain]) => {
    const name = quoted?.replaceAll("''", "'") ?? plain;
    return name === undefined ? [] : [name];
  });
}
