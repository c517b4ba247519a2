import type { SourceKey } from "../basis/citation.ts";
import { fromEngine, toEngine, type Unit, unitOf } from "../basis/units.ts";
import { betweenRows } from "../numeric/between-rows.ts";
import type {
  FlangeClassName,
  RatedGroup,
  RatedSizes,
  RatingSystem,
  RatingTable,
  Trust,
} from "../tables/flange-rating-table.ts";
import { ASME_B16_1_RATINGS } from "../tables/flange-ratings-b16-1.ts";
import { ASME_B16_5_RATINGS } from "../tables/flange-ratings-b16-5.ts";
import { ASME_B16_42_RATINGS } from "../tables/flange-ratings-b16-42.ts";
import { EN_1092_1_RATINGS } from "../tables/flange-ratings-en-1092-1.ts";
import { EN_1092_2_RATINGS } from "../tables/flange-ratings-en-1092-2.ts";

/** Rating against temperature of one class of one material, in the printed unit of the table. */
export interface RatingCurve {
  readonly standard: RatingStandard;
  readonly group: RatedGroup;
  readonly flangeClass: FlangeClassName;
  readonly sizes: RatedSizes;
  readonly system: RatingSystem;
  readonly trust: Trust;
  readonly coldTrust?: Trust;
  readonly howVerified: string;
  /** Printed temperature and rating, temperatures ascending. */
  readonly points: readonly (readonly [temperature: number, rating: number])[];
}

export interface RatingStandard {
  readonly source: SourceKey;
  readonly name: string;
  /** Coldest metal the first row holds for, °F and °C. */
  readonly coldest: Readonly<Record<RatingSystem, number>>;
}

const ASME_COLDEST = { US: -20, SI: -29 };
const B16_42: RatingStandard = {
  source: "asme-b16.42",
  name: "ASME B16.42",
  coldest: ASME_COLDEST,
};
const B16_5: RatingStandard = { source: "asme-b16.5", name: "ASME B16.5", coldest: ASME_COLDEST };
const B16_1: RatingStandard = { source: "asme-b16.1", name: "ASME B16.1", coldest: ASME_COLDEST };
const EN_COLDEST = { US: 14, SI: -10 };
const EN_1092_1: RatingStandard = { source: "en-1092-1", name: "EN 1092-1", coldest: EN_COLDEST };
const EN_1092_2: RatingStandard = { source: "en-1092-2", name: "EN 1092-2", coldest: EN_COLDEST };

/** Printed unit, and the step an interpolated rating is rounded down to. */
interface RatingUnits {
  readonly temperature: Unit;
  readonly pressure: Unit;
  readonly step: number;
  /** Step a test pressure is rounded up to. */
  readonly testStep: number;
}

export const RATING_UNITS: Readonly<Record<RatingSystem, RatingUnits>> = {
  US: { temperature: unitOf("°F"), pressure: unitOf("psi"), step: 5, testStep: 25 },
  SI: { temperature: unitOf("°C"), pressure: unitOf("bar"), step: 0.1, testStep: 1 },
};

/** A whole number of steps is one however the division falls. */
const ROUNDING = 1e-9;

function curvesOf(standard: RatingStandard, tables: readonly RatingTable[]): readonly RatingCurve[] {
  return tables.flatMap(({ group, system, columns, rows }) =>
    columns.map((column, i) => ({
      standard,
      group,
      system,
      ...column,
      points: rows.flatMap(([temperature, ...ratings]) => {
        const rating = ratings[i] ?? null;
        return rating === null ? [] : [[temperature, rating] as const];
      }),
    })),
  );
}

/** Every rating the product knows. */
export const RATING_CURVES: readonly RatingCurve[] = [
  ...curvesOf(B16_42, ASME_B16_42_RATINGS),
  ...curvesOf(B16_5, ASME_B16_5_RATINGS),
  ...curvesOf(B16_1, ASME_B16_1_RATINGS),
  ...curvesOf(EN_1092_1, EN_1092_1_RATINGS),
  ...curvesOf(EN_1092_2, EN_1092_2_RATINGS),
];

/** Groups that the product rates no hotter than this, K, although the table goes on: group 1.1 graphitises. */
const HOTTEST: Readonly<Partial<Record<RatedGroup, number>>> = { "1.1": 673.15 };

/** Coldest and hottest metal a curve is read at, K. */
export function temperatureRange({ standard, group, system, points }: RatingCurve): {
  readonly coldest: number;
  readonly hottest: number;
  /** The table goes on, but the material is not rated here any hotter. */
  readonly endsBeforeTable: boolean;
} {
  const { temperature } = RATING_UNITS[system];
  const last = (points.at(-1) as readonly [number, number])[0];
  const endOfTable = toEngine(last, temperature);
  const hottest = Math.min(endOfTable, HOTTEST[group] ?? endOfTable);
  return {
    coldest: toEngine(standard.coldest[system], temperature),
    hottest,
    endsBeforeTable: hottest < endOfTable,
  };
}

/** Hottest metal the first row of a curve holds for, K. */
export function coldLimit({ system, points }: RatingCurve): number {
  return toEngine((points[0] as readonly [number, number])[0], RATING_UNITS[system].temperature);
}

/**
 * Rating at a metal temperature in K within the range of the curve, Pa gauge: as printed at a row, linear between two,
 * rounded down to 5 psi or 0.1 bar.
 */
export function ratingAt({ system, points }: RatingCurve, temperature: number): number {
  const { temperature: degree, pressure, step } = RATING_UNITS[system];
  const wanted = fromEngine(temperature, degree);
  const next = points.findIndex(([t]) => wanted <= t);
  const [t2, p2] = points[next < 0 ? points.length - 1 : next] as readonly [number, number];
  if (next <= 0 || wanted === t2) return toEngine(p2, pressure);
  const steps = Math.floor(betweenRows(points, wanted) / step + ROUNDING);
  return toEngine(Number((steps * step).toFixed(6)), pressure);
}

/** How well the figures are known that a rating at a metal temperature in K is read from. */
export function trustAt(curve: RatingCurve, temperature: number): Trust {
  return temperature <= coldLimit(curve) ? (curve.coldTrust ?? curve.trust) : curve.trust;
}

/** Rating of cold metal, which a hydrostatic test goes by, Pa gauge. */
export function coldRating({ system, points }: RatingCurve): number {
  return toEngine((points[0] as readonly [number, number])[1], RATING_UNITS[system].pressure);
}
