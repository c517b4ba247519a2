import { constant, type Expression } from "./expression.ts";
import type { OptionItem } from "./plan.ts";

/** The three worked cells of an option: name, verdict, and all its remarks as one text. */
export interface OptionCells {
  readonly name: { readonly key: string; readonly expression: Expression };
  readonly verdict: { readonly key: string; readonly expression: Expression };
  readonly remarks: { readonly key: string; readonly expression: Expression };
}

export function optionCells({ key, name, verdict, remarks }: OptionItem): OptionCells {
  return {
    name: { key: `${key}Name`, expression: name },
    verdict: { key: `${key}Verdict`, expression: verdict },
    remarks: {
      key,
      expression: { op: "join", terms: remarks.map(({ label, text }, i) => remarkText(label, text, i === 0)) },
    },
  };
}

/** "For: …" on a line of its own, or nothing where there is no text. */
function remarkText(label: string, text: Expression, first: boolean): Expression {
  const before = `${first ? "" : "\n"}${label === "" ? "" : `${label}: `}`;
  const whole: Expression = before === "" ? text : { op: "join", terms: [constant(before), text] };
  return { op: "ifText", of: text, is: "", met: constant(""), otherwise: whole };
}
