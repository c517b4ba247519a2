import type { Citation } from "../basis/citation.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { ALIGNMENT, parallelOffset } from "./alignment.ts";
import { BELT_SPEEDS, MOST_BELT_POWER } from "./belt-drive.ts";
import type { DriveRemark, NamedMotor, PlainDriveRemark } from "./drive-remark.ts";
import { COUPLING_FACTORS, HOUSING_RUN_OUT, type HousingChoice, housingsThatCarry } from "./flywheel-housing.ts";
import { type Frequency, motorsOfSpeed } from "./motor-speed.ts";
import { shaftTorque, shaftTorqueMethod } from "./shaft-torque.ts";

export const DRIVERS = ["motor", "engine"] as const;
export type Driver = (typeof DRIVERS)[number];
/** What the trade calls them too. */
export const ALSO_DRIVERS: Readonly<Record<string, Driver>> = {
  diesel: "engine",
  "diesel engine": "engine",
  electric: "motor",
  "electric motor": "motor",
};

export type ArrangementName =
  | "close-coupled motor"
  | "lantern and stub shaft on a flanged motor"
  | "bearing frame and flexible coupling on a base"
  | "flywheel housing"
  | "engine clutch or power take-off"
  | "V-belts to a bearing frame";

/** Best first. */
export const VERDICTS = ["suits", "with care", "not advised"] as const;
export type Verdict = (typeof VERDICTS)[number];

export interface DriveArrangement {
  readonly name: ArrangementName;
  readonly verdict: Verdict;
  readonly for: readonly DriveRemark[];
  readonly against: readonly DriveRemark[];
  readonly checks: readonly DriveRemark[];
}

export interface DriveArrangementInput {
  readonly driver: Driver;
  /** Greatest the pump takes, W. */
  readonly shaftPower: number;
  /** Of the pump, r/s. */
  readonly speed: number;
  /** Of the liquid, K. */
  readonly temperature: number;
  /** Of the liquid, m²/s. */
  readonly viscosity: number;
  /** Dry solids by weight, 0 to 1; null where nobody said. */
  readonly solids: number | null;
  /** Greatest gauge pressure at the suction, Pa; null where nobody said. */
  readonly suctionPressure: number | null;
  /** Of the supply. */
  readonly frequency: Frequency;
  /** The motor chosen. */
  readonly motor: { readonly rating: number; readonly poles: number | null; readonly frame: string | null } | null;
}

const RANKING: Citation = {
  source: "house",
  at: "by verdict first; then, with a motor, close-coupled, lantern, bearing frame, belts; with an engine, flywheel housing, bearing frame, clutch, belts",
};

export const driveArrangementMethod = {
  cites: [
    { source: "practice", at: "when each way of attaching a driver is picked and avoided" },
    { source: "sae-j617", at: "flywheel housings" },
    { source: "sae-j620", at: "flywheels" },
    { source: "nema-mg1", at: "Part 4, T, TS, JM and JP frames" },
    { source: "iec-60072-1", at: "flanged motors B5, B35, B14" },
    { source: "osha-1910.219", at: "guards of mechanical power transmission" },
    RANKING,
  ],
  inputs: {
    ...shaftTorqueMethod.inputs,
    shaftPower: { ...shaftTorqueMethod.inputs.shaftPower, above: 0 },
    solids: { name: "solids by weight", quantity: "percent", atLeast: 0, below: 1 },
    suctionPressure: { name: "suction pressure", quantity: "gaugePressure", atLeast: -101_325, atMost: 1e8 },
  },
} as const satisfies Method<"shaftPower" | "speed" | "solids" | "suctionPressure">;

/** Warmest liquid for a pump on the motor's own shaft or flange, K. */
const HOT = 100 + CELSIUS_ZERO;
/** Close-coupled pumps are common to the first power, W, and seen to the second. */
const CLOSE_COUPLED_POWER = { usual: 55_000, most: 75_000 } as const;
/** r/s. Slower, a close-coupled motor is rare. House choice: 900 r/min. */
const SLOW = 15;
/** Greatest suction pressure behind a pump on the motor's own shaft, Pa. Common practice: no JM shaft above 8 bar. */
const SUCTION_ON_MOTOR = 8e5;
/** Solids by weight to which a pump on the driver itself is seen, with care. House choice. */
const SOLIDS_ON_DRIVER = 0.02;
/** m²/s. Thicker, a pump takes more power and torque than its water curve says. House choice: 100 cSt. */
const THICK = 100e-6;
/** r/s. Continuous speeds of industrial engines, common practice: 1000 to 2400 r/min. */
const ENGINE_SPEEDS = { least: 1000 / 60, most: 40 } as const;
/** Housings named in one check. */
const MOST_HOUSINGS = 3;

