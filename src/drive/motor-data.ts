import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { USUAL_BELT_EFFICIENCY } from "./belt-drive.ts";
import { type FrameOfRating, frameOfRating } from "./frame-of-rating.ts";
import {
  fullLoadCurrent,
  fullLoadCurrentMethod,
  necColumn,
  necFullLoadCurrent,
  STARTING_CURRENT,
} from "./motor-current.ts";
import { fittedRemarks, motorFacts, siteRemarks, speedRemarks } from "./motor-data-remarks.ts";
import { motorDeratingMethod, motorOutputFactor } from "./motor-derating.ts";
import { iecEfficiency, motorEfficiencyMethod, nemaPremiumEfficiency } from "./motor-efficiency.ts";
import { type MotorRating, type MotorSeries, motorRating, motorRatingMethod, ratingOf } from "./motor-rating.ts";
import {
  type DrivingMotor,
  drivingMotor,
  type Frequency,
  motorSpeedMethod,
  slip,
  type Transmission,
} from "./motor-speed.ts";
import { shaftTorque } from "./shaft-torque.ts";
import { frequencyOfVoltage } from "./supply.ts";

export interface MotorDataInput {
  /** Greatest power the pump takes anywhere on its curve, at the greatest speed it runs at, W. */
  readonly shaftPower: number;
  /** Of the pump, the greatest it runs at, r/s. */
  readonly speed: number;
  readonly serviceFactor: number;
  readonly series: MotorSeries;
  /** Of the supply between lines, V; no current is worked out without it. */
  readonly voltage: number | null;
  /** m */
  readonly altitude: number;
  /** Of the air about the motor, K. */
  readonly airTemperature: number;
  /** Of the supply; where not known that of its voltage, else that of the series. */
  readonly frequency: Frequency | null;
  /** Rating of the motor there is, W; where not known the smallest that does is chosen. */
  readonly fitted: number | null;
  readonly transmission: Transmission;
}

export interface MotorData {
  readonly rating: MotorRating;
  /** Enclosed. */
  readonly frame?: FrameOfRating;
  readonly openFrame?: FrameOfRating;
  readonly motor: DrivingMotor;
  /** On the mains at the pump's own speed alone. */
  readonly slip?: number;
  /** Share of the rating left by altitude and air. */
  readonly outputFactor: number;
  /** Left by site and speed, W. */
  readonly siteOutput: number;
  readonly efficiency?: number;
  /** A */
  readonly current?: number;
  /** Greatest, direct on line, A. */
  readonly startingCurrent?: number;
  /** Of the rating at the pump's speed, N·m; not through belts. */
  readonly torque?: number;
  /** Output on site less what the pump takes of the motor, W. */
  readonly spare: number;
}

/** Power factor taken where only the nameplate knows it. */
export const ASSUMED_POWER_FACTOR = 0.85;

const POWER_FACTOR: Citation = {
  source: "practice",
  at: "power factor 0.85 at full load; small and slow motors have less, large and fast ones more",
};
const STARTING: Citation = {
  source: "practice",
  at: "direct on line 6 to 8 times the full-load current; star-delta a third of that, with a third of the torque",
};

export const motorDataMethod = {
  cites: [
    ...motorRatingMethod.cites,
    ...motorDeratingMethod.cites,
    ...motorEfficiencyMethod.cites,
    { source: "nema-mg1", at: "Part 13, frames by rating and poles", unverified: true },
    { source: "en-50347", at: "frames by rating and poles, 50 Hz" },
    ...fullLoadCurrentMethod.cites,
    POWER_FACTOR,
    STARTING,
  ],
  inputs: {
    shaftPower: motorRatingMethod.inputs.shaftPower,
    serviceFactor: motorRatingMethod.inputs.serviceFactor,
    speed: motorSpeedMethod.inputs.speed,
    voltage: fullLoadCurrentMethod.inputs.voltage,
    altitude: motorDeratingMethod.inputs.altitude,
    airTemperature: motorDeratingMethod.inputs.ambient,
    fitted: { name: "motor rating", symbol: "P N", quantity: "power", above: 0, atMost: 1e8 },
  },
} as const satisfies Method<Exclude<keyof MotorDataInput, "series" | "frequency" | "transmission">>;

/** Supply that the efficiencies and frames of a series are listed for, Hz. */
export const HOME_FREQUENCY: Readonly<Record<MotorSeries, Frequency>> = { NEMA: 60, IEC: 50 };

