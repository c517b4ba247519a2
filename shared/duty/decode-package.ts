import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { constituentsNamed } from "../../src/material/constituent.ts";
import { particleNamed } from "../../src/material/particle.ts";
import { flangeClassNamed } from "../../src/pressure/flange-class.ts";
import { flangeSizeRead } from "../../src/pressure/flange-size.ts";
import { pressureMaterialNamed } from "../../src/pressure/pressure-material.ts";
import { describedAirPump } from "../../src/priming/described-air-pump.ts";
import type { BoltGradeName } from "../../src/tables/bolts.ts";
import type { GasketName } from "../../src/tables/gaskets.ts";
import { ratingSystem } from "../catalogue/parameters/class.ts";
import { type DutyCosts, decodeCosts } from "./decode-costs.ts";
import type { DutyText, FieldKey } from "./duty-text.ts";
import { ASPIRATIONS, BOLT_GRADE_NAMES, DRIVERS, FIELDS, GASKET_NAMES } from "./fields.ts";

/** What the estimator states of the package round the pump, in engine units; names as they were typed. */
export interface DutyPackage {
  /** Gauge, Pa. */
  readonly greatestSuctionPressure: number;
  readonly casingMaterial: string;
  readonly flangeClass: string | undefined;
  readonly casingWorkingPressure: number | undefined;
  readonly otherPart: string | undefined;
  readonly otherPartPressure: number | undefined;
  /** r/s */
  readonly greatestSpeed: number | undefined;
  readonly greatestImpeller: number | undefined;
  /** Above the duty's datum, m. */
  readonly standingLevel: number | undefined;
  /** Nominal sizes as typed. */
  readonly suctionFlange: string | undefined;
  readonly dischargeFlange: string | undefined;
  readonly gasket: GasketName | undefined;
  readonly boltGrade: BoltGradeName;
  readonly nutFactor: number;
  readonly driver: "motor" | "engine";
  readonly serviceFactor: number;
  readonly engineRating: number | undefined;
  readonly airTemperature: number;
  readonly aspiration: "natural" | "turbo";
  readonly specificConsumption: number | undefined;
  /** Fraction of the engine's rating. */
  readonly accessoryLosses: number;
  readonly tankVolume: number | undefined;
  /** V */
  readonly supplyVoltage: number | undefined;
  readonly airPump: string;
  readonly casingVolume: number;
  readonly eductorNozzle: number | undefined;
  /** Gauge, Pa. */
  readonly motivePressure: number | undefined;
  /** Fraction of the mixture's mass. */
  readonly solids: number;
  readonly solidsGravity: number | undefined;
  /** d50 and d85, m. */
  readonly medianSize: number | undefined;
  readonly coarseSize: number | undefined;
  /** Fraction of the solids' mass below 75 µm. */
  readonly fines: number | undefined;
  readonly solidsHardness: string | undefined;
  readonly particleSize: number | undefined;
  readonly freePassage: number | undefined;
  readonly pH: number | undefined;
  /** kg/m³ */
  readonly chlorides: number | undefined;
  /** kg/m³ */
  readonly oxidiser: number | undefined;
  /** As typed: constituents with commas between. */
  readonly makeUp: string | undefined;
  readonly costs: DutyCosts;
}

interface Reading {
  readonly typed: DutyText;
  readonly amountOf: (key: FieldKey) => number | undefined;
  readonly keep: <T>(key: FieldKey, result: Result<T>) => T | undefined;
  readonly assumed: Set<FieldKey>;
}

/** Reads the package fields, each by itself; a name is read as the cell functions read it. */
export function decodePackage({ typed, amountOf, keep, assumed }: Reading): DutyPackage {
  const textOf = (key: FieldKey): string | undefined => {
    const given = typed.fields[key].trim();
    return given === "" ? undefined : given;
  };
  const named = (key: FieldKey, read: (text: string, subject: string) => Result<unknown>): string | undefined => {
    const given = textOf(key);
    const whenBlank = FIELDS[key].whenBlank;
    if (given === undefined && typeof whenBlank === "string") assumed.add(key);
    if (given !== undefined) keep(key, read(given, FIELDS[key].label));
    return given ?? (typeof whenBlank === "string" ? whenBlank : undefined);
  };
  const chosen = <C extends string>(key: FieldKey, choices: readonly C[]): C => {
    const given = named(key, (text, subject) => oneOf(choices, text, subject));
    return choices.find((choice) => choice.toLowerCase() === given?.toLowerCase()) ?? (choices[0] as C);
  };
  const flangeSize = (text: string, subject: string): Result<unknown> =>
    flangeSizeRead(text, ratingSystem(typed.unitSet), subject);
  return {
    greatestSuctionPressure: amountOf("greatestSuctionPressure") ?? 0,
    casingMaterial: named("casingMaterial", pressureMaterialNamed) ?? "",
    flangeClass: named("flangeClass", (text, subject) => flangeClassNamed(text, ratingSystem(typed.unitSet), subject)),
    casingWorkingPressure: amountOf("casingWorkingPressure"),
    otherPart: textOf("otherPart"),
    otherPartPressure: amountOf("otherPartPressure"),
    greatestSpeed: amountOf("greatestSpeed"),
    greatestImpeller: amountOf("greatestImpeller"),
    standingLevel: amountOf("standingLevel"),
    suctionFlange: named("suctionFlange", flangeSize),
    dischargeFlange: named("dischargeFlange", flangeSize),
    gasket: textOf("gasket") === undefined ? undefined : chosen("gasket", GASKET_NAMES),
    boltGrade: chosen("boltGrade", BOLT_GRADE_NAMES),
    nutFactor: amountOf("nutFactor") ?? 0.2,
    driver: chosen("driver", DRIVERS),
    serviceFactor: amountOf("serviceFactor") ?? 1,
    engineRating: amountOf("engineRating"),
    airTemperature: amountOf("airTemperature") ?? 0,
    aspiration: chosen("aspiration", ASPIRATIONS),
    specificConsumption: amountOf("specificConsumption"),
    accessoryLosses: amountOf("accessoryLosses") ?? 0,
    tankVolume: amountOf("tankVolume"),
    supplyVoltage: amountOf("supplyVoltage"),
    airPump: named("airPump", describedAirPump) ?? "",
    casingVolume: amountOf("casingVolume") ?? 0,
    eductorNozzle: amountOf("eductorNozzle"),
    motivePressure: amountOf("motivePressure"),
    solids: amountOf("solids") ?? 0,
    solidsGravity: amountOf("solidsGravity"),
    medianSize: amountOf("medianSize"),
    coarseSize: amountOf("coarseSize"),
    fines: amountOf("fines"),
    solidsHardness: named("solidsHardness", particleNamed),
    particleSize: amountOf("particleSize"),
    freePassage: amountOf("freePassage"),
    pH: amountOf("pH"),
    chlorides: amountOf("chlorides"),
    oxidiser: amountOf("oxidiser"),
    makeUp: named("makeUp", constituentsNamed),
    costs: decodeCosts({ typed, amountOf, keep }),
  };
}

function oneOf(choices: readonly string[], given: string, subject: string): Result<string> {
  const found = choices.find((choice) => choice.toLowerCase() === given.toLowerCase());
  if (found !== undefined) return succeed(found);
  const suggestions = choices.map((choice) => `"${choice}"`);
  return fail([{ code: "choice-unknown", severity: "error", subject, given, suggestions }]);
}
