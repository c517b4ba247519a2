import { ACCEPTANCETEST } from "./entries/acceptance.ts";
import { ASPUMPED } from "./entries/as-pumped.ts";
import { BELTDRIVE, HOUSINGMATCH } from "./entries/attachment.ts";
import { BOLTTORQUE, STUDLENGTH } from "./entries/bolting.ts";
import { BOOSTERS } from "./entries/boosters.ts";
import { DRIVEARRANGEMENT, ENGINESITEPOWER, FUELRATE, MOTORSIZE } from "./entries/drive.ts";
import { FLYWHEELHOUSINGS, MOTORFRAMES } from "./entries/drive-lists.ts";
import { ENERGYCOST, LIFECYCLECOST } from "./entries/estimate.ts";
import { FIELDCHECK, FIELDREASONS } from "./entries/field-check.ts";
import { FIELDHEAD, TIMEDFLOW } from "./entries/field-head.ts";
import { FUELTOWATER, WIRETOWATER } from "./entries/field-power.ts";
import { FINDINGS } from "./entries/findings.ts";
import { FLANGEDIMENSIONS } from "./entries/flange-dimensions.ts";
import { MINTHERMALFLOW, NPSHLIMITFLOW, SHUTOFFHEATING } from "./entries/flow-limits.ts";
import { GRADELINE } from "./entries/grade-line.ts";
import { LINEPRESSURES } from "./entries/line-pressures.ts";
import { ATMOSPHERE, DENSITY, INUNITS, LIQUIDS, VAPORPRESSURE, VISCOSITY } from "./entries/liquid-and-site.ts";
import { MATERIALCHECK } from "./entries/material-check.ts";
import { CASTINGPROPERTY, CASTINGS } from "./entries/materials.ts";
import { ENGINELOAD, FUELTANKHOURS, FUELTANKSIZE, MOTORDATA } from "./entries/motor-and-tank.ts";
import { notesEntry } from "./entries/notes.ts";
import { NOZZLECLASSES } from "./entries/nozzle-classes.ts";
import { NPSHMARGIN } from "./entries/npsh-margin.ts";
import { BESTEFFICIENCYPOINT, OPERATINGREGION } from "./entries/operating-region.ts";
import {
  FITTINGHEAD,
  FITTINGK,
  FITTINGS,
  FRICTIONFACTOR,
  FRICTIONHEAD,
  HAZENHEAD,
  LINEHEAD,
  PIPESIZE,
  REYNOLDS,
  VELOCITY,
} from "./entries/pipe-and-friction.ts";
import { BORE, PIPES } from "./entries/pipe-list.ts";
import { LINESURGE, PIPERATING } from "./entries/pipe-rating.ts";
import {
  FLANGECHECK,
  FLANGECLASS,
  FLANGERATING,
  FLANGERATINGS,
  NOZZLEPRESSURE,
  SURGE,
} from "./entries/pressure-and-flanges.ts";
import { HEADPRESSURE, PRESSUREHEAD } from "./entries/pressure-head.ts";
import { FUELCOST, RENTAL, SELLINGPRICE } from "./entries/price.ts";
import { PRIMETIME, PRIMINGMETHODS } from "./entries/priming.ts";
import { EDUCTORAIR, PRIMECURVE, PRIMINGLIFT } from "./entries/priming-devices.ts";
import {
  PUMPEFFICIENCY,
  PUMPHEAD,
  PUMPNPSHR,
  PUMPPOWER,
  SHAFTPOWER,
  SPECIFICSPEED,
  SPEEDRATIO,
  SUCTIONSPECIFICSPEED,
  TRIMRATIO,
  VISCOUSCURVE,
} from "./entries/pump.ts";
import { PUMPMAXPOWER } from "./entries/pump-max-power.ts";
import { RANKPUMPS } from "./entries/rank-pumps.ts";
import { AIRVALVES, DRAINDOWN, FILLHEAD, FILLTIME, SIPHONCREDIT } from "./entries/route.ts";
import { ROUTECURVE } from "./entries/route-curve.ts";
import { BRANCHFLOWS, PARALLELRUNS } from "./entries/runs.ts";
import { DEPOSITIONVELOCITY, SLURRYDERATE, SLURRYSG, SOLIDSBYVOLUME } from "./entries/slurry.ts";
import { SETTLINGVELOCITY, SLURRYCLASS, SLURRYDUTY, SLURRYLINE, SLURRYMIXTURE } from "./entries/slurry-duty.ts";
import { SPEEDTABLE } from "./entries/speed-table.ts";
import { OPERATINGPOINT, PUMPSTOPS, STATIONCURVE } from "./entries/station.ts";
import { SUBMERGENCE } from "./entries/submergence.ts";
import { SUCTIONPRESSURE } from "./entries/suction-pressure.ts";
import { DRAWDOWNTIME, DROPTEST, PUMPCYCLE, SUMPVOLUME, WORKINGVOLUME } from "./entries/sump.ts";
import { MAXLIFT, NPSHA, SYSTEMCURVE, TDH } from "./entries/system-and-suction.ts";
import { BENDTHRUST, COLLAPSEPRESSURE, PIPEMASS, TAKEOFF } from "./entries/take-off.ts";
import { GENERATORSIZE, MINSPEED } from "./entries/variable-speed.ts";
import { VERDICTS } from "./entries/verdicts.ts";
import { WETTEDPARTS } from "./entries/wetted-parts.ts";
import type { Entry } from "./entry.ts";

