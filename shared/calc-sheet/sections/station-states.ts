import { LINEHEAD } from "../../catalogue/entries/pipe-and-friction.ts";
import { PUMPMAXPOWER } from "../../catalogue/entries/pump-max-power.ts";
import { OPERATINGPOINT } from "../../catalogue/entries/station.ts";
import { NPSHA } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty, DutyOtherPump, DutyPump, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import {
  type Call,
  callOf,
  cell,
  column,
  constant,
  difference,
  type Expression,
  greatest,
  ifNumber,
  part,
  product,
  range,
  ratio,
  spillOf,
  sum,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, spill, type WorkingItem, working } from "../plan.ts";
import { asPumpedPower, lastFlowOnWater, onWaterOf } from "./drawn-curves.ts";
import {
  asStated,
  type DutyState,
  dutyCases,
  isStation,
  leastSystem,
  NOT_GIVEN,
  ofStationPump,
  recordOf,
  systemOf,
} from "./duty-cases.ts";
import { LINES, type LinesOfState } from "./lines.ts";
import { liquidOfDuty, otherLastFlow, otherOnWater } from "./other-curves.ts";
import { otherCells } from "./other-pump-inputs.ts";
import { otherRegions } from "./other-regions.ts";
import { PUMP } from "./pump.ts";
import { systemCurveOf } from "./system-curve.ts";

const POINTS = 25;

/** A row of a line that is every pump's own: it carries the flow of one pump. */
export function isOwnRow({ share }: DutySegment): boolean {
  return share === "each";
}

const LINE = { pipe: null, length: "length", fittings: null } as const;

/** Rows of both lines of a state that are every pump's own, and those that all pumps share. */
function rowsOf(one: DutyState, of: "Own" | "Common"): TableOf<keyof typeof LINE | "share"> {
  return tableOf(`${one.lines.dischargeLine.key}${of}`, { ...LINE, share: null });
}

function systemKey(one: DutyState): string {
  const { staticHead, sourcePressure, deliveryPressure, lines, liquid, reach } = one;
  const cells = [staticHead, sourcePressure, deliveryPressure, lines.dischargeLine, liquid.liquid, liquid.temperature];
  return [...cells, reach].map(({ key }) => key).join("") + summitKey(one);
}

/** Of lines with levels: where they lie, and whether they are taken as full wherever they may be. */
function summitKey({ route, isFull }: DutyState): string {
  return route === undefined ? "" : `${route.siphon.key}${isFull ? "Full" : ""}`;
}

/** Both lines as the header sees them: the rows that are each pump's own lose nothing there. */
function headerLines(one: DutyState): LinesOfState {
  const of = (line: LineKey) => tableOf(`${one.lines[line].key}Header`, { ...LINE, share: null, level: "elevation" });
  return { suctionLine: of("suctionLine"), dischargeLine: of("dischargeLine") };
}

/** Losses of the common rows, the grade they ask for, and losses of each pump's own rows, over the flow. */
const lostIn = (one: DutyState, of: "Own" | "Common") =>
  tableOf(`${systemKey(one)}${of}Lost`, { at: "flow", lost: "head" });
const curveIn = (one: DutyState, of: "Own" | "Common") =>
  tableOf(`${systemKey(one)}${of}Curve`, { flow: "flow", head: "head" });

interface PlacedRow {
  readonly line: LineKey;
  readonly row: number;
}

function placedRows(duty: Duty, of: "Own" | "Common"): readonly PlacedRow[] {
  const isWanted = (one: DutySegment): boolean => (duty.arrangement !== "series" && isOwnRow(one)) === (of === "Own");
  return (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    duty[line].flatMap((one, row) => (isWanted(one) ? [{ line, row }] : [])),
  );
}

/** The curves of all pumps in a state, as one range that OPERATINGPOINT takes. */
const STATION_COLUMNS = {
  pump: null,
  flow: "flow",
  head: "head",
  efficiency: "percent",
  npshRequired: "head",
  speed: "speed",
  speedRatio: null,
  trimRatio: null,
  level: "elevation",
  checkValve: null,
  count: null,
} as const;
function stationOf(one: DutyState, duty: Duty) {
  const stated = asStated(duty);
  const isOnLiquid = duty.otherPumps.every((pump) => one.otherCurve(pump).key === stated.otherCurve(pump).key);
  const isOfDuty = one.speedRatio === PUMP.speedRatio && one.pumps === FIELD.pumpsRunning && isOnLiquid;
  return tableOf(`${one.curve.table.key}${isOfDuty ? "" : one.key}Station`, STATION_COLUMNS);
}

