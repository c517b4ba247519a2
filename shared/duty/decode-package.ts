import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { particleNamed } from "../../src/material/particle.ts";
import { flangeClassNamed } from "../../src/pressure/flange-class.ts";
import { pressureMaterialNamed } from "../../src/pressure/pressure-material.ts";
import { describedAirPump } from "../../src/priming/described-air-pump.ts";
import { ratingSystem } from "../catalogue/parameters/class.ts";
import type { DutyText, FieldKey } from "./duty-text.ts";
import { FIELDS } from "./fields.ts";

/** What the estimator states of the package round the pump, in engine units; names as they were typed. */
export interface DutyPackage {
  /** Gauge, Pa. */
  readonly greatestSuctionPressure: number;
  readonly casingMaterial: string;
  readonly flangeClass: string | undefined;
  readonly casingWorkingPressure: number | undefined;
  readonly driver: "motor" | "engine";
  readonly serviceFactor: number;
  readonly engineRating: number | undefined;
  readonly airTemperature: number;
  readonly aspiration: "natural" | "turbo";
  readonly specificConsumption: number | undefined;
  readonly airPump: string;
  readonly casingVolume: number;
  /** Fraction of the mixture's mass. */
  readonly solids: number;
  readonly solidsHardness: string | undefined;
  readonly pH: number | undefined;
  /** kg/m³ */
  readonly chlorides: number | undefined;
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
  const chosen = <C extends string>(key: FieldKey, choices: readonly [C, ...C[]]): C => {
    const given = named(key, (text, subject) => oneOf(choices, text, subject));
    return choices.find((choice) => choice === given?.toLowerCase()) ?? choices[0];
  };
  return {
    greatestSuctionPressure: amountOf("greatestSuctionPressure") ?? 0,
    casingMaterial: named("casingMaterial", pressureMaterialNamed) ?? "",
    flangeClass: named("flangeClass", (text, subject) => flangeClassNamed(text, ratingSystem(typed.unitSet), subject)),
    casingWorkingPressure: amountOf("casingWorkingPressure"),
    driver: chosen("driver", ["motor", "engine"]),
    serviceFactor: amountOf("serviceFactor") ?? 1,
    engineRating: amountOf("engineRating"),
    airTemperature: amountOf("airTemperature") ?? 0,
    aspiration: chosen("aspiration", ["turbo", "natural"]),
    specificConsumption: amountOf("specificConsumption"),
    airPump: named("airPump", describedAirPump) ?? "",
    casingVolume: amountOf("casingVolume") ?? 0,
    solids: amountOf("solids") ?? 0,
    solidsHardness: named("solidsHardness", particleNamed),
    pH: amountOf("pH"),
    chlorides: amountOf("chlorides"),
  };
}

function oneOf(choices: readonly string[], given: string, subject: string): Result<string> {
  const found = choices.find((choice) => choice === given.toLowerCase());
  if (found !== undefined) return succeed(found);
  const suggestions = choices.map((choice) => `"${choice}"`);
  return fail([{ code: "choice-unknown", severity: "error", subject, given, suggestions }]);
}
