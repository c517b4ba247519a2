import type { Cell } from "../../cells/cell.ts";

/**
 * Shapes pumps that nobody makes, for the samples and the tests. Everything follows from the table below by the rules
 * in this file; nothing is measured and nothing is anybody's.
 *
 *   head        H/H_b = k − (k − 1) x²,  x = Q/Q_b,  k = 1.10 at N_s 500 rising evenly to 1.35 at N_s 2800
 *   efficiency  η/η_b = 2x − x²,  η_b after the chart of attainable efficiency by size and specific speed (from
 *               memory), less 4 to 10 points by family
 *   NPSHR       rising with x², from the suction specific speed given
 *   other speed Q ∝ n, H ∝ n², NPSHR ∝ n²;  trim Q ∝ D, H ∝ D², one point of efficiency for each 5 % below 90 %
 *   diameter    from a head coefficient g H_b / u² of 0.50 (slurry 0.45)
 */
interface Invented {
  readonly family: "D" | "S" | "W";
  /** in */
  readonly suction: number;
  readonly discharge: number;
  /** At best efficiency, US gpm, ft and rpm, with the largest impeller at the highest speed. */
  readonly flow: number;
  readonly head: number;
  readonly speed: number;
  /** US units. */
  readonly suctionSpecificSpeed: number;
}

const FAMILIES = {
  D: { duty: "dewatering and bypass", lessEfficiency: 0.07, headCoefficient: 0.5, passage: 0.45 },
  S: { duty: "slurry", lessEfficiency: 0.1, headCoefficient: 0.45, passage: 0.35 },
  W: { duty: "process water", lessEfficiency: 0.04, headCoefficient: 0.5, passage: 0.15 },
} as const;

const PUMPS: readonly Invented[] = [
  { family: "D", suction: 2, discharge: 2, flow: 60, head: 45, speed: 1750, suctionSpecificSpeed: 7200 },
  { family: "D", suction: 3, discharge: 3, flow: 250, head: 70, speed: 1750, suctionSpecificSpeed: 8100 },
  { family: "D", suction: 4, discharge: 4, flow: 600, head: 95, speed: 1750, suctionSpecificSpeed: 8600 },
  { family: "D", suction: 4, discharge: 4, flow: 700, head: 180, speed: 2000, suctionSpecificSpeed: 9300 },
  { family: "D", suction: 6, discharge: 6, flow: 1200, head: 110, speed: 1750, suctionSpecificSpeed: 9100 },
  { family: "D", suction: 6, discharge: 6, flow: 1400, head: 220, speed: 1900, suctionSpecificSpeed: 9900 },
  { family: "D", suction: 8, discharge: 8, flow: 2200, head: 105, speed: 1500, suctionSpecificSpeed: 9500 },
  { family: "D", suction: 8, discharge: 8, flow: 2400, head: 240, speed: 1700, suctionSpecificSpeed: 10200 },
  { family: "D", suction: 12, discharge: 10, flow: 3400, head: 130, speed: 1400, suctionSpecificSpeed: 9800 },
  { family: "D", suction: 12, discharge: 12, flow: 5200, head: 120, speed: 1200, suctionSpecificSpeed: 10000 },
  { family: "D", suction: 14, discharge: 12, flow: 6000, head: 200, speed: 1300, suctionSpecificSpeed: 10600 },
  { family: "S", suction: 3, discharge: 2, flow: 80, head: 60, speed: 1500, suctionSpecificSpeed: 7100 },
  { family: "S", suction: 4, discharge: 3, flow: 220, head: 100, speed: 1450, suctionSpecificSpeed: 7300 },
  { family: "S", suction: 6, discharge: 4, flow: 500, head: 110, speed: 1150, suctionSpecificSpeed: 7500 },
  { family: "S", suction: 8, discharge: 6, flow: 1100, head: 120, speed: 900, suctionSpecificSpeed: 7700 },
  { family: "S", suction: 10, discharge: 8, flow: 2000, head: 130, speed: 780, suctionSpecificSpeed: 7900 },
  { family: "S", suction: 12, discharge: 10, flow: 3600, head: 140, speed: 640, suctionSpecificSpeed: 8000 },
  { family: "S", suction: 14, discharge: 12, flow: 5000, head: 100, speed: 520, suctionSpecificSpeed: 8200 },
  { family: "W", suction: 2, discharge: 1.5, flow: 50, head: 22, speed: 1750, suctionSpecificSpeed: 7600 },
  { family: "W", suction: 3, discharge: 2, flow: 120, head: 330, speed: 3550, suctionSpecificSpeed: 8000 },
  { family: "W", suction: 4, discharge: 3, flow: 300, head: 60, speed: 1750, suctionSpecificSpeed: 8700 },
  { family: "W", suction: 4, discharge: 3, flow: 350, head: 420, speed: 3550, suctionSpecificSpeed: 9000 },
  { family: "W", suction: 6, discharge: 4, flow: 650, head: 90, speed: 1750, suctionSpecificSpeed: 9400 },
  { family: "W", suction: 6, discharge: 4, flow: 600, head: 600, speed: 3550, suctionSpecificSpeed: 9600 },
  { family: "W", suction: 8, discharge: 6, flow: 1300, head: 150, speed: 1780, suctionSpecificSpeed: 9700 },
  { family: "W", suction: 6, discharge: 5, flow: 900, head: 480, speed: 2980, suctionSpecificSpeed: 10100 },
  { family: "W", suction: 10, discharge: 8, flow: 2500, head: 170, speed: 1780, suctionSpecificSpeed: 10300 },
  { family: "W", suction: 12, discharge: 10, flow: 4000, head: 200, speed: 1480, suctionSpecificSpeed: 10500 },
  { family: "W", suction: 16, discharge: 14, flow: 6000, head: 75, speed: 890, suctionSpecificSpeed: 9200 },
];