/** What the rules look at. */
interface Case extends DriveArrangementInput {
  readonly torque: number;
  readonly housings: readonly HousingChoice[];
  readonly atMainsSpeed: boolean;
}

/** A reason against that lowers the verdict; nothing where it does not hold. */
type Objection = readonly [verdict: Verdict, remark: DriveRemark] | undefined;

interface Draft {
  readonly name: ArrangementName;
  /** Where nothing is said against it. */
  readonly atBest: Verdict;
  readonly for: readonly PlainDriveRemark[];
  readonly against: readonly PlainDriveRemark[];
  readonly objections: readonly Objection[];
  readonly checks: readonly DriveRemark[];
}

/** The worst verdict of any objection that holds; objections come first among the reasons against. */
function judged(draft: Draft): DriveArrangement {
  const held = draft.objections.filter((objection) => objection !== undefined);
  const worst = greatestOf([draft.atBest, ...held.map(([verdict]) => verdict)].map((v) => VERDICTS.indexOf(v)));
  return {
    name: draft.name,
    verdict: VERDICTS[worst] as Verdict,
    for: draft.for.map((code) => ({ code })),
    against: [...held.map(([, remark]) => remark), ...draft.against.map((code) => ({ code }))],
    checks: draft.checks,
  };
}

function objection(holds: boolean, verdict: Verdict, remark: DriveRemark): Objection {
  return holds ? [verdict, remark] : undefined;
}

/**
 * The ways to attach a driver to a pump, best first, with reasons and what must still be checked. No pump on the
 * motor's shaft above 100 °C, 75 kW (with care from 55 kW) or 8 bar at the suction; none on motor or flywheel housing
 * above 2 % of solids by weight (with care below); belts to 185 kW, flywheel housings by torque. What is not stated of
 * suction and solids, the checks say.
 * Fails: inputs outside the method's bounds.
 * Warns: caution that the ranking is a choice of this product.
 * Source: common practice; SAE J617, J620; NEMA MG 1, Part 4; IEC 60072-1.
 */
export function driveArrangements(input: DriveArrangementInput): Result<readonly DriveArrangement[]> {
  const { shaftPower, speed, driver, frequency } = input;
  // What is not stated breaks no bound.
  const { solids, suctionPressure } = { solids: input.solids ?? 0, suctionPressure: input.suctionPressure ?? 0 };
  const checked = checkInputs(driveArrangementMethod, { shaftPower, speed, solids, suctionPressure });
  if (!checked.ok) return checked;
  return andThen(shaftTorque({ shaftPower, speed }), (torque) =>
    andThen(housingsThatCarry(torque, shaftPower), (housings) => {
      const facts: Case = { ...input, torque, housings, atMainsSpeed: motorsOfSpeed(speed, [frequency]).length > 0 };
      const drawn =
        driver === "motor"
          ? [closeCoupled(facts), lantern(facts), bearingFrame(facts), belts(facts)]
          : [flywheelHousingMounted(facts), bearingFrame(facts), clutch(facts), belts(facts)];
      const ranked = drawn.toSorted((a, b) => VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict));
      return succeed(ranked, [ranking()]);
    }),
  );
}

function ranking(): Finding {
  return { code: "drive-ranking-chosen", kind: "check", subject: "drive arrangement", cites: RANKING };
}

function closeCoupled(facts: Case): DriveArrangement {
  return judged({
    name: "close-coupled motor",
    atBest: "suits",
    for: ["short-and-cheap", "no-field-alignment"],
    against: ["thrust-on-motor-bearings", "heat-reaches-motor", "special-motor-spare"],
    objections: onMotorFlange(facts),
    checks: flangeChecks(facts, null),
  });
}

function lantern(facts: Case): DriveArrangement {
  return judged({
    name: "lantern and stub shaft on a flanged motor",
    atBest: "suits",
    for: ["standard-motor", "seal-within-reach", "no-field-alignment"],
    against: ["thrust-on-motor-bearings", "heat-reaches-motor"],
    objections: onMotorFlange(facts),
    checks: flangeChecks(facts, facts.motor?.frame ?? null),
  });
}

