import { attachmentEntries } from "./entries/attachment.ts";
import { boltingEntries } from "./entries/bolting.ts";
import { driveEntries } from "./entries/drive.ts";
import { driveListEntries } from "./entries/drive-lists.ts";
import { estimateEntries } from "./entries/estimate.ts";
import { liquidAndSiteEntries, liquidListEntries } from "./entries/liquid-and-site.ts";
import { materialEntries } from "./entries/materials.ts";
import { motorAndTankEntries } from "./entries/motor-and-tank.ts";
import { notesEntry } from "./entries/notes.ts";
import { nozzleClassEntries } from "./entries/nozzle-classes.ts";
import { pipeAndFrictionEntries } from "./entries/pipe-and-friction.ts";
import { pipeListEntries } from "./entries/pipe-list.ts";
import { pressureAndFlangeEntries } from "./entries/pressure-and-flanges.ts";
import { priceEntries } from "./entries/price.ts";
import { primingEntries } from "./entries/priming.ts";
import { primingDeviceEntries } from "./entries/priming-devices.ts";
import { pumpEntries } from "./entries/pump.ts";
import { rankPumpsEntries } from "./entries/rank-pumps.ts";
import { slurryEntries } from "./entries/slurry.ts";
import { slurryDutyEntries } from "./entries/slurry-duty.ts";
import { systemAndSuctionEntries } from "./entries/system-and-suction.ts";
import { takeOffEntries } from "./entries/take-off.ts";
import { wettedPartsEntries } from "./entries/wetted-parts.ts";
import type { Entry } from "./entry.ts";

/** All functions but NOTES, which speaks of these. */
const FUNCTIONS: readonly Entry[] = [
  ...pipeListEntries,
  ...pipeAndFrictionEntries,
  ...liquidAndSiteEntries,
  ...liquidListEntries,
  ...systemAndSuctionEntries,
  ...pressureAndFlangeEntries,
  ...nozzleClassEntries,
  ...boltingEntries,
  ...driveEntries,
  ...motorAndTankEntries,
  ...attachmentEntries,
  ...driveListEntries,
  ...pumpEntries,
  ...rankPumpsEntries,
  ...slurryEntries,
  ...slurryDutyEntries,
  ...primingEntries,
  ...primingDeviceEntries,
  ...materialEntries,
  ...wettedPartsEntries,
  ...estimateEntries,
  ...takeOffEntries,
  ...priceEntries,
];

/** Every function the add-in offers. Registration, metadata, help, workbench and tests all read this list. */
export const CATALOGUE: readonly Entry[] = [...FUNCTIONS, notesEntry(FUNCTIONS)];

const byId = new Map(CATALOGUE.map((entry) => [entry.id, entry]));

/** The entry of a function, with or without the namespace, in upper or lower case. */
export function entryNamed(name: string): Entry | undefined {
  return byId.get(
    name
      .trim()
      .toUpperCase()
      .replace(/^DUTY\./, ""),
  );
}