/** Pumps of the station by their row in its record: the chosen one first. */
export function stationNames(duty: Duty): readonly string[] {
  const chosen = duty.pump?.name.trim() ?? "";
  return [chosen === "" ? "selected pump" : chosen, ...duty.otherPumps.map(({ name }) => name)];
}

/** How many pumps run, alike or not; one where nobody can read how many. */
export function pumpsTogether({ pumpsRunning = 1, furtherPumps }: Duty): number {
  return pumpsRunning + furtherPumps;
}

/** The call of a function on the pumps of a state, their common system and the losses of own rows. */
export function stationArguments(one: DutyState, duty: Duty) {
  const alike = { curve: range(one.curve.table), speedRatio: one.speedRatio, trimRatio: one.trimRatio };
  return {
    ...(isStation(one, duty) ? { curve: range(stationOf(one, duty)) } : { ...alike, numberOfPumps: one.pumps }),
    systemCurve: range(curveIn(one, "Common")),
    arrangement: FIELD.arrangement,
    SG: one.specificGravity,
    ...(placedRows(duty, "Own").length > 0 && { ownLosses: range(curveIn(one, "Own")) }),
  };
}

/** Working columns of a station of unlike pumps: its curves, its systems, where they meet; nothing of one kind of pump. */
export function stationWorkings(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const stations = dutyCases(duty).filter((one) => isStation(one, duty));
  // Of pumps alike the rows that are each one's own count where one of them stops.
  const states = stations.length === 0 && pumpsTogether(duty) > 1 ? [leastSystem(duty)] : stations;
  if (states.length === 0) return [];
  const curves = new Map(stations.map((one) => [stationOf(one, duty).key, one]));
  const lines = new Map(states.map((one) => [one.lines.dischargeLine.key, one]));
  const systems = new Map(states.map((one) => [systemKey(one), one]));
  return [
    ...withPower(duty).map((other) => {
      const call = callOf(PUMPMAXPOWER, otherOnWater(other, liquidOfDuty(duty)));
      return spill(maxPowerOf(other.index), `Maximum power of ${other.name}, as on water`, call);
    }),
    ...otherRegions(withPower(duty)),
    ...[...curves.values()].map((one) => stationCurves(duty, pump, one)),
    ...[...lines.values()].flatMap((one) => [lineRows(one, duty, "Own"), lineRows(one, duty, "Common")].flat()),
    ...[...lines.values()].flatMap((one) => (one.route === undefined ? [] : headerRows(one, duty))),
    ...[...systems.values()].flatMap((one) => [
      ...systemTables(one, duty, "Common"),
      ...systemTables(one, duty, "Own"),
    ]),
  ];
}

