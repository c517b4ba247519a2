import type { PressureCode } from "../../../src/basis/finding-code.ts";
import type { Say, Words } from "../words.ts";

export const pressureWords: Readonly<Record<PressureCode, Words>> = {
  "class-is-a-designation": (f, say) =>
    `${f.subject} “${f.given}” is read as ${say.fact("name")}: class is a designation, not a pressure, and the rating comes from standard, material and temperature; write “${say.fact("name")}”`,
  "class-by-metric-name": (f, say) =>
    `${f.subject} “${f.given}” is read as ${say.fact("name")}, whose metric name it was; it does not bolt to a PN flange`,
  "class-not-of-material": (f, say) =>
    `${f.given} is no class of ${say.fact("material")} flanges in ${say.fact("standard")}; use ${say.suggestions()}`,
  "material-taken-as": (f, say) => {
    const casing =
      say.fact("isCasing") === "1"
        ? "; pump casings are often of A536, which that standard does not rate: the maker’s working pressure governs"
        : "";
    return `${f.subject} “${f.given}” names no grade and is taken as ${say.fact("grade")}, which ${say.fact("standard")} rates${casing}`;
  },
  "material-not-of-standard": (f, say) =>
    `${f.subject} “${f.given}” is not rated by ${say.fact("standard")}; its figures for ${say.fact("grade")} are used by custom when cold: the maker’s stated working pressure governs`,
  "material-listing-uncertain": (f, say) =>
    `${f.subject} “${f.given}” is not listed in group ${say.fact("group")} in every edition of ${say.fact("standard")}; take the figure as a reference and confirm it`,
  "rating-temperature-assumed": (f, say) =>
    `no ${f.subject} was given; the rating is that of cold metal and holds up to ${say.amount(f.limit)}`,
  "rating-temperature-outside": (f, say) => {
    const cold = f.limit?.side === "at least";
    const sizes =
      say.fact("sizes") === ""
        ? ""
        : ` (${say.fact("sizes")}; state the size where it is another, such as “125 NPS 8”)`;
    const rates = `${say.fact("standard")} rates ${say.fact("material")} ${say.fact("flangeClass")}`;
    const limit =
      say.fact("isOwnLimit") === "1"
        ? `${say.amount(f.limit)}, above which carbon steel turns to graphite in time and is not rated here`
        : `${say.amount(f.limit)}`;
    return `${f.subject} of ${say.amount(f.found)} is ${cold ? "below the lowest" : "above the highest"} temperature at which ${rates}, ${limit}${sizes}`;
  },
  "rating-converted": (_, say) =>
    `${say.fact("standard")} is held here in ${say.fact("printed")} alone; the figure is converted`,
  "rating-not-verified": (_, say) =>
    `the rating of ${say.fact("standard")} ${say.fact("flangeClass")}, ${say.fact("group")}, is ${say.fact("howVerified")}; check it against the standard before it decides anything`,
  "rating-by-size": (f, say) =>
    say.fact("other") === ""
      ? `${say.fact("flangeClass")} in this iron is rated for ${say.fact("sizes")} only`
      : `grey iron is rated by size and none was given, so the figure for ${say.fact("sizes")} is used, ${say.amount(f.found)}; for ${say.fact("other")} it is ${say.fact("otherRating")}: where a class is given, state the size after it, such as “125 NPS 8”`,
  "rating-size-outside": (f, say) =>
    `${f.given} is outside the sizes for which ${say.fact("standard")} rates ${say.fact("flangeClass")} in this material: ${say.fact("sizes")}`,
  "grey-iron-flange": () =>
    "grey iron is brittle: no shock, controlled bolting, flat face to flat face with a full-face gasket",
  "flange-is-not-casing": () =>
    "a flange rating is not the working pressure of the pump: the lowest of flange, casing, shaft seal, coupling, hose and pipe governs; follow local codes and licensed practice",
  "pressure-above-rating": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above the ${say.fact("standard")} rating of ${say.fact("flangeClass")}, ${say.amount(f.limit)}`,
  "rating-nearly-used": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} uses ${say.fact("used")} of the rating, ${say.amount(f.limit)}`,
  "trade-figure-compared": (_, say) => {
    const way = say.fact("way") === "equal" ? "equal to" : `${say.fact("difference")} ${say.fact("way")}`;
    return `check line: the trade figure of ${say.fact("figure")} for ${say.fact("of")} is ${way} the ${say.fact("rating")} of ${say.fact("standard")} ${say.fact("flangeClass")} here; the standard decides`;
  },
  "trade-figure-would-pass": (f, say) =>
    `the trade figure of ${say.fact("figure")} for ${say.fact("of")} would pass ${say.amount(f.found)}${atNozzle(say)}; the standard does not, which rates ${say.fact("flangeClass")} at ${say.fact("rating")}`,
  "trade-figure-passed": (f, say) =>
    `${say.amount(f.found)}${atNozzle(say)} passes the standard, at ${say.fact("rating")}, and is above the trade figure of ${say.fact("figure")}; expect the buyer to ask`,
  "beyond-highest-class": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is beyond ${say.fact("flangeClass")}, the highest class covered, which ${say.fact("standard")} rates at ${say.amount(f.limit)} here`,
  "head-tolerance-assumed": (f, say) =>
    `no ${f.subject} was given; ${say.amount(f.found)} is added, as for acceptance grade 2B`,
  "head-tolerance-of-grade": (f, say) =>
    `${f.subject} of grade ${f.given} is ${say.amount(f.found)} above the guaranteed head`,
  "percent-as-fraction": (f, say) =>
    `${f.subject} is a percentage: ${f.given} would be less than one per cent; write ${say.suggestions()}`,
  "suction-vacuum-as-zero": (f, say) =>
    `${f.subject} is below atmosphere, ${say.amount(f.found)}; it is taken as 0 for the greatest pressure`,
  "shutoff-below-duty": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the duty head of ${say.amount(f.limit)}; give the greatest head on the curve, wherever it stands`,
  "nozzle-pressure-without-surge": () =>
    "surge is not in these pressures; look at it apart, for flange ratings are without shock",
  "later-stage-suction": (f) =>
    `${f.subject}: shaft seal, casing and hose on the suction side stand under the discharge pressure of the pump before; check their working pressures too`,
  "first-nozzle-beyond": (f, say) => {
    const offered =
      say.fact("offered") === ""
        ? `, by ${say.fact("standard")}`
        : `; ${say.fact("offered")}, as offered, holds ${say.amount(f.limit)} there`;
    return `${f.subject}, at ${say.amount(f.found)}, is the first nozzle to need ${say.fact("needed")}${offered}`;
  },
  "part-pressure-exceeded": (f, say) =>
    `${f.subject}, at ${say.amount(f.found)}, is the first nozzle above what the ${say.fact("part")} may carry, ${say.amount(f.limit)}`,
  "flange-test-pressure": (f, say) =>
    `${f.subject} in ${say.fact("flangeClass")}: hydrostatic test at ${say.amount(f.found)}, 1.5 times the cold rating, rounded up; pump casing and hose to their makers’ own test, with water, vented, and people clear`,
  "series-column-unread": (f, say) =>
    `${f.subject} has no meaning here and is not read; the columns are ${say.suggestions()}`,
  "flange-size-unknown": (f, say) =>
    `${/^(?:NPS|DN) [\d./ -]+$/.test(f.given ?? "") ? f.given : `“${f.given}”`} is not in ${say.fact("standard")}; its sizes are ${say.fact("named")} ${say.fact("sizes")}`,
  "flange-size-twice": (f, say) =>
    `${f.subject} “${f.given}” and the ${say.fact("other")} beside the class differ; give one`,
  "flange-dimensions-not-held": (f, say) =>
    `dimensions of ${f.given} flanges are not held; ${say.suggestions()} are, and no PN flange bolts to one of them`,
  "flange-drilling-alone": (_, say) =>
    `${say.fact("name")} has the drilling of ${say.fact("of")}; its facing, thickness and bolt length are its own and are left out`,
  "flange-mates": (_, say) =>
    `${say.fact("name")} bolts to ${say.fact("name")} and has the drilling of ${say.fact("other")}; it does not bolt to a PN flange; never clamp a raised face against flat-faced grey iron, machine it off and use a full-face gasket`,
  "flange-dimensions-from-memory": () =>
    "thickness, bolt lengths and gasket are from memory, though held against the standard’s own rule; lengths are for two equal raised-face flanges; check the drawing, for iron pump flanges are often flat faced",
  "flange-dimensions-converted": () =>
    "diameter, bolt circle and steel thickness are the standard’s millimetres; the rest is converted from inches, and the bolts are inch bolts",
  "bolts-differ": (f, say) =>
    `${say.fact("bolts")} ${f.subject} were given for a flange drilled for ${say.fact("holes")}`,
  "bolt-stress-above-yield": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is past what ${say.fact("grade")} bolts stand, ${say.amount(f.limit)}`,
  "bolt-stress-above-ceiling": (f, say) => {
    const why =
      say.fact("weakest") === "gasket"
        ? "crushes the gasket"
        : `these bolts in ${say.fact("weakest")} flanges are tightened to`;
    return `${f.subject} of ${say.amount(f.found)} is above the ${say.amount(f.limit)} that ${why}; use another gasket or class, or ask the maker`;
  },
  "bolt-stress-below-needed": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the ${say.amount(f.limit)} that the pressure and the gasket need`,
  "bolt-load-may-fall-short": (f, say) =>
    `a torque wrench that comes out 30 % low leaves a ${f.subject} of ${say.amount(f.found)}, less than the ${say.amount(f.limit)} needed; tighten by measured stretch or ask the maker for the torque`,
  "bolt-stress-held-by-gasket": (f, say) =>
    `${f.subject} is held to ${say.amount(f.found)}, where such bolts are usually pulled to ${say.amount(f.limit)}: more crushes the gasket; ask its maker for the greatest stress`,
  "metric-grade-in-inch-bolts": (f) =>
    `${f.given} is a grade of metric bolts and the holes are for inch bolts, whose areas are used; never mix the two in one joint`,
  "spiral-wound-as-flat-ring": (_, say) => {
    const onIron =
      say.fact("flange") === "steel"
        ? ""
        : `, and its seating stress is too high for most ${say.fact("flange")} flanges; use a soft gasket or ask the maker`;
    return `the winding of a spiral-wound gasket is not held here, so the width of the flat ring is used, which asks for more load than the winding does${onIron}`;
  },
  "full-face-gasket-not-reckoned": () =>
    "flat-faced grey iron takes a full-face soft gasket and bolts of low strength such as A307 B, and never a raised face against it; the load here is that of a flat ring, a full-face gasket asks for more: take its maker’s figure and stop where the gasket seats",
  "gasket-on-raised-face": (f, say) =>
    `the flat ring is taken to bear on a raised face of ${say.amount(f.found)}; iron flanges are often flat faced and then take a full-face gasket, which asks for more load and is not reckoned here; never clamp a raised face against flat-faced grey iron`,
  "joint-figures-from-memory": () =>
    "gasket factors and gasket sizes are from memory, and the stresses that bolts, flanges and gaskets are pulled to are common practice; the pump and gasket makers’ torque governs",
  "thread-pitch-needed": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is no bolt of the tables; give its thread pitch too`,
  "bolt-torque-scatter": () =>
    "bolt load by torque wrench scatters by 30 % either way; tighten crosswise at 30, 70 and 100 %, then round until no nut moves, and with a soft gasket again after 4 h; never on a hot joint or one under pressure",
  "nut-factor-far-from-reference": (f, say) =>
    `torque of ${say.amount(f.found)} is far from the ${say.fact("reference")} of the reference table at the same load; check the nut factor`,
  "stud-length-by-parts": () =>
    "two threads are left out past each nut; take the real thicknesses from the drawings and round to a length that is sold",
  "surge-modulus-taken": (f, say) =>
    `${f.subject} of ${say.fact("material")} is taken with an elastic modulus of ${say.amount(f.found)}; ${say.fact("least")} to ${say.fact("greatest")} is found`,
  "surge-rigid-wall": (f) =>
    `the wall of “${f.given}” or what it is made of is not known, so it is taken as rigid: the surge of a real pipe or hose is less; state both, such as “OD 168.3 mm wall 4.5 mm steel”`,
  "surge-liquid-modulus-taken": (f, say) =>
    `${f.subject} “${f.given}” is taken with a bulk modulus of ${say.amount(f.found)}, that of ${say.fact("about")}`,
  "surge-anchored-higher": (f, say) => `in a line anchored throughout ${f.subject} comes to ${say.amount(f.found)}`,
  "surge-is-a-screen": (f, say) =>
    `with a wave speed of ${say.amount(f.found)} this ${f.subject} arises where the flow changes within the time a wave runs to the end of the line and back; add it to the working pressure, and have a transient study made where it matters or the column may part`,
  "wave-speed-unusual": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is unusual; check the units of the wall and the liquid`,
};

/** " at the discharge of stage 2", where the finding says which nozzle it is about. */
function atNozzle(say: Say): string {
  const nozzle = say.fact("nozzle");
  return nozzle === "" ? "" : ` at the ${nozzle}`;
}