/** What stands against every pump that hangs on the motor. */
function onMotorFlange(facts: Case): readonly Objection[] {
  const { shaftPower, speed, temperature } = facts;
  const { usual, most } = CLOSE_COUPLED_POWER;
  const tooMuch = shaftPower > most;
  return [
    objection(temperature > HOT, "not advised", {
      code: "liquid-too-hot",
      facts: { limit: amount("temperature", HOT) },
    }),
    objection(tooMuch, "not advised", { code: "power-too-high", facts: { limit: amount("power", most) } }),
    objection(shaftPower > usual && !tooMuch, "with care", {
      code: "power-high",
      facts: { limit: amount("power", usual) },
    }),
    objection(speed < SLOW, "with care", { code: "speed-slow", facts: { limit: amount("speed", SLOW) } }),
    ...onDriver(facts),
    highSuction(facts),
    unlikeDriver(facts),
  ];
}

/** Solids at a pump that hangs on its driver, whose bearings or spigots take what wears. */
function onDriver({ solids }: Case): readonly Objection[] {
  if (solids === null || solids === 0) return [];
  const found = amount("percent", solids);
  if (solids <= SOLIDS_ON_DRIVER) return [["with care", { code: "solids-wear", facts: { found } }]];
  const limit = amount("percent", SOLIDS_ON_DRIVER);
  return [["not advised", { code: "solids-wear-fast", facts: { found, limit } }]];
}

function highSuction({ suctionPressure }: Case): Objection {
  if (suctionPressure === null) return undefined;
  const facts = { found: amount("gaugePressure", suctionPressure), limit: amount("gaugePressure", SUCTION_ON_MOTOR) };
  return objection(suctionPressure > SUCTION_ON_MOTOR, "not advised", { code: "suction-pressure-high", facts });
}

/** Two-pole NEMA motors from 25 or 30 hp have no shaft for belts. */
function shortShaft({ motor }: Case): Objection {
  const frame = motor?.frame ?? "";
  const isShort = motor?.poles === 2 && /TS$/i.test(frame);
  return objection(isShort, "not advised", { code: "shaft-too-short-for-belts", facts: { frame } });
}

function flangeChecks(facts: Case, frame: string | null): readonly DriveRemark[] {
  const { suctionPressure } = facts;
  const pressure = suctionPressure === null ? null : amount("gaugePressure", suctionPressure);
  return [
    { code: "check-suction-thrust", facts: { found: pressure, limit: amount("gaugePressure", SUCTION_ON_MOTOR) } },
    ...liquidChecks(facts),
    motorCheck(facts, frame),
    torqueCheck(facts),
    { code: "check-swap" },
  ];
}

function bearingFrame(facts: Case): DriveArrangement {
  const growth: readonly DriveRemark[] = facts.temperature > HOT ? [{ code: "check-thermal-growth" }] : [];
  return judged({
    name: "bearing frame and flexible coupling on a base",
    atBest: "suits",
    for: ["carries-own-thrust", "driver-swaps-quickly", "stands-heat-and-solids"],
    against: ["long-and-heavy", "needs-field-alignment"],
    objections: [unlikeDriver(facts)],
    checks: [
      torqueCheck(facts),
      couplingCheck(facts),
      alignmentCheck(facts),
      ...growth,
      { code: "check-guard" },
      ...driverChecks(facts),
    ],
  });
}

function belts(facts: Case): DriveArrangement {
  const { shaftPower, speed, driver, atMainsSpeed, solids } = facts;
  const needed = driver === "motor" && !atMainsSpeed;
  // Slurry pumps are trimmed by their sheaves as they wear.
  const isUsual = needed || (solids ?? 0) > SOLIDS_ON_DRIVER;
  const frame: readonly DriveRemark[] = driver === "motor" ? [{ code: "check-belt-frame" }] : [];
  const sheave = {
    most: amount("size", BELT_SPEEDS.most / (Math.PI * speed)),
    speed: amount("velocity", BELT_SPEEDS.most),
  };
  return judged({
    name: "V-belts to a bearing frame",
    atBest: isUsual ? "suits" : "with care",
    for: [needed ? "gives-this-speed" : "speed-trimmed-by-sheaves", "carries-own-thrust"],
    against: ["belts-lose-power", "belts-pull-sideways"],
    objections: [
      objection(shaftPower > MOST_BELT_POWER, "not advised", {
        code: "power-too-high",
        facts: { limit: amount("power", MOST_BELT_POWER) },
      }),
      shortShaft(facts),
    ],
    checks: [
      torqueCheck(facts),
      { code: "check-sheave", facts: sheave },
      ...frame,
      { code: "check-guard" },
      ...driverChecks(facts),
    ],
  });
}