function stationCurves(duty: Duty, pump: DutyPump, one: DutyState): WorkingItem {
  const { end, table } = one.curve;
  const tolerance = end === "high" ? PUMP.headToleranceUpper : PUMP.headToleranceLower;
  const factor = end === undefined ? [] : [sum(constant(1), ratio(tolerance, constant(100)))];
  const rows = [
    ...pump.curve.points.map((_, row) => ({ pump, row, other: undefined })),
    ...duty.otherPumps.flatMap((other) => other.curve.points.map((_, row) => ({ pump: other, row, other }))),
  ];
  const names = stationNames(duty);
  const figureOf = (index: number, key: "flow" | "head" | "efficiency" | "npshRequired"): Expression | null => {
    const { pump: of, row, other } = rows[index] as (typeof rows)[number];
    if (of.curve.points[row]?.[key] === undefined) return null;
    if (other === undefined) return cell(table, row, key);
    const own = cell(one.otherCurve(other), row, key);
    return key === "head" ? product(own, ...factor) : own;
  };
  const first = (index: number, of: (row: (typeof rows)[number]) => Expression | null): Expression | null => {
    const one = rows[index] as (typeof rows)[number];
    return one.row === 0 ? of(one) : null;
  };
  const given = (key: "efficiency" | "npshRequired"): boolean =>
    rows.some(({ pump: of, row }) => of.curve.points[row]?.[key] !== undefined);
  const facts: readonly ColumnFacts<keyof typeof STATION_COLUMNS>[] = [
    [
      "pump",
      "pump",
      (i) =>
        first(i, ({ other }) =>
          constant(names[other === undefined ? 0 : 1 + duty.otherPumps.indexOf(other)] as string),
        ),
    ],
    ["flow", "flow", (i) => figureOf(i, "flow")],
    ["head", "head", (i) => figureOf(i, "head")],
    ...(given("efficiency") ? [["efficiency", "efficiency", (i: number) => figureOf(i, "efficiency")] as const] : []),
    ...(given("npshRequired") ? [["npshRequired", "NPSHR", (i: number) => figureOf(i, "npshRequired")] as const] : []),
    [
      "speed",
      "speed",
      (i) =>
        first(i, ({ pump: of, other }) =>
          of.speed === undefined ? null : other ? otherCells(other).speed : PUMP.curveSpeed,
        ),
    ],
    [
      "speedRatio",
      "speed ratio",
      (i) => first(i, ({ other }) => (other ? otherCells(other).speedRatio : one.speedRatio)),
    ],
    ["trimRatio", "trim ratio", (i) => first(i, ({ other }) => (other ? otherCells(other).trimRatio : PUMP.trimRatio))],
    ["level", "level", (i) => first(i, ({ other }) => (other ? otherCells(other).level : constant(0)))],
    [
      "checkValve",
      "check valve",
      (i) => first(i, ({ other }) => (other ? otherCells(other).checkValve : constant("yes"))),
    ],
    ["count", "count", (i) => first(i, ({ other }) => (other ? constant(1) : one.pumps))],
  ];
  return working(stationOf(one, duty), "Curves of all pumps of the station", rows.length, facts);
}

/** The call of STATIONCURVE on the pumps of a state. */
export function stationCurveArguments(one: DutyState, duty: Duty) {
  return {
    curve: range(stationOf(one, duty)),
    arrangement: FIELD.arrangement,
    ...(placedRows(duty, "Own").length > 0 && { ownLosses: range(curveIn(one, "Own")) }),
  };
}

/** What the rows that all pumps share ask for at the header, over the flow of all. */
export function headerSystem(one: DutyState): ReturnType<typeof curveIn> {
  return curveIn(one, "Common");
}

/** The system that the pumps drawn meet: of unlike ones that of the rows they share. */
export function drawnSystem(one: DutyState, duty: Duty) {
  return isStation(one, duty) ? headerSystem(one) : systemOf(one, duty);
}

function lineRows(one: DutyState, duty: Duty, of: "Own" | "Common"): readonly WorkingItem[] {
  const rows = placedRows(duty, of);
  if (rows.length === 0) return [];
  const at = (i: number) => rows[i] as PlacedRow;
  const from = (i: number, key: keyof typeof LINE): Expression => cell<string>(one.lines[at(i).line], at(i).row, key);
  const label = of === "Own" ? "Rows that are each pump's own" : "Rows that all pumps share";
  return [
    working(rowsOf(one, of), label, rows.length, [
      ["pipe", "pipe", (i) => from(i, "pipe")],
      ["length", "length", (i) => from(i, "length")],
      ["fittings", "fittings", (i) => from(i, "fittings")],
      ["share", "share", (i) => unknownShare(duty) ?? constant(of === "Own" ? 1 : shareOf(duty, at(i)))],
    ]),
  ];
}

/** What leaves open which rows are each pump's own, in the place of every share. */
function unknownShare(duty: Duty): Expression | undefined {
  if (duty.state.arrangement === "unreadable") return FIELD.arrangement;
  const unknown = (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    duty[line].flatMap(({ share }, row) => (share === undefined ? [cell(LINES[line], row, "share")] : [])),
  );
  return unknown[0];
}

function shareOf(duty: Duty, { line, row }: PlacedRow): number {
  const share = duty[line][row]?.share;
  return typeof share === "number" ? share : 1;
}

/** Share that a row carries so as to lose nothing. */
const NEXT_TO_NOTHING = 1e-6;

