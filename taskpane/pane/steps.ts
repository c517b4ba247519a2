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
import { units } from "./views/units.ts";
import { writeSheet } from "./views/write-sheet.ts";

/** The pane from top to bottom. */
export const STEPS: readonly Step[] = [
  job,
  units,
  liquidAndSite,
  flowAndLevels,
  station,
  suctionLine,
  dischargeLine,
  results,
  systemCurve,
  pumps,
  pump,
  range,
  cases,
  ...PACKAGE_STEPS,
  settings,
  toConfirm,
  writeSheet,
  traceCurve,
];
