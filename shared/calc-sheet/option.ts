import { constant, type Expression, ifText, join } from "./expression.ts";
import type { OptionItem } from "./plan.ts";

interface Keyed {
  readonly key: string;
  readonly expression: Expression;
}

/** The three worked cells of an option: name, verdict, and all its remarks as one text; and each remark by itself. */
export interface OptionCells {
  readonly name: Keyed;
  readonly verdict: Keyed;
  readonly remarks: Keyed;
  readonly texts: readonly (Keyed & { readonly label: string })[];
}

export function optionCells({ key, name, verdict, remarks }: OptionItem): OptionCells {
  return {
    name: { key: `${key}Name`, expression: name },
    verdict: { key: `${key}Verdict`, expression: verdict },
    remarks: { key, expression: runningOn(remarks) },
    texts: remarks.map(({ label, text }, i) => ({ key: `${key}.${i}`, label, expression: text })),
  };
}

/** Each runs on after the one before; where the first hangs on a case and has no text, the next takes its place. */
function runningOn([first, ...others]: OptionItem["remarks"], isSure = first?.text.op !== "ifText"): Expression {
  if (first === undefined) return constant("");
  const all = join(remarkText(first, ""), ...others.map((one) => remarkText(one, BETWEEN)));
  return isSure ? all : ifText(first.text, "", runningOn(others, false), all);
}

const BETWEEN = " – ";

/** "For: …" after a dash or none; nothing where there is no text. */
function remarkText({ label, text }: OptionItem["remarks"][number], between: string): Expression {
  const before = `${between}${label === "" ? "" : `${label}: `}`;
  return ifText(text, "", constant(""), before === "" ? text : join(constant(before), text));
}
