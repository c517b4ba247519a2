import { sumpNamed } from "../../../src/sump/described-sump.ts";
import { submergenceMethod } from "../../../src/sump/submergence.ts";
import { sumpLevelsMethod } from "../../../src/sump/sump-levels.ts";
import { workingVolumeMethod } from "../../../src/sump/working-volume.ts";
import { amount, named } from "../field.ts";
import { FLOW, LEVEL } from "./bounds.ts";

/** A level of a sump is one of the site, and one that a sump is known at. */
const SUMP_LEVEL = { ...sumpLevelsMethod.inputs.startLevel, ...LEVEL };

export const sump = {
  bellDiameter: amount({
    label: "Bell or open end, diameter",
    quantity: "size",
    bounds: submergenceMethod.inputs.bellDiameter,
    help: "Outside diameter of the suction bell, or of the plain end of pipe or hose.",
  }),
  bellLevel: amount({
    label: "Level of its rim",
    quantity: "elevation",
    bounds: LEVEL,
    help: "Rim of an end that looks down, highest point of one that lies level, above the datum of the levels.",
  }),
  sumpPlan: named(sumpNamed, {
    label: "Sump, plan",
    help: "Its plan area, sides or diameter: 180 ft2, 15 ft x 12 ft, 3 m diameter. Take off benching and what stands in it.",
  }),
  sumpStartLevel: amount({
    label: "Pumping starts at level",
    quantity: "elevation",
    bounds: SUMP_LEVEL,
    help: "Level at which the pumps start, or from which the sump is pumped down.",
  }),
  sumpStopLevel: amount({
    label: "Pumping stops at level",
    quantity: "elevation",
    bounds: SUMP_LEVEL,
    help: "Level at which they stop, or to which the sump is pumped down; below the start.",
  }),
  sumpInflow: amount({
    label: "Inflow meanwhile",
    quantity: "flow",
    bounds: { atLeast: 0, atMost: FLOW.atMost as number },
    whenBlank: 0,
    help: "Flow into the sump while it is pumped down.",
  }),
  startsPerHour: amount({
    label: "Starts an hour",
    quantity: "ratio",
    bounds: workingVolumeMethod.inputs.starts,
    help: "That one pump stands, by the maker of its motor. Usual: 4 to 6 below 15 kW (20 hp), 3 to 4 to 75 kW, engines 1 or 2.",
  }),
};
