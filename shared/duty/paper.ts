import type { Paper } from "../ports/sheet-spec.ts";
import type { Duty } from "./duty.ts";

/** The paper a duty is printed on: the one stated, or that of the reader's units. */
export function paperOf({ paper, unitSet }: Pick<Duty, "paper" | "unitSet">): Paper {
  if (paper === "A4" || paper === "Letter") return paper;
  return unitSet === "US" ? "Letter" : "A4";
}
