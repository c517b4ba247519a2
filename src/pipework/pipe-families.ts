import { concreteFamilies } from "./concrete-pipe.ts";
import { hoseFamilies } from "./hose.ts";
import { copperFamilies, ductileIronFamilies, metricDuctileIronFamilies } from "./iron-and-copper-pipe.ts";
import type { PipeFamily } from "./pipe-family.ts";
import {
  metricPolyethyleneFamilies,
  metricPvcFamilies,
  polyethyleneFamilies,
  pvcFamilies,
  pvcPressureFamilies,
} from "./plastic-pipe.ts";
import { quickConnectFamilies } from "./quick-connect-pipe.ts";
import { metricSteelFamily, scheduleFamilies, stainlessFamilies, usualMetricSteelFamilies } from "./steel-pipe.ts";

/** Every family a pipe can be named by. */
export const PIPE_FAMILIES: readonly PipeFamily[] = [
  ...scheduleFamilies(),
  ...stainlessFamilies(),
  metricSteelFamily(),
  ...pvcFamilies(),
  ...pvcPressureFamilies(),
  ...metricPvcFamilies(),
  ...polyethyleneFamilies(),
  ...metricPolyethyleneFamilies(),
  ...ductileIronFamilies(),
  ...metricDuctileIronFamilies(),
  ...copperFamilies(),
  ...quickConnectFamilies(),
  ...concreteFamilies(),
  ...hoseFamilies(),
];

/** Families that only list: the usual sizes out of a family above. */
export const PIPE_SELECTIONS: readonly PipeFamily[] = usualMetricSteelFamilies();
