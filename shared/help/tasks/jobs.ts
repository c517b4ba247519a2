import { DISCHARGE, PUMP, SUCTION, SYSTEM } from "../examples/ranges.ts";
import type { Page } from "../html.ts";
import { answerOf, cellOf } from "../worked-call.ts";
import { caution, numbered, para, points, taskPage, worked } from "./told.ts";

const TWO_PUMPS = [PUMP, SYSTEM, null, null, 2, "parallel"] as const;

export const BYPASS: Page = taskPage({
  file: "two-pumps.html",
  title: "A bypass with two pumps",
  summary: "Two running, one standing by: what they give together, and what is left when one stops.",
  words: ["parallel", "standby", "station", "sewage bypass", "n+1"],
  parts: [
    [
      "In the pane",
      numbered(
        "{flow} is that of the whole station.",
        "[[Station]]: {pumpsRunning} `2`, {pumpsStandby} `1`, {arrangement} parallel.",
        "In the lines, the column Share says what a run carries: blank is each pump’s own on the suction and all on the discharge; `1/2` is one of twin hoses; `header` beside the pipe makes it one run.",
        "A check valve of each pump stands in the rows of that pump, not in the common ones.",
        "[[Cases]]: storm and dry flow as rows, with their hours; the worst of all states decides.",
      ),
    ],
    [
      "Two do not give twice one",
      para(
        `On the same two lines one pump gives ${cellOf("OPERATINGPOINT", [PUMP, SYSTEM], 0, "flow")}; two side by side give ${cellOf("OPERATINGPOINT", TWO_PUMPS, 0, "flow")} together, for the friction grows with the flow. Each then runs further left on its curve; one alone runs furthest right, where NPSH and power are decided.`,
      ),
      worked("OPERATINGPOINT", "Where two run side by side", TWO_PUMPS),
      worked("PUMPSTOPS", "What is left when one of the two stops", TWO_PUMPS),
    ],
    [
      "What to look at",
      points(
        "One pump alone: its flow against the end of its curve, its NPSH and its driver’s power. PUMPSTOPS and the pane’s [[Selected pump]] give them.",
        "A curve that droops, or unlike pumps: one may hold another shut. STATIONCURVE shows the curve of the group.",
        "The wet well: volume between the levels by the starts an hour, WORKINGVOLUME and PUMPCYCLE; how deep the bell stands, SUBMERGENCE.",
      ),
      caution(
        "Sewage carries disease and hydrogen sulphide: never enter a wet well or manhole without a permit and an attendant outside.",
      ),
    ],
  ],
});

const HIGH_LIFT_SITE = 6500;

export const HIGH_LIFT: Page = taskPage({
  file: "high-suction-lift.html",
  title: "A high suction lift",
  summary: "How high the pump may stand above the water: by NPSH, by the air pump, by practice, whichever is minimum.",
  words: ["cavitation", "altitude", "lift", "vacuum", "NPSH"],
  parts: [
    [
      "Three limits",
      points(
        `By NPSH at the flow: MAXLIFT. With an NPSHR of 12.2 ft, a margin of 3 ft and 30 ft of 8 in hose at 1,200 US gpm it is ${answerOf("MAXLIFT", [1200, SUCTION, 12.2, 3, 850, "water", 60])} at 850 ft above the sea, and ${answerOf("MAXLIFT", [1200, SUCTION, 12.2, 3, HIGH_LIFT_SITE, "water", 60])} at ${HIGH_LIFT_SITE.toLocaleString("en")} ft.`,
        `By the vacuum of the air pump, and by practice: PRIMINGLIFT. At ${HIGH_LIFT_SITE.toLocaleString("en")} ft a 50 cfm pump is held to ${cellOf("PRIMINGLIFT", [50, null, HIGH_LIFT_SITE], 0, "byPractice")} by practice.`,
        "A pump that primes may still lack NPSH, and one with NPSH to spare may not prime: both must hold.",
      ),
    ],
    [
      "What eats the NPSH",
      points(
        `Altitude: the air presses with ${answerOf("ATMOSPHERE", [0])} at the sea and ${answerOf("ATMOSPHERE", [HIGH_LIFT_SITE])} at ${HIGH_LIFT_SITE.toLocaleString("en")} ft (ATMOSPHERE).`,
        `Heat: water’s vapour pressure is ${answerOf("VAPORPRESSURE", ["water", 60])} at 60 °F and ${answerOf("VAPORPRESSURE", ["water", 120])} at 120 °F (VAPORPRESSURE).`,
        "Flow: NPSHR rises with it, and so do the losses of the suction line. NPSHLIMITFLOW gives the flow at which they meet.",
      ),
      worked("NPSHA", "1,200 US gpm with the pump 12 ft above the water at 850 ft", [
        1200,
        12,
        SUCTION,
        850,
        null,
        "water",
        60,
      ]),
      worked("NPSHLIMITFLOW", "The flow a 16 ft lift allows the pump, with a margin of 3 ft", [
        PUMP,
        16,
        SUCTION,
        3,
        850,
        null,
        "water",
        60,
      ]),
    ],
    [
      "What to do about it",
      points(
        "Shorten and widen the suction line; take elbows and strainers out; keep it rising to the pump without a high point.",
        "Set the pump lower, run it slower, or take one with a lower NPSHR. A pump at or below the water has no lift at all.",
        "In the pane: {npshRequired} until a pump is chosen, then its own curve; {npshMargin} or {service} for the margin. [[Head and NPSH]] shows the maximum lift.",
      ),
      caution("A cavitating pump loses head, pits and may not hold prime. Lay-flat hose collapses under suction."),
    ],
  ],
});

