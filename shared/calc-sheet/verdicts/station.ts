import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { operatingRegionMethod } from "../../../src/pump/operating-region.ts";
import { boostersMethod, LEAST_BOOSTER_INLET } from "../../../src/station/boosters.ts";
import { npshMarginMethod } from "../../../src/suction/npsh-margin.ts";
import { STOP_NOT_KNOWN } from "../../catalogue/entries/station.ts";
import { type Duty, type DutyOtherPump, type DutyPump, pumpsInSeries } from "../../duty/duty.ts";
import { holdsCheckValve } from "../../duty/line-questions.ts";
import { cell, constant, difference, type Expression, ifAtLeast, ifNumber, ifText, part } from "../expression.ts";
import { BOOSTERS, hasBoosters } from "../sections/boosters.ts";
import {
  type DutyState,
  dutyCases,
  isStation,
  leastSystem,
  NOT_GIVEN,
  ofStationPump,
  recordOf,
} from "../sections/duty-cases.ts";
import { npshMarginBasis, npshMarginOver } from "../sections/npsh.ts";
import { otherRegion } from "../sections/other-regions.ts";
import { otherClasses, pumpsAbreast } from "../sections/pressure-nozzles.ts";
import { STOPS, stopLabels } from "../sections/pump-stops.ts";
import {
  drawsFromSource,
  isOwnRow,
  otherPowers,
  pumpsTogether,
  STATION_NPSH,
  stationRow,
} from "../sections/station-states.ts";
import { type Criterion, limitOf, onlyWhereBroken, worded } from "./criterion.ts";

interface OfPump {
  readonly one: DutyState;
  readonly pump: DutyOtherPump;
  /** Its row in the record, under the station's own. */
  readonly row: number;
  readonly when: string;
}

/** Each further pump in each state of the station. */
function ofEach(duty: Duty, criteria: (of: OfPump) => readonly Criterion[]): readonly Criterion[] {
  return dutyCases(duty)
    .filter((one) => isStation(one, duty))
    .flatMap((one) =>
      duty.otherPumps.flatMap((pump, i) => criteria({ one, pump, row: i + 2, when: `${pump.name}, ${one.words}` })),
    );
}

/** Whether each further pump pumps beside the others: held shut it only heats. */
export function stationHead(duty: Duty): readonly Criterion[] {
  return ofEach(duty, ({ one, row, when }) => {
    const does = part(recordOf(one), "does", row);
    const said = (yes: string, no: string): Expression => ifText(does, "runs", constant(yes), constant(no));
    return [worded({ of: "head", state: said("pass", "fail"), what: when, why: does })];
  });
}

/** Where each further pump runs on its curve, by its own flow. */
export function stationRegion(duty: Duty): readonly Criterion[] {
  return ofEach(duty, ({ one, pump, row, when }) => {
    if (pump.curve.bestEfficiency === undefined) {
      return [worded({ of: "region", state: "open", what: `${when}: its curve gives no efficiency` })];
    }
    const region = otherRegion(pump);
    const facts = {
      of: "region",
      what: "flow over best efficiency flow (BEP)",
      found: ofStationPump(one, "percentOfBestFlow", row - 1),
      quantity: "percent",
      when,
    } as const;
    const [preferred, least30] = operatingRegionMethod.cites;
    const why = "outside the preferred region";
    return [
      limitOf({ ...facts, limit: part(region, "most"), mustBe: "at most", broken: "check", why, cites: preferred }),
      limitOf({ ...facts, limit: part(region, "least"), mustBe: "at least", broken: "check", why, cites: preferred }),
      limitOf({
        ...facts,
        limit: part(region, "continuous"),
        mustBe: "at least",
        broken: onlyWhereBroken(facts.found, part(region, "continuous")),
        why: "not for continuous running",
        cites: least30,
      }),
    ];
  });
}

/** NPSH of each further pump that draws from the source, by its own flow. */
export function stationNpsh(duty: Duty): readonly Criterion[] {
  return ofEach(duty, ({ one, pump, row, when }) => {
    if (!drawsFromSource(duty, row - 1)) return [];
    if (pump.curve.npshRequired === undefined) {
      return [worded({ of: "npsh", state: "open", what: `${when}: its curve gives no NPSH required` })];
    }
    const at = (key: "npshAvailable" | "npshMargin"): Expression =>
      cell(STATION_NPSH, stationRow(duty, one, row - 1), key);
    const required = ofStationPump(one, "npshRequired", row - 1);
    const common = { of: "npsh", quantity: "head", mustBe: "at least" } as const;
    const isTyped = duty.state.npshMargin !== "blank";
    return [
      limitOf({
        ...common,
        what: "NPSH available",
        found: at("npshAvailable"),
        limit: required,
        broken: "fail",
        when,
        why: "the pump cavitates and cannot run there",
      }),
      limitOf({
        ...common,
        what: "NPSH margin",
        found: at("npshMargin"),
        limit: ifNumber(required, npshMarginOver(required, one.suctionLift, duty), NOT_GIVEN),
        broken: isTyped ? "fail" : "check",
        when: `${when}; margin ${npshMarginBasis(duty)}`,
        why: isTyped ? "the margin asked for is not kept" : "cavitation is near",
        ...(!isTyped && { cites: npshMarginMethod.cites[0] }),
      }),
    ];
  });
}

