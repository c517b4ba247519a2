import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { all, amount, andThen, type Finding, type Result, succeed } from "../../../src/basis/result.ts";
import { kinematicViscosityOf, type Liquid } from "../../../src/liquid/liquid.ts";
import type { Line } from "../../../src/pipework/line.ts";
import type { Arrangement } from "../../../src/pump/head-curve.ts";
import { readyPump } from "../../../src/pump/ready-pump.ts";
import { type RankedPump, type Selection, type SelectionInput, selectionMethod } from "../../../src/pump/selection.ts";
import { THIN_VISCOSITY, viscousCorrectionMethod } from "../../../src/pump/viscous-correction.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import {
  rankedForStation,
  type StationAsked,
  type StationCase,
  type StationCases,
  stationAsked,
} from "../../../src/station/station-ranking.ts";
import { SERVICES, type ServiceName } from "../../../src/tables/services.ts";
import type { CurveTable } from "../../pump-table/curve-table.ts";
import { reasonsText, reasonText } from "../../pump-table/reason-text.ts";
import { findingText } from "../../text/finding-text.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity } from "../parameter.ts";
import { EACH_IN_WORDS, ROWS_IN_WORDS } from "../parameters/line.ts";
import { pumpsLineOrNothing } from "../parameters/line-or-nothing.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { openChoice } from "../parameters/open-choice.ts";
import { pumpTable } from "../parameters/pump-table.ts";
import { rankingCases, type StatedCase } from "../parameters/ranking-cases.ts";
import { arrangement, numberOfPumps } from "../parameters/running-pump.ts";
import { scoreWeights } from "../parameters/score-weights.ts";
import { share } from "../parameters/share.ts";
import { gaugeOf, type SurfacePressure, surfacePressure } from "../parameters/surface-pressure.ts";
import { altitude, deliveryPressure, openLift } from "./system-and-suction.ts";

/** As many remarks on the rows of one table as anybody reads. */
const MOST_REMARKS = 20;

