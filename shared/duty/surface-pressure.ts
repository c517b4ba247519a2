import { UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { andThen, type Result, succeed } from "../../src/basis/result.ts";
import { standardAtmosphere } from "../../src/site/atmosphere.ts";
import { doubted, gaugeOf, surfacePressure } from "../catalogue/parameters/surface-pressure.ts";
import { isTooLong } from "../cells/long-text.ts";
import { within } from "./field.ts";
import { FIELDS, type FieldKey } from "./fields.ts";

/** Boxes of a pressure on a liquid's surface: gauge, or absolute where the text says so. */
const SURFACES: ReadonlySet<FieldKey> = new Set(["sourcePressure", "deliveryPressure"]);

/**
 * The pressure in such a box above the air of the site [Pa], or nothing where the box is another, is blank, or holds what its
 * own field refuses. At sea level where the altitude cannot be read. Warns: surface-pressure-atmospheric.
 */
export function overSurface(
  key: FieldKey,
  typed: string,
  unitSet: UnitSetName,
  altitude: number | undefined,
): Result<number> | undefined {
  if (!SURFACES.has(key) || typed.trim() === "") return undefined;
  const { label, read, bounds = {} } = FIELDS[key];
  const own = read(typed.trim(), unitSet, label) as Result<number>;
  if (own.ok) return succeed(own.value, [...own.findings, ...doubted(own.value, label)]);
  if (isTooLong(typed.trim())) return undefined;
  const found = surfacePressure.read(typed.trim(), { name: label, unitSet, units: UNIT_SETS[unitSet] });
  if (!found.ok || "gauge" in found.value) return undefined;
  const stated = found.value;
  return andThen(standardAtmosphere(altitude ?? 0), (atmosphere) =>
    within(bounds, "gaugePressure", gaugeOf(stated, atmosphere), label),
  );
}
