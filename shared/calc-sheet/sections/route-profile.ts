import { printedUnit } from "../../../src/basis/quantities.ts";
import type { VertexState } from "../../../src/route/grade-point.ts";
import type { GRADELINE } from "../../catalogue/entries/grade-line.ts";
import type { ColumnKeyOf } from "../../catalogue/entry.ts";
import type { Duty } from "../../duty/duty.ts";
import { headOf } from "../conversions.ts";
import {
  column,
  constant,
  difference,
  type Expression,
  greatest,
  ifText,
  least,
  part,
  product,
  ratio,
  sum,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ChartsItem, type PlanItem, type SeriesFacts, type WorkingItem, working } from "../plan.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { isRated, type PipeRun, pipeRuns, ratingOf } from "./pipe-runs.ts";

type Grade = TableOf<ColumnKeyOf<typeof GRADELINE>>;

/** The line along its chainage, two rows a run: its start and its end. */
export const PROFILE = tableOf("routeProfile", {
  chainage: "length",
  level: "elevation",
  grade: "elevation",
  vacuum: "elevation",
  rating: "elevation",
});

/** The points of the line as a table, and as a chart along the chainage. */
export function profile(duty: Duty, grade: Grade): readonly PlanItem[] {
  const runs = pipeRuns(duty).filter(({ line }) => line === "dischargeLine");
  const places = Array.from({ length: runs.length + 1 }, (_, row) => row);
  return [
    profileTable(duty, runs, grade),
    {
      kind: "table",
      key: "routePoints",
      heading: "along the line, running full at the duty flow",
      columns: [
        { key: "chainage", label: "chainage", quantity: "length" },
        { key: "elevation", label: "level", quantity: "elevation" },
        { key: "hydraulicGrade", label: "grade line", quantity: "elevation" },
        { key: "pressure", label: "pressure", quantity: "gaugePressure" },
        { key: "remark", label: "vacuum" },
      ],
      rows: places.map((row) => ({
        label: row === 0 ? "start" : `end of run ${row}`,
        cells: [
          ...(["chainage", "elevation", "hydraulicGrade", "pressure"] as const).map((of) => part(grade, of, row)),
          shortly(part(grade, "remark", row)),
        ],
      })),
    },
    charts(duty, runs),
  ];
}

/** What the grade line says of a place, as short as its column. */
const SHORT: Readonly<Partial<Record<VertexState, string>>> = {
  "": "–",
  "below atmosphere": "yes",
  "siphon too high": "too high",
  "air release": "air out",
  "lay-flat under vacuum": "collapses",
  "column separation": "separates",
};

function shortly(remark: Expression): Expression {
  return Object.entries(SHORT).reduce<Expression>(
    (otherwise, [state, words]) => ifText(remark, state, constant(words), otherwise),
    remark,
  );
}

function profileTable(duty: Duty, runs: readonly PipeRun[], grade: Grade): WorkingItem {
  const place = (row: number): number => Math.ceil(row / 2);
  const run = (row: number): PipeRun => runs[Math.floor(row / 2)] as PipeRun;
  const level = (row: number): Expression => part(grade, "elevation", place(row));
  return working(PROFILE, "The line along its chainage", 2 * runs.length, [
    ["chainage", "chainage", (row) => part(grade, "chainage", place(row))],
    ["level", "level of the pipe", level],
    ["grade", "grade line", (row) => part(grade, "hydraulicGrade", place(row))],
    ["vacuum", "minimum grade for a siphon", (row) => difference(level(row), siphonHeight(duty))],
    ...(runs.some((one) => isRated(duty, one))
      ? [
          [
            "rating",
            "rating as a grade",
            (row: number) => (isRated(duty, run(row)) ? sum(level(row), ratingHead(duty, run(row))) : null),
          ] as const,
        ]
      : []),
  ]);
}

function ratingHead({ unitSet }: Duty, run: PipeRun): Expression {
  return headOf(part(ratingOf(run), "rating"), LIQUID_FIGURES.density, unitSet);
}

/** How far the pipe may stand over its grade line: by the height rule, and by the least pressure. */
function siphonHeight({ unitSet }: Duty): Expression {
  const lost = ratio(product(greatest(FIELD.altitude, constant(0)), FIELD.siphonHeightLoss), constant(1000));
  const air = difference(LIQUID_FIGURES.atmosphere, FIELD.siphonPressure);
  return least(difference(FIELD.siphonHeight, lost), headOf(air, LIQUID_FIGURES.density, unitSet));
}

const INK = { level: "#3B2F2F", grade: "#0B5A5E", vacuum: "#8A6D1F", rating: "#C2410C" } as const;

/** The line with its grade and the vacuum it may come to; beside it the ratings, which stand far over both. */
function charts(duty: Duty, runs: readonly PipeRun[]): ChartsItem {
  const units = duty.unitSet;
  const titles = {
    xTitle: `chainage, ${printedUnit("length", units)}`,
    yTitle: `level, ${printedUnit("elevation", units)}`,
  };
  const series = (name: string, of: keyof typeof INK, dashed = false): SeriesFacts => ({
    name,
    x: column(PROFILE, "chainage"),
    y: column(PROFILE, of),
    color: INK[of],
    ...(dashed && { dashed }),
  });
  const [pipe, grade] = [series("pipe", "level"), series("grade line, running full", "grade")];
  const vacuum = series("minimum grade for a siphon", "vacuum", true);
  const route = { title: "Route", ...titles, series: [pipe, grade, vacuum] };
  const rating = { title: "Rating as a grade", ...titles, series: [pipe, grade, series("rating", "rating", true)] };
  return { kind: "charts", charts: runs.some((one) => isRated(duty, one)) ? [route, rating] : [route] };
}