const SLURRY_LINE = [700, "6in sch40", "0.4 mm", 2.65, "9 %"] as const;

export const SLURRY: Page = taskPage({
  file: "slurry.html",
  title: "A slurry",
  summary: "From the solids to the head and power to choose by, and the velocity that keeps them moving.",
  words: ["sand", "tailings", "solids", "derating", "deposition", "wear"],
  parts: [
    [
      "State the solids",
      points(
        "{solids} or {solidsByVolume}, {solidsGravity}, {medianSize}; {coarseSize} and {fines} where they are known. Two of weight, volume and SG fix the third; what contradicts is refused.",
        `20 % of quartz sand by weight is ${answerOf("SOLIDSBYVOLUME", [2.65, "20 %"])} by volume, and the slurry’s specific gravity ${answerOf("SLURRYSG", [2.65, "20 %"])}.`,
        "In a cell the slurry is one text: `water with solids 20 %, SG 2.65, d50 0.4 mm`, wherever a liquid is read.",
      ),
      worked("SLURRYMIXTURE", "Sand of SG 2.65, 20 % by weight, 700 US gpm", [2.65, "20 %", null, null, 700]),
    ],
    [
      "Keep them moving",
      para(
        `Below the deposition velocity a bed forms. It is good to some 30 %, hence a design minimum above it. 0.4 mm sand, 9 % by volume, in 6 in schedule 40: deposition at ${answerOf("DEPOSITIONVELOCITY", SLURRY_LINE.slice(1))}. [The method](method-deposition.html).`,
      ),
      worked("SLURRYLINE", "700 US gpm of that slurry in 6 in schedule 40", SLURRY_LINE),
      points("Judge it at the least flow of the duty, not the maximum. A smaller pipe is faster and loses more head."),
    ],
    [
      "Choose the pump",
      para(
        "A pump keeps only part of its head and efficiency on slurry. The head asked for, over the head ratio, is read on the curve for water; power goes with the specific gravity.",
      ),
      worked("SLURRYDUTY", "105 ft of slurry at 700 US gpm, 14 in impeller, 72 % on water", [
        700,
        105,
        "0.4 mm",
        2.65,
        "9 %",
        null,
        14,
        "72 %",
      ]),
      points(
        "[[Slurry]] in the pane does this for the selected pump; ranking, driver and pressures follow it.",
        "SLURRYCLASS holds head and tip speed against the service class; WETTEDPARTS ranks the metals for the particles.",
        "Start and flush on clear liquid are states of their own: the pump then runs further right.",
      ),
    ],
  ],
});

const SERIES = [
  [
    ["pump", "maximum head", "suction flange", "discharge flange"],
    ["first", 140, "NPS 8", "NPS 6"],
    ["second", 140, "NPS 8", "NPS 6"],
  ],
  5,
  "ductile iron",
  "150",
] as const;

export const SERIES_AND_CLASS: Page = taskPage({
  file: "series-and-flange-class.html",
  title: "Pumps in series and the flange class",
  summary: "What each nozzle and casing has to hold, which class does, and where the next class begins.",
  words: ["stages", "MAWP", "casing", "booster", "rating", "burst"],
  parts: [
    [
      "Pressures add up",
      points(
        "Each pump of a series stands on what the one before it gives. The worst is no flow: the maximum head of every pump against a shut valve, on the maximum suction pressure.",
        `Two pumps of 140 ft with 5 psi at the first suction: ${cellOf("NOZZLEPRESSURE", [5, 140, 1, 2], 0, "discharge")} at the second discharge, the tolerance of the curve counted.`,
        "Stopped, the full line stands on the pumps; a check valve keeps it off, until it fails. NOZZLECLASSES counts each case.",
      ),
      worked("NOZZLECLASSES", "Two equal pumps in series, Class 150 ductile iron", SERIES),
    ],
    [
      "Which class holds",
      points(
        `A class is a name, not a pressure: Class 150 in ductile iron holds ${answerOf("FLANGERATING", ["ductile iron", "Class 150", 70])} at 70 °F and ${answerOf("FLANGERATING", ["ductile iron", "Class 150", 300])} at 300 °F. [The method](method-flange-class.html).`,
        `255 psi at 70 °F requires ${answerOf("FLANGECLASS", ["ductile iron", 255, 70])} although the trade’s 260 psi would pass it: the standard decides.`,
        "The lowest of flange, casing, seal, coupling, hose and pipe governs. State {casingWorkingPressure} from the manufacturer’s sheet, and {otherPart} with {otherPartPressure}.",
      ),
    ],
    [
      "In the pane",
      numbered(
        "[[Station]]: {pumpsRunning} and {arrangement} series.",
        "[[Pressure and flanges]]: {casingMaterial}, {flangeClass}, {casingWorkingPressure}; {stages} where one differs, such as `2: Class 300, casing 500 psi`.",
        "[[Flanges and bolting]]: size, gasket and bolting give a torque ([the method](method-bolt-torque.html)).",
        "Pumps along the line instead of side by side: their level and `after row` in {stages}; BOOSTERS works in cells.",
      ),
      caution(
        "A casing over its pressure bursts. Never rate a casing, hose or pipe by its flange alone; local codes and licensed practice govern.",
      ),
    ],
  ],
});