const PUMP_HEADING = [
  "pump",
  "made for",
  "suction size",
  "discharge size",
  "casing material",
  "flange class",
  "maximum working pressure, psig",
  "maximum impeller, in",
  "minimum impeller, in",
  "lowest speed, rpm",
  "highest speed, rpm",
  "solids passage, in",
  "priming",
  "attachments",
  "SAE housing",
  "mark",
] as const;
const CURVE_HEADING = [
  "pump",
  "speed, rpm",
  "impeller diameter, in",
  "flow, US gpm",
  "head, ft",
  "efficiency, %",
  "NPSHR, ft",
  "power, hp",
] as const;

const FLOWS = [0, 0.25, 0.5, 0.7, 0.85, 1, 1.15, 1.3] as const;
const SPEED_STEPS = { D: [1, 0.85, 0.7], S: [1, 0.8], W: [1] } as const;
const TRIM_STEPS = { D: [1], S: [1], W: [1, 0.93, 0.86] } as const;
/** Rows under a heading, as they would stand in a sheet. */
export const INVENTED_PUMP_ROWS: readonly (readonly Cell[])[] = [PUMP_HEADING, ...PUMPS.map(pumpRow)];
export const INVENTED_CURVE_ROWS: readonly (readonly Cell[])[] = [CURVE_HEADING, ...PUMPS.flatMap(curveRows)];

function specificSpeedOf({ flow, head, speed }: Invented): number {
  return (speed * Math.sqrt(flow)) / head ** 0.75;
}

/** in, to the eighth. */
function diameterOf({ family, head, speed }: Invented): number {
  const tipSpeed = Math.sqrt((9.80665 * head * 0.3048) / FAMILIES[family].headCoefficient);
  return Math.round((8 * tipSpeed) / ((Math.PI * speed) / 60) / 0.0254) / 8;
}

function nameOf(pump: Invented): string {
  return `${pump.family}${pump.discharge}-${Math.round(diameterOf(pump))} (invented)`;
}

function shutoffRatio(pump: Invented): number {
  return 1.1 + 0.25 * Math.min(1, Math.max(0, (specificSpeedOf(pump) - 500) / 2300));
}

