import { PACKAGE_TITLES, type PackageId } from "../../shared/calc-sheet/package-titles.ts";
import { LOGO_PLACE } from "../../shared/duty/duty-text.ts";
import { fieldsOf } from "../../shared/duty/fields.ts";
import type { Step } from "./context.ts";
import { laterStep } from "./later/later-step.ts";
import { traceCurve } from "./tracing/step.ts";
import { flowAndLevels } from "./views/flow-and-levels.ts";
import { dischargeLine, suctionLine } from "./views/lines.ts";
import { liquidAndSite } from "./views/liquid-and-site.ts";
import { results } from "./views/results.ts";

export const STAGE_KEYS = ["duty", "pump", "package", "slurry", "cost", "sheet"] as const;
export type StageKey = (typeof STAGE_KEYS)[number];

/** One part of the job, shown by itself; its steps stand in the order they are worked through. */
export interface Stage {
  readonly key: StageKey;
  readonly title: string;
  readonly steps: readonly Step[];
  /** The first of the steps that show what comes of those before them. */
  readonly answersFrom?: string;
}

function ofPackage(...ids: readonly PackageId[]): readonly Step[] {
  return ids.map((id) => laterStep({ key: id, title: PACKAGE_TITLES[id], holds: fieldsOf(id) }));
}

const pumps = laterStep({
  key: "pumps",
  title: "Pump table and ranking",
  holds: [...fieldsOf("ranking"), "pumps", "ranking"],
});
const pump = laterStep({ key: "pump", title: "Selected pump", holds: ["pump"] });
const station = laterStep({ key: "station", title: "Station", holds: fieldsOf("station") });
const range = laterStep({ key: "range", title: "Operating range", holds: fieldsOf("range") });
const systemCurve = laterStep({ key: "system-curve", title: "System curve", holds: fieldsOf("system") });
const cases = laterStep({ key: "cases", title: "Cases", holds: [...fieldsOf("cases"), "cases"] });
const job = laterStep({ key: "job", title: "Job", holds: [...fieldsOf("job"), LOGO_PLACE, "revisions"] });
const writeSheet = laterStep({ key: "write", title: "Calc sheet" });
const toConfirm = laterStep({ key: "toConfirm", title: "To confirm with the customer" });
const settings = laterStep({ key: "settings", title: "Settings", holds: fieldsOf("settings") });

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
      ...ofPackage("sump", "route"),
      cases,
    ],
    answersFrom: results.key,
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
