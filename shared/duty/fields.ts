import type { Quantity } from "../../src/basis/quantities.ts";
import { NOTHING_ELSE } from "../../src/material/constituent.ts";
import { PARTICLE_NAMES } from "../../src/material/particle.ts";
import { CONSTITUENTS } from "../../src/material/wetted-duty.ts";
import { FLANGE_CLASS_NAMES } from "../../src/pressure/flange-class.ts";
import { PRESSURE_MATERIALS } from "../../src/pressure/pressure-material.ts";
import { ACCEPTANCE_GRADES } from "../../src/tables/acceptance-grades.ts";
import { BOLT_GRADES, type BoltGradeName } from "../../src/tables/bolts.ts";
import { GASKETS, type GasketName } from "../../src/tables/gaskets.ts";
import type { FieldKey } from "./duty-text.ts";

export const DRIVERS = ["motor", "engine"] as const;
export const ASPIRATIONS = ["turbo", "natural"] as const;
export const GASKET_NAMES = Object.keys(GASKETS) as readonly GasketName[];
export const BOLT_GRADE_NAMES = Object.keys(BOLT_GRADES) as readonly BoltGradeName[];

/** What a field of the duty is: label, quantity, default, and words of help. */
export interface Field {
  readonly label: string;
  /** Absent for plain texts. */
  readonly quantity?: Quantity;
  readonly kind: "text" | "liquid" | "quantity";
  /** A blank optional field takes this value, in engine units, and the sheet says it was assumed. */
  readonly whenBlank?: number | string;
  readonly required: boolean;
  readonly help: string;
  /** Known names to choose from; what else may be typed, the help says. */
  readonly choices?: readonly string[];
}

