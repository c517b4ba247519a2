import type { StepId } from "../../shared/duty/fields.ts";
import type { Step } from "./context.ts";
import { traceCurve } from "./tracing/step.ts";
import { cases } from "./views/cases.ts";
import { flowAndLevels } from "./views/flow-and-levels.ts";
import { job } from "./views/job.ts";
import { dischargeLine, suctionLine } from "./views/lines.ts";
import { liquidAndSite } from "./views/liquid-and-site.ts";
import { PACKAGE_STEPS } from "./views/package/package-steps.ts";
import { pump } from "./views/pump.ts";
import { pumps } from "./views/pumps.ts";
import { range } from "./views/range.ts";
import { results } from "./views/results.ts";
import { settings } from "./views/settings.ts";
import { station } from "./views/station.ts";
import { systemCurve } from "./views/system-curve.ts";
import { toConfirm } from "./views/to-confirm.ts";
import { writeSheet } from "./views/write-sheet.ts";

export const STAGE_KEYS = ["duty", "pump", "package", "slurry", "cost", "sheet"] as const;
export type StageKey = (typeof STAGE_KEYS)[number];

/** One part of the job, shown by itself; its steps stand in the order they are worked through. */
export interface Stage {
  readonly key: StageKey;
  readonly title: string;
  readonly steps: readonly Step[];
}

function ofPackage(...ids: readonly StepId[]): readonly Step[] {
  return PACKAGE_STEPS.filter(({ key }) => (ids as readonly string[]).includes(key));
}

const AROUND_THE_PUMP = ofPackage("pressure", "pipe", "bolting", "drive", "priming", "materials");

/** The pane in the order of the job. */
export const STAGES: readonly Stage[] = [
  {
    key: "duty",
    title: "Duty",
    steps: [
      flowAndLevels,
      suctionLine,
      dischargeLine,
      liquidAndSite,
      results,
      systemCurve,
      ...ofPackage("route", "sump"),
      cases,
    ],
  },
  { key: "pump", title: "Pump", steps: [pumps, pump, station, range, ...ofPackage("field"), traceCurve] },
  { key: "package", title: "Package", steps: AROUND_THE_PUMP },
  { key: "slurry", title: "Slurry", steps: ofPackage("slurry") },
  { key: "cost", title: "Cost", steps: ofPackage("estimate") },
  { key: "sheet", title: "Sheet", steps: [job, writeSheet, toConfirm, settings] },
];

export function stageOf(step: string): StageKey | undefined {
  return STAGES.find(({ steps }) => steps.some(({ key }) => key === step))?.key;
}
