/** What a fitting of a line is to the buyer: how it is joined, and by how many joints. */
export interface FittingPart {
  /** Nothing is bought: a pipe end, or hose laid in a bend. */
  readonly isPart: boolean;
  readonly joined: "flanged" | "as the pipe" | "coupling";
  readonly joints: number;
}

const NOT_A_PART: FittingPart = { isPart: false, joined: "as the pipe", joints: 0 };
const AT_BOTH_ENDS: FittingPart = { isPart: true, joined: "flanged", joints: 2 };
const AT_ONE_END: FittingPart = { isPart: true, joined: "flanged", joints: 1 };

/** By the words of the names in the order looked for; a bend or a tee that names none of them is joined as the pipe is. */
const KINDS: readonly (readonly [words: RegExp, part: FittingPart])[] = [
  [/^(?:entrance bell|bellmouth)/, AT_ONE_END],
  [/^(?:entrance|exit|hose bend|hose sweep)/, NOT_A_PART],
  // What only its coefficient is known of: a part to be named, joined nobody knows how.
  [/^(?:k|cv|kv) /, { isPart: true, joined: "as the pipe", joints: 0 }],
  [/weld bead/, NOT_A_PART],
  [/^(?:basket|y) strainer|duckbill in line/, AT_BOTH_ENDS],
  [/air valve|duckbill/, AT_ONE_END],
  [/^(?:wye|lateral|manifold)/, { isPart: true, joined: "as the pipe", joints: 3 }],
  [/coupling|camlock|quick-connect|shank/, { isPart: true, joined: "coupling", joints: 0 }],
  [/foot valve|strainer|flap valve/, AT_ONE_END],
  [/tee.* flanged/, { isPart: true, joined: "flanged", joints: 3 }],
  [/flanged|flexible connector/, AT_BOTH_ENDS],
  [/tee/, { isPart: true, joined: "as the pipe", joints: 3 }],
  [/elbow|mitre|bend/, { isPart: true, joined: "as the pipe", joints: 2 }],
];

/**
 * What a fitting of this name is to the buyer. Valves and checks are flanged at both ends; bends and tees are joined as
 * the pipe is, unless they say flanged.
 * Source: house choice.
 */
export function fittingPart(name: string): FittingPart {
  const words = name.toLowerCase().replace(/^3k /, "");
  return KINDS.find(([kind]) => kind.test(words))?.[1] ?? AT_BOTH_ENDS;
}

/** Whether a fitting leads from one bore to another. */
export function changesSize(name: string): boolean {
  return /reducer|reduction|contraction|expander|expansion(?! joint)|enlargement|increaser|diffuser/i.test(name);
}