/**
 * The standard motor that carries a pump on its site, or the one there is, and its data sheet: poles and speed, frame,
 * efficiency (NEMA Premium enclosed at 60 Hz, IE3 at 50 Hz), current and starting current (8 times it), A, and torque,
 * N·m. Off the mains speeds the motor is one that a variable-frequency drive slows, and gives less in proportion.
 * Formula: as `motorRating` and `drivingMotor`; current by NEC Table 430.250, else P/(√3 V η cos φ), cos φ = 0.85
 * Fails: inputs outside the method's bounds; as `motorOutputFactor` and `motorRating`.
 * Warns: a motor that is too small; checks on what no table holds and is left out, on site, speed and supply.
 */
export function motorData(input: MotorDataInput): Result<MotorData> {
  const { shaftPower, serviceFactor, series, speed, altitude, airTemperature, transmission, fitted } = input;
  // What is not stated breaks no bound and raises no doubt.
  const voltage = input.voltage ?? 400;
  const values = { shaftPower, serviceFactor, speed, voltage, altitude, airTemperature, fitted: fitted ?? shaftPower };
  const frequency = input.frequency ?? frequencyOfVoltage(input.voltage ?? 0) ?? HOME_FREQUENCY[series];
  return andThen(checkInputs(motorDataMethod, values), () => {
    const motor = drivingMotor(speed, frequency, transmission);
    const taken = transmission === "belts" ? shaftPower / USUAL_BELT_EFFICIENCY : shaftPower;
    return andThen(motorOutputFactor({ altitude, ambient: airTemperature }), (outputFactor) => {
      const left = outputFactor * motor.speedFactor;
      const sized = { shaftPower: taken, serviceFactor, series, outputFactor: left };
      const chosen = fitted === null ? motorRating(sized) : succeed(fittedRating(fitted, series));
      return andThen(chosen, (rating) => {
        const findings: Finding[] = [
          ...siteRemarks({ ...sized, altitude, airTemperature, fitted, speedFactor: motor.speedFactor }, rating),
          ...(fitted === null ? [] : fittedRemarks(rating, sized)),
          ...speedRemarks({ speed, altitude }, rating, motor),
        ];
        const frame = keep(findings, frameOf(rating, motor));
        const openFrame = frameOfRating({ ...rating, poles: motor.poles, enclosure: "open" });
        const efficiency = keep(findings, efficiencyOf(rating, motor, input.voltage));
        const current = keep(findings, currentOf(input, rating, motor, efficiency));
        const torque =
          motor.way === "belts"
            ? undefined
            : keep(findings, shaftTorque({ shaftPower: rating.power * motor.speedFactor, speed }));
        return succeed(
          {
            rating,
            motor,
            outputFactor,
            siteOutput: rating.power * left,
            spare: rating.power * left - taken,
            ...(motor.way === "line" && { slip: slipOf(speed, motor) }),
            ...(frame !== undefined && { frame }),
            ...(openFrame !== undefined && { openFrame }),
            ...(efficiency !== undefined && { efficiency }),
            ...(current !== undefined && { current, startingCurrent: current * STARTING_CURRENT["direct on line"][1] }),
            ...(torque !== undefined && { torque }),
          },
          findings,
        );
      });
    });
  });
}

const UNIT: Readonly<Record<MotorSeries, number>> = { NEMA: unitOf("hp").factor, IEC: unitOf("kW").factor };

/** The rating there is, whether its series lists it or not. */
function fittedRating(power: number, series: MotorSeries): MotorRating {
  return ratingOf(power, series) ?? { power, series, printed: power / UNIT[series] };
}

/** A figure where there is one; why there is none becomes a remark. */
function keep<T>(findings: Finding[], result: Result<T>): T | undefined {
  findings.push(...result.findings);
  return result.ok ? result.value : undefined;
}

/** A speed that conversion has put a rounding above synchronous has no slip. */
function slipOf(speed: number, { synchronous, frequency, poles }: DrivingMotor): number {
  const found = slip(Math.min(speed, synchronous), frequency, poles);
  return found.ok ? found.value : 0;
}

function isAtHome({ series }: MotorRating, { frequency }: DrivingMotor): boolean {
  return frequency === HOME_FREQUENCY[series];
}