/** All functions but NOTES, which speaks of these. In the order of the help. */
const FUNCTIONS: readonly Entry[] = [
  BORE,
  PIPES,
  VELOCITY,
  REYNOLDS,
  FRICTIONFACTOR,
  FRICTIONHEAD,
  HAZENHEAD,
  FITTINGK,
  FITTINGHEAD,
  LINEHEAD,
  PARALLELRUNS,
  BRANCHFLOWS,
  PIPESIZE,
  FITTINGS,
  DENSITY,
  VISCOSITY,
  VAPORPRESSURE,
  ATMOSPHERE,
  INUNITS,
  LIQUIDS,
  PRESSUREHEAD,
  HEADPRESSURE,
  TDH,
  SYSTEMCURVE,
  NPSHA,
  NPSHMARGIN,
  MAXLIFT,
  NPSHLIMITFLOW,
  SUBMERGENCE,
  SUMPVOLUME,
  DRAWDOWNTIME,
  DROPTEST,
  WORKINGVOLUME,
  PUMPCYCLE,
  GRADELINE,
  FILLHEAD,
  SIPHONCREDIT,
  ROUTECURVE,
  FILLTIME,
  DRAINDOWN,
  AIRVALVES,
  LINEPRESSURES,
  FLANGERATING,
  FLANGECLASS,
  FLANGECHECK,
  SUCTIONPRESSURE,
  NOZZLEPRESSURE,
  FLANGEDIMENSIONS,
  SURGE,
  PIPERATING,
  LINESURGE,
  FLANGERATINGS,
  NOZZLECLASSES,
  BOLTTORQUE,
  STUDLENGTH,
  MOTORSIZE,
  ENGINESITEPOWER,
  DRIVEARRANGEMENT,
  FUELRATE,
  MOTORDATA,
  MINSPEED,
  GENERATORSIZE,
  ENGINELOAD,
  FUELTANKHOURS,
  FUELTANKSIZE,
  BELTDRIVE,
  HOUSINGMATCH,
  FLYWHEELHOUSINGS,
  MOTORFRAMES,
  PUMPHEAD,
  PUMPEFFICIENCY,
  PUMPNPSHR,
  PUMPPOWER,
  BESTEFFICIENCYPOINT,
  OPERATINGREGION,
  MINTHERMALFLOW,
  SHUTOFFHEATING,
  ACCEPTANCETEST,
  TIMEDFLOW,
  FIELDHEAD,
  WIRETOWATER,
  FUELTOWATER,
  FIELDCHECK,
  FIELDREASONS,
  PUMPMAXPOWER,
  OPERATINGPOINT,
  PUMPSTOPS,
  STATIONCURVE,
  BOOSTERS,
  SPEEDRATIO,
  SPEEDTABLE,
  TRIMRATIO,
  SPECIFICSPEED,
  SUCTIONSPECIFICSPEED,
  VISCOUSCURVE,
  SHAFTPOWER,
  RANKPUMPS,
  SLURRYSG,
  SOLIDSBYVOLUME,
  DEPOSITIONVELOCITY,
  SLURRYDERATE,
  SLURRYMIXTURE,
  ASPUMPED,
  SLURRYLINE,
  SLURRYDUTY,
  SLURRYCLASS,
  SETTLINGVELOCITY,
  PRIMETIME,
  PRIMINGMETHODS,
  PRIMINGLIFT,
  PRIMECURVE,
  EDUCTORAIR,
  CASTINGPROPERTY,
  CASTINGS,
  WETTEDPARTS,
  MATERIALCHECK,
  ENERGYCOST,
  LIFECYCLECOST,
  TAKEOFF,
  PIPEMASS,
  BENDTHRUST,
  COLLAPSEPRESSURE,
  SELLINGPRICE,
  RENTAL,
  FUELCOST,
  VERDICTS,
  FINDINGS,
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