function headerRows(one: DutyState, duty: Duty): readonly WorkingItem[] {
  const isOwn = (row: DutySegment): boolean => duty.arrangement !== "series" && isOwnRow(row);
  return (["suctionLine", "dischargeLine"] as const).map((line) => {
    const from = (row: number, key: keyof typeof LINE | "level"): Expression => cell<string>(one.lines[line], row, key);
    const share = (row: number): number =>
      isOwn(duty[line][row] as DutySegment) ? NEXT_TO_NOTHING : shareOf(duty, { line, row });
    const levels: readonly ColumnFacts<string>[] =
      line === "dischargeLine" ? [["level", "level", (row) => from(row, "level")]] : [];
    return working<string>(headerLines(one)[line], "Line as the header of the station sees it", duty[line].length, [
      ["pipe", "pipe", (row) => from(row, "pipe")],
      ["length", "length", (row) => from(row, "length")],
      ["fittings", "fittings", (row) => from(row, "fittings")],
      ["share", "share", (row) => unknownShare(duty) ?? constant(share(row))],
      ...levels,
    ]);
  });
}

function systemTables(one: DutyState, duty: Duty, of: "Own" | "Common"): readonly PlanItem[] {
  if (of === "Common" && one.route !== undefined) {
    const call = systemCurveOf({ ...one, lines: headerLines(one), upTo: one.reach, points: POINTS });
    return [spill(curveIn(one, of), `Station: grade at the header, ${one.systemName}`, call, POINTS + 1)];
  }
  const hasRows = placedRows(duty, of).length > 0;
  if (of === "Own" && !hasRows) return [];
  const reach =
    of === "Own"
      ? greatest(lastFlowOnWater(), ...duty.otherPumps.map((pump) => otherLastFlow(pump, onWaterOf(pump))))
      : one.reach;
  const lost = lostIn(one, of);
  const flow = (row: number): Expression => product(reach, ratio(constant(row), constant(POINTS - 1)));
  const still = of === "Own" ? [] : [one.staticHead, one.pressureHead];
  const words = of === "Own" ? "losses of each pump's own rows" : `grade at the header, ${one.systemName}`;
  return [
    ...(hasRows
      ? [
          working(lost, `Flows, and ${of === "Own" ? "own" : "common"} losses`, POINTS, [
            ["at", "flow", flow],
            [
              "lost",
              "lost",
              { spill: callOf(LINEHEAD, { flow: column(lost, "at"), line: range(rowsOf(one, of)), ...one.liquid }) },
            ],
          ]),
        ]
      : []),
    working(curveIn(one, of), `Station: ${words}`, POINTS, [
      ["flow", "flow", flow],
      ["head", "head", (row) => sum(...still, ...(hasRows ? [cell(lost, row, "lost")] : []))],
    ]),
  ];
}

/** The call that finds the operating point of the station in a state, or against another system. */
export function stationPointOf(one: DutyState, duty: Duty, system?: TableOf): Call {
  return callOf(OPERATINGPOINT, {
    curve: range(stationOf(one, duty)),
    systemCurve: range(system ?? curveIn(one, "Common")),
    arrangement: FIELD.arrangement,
    SG: one.specificGravity,
    ...(placedRows(duty, "Own").length > 0 && { ownLosses: range(curveIn(one, "Own")) }),
  });
}

/** Rows of its record: the headings, the station, and a row a kind of pump. */
export function stationRows(duty: Duty): number {
  return 3 + duty.otherPumps.length;
}

const HELD = tableOf("heldFlow", { flow: "flow", head: "head" });
const HELD_RECORD = { ...recordOf({ key: "heldFlow" }) };
const COMMON_AT_DUTY = tableOf("commonAtDuty", { lost: "head" });

/** A valve that holds the flow asked: no head below it, all there is above; what the pumps hold at the header then. */
export function stationAtDuty(duty: Duty): readonly PlanItem[] {
  const stated = asStated(duty);
  if (!isStation(stated, duty)) return [];
  const hasCommon = placedRows(duty, "Common").length > 0;
  const nearly = [
    constant(0),
    product(FIELD.flow, difference(constant(1), constant(NEARLY))),
    product(FIELD.flow, sum(constant(1), constant(NEARLY))),
  ];
  return [
    working(HELD, "A valve that holds the flow asked", nearly.length, [
      ["flow", "flow", (row) => nearly[row] as Expression],
      ["head", "head", (row) => constant(row === 2 ? ENDLESS : -ENDLESS)],
    ]),
    spill(HELD_RECORD, "Station at the flow asked", stationPointOf(stated, duty, HELD), stationRows(duty)),
    working(COMMON_AT_DUTY, "Common losses at the flow asked", 1, [
      [
        "lost",
        "lost",
        () =>
          hasCommon
            ? callOf(LINEHEAD, { flow: FIELD.flow, line: range(rowsOf(stated, "Common")), ...stated.liquid })
            : constant(0),
      ],
    ]),
  ];
}

