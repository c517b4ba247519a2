import {
  type CaseText,
  type DutyText,
  type LineKey,
  type OtherPumpText,
  type OwnKey,
  type PumpText,
  placeKey,
  SEGMENT_COLUMNS,
} from "../../shared/duty/duty-text.ts";
import { CASE_KEYS } from "../../shared/duty/fields/cases.ts";
import { OWN_KEYS, POINT_COLUMNS, PUMP_KEYS } from "../../shared/duty/fields/pump.ts";
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
  readonly own: string;
  /** Texts it reads; a number of its own may be taken a little higher instead. */
  readonly usual: readonly string[];
  readonly isNumber: boolean;
  /** The duty with this text in the box. */
  readonly holding: (text: string) => DutyText;
}

/** Every box of a duty but those for any text: fields, cells of the lines, boxes and curves of the pumps, boxes of the cases. */
export function hostilePlaces(typed: DutyText): readonly HostilePlace[] {
  const { pump, otherPumps = [] } = typed;
  return [
    ...fieldPlaces(typed),
    ...linePlaces(typed),
    ...(pump ? pumpPlaces(pump, undefined, (text) => ({ ...typed, pump: text })) : []),
    ...otherPumps.flatMap((one, other) => {
      const holding = (changed: OtherPumpText): DutyText => ({
        ...typed,
        otherPumps: otherPumps.map((each, i) => (i === other ? changed : each)),
      });
      return [...pumpPlaces(one, other, holding), ...ownPlaces(one, other, holding)];
    }),
    ...casePlaces(typed),
  ];
}

function fieldPlaces(typed: DutyText): readonly HostilePlace[] {
  return FIELD_KEYS.filter((field) => FIELDS[field].kind !== "text").map((field) => ({
    key: placeKey({ field }),
    own: typed.fields[field],
    usual: [...TYPICAL[field], ...(HIGH[field] ?? [])],
    isNumber: isNumberBox(field),
    holding: (text) => ({ ...typed, fields: { ...typed.fields, [field]: text } }),
  }));
}

/** Boxes of a whole number take none a little higher. */
function isNumberBox(field: FieldKey): boolean {
  return FIELDS[field].kind !== "name" && field !== "pumpsRunning" && field !== "pumpsStandby";
}

function linePlaces(typed: DutyText): readonly HostilePlace[] {
  return (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    typed[line].flatMap((segment, row) =>
      SEGMENT_COLUMNS.map((column) => ({
        key: placeKey({ line, row, column }),
        own: segment[column] ?? "",
        usual: column === "level" ? levelsOf(typed, line) : OF_A_ROW[column],
        isNumber: true,
        holding: (text: string) => ({ ...typed, [line]: changed(typed[line], row, column, text) }),
      })),
    ),
  );
}

const OF_A_ROW = {
  pipe: ["8in sch40", "10in sch40"],
  length: ["20 m", "30 m"],
  fittings: ["1 gate", "2 gate"],
  share: ["all", "1/2"],
} as const;

/** Between the ends of a line, where any row of it may end. */
function levelsOf({ fields }: DutyText, line: LineKey): readonly string[] {
  const ends =
    line === "suctionLine" ? [fields.sourceLevel, fields.pumpLevel] : [fields.pumpLevel, fields.deliveryLevel];
  const [start, end] = ends.map(Number) as [number, number];
  return [0.05, 0.06].map((part) => String(start + part * (end - start)));
}

function pumpPlaces<P extends PumpText>(
  pump: P,
  other: number | undefined,
  holding: (changed: P) => DutyText,
): readonly HostilePlace[] {
  const boxes = PUMP_KEYS.filter((key) => key !== "name").map((key) => ({
    key: placeKey({ pump: key, other }),
    own: pump[key],
    usual: OF_A_PUMP[key],
    isNumber: true,
    holding: (text: string) => holding({ ...pump, [key]: text }),
  }));
  const rows = [0, Math.floor(pump.points.length / 2), pump.points.length - 1];
  const points = rows.flatMap((row) =>
    POINT_COLUMNS.map((column) => ({
      key: placeKey({ pump: "points", row, column, other }),
      own: pump.points[row]?.[column] ?? "",
      usual: OF_A_POINT[column],
      isNumber: true,
      holding: (text: string) => holding({ ...pump, points: changed(pump.points, row, column, text) }),
    })),
  );
  return [...boxes, ...points];
}

