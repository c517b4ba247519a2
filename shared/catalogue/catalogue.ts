import { driveEntries } from "./entries/drive.ts";
import { estimateEntries } from "./entries/estimate.ts";
import { liquidAndSiteEntries, liquidListEntries } from "./entries/liquid-and-site.ts";
import { materialEntries } from "./entries/materials.ts";
import { notesEntry } from "./entries/notes.ts";
import { pipeAndFrictionEntries } from "./entries/pipe-and-friction.ts";
import { pipeListEntries } from "./entries/pipe-list.ts";
import { pressureAndFlangeEntries } from "./entries/pressure-and-flanges.ts";
import { primingEntries } from "./entries/priming.ts";
import { pumpEntries } from "./entries/pump.ts";
import { rankPumpsEntries } from "./entries/rank-pumps.ts";
import { slurryEntries } from "./entries/slurry.ts";
import { systemAndSuctionEntries } from "./entries/system-and-suction.ts";
import type { Entry } from "./entry.ts";

/** All functions but NOTES, which speaks of these. */
const FUNCTIONS: readonly Entry[] = [
  ...pipeListEntries,
  ...pipeAndFrictionEntries,
  ...liquidAndSiteEntries,
  ...liquidListEntries,
  ...systemAndSuctionEntries,
  ...pressureAndFlangeEntries,
  ...driveEntries,
  ...pumpEntries,
  ...rankPumpsEntries,
  ...slurryEntries,
  ...primingEntries,
  ...materialEntries,
  ...estimateEntries,
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
