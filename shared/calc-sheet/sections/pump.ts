import type { Quantity } from "../../../src/basis/quantities.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { type CurvePointText, curvePlace, type PumpKey, placeKey } from "../../duty/duty-text.ts";
import { FIELDS, fieldsOf } from "../../duty/fields.ts";
import { bareNumber } from "../../duty/read-amount.ts";
import { type Handle, handles, product, type TableOf } from "../expression.ts";
import { figure, type InputItem, type InputTableItem, type PlanItem } from "../plan.ts";
import { generalBasis, inUnitSet, stated, statedNumber, waitingFor } from "./stated-input.ts";

/** Inputs of the chosen pump, of the tolerances of its grade, and how it runs. */
export const PUMP = handles({
  pumpName: null,
  curveSpeed: "speed",
  curveDiameter: "size",
  speedRatio: null,
  trimRatio: null,
  runningSpeed: "speed",
  runningDiameter: "size",
  headToleranceLower: "percent",
  headToleranceUpper: "percent",
  flowToleranceLower: "percent",
  flowToleranceUpper: "percent",
  efficiencyTolerance: "percent",
});

const COLUMNS = [
  { key: "flow", label: "flow", quantity: "flow" },
  { key: "head", label: "head", quantity: "head" },
  { key: "efficiency", label: "efficiency", quantity: "percent" },
  { key: "npshRequired", label: "NPSHR", quantity: "head" },
] as const;

type CurveKey = (typeof COLUMNS)[number]["key"];

/** The points of one pump's curve as stated; without the columns of which nothing is stated. */
export const PUMP_CURVE: TableOf<CurveKey> = { key: "pumpCurve", columns: COLUMNS };

/** The chosen pump: what it is and how it runs. */
export function chosenPump(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { typed, name, speed, impellerDiameter } = pump;
  const text = ({ key }: Handle, label: string, value: string, basis: string): InputItem => ({
    kind: "input",
    key,
    box: placeKey({ pump: "name" }),
    label,
    value,
    basis,
  });
  const amount = (
    { key, quantity }: Handle,
    label: string,
    of: Extract<PumpKey, "speed" | "impellerDiameter" | "speedRatio" | "trimRatio">,
  ): readonly InputItem[] => {
    const value = pump[of];
    if (value === undefined) return [];
    const basis = generalBasis(typed[of]);
    const box = placeKey({ pump: of });
    return [statedNumber({ key, box, label, ...(quantity && { quantity }), typed: typed[of], value, basis }, duty)];
  };
  const running = (of: Handle, label: string, curve: Handle, ratio: Handle, what: string): PlanItem =>
    figure(of, label, product(curve, ratio), `${what} of the curve times its ratio.`);
  return [
    { kind: "section", id: "chosenPump", text: "Selected pump" },
    text(PUMP.pumpName, "Pump", name === "" ? "not named" : name, name === "" ? "not stated" : "stated"),
    ...amount(PUMP.curveSpeed, "Curve speed", "speed"),
    ...amount(PUMP.curveDiameter, "Curve impeller diameter", "impellerDiameter"),
    ...amount(PUMP.speedRatio, "Speed over that of the curve", "speedRatio"),
    ...amount(PUMP.trimRatio, "Impeller over that of the curve", "trimRatio"),
    ...(speed === undefined
      ? []
      : [running(PUMP.runningSpeed, "Running speed", PUMP.curveSpeed, PUMP.speedRatio, "Speed")]),
    ...(impellerDiameter === undefined
      ? []
      : [running(PUMP.runningDiameter, "Impeller as fitted", PUMP.curveDiameter, PUMP.trimRatio, "Impeller")]),
    // What it was ranked by, where somebody stated that.
    ...stated(duty, ...fieldsOf("ranking").filter((key) => !["assumed", "blank"].includes(duty.state[key]))),
  ];
}

/** The points of its curve, on a page with what is read off them. */
export function pumpCurveTable(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const basis =
    "One pump at the speed and impeller of the curve, with water. The curves drawn are of the pumps as they run.";
  return [{ kind: "section", id: "pumpCurve", text: "Curve of the pump" }, curveInput(duty, pump, PUMP_CURVE, basis)];
}

/** The points of a pump's curve as a table of inputs. */
export function curveInput(
  duty: Duty,
  { typed, curve }: DutyPump,
  of: TableOf<CurveKey>,
  basis: string,
  other?: number,
): InputTableItem {
  const given = (key: CurveKey): boolean => curve.points.some((point) => point[key] !== undefined);
  const columns = COLUMNS.filter(({ key }) => key === "flow" || key === "head" || given(key));
  const isFilled = (point: CurvePointText): boolean => COLUMNS.some(({ key }) => point[key].trim() !== "");
  const texts = typed.points.filter(isFilled);
  const shown = (row: number, key: CurveKey, quantity: Quantity): number | null => {
    const amount = curve.points[row]?.[key];
    if (amount === undefined) return null;
    // A percentage may have been typed as a fraction; all others go in as they were typed.
    const plain = key === "efficiency" ? undefined : bareNumber(texts[row]?.[key] ?? "");
    return plain ?? inUnitSet(amount, quantity, duty);
  };
  return {
    kind: "inputTable",
    key: of.key,
    label: other === undefined ? "Pump curve" : `Further pump ${other + 1} curve`,
    columns,
    rows: curve.points.map((_, row) => columns.map(({ key, quantity }) => shown(row, key, quantity))),
    typed: { of: curvePlace(other), rows: typed.points.flatMap((point, row) => (isFilled(point) ? [row] : [])) },
    basis,
  };
}

/** The range the pump must cover, as inputs; nothing where none is stated. */
export function rangeToCover(duty: Duty): readonly PlanItem[] {
  const { acceptanceGrade: grade, state } = duty;
  const items = stated(
    duty,
    "leastStaticHead",
    "greatestStaticHead",
    "agedRoughness",
    "leastPumpFlow",
    "greatestPumpFlow",
  );
  const given = [
    [PUMP.headToleranceLower, "Head tolerance, lower", grade?.head[0]],
    [PUMP.headToleranceUpper, "Head tolerance, upper", grade?.head[1]],
    [PUMP.flowToleranceLower, "Flow tolerance, lower", grade?.flow[0]],
    [PUMP.flowToleranceUpper, "Flow tolerance, upper", grade?.flow[1]],
    [PUMP.efficiencyTolerance, "Efficiency tolerance", grade?.efficiency],
  ] as const;
  const basis = `ISO 9906 grade ${grade?.grade ?? duty.texts.acceptanceGrade}, of the guaranteed figure`;
  const tolerances = (state.acceptanceGrade === "blank" ? [] : given).map(
    ([{ key }, label, figure]): InputItem => ({
      kind: "input",
      key,
      label,
      of: "acceptanceGrade",
      quantity: "percent",
      value: figure ?? waitingFor(FIELDS.acceptanceGrade.label),
      basis,
    }),
  );
  if (items.length + tolerances.length === 0) return [];
  return [{ kind: "section", id: "range", text: "Operating range" }, ...items, ...tolerances];
}
