import type { DutyText } from "../../shared/duty/duty-text.ts";
import { type SettledSums, settleSums, sumsOf } from "../../shared/duty/sums/settle-sums.ts";
import type { SumTree } from "../../shared/duty/sums/work-out-sum.ts";

/** Works out the sums of a duty; nothing while what it needs for that is being loaded. */
export type Settle = (duty: DutyText) => SettledSums | undefined;

interface Parser {
  readonly sumTree: SumTree;
}

/** The parser of sums is loaded when a text first needs it; `ready` is called then, or once it cannot be loaded. */
export function sumsWith(load: () => Promise<Parser>, ready: () => void): Settle {
  let parser: Parser | undefined;
  let stage: "idle" | "loading" | "failed" = "idle";
  return (duty) => {
    const sums = sumsOf(duty);
    if (sums.length > 0 && parser === undefined && stage !== "failed") {
      if (stage === "idle") void loadNow();
      return undefined;
    }
    // The next sum tries once more.
    if (stage === "failed") stage = "idle";
    return settleSums(duty, sums, parser?.sumTree);
  };

  async function loadNow(): Promise<void> {
    stage = "loading";
    try {
      parser = await load();
    } catch {
      stage = "failed";
    }
    ready();
  }
}

export function loadParser(): Promise<Parser> {
  return import("../../shared/duty/sums/sum-parser.ts");
}
