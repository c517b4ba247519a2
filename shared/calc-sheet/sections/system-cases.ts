import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { OPERATINGPOINT } from "../../catalogue/entries/station.ts";
import { growsRougher } from "../../duty/aged-pipe.ts";
import type { Duty, DutyPump, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  type Expression,
  type Handle,
  join,
  product,
  range,
  ratio,
  sum,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type LineTableRow, type PlanItem, spill, type WorkingItem, working } from "../plan.ts";
import {
  type DutyState,
  dutyCases,
  firstOnSystem,
  isStation,
  recordOf,
  type StateCurve,
  systemOf,
} from "./duty-cases.ts";
import { hasLevels, hasShares, shareWith } from "./line-shares.ts";
import { LINES } from "./lines.ts";
import { PUMP } from "./pump.ts";
import { stationHeadCurves } from "./station-curve.ts";
import { stationAtDuty, stationPointOf, stationRows, stationWorkings } from "./station-states.ts";
import { systemCurveOf } from "./system-curve.ts";

const POINTS = 25;

/** The lines of the states that do not flow through those as stated, in the workings. */
export function lineVariants(duty: Duty): readonly PlanItem[] {
  const others = dutyCases(duty).filter(({ lines }) => lines !== LINES);
  const variants = new Map(others.map((one) => [one.lines.suctionLine.key, one]));
  return [...variants.values()].flatMap((one) => [
    ownLine(one, duty, "suctionLine"),
    ownLine(one, duty, "dischargeLine"),
  ]);
}

/** The systems the duty may be, the pump's curve at the ends of its tolerance, and where they meet, in the workings. */
export function systemCases(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const cases = dutyCases(duty);
  const systems = new Set(cases.map((one) => firstOnSystem(one, duty)));
  const curves = new Map(cases.map(({ curve }) => [curve.table.key, curve]));
  return [
    ...[...systems].map((one) =>
      spill(
        systemOf(one, duty),
        `System, ${one.systemName}`,
        systemCurveOf({ ...one, upTo: one.reach, points: POINTS }),
        POINTS + 1,
      ),
    ),
    ...[...curves.values()].flatMap((curve) => withinTolerance(pump, curve)),
    ...stationWorkings(duty, pump),
    ...stationHeadCurves(duty),
    ...cases.map((one) =>
      isStation(one, duty)
        ? spill(recordOf(one), `Operating point: ${one.words}`, stationPointOf(one, duty), stationRows(duty))
        : spill(recordOf(one), `Operating point: ${one.words}`, operatingPointOf(one, duty, pump)),
    ),
    ...stationAtDuty(duty),
  ];
}

/** The call that finds the operating point of a state. */
export function operatingPointOf(one: DutyState, duty: Duty, { speed }: DutyPump): Call {
  return callOf(OPERATINGPOINT, {
    curve: range(one.curve.table),
    systemCurve: range(systemOf(one, duty)),
    speedRatio: one.speedRatio,
    trimRatio: one.trimRatio,
    numberOfPumps: one.pumps,
    arrangement: FIELD.arrangement,
    SG: one.specificGravity,
    ...(speed !== undefined && { curveSpeed: PUMP.curveSpeed }),
  });
}

/**
 * A line of a state: its pipes as rough as stated for old age, but for those that do not age; its rows with what they
 * carry of the flow of the pumps that run in it.
 */
function ownLine({ lines, roughness, sideBySide, systemName }: DutyState, duty: Duty, line: LineKey): WorkingItem {
  const segments = duty[line];
  const segment = (row: number): DutySegment => segments[row] as DutySegment;
  const as = (of: keyof LineTableRow) => (row: number) => cell(LINES[line], row, of);
  const name = line === "suctionLine" ? "Suction line" : "Discharge line";
  const label = `${name}, ${systemName}`;
  return working<string>(lines[line], label, segments.length, [
    [
      "pipe",
      "pipe",
      roughness === undefined ? as("pipe") : (row) => agedPipe(as("pipe")(row), segment(row), roughness, duty),
    ],
    ["length", "length", as("length")],
    ["fittings", "fittings", as("fittings")],
    ...(hasShares(duty) || hasLevels(duty, line)
      ? [["share", "share", (row: number) => shareWith(duty, sideBySide, segment(row), as("share")(row))] as const]
      : []),
    ...(hasLevels(duty, line) ? [["level", "level", as("level")] as const] : []),
  ]);
}

/** "6in sch40" becomes "6in sch40 rough 0.05 in", and so does "6in sch40 rough 0.002 in". */
function agedPipe(name: Expression, { segment }: DutySegment, roughness: Handle, duty: Duty): Expression {
  const { agedRoughness, unitSet } = duty;
  if (segment === undefined) return name;
  const { pipe } = segment;
  if (agedRoughness !== undefined && !growsRougher(pipe, agedRoughness)) return name;
  const unit = UNIT_SETS[unitSet].size.symbol;
  const before: Expression = { op: "before", text: name, mark: roughnessMark(pipe) };
  return join(before, constant(" rough "), roughness, constant(` ${unit}`));
}

/** What the roughness of a pipe's name begins with: " rough ", or the surface of a measured one, " steel". */
function roughnessMark({ name, family }: { readonly name: string; readonly family: string }): string {
  const surface = family === "measured" ? /^.*\d \S+( .+)$/.exec(name)?.[1] : undefined;
  return surface === undefined || surface.startsWith(" rough") ? " rough " : surface;
}

/** The curve of a pump whose head came out at an end of its tolerance. */
function withinTolerance({ curve: { points } }: DutyPump, { table, drawn, end }: StateCurve): readonly WorkingItem[] {
  if (end === undefined) return [];
  const tolerance = end === "high" ? PUMP.headToleranceUpper : PUMP.headToleranceLower;
  const factor = sum(constant(1), ratio(tolerance, constant(100)));
  const copied = (of: "efficiency" | "npshRequired", label: string): readonly ColumnFacts<typeof of>[] =>
    points.every((point) => point[of] === undefined)
      ? []
      : [[of, label, (row) => (points[row]?.[of] === undefined ? null : cell(drawn, row, of))]];
  const label = `Curve of one pump at its ${end === "high" ? "upper" : "lower"} head tolerance`;
  return [
    working(table, label, points.length, [
      ["flow", "flow", (row) => cell(drawn, row, "flow")],
      ["head", "head", (row) => product(cell(drawn, row, "head"), factor)],
      ...copied("efficiency", "efficiency"),
      ...copied("npshRequired", "NPSHR"),
    ]),
  ];
}
