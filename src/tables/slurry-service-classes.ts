import type { Citation } from "../basis/citation.ts";
import { namedRows } from "./named-rows.ts";

export const SERVICE_CLASSES_CITE: Citation = {
  source: "ansi-hi-12",
  at: "service classes, suggested limits",
  unverified: true,
};

/**
 * Suggested limits by service class, as the slurry pump standard ANSI/HI 12.1-12.6 groups them, mildest first: class,
 * service, greatest head a stage (m), greatest speed of the impeller tip with metal and with elastomer parts (m/s).
 *
 * Verified: not yet; all from memory, so they bring cautions and never refuse.
 */
export const SERVICE_CLASSES = namedRows("serviceClass service headPerStage metal elastomer", [
  [1, "light", 123, 43, 31],
  [2, "medium", 66, 38, 28],
  [3, "heavy", 52, 33, 26],
  [4, "very heavy", 40, 28, 23],
]);
