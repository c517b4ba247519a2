import { enginePowerMethod } from "../../../src/drive/engine-site-power.ts";
import { lifeCycleCostMethod } from "../../../src/estimate/life-cycle-cost.ts";
import { frictionFactorMethod } from "../../../src/pipework/friction-factor.ts";
import { hazenWilliamsMethod } from "../../../src/pipework/hazen-williams.ts";
import { pipeFrictionMethod } from "../../../src/pipework/pipe-friction.ts";
import { boltTorqueMethod } from "../../../src/pressure/bolt-torque.ts";
import { flangeCheckMethod } from "../../../src/pressure/flange-check.ts";
import { surgeMethod } from "../../../src/pressure/surge.ts";
import { waveSpeedMethod } from "../../../src/pressure/wave-speed.ts";
import { primeTimeMethod } from "../../../src/priming/prime-time.ts";
import { runningPumpMethod } from "../../../src/pump/running-pump.ts";
import { viscousCorrectionMethod } from "../../../src/pump/viscous-correction.ts";
import { depositionVelocityMethod } from "../../../src/slurry/deposition-velocity.ts";
import { pumpDeratingMethod } from "../../../src/slurry/pump-derating.ts";
import { npshAvailableMethod } from "../../../src/suction/npsh-available.ts";
import { PUMP, SUCTION } from "../examples/ranges.ts";
import type { Page } from "../html.ts";
import { numberOf, pointsOf } from "../worked-call.ts";
import { methodPage } from "./method-page.ts";

