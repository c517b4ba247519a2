import type { Citation } from "../basis/citation.ts";
import type { MotorFacts } from "../basis/finding-code.ts";
import { amount, type Finding } from "../basis/result.ts";
import {
  FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR,
  frequencyDriveFactor,
  fullOutputAmbient,
  motorDeratingMethod,
  RATED_ALTITUDE,
  RATED_AMBIENT,
} from "./motor-derating.ts";
import { type MotorRating, type MotorSeries, motorRating, ratingRemarks } from "./motor-rating.ts";
import { type DrivingMotor, FREQUENCIES, motorsOfSpeed } from "./motor-speed.ts";

/** A motor as its standard names it. */
export function motorFacts({ series, power }: MotorRating, { poles, frequency }: DrivingMotor): MotorFacts {
  return { series, rating: amount("power", power), poles, frequency };
}

interface Sized {
  /** What the motor must give without the margin, W. */
  readonly shaftPower: number;
  readonly serviceFactor: number;
  readonly series: MotorSeries;
  /** Left by site and speed. */
  readonly outputFactor: number;
}

interface OnSite extends Sized {
  readonly altitude: number;
  readonly airTemperature: number;
  readonly fitted: number | null;
  readonly speedFactor: number;
}

/** What altitude and hot air take of the motor, and the credits that are not taken. */
export function siteRemarks(of: OnSite, rating: MotorRating): readonly Finding[] {
  const { altitude, airTemperature, series, speedFactor, fitted } = of;
  const factor = of.outputFactor / speedFactor;
  const findings: Finding[] = [];
  if (factor >= 1) return findings;
  const plain = fitted === null ? motorRating({ ...of, outputFactor: speedFactor }) : undefined;
  const share = amount("percent", factor);
  const cites = motorDeratingMethod.cites[0];
  const subject = "motor rating";
  if (plain?.ok && plain.value.power < rating.power) {
    const facts = { share, plain: amount("power", plain.value.power), taken: amount("power", rating.power) };
    findings.push({ code: "motor-raised-for-site", kind: "check", subject, facts, cites });
  } else {
    const found = amount("power", rating.power * factor);
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
    const limit = { quantity: "elevation", value: FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR, side: "at most" } as const;
    const nema = motorDeratingMethod.cites[2];
    findings.push({ code: "motor-service-factor-credit", kind: "check", subject, limit, cites: nema });
  }
  return findings;
}

const SIZE_RULE: Citation = {
  source: "practice",
  at: "what a motor gives on site covers the maximum power the pump takes; the service factor of its nameplate is no margin",
};
/** Of a NEMA motor of 1.15, on the mains, to 1000 m (3300 ft) and 40 °C (MG 1, not yet verified against the standard). */
const NAMEPLATE_FACTOR = 1.15;
/** A load this near a power has met it. */
const ROUNDING = 1e-9;

/** The motor there is, held against what the pump takes. */
export function fittedRemarks(rating: MotorRating, { shaftPower, series, outputFactor }: Sized): readonly Finding[] {
  const findings: Finding[] = [...ratingRemarks(rating)];
  const subject = "motor";
  const limit = { quantity: "power", value: rating.power * outputFactor, side: "at most" } as const;
  const found = amount("power", shaftPower);
  if (shaftPower > limit.value * (1 + ROUNDING)) {
    const isWithinFactor = series === "NEMA" && outputFactor === 1 && shaftPower <= limit.value * NAMEPLATE_FACTOR;
    const facts = { isWithinFactor };
    findings.push({ code: "motor-too-small", kind: "limit", subject, found, limit, facts, cites: SIZE_RULE });
  }
  return findings;
}

/** Slip below which a speed is the synchronous one, written for the motor's own. House choice. */
const NO_SLIP = 0.001;
/** W. Above it the drive's voltage peaks and bearing currents matter. Common practice, no source. */
const LARGE_ON_A_DRIVE = 100_000;

const CONSTANT_TORQUE: Citation = {
  source: "practice",
  at: "a motor on a variable-frequency drive gives its full-load torque to base speed and its rated power above",
};

/** How the motor comes by the pump's speed, and what that costs. */
export function speedRemarks(
  { speed, altitude }: { readonly speed: number; readonly altitude: number },
  rating: MotorRating,
  motor: DrivingMotor,
): readonly Finding[] {
  const { way, synchronous, speedFactor, frequency } = motor;
  const found = amount("speed", speed);
  if (way === "belts") return [{ code: "motor-through-belts", kind: "check", subject: "motor" }];
  if (way === "line") {
    if (speed < synchronous * (1 - NO_SLIP)) return [];
    const top = amount("speed", synchronous);
    return [{ code: "motor-speed-synchronous", kind: "assumed", subject: "speed", found: top }];
  }
  const facts = motorFacts(rating, motor);
  const [other] = motorsOfSpeed(
    speed,
    FREQUENCIES.filter((of) => of !== frequency),
  );
  const findings: Finding[] = [
    { code: "motor-speed-not-mains", kind: "check", subject: "speed", found, facts },
    ...(other === undefined
      ? []
      : ([
          { code: "motor-other-supply-fits", kind: "check", subject: "speed", found, facts: { ...facts, ...other } },
        ] as const)),
    way === "slowed"
      ? {
          code: "motor-below-base-speed",
          kind: "check",
          subject: "motor",
          found: amount("percent", speedFactor),
          cites: CONSTANT_TORQUE,
        }
      : { code: "motor-above-base-speed", kind: "check", subject: "motor", found, cites: CONSTANT_TORQUE },
  ];
  const drive = frequencyDriveFactor(altitude);
  if (drive.ok && drive.value < 1) {
    const cites = { source: "practice", at: "1 % less for each 100 m above 1000 m" } as const;
    const share = amount("percent", drive.value);
    const subject = "variable-frequency drive (VFD)";
    findings.push({ code: "frequency-drive-derated", kind: "check", subject, found: share, cites });
  }
  if (rating.power > LARGE_ON_A_DRIVE) {
    findings.push({
      code: "motor-large-on-drive",
      kind: "check",
      subject: "motor",
      found: amount("power", rating.power),
    });
  }
  return findings;
}