const OF_A_PUMP = {
  speed: ["1450 rpm", "1500 rpm"],
  impellerDiameter: ["300 mm", "320 mm"],
  speedRatio: ["0.95", "0.97"],
  trimRatio: ["0.95", "0.97"],
} as const;

const OF_A_POINT = {
  flow: ["1 gpm", "2 gpm"],
  head: [],
  efficiency: ["0", "10"],
  npshRequired: ["1 m", "1.5 m"],
} as const;

function ownPlaces(
  pump: OtherPumpText,
  other: number,
  holding: (changed: OtherPumpText) => DutyText,
): readonly HostilePlace[] {
  return OWN_KEYS.map((own) => ({
    key: placeKey({ own, other }),
    own: pump[own],
    usual: OF_ITS_OWN[own],
    isNumber: own === "level",
    holding: (text: string) => holding({ ...pump, [own]: text }),
  }));
}

const OF_ITS_OWN: Readonly<Record<OwnKey, readonly string[]>> = {
  level: ["1 m", "1.5 m"],
  checkValve: ["yes", "no"],
  suctionSize: ["NPS 8", "NPS 10"],
  dischargeSize: ["NPS 6", "NPS 8"],
  flangeClass: ["Class 150", "Class 300"],
};

function casePlaces(typed: DutyText): readonly HostilePlace[] {
  const { cases = [] } = typed;
  return cases.flatMap((one, row) => {
    const holding = (changed: CaseText): DutyText => ({
      ...typed,
      cases: cases.map((each, i) => (i === row ? changed : each)),
    });
    const hours = {
      key: placeKey({ case: row, box: "hours" }),
      own: one.hours,
      usual: ["100", "200"],
      isNumber: true,
      holding: (text: string) => holding({ ...one, hours: text }),
    };
    const boxes = CASE_KEYS.map((key) => ({
      key: placeKey({ case: row, box: key }),
      own: one.fields[key] ?? "",
      usual: key === "pipe" ? ["new", "aged"] : key === "speedRatio" ? OF_A_PUMP.speedRatio : TYPICAL[key],
      isNumber: key !== "pipe" && (key === "speedRatio" || isNumberBox(key)),
      holding: (text: string) => holding({ ...one, fields: { ...one.fields, [key]: text } }),
    }));
    return [hours, ...boxes];
  });
}

function changed<T>(rows: readonly T[], row: number, column: keyof T, text: string): readonly T[] {
  return rows.map((one, at) => (at === row ? { ...one, [column]: text } : one));
}

/** Whether a finding at this key is about the box: that on a curve as a whole is about each of its points. */
export function isAt(key: string, { key: place }: HostilePlace): boolean {
  return key === place || (key.endsWith(".points") && place.startsWith(key));
}

/** Texts that the box reads, none of them its own. */
export function othersFor({ own, usual, isNumber }: HostilePlace): readonly string[] {
  const number = bareNumber(own);
  // A little more keeps within every rule between the boxes.
  if (number !== undefined && number !== 0 && isNumber) return [String(number * 1.01)];
  return usual.filter((text) => text !== own);
}

/** The same for a site whose datum lies far below it. */
const HIGH: { readonly [K in FieldKey]?: readonly [string, string] } = { highestSourceLevel: ["130 m", "131 m"] };

