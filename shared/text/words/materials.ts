import { NOT_VERIFIED, verificationText } from "../../../src/basis/citation.ts";
import type { FactsOf, MaterialFindings } from "../../../src/basis/finding-code.ts";
import type { Say, WordsOf } from "../words.ts";

/** "pH 2 to 4, chloride to 500 mg/L, to 30 °C; governed by …". */
function rangeOf(facts: Readonly<FactsOf["constituent-taken-as"]>, say: Pick<Say, "amount">): string {
  const { pH, chlorides, hottest, governs, conditions, betterMetal } = facts;
  const range = `pH ${pH}, chloride to ${say.amount(chlorides)}, to ${say.amount(hottest)}`;
  const better = betterMetal === "" ? "" : `; better: ${betterMetal}`;
  return `${range}; governed by ${governs}${conditions === "" ? "" : `; ${conditions}`}${better}`;
}

type WearSaid = Pick<FactsOf["wear-light"], "particle" | "ratio" | "hardParts">;

function particles({ particle, ratio }: WearSaid): string {
  return ratio === 0 ? particle : `${particle} ${ratio} times as hard as the metal`;
}

/** Hardened iron is advised only where it stands the liquid itself. */
function wearParts({ hardParts }: WearSaid): string {
  return hardParts === "white iron"
    ? "wear parts in hardened iron"
    : "wear parts of the same metal, renewed as they wear, or rubber where it stands the liquid";
}

