import type { DutyText } from "../../../shared/duty/duty-text.ts";
import type { SampleDuty } from "../../../shared/duty/samples.ts";
import type { StepContent } from "../context.ts";
import type { WorkedOut } from "../head-worked.ts";

/** What the pane shows beyond its first screen, a part of the program of its own. */
export interface LaterPart {
  /** By the keys of the steps. */
  readonly steps: Readonly<Record<string, StepContent>>;
  readonly samples: readonly SampleDuty[];
  /** Works a duty out whole; without it head and suction alone are. */
  readonly workedOut: (typed: DutyText) => WorkedOut;
}

/** That part once it is here; until then, how it stands. */
export type Later = LaterPart | "loading" | "failed";

export async function loadLaterPart(): Promise<Later> {
  try {
    return (await import(/* webpackChunkName: "later" */ "./later-part.ts")).LATER_PART;
  } catch {
    return "failed";
  }
}
