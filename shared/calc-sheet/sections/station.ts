import type { Duty } from "../../duty/duty.ts";
import { constant, type Expression, handles, ifText, sum } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem } from "../plan.ts";
import { stated } from "./stated-input.ts";

const STATION = handles({ pumpsInstalled: null });

/** How many pumps run, stand by and how they stand: before the lines, which take their shares of flow from it. */
export function stationBasis(duty: Duty): readonly PlanItem[] {
  return [
    ...stated(duty, "pumpsRunning"),
    ...(hasStandby(duty)
      ? [
          ...stated(duty, "pumpsStandby"),
          figure(
            STATION.pumpsInstalled,
            "Pumps installed",
            sum(FIELD.pumpsRunning, FIELD.pumpsStandby),
            "Running and standby.",
          ),
        ]
      : []),
    ...(isArranged(duty) ? stated(duty, "arrangement") : []),
  ];
}

/** How many pumps run, further ones among them. */
export function pumpsOfAll(duty: Duty): Expression {
  return withOthers(duty, FIELD.pumpsRunning);
}

/** How many pumps the station has. */
export function pumpsInstalled(duty: Duty): Expression {
  return withOthers(duty, hasStandby(duty) ? STATION.pumpsInstalled : FIELD.pumpsRunning);
}

/** So many pumps of the chosen kind and all further ones. */
export function withOthers({ furtherPumps }: Duty, alike: Expression): Expression {
  return furtherPumps === 0 ? alike : sum(alike, constant(furtherPumps));
}

/** One figure where the pumps add their heads, another where they share the flow. */
export function byArrangement(duty: Duty, inSeries: Expression, inParallel: Expression): Expression {
  return isArranged(duty) ? ifText(FIELD.arrangement, "series", inSeries, inParallel) : inParallel;
}

export function hasStandby({ state }: Duty): boolean {
  return state.pumpsStandby !== "assumed";
}

/** How one pump stands is of no matter. */
function isArranged({ state, pumpsRunning, furtherPumps }: Duty): boolean {
  return state.arrangement !== "assumed" || pumpsRunning !== 1 || furtherPumps > 0;
}