function steps(from: number, to: number, count = 24): readonly number[] {
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

function decades(from: number, to: number, count = 40): readonly number[] {
  return steps(Math.log10(from), Math.log10(to), count).map((power) => 10 ** power);
}

/** A line of a figure: a function of one number. */
function line(name: string, xs: readonly number[], of: (x: number) => number) {
  return { name, points: xs.map((x) => [x, of(x)] as const) };
}

const FRICTION = methodPage({
  name: "friction",
  title: "Pipe friction: Darcy–Weisbach and Colebrook",
  summary: "Head lost in a pipe by any liquid.",
  words: ["head loss", "Moody", "roughness", "Reynolds"],
  equations: [
    "h_f = f frac{L}{D} frac{V^2}{2 g}",
    'frac{1}{sqrt{f}} = - 2 log_{10} ( frac{ε}{3.7 D} + frac{2.51}{"Re" sqrt{f}} )',
    '"Re" = frac{V D}{ν}',
  ],
  where: [
    ["h_f", "friction head, of the liquid pumped"],
    ["f", "Darcy friction factor, four times the Fanning factor: FRICTIONFACTOR; 64/Re in laminar flow"],
    ["L, D", "length and true bore of the pipe"],
    ["V", "mean velocity, flow over the area of the bore"],
    ["ε", "roughness of the wall"],
    ["ν", "kinematic viscosity of the liquid"],
  ],
  range: [
    "Laminar up to a Reynolds number of 2000, turbulent from 4000; between them the factor goes straight from one to the other, with a Check.",
    "A corrugated hose multiplies the factor; fittings are not in it: FITTINGHEAD and LINEHEAD.",
  ],
  of: [pipeFrictionMethod, frictionFactorMethod],
  figure: {
    caption: "Darcy friction factor over the Reynolds number, for three relative roughnesses, by FRICTIONFACTOR",
    x: { label: "Reynolds number", isLog: true },
    y: { label: "friction factor", from: 0 },
    lines: [0.01, 0.001, 0.00001].map((rough) =>
      line(`ε/D ${rough}`, decades(600, 1e8, 60), (re) => numberOf("FRICTIONFACTOR", [re, rough])),
    ),
  },
  functions: ["FRICTIONHEAD", "FRICTIONFACTOR", "REYNOLDS", "LINEHEAD", "TDH"],
});

const HAZEN = methodPage({
  name: "hazen-williams",
  title: "Pipe friction: Hazen–Williams",
  summary: "Head lost by cold water, by the C of the pipe.",
  words: ["C factor", "head loss"],
  equations: ["V = 1.318 C R^{0.63} S^{0.54}", "h_f = L S", "R = frac{D}{4}"],
  where: [
    ["V", "mean velocity, ft/s"],
    ["C", "coefficient of the pipe: some 150 new plastic, 130 new steel, 100 old steel"],
    ["R", "hydraulic radius, ft"],
    ["S", "friction head over length"],
  ],
  range: ["Water near 15 °C (60 °F) alone; any other liquid goes by [Darcy–Weisbach](method-friction.html)."],
  of: [hazenWilliamsMethod],
  figure: {
    caption: "Friction in 1,000 ft of 10 in schedule 40 pipe by HAZENHEAD, and by FRICTIONHEAD for new steel",
    x: { label: "flow, US gpm" },
    y: { label: "friction head, ft", from: 0 },
    lines: [
      ...[100, 130, 150].map((c) =>
        line(`C ${c}`, steps(200, 2400), (q) => numberOf("HAZENHEAD", [q, "10in sch40", 1000, c])),
      ),
      line("Darcy, new steel", steps(200, 2400), (q) => numberOf("FRICTIONHEAD", [q, "10in sch40", 1000])),
    ],
  },
  functions: ["HAZENHEAD", "FRICTIONHEAD"],
});

const NPSH = methodPage({
  name: "npsh",
  title: "NPSH available",
  summary: "What pressure is left over the vapour pressure at the pump’s suction.",
  words: ["cavitation", "vapour pressure", "suction lift"],
  equations: ['"NPSHA" = frac{p_s - p_v}{ρ g} - ( z_p - z_s ) - h_{L,s}'],
  where: [
    ["p_s", "absolute pressure on the liquid’s surface: the atmosphere at the site’s altitude plus any gauge pressure"],
    ["p_v", "vapour pressure of the liquid at its temperature: VAPORPRESSURE"],
    ["ρ", "density of the liquid"],
    ["z_p − z_s", "suction lift: the pump’s datum above the liquid; negative for flooded suction"],
    ["h_L,s", "head lost in the suction line at the flow"],
  ],
  range: [
    "Ask at the maximum flow, the lowest level and the hottest liquid. The velocity head at the inlet belongs to NPSHA and is not taken off.",
  ],
  of: [npshAvailableMethod],
  figure: {
    caption: "NPSHA with 12 ft of lift through 30 ft of 8 in hose, by NPSHA, and what an invented pump requires",
    x: { label: "flow, US gpm" },
    y: { label: "NPSH, ft", from: 0 },
    lines: [
      ...[0, 6500].map((altitude) =>
        line(`available, ${altitude} ft`, steps(300, 1800), (q) =>
          numberOf("NPSHA", [q, 12, SUCTION, altitude, null, "water", 60]),
        ),
      ),
      line("required", steps(300, 1800), (q) => numberOf("PUMPNPSHR", [PUMP, q])),
    ],
  },
  functions: ["NPSHA", "MAXLIFT", "NPSHMARGIN", "NPSHLIMITFLOW"],
});

const AFFINITY = methodPage({
  name: "affinity",
  title: "Affinity laws",
  summary: "A pump’s curve at another speed or with a trimmed impeller.",
  words: ["speed", "trim", "VFD", "similarity"],
  equations: [
    "frac{Q_2}{Q_1} = frac{n_2 D_2}{n_1 D_1}",
    "frac{H_2}{H_1} = { ( frac{n_2 D_2}{n_1 D_1} ) }^2",
    "frac{P_2}{P_1} = { ( frac{n_2 D_2}{n_1 D_1} ) }^3",
  ],
  where: [
    ["Q, H, P", "flow, head and shaft power at like points of the two curves"],
    ["n", "speed"],
    ["D", "impeller diameter, of a radial impeller; other impellers go by other exponents"],
  ],
  range: [
    "NPSHR goes with the square of the speed faster and with its power 1.5 slower: Dutybook’s own choice; measured exponents lie between 1.3 and 2.",
    "A trim is not similar: the rule cuts too much. Take the manufacturer’s trimmed curve where there is one.",
    "With static head the flow does not simply go with the speed: SPEEDRATIO finds the speed that meets a duty.",
  ],
  of: [runningPumpMethod],
  figure: {
    caption: "Head of an invented pump at three speeds, by PUMPHEAD",
    x: { label: "flow, US gpm", from: 0 },
    y: { label: "head, ft", from: 0 },
    lines: [1, 0.9, 0.8].map((ratio) =>
      line(`${ratio * 100} % speed`, steps(0, 1800 * ratio), (q) =>
        numberOf("PUMPHEAD", [PUMP, Math.min(q, 1799.999 * ratio), ratio]),
      ),
    ),
  },
  functions: ["SPEEDRATIO", "TRIMRATIO", "SPEEDTABLE", "PUMPHEAD", "MINSPEED"],
});

const VISCOUS = methodPage({
  name: "viscosity",
  title: "Correction for viscous liquids",
  summary: "What a thick liquid takes off flow, head and efficiency.",
  words: ["oil", "viscous", "cSt", "HI 9.6.7"],
  equations: [
    "B = 16.5 frac{ν^{0.5} H^{0.0625}}{Q^{0.375} N^{0.25}}",
    "C_Q = C_H = 2.71^{- 0.165 {(log_{10} B)}^{3.15}}",
    "C_η = B^{- 0.0547 B^{0.69}}",
  ],
  where: [
    ["B", "how much the viscosity tells in this pump"],
    ["ν", "kinematic viscosity, cSt"],
    ["Q, H, N", "best efficiency flow in m³/h, head of one stage there in m, speed in rpm, with water"],
    ["C_Q, C_H, C_η", "flow, head and efficiency on the liquid over those on water, at best efficiency"],
  ],
  range: [
    "Newtonian liquids and radial impellers. B up to 1 changes nothing; B of 40 and more is refused.",
    "The equations are not yet verified against the standard.",
  ],
  of: [viscousCorrectionMethod],
  figure: {
    caption: "Head of an invented pump on water and on two oils of SG 0.88, by PUMPHEAD and VISCOUSCURVE",
    x: { label: "flow, US gpm", from: 0 },
    y: { label: "head, ft", from: 0 },
    lines: [
      line("water", steps(0, 1799), (q) => numberOf("PUMPHEAD", [PUMP, q])),
      ...["120 cSt", "600 cSt"].map((viscosity) => ({
        name: viscosity,
        points: pointsOf("VISCOUSCURVE", [PUMP, 1750, viscosity, 0.88], "flow", "head"),
      })),
    ],
  },
  functions: ["VISCOUSCURVE", "VISCOSITY", "PUMPMAXPOWER"],
});

const DEPOSITION = methodPage({
  name: "deposition",
  title: "Deposition velocity of a slurry",
  summary: "Below it solids settle in the pipe.",
  words: ["settling", "bed", "Durand", "critical velocity"],
  equations: [
    "V_L = F_L sqrt{2 g D ( S - 1 )}",
    "F_L = 1.3 C_v^{0.125} ( 1 - exp ( - 6.9 d_{50} ) )",
    "V_{L} >= 9.0 ( g ν ( S - 1 ) )^{0.37} ( frac{D}{ν} )^{0.11}",
  ],
  where: [
    ["V_L", "deposition velocity; the greater of the two is taken"],
    ["S", "specific gravity of the solids over that of the liquid"],
    ["C_v", "solids by volume"],
    ["d50", "median size, mm"],
    ["D, ν", "bore of the pipe, kinematic viscosity of the liquid"],
  ],
  range: [
    "Good to some 30 %: the fits of Wasp and of Oroskar and Turian stand beside it in the notes, and the design minimum lies above all of it.",
    "Fits were made between 2 % and 15 % by volume. Upward slopes of 15° to 60° ask for up to 30 % more.",
  ],
  of: [depositionVelocityMethod],
  figure: {
    caption: "Deposition velocity of 9 % sand by volume in three pipes, by DEPOSITIONVELOCITY",
    x: { label: "d50, mm" },
    y: { label: "velocity, ft/s", from: 0 },
    lines: ["6in sch40", "8in sch40", "12in sch40"].map((pipe) =>
      line(pipe, steps(0.1, 1.5), (d50) => numberOf("DEPOSITIONVELOCITY", [pipe, `${d50} mm`, 2.65, "9 %"])),
    ),
  },
  functions: ["DEPOSITIONVELOCITY", "SLURRYLINE", "SETTLINGVELOCITY"],
});

const DERATING = methodPage({
  name: "slurry-derating",
  title: "Derating of a pump on slurry",
  summary: "What solids take off head and efficiency.",
  words: ["head ratio", "efficiency ratio", "Cave"],
  equations: [
    "1 - H_r = 0.0385 ( S - 1 ) ( 1 + frac{4}{S} ) C_w ln ( frac{d_{50}}{0.0227} ) ( 1 - X )^2",
    "H_w = frac{H_m}{H_r}",
  ],
  where: [
    ["H_r", "head on slurry over head on water, each of the liquid pumped; the efficiency ratio is taken equal to it"],
    ["S", "specific gravity of the solids"],
    ["C_w", "solids by weight"],
    ["d50", "median size, mm"],
    ["X", "share of the solids below 75 µm"],
    ["H_w, H_m", "head to read on the curve for water, head of slurry asked for"],
  ],
  range: [
    "Tests scatter by 0.1 to either side. Refused below 0.0227 mm, where the slurry is one liquid, and where the ratio comes out below 0.5.",
  ],
  of: [pumpDeratingMethod],
  figure: {
    caption: "Head ratio of a 14 in impeller on sand, by SLURRYDERATE",
    x: { label: "solids by volume, %", from: 0 },
    y: { label: "head ratio" },
    lines: ["0.2 mm", "0.5 mm", "1 mm"].map((d50) => ({
      name: d50,
      points: steps(1, 20).map(
        (share) =>
          [
            share,
            pointsOf("SLURRYDERATE", [14, d50, 2.65, `${share} %`], "headRatio", "headRatio")[0]?.[0] as number,
          ] as const,
      ),
    })),
  },
  functions: ["SLURRYDERATE", "SLURRYDUTY", "ASPUMPED"],
});

const FLANGES = methodPage({
  name: "flange-class",
  title: "Flange class and rating",
  summary: "Which class holds a pressure, by material and temperature.",
  words: ["PN", "Class 150", "rating", "B16.5", "EN 1092"],
  equations: ["p <= p_r ( t )"],
  where: [
    ["p", "maximum working pressure at the flange, gauge"],
    ["p_r", "rating of the class in that material, from the standard’s table: FLANGERATING"],
    ["t", "temperature of the metal, taken as that of the liquid"],
  ],
  range: [
    "Between two temperatures of the table straight, rounded down to 5 psi or 0.1 bar; outside the table no rating.",
    "US reads the psi and °F table, SI and METRIC the bar and °C table: two tables of the standard, not one converted.",
    "A flange rating is not the working pressure of the pump: the lowest of flange, casing, seal, hose and pipe governs.",
  ],
  of: [flangeCheckMethod],
  figure: {
    caption: "Ratings of Class 150 over temperature, by FLANGERATING",
    x: { label: "temperature, °F" },
    y: { label: "rating, psig", from: 0 },
    lines: ["ductile iron", "carbon steel", "316"].map((material) =>
      line(material, steps(70, 400), (t) => numberOf("FLANGERATING", [material, "Class 150", t])),
    ),
  },
  functions: ["FLANGECLASS", "FLANGERATING", "FLANGECHECK", "NOZZLECLASSES"],
});

const TORQUE = methodPage({
  name: "bolt-torque",
  title: "Bolt torque of a flanged joint",
  summary: "The load that holds pressure and gasket, and the torque that gives it.",
  words: ["gasket", "stud", "tightening", "nut factor"],
  equations: ["T = K D F", "W_p = frac{π}{4} G^2 P + 2 b π G m P", "W_s = π b G y"],
  where: [
    ["T", "torque of one bolt"],
    ["K", "nut factor, by finish and lubricant"],
    ["D, F", "nominal diameter of the bolt, load of one bolt"],
    ["W_p, W_s", "load of all bolts to hold the pressure P, and to seat the gasket"],
    ["G, b", "diameter of the gasket’s reaction, its effective width"],
    ["m, y", "factors of the gasket material"],
  ],
  range: [
    "The stress taken is the minimum that still holds the test pressure where the tightening comes out low by its scatter; no torque is given where class, gasket or flange does not stand it.",
    "A torque is a way to a load, good to 30 % with a hand wrench: tighten crosswise in steps, by a written procedure.",
  ],
  of: [boltTorqueMethod],
  figure: {
    caption: "Torque on the bolts of Class 150 steel flanges at 150 psi with a fibre gasket, by BOLTTORQUE",
    x: { label: "nut factor K" },
    y: { label: "torque, lbf·ft", from: 0 },
    lines: ["4", "6", "8"].map((size) => ({
      name: `NPS ${size}`,
      points: steps(0.12, 0.3, 9).map(
        (k) =>
          [
            k,
            pointsOf(
              "BOLTTORQUE",
              [size, "Class 150", 150, "fibre 1/16 in", "carbon steel", "A193 B7", k],
              "torque",
              "torque",
            )[0]?.[0] as number,
          ] as const,
      ),
    })),
  },
  functions: ["BOLTTORQUE", "STUDLENGTH", "FLANGEDIMENSIONS"],
});

const ENGINE = methodPage({
  name: "engine-derating",
  title: "Derating of engines",
  summary: "What altitude and hot air take off an engine’s rating.",
  words: ["altitude", "diesel", "turbocharged", "ISO 3046", "motor derating"],
  equations: [
    "P_x = α P_r",
    "α = k - 0.7 ( 1 - k ) ( frac{1}{η_m} - 1 )",
    "k = { ( frac{p_x - a φ_x p_{sx}}{p_r - a φ_r p_{sr}} ) }^m { ( frac{T_r}{T_x} ) }^n { ( frac{T_{cr}}{T_{cx}} ) }^q",
  ],
  where: [
    ["P_x, P_r", "power on site and rated; never more than rated"],
    ["η_m", "mechanical efficiency, 0.80"],
    ["p, T", "pressure and absolute temperature of the air, on site (x) and of the rating (r)"],
    ["φ p_s", "pressure of the water vapour in the air"],
    ["T_c", "temperature of the charge-air coolant"],
    ["m, n, q", "exponents, by how the engine draws its air"],
  ],
  range: [
    "The manufacturer’s curve decides: turbocharged engines often keep full power to 1,500 m or more.",
    "A motor on the mains loses by altitude and heat too: MOTORDATA counts it.",
  ],
  of: [enginePowerMethod],
  figure: {
    caption: "Power of a 100 hp engine at 95 °F, by ENGINESITEPOWER",
    x: { label: "altitude, ft", from: 0 },
    y: { label: "power, hp", from: 0 },
    lines: ["natural", "turbo"].map((aspiration) =>
      line(aspiration, steps(0, 10000), (z) => numberOf("ENGINESITEPOWER", [100, z, 95, aspiration])),
    ),
  },
  functions: ["ENGINESITEPOWER", "ENGINELOAD", "MOTORDATA"],
});

const PRIME = methodPage({
  name: "priming",
  title: "Time to prime",
  summary: "How the water rises in a suction line as an air pump empties it.",
  words: ["vacuum", "air pump", "dry prime"],
  equations: ["frac{d ( p V )}{d t} = - p_a F ( p )", "p = p_a - ρ g h", "F = F_0 frac{p - p_l}{p_a - p_l}"],
  where: [
    ["p, V", "absolute pressure and volume of the air over the water"],
    ["p_a", "atmospheric pressure at the site"],
    ["h", "height the water has risen"],
    ["F, F_0", "free air drawn at that pressure, and with an open inlet"],
    ["p_l", "blank-off, which goes with the atmosphere"],
  ],
  range: [
    "The line is taken to rise straight to the pump and run level from there, the longest time of any line without a high point.",
    "Add 5 to 20 s for separator and priming valve (common practice, no source). Leaks make it longer.",
  ],
  of: [primeTimeMethod],
  figure: {
    caption: "Height of the water with a 50 cfm air pump on 30 ft of 8 in hose at 850 ft, by PRIMECURVE",
    x: { label: "time, s", from: 0 },
    y: { label: "height, ft", from: 0 },
    lines: [8, 12, 16].map((lift) => ({
      name: `lift ${lift} ft`,
      points: pointsOf("PRIMECURVE", [SUCTION, lift, 50, 25, 850], "time", "height"),
    })),
  },
  functions: ["PRIMETIME", "PRIMECURVE", "PRIMINGLIFT"],
});

const SURGE = methodPage({
  name: "surge",
  title: "Surge: Joukowsky",
  summary: "The pressure rise of a flow that stops at once.",
  words: ["water hammer", "transient", "wave speed"],
  equations: ["Δp = ρ a ΔV", "a = frac{sqrt{K / ρ}}{sqrt{1 + frac{K D}{E e}}}"],
  where: [
    ["Δp", "pressure rise"],
    ["ΔV", "change of velocity: the whole velocity where the flow stops, more where it turns round"],
    ["a", "wave speed in the line, free to lengthen"],
    ["ρ, K", "density and bulk modulus of the liquid"],
    ["D, e, E", "bore, wall and elastic modulus of the pipe"],
  ],
  range: [
    "All of it arises only where the flow changes within 2 L/a, L the length of the line. A screen, no transient study.",
  ],
  of: [surgeMethod, waveSpeedMethod],
  figure: {
    caption: "Surge of a flow that stops at once in three 10 in pipes, by SURGE",
    x: { label: "velocity, ft/s", from: 0 },
    y: { label: "pressure rise, psi", from: 0 },
    lines: ["10in sch40", "10in ductile iron cl350", "10in HDPE DR17 PE4710"].map((pipe) =>
      line(pipe.replace("10in ", "").replace(" PE4710", ""), steps(0, 10), (v) => numberOf("SURGE", [v, pipe])),
    ),
  },
  functions: ["SURGE", "LINESURGE", "PIPERATING"],
});

const LIFE_CYCLE = methodPage({
  name: "life-cycle-cost",
  title: "Life-cycle cost",
  summary: "First cost and the yearly costs at their present value.",
  words: ["present value", "discount", "NPV", "LCC"],
  equations: ["C = C_0 + C_y frac{1 - ( 1 + i )^{- n}}{i}", "i = frac{1 + r}{1 + p} - 1"],
  where: [
    ["C_0", "first cost: purchase, installation, commissioning"],
    ["C_y", "cost of a year at today’s prices: energy, operation, upkeep, downtime"],
    ["n", "years in service"],
    ["i", "real rate; r the discount rate, p the yearly rise of prices"],
  ],
  range: [
    "A bare 5 and 0.05 are both read as 5 %; `5 %` says so.",
    "A cost at the end goes into the first cost at its present value.",
  ],
  of: [lifeCycleCostMethod],
  figure: {
    caption: "Present value of 46,000 to buy and 21,000 a year, by LIFECYCLECOST",
    x: { label: "years", from: 0 },
    y: { label: "present value", from: 0 },
    lines: [0, 5, 10].map((rate) =>
      line(`${rate} %`, steps(1, 20, 19), (n) => numberOf("LIFECYCLECOST", [46000, 21000, n, `${rate} %`])),
    ),
  },
  functions: ["LIFECYCLECOST", "ENERGYCOST", "FUELCOST"],
});

/** The main methods, in the order of the job. */
export const METHOD_PAGES: readonly Page[] = [
  FRICTION,
  HAZEN,
  NPSH,
  AFFINITY,
  VISCOUS,
  DEPOSITION,
  DERATING,
  FLANGES,
  TORQUE,
  ENGINE,
  PRIME,
  SURGE,
  LIFE_CYCLE,
];