/** Per cent. */
function bestEfficiency(pump: Invented): number {
  const { family, flow, speed } = pump;
  const attainable = 0.94 - 0.08955 * (flow / speed) ** -0.21333 - 0.29 * Math.log10(2286 / specificSpeedOf(pump)) ** 2;
  return 100 * (attainable - FAMILIES[family].lessEfficiency);
}

function bestPower(pump: Invented): number {
  return (pump.flow * pump.head) / 3960 / (bestEfficiency(pump) / 100);
}

function pumpRow(pump: Invented): readonly (string | number)[] {
  const { family, suction, discharge, head, speed } = pump;
  const { duty, passage } = FAMILIES[family];
  const diameter = diameterOf(pump);
  const isPortable = family === "D";
  // Shutoff head with water, a quarter over, and 30 psi at the suction.
  const pressure = 5 * Math.ceil((head * shutoffRatio(pump) * 0.433 * 1.25 + 30) / 5);
  const isHigh = pressure > 250;
  return [
    nameOf(pump),
    duty,
    `${suction} in`,
    `${discharge} in`,
    isHigh ? "carbon steel" : family === "S" ? "high-chrome iron" : "ductile iron",
    isHigh ? "Class 300" : "Class 150",
    pressure,
    diameter,
    family === "W" ? Math.ceil(8 * diameter * 0.85) / 8 : diameter,
    isPortable ? 10 * Math.round(speed * 0.06) : family === "S" ? 10 * Math.round(speed * 0.07) : speed,
    speed,
    Math.max(0.125, Math.round(8 * passage * discharge) / 8),
    isPortable ? (discharge < 6 ? "compressor and ejector" : "vacuum pump") : "flooded suction",
    isPortable ? "engine; electric motor" : family === "S" ? "electric motor by belt" : "electric motor",
    isPortable ? saeHousing(bestPower(pump)) : "none",
    "invented",
  ];
}

/** A size of flywheel housing engines of about this power have, hp (from memory). */
function saeHousing(power: number): string {
  if (power <= 60) return "SAE 4";
  if (power <= 160) return "SAE 3";
  return power <= 300 ? "SAE 2" : "SAE 1";
}

function curveRows(pump: Invented): readonly (readonly (string | number)[])[] {
  return SPEED_STEPS[pump.family].flatMap((slower) =>
    TRIM_STEPS[pump.family].flatMap((trim) => curve(pump, slower, trim)),
  );
}

function curve(pump: Invented, slower: number, trim: number): readonly (readonly (string | number)[])[] {
  const speed = 10 * Math.round((pump.speed * slower) / 10);
  const full = diameterOf(pump);
  const diameter = Math.round(8 * full * trim) / 8;
  const [speedRatio, trimRatio] = [speed / pump.speed, diameter / full];
  const flow = pump.flow * speedRatio * trimRatio;
  const head = pump.head * speedRatio ** 2 * trimRatio ** 2;
  const efficiency = bestEfficiency(pump) - Math.max(0, (0.9 - trimRatio) / 0.05);
  // The eye is not trimmed: NPSHR goes with the flow of the full impeller.
  const npshRequired = ((pump.speed * Math.sqrt(pump.flow)) / pump.suctionSpecificSpeed) ** (4 / 3) * speedRatio ** 2;
  const ratio = shutoffRatio(pump);
  return FLOWS.map((x) => {
    const q = Number((flow * x).toPrecision(4));
    const share = q / flow;
    const h = rounded(head * (ratio - (ratio - 1) * share ** 2), 2);
    const e = rounded(efficiency * (2 * share - share ** 2), 2);
    const n = rounded(npshRequired * (0.6 + 0.4 * (share * trimRatio) ** 2), 2);
    // At no flow the useful power vanishes with the efficiency; their ratio does not.
    const power = (flow * h * (e > 0 ? share / (e / 100) : 1 / ((2 * efficiency) / 100))) / 3960;
    return [nameOf(pump), speed, diameter, q, h, e, n, Number(power.toPrecision(4))];
  });
}

function rounded(value: number, places: number): number {
  return Number(value.toFixed(places));
}
