import { PUMPHEAD, PUMPNPSHR } from "../../catalogue/entries/pump.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import {
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  handles,
  ifNumber,
  part,
  product,
  ratio,
  sum,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, type ResultItem, statement, type WorkingItem, working } from "../plan.ts";
import { onWater } from "./as-pumped.ts";
import { asPumpedPower, HEAD_CURVE, IN_SERIES, MAX_POWER, SIDE_BY_SIDE } from "./drawn-curves.ts";
import { asStated, isStation, NOT_GIVEN, ofOnePump, recordOf, whereGiven } from "./duty-cases.ts";
import { stateCell } from "./duty-states.ts";
import { HEAD, headToSelect } from "./head.ts";
import { marginVerdict, npshMarginBasis } from "./npsh.ts";
import { REGION_BAND } from "./pump-figures.ts";
import { HELD_TO_SUMMIT, hasRoute } from "./route-cells.ts";
import { readCurve } from "./slurry-curve.ts";
import { otherGreatestPowers, stationHeadAtDuty } from "./station-states.ts";

/** Worked cells of this section. */
export const POINT = handles({
  operatingFlow: "flow",
  operatingHead: "head",
  flowOverDuty: "percent",
  headAtDuty: "head",
  headOverDuty: "head",
  operatingEfficiency: "percent",
  operatingPower: "power",
  bestFlowPercent: "percent",
  greatestPower: "power",
  operatingNpshRequired: "head",
  operatingNpshAvailable: "head",
  operatingNpshMargin: "head",
  operatingNpshMarginKept: "head",
  operatingNpshVerdict: null,
  npshRequiredOfCurve: "head",
  npshRequiredOff: "percent",
});

type Record = ReturnType<typeof recordOf>;

/** Where the pump meets the duty as stated, against flow, head and NPSH asked for. */
export function operatingPoint(duty: Duty, { curve }: DutyPump): readonly PlanItem[] {
  const record = recordOf(asStated(duty));
  const hasEfficiency = curve.efficiency !== undefined;
  const hasNpsh = curve.npshRequired !== undefined;
  const rows: readonly ResultItem[] = [
    figure(
      POINT.operatingFlow,
      "Flow at the operating point",
      part(record, "flow"),
      "Pumps and system give the same head; all pumps together.",
      "main",
    ),
    figure(
      POINT.operatingHead,
      "Operating head",
      part(record, "head"),
      "All pumps together, in head of the liquid pumped.",
      "main",
    ),
    figure(
      POINT.flowOverDuty,
      "Flow over the duty",
      product(difference(ratio(POINT.operatingFlow, FIELD.flow), constant(1)), constant(100)),
      "Over the flow stated; losses here without margin.",
    ),
    figure(
      POINT.headAtDuty,
      "Pump head at the duty flow",
      isStation(asStated(duty), duty)
        ? onWater(duty, stationHeadAtDuty(HEAD.totalHead, [HEAD.staticHead, HEAD.pressureHead]))
        : product(
            callOf(PUMPHEAD, { ...readCurve(duty, "carrier"), flow: ratio(FIELD.flow, SIDE_BY_SIDE) }),
            IN_SERIES,
          ),
      isSlurry(duty)
        ? "With water, read off the curve at the running speed and trim."
        : "Read off the curve at the running speed and trim.",
    ),
    {
      ...figure(
        POINT.headOverDuty,
        isSlurry(duty) ? "Over the equivalent water head" : "Over total head with margin",
        difference(POINT.headAtDuty, headToSelect(duty)),
        "Less the head to select for; below 0 the duty is not met.",
      ),
      badBelow: 0,
    },
    ...(hasEfficiency ? efficiencyRows(record, duty) : []),
    ...(hasNpsh ? npshRows(duty) : []),
  ];
  return [
    { kind: "section", id: "operatingPoint", text: "Operating point" },
    ...rows,
    ...(hasRoute(duty) ? [statement(HELD_TO_SUMMIT)] : []),
    ...(hasEfficiency && !isStation(asStated(duty), duty) ? [preferredRegion()] : []),
  ];
}

/** The preferred region as a frame under the curve of the pumps: its ends are shares of the flow at best efficiency. */
export const PREFERRED = tableOf("preferredRegion", { flow: "flow", head: "head" });

