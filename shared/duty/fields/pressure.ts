import { FLANGE_CLASS_NAMES, flangeClassFor, flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { PRESSURE_MATERIAL_NAMES, pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import { amount, named, oneOf, text } from "../field.ts";
import { stagesRead } from "../stages.ts";
import { IMPELLER, LEVEL, PRESSURE, RATED_PRESSURE, SPEED } from "./bounds.ts";
import { OF_ENGINE } from "./drive.ts";

export const pressure = {
  highestSourceLevel: amount({
    label: "Highest source level",
    quantity: "elevation",
    bounds: LEVEL,
    help: "Highest liquid surface pumped from, above the datum of the levels; the source level stated where left blank.",
  }),
  greatestSuctionPressure: amount({
    isSeldom: true,
    label: "Maximum suction pressure",
    quantity: "gaugePressure",
    bounds: PRESSURE,
    help: "Highest gauge pressure the suction nozzle can see, where it is more than source pressure and level give; those count where left blank.",
  }),
  greatestSpeed: amount({
    isSeldom: true,
    label: "Maximum speed (high idle)",
    quantity: "speed",
    bounds: SPEED,
    help: "An engine's high idle, or the top frequency of a drive. Blank: the running speed of a motor, 10 % over it for an engine.",
  }),
  governor: oneOf(["droop", "isochronous"], {
    isSeldom: true,
    label: "Engine governor",
    whenBlank: "droop",
    shownIf: OF_ENGINE,
    help: "isochronous holds the speed within 1 %; a mechanical one droops, and runs up to 10 % faster without load.",
  }),
  greatestImpeller: amount({
    isSeldom: true,
    label: "Maximum impeller diameter (casing)",
    quantity: "size",
    bounds: IMPELLER,
    help: "Largest impeller the casing takes, where the buyer may fit it later; the diameter run where left blank.",
  }),
  standingLevel: amount({
    isSeldom: true,
    label: "Highest level of the line when pumps are stopped",
    quantity: "elevation",
    bounds: LEVEL,
    help: "Highest point of the line that stays full with the pump stopped; the delivery level where left blank.",
  }),
  checkFailure: oneOf(["counted", "struck"], {
    isSeldom: true,
    label: "Case “check valve failed”",
    whenBlank: "counted",
    help: "A check valve that fails lets the column onto the pumps: to check, not to fail. struck trusts the valve.",
  }),
  casingMaterial: named(pressureMaterialNamed, {
    label: "Casing and flange material",
    choices: PRESSURE_MATERIAL_NAMES,
    whenBlank: "ductile iron",
    help: "Material of the pressure parts, by name or specification: ductile iron, WCB, CF8M …",
  }),
  flangeClass: named((given, subject, unitSet) => flangeClassNamed(given, ratingSystem(unitSet), subject), {
    label: "Flange class offered",
    choices: FLANGE_CLASS_NAMES,
    inUnitSet: (text, from, to) => flangeClassFor(text, ratingSystem(from), ratingSystem(to)),
    help: "Class of the pump's flanges, such as 150 or PN16; the lowest that holds is found where left blank.",
  }),
  casingWorkingPressure: amount({
    label: "Casing MAWP (maximum allowable working pressure)",
    quantity: "gaugePressure",
    bounds: RATED_PRESSURE,
    help: "Maximum working pressure the pump maker states for the casing and its seal.",
  }),
  otherPart: text({
    isSeldom: true,
    label: "Lowest-rated other component",
    help: "Shaft seal, hose, coupling, instrument. One named “suction …” or “discharge …” stands there alone, “hose between stages 1 and 2” between them.",
  }),
  otherPartPressure: amount({
    isSeldom: true,
    label: "Its maximum working pressure",
    quantity: "gaugePressure",
    bounds: RATED_PRESSURE,
    help: "Maximum working pressure its maker states.",
  }),
  stages: named(stagesRead, {
    isSeldom: true,
    label: "Stages in series that differ",
    help: "By number, with units: “2: Class 300, WCB, casing 500 psi, level 730 ft, after row 1, check valve; 3: hose 300 psi”. “after row 1” is its place along the discharge line. What is not said of a stage is as above.",
  }),
};
