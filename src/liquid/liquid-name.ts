import { nearestNames, slipsOf } from "../basis/nearest.ts";
import { readQuantity } from "../basis/quantity-text.ts";
import { andThen, fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { DESCRIPTION_EXAMPLE, describedLiquid } from "./described-liquid.ts";
import { type Glycol, glycolInWater } from "./glycol.ts";
import type { Liquid } from "./liquid.ts";
import { LISTED_LIQUIDS } from "./liquid-list.ts";
import { OCEAN_SALINITY, seaWater } from "./sea-water.ts";
import { solidsUnstated } from "./solids-unstated.ts";
import { diesel, saltWater, tradeWater } from "./trade-liquid.ts";
import { WATER } from "./water.ts";

/** Names that need no figure typed in, as a drop-down offers them. */
export const LIQUID_NAMES: readonly string[] = LISTED_LIQUIDS.map(({ name }) => name).filter(
  (name) => name !== DESCRIPTION_EXAMPLE,
);

const WATER_NAMES: ReadonlySet<string> = new Set(
  "water,h2o,fresh water,freshwater,clean water,pure water,distilled water,demineralised water,deionised water,demin water,di water".split(
    ",",
  ),
);
/** Water whose temperature the name promises and does not tell. */
const HOT_WATER = /^(?:hot|warm) water$/;
const SEA_WATER = /^sea ?water(?:[ ,:]+(.*))?$/;
const SALT_WATER =
  /^(brackish|brine)(?: water)?[ ,:]+(?:of )?([\d.,]+ ?(?:%|g\/kg|g\/l|ppt|ppm|‰))(?: nacl| salt| by weight| w\/w)?$/;
const GLYCOL = /^(?:(.*?) )?(?:(ethylene glycol|meg|eg)|(?:propylene glycol|mpg|pg))(?:[ ,:]+(.*))?$/;
const BY_VOLUME = /\b(?:by )?vol(?:ume)?\b|v\/v/;
const DIESEL = /^(?:(?:#|no\.? ?)2 )?(?:diesel(?: fuel| oil)?|gas ?oil)$/;
const WITH_TEMPERATURE =
  /^(.*?)[ ,;]+(?:at |@ ?)?([-+]?\d+(?:[.,]\d+)? ?(?:[°º] ?[cf]|(?:deg(?:rees?)?\.? ?)?(?:c|f|celsius|fahrenheit)))$/;

/**
 * The liquid a text names or describes, in any case and spacing: "water", "sea water 38 g/kg", "ethylene glycol 40 %"
 * (by weight), "SG 1.12, 3.5 cP, pv 2.3 kPa", "raw sewage", "mine water SG 1.05", each with its temperature where that is
 * written behind it, "water 90 F".
 * Fails: name-unknown, with the nearest names of its kind; liquid-yields, liquid-incomplete, glycol-by-volume; as `readQuantity`, `seaWater`,
 * `glycolInWater` and `describedLiquid`.
 * Warns: liquid-taken-as (assumed); as `seaWater`, `glycolInWater` and `describedLiquid`.
 */
export function liquidNamed(text: string, subject = "liquid"): Result<Liquid> {
  const wanted = inBritish(text.normalize("NFKC").trim().toLowerCase().replace(/\s+/g, " "));
  const warm = WITH_TEMPERATURE.exec(wanted);
  if (warm !== null) {
    const [, name = "", written = ""] = warm;
    const bare = named(HOT_WATER.test(name) ? "water" : name, name, subject);
    if (bare.ok) {
      return andThen(readQuantity(written, "temperature", "temperature of the liquid"), (statedTemperature) =>
        succeed({ ...bare.value, statedTemperature }, bare.findings),
      );
    }
  }
  return named(wanted, text, subject);
}

function named(wanted: string, text: string, subject: string): Result<Liquid> {
  if (WATER_NAMES.has(wanted)) return succeed(WATER);
  if (HOT_WATER.test(wanted)) return incomplete("temperature", wanted, subject, ["water 180 F", "water 80 C"]);
  const unlikeWater = solidsUnstated(wanted, text, subject);
  if (unlikeWater !== undefined) return unlikeWater;
  const sea = SEA_WATER.exec(wanted);
  if (sea !== null) return readSeaWater(sea[1] ?? "");
  const salt = SALT_WATER.exec(wanted);
  if (salt !== null) {
    const [, name = "", strength = ""] = salt;
    const read = readQuantity(strength.replace("g/l", "g/kg"), "salinity", "salinity");
    if (!read.ok) return read;
    return saltWater(name === "brine" ? "brine" : "brackish water", strength, read.value, subject);
  }
  if (SALT.test(wanted)) return incomplete("strength", wanted, subject, ["brine 10 %", "brine SG 1.07", "sea water"]);
  const glycol = GLYCOL.exec(wanted);
  if (glycol !== null) {
    const [, before = "", ethylene, after = ""] = glycol;
    return readGlycol(ethylene === undefined ? "propylene glycol" : "ethylene glycol", `${before} ${after}`, subject);
  }
  if (DIESEL.test(wanted)) return diesel(subject);
  return tradeWater(wanted, subject) ?? describedLiquid(text, subject) ?? unknown(text, subject);
}

const SALT = /^(?:brine|salt ?water)$/;

function incomplete(what: string, given: string, subject: string, suggestions: readonly string[]): Result<never> {
  const facts = { what };
  return fail([{ code: "liquid-incomplete", kind: "error", subject, given, suggestions, facts }]);
}

function readSeaWater(salinity: string): Result<Liquid> {
  if (salinity === "") return seaWater(OCEAN_SALINITY);
  const read = readQuantity(salinity, "salinity", "salinity");
  return read.ok ? seaWater(read.value) : read;
}

function readGlycol(glycol: Glycol, written: string, subject: string): Result<Liquid> {
  if (BY_VOLUME.test(written)) {
    const suggestions = [`${glycol} 40 %`];
    return fail([{ code: "glycol-by-volume", kind: "error", subject, given: written.trim(), suggestions }]);
  }
  const strength = written.replace(/\b(?:by )?(?:weight|mass|wt\.?)|\bw\/w\b|\b(?:in|and) water\b/g, "").trim();
  if (strength === "") return incomplete("strength", glycol, subject, [`${glycol} 40 %`]);
  const read = readQuantity(strength, "percent", "glycol by weight");
  return read.ok ? glycolInWater(glycol, read.value) : read;
}

/** Kinds of liquid by a word of their names: none of another kind is offered. */
const KINDS = ["water", "glycol", "diesel"] as const;

function unknown(given: string, subject: string): Result<never> {
  const kind = KINDS.find((word) => given.toLowerCase().includes(word));
  const suggestions =
    kind === undefined
      ? slipsOf(given, LIQUID_NAMES)
      : nearestNames(
          given,
          LIQUID_NAMES.filter((name) => name.includes(kind)),
        );
  const otherwise = `give its figures, such as “${DESCRIPTION_EXAMPLE}”`;
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions, otherwise }]);
}
