import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { SUMP_EXAMPLES, sumpNamed } from "../../../src/sump/described-sump.ts";
import { constantPlan, type PlanRow, type SumpPlan, tabledPlan } from "../../../src/sump/sump-plan.ts";
import { amountOf } from "../../cells/amount-cell.ts";
import { type Cell, isAbsent } from "../../cells/cell.ts";
import { type ReadColumns, type RowValues, readTable } from "../../tables/read-table.ts";
import { quantity, type RangeParameter, type Reading } from "../parameter.ts";

const COLUMNS = {
  level: { name: "level", also: ["elevation", "water level"], quantity: "elevation", needed: true },
  area: { name: "area", also: ["plan area", "surface"], quantity: "planArea", atLeast: 0 },
  length: { name: "length", also: ["long side"], quantity: "length", atLeast: 0 },
  width: { name: "width", also: ["breadth", "short side"], quantity: "length", atLeast: 0 },
  diameter: { name: "diameter", also: ["dia"], quantity: "length", atLeast: 0 },
} as const satisfies ReadColumns;

/** The sump: one plan for all levels, or a table of what it measures at its levels. */
export const sump: RangeParameter<SumpPlan> = {
  takes: "range",
  about:
    "The sump: its plan as an area, “15 ft x 12 ft” or “10 ft diameter”; or rows from the lowest level up, headed level and area, or level, length and width, or level and diameter",
  example: '180, "15 ft x 12 ft", or a range headed level | area',
  read: (cells, reading) => {
    const filled = cells.flat().filter((cell) => !isAbsent(cell));
    return filled.length === 1 ? onePlan(filled[0] as Cell, reading) : tabled(cells, reading);
  },
};

function onePlan(cell: Cell, { name, units }: Reading): Result<SumpPlan> {
  if (typeof cell === "string" && /\p{L}|²/u.test(cell)) return sumpNamed(cell, name);
  return andThen(amountOf(cell, "planArea", units.planArea, name), (area) =>
    area > 0 ? succeed(constantPlan(area)) : unreadable(name, String(cell)),
  );
}

function tabled(cells: readonly (readonly Cell[])[], { name, units }: Reading): Result<SumpPlan> {
  // A level of 0 and an area of 0 are figures: only a row without any is passed over.
  const isBlankRow = (row: readonly Cell[]): boolean => row.every(isAbsent);
  return andThen(
    readTable(cells, COLUMNS, { place: { name }, units, order: ["level", "area"], isBlankRow }),
    ({ rows }) => {
      const plan = rows.map(({ values }) => planRow(values));
      const labels = rows.map(({ label }) => label);
      const bad = plan.findIndex((row) => row === undefined || row.factor !== plan[0]?.factor);
      if (bad >= 0)
        return unreadable(
          labels[bad] ?? name,
          "a row with neither area, diameter nor length and width, or one of another kind",
        );
      return tabledPlan(plan as readonly PlanRow[], name, labels);
    },
  );
}

function planRow({ level, area, length, width, diameter }: RowValues<typeof COLUMNS>): PlanRow | undefined {
  if (length !== undefined && width !== undefined) return { level, sides: [length, width], factor: 1 };
  if (diameter !== undefined) return { level, sides: [diameter, diameter], factor: Math.PI / 4 };
  return area === undefined ? undefined : { level, sides: [area, 1], factor: 1 };
}

function unreadable(subject: string, given: string): Result<never> {
  return fail([{ code: "sump-unreadable", kind: "error", subject, given, suggestions: SUMP_EXAMPLES }]);
}

export const startLevel = quantity("elevation", {
  about: "Level the sump is drawn down from",
  example: '12, or "3.5 m"',
  range: "a level the sump is known at",
});

export const endLevel = quantity("elevation", {
  about: "Level the sump is drawn down to",
  example: '4, or "1.2 m"',
  range: "below the start level",
});
