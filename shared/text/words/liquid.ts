import type { LiquidFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const liquidWords: WordsOf<keyof LiquidFindings> = {
  "liquid-frozen": (f, say) =>
    `${f.subject} freezes at ${say.amount(f.limit)}; a temperature of ${say.amount(f.found)} was given`,
  "liquid-boils-in-the-open": (f, say) =>
    `${f.subject} at ${say.amount(f.found)} has a vapour pressure of ${say.amount(f.facts.vapourPressure)}, above one standard atmosphere (water boils there at ${say.amount(f.facts.waterBoilsAt)}); its figures hold only where it is kept under a higher pressure. Take care: released to the open it flashes to steam`,
  "liquid-hot": (f, say) =>
    `${f.subject} at ${say.amount(f.found)} is hotter than ${say.amount(f.limit)}, beyond the service these methods look at; have seals, materials and pressure safety designed by a qualified person under the local code`,
  "liquid-figures-fixed": (f, say) =>
    `“${f.subject}” is used as described at ${say.amount(f.found)}; make sure its density, viscosity and vapour pressure are those at that temperature`,
  "liquid-density-unusual": (f, say) =>
    `${f.subject} density of ${say.amount(f.found)} (SG ${f.facts.gravity}) is unusual for a pumped liquid; check its unit`,
  "liquid-part-unread": (f, say) =>
    `${f.subject}: “${f.given}” is not a figure of a liquid; write the liquid as in “${say.suggestions()}”`,
  "liquid-taken-as": (f) =>
    `${f.subject} “${f.given}” is taken as ${f.facts.as}; state its density and viscosity where they differ`,
  "liquid-viscosity-of-water": (f) =>
    `${f.subject} “${f.given}” states no viscosity; that of water at its temperature is taken`,
  "liquid-temperature-contradicts": (f, say) =>
    `the temperature given is ${say.amount(f.found)}, and the name of the ${f.subject} says ${say.amount(f.facts.named)}; leave one out or correct it`,
  "gravity-of-no-liquid": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is that of no liquid (${f.facts.least} to ${f.facts.greatest}): was a density typed? Then write it with its unit, such as ${say.suggestions()}`,
  "liquid-stated-twice": (f) => `${f.subject} “${f.given}” states its ${f.facts.what} twice; give it once`,
  "liquid-yields": (f, say) =>
    `${f.subject} “${f.given}” is not taken as water: what it loses hangs on its dry solids and on its yield stress, below which it does not flow. Have both measured, and state its density and its apparent viscosity at the flow of the line, such as “${say.suggestions()}”; settled grains in water go as “water with solids 25 %, SG 2.65, d50 0.4 mm”`,
  "liquid-incomplete": (f, say) =>
    `${f.subject} “${f.given}” does not state its ${f.facts.what}; add it, such as ${say.suggestions()}`,
  "glycol-by-volume": (f, say) =>
    `${f.subject}: glycol “${f.given}” is by volume; give it by weight, such as “${say.suggestions()}”`,
  "vapour-pressure-not-stated": (f) => `“${f.subject}” states no vapour pressure; add it, such as “pv 2.3 kPa”`,
  "viscosity-from-saybolt": (f) =>
    `the viscosity of ${f.facts.seconds} SSU is converted by the short form, within about 2 % of ASTM D2161`,
  "altitude-unusual": (f, say) =>
    `altitude of ${say.amount(f.found)} is beyond the dry land of the earth; check its unit`,
};