/** Two usual texts for each field, to be read whatever the unit set. */
export const TYPICAL: Readonly<Record<FieldKey, readonly [string, string]>> = {
  firm: ["a", "b"],
  project: ["a", "b"],
  customer: ["a", "b"],
  item: ["a", "b"],
  reference: ["a", "b"],
  revision: ["a", "b"],
  date: ["a", "b"],
  status: ["a", "b"],
  preparedBy: ["a", "b"],
  preparedInitials: ["a", "b"],
  preparedOn: ["a", "b"],
  checkedBy: ["a", "b"],
  checkedInitials: ["a", "b"],
  checkedOn: ["a", "b"],
  approvedBy: ["a", "b"],
  approvedInitials: ["a", "b"],
  approvedOn: ["a", "b"],
  exclusions: ["a", "b"],
  paper: ["A4", "Letter"],
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
  arrangement: ["parallel", "series"],
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
  weightEfficiency: ["60", "0"],
  weightNearness: ["10", "20"],
  weightNpshMargin: ["5", "0"],
  weightTrim: ["1", "0"],
  pressureAllowed: ["10 bar", "12 bar"],
  solids: ["10", "15"],
  solidsByVolume: ["4", "6"],
  solidsGravity: ["2.65", "3"],
  slurryGravity: ["1.1", "1.2"],
  medianSize: ["0.3 mm", "0.4 mm"],
  coarseSize: ["0.8 mm", "0.9 mm"],
  fines: ["5", "10"],
  upwardSlope: ["20", "30"],
  bellDiameter: ["300 mm", "400 mm"],
  bellLevel: ["-0.5 m", "-0.6 m"],
  sumpPlan: ["20 m2", "4 m x 6 m"],
  sumpStartLevel: ["1 m", "1.2 m"],
  sumpStopLevel: ["0 m", "0.1 m"],
  sumpInflow: ["5 L/s", "8 L/s"],
  startsPerHour: ["4", "6"],
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
  fieldFlow: ["140 m3/h", "150 m3/h"],
  dischargeReading: ["200 kPa", "220 kPa"],
  suctionReading: ["-20 kPa", "-25 kPa"],
  dischargeGaugeHeight: ["0.5 m", "0.6 m"],
  suctionGaugeHeight: ["0.2 m", "0.3 m"],
  dischargeTapHeight: ["0.4 m", "0.5 m"],
  suctionTapHeight: ["0.1 m", "0.2 m"],
  dischargeTapPipe: ["8in sch40", "6in sch40"],
  suctionTapPipe: ["10in sch40", "8in sch40"],
  tapLoss: ["0.1 m", "0.2 m"],
  fieldSpeed: ["1440 rpm", "1445 rpm"],
  fieldPower: ["30 kW", "62 A, 460 V, pf 0.86"],
  fieldMotorEfficiency: ["93 %", "94 %"],
  fieldFuel: ["15 L/h", "16 L/h"],
  flowMeter: ["clamp-on meter", "2 %"],
  dischargeGauge: ["bourdon gauge 4 bar", "5 kPa"],
  suctionGauge: ["test gauge 1 bar", "2 kPa"],
  powerMeter: ["power analyser", "2 %"],
  currency: ["USD", "EUR"],
  lossMargin: ["10", "12"],
  flowInHand: ["10", "12"],
  speedBand: ["10", "12"],
  deepTrimSpeed: ["2500", "3500"],
  deepestTrim: ["0.85", "0.9"],
  deepestMixedTrim: ["0.92", "0.95"],
  viscousHead: ["0.85", "0.9"],
  npshOff: ["10", "12"],
  atmosphereOff: ["10", "12"],
  speedOfLaws: ["40", "60"],
  turndown: ["8", "9"],
  lowFlow: ["10", "12"],
  mostResponse: ["4", "6"],
  droopHighIdle: ["5", "8"],
  isochronousHighIdle: ["2", "3"],
  slopeFrom: ["10", "20"],
  riserSlope: ["50", "55"],
  slopeVelocity: ["1.2", "1.4"],
  fillingVelocity: ["0.5 m/s", "0.6 m/s"],
  siphonHeight: ["6 m", "6.5 m"],
  siphonHeightLoss: ["1.2", "1.3"],
  siphonPressure: ["40 kPa", "45 kPa"],
  ratingUsed: ["90", "92"],
  jointTest: ["1.2", "1.4"],
  lastingVacuum: ["1.8", "2.2"],
  passingVacuum: ["1.2", "1.4"],
  powerTolerance: ["10", "12"],
  beltEfficiency: ["93", "94"],
  converterEfficiency: ["95", "97"],
  motorEfficiencyUsual: ["91", "92"],
  setMotorEfficiency: ["90", "91"],
  fanLossesUsual: ["5", "6"],
  fanLossesLeast: ["10", "12"],
  fuelAtLowLoad: ["1.1", "1.15"],
  fuelAtQuarterLoad: ["1.3", "1.35"],
  lightLoad: ["10", "12"],
  tankUsable: ["85", "90"],
  tankReserve: ["10", "12"],
  tankShort: ["6", "7"],
  tankMedium: ["20", "22"],
  tankLong: ["40", "44"],
  liftShareClear: ["10", "12"],
  liftClear: ["0.4 m", "0.5 m"],
  primeTimeBypass: ["400", "500"],
  primeTimeOther: ["400", "500"],
  settlingSolids: ["10", "12"],
  rheologySize: ["0.03 mm", "0.04 mm"],
  riserFactor: ["1.2", "1.4"],
  passageFactor: ["1.2", "1.4"],
  sewageVelocity: ["0.5 m/s", "0.6 m/s"],
  flushVelocity: ["0.5 m/s", "0.6 m/s"],
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
  priceSwing: ["10", "15"],
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
