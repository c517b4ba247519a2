import { NOT_VERIFIED, verificationText } from "../../../src/basis/citation.ts";
import type { PressureFindings, TradeFigureFacts } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const pressureWords: WordsOf<keyof PressureFindings> = {
  "class-is-a-designation": (f) =>
    `${f.subject} “${f.given}” is read as ${f.facts.name}: class is a designation, not a pressure, and the rating comes from standard, material and temperature; write “${f.facts.name}”`,
  "class-by-metric-name": (f) =>
    `${f.subject} “${f.given}” is read as ${f.facts.name}, whose metric name it was; it does not bolt to a PN flange`,
  "class-not-of-material": (f, say) =>
    `${f.given} is no class of ${f.facts.material} flanges in ${f.facts.standard}; use ${say.suggestions()}`,
  "material-not-rated": (f) =>
    `${f.subject} “${f.given}” is not rated by a flange standard held here; state the casing working pressure, as the pump’s maker gives it`,
  "material-taken-as": (f) => {
    const casing = f.facts.isCasing
      ? "; pump casings are often of A536, which that standard does not rate: the maker’s working pressure governs"
      : "";
    return `${f.subject} “${f.given}” names no grade and is taken as ${f.facts.grade}, which ${f.facts.standard} rates${casing}`;
  },
  "material-not-of-standard": (f) =>
    `${f.subject} “${f.given}” is not rated by ${f.facts.standard}; its figures for ${f.facts.grade} are used by custom when cold: the maker’s stated working pressure governs`,
  "material-listing-uncertain": (f) =>
    `${f.subject} “${f.given}” is not listed in group ${f.facts.group} in every edition of ${f.facts.standard}; take the figure as a reference and confirm it`,
  "rating-temperature-assumed": (f, say) =>
    `no ${f.subject} was given; the rating is that of cold metal and holds up to ${say.amount(f.limit)}`,
  "rating-temperature-outside": (f, say) => {
    const cold = f.limit?.side === "at least";
    const sizes =
      f.facts.sizes === undefined ? "" : ` (${f.facts.sizes}; state the size where it is another, such as “125 NPS 8”)`;
    const rates = `${f.facts.standard} rates ${f.facts.material} ${f.facts.flangeClass}`;
    const limit = f.facts.isOwnLimit
      ? `${say.amount(f.limit)}, above which carbon steel turns to graphite in time and is not rated here`
      : `${say.amount(f.limit)}`;
    return `${f.subject} of ${say.amount(f.found)} is ${cold ? "below the lowest" : "above the highest"} temperature at which ${rates}, ${limit}${sizes}`;
  },
  "rating-converted": (f) => `${f.facts.standard} is held here in ${f.facts.printed} alone; the figure is converted`,
  "rating-not-verified": (f) =>
    `the rating of ${f.facts.standard} ${f.facts.flangeClass}, ${f.facts.group}: ${verificationText(f.facts.howVerified)}; check it before it decides anything`,
  "rating-by-size": (f, say) =>
    f.facts.other === undefined
      ? `${f.facts.flangeClass} in this iron is rated for ${f.facts.sizes} only`
      : `grey iron is rated by size and none was given, so the figure for ${f.facts.sizes} is used, ${say.amount(f.found)}; for ${f.facts.other.sizes} it is ${say.amount(f.facts.other.rating)}: where a class is given, state the size after it, such as “125 NPS 8”`,
  "rating-size-outside": (f) =>
    `${f.given} is outside the sizes for which ${f.facts.standard} rates ${f.facts.flangeClass} in this material: ${f.facts.sizes}`,
  "grey-iron-flange": () =>
    "grey iron is brittle: no shock, controlled bolting, flat face to flat face with a full-face gasket",
  "flange-is-not-casing": () =>
    "a flange rating is not the working pressure of the pump: the lowest of flange, casing, shaft seal, coupling, hose and pipe governs; follow local codes and licensed practice",
  "pressure-above-rating": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above the ${f.facts.standard} rating of ${f.facts.flangeClass}, ${say.amount(f.limit)}`,
  "rating-nearly-used": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} uses ${say.amount(f.facts.used)} of the rating, ${say.amount(f.limit)}`,
  "trade-figure-compared": (f, say) => {
    const way = f.facts.way === "equal" ? "equal to" : `${say.amount(f.facts.difference)} ${f.facts.way}`;
    return `check line: the trade figure of ${say.amount(f.facts.figure)} for ${f.facts.of} is ${way} the ${say.amount(f.facts.rating)} of ${f.facts.standard} ${f.facts.flangeClass} here; the standard decides`;
  },
  "trade-figure-would-pass": (f, say) =>
    `the trade figure of ${say.amount(f.facts.figure)} for ${f.facts.of} would pass ${say.amount(f.found)}${atNozzle(f.facts)}; the standard does not, which rates ${f.facts.flangeClass} at ${say.amount(f.facts.rating)}`,
  "trade-figure-passed": (f, say) =>
    `${say.amount(f.found)}${atNozzle(f.facts)} passes the standard, at ${say.amount(f.facts.rating)}, and is above the trade figure of ${say.amount(f.facts.figure)}; expect the buyer to ask`,
  "beyond-highest-class": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is beyond ${f.facts.flangeClass}, the highest class covered, which ${f.facts.standard} rates at ${say.amount(f.limit)} here`,
  "head-tolerance-assumed": (f, say) => {
    const { grade, service, power } = f.facts;
    const why =
      power === undefined
        ? "the widest of the defaults, for the power is not known: state service and power, or the acceptance grade"
        : `${grade} being the default for ${service} at ${say.amount(power)}: state the acceptance grade`;
    return `no ${f.subject} and no acceptance grade was given; ${say.amount(f.found)} is added, ${why}`;
  },
  "head-tolerance-of-grade": (f, say) =>
    `${f.subject} of grade ${f.given} is ${say.amount(f.found)} above the guaranteed head`,
  "suction-vacuum-as-zero": (f, say) =>
    `${f.subject} is under a vacuum of ${say.amount(f.found)}; the pressure there is taken as 0 for the maximum pressure`,
  "column-ends-below": (f) =>
    `the standing level lies below ${f.subject}: no column stands on it when the pumps stop, and 0 is taken`,
  "part-out-of-place": (f) =>
    `${f.subject}: there are no such pumps among the ${f.facts.pumps} of this set, so it is compared with every pressure of its pump; write “between stages 1 and 2”`,
  "suction-pressure-below-source": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is less than source pressure and level give, ${say.amount(f.limit)}, which is used`,
  "highest-source-assumed": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} follows from the source pressure and level given: confirm that these are the highest`,
  "shutoff-below-duty": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the duty head of ${say.amount(f.limit)}; give the maximum head on the curve, wherever it stands`,
  "nozzle-pressure-without-surge": () =>
    "surge is not in these pressures; look at it apart, for flange ratings are without shock",
  "later-stage-suction": (f) =>
    `${f.subject}: shaft seal, casing and hose on the suction side stand under the discharge pressure of the pump before; check their working pressures too`,
  "first-nozzle-beyond": (f, say) => {
    const offered =
      f.facts.offered === undefined
        ? `, by ${f.facts.standard}`
        : `; ${f.facts.offered}, as offered, holds ${say.amount(f.limit)} there`;
    return `${f.subject}, at ${say.amount(f.found)} (${f.facts.case}), is the first nozzle to need ${f.facts.needed}${offered}`;
  },
  "part-pressure-exceeded": (f, say) =>
    `${f.subject}, at ${say.amount(f.found)} (${f.facts.case}), is the first nozzle above what the ${f.facts.part} may carry, ${say.amount(f.limit)}`,
  "flange-test-pressure": (f, say) =>
    `${f.subject} in ${f.facts.flangeClass}: the flange standard allows a test up to ${say.amount(f.found)}, 1.5 times the cold rating, rounded up; that is a ceiling for the joint and no test pressure of the package`,
  "package-test-pressure": (f, say) =>
    `${f.subject}: hydrostatic test at ${say.amount(f.found)}, 1.5 times the lowest working pressure of what is tested together, hose and coupling isolated; with cold water, vented, and people clear`,
  "no-package-test": (f) => `no ${f.subject} is given: ${f.facts.why}`,
  "flange-size-unknown": (f) => {
    const size = /^(?:NPS|DN) [\d./ -]+$/.test(f.given ?? "") ? f.given : `“${f.given}”`;
    const { standard, named, sizes } = f.facts;
    return standard === undefined
      ? `${size} is no flange size; the sizes are ${named} ${sizes}`
      : `${size} is not in ${standard}; its sizes are ${named} ${sizes}`;
  },
  "flange-size-twice": (f) => `${f.subject} “${f.given}” and the ${f.facts.other} beside the class differ; give one`,
  "flange-drilling-alone": (f) =>
    `${f.facts.name} has the drilling of ${f.facts.of}; its facing, thickness and bolt length are its own and are left out`,
  "flange-mates": (f) =>
    `${f.facts.name} bolts to ${f.facts.name} and has the drilling of ${f.facts.other}; it does not bolt to a PN flange; never clamp a raised face against flat-faced grey iron, machine it off and use a full-face gasket`,
  "flange-mates-pn": (f) => {
    const alike = f.facts.others === undefined ? "" : `, and in this size is drilled as ${f.facts.others}`;
    return `${f.facts.name} of EN 1092 bolts to ${f.facts.name} of EN 1092${alike}; it does not bolt to a Class flange, to ${f.facts.name} of AS 4087 or to JIS 10K, whatever looks alike`;
  },
  "flange-holes-differ": (f) =>
    `${f.facts.name} DN65 has eight holes in steel, four by agreement, and usually four in iron, eight by agreement: ask before drilling or ordering bolts`,
  "flange-rim-differs": (f, say) =>
    `ductile-iron pipe and fitting flanges of this size are drilled alike, with an outside diameter of ${say.amount(f.found)}`,
  "flange-thickness-changed": () =>
    "type 11 of this size is thinner in the edition of 2001; measure before ordering bolts",
  "flange-drilling-only": (f) =>
    `${f.facts.name} has its drilling alone in the tables, without a rating; it bolts to ${f.facts.name} only: PN16 of AS 4087 is not PN16 of EN 1092, and a bolt circle that comes out alike is luck`,
  "flange-dimensions-from-memory": (f) =>
    `${f.facts.what}: ${NOT_VERIFIED}; lengths are for two equal raised-face flanges; check the drawing, for iron pump flanges are often flat faced`,
  "flange-dimensions-converted": () =>
    "diameter, bolt circle and steel thickness are the standard’s millimetres; the rest is converted from inches, and the bolts are inch bolts",
  "bolt-grade-assumed": (f) => `no ${f.subject} was given; ${f.facts.grade} is taken`,
  "bolt-grade-taken-as": (f) =>
    `${f.subject} “${f.given}” names no class and is taken as ${f.facts.grade}, a third as strong as class 2; state the class`,
  "gasket-taken-as": (f) => `${f.subject} “${f.given}” is taken as ${f.facts.gasket}`,
  "bolts-short-of-working": (f, say) =>
    `where the tightening comes out low the ${f.subject} seals to ${say.amount(f.found)}, less than the ${say.amount(f.limit)} it works at: take another gasket (fibre, or rubber with a steel core), stronger bolts, or tighten by measured stretch`,
  "bolts-short-of-test": (f, say) =>
    `where the tightening comes out low the ${f.subject} seals to ${say.amount(f.found)}, less than the ${say.amount(f.limit)} of its test: tighten again for the test, or test lower`,
  "bolt-stress-held-by-gasket": (f, say) =>
    `${f.subject} is held to ${say.amount(f.found)}, where such bolts are usually pulled to ${say.amount(f.limit)}: more crushes the gasket; ask its maker for the maximum stress`,
  "metric-grade-in-inch-bolts": (f) =>
    `${f.given} is a grade of metric bolts and the holes are for inch bolts, whose areas are used; never mix the two in one joint`,
  "spiral-wound-as-flat-ring": (f) => {
    const onIron =
      f.facts.flange === "steel"
        ? ""
        : `, and its seating stress is too high for most ${f.facts.flange} flanges; use a soft gasket or ask the maker`;
    return `the winding of a spiral-wound gasket is not in the tables, so the width of the flat ring is used, which requires more load than the winding does${onIron}`;
  },
  "full-face-not-held": (f) =>
    `full-face gaskets are in the tables for Class 125, Class 150 and the PNs, not for ${f.given}; take a ring`,
  "full-face-on-raised-face": (f) =>
    `no ${f.subject}: between raised faces a full-face gasket bears on the raised part alone; take a ring, or have both faces machined flat`,
  "raised-face-on-flat-iron": (f) =>
    f.kind === "limit"
      ? `no ${f.subject}: a raised face against flat grey iron cracks its ear; machine the raised face off and take a full-face gasket`
      : `a raised face against flat ductile iron bends the flange; machine it off and take a full-face gasket`,
  "strong-bolts-on-grey-iron": (f) =>
    `no ${f.subject}: ${f.facts.grade} bolts with a ring gasket can crack grey iron; take a full-face gasket between flat faces, or bolts of low strength such as A307 B`,
  "weak-bolts-on-hard-gasket": (f) =>
    `no ${f.subject}: ${f.facts.grade} bolts are of low strength and take soft gaskets alone; take rubber or fibre, or stronger bolts`,
  "iron-facing-assumed": (f) =>
    `the ${f.subject} of the iron flange are not stated and taken as ${f.facts.taken}; state them, for a raised face against flat grey iron cracks it`,
  "nut-factor-assumed": (f, say) =>
    `the torque is for a ${f.subject} of ${say.amount(f.found)}; nobody stated it, and it may be ${f.facts.low} to ${f.facts.high}`,
  "joint-figures-from-memory": (f) =>
    `gasket ${f.facts.isVerified ? "sizes" : "factors and sizes"}: ${NOT_VERIFIED}; the stresses that bolts, flanges and gaskets are pulled to are common practice; the pump and gasket makers’ torque governs`,
  "thread-pitch-needed": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is no bolt of the tables; give its thread pitch too`,
  "bolt-torque-scatter": (f, say) =>
    `bolt load is taken to come out up to ${say.amount(f.found)} low or high; tighten crosswise at 30, 70 and 100 %, then round until no nut moves, and with a soft gasket again after 4 h; never on a hot joint or one under pressure`,
  "nut-factor-far-from-reference": (f, say) =>
    `torque of ${say.amount(f.found)} is far from the ${say.amount(f.facts.reference)} of the reference table at the same load; check the nut factor`,
  "stud-length-by-parts": () =>
    "two threads are left out past each nut; take the real thicknesses from the drawings and round to a length that is sold",
  "surge-modulus-taken": (f, say) =>
    `${f.subject} of ${f.facts.material} is taken with an elastic modulus of ${say.amount(f.found)}; ${say.amount(f.facts.least)} to ${say.amount(f.facts.greatest)} is found`,
  "surge-rigid-wall": (f) =>
    `the wall of “${f.given}” or what it is made of is not known, so it is taken as rigid: the surge of a real pipe or hose is less; state both, such as “OD 168.3 mm wall 4.5 mm steel”`,
  "surge-liquid-modulus-taken": (f, say) =>
    `${f.subject} “${f.given}” is taken with a bulk modulus of ${say.amount(f.found)}, that of ${f.facts.about}`,
  "surge-anchored-higher": (f, say) => `in a line anchored throughout ${f.subject} comes to ${say.amount(f.found)}`,
  "surge-is-a-screen": (f, say) =>
    `with a wave speed of ${say.amount(f.found)} this ${f.subject} arises where the flow changes within the time a wave runs to the end of the line and back; add it to the working pressure, and have a transient study made where it matters or the column may part`,
  "line-without-length": (f) => `${f.subject} has no length, so it has no time in which a surge could run`,
  "wave-speed-unusual": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is unusual; check the units of the wall and the liquid`,
  "pipe-rating-not-held": (f) =>
    `no standard held here rates “${f.given}”; state the working pressure its maker gives, the lowest of pipe, hose and coupling`,
  "pipe-not-for-pressure": (f) =>
    `“${f.given}” is no pressure pipe: concrete pipe of ASTM C76 flows full under a few feet of head at most; state the working pressure its maker gives, or take pressure pipe (ASTM C361, AWWA C300)`,
  "pipe-rating-assumed": (f) =>
    `of “${f.given}” not all is stated, so it is rated with ${f.facts.assumed}; state what it is`,
  "pipe-specification-mismatch": (f) =>
    `${f.facts.specification} is no specification of “${f.given}”: it is for steel pipe of its own metal`,
  "pipe-too-warm": (f, say) =>
    `the standard of this ${f.subject} gives no rating above ${say.amount(f.limit)}, and its wall is at ${say.amount(f.found)}; take another material or ask the maker`,
  "pipe-warm-ask-maker": (f, say) =>
    `AWWA M55 gives no factor for polyethylene at ${say.amount(f.found)}; that of the industry's listing is taken, ${NOT_VERIFIED}: ask the maker`,
  "pipe-no-wall-left": (f, say) =>
    `corrosion and thread of ${say.amount(f.found)} take all of the minimum wall, ${say.amount(f.limit)}: no wall is left`,
  "pipe-wall-thick": (f, say) =>
    `a wall of ${say.amount(f.found)} is beyond the thin-wall rule, which ends below ${say.amount(f.limit)}, a sixth of the diameter`,
};

/** " at the discharge of stage 2", where the finding says which nozzle it is about. */
function atNozzle({ nozzle }: TradeFigureFacts): string {
  return nozzle === undefined ? "" : ` at the ${nozzle}`;
}
