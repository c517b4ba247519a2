import { printedUnit } from "../../../src/basis/quantities.ts";
import { US_PER_SI } from "../../../src/pump/specific-speed.ts";
import { viscousCorrectionMethod } from "../../../src/pump/viscous-correction.ts";
import { fillTimeMethod } from "../../../src/route/fill-time.ts";
import { siphonMethod } from "../../../src/route/siphon.ts";
import { type Duty, type DutyPump, pumpsSideBySide } from "../../duty/duty.ts";
import { FIELDS, type FieldKey } from "../../duty/fields.ts";
import {
  asShare,
  constant,
  difference,
  type Expression,
  ifAtLeast,
  ifError,
  ifNumber,
  ifText,
  join,
  over,
  part,
  product,
  rounded,
  sum,
  under,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { headAtFlow } from "../sections/case-results.ts";
import { CURVE_END } from "../sections/drawn-curves.ts";
import { asStated, caseStatesOf, type DutyState, dutyCases, isStation, recordOf } from "../sections/duty-cases.ts";
import { lossesAskedFor, shutoffHead, stateCell } from "../sections/duty-states.ts";
import { HEAD, headOfLine } from "../sections/head.ts";
import { POINT } from "../sections/operating-point.ts";
import { otherViscousHeadRatio } from "../sections/other-curves.ts";
import { PUMP } from "../sections/pump.ts";
import { KIND } from "../sections/pump-figures.ts";
import { FILLING, hasRoute, ROUTE } from "../sections/route-cells.ts";
import { filledStates, lowerSource, routeCell } from "../sections/route-states.ts";
import { viscousHeadRatio, viscousOpen } from "../sections/viscous-curve.ts";
import { type Criterion, limitOf, openPoint, worded } from "./criterion.ts";
import { checkValveOfEach, stationHead } from "./station.ts";

/** Boxes without which nobody can say what head is asked for. */
const NEEDED = ["flow", "sourceLevel", "deliveryLevel", "liquid", "temperature"] as const satisfies readonly FieldKey[];

/** Whether the pumps reach the head asked for, and run, in every state that the duty covers. */
export function headCriteria(duty: Duty, pump: DutyPump): readonly Criterion[] {
  const open = openOfDuty(duty, pump, "head");
  if (open.length > 0) return open;
  return [
    curveReaches(),
    ...dutyCases(duty).flatMap((one) => [...headIn(one, duty, pump), runsIn(one, "head"), ...comesIn(one, duty)]),
    ...stationHead(duty),
    ...checkValveOfEach(duty),
    ...shutoff(duty, pump),
    ...overTheSummit(duty),
    ...band(duty, pump),
    ...muchMore(duty),
    ...viscousLoss(duty, pump),
  ];
}

/** What keeps head, NPSH and region from being judged: boxes not stated, or a liquid that the curve is not known for. */
export function openOfDuty(duty: Duty, pump: DutyPump, of: Criterion["of"]): readonly Criterion[] {
  const missing = NEEDED.filter((key) => duty[key] === undefined);
  const blank = missing.filter((key) => duty.state[key] !== "unreadable");
  const unreadable = missing.filter((key) => duty.state[key] === "unreadable");
  const lines = (["suctionLine", "dischargeLine"] as const).filter(
    (line) => duty[line].length === 0 || duty[line].some(({ segment }) => segment === undefined),
  );
  const own = viscousOpen(duty, pump);
  const liquid = [
    ...(own === undefined ? [] : [own]),
    ...duty.otherPumps.flatMap((other) => {
      const why = viscousOpen(duty, other);
      return why === undefined ? [] : [`${other.name}: ${why}`];
    }),
  ];
  return [
    ...(blank.length > 0 ? [openPoint({ of, what: "operating point", missing: blank })] : []),
    ...unreadable.map((key) => worded({ of, state: "open", what: `waits for ${FIELDS[key].label}` })),
    ...lines.map((line) =>
      worded({
        of,
        state: "open",
        what: line === "suctionLine" ? "suction line not stated" : "discharge line not stated",
      }),
    ),
    ...liquid.map((what) => worded({ of, state: "open", what })),
  ];
}

function curveReaches(): Criterion {
  return limitOf({
    of: "head",
    what: "last flow of the pumps' curve",
    found: CURVE_END,
    limit: FIELD.flow,
    quantity: "flow",
    mustBe: "at least",
    broken: "fail",
    why: "the curve ends before the duty flow",
  });
}

/** Head at the duty flow, of all pumps as drawn, against that of one state of levels, pipe and liquid. */
function headIn(one: DutyState, duty: Duty, pump: DutyPump): readonly Criterion[] {
  if (!one.isAsked) return [];
  if (isStation(one, duty) && caseStatesOf(duty).includes(one)) return [flowIn(one)];
  const head = headAtFlow(one, duty);
  const limit = stateCell(duty, one, "headToSelect");
  const isAssumed = one.isMarginAssumed;
  const found = isAssumed ? difference(head, assumedMargin(one, duty)) : head;
  const withoutMargin = ifError(
    ifAtLeast(
      POINT.headAtDuty,
      headOfLine(duty),
      constant("without the margin on losses the duty is met"),
      constant(moved(pump)),
    ),
    NO_HEAD,
  );
  const isNormal = one === asStated(duty);
  return [
    limitOf({
      of: "head",
      what: isNormal ? "head at the duty flow" : `head at the duty flow, ${one.words}`,
      found,
      ...(isAssumed && {
        foundAtBest: head,
        assumed: join(FIELD.lossMargin, constant(" % margin on losses")),
        atBest: "check" as const,
      }),
      limit,
      quantity: "head",
      mustBe: "at least",
      broken: "fail",
      unanswered: "fail",
      when: whereHeld(one, isAssumed ? "less 10 % of the losses" : "margin on losses counted"),
      why:
        isNormal && !isAssumed
          ? withoutMargin
          : ifError(ifNumber(head, isNormal ? shortOfAssumed(found, head, limit, pump) : constant(""), ""), NO_HEAD),
      ...(one.route !== undefined && { cites: siphonMethod.cites[0] }),
    }),
  ];
}

/** That the head is asked for to the summit, at all times, where no siphon is earned. */
function whereHeld({ route }: DutyState, margin: string): Expression {
  if (route === undefined) return constant(margin);
  const { siphon, runsFull } = route;
  const held = constant(`over the summit, without a siphon; ${margin}`);
  const credit = ifText(part(siphon, "credit"), "not earned", held, constant(margin));
  return ifText(runsFull, "yes", constant(margin), credit);
}

/** Of unlike pumps in a case: what they give together, without a margin on losses. */
function flowIn(one: DutyState): Criterion {
  return limitOf({
    of: "head",
    what: "flow of all pumps",
    found: part(recordOf(one), "flow"),
    limit: one.flow,
    quantity: "flow",
    mustBe: "at least",
    broken: "fail",
    unanswered: "fail",
    when: one.words,
    why: "less than the case requires",
  });
}

/** Of a curve that cannot be read at the duty flow. */
const NO_HEAD = "the curve gives no head at the duty flow";

/** Why a pump that was chosen with a ratio may miss the duty. */
function moved({ speedRatio, trimRatio }: Pick<DutyPump, "speedRatio" | "trimRatio">): string {
  if (speedRatio !== 1) return "its speed was set for another duty: choose it again, or set the speed ratio";
  return trimRatio === 1 ? "" : "its impeller was trimmed for another duty: choose it again, or set the trim ratio";
}

/** Heads as near as this, ft or m, are one: a speed is stated to so many digits. */
const EVEN = 1e-6;

/** Why a pump misses the duty with the margin that is assumed: that margin, or the duty itself. */
function shortOfAssumed(found: Expression, head: Expression, limit: Expression, pump: DutyPump): Expression {
  const reaches = (given: Expression, met: Expression, otherwise: Expression): Expression =>
    ifAtLeast(sum(given, constant(EVEN)), limit, met, otherwise);
  const stateIt = "state the margin on friction losses, 0 for none, and select the pump with it";
  return reaches(found, constant(""), reaches(head, constant(stateIt), constant(moved(pump))));
}

/** Margin on losses taken where none is stated, of all losses of a state. */
function assumedMargin(one: DutyState, duty: Duty): Expression {
  return product(asShare(FIELD.lossMargin), lossesAskedFor(one, duty));
}

/** Whether pumps and system have an operating point: no verdict passes on a state that has none. */
export function runsIn(one: DutyState, of: Criterion["of"]): Criterion {
  return limitOf({
    of,
    what: `operating flow, ${one.words}`,
    found: part(recordOf(one), "flow"),
    limit: constant(0),
    quantity: "flow",
    mustBe: "at least",
    broken: "fail",
    unanswered: "fail",
    why: NO_POINT,
  });
}

/** Whether each of several pumps side by side opens its check valve beside the others. */
function comesIn(one: DutyState, duty: Duty): readonly Criterion[] {
  if (pumpsSideBySide(duty) === 1 || one.isAlone) return [];
  const count = duty.otherPumps.length;
  const all = (yes: string, no: string): Expression =>
    ifAtLeast(
      part(recordOf(one), "running"),
      count === 0 ? one.pumps : sum(one.pumps, constant(count)),
      constant(yes),
      constant(no),
    );
  return [
    worded({
      of: "head",
      state: all("pass", "fail"),
      what: `pumps side by side, ${one.words}`,
      why: all(
        "each comes in beside the others",
        "the shutoff head is below the head the others hold, so a check valve stays shut",
      ),
    }),
  ];
}

/** The findings say which of them it is. */
export const NO_POINT =
  "no operating point: the pumps do not reach the system head, run off the end of their curve, or cannot hold the flow";

/** Shutoff head against the static head that a check valve opens against; the bought pump may come out lower. */
function shutoff(duty: Duty, pump: DutyPump): readonly Criterion[] {
  const others = duty.arrangement === "series" ? duty.otherPumps : [];
  if ([pump, ...others].some(({ curve }) => curve.leastFlow > 0)) return [];
  const normal = asStated(duty);
  const hasGreatest = duty.state.greatestStaticHead !== "blank";
  const highest = hasGreatest ? FIELD.greatestStaticHead : HEAD.staticHead;
  const asked = ({ staticHead, pressureHead, curve: { drawn }, speedRatio, inSeries }: DutyState): string =>
    [staticHead, pressureHead, drawn, speedRatio].map(({ key }) => key).join(" ") + JSON.stringify(inSeries);
  const cases = caseStatesOf(duty).filter((one) => asked(one) !== asked(normal));
  return [
    shutoffIn({ ...normal, staticHead: highest }, duty, hasGreatest ? "maximum static head" : "static head"),
    ...cases.map((one) => shutoffIn(one, duty, one.label)),
  ];
}

function shutoffIn(one: DutyState, duty: Duty, when: string): Criterion {
  const head = shutoffHead(one, duty);
  const isGraded = duty.state.acceptanceGrade !== "blank";
  const least = product(head, over(PUMP.headToleranceLower));
  return limitOf({
    of: "head",
    what: "shutoff head",
    found: isGraded ? least : head,
    ...(isGraded && { foundAtBest: head, assumed: "the pump comes out at the lower end of its grade" }),
    limit: sum(one.staticHead, one.pressureHead),
    quantity: "head",
    mustBe: "at least",
    broken: "fail",
    when,
    why: "may not open its check valve",
  });
}

/** How far a curve is carried with confidence: near its own speed, and trims down to a ratio that goes by specific speed. */
function band(duty: Duty, pump: DutyPump): readonly Criterion[] {
  const of = "head";
  const speed = { of, what: "speed over that of the curve", found: PUMP.speedRatio, broken: "check" } as const;
  const why = join(constant("affinity laws hold well within "), FIELD.speedBand, constant(" % of the tested speed"));
  return [
    ...(pump.speedRatio === 1
      ? []
      : [
          limitOf({ ...speed, limit: under(FIELD.speedBand), mustBe: "at least", why }),
          limitOf({ ...speed, limit: over(FIELD.speedBand), mustBe: "at most", why }),
        ]),
    ...(pump.trimRatio === 1
      ? []
      : [
          limitOf({
            of,
            what: "impeller over that of the curve",
            found: PUMP.trimRatio,
            limit: leastTrim(pump, duty),
            mustBe: "at least",
            broken: "check",
            why: "a deeper trim loses more than the rule says",
          }),
        ]),
  ];
}

/** By specific speed; the shallower where that is not known. */
function leastTrim({ speed, curve }: DutyPump, { unitSet }: Duty): Expression {
  if (speed === undefined || curve.bestEfficiency === undefined) return FIELD.deepestMixedTrim;
  const inUsUnits = unitSet === "US" ? KIND.specificSpeed : product(KIND.specificSpeed, constant(US_PER_SI));
  return ifAtLeast(FIELD.deepTrimSpeed, inUsUnits, FIELD.deepestTrim, FIELD.deepestMixedTrim);
}

/** Where the pumps give most of what the duty asks of them: as stated, and on the clear liquid of a slurry. */
function muchMore(duty: Duty): readonly Criterion[] {
  const states = dutyCases(duty).filter(({ isStated }) => isStated);
  return states.map((one) =>
    limitOf({
      of: "head",
      what: one === asStated(duty) ? "operating flow" : `operating flow, ${one.words}`,
      found: part(recordOf(one), "flow"),
      limit: product(one.flow, over(FIELD.flowInHand)),
      quantity: "flow",
      mustBe: "at most",
      broken: "check",
      when: join(FIELD.flowInHand, constant(" % over the duty flow")),
      why: "nothing here throttles it: slow or trim the pump, or set a valve",
    }),
  );
}

function viscousLoss(duty: Duty, pump: DutyPump): readonly Criterion[] {
  const pumps = [
    { found: viscousHeadRatio(duty, pump), when: undefined },
    ...duty.otherPumps.map((other) => ({ found: otherViscousHeadRatio(duty, other), when: other.name })),
  ];
  return pumps.flatMap(({ found, when }) =>
    found === undefined
      ? []
      : [
          limitOf({
            of: "head",
            what: "head in the viscous liquid over that with water, at best efficiency",
            found,
            limit: FIELD.viscousHead,
            mustBe: "at least",
            broken: "check",
            ...(when !== undefined && { when }),
            why: "ask the maker for a test with so thick a liquid",
            cites: viscousCorrectionMethod.cites[0],
          }),
        ],
  );
}

/** A line that rises above its delivery has to be filled over its highest point first, and held there without a siphon. */
function overTheSummit(duty: Duty): readonly Criterion[] {
  if (hasRoute(duty)) return overTheRoute(duty);
  if (duty.state.standingLevel === "blank") return [];
  const suction = sum(HEAD.suctionPipe, HEAD.suctionFittings);
  const losses = sum(suction, HEAD.dischargePipe, HEAD.dischargeFittings);
  return [
    limitOf({
      of: "head",
      what: "head left for the highest point of the line, filling at the duty flow",
      found: difference(POINT.headAtDuty, losses),
      foundAtBest: difference(POINT.headAtDuty, suction),
      limit: difference(FIELD.standingLevel, FIELD.sourceLevel),
      quantity: "head",
      mustBe: "at least",
      broken: "fail",
      assumed: "the whole line's losses before it",
      why: "the line may not fill over it",
    }),
  ];
}

function atFillingVelocity({ unitSet }: Duty): Expression {
  return join(rounded(FIELD.fillingVelocity, 2), constant(` ${printedUnit("velocity", unitSet)} in the largest bore`));
}

function fillsIt(duty: Duty): Criterion {
  return limitOf({
    of: "head",
    what: "flow over the summit while the line fills",
    found: part(FILLING, "flow"),
    limit: ROUTE.fillingLeast,
    quantity: "flow",
    mustBe: "at least",
    broken: "fail",
    unanswered: "fail",
    when: duty.state.fillingFlow === "blank" ? atFillingVelocity(duty) : "as stated",
    why: "the line does not fill",
    cites: fillTimeMethod.cites[0],
  });
}

/** By the route: the flow over the summit while filling. */
function overTheRoute(duty: Duty): readonly Criterion[] {
  return [fillsIt(duty), ...filledStates(duty).flatMap((one) => routeIn(one, duty))];
}

/** The same in another state: head against head at the flow to fill with. */
function routeIn(one: DutyState, duty: Duty): readonly Criterion[] {
  const lower = lowerSource(one, duty);
  const pumps = routeCell(duty, one, "headFilling");
  return [
    limitOf({
      of: "head",
      what: `head over the summit while the line fills, ${one.words}`,
      found: pumps,
      ...(lower !== undefined && {
        foundAtBest: sum(pumps, lower),
        assumed: "the source at its lowest with the maximum static head",
      }),
      limit: routeCell(duty, one, "headToFill"),
      quantity: "head",
      mustBe: "at least",
      broken: "fail",
      when: duty.state.fillingFlow === "blank" ? atFillingVelocity(duty) : "as stated",
      why: "the line does not fill",
      cites: fillTimeMethod.cites[0],
    }),
  ];
}
