import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { describedLiquid } from "./described-liquid.ts";
import type { Liquid } from "./liquid.ts";
import { seaWater } from "./sea-water.ts";
import { WATER } from "./water.ts";

/** Liquids by the names of the trade that are taken as another, and said to be. Source: house choice. */
const TAKEN_AS: Citation = { source: "house", at: "liquids of the trade taken as another where no figures are stated" };

/** Waters that are pumped as clean water is. */
export const TRADE_WATERS = [
  "cold water",
  "raw water",
  "river water",
  "ground water",
  "storm water",
  "mine water",
  "brackish water",
  "sewage",
  "wastewater",
  "effluent",
] as const;

const ALSO: Readonly<Record<string, string>> = {
  groundwater: "ground water",
  "well water": "ground water",
  stormwater: "storm water",
  "rain water": "storm water",
  rainwater: "storm water",
  "surface water": "river water",
  "lake water": "river water",
  "pond water": "river water",
  "raw sewage": "sewage",
  "waste water": "wastewater",
  "treated effluent": "effluent",
  "treated water": "raw water",
  "potable water": "cold water",
  "drinking water": "cold water",
  "tap water": "cold water",
  brackish: "brackish water",
  "bore water": "ground water",
  "borehole water": "ground water",
  "flood water": "storm water",
  floodwater: "storm water",
  "canal water": "river water",
  "irrigation water": "raw water",
  "process water": "raw water",
  "cooling water": "raw water",
  "fire water": "raw water",
  "chilled water": "cold water",
  "grey water": "wastewater",
  greywater: "wastewater",
};

const FIGURES = /^(.+?)[ ,;]+((?:sg|s\.g\.|sp\.? ?gr\.?|specific gravity|density)\b.*|\d[\d.,]* ?(?:kg|lb|t)\/.*)$/;

/**
 * A water by its name on site, "raw sewage", "mine water SG 1.05": water itself, or as heavy as stated. Nothing for another text.
 * Fails: as `describedLiquid`.
 * Warns: liquid-taken-as (assumed); as `describedLiquid`.
 */
export function tradeWater(wanted: string, subject: string): Result<Liquid> | undefined {
  const parts = FIGURES.exec(wanted);
  const written = parts?.[1] ?? wanted;
  const name = ALSO[written] ?? written;
  const isKnown = (TRADE_WATERS as readonly string[]).includes(name) || (parts !== null && WATERY.test(name));
  if (!isKnown) return undefined;
  const figures = parts?.[2];
  if (figures === undefined) return succeed({ ...WATER, name }, [takenAs(subject, name, "water")]);
  return andThen(describedLiquid(figures, subject) ?? unread(subject, figures), (heavy) =>
    succeed(
      {
        name: `${name}, ${heavy.name}`,
        // Salts and fines leave the vapour pressure of water a little too high, which is the safe side.
        at: (temperature) =>
          andThen(WATER.at(temperature), ({ vapourPressure }) =>
            andThen(heavy.at(temperature), (state) =>
              succeed({
                ...(vapourPressure !== undefined && { vapourPressure }),
                waterByMass: waterIn(state.density / SPECIFIC_GRAVITY_REFERENCE),
                ...state,
              }),
            ),
          ),
      },
      [takenAs(subject, name, "water of that density")],
    ),
  );
}

/** SG of what makes a water heavy, silt or salts; the water in a strong brine comes out within 1 %. Common practice. */
const MINERALS = 2.65;

/** Mass fraction of water in a liquid of an SG, the rest minerals. */
function waterIn(gravity: number): number {
  return Math.min(1, Math.max(0, (MINERALS / gravity - 1) / (MINERALS - 1)));
}

const WATERY = /^(?:water|brine)$/;

/** Salt water by its strength: brackish water and brine are taken as sea water of it. Fails and warns: as `seaWater`. */
export function saltWater(name: string, written: string, salinity: number, subject: string): Result<Liquid> {
  return andThen(seaWater(salinity), (liquid) => {
    const as = liquid.name;
    return succeed({ ...liquid, name: `${name} ${written}` }, [takenAs(subject, `${name} ${written}`, as)]);
  });
}

/**
 * Diesel fuel at the heavy, thick end of what is sold: 845 kg/m³, 7 mm²/s at 20 °C, vapour pressure up to 1 kPa.
 * Source: EN 590 (820 to 845 kg/m³ at 15 °C, 2 to 4.5 mm²/s at 40 °C), from memory; vapour pressure by common practice.
 */
export const DIESEL_FIGURES = "845 kg/m3, 7 cSt, pv 1 kPa";

export function diesel(subject: string): Result<Liquid> {
  const cites: Citation = { source: "en-590", at: "density at 15 °C and viscosity at 40 °C", unverified: true };
  const figures = describedLiquid(DIESEL_FIGURES, subject) ?? unread(subject, DIESEL_FIGURES);
  return andThen(figures, (liquid) =>
    succeed({ ...liquid, name: "diesel" }, [{ ...takenAs(subject, "diesel", DIESEL_FIGURES), cites }]),
  );
}

function takenAs(subject: string, given: string, as: string): Finding<"liquid-taken-as"> {
  return { code: "liquid-taken-as", kind: "assumed", subject, given, facts: { as }, cites: TAKEN_AS };
}

function unread(subject: string, given: string): Result<never> {
  const suggestions = ["SG 1.05"];
  return fail([{ code: "liquid-part-unread", kind: "error", subject, given, suggestions }]);
}
