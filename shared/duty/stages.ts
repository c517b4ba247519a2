import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import { andThen, fail, type Result, succeed } from "../../src/basis/result.ts";
import { flangeClassNamed } from "../../src/pressure/flange-class.ts";
import { flangeSizeNamed } from "../../src/pressure/flange-size.ts";
import { pressureMaterialNamed } from "../../src/pressure/pressure-material.ts";
import { ratingSystem } from "../catalogue/parameters/class.ts";
import { within } from "./field.ts";
import { LEVEL, RATED_PRESSURE } from "./fields/bounds.ts";
import { bareNumber, readAmount } from "./read-amount.ts";

/** What one pump of a series has of its own, in engine units; names as they were typed. */
export interface StageFacts {
  readonly material?: string;
  readonly flangeClass?: string;
  readonly suctionFlange?: string;
  readonly dischargeFlange?: string;
  readonly casing?: number;
  readonly level?: number;
  /** Rows of the discharge line before it. */
  readonly afterRow?: number;
  readonly checkValve?: "yes" | "no";
  readonly part?: string;
  readonly partPressure?: number;
}

/** By the number of the stage, from 1. */
export type Stages = ReadonlyMap<number, StageFacts>;

const EXAMPLES = [
  "“2: Class 300, casing 500 psi, level 730 ft, after row 1”",
  "“1: check valve, hose 300 psi; 2: WCB, suction flange NPS 10”",
];
const STAGE = /^(?:stage |pump )?(\d{1,2}) ?: ?(.+)$/i;
const CLASS = /^(?:(?:class|cl\.?|asa|pn)\b|pn ?\d|#|\d+ ?(?:#|lbs?\b))/i;
const FLANGE = /^(suction|discharge)(?: flange)? (.+)$/i;
const CASING = /^(?:casing|mawp|maximum allowable working pressure)(?: working pressure| mawp)? (.+)$/i;
const AFTER = /^(?:behind|after)(?: row)? (\d{1,3})$/i;
const LEVEL_OF = /^(?:level|at|elevation) (.+)$/i;
const PART = /^(\D.*?) (\d[\d.,]* ?\S+)$/;

/**
 * What the stages of a series have of their own: "2: Class 300, casing 500 psi, level 730 ft, check valve; 3: WCB".
 * Amounts carry their units: a change of unit set does not reach into a text.
 * Fails: name-unknown, with examples, for what is none of these; an amount without its unit; a stage named twice.
 */
export function stagesRead(text: string, subject: string, unitSet: UnitSetName): Result<Stages> {
  const stages = new Map<number, StageFacts>();
  for (const written of text.split(/[;\n]/)) {
    const entry = written.replace(/\s+/g, " ").trim();
    if (entry === "") continue;
    const [, digits = "", items = ""] = STAGE.exec(entry) ?? [];
    const stage = Number(digits);
    if (stage < 1 || stages.has(stage)) return unknown(entry, subject);
    let facts: StageFacts = {};
    for (const item of items.split(/, |,(?!\d)/)) {
      const read = factRead(item.trim(), `${subject}, stage ${stage}`, unitSet);
      if (!read.ok) return read;
      facts = { ...facts, ...read.value };
    }
    stages.set(stage, facts);
  }
  return succeed(stages);
}

function factRead(item: string, subject: string, unitSet: UnitSetName): Result<StageFacts> {
  const system = ratingSystem(unitSet);
  if (/^check valve$/i.test(item)) return succeed({ checkValve: "yes" });
  if (/^no check valve$/i.test(item)) return succeed({ checkValve: "no" });
  if (CLASS.test(item)) {
    return andThen(flangeClassNamed(item, system, subject), () => succeed({ flangeClass: item }));
  }
  const [, side, size = ""] = FLANGE.exec(item) ?? [];
  // A bare number is inches to one reader and DN to the other.
  const isSize = bareNumber(size) === undefined && flangeSizeNamed(size, system) !== undefined;
  if (side !== undefined && isSize) {
    return succeed(side.toLowerCase() === "suction" ? { suctionFlange: size } : { dischargeFlange: size });
  }
  const casing = CASING.exec(item)?.[1];
  if (casing !== undefined) {
    return andThen(amountRead(casing, "gaugePressure", subject, unitSet), (found) => succeed({ casing: found }));
  }
  const after = AFTER.exec(item)?.[1];
  if (after !== undefined) return succeed({ afterRow: Number(after) });
  const level = LEVEL_OF.exec(item)?.[1];
  if (level !== undefined) {
    return andThen(amountRead(level, "elevation", subject, unitSet), (found) => succeed({ level: found }));
  }
  if (pressureMaterialNamed(item).ok) return succeed({ material: item });
  const [, part, pressure] = PART.exec(item) ?? [];
  if (part !== undefined && pressure !== undefined) {
    return andThen(amountRead(pressure, "gaugePressure", `${subject}: ${part}`, unitSet), (partPressure) =>
      succeed({ part, partPressure }),
    );
  }
  return unknown(item, subject);
}

function amountRead(
  text: string,
  quantity: Extract<Quantity, "gaugePressure" | "elevation">,
  subject: string,
  unitSet: UnitSetName,
): Result<number> {
  if (bareNumber(text) !== undefined) return unknown(text, subject);
  return andThen(readAmount(text, quantity, unitSet, subject), (value) =>
    within(quantity === "elevation" ? LEVEL : RATED_PRESSURE, quantity, value, subject),
  );
}

function unknown(given: string, subject: string): Result<never> {
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions: EXAMPLES }]);
}
