import type { Citation } from "../basis/citation.ts";
import type { MotorFacts } from "../basis/finding-code.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import {
  fullLoadCurrent,
  fullLoadCurrentMethod,
  necColumn,
  necFullLoadCurrent,
  STARTING_CURRENT,
} from "./motor-current.ts";
import {
  FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR,
  frequencyDriveFactor,
  fullOutputAmbient,
  motorDeratingMethod,
  motorOutputFactor,
  RATED_ALTITUDE,
  RATED_AMBIENT,
} from "./motor-derating.ts";
import { iecEfficiency, motorEfficiencyMethod, nemaPremiumEfficiency } from "./motor-efficiency.ts";
import { type MotorRating, type MotorSeries, motorRating, motorRatingMethod } from "./motor-rating.ts";
import { type Frequency, type MotorOfSpeed, motorSpeedMethod, motorsOfSpeed, slip } from "./motor-speed.ts";
import { shaftTorque } from "./shaft-torque.ts";

export interface MotorDataInput {
  /** Greatest power the pump takes anywhere on its curve, W. */
  readonly shaftPower: number;
  /** Of the pump, direct coupled, r/s. */
  readonly speed: number;
  readonly serviceFactor: number;
  readonly series: MotorSeries;
  /** Of the supply between lines, V; no current is worked out without it. */
  readonly voltage: number | null;
  /** m */
  readonly altitude: number;
  /** Of the air about the motor, K. */
  readonly airTemperature: number;
}

