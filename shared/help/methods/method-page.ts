import { type Citation, citationText } from "../../../src/basis/citation.ts";
import type { Input, Method } from "../../../src/basis/method.ts";
import { amount } from "../../../src/basis/result.ts";
import { amountText } from "../../text/words.ts";
import { escaped, type Html, list, type Page, section, table } from "../html.ts";
import { functionLink, inline } from "../links.ts";
import { type Figure, figure } from "./figure.ts";
import { equation } from "./mathml.ts";

export interface MethodText {
  readonly name: string;
  readonly title: string;
  readonly summary: string;
  readonly words?: readonly string[];
  readonly equations: readonly string[];
  readonly where: readonly (readonly [symbol: string, meaning: string])[];
  /** Where it holds, beside the bounds of its inputs. */
  readonly range: readonly string[];
  /** The methods of the engine whose bounds and sources stand on the page. */
  readonly of: readonly Method<string>[];
  readonly figure: Figure;
  readonly functions: readonly string[];
}

/** A method: its equation, its range from the engine's own bounds, its sources, a figure worked out by the functions. */
export function methodPage({
  name,
  title,
  summary,
  words,
  equations,
  where,
  range,
  of,
  functions,
  ...drawn
}: MethodText): Page {
  const cites: readonly Citation[] = of.flatMap((method) => method.cites);
  const bounds = of
    .flatMap((method) => Object.values<Input>(method.inputs))
    .map((input) => [
      escaped(input.name),
      symbolHtml(input.symbol ?? ""),
      escaped(boundsText(input)),
      escaped(usualText(input)),
    ])
    .filter(([, , limits, usual]) => limits !== "" || usual !== "")
    .filter((row, i, all) => all.findIndex((other) => other.join() === row.join()) === i);
  const main = [
    section("Equation", equations.map(equation).join("\n")),
    section(
      "Where",
      table(
        "Symbols",
        ["Symbol", "What it is"],
        where.map(([symbol, meaning]) => [symbolHtml(symbol), inline(meaning)]),
      ),
    ),
    section(
      "Range",
      [
        range.length === 0 ? "" : list(range.map(inline)),
        bounds.length === 0
          ? ""
          : table("Bounds of the inputs", ["Input", "Symbol", "Refused outside", "A note outside"], bounds),
      ].join("\n"),
    ),
    section("Figure", figure(drawn.figure)),
    section("Functions", `<p>${functions.map(functionLink).join(", ")}</p>`),
    section("Sources", list([...new Set(cites.map(citationText))].map(escaped))),
  ].join("\n");
  return {
    file: `method-${name}.html`,
    kind: "method",
    title,
    summary,
    main,
    ...(words === undefined ? {} : { words }),
  };
}

/** "h_L,s" with its index set low. */
function symbolHtml(symbol: string): Html {
  return escaped(symbol).replace(/_([^\s)]+?)(?=,? |\)|$)/g, "<sub>$1</sub>");
}

/** A bound so great that it only keeps a number finite says nothing to a reader. */
const BEYOND_USE = 1e12;

function boundsText({ quantity, above, atLeast, atMost, below }: Input): string {
  const isOfUse = (value: number | undefined): value is number => value !== undefined && Math.abs(value) < BEYOND_USE;
  const say = (value: number) => {
    const [inUs, inSi] = [amountText(amount(quantity, value), "US"), amountText(amount(quantity, value), "SI")];
    return inUs === inSi ? inUs : `${inUs} (${inSi})`;
  };
  const sides = [
    ...(above === undefined ? [] : [above === 0 ? "above 0" : `above ${say(above)}`]),
    ...(atLeast === undefined ? [] : [atLeast === 0 ? "0 or more" : `at least ${say(atLeast)}`]),
    ...(!isOfUse(atMost) ? [] : [`at most ${say(atMost)}`]),
    ...(!isOfUse(below) ? [] : [`below ${say(below)}`]),
  ];
  return sides.join(", ");
}

function usualText({ quantity, usual }: Input): string {
  if (usual === undefined) return "";
  const { atLeast, atMost } = usual;
  return boundsText({
    name: "",
    quantity,
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
  });
}
