import type { FactsCode, FactsOf } from "../../src/basis/finding-code.ts";
import type { Finding } from "../../src/basis/result.ts";

/** The facts of the finding with this code. Throws where there is none. */
export function factsOf<C extends FactsCode>(
  { findings }: { readonly findings: readonly Finding[] },
  code: C,
): FactsOf[C] {
  const found = findings.find((finding) => finding.code === code);
  if (found === undefined) throw new Error(`no ${code}`);
  return found.facts as FactsOf[C];
}
