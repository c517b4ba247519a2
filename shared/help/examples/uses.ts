import { DRIVE_USES, PRIMING_USES } from "./drive.ts";
import { ESTIMATE_USES } from "./estimate.ts";
import type { Uses } from "./example.ts";
import { LIQUID_USES } from "./liquids.ts";
import { PIPE_USES } from "./pipes.ts";
import { PRESSURE_USES } from "./pressure.ts";
import { PUMP_USES } from "./pumps.ts";
import { MATERIAL_USES, SLURRY_USES } from "./solids.ts";
import { SYSTEM_USES } from "./suction.ts";

/** By the id of the function. They stand apart from the entries: no calculation needs them. */
export const USES: Uses = {
  ...LIQUID_USES,
  ...PIPE_USES,
  ...SYSTEM_USES,
  ...PRESSURE_USES,
  ...DRIVE_USES,
  ...PRIMING_USES,
  ...PUMP_USES,
  ...SLURRY_USES,
  ...MATERIAL_USES,
  ...ESTIMATE_USES,
};