/** The greatest power of each further pump against what the driver of the chosen one gives: each has a driver of its own. */
export function stationDriver(duty: Duty, gives: Expression): readonly Criterion[] {
  const silent = duty.otherPumps.filter(({ curve }) => curve.bestEfficiency === undefined);
  return [
    ...otherPowers(duty).map(({ name, power }) =>
      limitOf({
        of: "driver",
        what: "driver as sized for the selected pump",
        found: gives,
        limit: power,
        quantity: "power",
        mustBe: "at least",
        broken: "check",
        when: `${name}, maximum power on its curve`,
        why: "size a driver of its own for it",
      }),
    ),
    ...silent.map(({ name }) =>
      worded({
        of: "driver",
        state: "open",
        what: `${name}: its curve gives no efficiency, so its power is not known`,
      }),
    ),
  ];
}

/** What the rest does when one pump stops: none may run off its curve, and none should leave its region. */
export function stopCriteria(duty: Duty): readonly Criterion[] {
  return stopLabels(duty).map((label, row) => {
    const verdict = part(STOPS, "verdict", row);
    const flow = part(STOPS, "flow", row);
    const running = ifText(verdict, "runs", constant("pass"), constant("check"));
    const going = ifAtLeast(constant(0), flow, constant("fail"), running);
    const state: Expression = {
      op: "ifNumber",
      of: flow,
      met: going,
      otherwise: ifText(verdict, STOP_NOT_KNOWN, constant("open"), constant("check")),
    };
    return worded({
      of: "region",
      state: { op: "ifNumber", of: part(STOPS, "headLeft", row), met: constant("fail"), otherwise: state },
      what: label,
      why: verdict,
    });
  });
}

/** Whether each of several pumps side by side has a check valve of its own. */
export function checkValveOfEach(duty: Duty): readonly Criterion[] {
  if (pumpsTogether(duty) === 1 || duty.arrangement === "series") return [];
  const hasOwn = duty.dischargeLine.some((row) => isOwnRow(row) && holdsCheckValve(row));
  const without = duty.otherPumps.filter(({ hasCheckValve }) => !hasCheckValve);
  const said = (what: string): Criterion =>
    worded({
      of: "head",
      state: "check",
      what,
      why: "a stopped pump lets liquid back: give each a check valve, in a row of the discharge line marked “each”",
    });
  return [
    ...(hasOwn ? [] : [said("check valve of each pump: none in the rows of the discharge line marked “each”")]),
    ...without.map(({ name }) => said(`${name}: no check valve of its own`)),
  ];
}

/** Pumps along the line while they run: a booster keeps some pressure at its inlet, and every pump its NPSH. */
export function boosterCriteria(duty: Duty): readonly Criterion[] {
  if (!hasBoosters(duty)) return [];
  const [, rule] = boostersMethod.cites;
  const unit = UNIT_SETS[duty.unitSet].gaugePressure;
  return Array.from({ length: pumpsInSeries(duty) - 1 }, (_, i) => i + 1).flatMap((row) => {
    const facts = {
      of: "pressure",
      what: `inlet of the booster, stage ${row + 1}`,
      found: part(BOOSTERS, "inletPressure", row),
      quantity: "gaugePressure",
      mustBe: "at least",
      when: "running",
      cites: rule,
    } as const;
    return [
      limitOf({
        ...facts,
        limit: constant(0),
        broken: "fail",
        why: "a vacuum at the booster: move it or give it more",
      }),
      limitOf({
        ...facts,
        limit: constant(fromEngine(LEAST_BOOSTER_INLET, unit)),
        broken: "check",
        why: "move the booster, or let the pump before it give more",
      }),
    ];
  });
}

/** NPSH of every pump along the line but the first, which has that of the source. */
export function boosterNpsh(duty: Duty, chosen: DutyPump): readonly Criterion[] {
  if (!hasBoosters(duty)) return [];
  const count = pumpsInSeries(duty);
  const alike = count - duty.otherPumps.length;
  const { suctionLift } = leastSystem(duty);
  const isTyped = duty.state.npshMargin !== "blank";
  return Array.from({ length: count - 1 }, (_, i) => i + 1).flatMap((row) => {
    const { curve } = duty.otherPumps[row - alike] ?? chosen;
    const when = `booster, stage ${row + 1}, running`;
    if (curve.npshRequired === undefined) {
      return [worded({ of: "npsh", state: "open", what: `${when}: its curve gives no NPSH required` })];
    }
    const available = part(BOOSTERS, "npshAvailable", row);
    const required = part(BOOSTERS, "npshRequired", row);
    const common = { of: "npsh", quantity: "head", mustBe: "at least" } as const;
    return [
      limitOf({
        ...common,
        what: "NPSH available",
        found: available,
        limit: ifNumber(required, required, NOT_GIVEN),
        broken: "fail",
        when,
        why: "the booster cavitates and cannot run there: move it back along the line",
      }),
      limitOf({
        ...common,
        what: "NPSH margin",
        found: difference(available, required),
        limit: ifNumber(required, npshMarginOver(required, suctionLift, duty), NOT_GIVEN),
        broken: isTyped ? "fail" : "check",
        when: `${when}; margin ${npshMarginBasis(duty)}`,
        why: isTyped ? "the margin asked for is not kept" : "cavitation is near",
        ...(!isTyped && { cites: npshMarginMethod.cites[0] }),
      }),
    ];
  });
}

/** Flanges of each further pump side by side against its own greatest pressure. */
export function otherFlanges(duty: Duty): readonly Criterion[] {
  return pumpsAbreast(duty).flatMap((other) =>
    ["suction", "discharge"].map((side, row) => {
      const classes = otherClasses(other);
      const rating = part(classes, "rating", row);
      return limitOf({
        of: "pressure",
        what: `${other.name}, ${side} flange`,
        found: part(classes, "greatest", row),
        limit: ifNumber(rating, rating, "its flange class is not stated"),
        quantity: "gaugePressure",
        mustBe: "at most",
        broken: "fail",
        when: "closed valve",
      });
    }),
  );
}
