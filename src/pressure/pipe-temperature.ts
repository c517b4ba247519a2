import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { betweenRows } from "../numeric/between-rows.ts";
import type { RatingRule } from "../pipework/pipe-make.ts";
import { PLASTIC_PIPE_TEMPERATURE } from "../tables/plastic-pipe-temperature.ts";

type Rows = readonly (readonly [temperature: number, factor: number])[];

interface Derating {
  readonly rows: Rows;
  readonly degree: "°C" | "°F";
  readonly between: "straight lines" | "step";
}

const { PE_BANDS, PE_ISO, PVC, PVC_U, LAY_FLAT, RUBBER } = PLASTIC_PIPE_TEMPERATURE;
const PVC_INCH: Derating = { rows: PVC, degree: "°F", between: "straight lines" };
const THERMOPLASTIC: Derating = { rows: LAY_FLAT, degree: "°C", between: "straight lines" };

const RUBBER_HOSE: Derating = { rows: RUBBER, degree: "°C", between: "straight lines" };

const DERATINGS: Readonly<Partial<Record<RatingRule, Derating>>> = {
  "ASTM F714": { rows: PE_BANDS, degree: "°F", between: "step" },
  "ISO 4427": { rows: PE_ISO, degree: "°C", between: "straight lines" },
  "ASTM D1785": PVC_INCH,
  "ASTM D2241": PVC_INCH,
  "AWWA C900": PVC_INCH,
  "EN ISO 1452": { rows: PVC_U, degree: "°C", between: "step" },
  hose: THERMOPLASTIC,
  "thermoplastic hose": THERMOPLASTIC,
  "rubber hose": RUBBER_HOSE,
  "lay-flat hose": THERMOPLASTIC,
};

/** Above it the industry's listing of PE 4710 is read, where AWWA M55 refers to the maker, °F. */
const M55_ENDS = 100;

/** From rubber hose or of the rule, what is left of a rating by the wall's temperature [K]. */
export interface TemperatureFactor {
  readonly careful: number;
  readonly atBest: number;
}

/**
 * What the wall's temperature [K] leaves of the rating of pipe or hose; 1 for metal. Hose may be rubber at best.
 * Fails: pipe-too-warm above the last row of its standard.
 * Warns: pipe-warm-ask-maker, polyethylene of inch sizes above 100 °F.
 * Source: AWWA M55, EN 12201-1, ASTM D1785, EN ISO 1452-2, EN ISO 8029.
 */
export function temperatureFactor(rule: RatingRule, temperature: number): Result<TemperatureFactor> {
  const derating = DERATINGS[rule];
  if (derating === undefined) return succeed({ careful: 1, atBest: 1 });
  const { rows, degree, between } = derating;
  const wall = degrees(temperature, degree);
  const [last] = rows.at(-1) as readonly [number, number];
  if (wall > last) {
    const limit = { quantity: "temperature", value: kelvin(last, degree), side: "at most" } as const;
    return fail([
      { code: "pipe-too-warm", kind: "error", subject: "pipe", found: amount("temperature", temperature), limit },
    ]);
  }
  const careful =
    between === "step" ? (rows.find(([to]) => wall <= to) as readonly [number, number])[1] : betweenRows(rows, wall);
  const atBest = rule === "hose" ? betweenRows(RUBBER, wall) : careful;
  return succeed({ careful, atBest }, rule === "ASTM F714" && wall > M55_ENDS ? [askMaker(temperature)] : []);
}

function askMaker(temperature: number): Finding {
  const cites = {
    source: "awwa-m55",
    at: "table 4-6 ends at 100 °F; above, the industry's listing",
    unverified: true,
  } as const;
  return {
    code: "pipe-warm-ask-maker",
    kind: "check",
    subject: "pipe",
    found: amount("temperature", temperature),
    cites,
  };
}

/** Of a wall in K, clear of the dust of conversion: 80 °F is 80. */
export function degrees(temperature: number, degree: "°C" | "°F"): number {
  const celsius = temperature - CELSIUS_ZERO;
  return Number((degree === "°C" ? celsius : celsius * 1.8 + 32).toFixed(6));
}

function kelvin(at: number, degree: "°C" | "°F"): number {
  return CELSIUS_ZERO + (degree === "°C" ? at : (at - 32) / 1.8);
}