export const materialWords: WordsOf<keyof MaterialFindings> = {
  "chlorides-by-mass": (f, say) =>
    `${f.subject} “${f.given}” is read as ${say.amount(f.found)}, as for water of 1 kg/L`,
  "hardness-unreadable": (f, say) => `${f.subject} “${f.given}” is no hardness of particles; give ${say.suggestions()}`,
  "particle-beyond-passage": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} does not pass the impeller, ${say.amount(f.limit)}; take a pump with a larger passage or screen the solids`,
  "particle-near-passage": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than a third of the passage of ${say.amount(f.facts.passage)}: hard particles may jam`,
  "casting-taken-as": (f) => `${f.subject} “${f.given}” is taken as ${f.facts.specification}`,
  "casting-from-memory": (f) =>
    `figures of ${f.subject}: ${verificationText(f.facts.verified)}; check ${f.facts.specification} in the edition in force`,
  "property-not-stated": (f) =>
    `${f.subject} of ${f.facts.material} is not stated: ${f.facts.specification} gives no such figure`,
  "hardness-of-condition": (f) =>
    `the figure is that of ${f.subject} ${f.facts.condition}; other conditions: ask for hardness hardened level 1, hardened level 2 or annealed`,
  "permeability-rough": (f) =>
    `permeability of ${f.subject} is rough and depends on heat treatment and ferrite: never sort by magnet`,
  "material-data-missing": (f) => `still to be asked, and nothing is assumed in its place: ${f.facts.missing}`,
  "first-by-part": (f) => `first choice by part, to be confirmed: ${f.facts.choices}`,
  "make-up-contradicts": (f) => `${f.subject} “${f.given}” names something and says nothing else: give one of the two`,
  "no-material-given": (f) =>
    f.facts.missing === ""
      ? "no metal or lining can be named by rules of thumb: ask the maker with exact make-up, concentration and temperature"
      : `no metal or lining can be named: state ${f.facts.missing}`,
  "hydrogen-sulphide-gas": () =>
    `hydrogen sulphide gas kills: ceilings of exposure of 10 ppm (NIOSH) and 20 ppm (OSHA), dangerous to life at 100 ppm, ${NOT_VERIFIED}; local limits may be lower; monitors without a break and no unprotected rescue`,
  "galvanic-pairs": (f, say) =>
    `at ${say.amount(f.found)} of chloride dissimilar metals corrode galvanically, the less noble first (noble to active: passive 316, CD4MCuN, bronze, brass, iron, steel, aluminium, zinc): no small active part (steel bolts, iron wear ring) in a large noble one; fasteners of like metal, or isolating kits; no graphite in gaskets on stainless; a 316 impeller in an iron casing is for fresh water`,
  "wetted-parts-list": () =>
    "rules of thumb for a first choice: list the material of every wetted part (casing, impeller, wear plate, suction cover, sleeve, seal, bolts inside, check valve, float and priming chamber, spools, gaskets, relief valve) and have it confirmed by the maker and a corrosion engineer",

  "ph-neutral": (f) => `pH ${f.facts.pH} is neutral water`,
  "ph-too-low": (f) => `pH ${f.facts.pH} is below ${f.facts.least}: rapid attack`,
  "ph-too-high": (f) => `pH ${f.facts.pH} is above ${f.facts.greatest}, where it serves`,
  "ph-beyond-rule": (f) =>
    `pH ${f.facts.pH} is beyond what a rule of thumb covers (${f.facts.least} to ${f.facts.greatest}): the chemical, its strength and its temperature decide`,
  "ph-near-limit": (f) =>
    `pH ${f.facts.pH} is near the ends of what it stands, ${f.facts.least} to ${f.facts.greatest}`,
  "iron-acid-water": (f) =>
    `at pH ${f.facts.pH}, below 6, loss of metal climbs with velocity and dissolved oxygen: short-term or inhibited duty only`,
  "iron-alkaline-water": (f) => `alkaline water of pH ${f.facts.pH}, above 10`,
  "temperature-stop": (f, say) =>
    `${say.amount(f.found)} is above ${say.amount(f.limit)}: stop and ask for the exact liquid`,
  "aerated-hot": (f, say) => `at ${say.amount(f.found)}, above ${say.amount(f.limit)}, aerated water attacks it faster`,
  "thermal-shock": (f, say) => `at ${say.amount(f.found)}, above ${say.amount(f.limit)}: no thermal shock`,
  "duplex-embrittles": (f, say) =>
    `at ${say.amount(f.found)}, above ${say.amount(f.limit)}, it turns brittle with time`,
  "iron-in-brine": (f, say) =>
    `${say.amount(f.found)} of chloride is salt water, above ${say.amount(f.limit)}: it corrodes fast, fastest where it moves`,
  "iron-graphitic": (f, say) =>
    `${say.amount(f.found)} of chloride is brackish, above ${say.amount(f.limit)}: graphitic corrosion where it stands long`,
  "white-iron-salt": (f, say) =>
    `${say.amount(f.found)} of chloride is above ${say.amount(f.limit)}: the matrix corrodes; ask for experience with this water`,
  "bronze-sea-water": (f, say) =>
    `${say.amount(f.found)} of chloride: clean, flowing sea water to about 4 m/s (13 ft/s) steady, 20 m/s (66 ft/s) for short`,
  "chrome-steel-salt": (f, say) => `${say.amount(f.found)} of chloride is above ${say.amount(f.limit)}: it pits`,
  "stress-cracking": (f, say) =>
    `at ${say.amount(f.found)}, above ${say.amount(f.limit)}, chlorides bring stress corrosion cracking`,
  "duplex-sea-water-cold": (f, say) =>
    `${say.amount(f.found)} of chloride: salt water to ${say.amount(f.limit)} only, flowing, flushed when idle`,
  "oxidiser-316": (f, say) =>
    `oxidiser of ${say.amount(f.found)}; 316 tolerates about ${say.amount(f.limit)} of hypochlorite at most`,
  "oxidiser-lowers": (f, say) => `oxidiser of ${say.amount(f.found)} lowers its limits; the dose must stay known`,
  "chemical-with-care": (f) => `${f.facts.constituent}: with care, by concentration and temperature`,
  "chemical-not-judged": (f) => `${f.facts.constituent}: not judged; ask with concentration and temperature`,
  "chemical-rules-out": (f) => `${f.facts.constituent} rules it out`,
  "wear-none": () => "no solids",
  "wear-light": (f, say) => `solids of ${say.amount(f.found)} by weight, ${particles(f.facts)}: light to moderate wear`,
  "wear-moderate": (f, say) =>
    `solids of ${say.amount(f.found)} by weight, ${particles(f.facts)}: ${wearParts(f.facts)}`,
  "wear-hardness-not-needed": () => "its hardness is not needed for so few or so soft solids",
  "wear-unstated": (f) => `solids are not stated: wear taken at the worst; ${wearParts(f.facts)}`,
  "white-iron-breaks": (f, say) => `particles of ${say.amount(f.found)}, above ${say.amount(f.limit)}, break it`,
  "white-iron-brittle": () =>
    "brittle: no impact, thermal shock or pipe loads; flange pressure limit of casing must be confirmed (liner behind a ductile outer casing); not weldable; above 600 HB only in the hardened state",
  "white-iron-tip-speed": (f, say) =>
    `impeller tip speed within ${say.amount(f.facts.least)} to ${say.amount(f.facts.greatest)}`,
  "grey-iron-brittle": () => "brittle: no yield point; not for shock, freezing or sour pressure parts",
  "bronze-velocity": () =>
    "no ammonia, sulphide or oxidising acid; beware of dissimilar metals; casings to some 4.3 m/s (14 ft/s)",
  "magnet-test": () => "a magnet attracts it as it does iron: never sort by magnet",
  "stainless-stagnant": () =>
    "no stagnant sea water, hydrochloric acid or wet hydrogen sulphide under stress, and no hypochlorite above 5 mg/L",

  "lining-size-missing": (f, say) =>
    `size of the particles is not stated; it must be below ${say.amount(f.found)} and round`,
  "lining-size": (f, say) => `particles of ${say.amount(f.found)} are fine enough where they are round`,
  "lining-too-coarse": (f, say) =>
    `particles of ${say.amount(f.found)} cut it; ${f.limit?.side} ${say.amount(f.limit)}`,
  "lining-tip-speed": (f, say) =>
    `impeller tip speed ${f.limit?.side} about ${say.amount(f.limit)}; no sharp or tramp pieces`,
  "elastomer-within": (f, say) => `${say.amount(f.found)} is within its limit in water, ${say.amount(f.limit)}`,
  "elastomer-near-limit": (f, say) => `${say.amount(f.found)} is above ${say.amount(f.limit)}, near its limit`,
  "elastomer-too-hot": (f, say) => `${say.amount(f.found)} is above its limit in water, ${say.amount(f.limit)}`,
  "elastomer-too-cold": (f, say) => `${say.amount(f.found)} is below its limit, ${say.amount(f.limit)}`,
  "oil-not-ruled-out": () => "any oil or fuel in the liquid rules it out: ask",
  "elastomer-acid": (f) => `pH ${f.facts.pH} is a strong acid`,
  "elastomer-alkali": (f) => `pH ${f.facts.pH} is a strong alkali`,
  "elastomer-good-and-not": (f) => `good for ${f.facts.good}; not for ${f.facts.not}`,
  "seal-clean": () => "clean liquid",
  "seal-hard-on-clean": () => "hard on hard is not needed on clean liquid and runs hotter when dry",
  "seal-abrasive": () => "hard faces for liquid with solids",
  "seal-carbon-wears": () => "solids wear the carbon face",
  "seal-flush": () =>
    "flush with clean liquid at 1 to 2 bar (15 to 29 psi) over the box, or a vortex throat; springs out of the liquid",
  "seal-may-flash": (f, say) =>
    `at ${say.amount(f.found)}, above 80 °C (176 °F), the faces may flash: box pressure at least 1 bar (15 psi) over vapour pressure`,
  "seal-dry-running": () => "for running dry: a second seal outboard, in an oil bath",
  "dry-parts": () => "they do not touch the liquid",
  "dry-parts-spray": () => "spray and vapour count: coat them where they reach",
  "not-judged-state": (f) => `not judged until stated: ${f.facts.decides}; at the worst it may be ruled out`,
  "make-up-plain": () => "what else is in the liquid is not stated: taken as plain water",
  "constituent-taken-as": (f, say) => `${f.subject} is taken as ${rangeOf(f.facts, say)}`,
  "constituent-outside": (f, say) =>
    `${f.subject} is taken as ${rangeOf(f.facts, say)}; the ${f.facts.outside} stated lies outside: both are judged and the worse counts`,
  "constituent-danger": (f) => `danger to people from ${f.subject}: ${f.facts.danger}; see its safety data sheet`,
  "constituent-hotter": (f, say) =>
    `${say.amount(f.found)} is above ${say.amount(f.limit)}, to which ${f.facts.constituent} is judged`,
  "constituent-stands": (f) => `stands ${f.facts.constituent}`,
  "bronze-brine": (f, say) =>
    `${say.amount(f.found)} of chloride is stronger than sea water, above ${say.amount(f.limit)}`,
  "chlorides-within": (f, say) =>
    `${say.amount(f.found)} of chloride is within ${say.amount(f.limit)}, flowing, at pH ${f.facts.pH} and ${say.amount(f.facts.temperature)}`,
  "chlorides-beyond": (f, say) =>
    `${say.amount(f.found)} of chloride is above ${say.amount(f.limit)} at pH ${f.facts.pH} and ${say.amount(f.facts.temperature)}: it pits`,
  "stainless-too-hot": (f, say) =>
    `${say.amount(f.found)} is above ${say.amount(f.limit)}, to which it is judged with chloride`,
  "duplex-brackish-cold": (f, say) =>
    `${say.amount(f.found)} of chloride: brackish water to ${say.amount(f.limit)} only, flowing`,
  "wear-severe": (f, say) =>
    `solids of ${say.amount(f.found)} by weight, ${particles(f.facts)}: expect rapid wear; ${wearParts(f.facts)}`,
  "seal-hard": () => "hard faces; needed if solids come with the liquid",
  "seal-ph": (f) => `pH ${f.facts.pH} is outside ${f.facts.least} to ${f.facts.greatest}, which the faces stand freely`,
  "plastic-too-hot": (f, say) => `${say.amount(f.found)} is above ${say.amount(f.limit)}: it softens`,
  "metal-not-in-table": (f) => `${f.facts.metal} is not judged by rules of thumb: ask the maker`,
};