export const PRIMING: Page = taskPage({
  file: "priming.html",
  title: "Priming",
  summary: "By which method a lifted pump is filled, how long it takes, and how high it can draw.",
  words: ["air pump", "vacuum", "eductor", "dry prime", "foot valve", "self-priming"],
  parts: [
    [
      "In the pane",
      points(
        "[[Priming]]: {airPump} as free air, with what its sheet says: `50 cfm, blank-off 26 inHg, leak 2 cfm`; {casingVolume}.",
        "The picture shows the water rising; the methods are ranked for your lift, line and solids, each with what it needs.",
      ),
    ],
    [
      "How long",
      worked("PRIMETIME", "A 50 cfm air pump on 30 ft of 8 in hose, 12 ft of lift, 25 US gal of casing", [
        SUCTION,
        12,
        50,
        25,
        850,
      ]),
      para("[The method](method-priming.html). Air leaks at hose couplings are the usual reason for a longer time."),
    ],
    [
      "Which method",
      worked("PRIMINGMETHODS", "A lift of 12 ft on raw sewage", [12, SUCTION, "sewage", 850]),
      caution(
        "An eductor works on compressed air: rated hose with whip checks, hearing protection, never a jet at people. Diesel exhaust and enclosed pits kill: measure the air.",
      ),
    ],
  ],
});

export const MATERIALS: Page = taskPage({
  file: "materials.html",
  title: "Materials",
  summary: "What casing, impeller, seal and elastomer stand the liquid, and what has to be asked.",
  words: ["corrosion", "acid", "chloride", "wear", "seal", "elastomer", "stainless"],
  parts: [
    [
      "What to ask",
      points(
        "{pH}, {chlorides}, maximum temperature, {oxidiser}, {makeUp}; of the solids {solidsHardness} and {particleSize} against {freePassage}. What is not stated is not assumed: the verdict stays open and lists it.",
        "What else is in the liquid is typed as words: [constituents](typed-names.html).",
      ),
    ],
    [
      "Read the ranking",
      worked("WETTEDPARTS", "Silty pit water of pH 7.2", [7.2, 77, 80, "0.5 %", "sand", 0.2, 2.5, 0, "nothing else"]),
      worked("MATERIALCHECK", "A ductile iron casing in acid mine water of pH 3", [
        "casing",
        "ductile iron",
        3,
        60,
        350,
        0,
        "soft",
        null,
        null,
        0,
        "acid mine water",
      ]),
      points(
        "These are rules of thumb for a first choice. Ask for the manufacturer’s experience in this liquid, and list the material of every wetted part.",
        "CASTINGS and CASTINGPROPERTY hold strength and hardness with their sources.",
      ),
      caution(
        "Chemicals: take the safety data sheet and the protective equipment it requires before a sample, a seal or a joint is opened.",
      ),
    ],
  ],
});

const FLOWS = [[700], [900], [1100], [1300]];

export const SCHEDULE: Page = taskPage({
  file: "schedule-of-duties.html",
  title: "A schedule of duties in columns",
  summary: "Twenty duties as twenty rows: one formula down a column, and saved duties from a terminal.",
  words: ["spill", "many duties", "column", "batch", "list"],
  parts: [
    [
      "One formula for a column",
      para(
        "Give a column where a function reads a single value and it spills a column of answers; each row is answered or refused by itself. Name the filled rows, `A2:A21`.",
      ),
      worked("FRICTIONHEAD", "Friction of four flows in the same 1,800 ft of 10 in HDPE", [
        FLOWS,
        "10in HDPE DR17",
        1800,
      ]),
      worked("TDH", "Total dynamic head of four flows through the same two lines", [FLOWS, 76, SUCTION, DISCHARGE]),
      para(
        "A column of pipes works alike: `=DUTY.VELOCITY(A2:A21, B2:B21)` takes row by row. A line is a range of its own; where the lines differ, write one formula a row.",
      ),
    ],
    [
      "Several cases of one duty",
      points(
        "[[Cases]] in the pane: storm and dry flow, full and empty sump, other liquids, with their hours; ranking and verdicts take the worst.",
        "Two ways to lay the line: write both duties as sheets of their own and compare their results.",
      ),
    ],
    [
      "Duties without the pane",
      points(
        "“Save duty” gives a file; `npm run duties` answers any number of them, one a line, with figures, verdicts and findings. The README says how.",
      ),
    ],
  ],
});
