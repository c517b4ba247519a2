import { escaped, type Html } from "../html.ts";

const OPERATORS: Readonly<Record<string, string>> = { "-": "−", "*": "·", "<=": "≤", ">=": "≥" };
const FUNCTIONS = new Set(["log", "ln", "exp", "sin", "min", "max"]);

/**
 * An equation as MathML, from a short way of writing: names and numbers as they stand, `x_1` and `x^2` with braces
 * where an index or exponent has more than one sign, `frac{a}{b}`, `sqrt{a}`, "words" in quotes, `*` for a product
 * with a dot; two names beside each other are multiplied.
 */
export function equation(text: string): Html {
  const reader = new Reader(text);
  const row = reader.row();
  return `<math display="block" aria-label="${escaped(text.replace(/[{}"]/g, " ").replace(/\s+/g, " "))}"><mrow>${row}</mrow></math>`;
}

class Reader {
  readonly #tokens: readonly string[];
  #at = 0;

  constructor(text: string) {
    this.#tokens = text.match(/"[^"]*"|\d+(?:\.\d+)?|<=|>=|[\p{L}Δ∂]+′?|[^\s]/gu) ?? [];
  }

  /** Signs up to a closing brace or the end. */
  row(): Html {
    let html = "";
    for (let token = this.#tokens[this.#at]; token !== undefined && token !== "}"; token = this.#tokens[this.#at]) {
      html += this.#scripted();
    }
    return html;
  }

  /** A piece with its index and exponent. */
  #scripted(): Html {
    // A function is set apart from what it is applied to, its index included.
    const apply = FUNCTIONS.has(this.#tokens[this.#at] ?? "") ? "<mo>&#8289;</mo>" : "";
    const base = this.#piece();
    let below: Html | undefined;
    let above: Html | undefined;
    for (let token = this.#tokens[this.#at]; token === "_" || token === "^"; token = this.#tokens[this.#at]) {
      this.#at += 1;
      if (token === "_") below = this.#piece();
      else above = this.#piece();
    }
    if (below !== undefined && above !== undefined) return `<msubsup>${base}${below}${above}</msubsup>${apply}`;
    if (below !== undefined) return `<msub>${base}${below}</msub>${apply}`;
    return (above === undefined ? base : `<msup>${base}${above}</msup>`) + apply;
  }

  #piece(): Html {
    const token = this.#tokens[this.#at] ?? "";
    this.#at += 1;
    if (token === "{") return this.#group();
    if (token === "frac") return `<mfrac>${this.#braced()}${this.#braced()}</mfrac>`;
    if (token === "sqrt") return `<msqrt>${this.#braced()}</msqrt>`;
    if (token.startsWith('"')) return `<mtext>${escaped(token.slice(1, -1))}</mtext>`;
    if (/^\d/.test(token)) return `<mn>${token}</mn>`;
    if (/^[\p{L}Δ∂]/u.test(token)) return `<mi>${escaped(token)}</mi>`;
    return `<mo>${escaped(OPERATORS[token] ?? token)}</mo>`;
  }

  #braced(): Html {
    if (this.#tokens[this.#at] !== "{") throw new Error("a brace is missing");
    this.#at += 1;
    return this.#group();
  }

  #group(): Html {
    const row = this.row();
    if (this.#tokens[this.#at] !== "}") throw new Error("a brace is not closed");
    this.#at += 1;
    return `<mrow>${row}</mrow>`;
  }
}
