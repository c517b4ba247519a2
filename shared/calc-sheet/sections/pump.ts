import type { Duty, DutyPump } from "../../duty/duty.ts";
import type { CurvePointText, PumpKey } from "../../duty/duty-text.ts";
import { bareNumber } from "../../duty/read-amount.ts";
import { product, value } from "../expression.ts";
import type { InputItem, InputTableItem, PlanItem, TableColumn } from "../plan.ts";
import { inUnitSet, stated, statedNumber } from "./stated-input.ts";

const COLUMNS = [
  { key: "flow", label: "flow", quantity: "flow" },
  { key: "head", label: "head", quantity: "head" },
  { key: "efficiency", label: "efficiency", quantity: "percent" },
  { key: "npshRequired", label: "NPSHR", quantity: "head" },
] as const satisfies readonly (TableColumn & { key: keyof CurvePointText })[];

/** The chosen pump: what it is and how it runs. */
export function chosenPump(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { typed, name, speed, impellerDiameter, speedRatio, trimRatio, count, arrangement } = pump;
  const basis = (key: PumpKey): string => (typed[key].trim() === "" ? "assumed: nothing was stated" : "stated");
  const text = (key: string, label: string, of: string, from: string): InputItem => ({
    kind: "input",
    key,
    label,
    value: of,
    basis: from,
  });
  const nameplate: readonly PlanItem[] = [
    ...(speed === undefined
      ? []
      : [
          statedNumber(
            {
              key: "curveSpeed",
              label: "Speed of the curve",
              quantity: "speed",
              typed: typed.speed,
              value: speed,
              basis: "stated",
            },
            duty,
          ),
        ]),
    ...(impellerDiameter === undefined
      ? []
      : [
          statedNumber(
            {
              key: "curveDiameter",
              label: "Impeller of the curve",
              quantity: "size",
              typed: typed.impellerDiameter,
              value: impellerDiameter,
              basis: "stated",
            },
            duty,
          ),
        ]),
  ];
  const ratio = (key: "speedRatio" | "trimRatio", label: string, of: number): PlanItem =>
    statedNumber({ key, label, typed: typed[key], value: of, basis: basis(key) }, duty);
  return [
    { kind: "section", id: "chosenPump", text: "Chosen pump" },
    text("pumpName", "Pump", name === "" ? "not named" : name, name === "" ? "not stated" : "stated"),
    ...nameplate,
    ratio("speedRatio", "Speed over that of the curve", speedRatio),
    ratio("trimRatio", "Impeller over that of the curve", trimRatio),
    statedNumber(
      { key: "pumpCount", label: "Pumps running", typed: typed.count, value: count, basis: basis("count") },
      duty,
    ),
    text("arrangement", "Arrangement", arrangement, "parallel: side by side; series: one behind the other"),
    ...(speed === undefined ? [] : [running("runningSpeed", "Running speed", "speed", "curveSpeed", "speedRatio")]),
    ...(impellerDiameter === undefined
      ? []
      : [running("runningDiameter", "Impeller as fitted", "size", "curveDiameter", "trimRatio")]),
  ];
}

function running(key: string, label: string, quantity: "speed" | "size", of: string, ratio: string): PlanItem {
  const how = key === "runningSpeed" ? "Speed of the curve times its ratio." : "Impeller of the curve times its ratio.";
  return { kind: "result", key, label, quantity, expression: product(value(of), value(ratio)), how };
}

/** The points of its curve, on a page with what is read off them. */
export function pumpCurveTable(duty: Duty, { typed, curve }: DutyPump): readonly PlanItem[] {
  const given = (key: (typeof COLUMNS)[number]["key"]): boolean =>
    curve.points.some((point) => point[key] !== undefined);
  const columns = COLUMNS.filter(({ key }) => key === "flow" || key === "head" || given(key));
  const texts = typed.points.filter((point) => COLUMNS.some(({ key }) => point[key].trim() !== ""));
  const table: InputTableItem = {
    kind: "inputTable",
    key: "pumpCurve",
    columns,
    rows: curve.points.map((point, row) =>
      columns.map(({ key, quantity }) => {
        const amount = point[key];
        if (amount === undefined) return null;
        // A percentage may have been typed as a fraction; all others go in as they were typed.
        const plain = key === "efficiency" ? undefined : bareNumber(texts[row]?.[key] ?? "");
        return plain ?? inUnitSet(amount, quantity, duty);
      }),
    ),
    basis:
      "One pump at the speed and impeller of the curve, with water. The curves drawn are of the pumps as they run.",
    chartBeside: curve.efficiency !== undefined,
  };
  return [{ kind: "section", id: "pumpCurve", text: "Curve of the pump", newPage: true }, table];
}

/** The range the pump must cover, as inputs; nothing where none is stated. */
export function rangeToCover(duty: Duty): readonly PlanItem[] {
  const { acceptanceGrade } = duty;
  const heads = stated(duty, "leastStaticHead", "greatestStaticHead", "agedRoughness");
  const tolerances: readonly InputItem[] =
    acceptanceGrade === undefined
      ? []
      : [
          tolerance("headToleranceLower", "Head tolerance, lower", acceptanceGrade.head[0], acceptanceGrade.grade),
          tolerance("headToleranceUpper", "Head tolerance, upper", acceptanceGrade.head[1], acceptanceGrade.grade),
          tolerance("flowToleranceLower", "Flow tolerance, lower", acceptanceGrade.flow[0], acceptanceGrade.grade),
          tolerance("flowToleranceUpper", "Flow tolerance, upper", acceptanceGrade.flow[1], acceptanceGrade.grade),
          tolerance("efficiencyTolerance", "Efficiency tolerance", acceptanceGrade.efficiency, acceptanceGrade.grade),
        ];
  const items = [...heads, ...tolerances];
  return items.length === 0 ? [] : [{ kind: "section", id: "range", text: "Range the pump must cover" }, ...items];
}

function tolerance(key: string, label: string, percent: number, grade: string): InputItem {
  const basis = `ISO 9906 grade ${grade}, of the guaranteed figure`;
  return { kind: "input", key, label, quantity: "percent", value: percent, basis };
}
