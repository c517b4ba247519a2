import type { ReadColumns } from "../tables/read-table.ts";

/** What a casing holds, and how far a pump may be run and cut; both tables may state them. */
const LIMITS = {
  greatestPressure: {
    name: "maximum working pressure",
    also: ["greatest working pressure", "max working pressure", "working pressure", "mawp"],
    quantity: "gaugePressure",
    atLeast: 0,
  },
  leastImpeller: {
    name: "minimum impeller",
    also: ["least impeller", "min impeller", "smallest impeller", "least impeller diameter", "minimum trim"],
    quantity: "size",
    atLeast: 0,
  },
  greatestImpeller: {
    name: "maximum impeller",
    also: ["greatest impeller", "max impeller", "largest impeller", "greatest impeller diameter", "full diameter"],
    quantity: "size",
    atLeast: 0,
  },
  leastSpeed: {
    name: "minimum speed",
    also: ["lowest speed", "min speed", "least speed"],
    quantity: "speed",
    atLeast: 0,
  },
  greatestSpeed: {
    name: "maximum speed",
    also: ["highest speed", "max speed", "greatest speed", "top speed"],
    quantity: "speed",
    atLeast: 0,
  },
} as const satisfies ReadColumns;

/** The curves: one row a point. A length alone ("FT") heads the head, never a size or the NPSHR. */
export const CURVE_COLUMNS = {
  pump: {
    name: "pump",
    also: ["model", "pump model", "pump name", "name", "type"],
    needed: true,
    wanted: "the name of the pump",
  },
  speed: {
    name: "speed",
    also: ["n", "pump speed", "speed of rotation", "rotational speed", "running speed"],
    quantity: "speed",
    byUnit: true,
  },
  diameter: {
    name: "impeller diameter",
    also: ["impeller", "impeller dia", "diameter", "dia", "trim", "d2"],
    quantity: "size",
  },
  flow: {
    name: "flow",
    also: ["q", "flow rate", "flowrate", "rate of flow", "capacity"],
    quantity: "flow",
    needed: true,
    byUnit: true,
  },
  head: {
    name: "head",
    also: ["h", "total head", "pump head", "total dynamic head", "tdh"],
    quantity: "head",
    needed: true,
    byUnit: true,
  },
  efficiency: { name: "efficiency", also: ["eff", "η", "eta", "pump efficiency"], quantity: "percent" },
  npshRequired: {
    name: "NPSHR",
    also: ["npsh", "npsh3", "npsh 3", "npsh r", "npsh (r)", "npsh required", "npshrequired", "required npsh"],
    quantity: "head",
  },
  power: {
    name: "power",
    also: ["p", "p2", "shaft power", "pump power", "pump shaft power", "brake power"],
    quantity: "power",
    byUnit: true,
  },
  ...LIMITS,
} as const satisfies ReadColumns;

/** The order of the columns where a table of curves has no heading. */
export const USUAL_CURVE_ORDER = [
  "pump",
  "speed",
  "diameter",
  "flow",
  "head",
  "efficiency",
  "npshRequired",
  "power",
] as const satisfies readonly CurveColumn[];

/** The pumps themselves: one row a pump. */
export const PUMP_COLUMNS = {
  pump: CURVE_COLUMNS.pump,
  duty: { name: "made for", also: ["duty", "service", "family", "application"] },
  suctionSize: { name: "suction size", also: ["suction", "inlet size", "inlet"] },
  dischargeSize: { name: "discharge size", also: ["discharge", "outlet size", "outlet"] },
  casingMaterial: { name: "casing material", also: ["casing", "material", "volute material"] },
  flangeClass: { name: "flange class", also: ["flanges", "flange class offered", "flange rating", "class"] },
  ...LIMITS,
  solidsPassage: {
    name: "solids passage",
    also: ["solids", "solid size", "solids size", "largest solid", "free passage"],
    quantity: "size",
    atLeast: 0,
  },
  priming: { name: "priming", also: ["priming method"] },
  attachments: { name: "attachments", also: ["attachment", "mounting", "drive attachments"] },
  saeHousing: { name: "SAE housing", also: ["sae bell housing", "sae flywheel housing", "housing"] },
  mark: { name: "mark", also: ["remark", "note", "notes", "remarks"] },
} as const satisfies ReadColumns;

export type CurveColumn = keyof typeof CURVE_COLUMNS;
export type PumpColumn = keyof typeof PUMP_COLUMNS;
export type LimitColumn = keyof typeof LIMITS;

export const LIMIT_COLUMNS = Object.keys(LIMITS) as readonly LimitColumn[];