function frameOf(rating: MotorRating, motor: DrivingMotor): Result<FrameOfRating | undefined> {
  const subject = "motor frame";
  const facts = motorFacts(rating, motor);
  // Frames are assigned by the supply of the series.
  const found = isAtHome(rating, motor)
    ? frameOfRating({ ...rating, poles: motor.poles, enclosure: "enclosed" })
    : undefined;
  if (found === undefined) return succeed(undefined, [{ code: "motor-frame-not-held", kind: "check", subject, facts }]);
  const { basis, packedAs } = found;
  const smaller: readonly Finding[] =
    packedAs === undefined
      ? []
      : [{ code: "motor-frame-packed", kind: "check", subject, facts: { frame: found.frame, packedAs } }];
  return succeed(found, [{ code: "motor-frame-usual", kind: "check", subject, facts: { basis } }, ...smaller]);
}

function efficiencyOf(rating: MotorRating, motor: DrivingMotor, voltage: number | null): Result<number | undefined> {
  const { series, power } = rating;
  const subject = "motor efficiency";
  const facts = motorFacts(rating, motor);
  if (!isAtHome(rating, motor)) {
    return succeed(undefined, [{ code: "motor-efficiency-other-supply", kind: "check", subject, facts }]);
  }
  const found =
    series === "NEMA"
      ? nemaPremiumEfficiency(power, motor.poles, "enclosed")
      : iecEfficiency(power, "IE3", motor.poles);
  if (!found.ok) {
    return succeed(undefined, [{ code: "motor-efficiency-not-held", kind: "check", subject, facts }]);
  }
  const highVoltage: readonly Finding[] =
    voltage !== null && voltage > LOW_VOLTAGE
      ? [{ code: "motor-high-voltage", kind: "check", subject, found: amount("voltage", voltage) }]
      : [];
  return succeed(found.value, [...highVoltage, ...higherClassDue(rating, motor)]);
}

/** V. Efficiency classes are of motors to 1000 V. */
const LOW_VOLTAGE = 1000;

function higherClassDue({ series, power }: MotorRating, { poles }: DrivingMotor): readonly Finding[] {
  if (series !== "IEC" || power < HIGHER_CLASS.from || power > HIGHER_CLASS.to || poles === 8) return [];
  const higher = iecEfficiency(power, "IE4", poles);
  if (!higher.ok) return [];
  const found = amount("percent", higher.value);
  const { cites } = HIGHER_CLASS;
  return [{ code: "motor-class-higher-due", kind: "check", subject: "motor efficiency", found, cites }];
}

/** Ratings sold in the European Union and the United Kingdom since July 2023 in IE4: 2, 4 and 6 poles, W. */
const HIGHER_CLASS = {
  from: 75_000,
  to: 200_000,
  cites: { source: "si-2021-745", at: "IE4 from 75 kW to 200 kW, 2 to 6 poles, since July 2023" },
} as const;

function currentOf(
  { voltage }: MotorDataInput,
  rating: MotorRating,
  motor: DrivingMotor,
  efficiency: number | undefined,
): Result<number | undefined> {
  if (voltage === null) return succeed(undefined);
  const subject = "full-load current";
  // The table is of 60 Hz motors in horsepower; it asks neither speed nor poles.
  if (rating.series === "NEMA" && motor.frequency !== 50) {
    const column = necColumn(voltage);
    const listed = necFullLoadCurrent(rating.power, column);
    if (listed.ok) {
      const facts = { column: amount("voltage", column) };
      const cites = fullLoadCurrentMethod.cites[1];
      return succeed(listed.value, [
        { code: "motor-current-by-code", kind: "check", subject, facts, cites },
        startingRemark(),
      ]);
    }
  }
  if (efficiency === undefined) {
    return succeed(undefined, [{ code: "motor-current-not-known", kind: "check", subject }]);
  }
  const facts = { shaftPower: rating.power, voltage, efficiency, powerFactor: ASSUMED_POWER_FACTOR };
  return andThen(fullLoadCurrent(facts), (current) =>
    succeed(current, [
      {
        code: "motor-power-factor-assumed",
        kind: "assumed",
        subject,
        found: amount("ratio", ASSUMED_POWER_FACTOR),
        cites: POWER_FACTOR,
      },
      startingRemark(),
    ]),
  );
}

function startingRemark(): Finding {
  const span = (of: keyof typeof STARTING_CURRENT): string =>
    STARTING_CURRENT[of].map((times) => String(Math.round(times * 10) / 10)).join(" to ");
  return {
    code: "motor-starting-current",
    kind: "check",
    subject: "starting current",
    facts: {
      direct: span("direct on line"),
      starDelta: span("star-delta"),
      soft: span("soft starter"),
      drive: span("variable frequency drive"),
    },
    cites: STARTING,
  };
}
