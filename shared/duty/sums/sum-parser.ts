import { create, type MathNode, parseDependencies } from "mathjs/number";

/** Its parser alone, for numbers alone: nothing of a sum is ever run, its tree is walked. */
const { parse } = create({ ...parseDependencies });

/** The tree of a sum; throws where it has none. */
export function sumTree(formula: string): MathNode {
  return parse(formula);
}
