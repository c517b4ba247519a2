import { curvePlace, type DutyText, type Place, placeKey } from "../../shared/duty/duty-text.ts";
import { POINT_COLUMNS, PUMP_KEYS } from "../../shared/duty/fields/pump.ts";
import { FIELD_KEYS, FIELDS, type FieldKey } from "../../shared/duty/fields.ts";
import { bareNumber } from "../../shared/duty/read-amount.ts";

/** What slips into a box: nothing, words, other units, other signs and sizes, a formula, markup, a long text. */
export const HOSTILE = [
  "",
  "abc",
  "12 furlongs",
  "5 psi",
  "-5",
  "0",
  "1e9",
  "0.1",
  "10 %",
  "-40 degF",
  "900 degF",
  "=1+1",
  "<b>x</b>",
  "x".repeat(40),
] as const;

/** No box but one for any text reads this. */
export const UNREADABLE = "?!";

/** One box of a duty, by the key that its findings stand at. */
export interface HostilePlace {
  readonly key: string;
  readonly field?: FieldKey;
  readonly own: string;
  /** The duty with this text in the box. */
  readonly holding: (text: string) => DutyText;
}

/** Every box of a duty but those for any text: fields, cells of the lines, boxes of the pump, points of its curve. */
export function hostilePlaces(typed: DutyText): readonly HostilePlace[] {
  const fields = FIELD_KEYS.filter((field) => FIELDS[field].kind !== "text").map((field) => ({
    key: placeKey({ field }),
    field,
    own: typed.fields[field],
    holding: (text: string): DutyText => ({ ...typed, fields: { ...typed.fields, [field]: text } }),
  }));
  const cells = (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    typed[line].flatMap((segment, row) =>
      (["pipe", "length", "fittings", "share", "level"] as const).map((column) => ({
        key: placeKey({ line, row, column }),
        own: segment[column] ?? "",
        holding: (text: string): DutyText => ({ ...typed, [line]: changed(typed[line], row, column, text) }),
      })),
    ),
  );
  return [...fields, ...cells, ...pumpPlaces(typed)];
}

function pumpPlaces(typed: DutyText): readonly HostilePlace[] {
  const { pump } = typed;
  if (pump === undefined) return [];
  const boxes = PUMP_KEYS.filter((key) => key !== "name").map((key) => ({
    key: placeKey({ pump: key }),
    own: pump[key],
    holding: (text: string): DutyText => ({ ...typed, pump: { ...pump, [key]: text } }),
  }));
  const rows = [0, Math.floor(pump.points.length / 2), pump.points.length - 1];
  const points = rows.flatMap((row) =>
    POINT_COLUMNS.map((column) => ({
      key: placeKey({ pump: "points", row, column } satisfies Place),
      own: pump.points[row]?.[column] ?? "",
      holding: (text: string): DutyText => ({
        ...typed,
        pump: { ...pump, points: changed(pump.points, row, column, text) },
      }),
    })),
  );
  return [...boxes, ...points];
}

function changed<T>(rows: readonly T[], row: number, column: keyof T, text: string): readonly T[] {
  return rows.map((one, at) => (at === row ? { ...one, [column]: text } : one));
}

/** Whether a finding at this key is about the box: that on the curve as a whole is about each of its points. */
export function isAt(key: string, { key: place }: HostilePlace): boolean {
  return key === place || (key === curvePlace() && place.startsWith(curvePlace()));
}

/** Two texts that the box reads in any of the sample duties, of which one is not its own. */
export function othersFor({ key, field, own }: HostilePlace): readonly string[] {
  const number = bareNumber(own);
  const isName = field !== undefined && FIELDS[field].kind === "name";
  // A little more keeps within every rule between the boxes.
  if (number !== undefined && number !== 0 && !isName && !WHOLE.has(key)) return [String(number * 1.01)];
  const texts = field === undefined ? (OTHERS_ELSEWHERE[key.split(".").at(-1) ?? ""] ?? []) : TYPICAL[field];
  return texts.filter((text) => text !== own);
}

/** Boxes of a whole number. */
const WHOLE: ReadonlySet<string> = new Set(["pumpsRunning", "pumpsStandby"]);

const OTHERS_ELSEWHERE: Readonly<Record<string, readonly string[]>> = {
  pipe: ["8in sch40", "10in sch40"],
  length: ["20 m", "30 m"],
  fittings: ["1 gate", "2 gate"],
  share: ["all", "1/2"],
  level: ["3 m", "4 m"],
  speed: ["1450 rpm", "1500 rpm"],
  impellerDiameter: ["300 mm", "320 mm"],
  speedRatio: ["0.95", "0.97"],
  trimRatio: ["0.95", "0.97"],
  efficiency: ["0", "10"],
  flow: ["1 gpm", "2 gpm"],
  npshRequired: ["1 m", "1.5 m"],
};

