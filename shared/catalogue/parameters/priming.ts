import { andThen, type Result } from "../../../src/basis/result.ts";
import type { LiquidState } from "../../../src/liquid/liquid.ts";
import { AIR_PUMP_EXAMPLE, describedAirPump, type StatedAirPump } from "../../../src/priming/described-air-pump.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { quantity, type SingleParameter } from "../parameter.ts";
import { line } from "./line.ts";
import { zeroDoubted } from "./zero-doubted.ts";

export const suctionLine = line("The suction line, from the liquid to the pump, with all of its length");

export const suctionLift = zeroDoubted(
  quantity("head", {
    about: "Height of the pump datum above the liquid surface: positive for a lift, negative for a flooded suction",
  }),
);

export const altitude = quantity("elevation", {
  about: "Height of the site above sea level; negative below it",
  whenLeftOut: { value: 0, shown: "0, sea level" },
});

const capacityNumber = quantity("freeAirFlow", { about: "Free air" });

/** A plain number is the capacity alone; a text may state blank-off and leak as well. Read it with `airPumpOf`. */
export const airPumpCapacity: SingleParameter<number | StatedAirPump> = {
  takes: "cell",
  about: "Free air the air pump moves with an open inlet; a text may add its blank-off at sea level and the leak",
  quantity: "freeAirFlow",
  example: `50, or "${AIR_PUMP_EXAMPLE}"`,
  range: "above 0",
  read: (cell, reading): Result<number | StatedAirPump> =>
    typeof cell === "string" ? describedAirPump(cell, reading.name) : capacityNumber.read(cell, reading),
};

export function airPumpOf(stated: number | StatedAirPump): StatedAirPump {
  return typeof stated === "number" ? { freeAir: stated, blankOff: null, leak: null } : stated;
}

export const casingVolume = zeroDoubted(
  quantity("volume", {
    about: "Air in the pump casing, the priming chamber and the discharge up to its check valve",
    range: "0 or more",
    whenLeftOut: { value: null, shown: "none counted, with a caution" },
  }),
);

/** Of runs side by side each pump primes its own. */
export const pumpsOnLine = quantity("ratio", {
  about:
    "Pumps that the suction line serves: of its runs side by side each primes its part, and all where they are common",
  example: "2",
  range: "a whole number from 1",
  whenLeftOut: { value: null, shown: "one of the runs, with a caution" },
});

/** An air pump that may be left out. */
export const usualAirPump = {
  ...airPumpCapacity,
  fallback: null,
  whenLeftOut: "50 ft³/min with a blank-off of 25 inHg at sea level",
};

/** State of the liquid and pressure of the air together. */
export function onSite<T>(
  altitudeGiven: number,
  state: Result<LiquidState>,
  next: (atmosphericPressure: number, liquid: LiquidState) => Result<T>,
): Result<T> {
  return andThen(standardAtmosphere(altitudeGiven), (pressure) => andThen(state, (known) => next(pressure, known)));
}
