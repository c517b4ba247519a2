import type { TemplateResult } from "lit";
import { PACKAGE_SECTIONS } from "../../../../shared/calc-sheet/duty-plan.ts";
import type { Duty } from "../../../../shared/duty/duty.ts";
import type { StepId } from "../../../../shared/duty/fields.ts";
import { costParts } from "../../../../shared/package/cost-parts.ts";
import { flangeFaces } from "../../../../shared/package/flange-faces.ts";
import { powerLadder } from "../../../../shared/package/power-ladder.ts";
import { risingWater } from "../../../../shared/package/rising-water.ts";
import { routeLine } from "../../../../shared/package/route-line.ts";
import { settlingRuns } from "../../../../shared/package/settling.ts";
import { solidsMap } from "../../../../shared/package/solids-map.ts";
import { stagePressures } from "../../../../shared/package/stage-pressures.ts";
import type { StepContent } from "../../context.ts";
import { costBars } from "../../pictures/cost-bars.ts";
import { flangeFacePicture } from "../../pictures/flange-face.ts";
import { powerLadderPicture } from "../../pictures/power-ladder.ts";
import { risingWaterPicture } from "../../pictures/rising-water.ts";
import { routeProfile } from "../../pictures/route-profile.ts";
import { settlingBars } from "../../pictures/settling-bars.ts";
import { solidsMapPicture } from "../../pictures/solids-map.ts";
import { stageBars } from "../../pictures/stage-bars.ts";
import { packageStep, type SectionPicture } from "./package-step.ts";

/** A picture of what can be read off the duty, where it can. */
function pictureOf<T>(
  read: (duty: Duty) => T | undefined,
  draw: (read: T, duty: Duty, width: number) => TemplateResult,
): SectionPicture {
  return (duty, width) => {
    const found = read(duty);
    return found === undefined ? undefined : draw(found, duty, width);
  };
}

const PICTURES: Readonly<Partial<Record<StepId, SectionPicture>>> = {
  slurry: pictureOf(settlingRuns, (runs, { unitSet }, width) => settlingBars(runs, unitSet, width)),
  route: pictureOf(routeLine, (line, { unitSet }, width) => routeProfile(line, unitSet, width)),
  pressure: pictureOf(stagePressures, (pressures, { unitSet }, width) => stageBars(pressures, unitSet, width)),
  bolting: pictureOf(flangeFaces, (faces, { unitSet }, width) => flangeFacePicture(faces, unitSet, width)),
  drive: pictureOf(powerLadder, (ladder, _, width) => powerLadderPicture(ladder, width)),
  priming: pictureOf(risingWater, (water, { unitSet }, width) => risingWaterPicture(water, unitSet, width)),
  materials: pictureOf(solidsMap, (map, _, width) => solidsMapPicture(map, width)),
  estimate: pictureOf(costParts, (costs, _, width) => costBars(costs, width)),
};

/** The steps of the package, as the sheet has its sections. */
export const PACKAGE_STEPS: Readonly<Partial<Record<StepId, StepContent>>> = Object.fromEntries(
  PACKAGE_SECTIONS.map((section) => [section.id, packageStep(section, PICTURES[section.id] ?? (() => undefined))]),
);
