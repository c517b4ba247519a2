import type { PipeCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const pipeWords: Readonly<Record<PipeCode, Words>> = {
  "pipe-family-missing": (f, say) =>
    `${f.subject} “${f.given}” is a nominal size without a family, which leaves its bore open; write ${say.suggestions()}`,
  "pipe-size-missing": (f, say) =>
    `${f.subject} “${f.given}” names a family without a size; write it in full, such as ${say.suggestions()}`,
  "pipe-roughness-missing": (f, say) => `${f.subject} “${f.given}” states no roughness; write ${say.suggestions()}`,
  "bore-is-nominal": (f, say) =>
    `${f.subject}: the bore given equals a nominal size; if it is one, ${say.suggestions()} has a bore of ${say.fact("bore")}`,
  "surface-uncertain": (f, say) =>
    `${f.subject}: ${say.fact("surface")} is taken with a roughness of ${say.fact("taken")}; ${say.fact("least")} to ${say.fact("greatest")} is found; state “rough” and an amount where it is known`,
  "hose-corrugated": (f, say) =>
    `${f.subject}: a corrugated bore is taken with ${say.fact("taken")} times the friction of a smooth one; ${say.fact("least")} to ${say.fact("greatest")} times is found; ask for the measured loss of this hose`,
};