export const RANKPUMPS = defineEntry({
  id: "RANKPUMPS",
  group: "Pump",
  summary: "The pumps of a table that meet a duty, best first, with why, and those left out with why not",
  method: `Each pump is compared with the duty by every one of its curves: as drawn; slowed down to the next speed given, or to its lowest speed; sped up to its highest speed; trimmed down to the next impeller given, or to its minimum. It meets the duty where its head at the flow asked is at least the system's, and runs where the two curves cross. Several equal pumps side by side take a share of the flow each, in series a share of the head; figures are those of one of them. With cases a pump has to meet every one, all with one speed and trim, or each at its own speed; the lowest of its scores counts, and the case of it is named. The best way of each pump counts. Pumps inside the preferred region that keep their NPSH margin, give no more than 1.2 times the flow asked and start by themselves come first, then those that break one of these rules. Within each kind the score decides, by weights of 45 for efficiency on the duty (liquid power asked over shaft power), 30 for nearness to best efficiency flow, 15 for NPSH margin and 10 for little trim, or by those stated; a choice of this product. NPSH available is that of NPSHA, the margin that of NPSHMARGIN where none is stated; without a suction lift NPSH is not judged. A pump that requires more NPSH than there is, that gives a greater pressure against a shut valve than its column maximum working pressure or the maximum pressure stated, more than twice the flow, runs off its curve or runs below a tenth of best efficiency flow is left out. So is one that cannot fill the line: where rows of the discharge line state levels, the last among them, it must give the head over the highest of level and losses at the filling flow, that of 0.3 m/s (1 ft/s) in the largest bore; the source lies the static head below the last level, and in a case higher or lower by as much as its suction lift is less or more. The head asked is no less than over that place at any flow: no siphon is counted on. That pressure is the maximum head of its curve (of all pumps in series) on the source pressure and level, without tolerance or overspeed; a lift takes nothing from it. ${ROWS_IN_WORDS} ${EACH_IN_WORDS} Limits of speed and impeller are those of the columns lowest speed, highest speed, minimum impeller and maximum impeller; where they are not given, the curves given are the limit, but for a lowest speed at variable speed: then 0.2 of the curve's. In a liquid thicker than cold water (1.8 cSt) the curve is corrected by ANSI/HI 9.6.7, for which the table has to give speed and efficiency. Of a slurry (a liquid with solids) the head compared with the curves is the equivalent water head, that of slurry over the head ratio of ASPUMPED; head, power, efficiency and NPSH answered are those on slurry, and the reasons speak of the curve for water.`,
  cites: selectionMethod.cites,
  parameters: {
    pumpTable,
    flow: quantity("flow", { about: "Flow the pumps must give, all together", range: "above 0" }),
    staticHead: quantity("head", {
      about: "Level at the destination less level at the source: liquid surfaces, or the centreline of a free outlet",
    }),
    suctionLine: pumpsLineOrNothing("The suction line, from the liquid to the pump"),
    dischargeLine: pumpsLineOrNothing(
      "The discharge line, from the pump to its outlet; one exit in the last row, free or submerged alike",
    ),
    liquid,
    temperature,
    numberOfPumps,
    arrangement,
    suctionLift: openLift,
    altitude,
    sourcePressure: surfacePressure,
    deliveryPressure,
    frictionMargin: share({
      about: "Margin on friction losses: what is added to those of both lines",
      range: "0 or more",
      whenLeftOut: { value: 0, shown: "0" },
    }),
    NPSHMargin: quantity("head", {
      about: "NPSH margin to keep over NPSHR",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "that of NPSHMARGIN for the service" },
    }),
    service: openChoice(SERVICES, "What the pump is for", "the margin of a suction lift"),
    maximumPressure: quantity("gaugePressure", {
      about: "Maximum pressure that what stands behind the pumps holds",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "that of each pump's casing, where the table gives it" },
    }),
    cases: rankingCases,
    speedControl: choice(["fixed", "variable"], {
      about: "Speed in the cases: fixed, one for all; variable, each at the speed that gives its flow",
      whenLeftOut: "fixed",
      also: { vfd: "variable", vsd: "variable" },
    }),
    weights: scoreWeights,
  },
  answer: {
    kind: "table",
    name: "ranking",
    columns: {
      rank: { name: "rank" },
      pump: { name: "pump" },
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      efficiency: { name: "efficiency", quantity: "ratio" },
      percentOfBestFlow: { name: "% of BEP flow" },
      npshRequired: { name: "NPSHR", quantity: "head" },
      shaftPower: { name: "shaft power", quantity: "power" },
      speed: { name: "speed", quantity: "speed" },
      impellerDiameter: { name: "impeller diameter", quantity: "size" },
      for: { name: "for" },
      against: { name: "against" },
      npshAvailable: { name: "NPSHA", quantity: "head" },
      npshMargin: { name: "NPSH margin", quantity: "head" },
      decidedIn: { name: "deciding case" },
    },
  },
  examples: [
    {
      args: [
        [
          ["pump", "flow", "head", "efficiency"],
          ["Small", 0, 40, 0],
          ["Small", 50, 36, 0.6],
          ["Small", 100, 24, 0.7],
          ["Right", 0, 62, 0],
          ["Right", 50, 58, 0.62],
          ["Right", 100, 50, 0.75],
          ["Right", 150, 36, 0.7],
        ],
        100,
        45,
        [["12in suction hose", 6, "1 entrance bell"]],
        [["12in sch40", 20, "1 gate, 1 exit"]],
        "water",
        null,
        ...Array.from({ length: 13 }, () => null),
        "SI",
      ],
      part: [1, 1],
      answer: "Right",
      source:
        "by inspection: 45 m of level alone is more than the 24 m of the one curve at 100 L/s; the other gives 50 m, and 26 m of 12in pipe lose less than 2 m",
    },
  ],
  run: ({ suctionLine, dischargeLine, ...rest }, { unitSet }) => {
    const sideBySide = rest.arrangement === "parallel" ? rest.numberOfPumps : 1;
    const stated = { ...rest, suctionLine: suctionLine.of(sideBySide), dischargeLine: dischargeLine.of(sideBySide) };
    const { pumpTable: table, cases, maximumPressure, weights, speedControl } = stated;
    const [first, ...others] = [undefined, ...cases].map((one) => caseOf(stated, one));
    return andThen(first as Result<StationCase>, (base) =>
      andThen(all(others), (rest) => {
        const station: StationCases = [base, ...rest];
        return andThen(stationAsked(station), (asked) =>
          ranking(table, station, asked, unitSet, {
            speedControl,
            weights,
            ...(maximumPressure !== null && { greatestPressure: maximumPressure }),
          }),
        );
      }),
    );
  },
});

interface Stated {
  readonly flow: number;
  readonly staticHead: number;
  readonly suctionLine: Line;
  readonly dischargeLine: Line;
  readonly liquid: Liquid;
  readonly temperature: number;
  readonly numberOfPumps: number;
  readonly arrangement: Arrangement;
  readonly suctionLift: number | null;
  readonly altitude: number;
  readonly sourcePressure: SurfacePressure;
  readonly deliveryPressure: number;
  readonly frictionMargin: number;
  readonly NPSHMargin: number | null;
  readonly service: ServiceName | null;
  readonly cases: readonly StatedCase[];
}

/** The duty of the arguments, or with what a case states over them. */
function caseOf(duty: Stated, stated: StatedCase | undefined): Result<StationCase> {
  const { cases, liquid: pumped, temperature: kelvin, NPSHMargin, service } = duty;
  const name = stated?.name ?? (cases.length > 0 ? "as stated" : undefined);
  const outlet = duty.dischargeLine.at(-1)?.endLevel;
  const suctionLift = stated?.suctionLift ?? duty.suctionLift;
  return andThen(standardAtmosphere(stated?.altitude ?? duty.altitude), (atmosphericPressure) =>
    andThen(
      (stated?.liquid ?? pumped).at(stated?.temperature ?? stated?.liquid?.statedTemperature ?? kelvin),
      (state) =>
        succeed({
          ...(name !== undefined && { name }),
          flow: stated?.flow ?? duty.flow,
          staticHead: stated?.staticHead ?? duty.staticHead,
          suctionLine: duty.suctionLine,
          dischargeLine: duty.dischargeLine,
          sourcePressure: stated?.sourcePressure ?? gaugeOf(duty.sourcePressure, atmosphericPressure),
          deliveryPressure: stated?.deliveryPressure ?? duty.deliveryPressure,
          liquid: state,
          frictionMargin: duty.frictionMargin,
          pumps: duty.numberOfPumps,
          arrangement: duty.arrangement,
          atmosphericPressure,
          ...(outlet !== undefined && { sourceLevel: outlet - duty.staticHead - fallOfSource(duty, stated) }),
          ...(suctionLift !== null && { suctionLift }),
          ...(NPSHMargin !== null && { npshMargin: NPSHMargin }),
          ...(service !== null && { service }),
        }),
    ),
  );
}

