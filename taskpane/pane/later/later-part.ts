import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { cases } from "../views/cases.ts";
import { job } from "../views/job.ts";
import { PACKAGE_STEPS } from "../views/package/package-steps.ts";
import { pump } from "../views/pump.ts";
import { pumps } from "../views/pumps.ts";
import { range } from "../views/range.ts";
import { settings } from "../views/settings.ts";
import { station } from "../views/station.ts";
import { systemCurve } from "../views/system-curve.ts";
import { toConfirm } from "../views/to-confirm.ts";
import { writeSheet } from "../views/write-sheet.ts";
import { workedOut } from "../worked.ts";
import type { LaterPart } from "./later.ts";

/** What the pane shows beyond its first screen, loaded once that stands. */
export const LATER_PART: LaterPart = {
  steps: {
    ...PACKAGE_STEPS,
    "system-curve": systemCurve,
    cases,
    pumps,
    pump,
    station,
    range,
    job,
    write: writeSheet,
    toConfirm,
    settings,
  },
  samples: SAMPLE_DUTIES,
  workedOut,
};
