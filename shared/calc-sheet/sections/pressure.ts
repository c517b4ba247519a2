import { TRADE_FIGURES } from "../../../src/pressure/trade-figure.ts";
import { SERIES_COLUMNS } from "../../catalogue/parameters/series-pumps.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { amountText } from "../../text/words.ts";
import {
  type Call,
  callById,
  constant,
  difference,
  type Expression,
  partAt,
  product,
  rangeAt,
  ratio,
  sum,
  tableCell,
  value,
  verdict,
} from "../expression.ts";
import type { PlanItem, SpillItem, TableItem, WorkingColumn, WorkingItem } from "../plan.ts";
import { SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { remark } from "./package-inputs.ts";
import { clearLiquidOnly } from "./slurry.ts";
import { stated } from "./stated-input.ts";

/** Pressure at every nozzle, running against a shut valve and standing, and the flange class each needs; surge apart. */
export function pressureAndFlanges(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const nozzles = nozzlesOf(pump);
  const call = nozzleCall(duty);
  return [
    { kind: "section", id: "pressure", text: "Pressure and flanges" },
    ...stated(
      duty,
      "greatestSuctionPressure",
      "greatestSpeed",
      "greatestImpeller",
      "standingLevel",
      "casingMaterial",
      "flangeClass",
      "suctionFlange",
      "dischargeFlange",
      "casingWorkingPressure",
    ),
    ...otherPart(duty),
    ...clearLiquidOnly(duty, "Every pressure"),
    ...greatestHead(duty, pump),
    seriesTable(duty, pump),
    nozzleSpill(call, nozzles),
    firstsSoFar(nozzles),
    nozzleTable(duty, nozzles),
    ...verdicts(duty, nozzles),
    ...surge(duty),
    remark("nozzleNotes", "Nozzles and flange class", call),
    remark("surgeNotes", "Surge", SURGE),
  ];
}

interface Nozzle {
  readonly label: string;
  readonly row: number;
}

/** Suction and discharge of each stage, in the order of flow and of the rows that NOZZLECLASSES answers. */
function nozzlesOf({ arrangement, count }: DutyPump): readonly Nozzle[] {
  if (arrangement !== "series" || count === 1) return ["Suction", "Discharge"].map((label, row) => ({ label, row }));
  return Array.from({ length: 2 * count }, (_, row) => ({
    label: `Stage ${Math.floor(row / 2) + 1} ${row % 2 === 0 ? "suction" : "discharge"}`,
    row,
  }));
}

function lastOf(nozzles: readonly Nozzle[]): Nozzle {
  return nozzles.at(-1) as Nozzle;
}

/** A part that is named without its pressure is said, not passed over. */
function otherPart(duty: Duty): readonly PlanItem[] {
  const { otherPart: name, otherPartPressure: pressure } = duty;
  if (name !== undefined && pressure === undefined) {
    return [statement(`What the ${name} may carry is not stated, so it is not held against the nozzle pressures.`)];
  }
  return stated(duty, "otherPart", "otherPartPressure");
}

function statement(text: string): PlanItem {
  return { kind: "statement", text };
}

const TOP: Expression = { op: "columnGreatest", key: "pumpCurve", column: "head", otherwise: "not given" };
const AS_IT_RUNS = "Anywhere on its curve as it runs, at zero flow or not.";

/** Greatest head of one pump, and what raises it above that of the curve as it runs. */
function greatestHead(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { greatestSpeed, greatestImpeller } = duty;
  const asItRuns = product(TOP, ...square(value("speedRatio")), ...square(value("trimRatio")));
  const raises: readonly Raise[] = [
    {
      key: "greatestSpeedRatio",
      label: "Greatest over running speed",
      greatest: "greatestSpeed",
      running: "runningSpeed",
      stated: greatestSpeed,
      run: pump.speed && pump.speed * pump.speedRatio,
      what: "speed",
      why: "An engine's high idle or a drive's top frequency",
    },
    {
      key: "greatestTrimRatio",
      label: "Greatest over fitted impeller",
      greatest: "greatestImpeller",
      running: "runningDiameter",
      stated: greatestImpeller,
      run: pump.impellerDiameter && pump.impellerDiameter * pump.trimRatio,
      what: "impeller diameter",
      why: "The largest the casing takes, fitted later",
    },
  ];
  const counted = raises.filter(({ stated, run }) => stated !== undefined && run !== undefined);
  const greatest = (expression: Expression, how: string): PlanItem => ({
    kind: "result",
    key: "greatestHead",
    label: "Greatest head of one pump",
    quantity: "head",
    expression,
    how,
  });
  return [
    ...(counted.length === 0
      ? [greatest(asItRuns, AS_IT_RUNS)]
      : [
          {
            kind: "result",
            key: "topOfCurve",
            label: "Highest head as it runs",
            quantity: "head",
            expression: asItRuns,
            how: AS_IT_RUNS,
          } as const,
          ...counted.map(raised),
          greatest(
            product(value("topOfCurve"), ...counted.flatMap(({ key }) => square(value(key)))),
            "Highest head as it runs times the square of each ratio.",
          ),
        ]),
    ...raises.flatMap(notCounted),
    ...shutoffUnknown(pump),
  ];
}

interface Raise {
  readonly key: string;
  readonly label: string;
  /** Keys of the stated greatest and of what runs. */
  readonly greatest: string;
  readonly running: string;
  readonly stated: number | undefined;
  readonly run: number | undefined;
  readonly what: string;
  readonly why: string;
}

function square(of: Expression): readonly [Expression, Expression] {
  return [of, of];
}

/** No less than 1: what runs is itself within the greatest. */
function raised({ key, label, greatest, running, why }: Raise): PlanItem {
  const over: Expression = { op: "greatest", terms: [constant(1), ratio(value(greatest), value(running))] };
  return {
    kind: "result",
    key,
    label,
    quantity: "ratio",
    expression: over,
    how: `${why}; at least 1.`,
  };
}

function notCounted({ stated, run, what }: Raise): readonly PlanItem[] {
  if (stated === undefined) return [];
  if (run === undefined) {
    return [
      statement(
        `A greatest ${what} is stated, but not the ${what} its curve was drawn at, so it is NOT counted in the greatest head: state it with the pump.`,
      ),
    ];
  }
  if (stated >= run) return [];
  return [
    statement(`The greatest ${what} stated is below the ${what} run, which is taken instead: one of them is wrong.`),
  ];
}

/** A curve that begins above zero flow, highest there, does not say how high it goes. */
function shutoffUnknown({ curve }: DutyPump): readonly PlanItem[] {
  const [first] = curve.points;
  if (first === undefined || first.flow === 0) return [];
  if (curve.points.some(({ head }) => head > first.head)) return [];
  return [
    statement(
      "The curve begins above zero flow with its greatest head there, so the head at shutoff is not known and the true pressures are HIGHER than those below: add the point at zero flow.",
    ),
  ];
}

const SERIES = "seriesPumps";

/** What NOZZLECLASSES takes: all stages alike, at the level of the pump. */
function seriesTable(duty: Duty, pump: DutyPump): WorkingItem {
  const { casingWorkingPressure, otherPartPressure, otherPart: name, suctionFlange, dischargeFlange } = duty;
  const stages = nozzlesOf(pump).length / 2;
  const heading = (key: keyof typeof SERIES_COLUMNS, cells: (row: number) => Expression): WorkingColumn => {
    const { name: label, quantity } = SERIES_COLUMNS[key];
    return { key, label, ...(quantity === undefined ? {} : { quantity }), cells };
  };
  const same = (key: keyof typeof SERIES_COLUMNS, of: string): WorkingColumn => heading(key, () => value(of));
  return {
    kind: "working",
    key: SERIES,
    label: "Pumps in the order of flow, at their greatest head",
    rows: stages,
    columns: [
      heading("pump", (row) => constant(stages === 1 ? "the pump" : `stage ${row + 1}`)),
      same("head", "greatestHead"),
      same("elevation", "pumpLevel"),
      ...(casingWorkingPressure === undefined ? [] : [same("casing", "casingWorkingPressure")]),
      ...(otherPartPressure === undefined || name === undefined ? [] : [same("otherPart", "otherPart")]),
      ...(otherPartPressure === undefined ? [] : [same("otherPressure", "otherPartPressure")]),
      ...(suctionFlange === undefined ? [] : [same("suctionFlange", "suctionFlange")]),
      ...(dischargeFlange === undefined ? [] : [same("dischargeFlange", "dischargeFlange")]),
    ],
  };
}

function nozzleCall(duty: Duty): Call {
  const { flangeClass, standingLevel } = duty;
  return callById(
    "NOZZLECLASSES",
    rangeAt(SERIES),
    value("greatestSuctionPressure"),
    value("casingMaterial"),
    flangeClass === undefined ? null : value("flangeClass"),
    SPECIFIC_GRAVITY,
    duty.acceptanceGrade === undefined ? null : value("headToleranceUpper"),
    value(standingLevel === undefined ? "deliveryLevel" : "standingLevel"),
    value("deliveryPressure"),
    value("temperature"),
  );
}

const CLASSES = "nozzleClasses";

/** Columns of NOZZLECLASSES in their order. */
const COLUMNS = [
  { key: "pump" },
  { key: "side" },
  { key: "running", quantity: "gaugePressure" },
  { key: "standing", quantity: "gaugePressure" },
  { key: "greatest", quantity: "gaugePressure" },
  { key: "class" },
  { key: "rating", quantity: "gaugePressure" },
  { key: "margin", quantity: "percent" },
  { key: "governedBy" },
  { key: "limit", quantity: "gaugePressure" },
  { key: "next" },
  { key: "trade" },
  { key: "test", quantity: "gaugePressure" },
] as const satisfies SpillItem["columns"];

function nozzleSpill(call: Call, nozzles: readonly Nozzle[]): SpillItem {
  return {
    kind: "spill",
    key: CLASSES,
    label: "Pressure and class at each nozzle",
    expression: call,
    rows: nozzles.length + 1,
    columns: COLUMNS,
  };
}

function of({ row }: Nozzle, column: (typeof COLUMNS)[number]["key"]): Expression {
  return partAt(
    CLASSES,
    COLUMNS.findIndex(({ key }) => key === column),
    row,
  );
}

const TABLE = "nozzles";

function nozzleTable(duty: Duty, nozzles: readonly Nozzle[]): TableItem {
  const top = duty.standingLevel === undefined ? "delivery level" : "standing level";
  const hasLimit = holdsAnything(duty);
  return {
    kind: "table",
    key: TABLE,
    heading: `nozzle; running against a shut valve, standing up to the ${top}`,
    columns: [
      { key: "greatest", label: "greatest pressure", quantity: "gaugePressure" },
      { key: "class", label: "class needed" },
      { key: "running", label: "running", quantity: "gaugePressure" },
      { key: "standing", label: "standing", quantity: "gaugePressure" },
      ...(hasLimit ? [{ key: "margin", label: "margin left", quantity: "percent" } as const] : []),
    ],
    rows: nozzles.map((nozzle) => ({
      label: nozzle.label,
      cells: [
        of(nozzle, "greatest"),
        {
          op: "ifText",
          of: of(nozzle, "next"),
          is: "",
          met: of(nozzle, "class"),
          otherwise: { op: "join", terms: [of(nozzle, "class"), constant(", the first")] },
        },
        of(nozzle, "running"),
        of(nozzle, "standing"),
        ...(hasLimit ? [of(nozzle, "margin")] : []),
      ],
    })),
  };
}

/** Whether a class is offered or a part stated, so that there is something to hold the pressures against. */
function holdsAnything({ flangeClass, casingWorkingPressure, otherPartPressure }: Duty): boolean {
  return flangeClass !== undefined || casingWorkingPressure !== undefined || otherPartPressure !== undefined;
}

function verdicts(duty: Duty, nozzles: readonly Nozzle[]): readonly PlanItem[] {
  const { flangeClass, casingWorkingPressure, otherPart: name, otherPartPressure } = duty;
  const last = lastOf(nozzles);
  const place = nozzles.length > 2 ? "last discharge" : "discharge";
  const hasPart = casingWorkingPressure !== undefined || otherPartPressure !== undefined;
  return [
    {
      kind: "result",
      key: "greatestPressure",
      label: `Pressure at the ${place}`,
      quantity: "gaugePressure",
      expression: of(last, "greatest"),
      how: "The greater of running and standing.",
    },
    {
      kind: "result",
      key: "classNeeded",
      label: `Class the ${place} needs`,
      expression: of(last, "class"),
      how: "Lowest of the material's own standard at liquid temperature.",
      main: true,
    },
    {
      kind: "finding",
      key: "firstToNeed",
      label: "First to need the next class",
      expression: firstOf(nozzles, "next", "None: one class holds at every nozzle."),
    },
    ...(flangeClass === undefined ? [] : offered(last)),
    ...(hasPart ? weakest(last, place) : []),
    ...(casingWorkingPressure === undefined
      ? []
      : [holds("casingVerdict", "Casing working pressure", "casingWorkingPressure", place)]),
    ...(otherPartPressure === undefined ? [] : [otherVerdict(name, nozzles, place)]),
    tradeLine(duty, nozzles),
  ];
}

const FIRSTS = "firstNozzles";

/** Text of a nozzle that is nothing to speak of. */
const UNREMARKABLE = { next: "", trade: "agrees" } as const;

/**
 * "Stage 2 discharge: …", carried down from the first nozzle that has something to say: a row each, for a formula that
 * asked every nozzle in turn would nest too deeply.
 */
function firstsSoFar(nozzles: readonly Nozzle[]): WorkingItem {
  const column = (key: keyof typeof UNREMARKABLE, label: string): WorkingColumn => ({
    key,
    label,
    cells: (row) => {
      const nozzle = nozzles[row] as Nozzle;
      const own: Expression = {
        op: "ifText",
        of: of(nozzle, key),
        is: UNREMARKABLE[key],
        met: constant(""),
        otherwise: { op: "join", terms: [constant(`${nozzle.label}: `), of(nozzle, key), constant(".")] },
      };
      if (row === 0) return own;
      const before = value(tableCell(FIRSTS, row - 1, key));
      return { op: "ifText", of: before, is: "", met: own, otherwise: before };
    },
  });
  return {
    kind: "working",
    key: FIRSTS,
    label: "First nozzle so far",
    rows: nozzles.length,
    columns: [column("next", "to need the next class"), column("trade", "where the trade figure disagrees")],
  };
}

function firstOf(nozzles: readonly Nozzle[], key: keyof typeof UNREMARKABLE, none: string): Expression {
  const last = value(tableCell(FIRSTS, nozzles.length - 1, key));
  return { op: "ifText", of: last, is: "", met: constant(none), otherwise: last };
}

function offered(last: Nozzle): readonly PlanItem[] {
  return [
    {
      kind: "result",
      key: "classVerdict",
      label: "Class offered",
      expression: verdict(of(last, "rating"), value("greatestPressure"), "pass", "fail"),
      how: "Against the greatest discharge pressure of all.",
      main: true,
    },
    {
      kind: "result",
      key: "classRating",
      label: "Rating of the class offered",
      quantity: "gaugePressure",
      expression: of(last, "rating"),
      how: "At liquid temperature, between printed rows, rounded down.",
    },
    {
      kind: "result",
      key: "classMargin",
      label: "Margin under the rating",
      quantity: "percent",
      expression: product(
        ratio(difference(value("classRating"), value("greatestPressure")), value("classRating")),
        constant(100),
      ),
      how: "(Rating less pressure) / rating.",
    },
    {
      kind: "result",
      key: "testPressure",
      label: "Hydrostatic test of the flanged joint",
      quantity: "gaugePressure",
      expression: of(last, "test"),
      how: "1.5 × cold rating, rounded up; vented, and people clear.",
    },
  ];
}

function weakest(last: Nozzle, place: string): readonly PlanItem[] {
  return [
    {
      kind: "result",
      key: "weakestPart",
      label: `Weakest at the ${place}`,
      expression: of(last, "governedBy"),
      how: "The lowest of flange rating, casing and other part governs.",
    },
    {
      kind: "result",
      key: "weakestLimit",
      label: "What it may carry",
      quantity: "gaugePressure",
      expression: of(last, "limit"),
      how: "The margins above are left of what governs at each nozzle.",
    },
  ];
}

function holds(
  key: string,
  label: string,
  limit: string,
  place: string,
  pressure: Expression = value("greatestPressure"),
): PlanItem {
  return {
    kind: "result",
    key,
    label,
    expression: verdict(value(limit), pressure, `holds the ${place}`, "EXCEEDED"),
    how: `Against the greatest pressure at the ${place}.`,
  };
}

/** A part named for the suction stands there alone. */
function otherVerdict(name: string | undefined, nozzles: readonly Nozzle[], place: string): PlanItem {
  const label = name === undefined ? "Other part" : `Other part: ${name}`;
  if (name?.toLowerCase().startsWith("suction") !== true) {
    return holds("otherPartVerdict", label, "otherPartPressure", place);
  }
  const lastSuction = nozzles.at(-2) as Nozzle;
  return holds(
    "otherPartVerdict",
    label,
    "otherPartPressure",
    nozzles.length > 2 ? "last suction" : "suction",
    of(lastSuction, "greatest"),
  );
}

/** The trade's figure beside the standard's, in the reader's units. It decides nothing. */
function tradeLine({ unitSet }: Duty, nozzles: readonly Nozzle[]): PlanItem {
  const figure = (name: "Class 150" | "Class 300"): string => {
    const pressure = TRADE_FIGURES[name]?.pressure ?? 0;
    return `${amountText({ quantity: "gaugePressure", value: pressure }, unitSet)} for ${name}`;
  };
  return {
    kind: "finding",
    key: "tradeFigure",
    label: "Trade figure as a check",
    expression: {
      op: "join",
      terms: [
        constant(`${figure("Class 150")}, ${figure("Class 300")}; the standard decides. `),
        firstOf(nozzles, "trade", "It agrees at every nozzle."),
      ],
    },
  };
}

const SURGE = callById(
  "SURGE",
  value(tableCell("dischargeLine", 0, "velocity")),
  value(tableCell("dischargeLine", 0, "pipe")),
  ...LIQUID_TAIL,
);

/** Surge with its own comparison; it never chooses the class. */
function surge({ flangeClass }: Duty): readonly PlanItem[] {
  return [
    {
      kind: "result",
      key: "surgePressure",
      label: "Surge if the flow stops at once",
      quantity: "pressureDifference",
      expression: SURGE,
      how: "In the first discharge run; apart, it does not choose the class.",
    },
    {
      kind: "result",
      key: "surgeTotal",
      label: "Greatest pressure with surge",
      quantity: "gaugePressure",
      expression: sum(value("greatestPressure"), value("surgePressure")),
      how: "As if both came at once.",
    },
    ...(flangeClass === undefined
      ? []
      : ([
          {
            kind: "result",
            key: "surgeVerdict",
            label: "With surge, against the rating",
            expression: verdict(value("classRating"), value("surgeTotal"), "within the rating", "above the rating"),
            how: "Ratings are without shock: if above, hold the surge down.",
          },
        ] satisfies readonly PlanItem[])),
  ];
}