/** How much lower the source stands in a case: by its lift, or where nobody states one by its static head. */
function fallOfSource(duty: Stated, stated: StatedCase | undefined): number {
  const { suctionLift: lift, staticHead } = duty;
  if (lift !== null) return (stated?.suctionLift ?? lift) - lift;
  return (stated?.staticHead ?? staticHead) - staticHead;
}

function ranking(
  table: CurveTable,
  [stated]: StationCases,
  asked: StationAsked,
  unitSet: UnitSetName,
  by: Omit<SelectionInput, "pumps" | "duties">,
) {
  const pumps = table.pumps.filter(({ usable }) => usable).map(readyPump);
  return andThen(rankedForStation(asked, { pumps, ...by }), (selection) =>
    succeed(
      [
        ...selection.ranked.map((pump) => rankedRow(pump, unitSet)),
        ...selection.leftOut.map(({ pump, reason }) => leftOutRow(pump.name, reasonText(reason, unitSet))),
        ...table.pumps
          .filter(({ usable }) => !usable)
          .map((pump) => leftOutRow(pump.name, faultsOf(pump.findings, unitSet))),
      ],
      remarks(table, selection, stated, asked),
    ),
  );
}

function rankedRow(ranked: RankedPump, unitSet: UnitSetName) {
  const { rank, pump, flow, head, efficiency, bestFlowRatio, npshRequired, power, speed, diameter } = ranked;
  return {
    rank,
    pump: pump.name,
    flow,
    head,
    efficiency,
    percentOfBestFlow: bestFlowRatio === undefined ? null : 100 * bestFlowRatio,
    npshRequired,
    shaftPower: power,
    speed,
    impellerDiameter: diameter,
    for: reasonsText(ranked.reasonsFor, unitSet),
    against: reasonsText(ranked.reasonsAgainst, unitSet),
    npshAvailable: ranked.npshAvailable,
    npshMargin: ranked.npshMargin,
    decidedIn: ranked.decidedIn,
  };
}

function leftOutRow(name: string, why: string) {
  return {
    rank: "left out",
    pump: name,
    flow: undefined,
    head: undefined,
    efficiency: undefined,
    percentOfBestFlow: undefined,
    npshRequired: undefined,
    shaftPower: undefined,
    speed: undefined,
    impellerDiameter: undefined,
    for: undefined,
    against: why,
    npshAvailable: undefined,
    npshMargin: undefined,
    decidedIn: undefined,
  };
}

function faultsOf(findings: readonly Finding[], unitSet: UnitSetName): string {
  const errors = findings.filter(({ kind }) => kind === "error");
  const shown = errors.slice(0, 3).map((finding) => findingText(finding, unitSet));
  return errors.length > shown.length ? `${shown.join(" ")} (${errors.length - shown.length} more)` : shown.join(" ");
}

function remarks(
  table: CurveTable,
  { ranked }: Selection,
  { liquid: state, suctionLift, sourceLevel, dischargeLine }: StationCase,
  { cases }: StationAsked,
): readonly Finding[] {
  const findings: Finding[] = [];
  if (ranked.length === 0) findings.push({ code: "rank-none-meets", kind: "check", subject: "pump table" });
  else if (cases.some(({ duty }) => duty.npshAvailable === undefined)) {
    const why =
      suctionLift === undefined
        ? "no suction lift is stated"
        : "the liquid states no vapour pressure, or the suction line fails at the flow asked";
    findings.push({ code: "rank-npsh-not-judged", kind: "check", subject: "NPSHR", facts: { why } });
  }
  if (sourceLevel === undefined && dischargeLine.some(({ endLevel }) => endLevel !== undefined)) {
    findings.push({ code: "rank-filling-not-judged", kind: "check", subject: "discharge line" });
  }
  if (kinematicViscosityOf(state) > THIN_VISCOSITY) {
    findings.push({
      code: "rank-liquid-viscous",
      kind: "check",
      subject: "liquid",
      found: amount("kinematicViscosity", kinematicViscosityOf(state)),
      cites: viscousCorrectionMethod.cites[0],
    });
  }
  const doubts = table.pumps.flatMap((pump) => (pump.usable && pump.findings.length > 0 ? pump.findings : []));
  return [...findings, ...doubts.slice(0, MOST_REMARKS)];
}