export const FIELDS: Readonly<Record<FieldKey, Field>> = {
  project: { label: "Project", kind: "text", required: false, help: "Name of the job." },
  customer: { label: "Customer", kind: "text", required: false, help: "Who asked." },
  item: { label: "Item", kind: "text", required: false, help: "Pump or item number, such as P-101." },
  reference: { label: "Reference", kind: "text", required: false, help: "Enquiry or quotation number." },
  revision: { label: "Revision", kind: "text", required: false, help: "Revision of this calculation." },
  preparedBy: { label: "Prepared by", kind: "text", required: false, help: "Your name or initials." },
  date: { label: "Date", kind: "text", required: false, help: "Date of this calculation, as you write it." },
  liquid: {
    label: "Liquid",
    kind: "liquid",
    required: false,
    whenBlank: "water",
    help: 'A name such as water or sea water, or a description such as "SG 1.12, 3.5 cP, pv 2.3 kPa".',
  },
  temperature: {
    label: "Liquid temperature",
    kind: "quantity",
    quantity: "temperature",
    required: false,
    whenBlank: 293.15,
    help: "Hottest liquid to be pumped; it decides the vapour pressure.",
  },
  altitude: {
    label: "Site altitude",
    kind: "quantity",
    quantity: "elevation",
    required: false,
    whenBlank: 0,
    help: "Height of the site above sea level; it decides the atmospheric pressure.",
  },
  flow: { label: "Flow", kind: "quantity", quantity: "flow", required: true, help: "Flow the pump must give." },
  sourceLevel: {
    label: "Source liquid level",
    kind: "quantity",
    quantity: "elevation",
    required: true,
    help: "Lowest liquid surface pumped from, above any datum you like.",
  },
  pumpLevel: {
    label: "Pump level",
    kind: "quantity",
    quantity: "elevation",
    required: true,
    help: "Shaft centre line of a horizontal pump, above the same datum.",
  },
  deliveryLevel: {
    label: "Delivery level",
    kind: "quantity",
    quantity: "elevation",
    required: true,
    help: "Liquid surface pumped to, or centre line of a free outlet, above the same datum.",
  },
  sourcePressure: {
    label: "Source pressure",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    whenBlank: 0,
    help: "Gauge pressure over the source liquid; 0 where it is open to the air.",
  },
  deliveryPressure: {
    label: "Delivery pressure",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    whenBlank: 0,
    help: "Gauge pressure at the delivery surface; 0 where it is open to the air.",
  },
  frictionMargin: {
    label: "Margin on losses",
    kind: "quantity",
    quantity: "percent",
    required: false,
    whenBlank: 0,
    help: "Added to the losses of both lines as a line of its own, in per cent.",
  },
  npshRequired: {
    label: "NPSH required",
    kind: "quantity",
    quantity: "head",
    required: false,
    help: "From the pump's curve at this flow, where it is known.",
  },
  npshMargin: {
    label: "NPSH margin wanted",
    kind: "quantity",
    quantity: "head",
    required: false,
    whenBlank: 1,
    help: "Least difference between NPSH available and required.",
  },
  curveFlow: {
    label: "System curve up to",
    kind: "quantity",
    quantity: "flow",
    required: false,
    help: "Greatest flow of the system curve; one and a half times the flow where left blank.",
  },
  leastStaticHead: {
    label: "Least static head",
    kind: "quantity",
    quantity: "head",
    required: false,
    help: "At the highest source and lowest delivery level; the pump runs out furthest here.",
  },
  greatestStaticHead: {
    label: "Greatest static head",
    kind: "quantity",
    quantity: "head",
    required: false,
    help: "At the lowest source and highest delivery level; the pump gives least here.",
  },
  agedRoughness: {
    label: "Roughness of aged pipe",
    kind: "quantity",
    quantity: "size",
    required: false,
    help: "Absolute roughness after years of use, for the aged end of the range; the lines as stated are the new end.",
  },
  acceptanceGrade: {
    label: "Acceptance grade",
    kind: "text",
    choices: ACCEPTANCE_GRADES.map(({ grade }) => grade),
    required: false,
    help: "Grade of ISO 9906 that the pump is bought to, such as 2B; its tolerances widen the duty region.",
  },
  greatestSuctionPressure: {
    label: "Greatest suction pressure",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    whenBlank: 0,
    help: "Highest gauge pressure the suction nozzle can see, with the source at its fullest.",
  },
  casingMaterial: {
    label: "Casing and flange material",
    kind: "text",
    choices: PRESSURE_MATERIALS.map(({ name }) => name),
    required: false,
    whenBlank: "ductile iron",
    help: "Material of the pressure parts, by name or specification: ductile iron, WCB, CF8M …",
  },
  flangeClass: {
    label: "Flange class offered",
    kind: "text",
    choices: FLANGE_CLASS_NAMES,
    required: false,
    help: "Class of the pump's flanges, such as 150 or PN16; the lowest that holds is found where left blank.",
  },
  casingWorkingPressure: {
    label: "Casing working pressure",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    help: "Greatest working pressure the pump maker states for the casing and its seal.",
  },
  otherPart: {
    label: "Weakest other part",
    kind: "text",
    required: false,
    help: "What else stands under the discharge pressure: shaft seal, hose, coupling, instrument.",
  },
  otherPartPressure: {
    label: "Working pressure of that part",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    help: "Greatest working pressure its maker states.",
  },
  greatestSpeed: {
    label: "Greatest speed",
    kind: "quantity",
    quantity: "speed",
    required: false,
    help: "An engine's high idle, or the top frequency of the drive; the running speed where left blank.",
  },
  greatestImpeller: {
    label: "Greatest impeller diameter",
    kind: "quantity",
    quantity: "size",
    required: false,
    help: "Largest impeller the casing takes, where the buyer may fit it later; the diameter run where left blank.",
  },
  standingLevel: {
    label: "Top of the standing column",
    kind: "quantity",
    quantity: "elevation",
    required: false,
    help: "Highest point of the line that stays full with the pump stopped; the delivery level where left blank.",
  },
  suctionFlange: {
    label: "Suction flange size",
    kind: "text",
    required: false,
    help: "Nominal size, such as NPS 8 or DN200. A bare number is inches in US units and DN otherwise.",
  },
  dischargeFlange: {
    label: "Discharge flange size",
    kind: "text",
    required: false,
    help: "Nominal size, such as NPS 6 or DN150. Grey iron is rated by it.",
  },
  gasket: {
    label: "Gasket",
    kind: "text",
    choices: GASKET_NAMES,
    required: false,
    help: "Decides the least bolt load; no torque is given without it. Grey iron takes soft rubber, full face.",
  },
  boltGrade: {
    label: "Bolting material",
    kind: "text",
    choices: BOLT_GRADE_NAMES,
    required: false,
    whenBlank: "A193 B7",
    help: "Decides how hard the bolts may be pulled.",
  },
  nutFactor: {
    label: "Nut factor K",
    kind: "quantity",
    quantity: "ratio",
    required: false,
    whenBlank: 0.2,
    help: "0.16 to 0.20 lubricated, 0.20 to 0.25 as received; common practice.",
  },
  driver: {
    label: "Driver",
    kind: "text",
    choices: DRIVERS,
    required: false,
    whenBlank: "motor",
    help: "motor or engine.",
  },
  serviceFactor: {
    label: "Margin on power",
    kind: "quantity",
    quantity: "ratio",
    required: false,
    whenBlank: 1.1,
    help: "Multiplies the greatest shaft power before the next rating is taken.",
  },
  engineRating: {
    label: "Engine continuous rating",
    kind: "quantity",
    quantity: "power",
    required: false,
    help: "Net continuous rating at running speed, from the engine maker's curve.",
  },
  airTemperature: {
    label: "Greatest air temperature",
    kind: "quantity",
    quantity: "temperature",
    required: false,
    whenBlank: 313.15,
    help: "Hottest air the driver works in.",
  },
  aspiration: {
    label: "Engine aspiration",
    kind: "text",
    choices: ASPIRATIONS,
    required: false,
    whenBlank: "turbo",
    help: "natural or turbo.",
  },
  specificConsumption: {
    label: "Specific fuel consumption",
    kind: "quantity",
    quantity: "specificConsumption",
    required: false,
    help: "From the engine maker; a usual figure by size is taken where left blank.",
  },
  accessoryLosses: {
    label: "Fan and accessory losses",
    kind: "quantity",
    quantity: "percent",
    required: false,
    whenBlank: 0,
    help: "Taken off where the rating is gross: 3 % to 8 %. None where the rating is net.",
  },
  tankVolume: {
    label: "Fuel tank",
    kind: "quantity",
    quantity: "volume",
    required: false,
    help: "Volume of the fuel tank, for the hours it lasts.",
  },
  supplyVoltage: {
    label: "Supply voltage",
    kind: "quantity",
    quantity: "voltage",
    required: false,
    help: "Between lines, three-phase; for the full-load current.",
  },
  airPump: {
    label: "Priming air pump",
    kind: "text",
    required: false,
    whenBlank: "50 cfm",
    help: "Free-air capacity of the vacuum pump that primes, such as 50 cfm; about that is common practice.",
  },
  casingVolume: {
    label: "Casing and chamber volume",
    kind: "quantity",
    quantity: "volume",
    required: false,
    whenBlank: 0,
    help: "Air in the pump casing and priming chamber at the start.",
  },
  eductorNozzle: {
    label: "Eductor nozzle bore",
    kind: "quantity",
    quantity: "size",
    required: false,
    help: "Motive nozzle of a compressed-air eductor, for the air it takes.",
  },
  motivePressure: {
    label: "Motive air pressure",
    kind: "quantity",
    quantity: "gaugePressure",
    required: false,
    help: "Gauge pressure of the air before the eductor nozzle.",
  },
  solids: {
    label: "Solids by weight",
    kind: "quantity",
    quantity: "percent",
    required: false,
    whenBlank: 0,
    help: "Per cent of the mixture's weight.",
  },
  solidsHardness: {
    label: "Hardness of the solids",
    kind: "text",
    choices: PARTICLE_NAMES,
    required: false,
    help: "A word such as soft or sand, Mohs up to 10, or Vickers from 20.",
  },
  particleSize: {
    label: "Largest particles",
    kind: "quantity",
    quantity: "size",
    required: false,
    help: "Size of the largest solids, against wear and the passage of the impeller.",
  },
  freePassage: {
    label: "Free passage of the impeller",
    kind: "quantity",
    quantity: "size",
    required: false,
    help: "Largest sphere the impeller passes, from the pump maker.",
  },
  pH: { label: "pH", kind: "quantity", quantity: "ratio", required: false, help: "Of the liquid as pumped." },
  chlorides: {
    label: "Chlorides",
    kind: "quantity",
    quantity: "concentration",
    required: false,
    help: "In mg/L.",
  },
  oxidiser: {
    label: "Oxidiser",
    kind: "quantity",
    quantity: "concentration",
    required: false,
    help: "Free chlorine, chlorine dioxide or permanganate, in mg/L; 0 where there is none.",
  },
  makeUp: {
    label: "What else is in it",
    kind: "text",
    choices: [NOTHING_ELSE, ...CONSTITUENTS],
    required: false,
    help: "Acids, caustic, ammonia, hydrogen sulphide, oil: with commas between; “nothing else” where only salts and solids are in it.",
  },
};