const NEARLY = 1e-6;
/** As much head as a system curve may state, in any unit set. */
const ENDLESS = 9000;

/**
 * Head of the station at the flow asked, to be held against total head: what it holds at the header, and the losses of
 * own rows as total head counts them.
 */
export function stationHeadAtDuty(totalHead: Expression, still: readonly Expression[]): Expression {
  const own = difference(totalHead, sum(...still, cell(COMMON_AT_DUTY, 0, "lost")));
  return sum(part(HELD_RECORD, "head"), own);
}

/** Head of one pump of the station at the flow asked, the chosen one first, in head of the liquid pumped. */
export function stationHeadOf(pump: number): Expression {
  return part(HELD_RECORD, "head", pump + 1);
}

const maxPowerOf = (index: number) => spillOf(`otherPump${index + 1}MaxPower`, PUMPMAXPOWER);

/** Greatest power of each further pump over its curve, with the liquid pumped; of those whose curve gives any. */
export function otherGreatestPowers(duty: Duty): readonly Expression[] {
  return withPower(duty).map((other) => asPumpedPower(duty, part(maxPowerOf(other.index), "power")));
}

/** The same of every further pump in its order. */
export function otherPowersOf(duty: Duty): readonly (Expression | undefined)[] {
  const powers = otherGreatestPowers(duty);
  const known = withPower(duty);
  return duty.otherPumps.map((other) => powers[known.indexOf(other)]);
}

function withPower({ otherPumps }: Duty): readonly DutyOtherPump[] {
  return otherPumps.filter(({ curve }) => curve.bestEfficiency !== undefined);
}

/** Named, for the verdict on the driver. */
export function otherPowers(duty: Duty): readonly { readonly name: string; readonly power: Expression }[] {
  const powers = otherGreatestPowers(duty);
  return withPower(duty).map(({ name }, i) => ({ name, power: powers[i] as Expression }));
}

/** What each pump does in each state. */
export const STATION = tableOf("stationStates", {
  flow: "flow",
  head: "head",
  efficiency: "percent",
  shaftPower: "power",
  bestFlowPercent: "percent",
  does: null,
});
/** NPSH of each pump in each state, in the same order. */
export const STATION_NPSH = tableOf("stationNpsh", {
  npshRequired: "head",
  npshAvailable: "head",
  npshMargin: "head",
});

/** The row of a pump of the station in a state. */
export function stationRow(duty: Duty, one: DutyState, pump: number): number {
  const states = dutyCases(duty).filter((other) => isStation(other, duty));
  return states.findIndex(({ key }) => key === one.key) * (1 + duty.otherPumps.length) + pump;
}

/** Whether the NPSH of a pump of the station is that of the source: of all side by side, of the first in series. */
export function drawsFromSource(duty: Duty, pump: number): boolean {
  return pump === 0 || duty.arrangement !== "series";
}

