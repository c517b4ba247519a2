import type { Duty } from "../../duty/duty.ts";
import { type Expression, greatest, least, part } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { dutyCases, recordOf } from "./duty-cases.ts";

/** The flow stated and the operating flows of the liquid as pumped. */
function flowsOf(duty: Duty): readonly [Expression, ...Expression[]] {
  if (duty.pump === undefined) return [FIELD.flow];
  const pumped = dutyCases(duty).filter(({ isClear }) => !isClear);
  return [FIELD.flow, ...pumped.map((one) => part(recordOf(one), "flow"))];
}

export function leastFlow(duty: Duty): Expression {
  return least(...flowsOf(duty));
}

export function greatestFlow(duty: Duty): Expression {
  return greatest(...flowsOf(duty));
}