/** Two usual texts for each field, to be read whatever the unit set. */
export const TYPICAL: Readonly<Record<FieldKey, readonly [string, string]>> = {
  project: ["a", "b"],
  customer: ["a", "b"],
  item: ["a", "b"],
  reference: ["a", "b"],
  revision: ["a", "b"],
  preparedBy: ["a", "b"],
  date: ["a", "b"],
  service: ["dewatering", "general industry"],
  liquid: ["water", "sea water"],
  temperature: ["20 degC", "25 degC"],
  altitude: ["100 m", "200 m"],
  flow: ["150 m3/h", "170 m3/h"],
  sourceLevel: ["1 m", "1.1 m"],
  pumpLevel: ["2 m", "2.1 m"],
  deliveryLevel: ["20 m", "21 m"],
  pumpsRunning: ["2", "3"],
  pumpsStandby: ["1", "2"],
  arrangement: ["series", "parallel"],
  sourcePressure: ["10 kPa", "20 kPa"],
  deliveryPressure: ["10 kPa", "20 kPa"],
  frictionMargin: ["5", "10"],
  npshRequired: ["2 m", "2.5 m"],
  npshMargin: ["0.5 m", "1.2 m"],
  curveFlow: ["600 m3/h", "650 m3/h"],
  leastStaticHead: ["5 m", "6 m"],
  greatestStaticHead: ["25 m", "26 m"],
  agedRoughness: ["0.3 mm", "0.5 mm"],
  leastPumpFlow: ["50 m3/h", "60 m3/h"],
  greatestPumpFlow: ["400 m3/h", "450 m3/h"],
  acceptanceGrade: ["1B", "2B"],
  speedControl: ["fixed", "variable"],
  solids: ["10", "15"],
  solidsByVolume: ["4", "6"],
  solidsGravity: ["2.65", "3"],
  slurryGravity: ["1.1", "1.2"],
  medianSize: ["0.3 mm", "0.4 mm"],
  coarseSize: ["0.8 mm", "0.9 mm"],
  fines: ["5", "10"],
  upwardSlope: ["20", "30"],
  outlet: ["free", "submerged"],
  summitValve: ["none", "air valve"],
  fillingFlow: ["20 L/s", "30 L/s"],
  highestSourceLevel: ["30 m", "31 m"],
  greatestSuctionPressure: ["50 kPa", "80 kPa"],
  greatestSpeed: ["1900 rpm", "1950 rpm"],
  governor: ["droop", "isochronous"],
  greatestImpeller: ["400 mm", "420 mm"],
  standingLevel: ["80 m", "90 m"],
  checkFailure: ["counted", "struck"],
  casingMaterial: ["ductile iron", "WCB"],
  flangeClass: ["Class 150", "Class 300"],
  suctionFlange: ["NPS 8", "NPS 10"],
  dischargeFlange: ["NPS 6", "NPS 8"],
  casingWorkingPressure: ["10 bar", "12 bar"],
  otherPart: ["discharge hose", "suction hose"],
  otherPartPressure: ["10 bar", "12 bar"],
  suctionHoseRating: ["3 bar", "4 bar"],
  dischargeHoseRating: ["10 bar", "12 bar"],
  vacuumDuration: ["12", "100"],
  stages: ["2: Class 300", "1: casing 20 bar"],
  gasket: ["fibre 1/16 in", "spiral wound"],
  gasketShape: ["ring", "full face"],
  facing: ["both raised", "both flat"],
  boltGrade: ["A193 B7", "ISO 8.8"],
  boltFinish: ["plain steel, oiled", "PTFE coated"],
  nutFactor: ["0.2", "0.18"],
  torqueScatter: ["30", "10"],
  driver: ["motor", "engine"],
  serviceFactor: ["1.1", "1.2"],
  airTemperature: ["35 degC", "45 degC"],
  leastSpeed: ["1200 rpm", "1300 rpm"],
  supplyVoltage: ["400 V", "460 V"],
  supplyFrequency: ["60 Hz", "50 Hz"],
  fittedMotor: ["75 kW", "90 kW"],
  transmission: ["coupling", "belts"],
  motorStart: ["direct on line", "VFD"],
  supply: ["generator", "mains"],
  codeLetter: ["G", "F"],
  generatorApparent: ["250 kVA", "300 kVA"],
  generatorPower: ["100 kW", "120 kW"],
  engineRating: ["60 kW", "75 kW"],
  engineRatingKind: ["continuous net", "continuous gross"],
  accessoryLosses: ["5", "6"],
  aspiration: ["turbo", "natural"],
  specificConsumption: ["220 g/kWh", "240 g/kWh"],
  tankVolume: ["400 L", "500 L"],
  airPump: ["50 cfm", "60 cfm"],
  casingVolume: ["50 L", "80 L"],
  eductorNozzle: ["6 mm", "8 mm"],
  motivePressure: ["6 bar", "7 bar"],
  pH: ["7", "8"],
  chlorides: ["100", "1000"],
  solidsHardness: ["sand", "soft"],
  particleSize: ["3 mm", "8 mm"],
  freePassage: ["50 mm", "60 mm"],
  oxidiser: ["1", "5"],
  makeUp: ["nothing else", "oil"],
  impellerMaterial: ["ductile iron", "CF8M"],
  sealFaces: ["sintered silicon carbide pair", "carbon"],
  elastomer: ["EPDM", "NBR"],
  boltsWetted: ["dry", "wetted or splashed"],
  currency: ["USD", "EUR"],
  runningHours: ["2000", "3000"],
  driveEfficiency: ["94", "97"],
  tariff: ["0.1", "0.2"],
  fuelPrice: ["1.0 per L", "1.2 per L"],
  directCost: ["40000", "50000"],
  overhead: ["10", "12"],
  contingency: ["5", "8"],
  margin: ["15", "20"],
  firstCost: ["60000", "70000"],
  yearlyUpkeep: ["3000", "4000"],
  years: ["10", "15"],
  discountRate: ["5", "6"],
};

/** Two figures make a slurry; a third at random would contradict them. */
const SPARE = new Set<FieldKey>(["solidsByVolume", "slurryGravity"]);

/** The duty with a usual text in every blank box. */
export function filledUp(typed: DutyText, change: Partial<Record<FieldKey, string>> = {}): DutyText {
  const fields = Object.fromEntries(
    FIELD_KEYS.map((key) => [
      key,
      change[key] ?? (typed.fields[key].trim() || (SPARE.has(key) ? "" : TYPICAL[key][0])),
    ]),
  ) as DutyText["fields"];
  return { ...typed, fields };
}
