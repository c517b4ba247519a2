/** The call that the caret stands in: the function as it is written, and the argument, from 0. */
export interface CallAtCaret {
  readonly name: string;
  readonly argument: number;
}

interface Open {
  /** Nothing where the bracket is none of a call. */
  readonly name: string | undefined;
  argument: number;
}

const NAME = /[\p{L}_][\p{L}\p{N}_.]*$/u;

/** The innermost call that is open at the caret; nothing in a text, outside all calls, or where it is no formula. */
export function callAtCaret(text: string, caret: number): CallAtCaret | undefined {
  if (!text.startsWith("=")) return undefined;
  const open: Open[] = [];
  let quote = "";
  let braces = 0;
  for (let i = 1; i < caret; i += 1) {
    const sign = text[i] as string;
    if (quote !== "") {
      if (sign === quote) quote = "";
    } else if (sign === '"' || sign === "'") quote = sign;
    else if (sign === "{") braces += 1;
    else if (sign === "}") braces -= 1;
    else if (sign === "(") open.push({ name: NAME.exec(text.slice(0, i).trimEnd())?.[0], argument: 0 });
    else if (sign === ")") open.pop();
    else if (sign === "," && braces === 0) {
      const call = open.at(-1);
      if (call !== undefined) call.argument += 1;
    }
  }
  if (quote === "'") return undefined;
  const call = open.findLast(({ name }) => name !== undefined);
  return call?.name === undefined ? undefined : { name: call.name.toUpperCase(), argument: call.argument };
}
