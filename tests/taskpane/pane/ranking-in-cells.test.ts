import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import type { CaseText, DutyText, SegmentText } from "../../../shared/duty/duty-text.ts";
import { INVENTED_CURVE_ROWS } from "../../../shared/pump-table/library/invented-pumps.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { reasonsText, reasonText } from "../../../shared/pump-table/reason-text.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { candidatesOf } from "../../../taskpane/pane/pump/candidates.ts";
import { rankingOf } from "../../../taskpane/pane/pump/ranking.ts";
import { bypass } from "../../support/bypass.ts";
import { QUARRY } from "../../support/duty-of.ts";

const RANKPUMPS = entryNamed("RANKPUMPS") as Entry;
const candidates = candidatesOf("a test", [{ source: "a test", curves: inventedPumps().curves }]);

type Row = readonly Cell[];

/** Rank, name, flow, NPSH available and margin, for, against and the deciding case, as a cell has them. */
function inPane(duty: DutyText): readonly Row[] {
  const selection = rankingOf(duty, candidates)?.selection;
  if (!selection?.ok) throw new Error(JSON.stringify(selection?.findings));
  const { unitSet } = duty;
  const { flow: ofFlow, head: ofHead } = UNIT_SETS[unitSet];
  const head = (value: number | undefined): Cell => (value === undefined ? "" : fromEngine(value, ofHead));
  return [
    ...selection.value.ranked.map((one) => [
      one.rank,
      one.pump.name,
      fromEngine(one.flow, ofFlow),
      head(one.head),
      reasonsText(one.reasonsFor, unitSet),
      reasonsText(one.reasonsAgainst, unitSet),
      head(one.npshAvailable),
      head(one.npshMargin),
      one.decidedIn ?? "",
    ]),
    ...selection.value.leftOut.map(({ pump, reason }) => [
      "left out",
      pump.name,
      "",
      "",
      "",
      reasonText(reason, unitSet),
      "",
      "",
      "",
    ]),
  ];
}

function inCells(args: readonly Argument[]): readonly Row[] {
  const outcome = call(RANKPUMPS, args);
  if (!outcome.ok) throw new Error(outcome.error.message);
  const [, ...rows] = outcome.value as readonly Row[];
  return rows.map((row) => [0, 1, 2, 3, 10, 11, 12, 13, 14].map((i) => row[i] ?? ""));
}

/** With figures alike but for the last digits of having been converted. */
function expectAlike(cells: readonly Row[], pane: readonly Row[]): void {
  expect(cells.map((row) => row.slice(0, 2))).toEqual(pane.map((row) => row.slice(0, 2)));
  for (const [i, row] of cells.entries()) {
    for (const [j, cell] of row.entries()) {
      const other = pane[i]?.[j];
      if (typeof cell === "number") expect(cell, String(row[1])).toBeCloseTo(other as number, 6);
      else expect(cell).toBe(other);
    }
  }
}

const line = (rows: readonly SegmentText[], each: Cell) =>
  rows.map(
    ({ pipe, length, fittings, share = "" }): Row => [pipe, Number(length), fittings, share === "each" ? each : null],
  );
const caseText = (name: string, fields: CaseText["fields"]): CaseText => ({ name, hours: "", fields });

describe("the ranking in the pane and RANKPUMPS", () => {
  it.each(["fixed", "variable"] as const)(
    "say the same of a bypass of two pumps in three cases, speed %s",
    (speedControl) => {
      const cases = [
        caseText("storm", { flow: "3300", sourceLevel: "590" }),
        caseText("summer", { temperature: "90", flow: "2200" }),
      ];
      const typed = bypass(
        { pumpsRunning: "2", frictionMargin: "10 %", deliveryPressure: "5", npshMargin: "3", speedControl },
        { cases },
      );
      const { fields, suctionLine, dischargeLine } = typed;
      const inCase: readonly Row[] = [
        ["case", "flow", "static head", "suction lift", "temperature"],
        ["storm", 3300, 22, 10, null],
        ["summer", 2200, null, null, 90],
      ];
      const cells = inCells([
        INVENTED_CURVE_ROWS,
        3000,
        24,
        line(
          suctionLine.map((row) => ({ ...row, share: "each" })),
          "1/2",
        ),
        line(dischargeLine, "1/2"),
        fields.liquid,
        70,
        2,
        null,
        12,
        600,
        null,
        5,
        "10 %",
        3,
        null,
        null,
        inCase,
        speedControl,
        null,
        "US",
      ]);
      const pane = inPane(typed);
      expect(pane.filter(([rank]) => typeof rank === "number").length).toBeGreaterThan(1);
      expectAlike(cells, pane);
    },
  );

  const WEIGHTS = { weightEfficiency: "100", weightNearness: "0", weightNpshMargin: "0", weightTrim: "0" };

  it.each([
    { what: "without its range", own: {}, weights: null, pressure: null },
    { what: "by efficiency alone", own: WEIGHTS, weights: [[100, 0, 0, 0]], pressure: null },
    { what: "with 55 psi behind the pumps", own: { pressureAllowed: "55" }, weights: null, pressure: 55 },
  ])("say the same of the quarry sample $what", ({ own, weights, pressure }) => {
    const stated = { ...QUARRY.fields, leastStaticHead: "", greatestStaticHead: "", agedRoughness: "", ...own };
    const { fields, suctionLine, dischargeLine } = { ...QUARRY, fields: stated };
    const number = (text: string): number => Number(text.replace(",", ""));
    const cells = inCells([
      INVENTED_CURVE_ROWS,
      number(fields.flow),
      number(fields.deliveryLevel) - number(fields.sourceLevel),
      line(suctionLine, null),
      line(dischargeLine, null),
      fields.liquid,
      number(fields.temperature),
      null,
      null,
      number(fields.pumpLevel) - number(fields.sourceLevel),
      number(fields.altitude),
      null,
      null,
      fields.frictionMargin === "" ? null : `${number(fields.frictionMargin)} %`,
      fields.npshMargin === "" ? null : number(fields.npshMargin),
      fields.service === "" ? null : fields.service,
      pressure,
      null,
      null,
      weights,
      "US",
    ]);
    const pane = inPane({ ...QUARRY, fields: stated });
    expectAlike(cells, pane);
    expect(pane.some(([, , , , , against]) => String(against).includes("against a shut valve"))).toBe(
      pressure !== null,
    );
  });
});
