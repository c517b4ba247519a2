import { OPERATINGPOINT } from "../../catalogue/entries/pump.ts";
import { SYSTEMCURVE } from "../../catalogue/entries/system-and-suction.ts";
import type { ColumnKeyOf } from "../../catalogue/entry.ts";
import type { Duty } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { type Expression, ifNumber, part, spillOf, type TableOf } from "../expression.ts";
import { CLEAR_LIQUID, LIQUID } from "../field-handles.ts";

/** A state of levels, pipe and curve in which the sheet looks for the operating point. */
export interface DutyCasePlan {
  readonly key: "normal" | "least" | "greatest" | "aged" | "greatestAged" | "upper" | "lower" | "alone" | "flush";
  readonly label: string;
  readonly staticHead: "staticHead" | "leastStaticHead" | "greatestStaticHead";
  readonly pipe: "new" | "aged";
  readonly curve: "drawn" | "high" | "low";
  /** All of them where it does not say that one is left running by itself. */
  readonly pumps?: "one";
  /** As pumped where it does not say that the solids are gone. */
  readonly liquid?: "clear";
}

/**
 * The states worth a row: the duty as stated, the end of each range, and the two outermost with the curve's tolerance; of
 * several side by side the last one running; of a slurry, the line on clear liquid too, where the pumps give most.
 */
export function dutyCases(duty: Duty): readonly DutyCasePlan[] {
  return [
    ...pumpedCases(duty),
    ...aloneOf(duty),
    ...(isSlurry(duty) && duty.state.acceptanceGrade !== "unreadable" ? [flushOf(duty)] : []),
  ];
}

/** Pumps side by side start and stop one by one: the one left runs out furthest at the least static head. */
function aloneOf({ state, pump, acceptanceGrade }: Duty): readonly DutyCasePlan[] {
  if (pump === undefined || pump.count === 1 || pump.arrangement === "series") return [];
  const hasLeast = state.leastStaticHead !== "blank";
  const isHigh = (acceptanceGrade?.head[1] ?? 0) > 0;
  const label = `One pump alone${hasLeast ? ", least static head" : ""}${isHigh ? ", upper tolerance" : ""}`;
  const staticHead = hasLeast ? "leastStaticHead" : "staticHead";
  return [{ key: "alone", label, staticHead, pipe: "new", curve: isHigh ? "high" : "drawn", pumps: "one" }];
}

function flushOf({ state, acceptanceGrade }: Duty): DutyCasePlan {
  const hasLeast = state.leastStaticHead !== "blank";
  return {
    key: "flush",
    label: `${hasLeast ? "Least static head" : "As stated"}, start and flush on clear liquid`,
    staticHead: hasLeast ? "leastStaticHead" : "staticHead",
    pipe: "new",
    curve: (acceptanceGrade?.head[1] ?? 0) > 0 ? "high" : "drawn",
    liquid: "clear",
  };
}

function pumpedCases(duty: Duty): readonly DutyCasePlan[] {
  const { state, acceptanceGrade } = duty;
  const hasLeast = state.leastStaticHead !== "blank";
  const hasGreatest = state.greatestStaticHead !== "blank";
  const cases: DutyCasePlan[] = [
    { key: "normal", label: "As stated", staticHead: "staticHead", pipe: "new", curve: "drawn" },
  ];
  const lowest = hasLeast ? "leastStaticHead" : "staticHead";
  const highest = hasGreatest ? "greatestStaticHead" : "staticHead";
  const oldest = ages(duty) ? "aged" : "new";
  if (hasLeast) {
    cases.push({ key: "least", label: "Least static head", staticHead: lowest, pipe: "new", curve: "drawn" });
  }
  if (hasGreatest) {
    cases.push({ key: "greatest", label: "Greatest static head", staticHead: highest, pipe: "new", curve: "drawn" });
  }
  if (oldest === "aged") {
    cases.push({ key: "aged", label: "Aged pipe", staticHead: "staticHead", pipe: "aged", curve: "drawn" });
    if (hasGreatest) {
      const label = "Greatest static head, aged pipe";
      cases.push({ key: "greatestAged", label, staticHead: highest, pipe: "aged", curve: "drawn" });
    }
  }
  if (acceptanceGrade === undefined) return cases;
  const [lower, upper] = acceptanceGrade.head;
  if (upper > 0) {
    const at = hasLeast ? "Least static head" : "As stated";
    cases.push({ key: "upper", label: `${at}, upper tolerance`, staticHead: lowest, pipe: "new", curve: "high" });
  }
  if (lower < 0) {
    const at = hasGreatest ? "Greatest static head" : "As stated";
    const label = `${at}${oldest === "aged" ? ", aged pipe" : ""}, lower tolerance`;
    cases.push({ key: "lower", label, staticHead: highest, pipe: oldest, curve: "low" });
  }
  return cases;
}

/** The outermost states towards the greatest flow and towards the least, where the ranges have any width. */
export function outerCases(duty: Duty): readonly DutyCasePlan[] {
  const cases = dutyCases(duty);
  const first = (keys: readonly DutyCasePlan["key"][]): DutyCasePlan | undefined =>
    keys.map((key) => cases.find((one) => one.key === key)).find((one) => one !== undefined);
  return [first(["upper", "least"]), first(["lower", "greatestAged", "aged", "greatest"])].filter(
    (one) => one !== undefined,
  );
}

/** What flows in a case. */
export function liquidOf({ liquid }: DutyCasePlan): typeof LIQUID | typeof CLEAR_LIQUID {
  return liquid === "clear" ? CLEAR_LIQUID : LIQUID;
}

type System = Pick<DutyCasePlan, "staticHead" | "pipe" | "liquid">;

/** The system curve a case is on: those of one static head and pipe share it. */
export function systemOf({ staticHead, pipe, liquid }: System): TableOf<ColumnKeyOf<typeof SYSTEMCURVE>> {
  const head = { staticHead: "normal", leastStaticHead: "least", greatestStaticHead: "greatest" }[staticHead];
  const key = pipe === "new" ? `${head}System` : head === "normal" ? "agedSystem" : `${head}AgedSystem`;
  return spillOf(liquid === "clear" ? "clearSystem" : key, SYSTEMCURVE);
}

/** Where the operating point of a case stands. */
export function recordOf({ key }: Pick<DutyCasePlan, "key">): TableOf<ColumnKeyOf<typeof OPERATINGPOINT>> {
  return spillOf(`${key}Record`, OPERATINGPOINT);
}

export const NOT_GIVEN = "not given";

/** A figure of a record that the curve may not give there. */
export function whereGiven(
  record: ReturnType<typeof recordOf>,
  of: ColumnKeyOf<typeof OPERATINGPOINT>,
  then: (figure: Expression) => Expression = (figure) => figure,
  otherwise = NOT_GIVEN,
): Expression {
  const found = part(record, of);
  return ifNumber(found, then(found), otherwise);
}

/** Whether any pipe of the duty grows rougher by the roughness stated. */
function ages(duty: Duty): boolean {
  const { agedRoughness, suctionLine, dischargeLine } = duty;
  if (agedRoughness === undefined) return duty.state.agedRoughness === "unreadable";
  return [...suctionLine, ...dischargeLine].some(
    ({ segment }) => segment !== undefined && growsRougher(segment.pipe, agedRoughness),
  );
}

/** Hose is replaced rather than left to age, and a pipe rougher already stays as stated. */
export function growsRougher(
  { roughness, frictionMultiplier }: { readonly roughness: number; readonly frictionMultiplier?: number },
  aged: number,
): boolean {
  return frictionMultiplier === undefined && roughness < aged;
}
