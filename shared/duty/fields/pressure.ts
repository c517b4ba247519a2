import { FLANGE_CLASS_NAMES, flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { PRESSURE_MATERIAL_NAMES, pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import { amount, named, text } from "../field.ts";
import { IMPELLER, LEVEL, PRESSURE, RATED_PRESSURE, SPEED } from "./bounds.ts";

export const pressure = {
  greatestSuctionPressure: amount({
    label: "Greatest suction pressure",
    quantity: "gaugePressure",
    bounds: PRESSURE,
    whenBlank: 0,
    help: "Highest gauge pressure the suction nozzle can see, with the source at its fullest.",
  }),
  greatestSpeed: amount({
    label: "Greatest speed",
    quantity: "speed",
    bounds: SPEED,
    help: "An engine's high idle, or the top frequency of the drive; the running speed where left blank.",
  }),
  greatestImpeller: amount({
    label: "Greatest impeller diameter",
    quantity: "size",
    bounds: IMPELLER,
    help: "Largest impeller the casing takes, where the buyer may fit it later; the diameter run where left blank.",
  }),
  standingLevel: amount({
    label: "Top of the standing column",
    quantity: "elevation",
    bounds: LEVEL,
    help: "Highest point of the line that stays full with the pump stopped; the delivery level where left blank.",
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
    help: "Class of the pump's flanges, such as 150 or PN16; the lowest that holds is found where left blank.",
  }),
  casingWorkingPressure: amount({
    label: "Casing working pressure",
    quantity: "gaugePressure",
    bounds: RATED_PRESSURE,
    help: "Greatest working pressure the pump maker states for the casing and its seal.",
  }),
  otherPart: text({
    label: "Weakest other part",
    help: "What else stands under the discharge pressure: shaft seal, hose, coupling, instrument.",
  }),
  otherPartPressure: amount({
    label: "Working pressure of that part",
    quantity: "gaugePressure",
    bounds: RATED_PRESSURE,
    help: "Greatest working pressure its maker states.",
  }),
};
