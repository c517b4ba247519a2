import { STANDARD_ATMOSPHERE } from "../../../src/basis/constants.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { amount, andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import { kinematicViscosityOf, type LiquidState } from "../../../src/liquid/liquid.ts";
import { readyPump } from "../../../src/pump/ready-pump.ts";
import { type RankedPump, type Selection, selectionMethod } from "../../../src/pump/selection.ts";
import { THIN_VISCOSITY, viscousCorrectionMethod } from "../../../src/pump/viscous-correction.ts";
import { rankedForStation, type StationAsked, stationAsked } from "../../../src/station/station-ranking.ts";
import type { CurveTable } from "../../pump-table/curve-table.ts";
import { reasonsText, reasonText } from "../../pump-table/reason-text.ts";
import { findingText } from "../../text/finding-text.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { ROWS_IN_WORDS } from "../parameters/line.ts";
import { lineOrNothing } from "../parameters/line-or-nothing.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { pumpTable } from "../parameters/pump-table.ts";

/** As many remarks on the rows of one table as anybody reads. */
const MOST_REMARKS = 20;

export const RANKPUMPS = defineEntry({
  id: "RANKPUMPS",
  group: "Pump",
  summary: "The pumps of a table that meet a duty, best first, with why, and those left out with why not",
  method: `Each pump is held against the duty by every one of its curves: as drawn; slowed down to the next speed given, or to its lowest speed; sped up to its highest speed; trimmed down to the next impeller given, or to its least. It meets the duty where its head at the flow asked is at least the system's, and runs where the two curves cross. The best way of each pump counts. Pumps inside the preferred region that give no more than 1.2 times the flow asked and start by themselves come first, then those that break one of these rules. Within each kind the score decides: 45 parts efficiency on the duty (liquid power asked over shaft power), 30 parts nearness to best efficiency flow, 10 parts little trim; a choice of this product. ${ROWS_IN_WORDS} Limits of speed and impeller are those of the columns lowest speed, highest speed, least impeller and greatest impeller; where they are not given, the curves given are the limit. In a liquid thicker than cold water (1.8 cSt) the curve is corrected by ANSI/HI 9.6.7, for which the table has to give speed and efficiency. A pump that would give more than twice the flow, run off its curve or run below a tenth of best efficiency flow is left out. Of a slurry (a liquid with solids) the head held against the curves is the equivalent water head, that of slurry over the head ratio of ASPUMPED; head, power, efficiency and NPSHR answered are those on slurry, and the reasons speak of the curve for water. NPSH is not judged, since suction lift and altitude are no arguments: the column NPSHR stands to be held against NPSHA at that flow.`,
  cites: selectionMethod.cites,
  parameters: {
    pumpTable,
    flow: quantity("flow", { about: "Flow the pump must give", range: "above 0" }),
    staticHead: quantity("head", {
      about: "Level at the destination less level at the source: liquid surfaces, or the centreline of a free outlet",
    }),
    suctionLine: lineOrNothing("The suction line, from the liquid to the pump"),
    dischargeLine: lineOrNothing(
      "The discharge line, from the pump to its outlet; one exit in the last row, free or submerged alike",
    ),
    liquid,
    temperature,
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
        "SI",
      ],
      part: [1, 1],
      answer: "Right",
      source:
        "by inspection: 45 m of level alone is more than the 24 m of the one curve at 100 L/s; the other gives 50 m, and 26 m of 12in pipe lose less than 2 m",
    },
  ],
  run: (
    { pumpTable: table, liquid: pumped, temperature: kelvin, flow, staticHead, suctionLine, dischargeLine },
    { unitSet },
  ) =>
    andThen(pumped.at(kelvin), (state) =>
      andThen(
        stationAsked([
          {
            flow,
            staticHead,
            suctionLine,
            dischargeLine,
            sourcePressure: 0,
            deliveryPressure: 0,
            frictionMargin: 0,
            pumps: 1,
            arrangement: "parallel",
            atmosphericPressure: STANDARD_ATMOSPHERE,
            liquid: state,
          },
        ]),
        (asked) => ranking(table, asked, state, unitSet),
      ),
    ),
});

function ranking(table: CurveTable, asked: StationAsked, state: LiquidState, unitSet: UnitSetName) {
  const pumps = table.pumps.filter(({ usable }) => usable).map(readyPump);
  return andThen(rankedForStation(asked, { pumps }), (selection) => {
    return succeed(
      [
        ...selection.ranked.map((pump) => rankedRow(pump, unitSet)),
        ...selection.leftOut.map(({ pump, reason }) => leftOutRow(pump.name, reasonText(reason, unitSet))),
        ...table.pumps
          .filter(({ usable }) => !usable)
          .map((pump) => leftOutRow(pump.name, faultsOf(pump.findings, unitSet))),
      ],
      remarks(table, selection, state),
    );
  });
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
  };
}

function faultsOf(findings: readonly Finding[], unitSet: UnitSetName): string {
  const errors = findings.filter(({ kind }) => kind === "error");
  const shown = errors.slice(0, 3).map((finding) => findingText(finding, unitSet));
  return errors.length > shown.length ? `${shown.join(" ")} (${errors.length - shown.length} more)` : shown.join(" ");
}

function remarks(table: CurveTable, { ranked }: Selection, state: LiquidState): readonly Finding[] {
  const findings: Finding[] = [];
  if (ranked.length === 0) findings.push({ code: "rank-none-meets", kind: "check", subject: "pump table" });
  else findings.push({ code: "rank-npsh-not-judged", kind: "check", subject: "NPSHR" });
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
