import { citationText, NOT_VERIFIED } from "../../../src/basis/citation.ts";
import { inUnit } from "../../../src/basis/conversion.ts";
import { readNumber, readWrittenAmount, type WrittenAmount } from "../../../src/basis/quantity-text.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { meaningsOf, type Unit, unitNamed, unitOf } from "../../../src/basis/units.ts";
import { describedLiquidMethod } from "../../../src/liquid/described-liquid.ts";
import { glycolMethod } from "../../../src/liquid/glycol.ts";
import { LISTED_LIQUIDS } from "../../../src/liquid/liquid-list.ts";
import { fromSaybolt, sayboltSeconds, toSaybolt } from "../../../src/liquid/saybolt.ts";
import { seaWaterMethod } from "../../../src/liquid/sea-water.ts";
import { waterMethod } from "../../../src/liquid/water.ts";
import { atmosphereMethod, standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { defineEntry } from "../entry.ts";
import { quantity, text } from "../parameter.ts";
import { statedLiquid as liquid, temperature } from "../parameters/liquid.ts";

const liquidCites = [
  waterMethod.cites[0],
  ...waterMethod.cites.slice(1),
  ...seaWaterMethod.cites.slice(0, 2),
  glycolMethod.cites[0],
  ...describedLiquidMethod.cites,
] as const;

export const DENSITY = defineEntry({
  id: "DENSITY",
  group: "Liquid and site",
  summary: "Density of a liquid at its temperature",
  method:
    "Water by the IAPWS Industrial Formulation 1997, at one atmosphere or at the vapour pressure where that is higher. Sea water by Sharqawy, Lienhard and Zubair, within 0.1 %. Glycol in water by Melinder's fits, strength by weight; other tables differ by up to 1 %, and by some 2 K in the freezing point, so keep a margin. A described liquid keeps the density it states; SG is relative to 998.2 kg/m³, water at 20 °C.",
  cites: liquidCites,
  parameters: { liquid, temperature },
  answer: { kind: "quantity", name: "density", quantity: "density" },
  examples: [
    {
      args: ["water", 60],
      answer: 62.34,
      within: 0.04,
      source: "Bachus and Custodio, Know and Understand Centrifugal Pumps (2003), properties of water, 60 °F",
    },
    {
      args: ["sea water", "20 degC", "SI"],
      answer: 1024.76,
      within: 1.1,
      source: `UNESCO equation of state of sea water (1980), salinity 35 (${NOT_VERIFIED}); the fit is within 0.1 %`,
    },
  ],
  run: (values) => andThen(values.liquid.at(values.temperature), (state) => succeed(state.density)),
});

export const VISCOSITY = defineEntry({
  id: "VISCOSITY",
  group: "Liquid and site",
  summary: "Dynamic viscosity of a liquid at its temperature",
  method:
    "Water by IAPWS R12-08 at the density DENSITY gives. Sea water by Sharqawy, Lienhard and Zubair, within 1.5 %. Glycol in water by Melinder's fits; other tables differ by up to 9 %, and by 20 % for weak solutions near 0 °C. A described liquid keeps the viscosity it states; a kinematic viscosity is multiplied by the density, and Saybolt seconds are converted by their short form.",
  cites: liquidCites,
  parameters: { liquid, temperature },
  answer: { kind: "quantity", name: "dynamic viscosity", quantity: "dynamicViscosity" },
  examples: [
    {
      args: ["water", "20 degC"],
      answer: 1.0016,
      within: 0.0001,
      source: `ISO/TR 3666: water at 20 °C, 1.0016 mPa·s (${NOT_VERIFIED})`,
    },
    {
      args: ["1118 kg/m3, 3.1 cSt"],
      answer: 3.4658,
      within: 1e-9,
      source: "By hand: 1118 kg/m³ × 3.1 mm²/s",
    },
  ],
  run: (values) => andThen(values.liquid.at(values.temperature), (state) => succeed(state.dynamicViscosity)),
});

export const VAPORPRESSURE = defineEntry({
  id: "VAPORPRESSURE",
  group: "Liquid and site",
  summary: "Absolute vapour pressure of a liquid at its temperature",
  method:
    "Water by region 4 of the IAPWS Industrial Formulation 1997. Sea water lowered by its salt (Nayar and others). Glycol in water by Raoult's law from the water alone, which errs on the safe side for NPSH; below 0 °C from the vapour pressure of liquid water by Murphy and Koop. A described liquid gives what it states, and an error where it states none.",
  cites: [...liquidCites, ...seaWaterMethod.cites.slice(1, 2), ...glycolMethod.cites.slice(2)],
  parameters: { liquid, temperature },
  answer: { kind: "quantity", name: "vapour pressure", quantity: "absolutePressure" },
  examples: [
    {
      args: ["water", 100],
      answer: 0.9492,
      within: 0.0025,
      source: "Bachus and Custodio, Know and Understand Centrifugal Pumps (2003), properties of water, 100 °F",
    },
    {
      args: ["water", 20, "SI"],
      answer: 2.339,
      within: 0.0005,
      source: "Davis, Water and Wastewater Engineering (2010), table 3-8",
    },
  ],
  run: (values) =>
    andThen(values.liquid.at(values.temperature), (state) =>
      state.vapourPressure === undefined ? fail([notStated(values.liquid.name)]) : succeed(state.vapourPressure),
    ),
});

function notStated(name: string): Finding {
  return { code: "vapour-pressure-not-stated", kind: "error", subject: name };
}

export const ATMOSPHERE = defineEntry({
  id: "ATMOSPHERE",
  group: "Liquid and site",
  summary: "Absolute atmospheric pressure at an altitude",
  method:
    "Pressure of the U.S. Standard Atmosphere 1976 at a geometric altitude. Weather moves the true pressure by some 3 kPa (0.4 psi) either way; where the NPSH margin is thin, use the lowest station pressure of the site instead.",
  cites: atmosphereMethod.cites,
  parameters: {
    altitude: quantity("elevation", {
      about: "Height of the site above sea level; negative below it",
      example: '5280, or "1600 m"',
      range: "−5000 m to 11 000 m",
      whenLeftOut: { value: 0, shown: "sea level" },
    }),
  },
  answer: { kind: "quantity", name: "atmospheric pressure", quantity: "absolutePressure" },
  examples: [
    { args: [0, "SI"], answer: 101.325, within: 1e-9, source: "U.S. Standard Atmosphere 1976, sea level" },
    { args: [2000, "SI"], answer: 79.501, within: 0.001, source: "U.S. Standard Atmosphere 1976, table I, 2000 m" },
  ],
  run: ({ altitude }) => standardAtmosphere(altitude),
});

/** Seconds of the Saybolt Universal viscometer, which no factor leads to. */
const SAYBOLT = "SSU";

const unit = text<Unit | typeof SAYBOLT>({ about: "The unit to give it in", example: '"gpm"' }, (given, name) => {
  if (/^(?:ssu|sus)$/i.test(given.trim())) return succeed(SAYBOLT);
  const known = unitNamed(given);
  if (known !== undefined) return succeed(known);
  const meant = meaningsOf(given);
  const finding = { kind: "error", subject: name, given } as const;
  if (meant !== undefined) return fail([{ ...finding, code: "unit-ambiguous", suggestions: [meant] }]);
  return fail([{ ...finding, code: "unit-unknown", suggestions: ['a unit such as "gpm", "psi" or "m³/h"'] }]);
});

/** "45 L/s"; "550 SSU" as its kinematic viscosity; "1,200 gpm" with a word of how it is read. */
function writtenOrSaybolt(given: string, name: string): Result<WrittenAmount> {
  const seconds = sayboltSeconds(given);
  if (seconds !== undefined) {
    return andThen(readNumber(seconds, name), (number) =>
      andThen(fromSaybolt(number), (kinematic) => succeed({ value: kinematic, unit: unitOf("m²/s") })),
    );
  }
  return andThen(readWrittenAmount(given, name, "45 L/s"), (amount) => {
    if (amount.isVacuum) {
      return fail([
        { code: "unit-wrong-kind", kind: "error", subject: name, given, suggestions: ["a pressure without “vac”"] },
      ]);
    }
    const as = `${amount.value} ${amount.unit.symbol}`;
    const remark: Finding = { code: "text-read-as", kind: "check", subject: name, given, facts: { as } };
    return succeed(amount, amount.isRead ? [remark] : []);
  });
}

export const INUNITS = defineEntry({
  id: "INUNITS",
  group: "Liquid and site",
  summary: "A quantity in another unit, as a plain number",
  method:
    "Exact factors of NIST Special Publication 811. gpm and gal are US unless they say imperial; hp is 550 ft·lbf/s; metres and feet of water are conventional (1000 kg/m³). Temperatures convert as readings. SSU by the short form of its conversion. Gauge and absolute pressure are refused in each other's units, since the atmosphere stands between them: add ATMOSPHERE yourself.",
  cites: [{ source: "nist-sp-811", at: "appendix B" }],
  parameters: {
    quantityText: text({ about: "A number and its unit as one text", example: '"45 L/s"' }, (given, name) =>
      writtenOrSaybolt(given, name),
    ),
    unit,
  },
  unitless: true,
  answer: { kind: "number", name: "quantity in that unit" },
  examples: [
    {
      args: ["1 US gal", "in³"],
      answer: 231,
      within: 1e-9,
      source: "NIST SP 811, appendix B: the US gallon is 231 in³",
    },
    { args: ["-40 degF", "degC"], answer: -40, within: 1e-9, source: "NIST SP 811, appendix B.8" },
    { args: ["1 atm", "psi"], answer: 14.69594877551345, within: 1e-12, source: "NIST SP 811, appendix B, exact" },
  ],
  run: ({ quantityText, unit: target }) => {
    if (target !== SAYBOLT) return inUnit(quantityText, target, "quantity text");
    return andThen(inUnit(quantityText, unitOf("m²/s"), "quantity text"), (kinematic) => {
      const seconds = toSaybolt(kinematic);
      if (seconds !== undefined) return succeed(seconds, fromSaybolt(seconds).findings);
      const suggestions = ["at least 32 SSU, some 1.1 cSt"];
      return fail([
        { code: "wrong-kind", kind: "error", subject: "quantity text", given: "a thinner liquid", suggestions },
      ]);
    });
  },
});

export const LIQUIDS = defineEntry({
  id: "LIQUIDS",
  group: "Lists",
  summary: "The liquids that are known by name, with the range and source of their figures",
  method:
    "The first column is a text any liquid argument takes. Glycol reaches down to its freezing point. The last row is a liquid described by its own figures.",
  cites: liquidCites,
  parameters: {},
  answer: {
    kind: "table",
    name: "liquids",
    columns: {
      liquid: { name: "liquid" },
      also: { name: "also" },
      lowestTemperature: { name: "lowest temperature", quantity: "temperature" },
      highestTemperature: { name: "highest temperature", quantity: "temperature" },
      source: { name: "source", isTitle: true },
    },
  },
  examples: [
    {
      args: ["SI"],
      part: [1, 3],
      answer: 350,
      within: 1e-9,
      source: "IAPWS R7-97(2012): region 1 ends at 623.15 K",
    },
  ],
  run: () =>
    succeed(
      LISTED_LIQUIDS.map(({ name, forms, lowestTemperature, highestTemperature, cites }) => ({
        liquid: name,
        also: forms,
        lowestTemperature,
        highestTemperature,
        source: citationText(cites[0]),
      })),
    ),
});