function flywheelHousingMounted(facts: Case): DriveArrangement {
  const { housings } = facts;
  const { smallest, largest } = HOUSING_RUN_OUT;
  return judged({
    name: "flywheel housing",
    atBest: "suits",
    for: ["aligned-by-spigots", "short-and-light"],
    against: ["engine-pulses-reach-pump", "overhang-on-engine", "motor-swap-needs-new-parts"],
    objections: [
      objection(housings.length === 0, "not advised", { code: "beyond-housings" }),
      ...onDriver(facts),
      unlikeDriver(facts),
    ],
    checks: [
      torqueCheck(facts),
      couplingCheck(facts),
      { code: "check-torsion" },
      ...(housings.length === 0 ? [] : [housingCheck(housings.slice(0, MOST_HOUSINGS))]),
      { code: "check-run-out", facts: { least: smallest, most: largest } },
      { code: "check-overhang" },
      ...driverChecks(facts),
    ],
  });
}

function housingCheck(choices: readonly HousingChoice[]): DriveRemark {
  const named = choices.map(
    ({ housing: { number, boltCirclePrinted }, flywheels }) =>
      `No. ${number} (bolt circle ${boltCirclePrinted}, J620 flywheel ${alternatives(flywheels)})`,
  );
  return { code: "check-housing", facts: { housings: named.join(", ") } };
}

/** "6.5, 7.5 or 8" */
function alternatives(sizes: readonly number[]): string {
  const last = sizes.at(-1);
  return sizes.length < 2 ? String(last ?? "") : `${sizes.slice(0, -1).join(", ")} or ${last}`;
}

function clutch(facts: Case): DriveArrangement {
  return judged({
    name: "engine clutch or power take-off",
    atBest: "with care",
    for: ["runs-out-of-gear", "carries-own-thrust"],
    against: ["clutch-wears", "side-load-limited", "needs-field-alignment"],
    objections: [unlikeDriver(facts)],
    checks: [
      torqueCheck(facts),
      { code: "check-clutch" },
      alignmentCheck(facts),
      { code: "check-guard" },
      ...driverChecks(facts),
    ],
  });
}

/** A speed that the driver does not run at by itself. */
function unlikeDriver({ driver, speed, frequency, atMainsSpeed }: Case): Objection {
  if (driver === "motor") {
    const of = { speed: amount("speed", speed), frequency };
    return objection(!atMainsSpeed, "with care", { code: "no-mains-motor-at-speed", facts: of });
  }
  const { least, most } = ENGINE_SPEEDS;
  const band = { least: amount("speed", least), most: amount("speed", most) };
  return objection(speed < least || speed > most, "with care", { code: "engine-speed-unusual", facts: band });
}

function driverChecks(facts: Case): readonly DriveRemark[] {
  return facts.driver === "engine"
    ? [{ code: "check-engine-rating" }, ...liquidChecks(facts)]
    : [motorCheck(facts, facts.motor?.frame ?? null), ...liquidChecks(facts)];
}

function liquidChecks({ solids, viscosity }: Case): readonly DriveRemark[] {
  const thick: readonly DriveRemark[] =
    viscosity > THICK ? [{ code: "check-viscous", facts: { found: amount("kinematicViscosity", viscosity) } }] : [];
  if (solids === 0) return thick;
  return [{ code: "check-solids", facts: { found: solids === null ? null : amount("percent", solids) } }, ...thick];
}

/** The motor chosen by its name; a pump on the motor's own shaft has a frame of its own. */
function motorCheck({ motor }: Case, frame: string | null): DriveRemark {
  if (motor === null) return { code: "check-motor-not-chosen" };
  const facts: NamedMotor = { rating: amount("power", motor.rating), poles: motor.poles, frame };
  return { code: "check-motor", facts };
}

function torqueCheck({ torque }: Case): DriveRemark {
  return { code: "check-torque", facts: { torque: amount("torque", torque) } };
}

function couplingCheck({ torque, driver }: Case): DriveRemark {
  const [least, most] = COUPLING_FACTORS[driver];
  const facts = { least: amount("torque", torque * least), most: amount("torque", torque * most) };
  return { code: "check-coupling", facts };
}

function alignmentCheck({ speed }: Case): DriveRemark {
  return {
    code: "check-alignment",
    facts: { offset: parallelOffset(speed).printed, strain: ALIGNMENT.pipeStrain.printed },
  };
}