export interface MotorData {
  readonly rating: MotorRating;
  /** Held for four poles on the supply of its series alone. */
  readonly frame?: string;
  /** The motor on the mains that runs at the pump's speed, where there is one. */
  readonly mains?: MotorOfSpeed & { readonly slip: number };
  readonly outputFactor: number;
  /** W */
  readonly siteOutput: number;
  readonly efficiency?: number;
  /** A */
  readonly current?: number;
  /** Greatest, direct on line, A. */
  readonly startingCurrent?: number;
  /** At the rating and the pump's speed, N·m. */
  readonly torque?: number;
  /** Output on site less shaft power, W. */
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

const CONSTANT_TORQUE: Citation = {
  source: "practice",
  at: "a motor on a frequency drive gives its full-load torque to base speed and its rated power above",
};

export const motorDataMethod = {
  cites: [
    ...motorRatingMethod.cites,
    ...motorDeratingMethod.cites,
    ...motorEfficiencyMethod.cites,
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
  },
} as const satisfies Method<Exclude<keyof MotorDataInput, "series">>;

/** Supply that the efficiencies and frames of a series are listed for, Hz. */
const HOME_FREQUENCY: Readonly<Record<MotorSeries, Frequency>> = { NEMA: 60, IEC: 50 };
/** Slip below which a speed is the synchronous one, written for the motor's own. House choice. */
const NO_SLIP = 0.001;

/**
 * The standard motor that carries a pump on its site, and its data sheet: speed and slip, frame, efficiency (NEMA
 * Premium enclosed at 60 Hz, IE3 at 50 Hz), current and starting current (8 times it), A, and torque, N·m.
 * Formula: as `motorRating`; current by NEC Table 430.250, else P/(√3 V η cos φ) with cos φ = 0.85
 * Fails: inputs outside the method's bounds; as `motorOutputFactor` and `motorRating`.
 * Warns: cautions on what no table holds and is left out, site derating, and what was assumed; as `motorRating`.
 */
export function motorData(input: MotorDataInput): Result<MotorData> {
  const { shaftPower, serviceFactor, series, speed, altitude, airTemperature } = input;
  // A voltage that is not stated breaks no bound.
  const voltage = input.voltage ?? 1;
  const checked = checkInputs(motorDataMethod, { shaftPower, serviceFactor, speed, voltage, altitude, airTemperature });
  if (!checked.ok) return checked;
  return andThen(motorOutputFactor({ altitude, ambient: airTemperature }), (outputFactor) =>
    andThen(motorRating({ shaftPower, serviceFactor, series, outputFactor }), (rating) => {
      const findings = [...siteRemarks(input, rating, outputFactor)];
      const [mains] = motorsOfSpeed(speed);
      const siteOutput = rating.power * outputFactor;
      const known = { rating, outputFactor, siteOutput, spare: siteOutput - shaftPower };
      findings.push(...(mains === undefined ? offMainsRemarks(input) : speedRemarks(input, mains)));
      const frame = keep(findings, frameOf(rating, mains));
      const efficiency = keep(findings, efficiencyOf(rating, mains));
      const current = keep(findings, currentOf(input, rating, mains, efficiency));
      const torque = mains === undefined ? undefined : keep(findings, shaftTorque({ shaftPower: rating.power, speed }));
      return succeed(
        {
          ...known,
          ...(mains !== undefined && { mains: { ...mains, slip: slipOf(speed, mains) } }),
          ...(frame !== undefined && { frame }),
          ...(efficiency !== undefined && { efficiency }),
          ...(current !== undefined && { current, startingCurrent: current * STARTING_CURRENT["direct on line"][1] }),
          ...(torque !== undefined && { torque }),
        },
        findings,
      );
    }),
  );
}

/** A figure where there is one; why there is none becomes a remark. */
function keep<T>(findings: Finding[], result: Result<T>): T | undefined {
  findings.push(...result.findings);
  return result.ok ? result.value : undefined;
}

function siteRemarks(input: MotorDataInput, rating: MotorRating, outputFactor: number): readonly Finding[] {
  const { shaftPower, serviceFactor, series, altitude, airTemperature } = input;
  const findings: Finding[] = [];
  if (outputFactor >= 1) return findings;
  const plain = motorRating({ shaftPower, serviceFactor, series });
  const share = amount("percent", outputFactor);
  const cites = motorDeratingMethod.cites[0];
  const subject = "motor rating";
  if (plain.ok && plain.value.power < rating.power) {
    const facts = { share, plain: amount("power", plain.value.power), taken: amount("power", rating.power) };
    findings.push({ code: "motor-raised-for-site", kind: "check", subject, facts, cites });
  } else {
    const found = amount("power", rating.power * outputFactor);
    findings.push({ code: "motor-derated-on-site", kind: "check", subject, found, facts: { share }, cites });
  }
  const coolEnough = fullOutputAmbient(altitude);
  if (altitude > RATED_ALTITUDE && coolEnough.ok && airTemperature <= coolEnough.value) {
    findings.push({
      code: "motor-cool-air-credit",
      kind: "check",
      subject,
      found: amount("temperature", airTemperature),
      limit: { quantity: "temperature", value: coolEnough.value, side: "at most" },
      cites: motorDeratingMethod.cites[1],
    });
  }
  const spent = altitude > RATED_ALTITUDE && altitude <= FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR;
  if (series === "NEMA" && spent && airTemperature <= RATED_AMBIENT) {
    const limit = {
      quantity: "elevation",
      value: FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR,
      side: "at most",
    } as const;
    const nema = motorDeratingMethod.cites[2];
    findings.push({ code: "motor-service-factor-credit", kind: "check", subject, limit, cites: nema });
  }
  return findings;
}

/** No motor on the mains runs at this speed: what drives instead, and what a frequency drive gives up here. */
function offMainsRemarks({ speed, altitude }: MotorDataInput): readonly Finding[] {
  const findings: Finding[] = [
    { code: "motor-speed-not-mains", kind: "check", subject: "speed", found: amount("speed", speed) },
    { code: "motor-below-base-speed", kind: "check", subject: "motor", cites: CONSTANT_TORQUE },
  ];
  const drive = frequencyDriveFactor(altitude);
  if (drive.ok && drive.value < 1) {
    const found = amount("percent", drive.value);
    const cites = { source: "practice", at: "1 % less for each 100 m above 1000 m" } as const;
    findings.push({ code: "frequency-drive-derated", kind: "check", subject: "frequency drive", found, cites });
  }
  return findings;
}

function speedRemarks({ speed }: MotorDataInput, mains: MotorOfSpeed): readonly Finding[] {
  if (slipOf(speed, mains) >= NO_SLIP) return [];
  return [
    {
      code: "motor-speed-synchronous",
      kind: "assumed",
      subject: "speed",
      found: amount("speed", mains.synchronous),
    },
  ];
}

/** A speed that conversion has put a rounding above synchronous has no slip. */
function slipOf(speed: number, { synchronous, frequency, poles }: MotorOfSpeed): number {
  const found = slip(Math.min(speed, synchronous), frequency, poles);
  return found.ok ? found.value : 0;
}

function isAtHome({ series }: MotorRating, { frequency }: MotorOfSpeed): boolean {
  return frequency === HOME_FREQUENCY[series];
}

function frameOf(rating: MotorRating, mains: MotorOfSpeed | undefined): Result<string | undefined> {
  // That the speed is none of the mains is said already.
  if (mains === undefined) return succeed(undefined);
  const held = mains.poles === 4 && isAtHome(rating, mains);
  if (held && rating.frame !== undefined) {
    return succeed(rating.frame, [{ code: "motor-frame-from-memory", kind: "check", subject: "motor frame" }]);
  }
  return succeed(undefined, [
    { code: "motor-frame-not-held", kind: "check", subject: "motor frame", facts: motorFacts(rating, mains) },
  ]);
}

function efficiencyOf(rating: MotorRating, mains: MotorOfSpeed | undefined): Result<number | undefined> {
  if (mains === undefined) return succeed(undefined);
  const { series, power } = rating;
  const subject = "motor efficiency";
  const facts = motorFacts(rating, mains);
  if (!isAtHome(rating, mains)) {
    return succeed(undefined, [{ code: "motor-efficiency-other-supply", kind: "check", subject, facts }]);
  }
  const found =
    series === "NEMA"
      ? nemaPremiumEfficiency(power, mains.poles, "enclosed")
      : iecEfficiency(power, "IE3", mains.poles);
  if (!found.ok) {
    return succeed(undefined, [{ code: "motor-efficiency-not-held", kind: "check", subject, facts }]);
  }
  const isHigherClassDue = series === "IEC" && power >= HIGHER_CLASS.from && power <= HIGHER_CLASS.to;
  if (!isHigherClassDue || mains.poles === 8) return found;
  const higher = iecEfficiency(power, "IE4", mains.poles);
  if (!higher.ok) return found;
  return succeed(found.value, [
    {
      code: "motor-class-higher-due",
      kind: "check",
      subject,
      found: amount("percent", higher.value),
      cites: HIGHER_CLASS.cites,
    },
  ]);
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
  mains: MotorOfSpeed | undefined,
  efficiency: number | undefined,
): Result<number | undefined> {
  if (voltage === null) return succeed(undefined);
  const subject = "full-load current";
  // The table is of 60 Hz motors in horsepower; it asks neither speed nor poles.
  if (rating.series === "NEMA" && mains?.frequency !== 50) {
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

function motorFacts({ series, power }: MotorRating, { poles, frequency }: MotorOfSpeed): MotorFacts {
  return { series, rating: amount("power", power), poles, frequency };
}
