import type { Citation } from "../basis/citation.ts";
import type { FixedRow } from "./fittings-fixed.ts";

// Fittings of bypass, dewatering, sewage, irrigation and slurry lines. K on the velocity head of the pipe's own bore, with its
// range; any tabled K has a spread of 30 to 50 %. Knife gate and eccentric plug by L/D (K = L/D · f_T), with the range of L/D.
//
// Verified: checks and butterfly by tests of Kalsi and Tullis (1993), mitred bend by Miller (1990), fabricated PVC by Rahmeyer
// (2002), all looked up in an environmental engineering handbook; duckbill checks fall with the flow (papers of Lee and others,
// 1998 and 2001, abstracts looked up); silent check in one public design; the others common practice, no source.

const PRACTICE: Citation = { source: "practice", at: "fittings of bypass, sewage and hose lines" };
const TESTED: Citation = { source: "valve-tests-1993", at: "range of the valves tested" };

function row(
  name: string,
  coefficient: number,
  range: string,
  also: readonly string[] = [],
  cites = PRACTICE,
): FixedRow {
  return { name, also, coefficient, cites, range };
}

export const BASKET_STRAINER = row("basket strainer", 3, "1.5 to 6, clean; half blocked four times as much", [
  "simplex strainer",
  "in-line strainer",
]);

export const TRADE_FITTINGS: readonly FixedRow[] = [
  row("pinch valve", 0.2, "0.05 to 0.5, sleeve as wide as the pipe", ["hose valve", "full-bore sleeve valve"]),
  {
    ...row("duckbill outfall", 3, "1.5 to 6, falling as the flow opens it; the jet is in it, so count no exit", [
      "duckbill",
      "duckbill check",
      "duckbill check outfall",
      "elastomer check valve at outfall",
    ]),
    isExit: true,
  },
  row("duckbill in line", 3, "1 to 6, falling as the flow opens it", [
    "duckbill check in line",
    "in-line elastomer check",
  ]),
  row("ball check", 1.5, "0.7 to 3; a hollow ball lifts from 0.5 m/s (1.6 ft/s), a heavy one from 1.5 m/s (5 ft/s)", [
    "ball check sewage",
    "rolling ball check",
    "ball non-return valve",
  ]),
  row("ball check lift type", 70, "65 to 70, DN15 to 50", ["ball check small bore", "lift ball check"]),
  row("swing check tested", 1, "0.29 to 2.2", [], TESTED),
  row("tilting check tested", 1.2, "0.27 to 2.62", [], TESTED),
  row("dual-plate check tested", 1.32, "1 to 1.8", ["double-door check tested"], TESTED),
  row("silent check", 2.5, "1.5 to 4", ["centre-guided check", "spring check", "centre-guided spring check"]),
  row("butterfly tested", 0.56, "0.2 to 0.6", [], TESTED),
  row("wye", 0.5, "0.3 to 0.5, the split not known", ["lateral", "wye 45", "wye 45 branch", "Y branch", "lateral 45"]),
  row("wye one inlet", 0.33, "0.3 to 0.5", ["lateral run closed", "wye 45 one inlet", "wye run closed"], {
    source: "tp-410",
    at: "45° joining, all the flow in the branch",
  }),
  row("magmeter", 0, "0 to 0.1, full bore", [
    "magnetic flow meter",
    "mag meter",
    "flow meter",
    "flowmeter",
    "magnetic meter",
    "electromagnetic flow meter",
    "full-bore meter",
  ]),
  row("propeller meter", 0.5, "0.3 to 2", ["turbine meter", "turbine flow meter", "propeller flow meter"]),
  row("air valve", 0.1, "0 to 0.1, a tapping on the run", [
    "air release valve",
    "vacuum valve",
    "air vacuum valve",
    "combination air valve",
    "ARV",
  ]),
  BASKET_STRAINER,
  row("Y strainer", 5, "3 to 8", ["wye strainer", "Y-pattern strainer"]),
  row("camlock", 0.1, "0.05 to 0.2 a pair of full bore", [
    "camlock pair",
    "cam lock",
    "cam and groove",
    "cam and groove coupling",
    "camlock coupling",
    "cam coupling",
  ]),
  row("quick-connect steel", 0.05, "0.02 to 0.15; 0.15 where it is angled", [
    "lever coupling",
    "lever ball coupling",
    "quick coupling steel",
    "quick-connect galvanised",
  ]),
  row("quick-connect aluminium", 0.15, "0.1 to 0.3; a C of 130 already holds them", [
    "quick coupling aluminium",
    "hook coupler",
    "hook-latch coupler",
    "band coupler",
  ]),
  row("Storz coupling", 0.15, "0.05 to 0.3", ["Storz"]),
  row("PVC reducer fabricated", 0.4, "0.12 to 0.68 on the small bore", ["PVC fabricated reducer"], {
    source: "rahmeyer-2002",
    at: "fabricated PVC, diameters of 1.33 to 1.5",
  }),
  row("PVC increaser fabricated", 0.6, "0.07 to 1.19 on the small bore", ["PVC fabricated increaser"], {
    source: "rahmeyer-2002",
    at: "fabricated PVC, diameters of 1.33 to 1.5",
  }),
  row("mitre 90 tested", 1.1, "1.1 of one weld; 60° 0.40 to 0.59, 45° 0.35 to 0.44, 30° 0.11 to 0.19", [], {
    source: "miller-1990",
    at: "mitred bends",
  }),
  row("HDPE bend 90 fabricated", 0.35, "0.25 to 0.5, 3 to 5 segments", [
    "HDPE fabricated bend 90",
    "HDPE mitred bend 90",
  ]),
  row("HDPE weld bead", 0.02, "0.01 to 0.04; the usual roughness already holds it", ["butt fusion bead", "weld bead"]),
];

export interface TradeLength {
  readonly name: string;
  readonly also: readonly string[];
  readonly ratio: number;
  readonly range: string;
}

export const TRADE_LENGTHS: readonly TradeLength[] = [
  // By the angle, of the elbow of 45°: half and a quarter of its L/D of 16. From memory: handbooks of bends let the loss fall with the angle.
  {
    name: "elbow 22.5",
    also: ["bend 22.5", "22 1/2 bend", "1/16 bend", "22.5", "22 1/2"],
    ratio: 8,
    range: "L/D 5 to 10, half that of an elbow of 45°",
  },
  {
    name: "elbow 11.25",
    also: ["bend 11.25", "11 1/4 bend", "1/32 bend", "11.25", "11 1/4"],
    ratio: 4,
    range: "L/D 2 to 5, a quarter of that of an elbow of 45°",
  },
  {
    name: "knife gate",
    also: ["knife gate valve", "slide gate", "guillotine", "knife"],
    ratio: 8,
    range: "L/D 5 to 16",
  },
  {
    name: "eccentric plug",
    also: ["eccentric plug valve", "sewage plug valve"],
    ratio: 40,
    range: "L/D 25 to 77",
  },
];