/** What each pump does in each state, as a table. */
export function stationTable(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const states = dutyCases(duty).filter((one) => isStation(one, duty));
  if (states.length === 0) return [];
  const names = stationNames(duty);
  const curves = [pump, ...duty.otherPumps].map(({ curve }) => curve);
  const rows = states.flatMap((one) => names.map((name, i) => ({ one, name, i })));
  const hasNpsh = curves.some(({ npshRequired }) => npshRequired !== undefined);
  const hasEfficiency = curves.some(({ bestEfficiency }) => bestEfficiency !== undefined);
  const suctions = rows.filter(({ i }) => drawsFromSource(duty, i) && curves[i]?.npshRequired !== undefined);
  const of = (
    row: (typeof rows)[number],
    key: Parameters<typeof part<ReturnType<typeof recordOf>["columns"][number]["key"]>>[1],
  ) => part(recordOf(row.one), key, row.i + 1);
  const whereRuns = (row: (typeof rows)[number], figure: Expression): Expression =>
    ifNumber(of(row, "npshRequired"), figure, NOT_GIVEN);
  const ofPower = new Set(["efficiency", "shaftPower", "bestFlowPercent"]);
  const columns = STATION.columns.filter(({ key }) => hasEfficiency || !ofPower.has(key));
  const figureOf = (row: (typeof rows)[number], key: (typeof columns)[number]["key"]): Expression => {
    switch (key) {
      case "efficiency":
        return ifNumber(of(row, "efficiency"), product(of(row, "efficiency"), constant(100)), NOT_GIVEN);
      case "bestFlowPercent":
        return ofStationPump(row.one, "percentOfBestFlow", row.i);
      default:
        return of(row, key);
    }
  };
  const npshOf = (row: (typeof rows)[number], index: number): readonly Expression[] => {
    const isKnown = suctions.includes(row);
    const where = (figure: () => Expression): Expression => (isKnown ? whereRuns(row, figure()) : constant(NOT_GIVEN));
    return [
      of(row, "npshRequired"),
      where(() => npshAvailable(row.one, duty, row.i)),
      where(() => difference(cell(STATION_NPSH, index, "npshAvailable"), of(row, "npshRequired"))),
    ];
  };
  const heading = "state and pump";
  const labelOf = (row: (typeof rows)[number]): string => `${row.one.label}: ${row.name}`;
  return [
    ...suctions.map(({ one, i }) => suctionRows(one, duty, i)),
    { kind: "section", id: "station", text: "What each pump does" },
    {
      kind: "table",
      key: STATION.key,
      heading,
      columns: columns.map((one) => ({ ...one, label: LABELS[one.key] })),
      rows: rows.map((row) => ({ label: labelOf(row), cells: columns.map(({ key }) => figureOf(row, key)) })),
    },
    ...(hasNpsh
      ? [
          {
            kind: "table",
            key: STATION_NPSH.key,
            heading,
            columns: STATION_NPSH.columns.map((one) => ({
              ...one,
              label: NPSH_LABELS[one.key],
              ...(one.key === "npshMargin" && { badBelow: 0 }),
            })),
            rows: rows.map((row, index) => ({ label: labelOf(row), cells: npshOf(row, index) })),
          } as const,
        ]
      : []),
  ];
}

const LABELS = {
  flow: "flow",
  head: "head",
  efficiency: "efficiency",
  shaftPower: "shaft power",
  bestFlowPercent: "of BEP flow",
  does: "what it does",
} as const satisfies Readonly<Record<(typeof STATION)["columns"][number]["key"], string>>;

const NPSH_LABELS = {
  npshRequired: "NPSHR",
  npshAvailable: "NPSHA",
  npshMargin: "NPSH margin",
} as const satisfies Readonly<Record<(typeof STATION_NPSH)["columns"][number]["key"], string>>;

const suctionOf = (one: DutyState, pump: number) => tableOf(`${one.key}Suction${pump}`, { ...LINE, share: null });

/** The suction line as one pump of the station has it: its own rows at its flow, common ones at that of all. */
function suctionRows(one: DutyState, duty: Duty, pump: number): WorkingItem {
  const from = (row: number, key: keyof typeof LINE): Expression => cell<string>(one.lines.suctionLine, row, key);
  const record = recordOf(one);
  const share = (row: number): Expression => {
    const segment = duty.suctionLine[row] as DutySegment;
    if (duty.arrangement === "series" || !isOwnRow(segment)) {
      return unknownShare(duty) ?? constant(shareOf(duty, { line: "suctionLine", row }));
    }
    return ratio(part(record, "flow", pump + 1), part(record, "flow"));
  };
  return working(
    suctionOf(one, pump),
    `Suction of ${stationNames(duty)[pump]}, ${one.words}`,
    duty.suctionLine.length,
    [
      ["pipe", "pipe", (row) => from(row, "pipe")],
      ["length", "length", (row) => from(row, "length")],
      ["fittings", "fittings", (row) => from(row, "fittings")],
      ["share", "share", share],
    ],
  );
}

function npshAvailable(one: DutyState, duty: Duty, pump: number): Call {
  const other = duty.otherPumps[pump - 1];
  return callOf(NPSHA, {
    flow: part(recordOf(one), "flow"),
    suctionLift: other === undefined ? one.suctionLift : difference(one.suctionLift, otherCells(other).level),
    suctionLine: range(suctionOf(one, pump)),
    altitude: one.altitude,
    sourcePressure: one.sourcePressure,
    ...one.liquid,
  });
}