function preferredRegion(): WorkingItem {
  const bestFlow = ratio(POINT.operatingFlow, POINT.bestFlowPercent);
  const end = (row: number): Expression => part(REGION_BAND, row < 2 ? "least" : "most");
  return working(PREFERRED, "Preferred region, drawn", 4, [
    ["flow", "flow", (row) => ifNumber(POINT.bestFlowPercent, product(bestFlow, end(row)), NOT_GIVEN)],
    ["head", "head", (row) => (row === 0 || row === 3 ? constant(0) : cell(HEAD_CURVE, 0, "headTogether"))],
  ]);
}

function efficiencyRows(record: Record, duty: Duty): readonly ResultItem[] {
  const bestFlowPercent = ofOnePump(asStated(duty), duty, "percentOfBestFlow");
  const isTogether = isStation(asStated(duty), duty);
  const ofWhom = isTogether ? "Of the selected pump." : "Of each pump.";
  return [
    figure(
      POINT.operatingEfficiency,
      "Efficiency",
      whereGiven(record, "efficiency", (figure) => product(figure, constant(100))),
      isTogether
        ? "Of all pumps together: what the liquid takes up over their shaft power."
        : "Of each pump at the operating point.",
    ),
    figure(
      POINT.operatingPower,
      "Shaft power, liquid pumped",
      whereGiven(record, "shaftPower"),
      "All pumps together, with the liquid pumped.",
      "main",
    ),
    figure(POINT.bestFlowPercent, "Flow, % of BEP", ifNumber(bestFlowPercent, bestFlowPercent, NOT_GIVEN), ofWhom),
    figure(
      POINT.greatestPower,
      "Maximum power on the curve",
      sum(product(asPumpedPower(duty, part(MAX_POWER, "power")), FIELD.pumpsRunning), ...otherGreatestPowers(duty)),
      "To the end of the curve; all pumps, with the liquid pumped.",
    ),
  ];
}

function npshRows(duty: Duty): readonly ResultItem[] {
  const normal = asStated(duty);
  const { state, npshRequired } = duty;
  return [
    figure(
      POINT.operatingNpshRequired,
      "NPSH required there",
      stateCell(duty, normal, "npshRequired"),
      isStation(normal, duty) ? "Of the selected pump at the operating point." : "Of each pump at the operating point.",
    ),
    figure(
      POINT.operatingNpshAvailable,
      "NPSH available there",
      stateCell(duty, normal, "npshAvailable"),
      "At the operating flow, with the source at the level stated.",
    ),
    figure(
      POINT.operatingNpshMargin,
      "NPSHA less NPSHR",
      ifNumber(POINT.operatingNpshRequired, stateCell(duty, normal, "npshMargin"), NOT_GIVEN),
      "Compared with the margin to keep.",
      "main",
    ),
    figure(
      POINT.operatingNpshMarginKept,
      "NPSH margin to keep there",
      ifNumber(POINT.operatingNpshRequired, stateCell(duty, normal, "npshMarginKept"), NOT_GIVEN),
      `Over NPSH required; ${npshMarginBasis(duty)}.`,
    ),
    figure(
      POINT.operatingNpshVerdict,
      "NPSH margin there",
      ifNumber(
        POINT.operatingNpshMargin,
        marginVerdict(POINT.operatingNpshMargin, POINT.operatingNpshMarginKept),
        "not judged",
      ),
      "Maker's may be of 3 % head drop; solids, air, heat need more.",
    ),
    ...(npshRequired === undefined && state.npshRequired === "blank" ? [] : typedNpsh(duty)),
  ];
}

/** NPSH required as typed beside a curve that gives it: the curve decides. */
function typedNpsh(duty: Duty): readonly ResultItem[] {
  const { npshRequiredOfCurve, npshRequiredOff } = POINT;
  const apart = greatest(
    difference(npshRequiredOfCurve, FIELD.npshRequired),
    difference(FIELD.npshRequired, npshRequiredOfCurve),
  );
  return [
    figure(
      npshRequiredOfCurve,
      "NPSHR of the curve at duty",
      callOf(PUMPNPSHR, { ...readCurve(duty, "carrier"), flow: ratio(FIELD.flow, SIDE_BY_SIDE) }),
      "Of each pump; the curve decides, not the figure typed.",
    ),
    figure(
      npshRequiredOff,
      "NPSHR typed, off the curve",
      product(ratio(apart, npshRequiredOfCurve), constant(100)),
      "Above 5 % one of them is not of this pump.",
    ),
  ];
}
