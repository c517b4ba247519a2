import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import type { CellError } from "../cells/cell.ts";
import { findingText } from "./finding-text.ts";

/** The two error values whose message Excel shows: #N/A for a name that is not known, #VALUE! for the rest. */
export function cellErrorOf(findings: readonly Finding[], unitSet: UnitSetName): CellError {
  const worst = findings.find(({ kind }) => kind === "error");
  if (worst === undefined) throw new Error("a refusal came without a reason");
  return { error: worst.code === "name-unknown" ? "#N/A" : "#VALUE!", message: findingText(worst, unitSet) };
}
