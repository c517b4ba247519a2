import { describe, expect, it } from "vitest";
import type { Scalar } from "../../../../shared/cells/cell.ts";
import { textIn, withTextIn } from "../../../../shared/duty/boxes.ts";
import { decodeDuty } from "../../../../shared/duty/decode.ts";
import type { DutyText, OtherPumpText } from "../../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../../shared/duty/samples.ts";
import { addressOf, boxOf } from "../../../../shared/ports/a1.ts";
import type { SheetSpec } from "../../../../shared/ports/sheet-spec.ts";
import { dutyText, STRAIGHT_PUMP } from "../../../support/duty-of.ts";
import { setOfDuty } from "../../../support/laid-out.ts";
import { after, dutiesAfter, type Edit, renamed, rowAt, typed } from "../../../support/opened-again.ts";

const SECOND: OtherPumpText = {
  ...STRAIGHT_PUMP,
  name: "second",
  level: "",
  checkValve: "",
  suctionSize: "",
  dischargeSize: "",
  flangeClass: "",
};

/** Two unlike pumps, cases, a price: every kind of input. */
const ALL = dutyText(
  {
    checkedBy: "ab",
    date: "2026-01-02",
    directCost: "46000",
    margin: "20",
    sourcePressure: "0.5 bar",
    frictionMargin: "",
  },
  {
    basis: { flow: "customer’s enquiry" },
    suctionLine: [
      { pipe: "10in sch40", length: "20 ft", fittings: "1 entrance flush" },
      { pipe: "8in sch40", length: "3 m", fittings: "" },
    ],
    pump: STRAIGHT_PUMP,
    otherPumps: [SECOND],
    cases: [
      { name: "high water", hours: "100", fields: { sourceLevel: "3 m" } },
      { name: "cold", hours: "", fields: { liquid: "water", flow: "500 gpm" } },
    ],
  },
);

describe("an input changed on the sheet", () => {
  const CASES: readonly (readonly [
    place: string,
    name: string,
    down: number,
    across: number,
    is: Scalar,
    text: string,
  ])[] = [
    ["flow", "flow", 0, 0, 700, "700"],
    ["flow.basis", "flow", 0, 2, "site survey", "site survey"],
    ["sourcePressure", "source_pressure", 0, 0, 10.5, "10.5"],
    ["sourcePressure", "source_pressure", 0, 0, "3.5 bar", "3.5 bar"],
    ["frictionMargin", "friction_margin", 0, 0, 0.5, "0.5 %"],
    ["checkedBy", "checked_by", 0, 0, "cd", "cd"],
    ["date", "date", 0, 0, 46355, "2026-11-29"],
    ["reference", "reference", 0, 0, "E-7", "E-7"],
    ["directCost", "direct_cost", 0, 0, 47000, "47000"],
    ["suctionLine.1.length", "suction_line", 1, 1, 12, "12"],
    ["suctionLine.1.fittings", "suction_line", 1, 2, "2 elbow 90", "2 elbow 90"],
    ["dischargeLine.0.pipe", "discharge_line", 0, 0, "6in sch40", "6in sch40"],
    ["suctionLine.0.share", "suction_line", 0, 3, 0.25, "0.25"],
    ["pump.name", "pump_name", 0, 0, "another", "another"],
    ["pump.speed", "curve_speed", 0, 0, 1770, "1770"],
    ["pump.points.2.head", "pump_curve", 3, 1, 281, "281"],
    ["otherPumps.0.points.2.head", "other_pump1_curve", 3, 1, 279, "279"],
    ["otherPumps.0.level", "other_pump1_level", 0, 0, 1, "1"],
    ["cases.0.name", "cases", 0, 0, "flood", "flood"],
    ["cases.0.sourceLevel", "cases", 0, 2, 8, "8"],
    ["cases.1.sourceLevel", "cases", 1, 2, 4, "4"],
    ["cases.0.flow", "cases", 0, 1, 650, "650"],
  ];

  it.each(CASES)("is in its box, and nothing else moves: %s in %s", (place, name, down, across, is, text) => {
    const { duty, taken, remarks } = after(ALL, typed(name, is, down, across));
    expect(textIn(duty, place)).toBe(text);
    expect(taken.map((one) => one.place)).toEqual([place]);
    expect(taken[0]).toMatchObject({ before: textIn(ALL, place), after: text });
    expect(remarks).toEqual([]);
    expect(withTextIn(duty, place, "")).toEqual(withTextIn(ALL, place, ""));
  });

  it("that is blanked is a blank box", () => {
    const { duty, taken, remarks } = after(
      ALL,
      typed("flow", null),
      typed("suction_line", null, 1, 2),
      typed("cases", null, 0, 2),
    );
    expect([duty.fields.flow, duty.suctionLine[1]?.fittings, duty.cases?.[0]?.fields.sourceLevel]).toEqual([
      "",
      "",
      "",
    ]);
    expect(taken.map(({ label, after: now }) => [label, now])).toEqual([
      ["Flow", ""],
      ["case, row 1: source liquid level", ""],
    ]);
    // A duty without a flow is not to be had: said, with its box.
    expect(remarks.map(({ kind }) => kind)).toEqual(["unread"]);
    expect(remarks[0]?.text).toContain("Flow, now blank");
  });

  it("that cannot be read is in its box all the same, and said", () => {
    const { duty, remarks } = after(ALL, typed("flow", "12 furlongs"), typed("suction_line", "8in nonsense", 0, 0));
    expect(duty.fields.flow).toBe("12 furlongs");
    expect(duty.suctionLine[0]?.pipe).toBe("8in nonsense");
    expect(remarks.map(({ kind }) => kind)).toEqual(["unread", "unread"]);
    expect(decodeDuty(duty).isComplete).toBe(false);
  });

  it("to a formula gives its value, and is said", () => {
    const { duty, remarks } = after(
      ALL,
      typed("flow", { f: "2*350", is: 700 }),
      typed("pump_curve", { f: "1+1", is: 282 }, 3, 1),
    );
    expect(duty.fields.flow).toBe("700");
    expect(duty.pump?.points[2]?.head).toBe("282");
    expect(remarks.map(({ kind }) => kind)).toEqual(["formula", "formula"]);
  });

  it("that holds an error cannot be read", () => {
    const { duty, remarks } = after(ALL, typed("flow", { f: "1/0", is: null }), typed("delivery_level", "#REF!"));
    expect(duty.fields.deliveryLevel).toBe("#REF!");
    expect(remarks.some(({ kind, text }) => kind === "unread" && text.includes("#REF!"))).toBe(true);
  });
});

describe("a result overwritten on the sheet", () => {
  it("is said, and is not taken", () => {
    const { duty, taken, remarks } = after(ALL, typed("total_head", 50));
    expect(duty).toEqual(ALL);
    expect(taken).toEqual([]);
    expect(remarks).toEqual([
      { kind: "overwritten", text: "Total dynamic head was overwritten with 50: not taken, it is worked out again." },
    ]);
  });
});

describe("a worked cell of a table overwritten on the sheet", () => {
  const sheet = setOfDuty(ALL).sheets(["Duty", "Estimate", "Workings"])[0] as SheetSpec;

  it("is said with its row and column, and is not taken", () => {
    // Three columns of the line are stated, and the share; the bore stands behind them.
    const { duty, taken, remarks } = after(ALL, typed("suction_line", 5.5, 1, 4));
    expect(duty).toEqual(ALL);
    expect(taken).toEqual([]);
    expect(remarks).toEqual([
      {
        kind: "overwritten",
        text: "Suction line, row 2: bore was overwritten with 5.5: not taken, it is worked out again.",
      },
    ]);
  });

  it("is said of every printed table of results", () => {
    const tables = Object.keys(sheet.names ?? {}).filter((name) => name.endsWith("_table"));
    expect(tables.length).toBeGreaterThan(2);
    for (const name of tables) {
      const { top, left } = boxOf(sheet.names?.[name] ?? "");
      const label = sheet.cells.find(({ at }) => at === addressOf(top + 1, left))?.v;
      // The first worked column is column C, whether labels begin in A or B.
      const { duty, remarks } = after(ALL, typed(name, 12_345, 1, 2 - left));
      expect(duty).toEqual(ALL);
      expect(remarks.map(({ kind }) => kind)).toEqual(["overwritten"]);
      expect(remarks[0]?.text).toContain(`“${label}”`);
      expect(remarks[0]?.text).toContain("was overwritten with 12345");
    }
  });

  it("is said of a list of findings and of a choice of a ranking", () => {
    const names = Object.keys(sheet.names ?? {}).filter((name) => /_(list|row)$/.test(name));
    expect(names.filter((name) => name.endsWith("_list")).length).toBeGreaterThan(1);
    expect(names.filter((name) => name.endsWith("_row")).length).toBeGreaterThan(1);
    for (const name of names) {
      expect(after(ALL, typed(name, "all is well")).remarks, name).toEqual([
        { kind: "overwritten", text: expect.stringMatching(/was overwritten with all is well: not taken/) },
      ]);
      expect(after(ALL, typed(name, null)).remarks.map(({ text }) => text)).toEqual([
        expect.stringMatching(/ a cell of “.*” emptied/),
      ]);
    }
  });

  it("is said of the sentence of a verdict", () => {
    const name = Object.keys(sheet.names ?? {}).find((one) => /^verdict_/.test(one)) ?? "";
    const { bottom, right } = boxOf(sheet.names?.[name] ?? "");
    const across = sheet.cells
      .filter(({ at, f }) => f !== undefined && boxOf(at).top === bottom && boxOf(at).left > right)
      .map(({ at }) => boxOf(at).left - right);
    const { remarks } = after(ALL, typed(name, "all is well", 0, across[0]));
    expect(remarks.map(({ text }) => text)).toEqual([
      expect.stringMatching(/^Verdict: .*: its sentence was overwritten with all is well: not taken/),
    ]);
  });

  it("is said where it was emptied, and not where its row was taken out", () => {
    expect(after(ALL, typed("suction_line", null, 0, 4)).remarks.map(({ text }) => text)).toEqual([
      "Suction line: a cell of “bore” emptied: it is worked out again.",
    ]);
    expect(after(ALL, rowAt("suction_line", 0, "out")).remarks).toEqual([]);
  });
});

describe("rows on the sheet", () => {
  it("that were put into a line are runs of the duty, and the others stay as typed", () => {
    const { duty, taken } = after(ALL, rowAt("suction_line", 1, ["6in sch40", 7, "1 gate"]));
    expect(duty.suctionLine).toEqual([
      ALL.suctionLine[0],
      { pipe: "6in sch40", length: "7", fittings: "1 gate" },
      ALL.suctionLine[1],
    ]);
    expect(taken).toEqual([
      {
        place: "suctionLine.1",
        label: "Suction line, row 2",
        before: "",
        after: "6in sch40, length 7, fittings 1 gate",
      },
    ]);
  });

  it("that were taken out of a line are no runs of it, those below them are", () => {
    const { duty, taken, remarks } = after(ALL, rowAt("suction_line", 0, "out"));
    expect(duty.suctionLine).toEqual([ALL.suctionLine[1]]);
    expect(taken).toEqual([
      { label: "Suction line, row 1", before: "10in sch40, length 20 ft, fittings 1 entrance flush", after: "" },
    ]);
    expect(remarks).toEqual([]);
  });

  it("that were put in below the last run are runs", () => {
    const { duty, remarks } = after(ALL, rowAt("discharge_line", 1, ["6in sch40", 12, "1 gate"]));
    expect(duty.dischargeLine).toEqual([...ALL.dischargeLine, { pipe: "6in sch40", length: "12", fittings: "1 gate" }]);
    expect(remarks).toEqual([]);
  });

  it("that stand above a line, outside its cells, are runs, and it is said that the sheet does not count them", () => {
    const { duty, taken, remarks } = after(
      ALL,
      rowAt("discharge_line", 0, ["6in sch40", 12, "1 gate"]),
      rowAt("discharge_line", -1, ["4in sch40", 3, "none"]),
    );
    expect(duty.dischargeLine).toEqual([
      { pipe: "4in sch40", length: "3", fittings: "none" },
      { pipe: "6in sch40", length: "12", fittings: "1 gate" },
      ...ALL.dischargeLine,
    ]);
    expect(taken.map(({ place, before }) => [place, before])).toEqual([
      ["dischargeLine.0", ""],
      ["dischargeLine.1", ""],
    ]);
    expect(remarks.map(({ kind, text }) => [kind, text])).toEqual(
      ["4in sch40, 3", "6in sch40, 12"].map((run) => [
        "outside",
        `Discharge line: the row “${run}” stands outside the cells that the sheet counts. It was taken over, but no figure of the sheet holds it: write the sheet again.`,
      ]),
    );
  });

  it("above a line that are no runs are none", () => {
    for (const cells of [
      ["a remark", 12, ""],
      ["6in sch40", "long", ""],
    ]) {
      expect(after(ALL, rowAt("discharge_line", 0, cells)).duty).toEqual(ALL);
    }
  });

  it("that are new in a curve are points of it", () => {
    const { duty } = after(ALL, rowAt("pump_curve", 4, [600, 270, 71]));
    expect(duty.pump?.points.map(({ flow, head }) => [flow, head])).toEqual([
      ["0 gpm", "300 ft"],
      ["250 gpm", "295 ft"],
      ["500 gpm", "280 ft"],
      ["600", "270"],
      ["750 gpm", "250 ft"],
      ["1000 gpm", "200 ft"],
    ]);
  });

  it("of a case that is gone take the case with them", () => {
    const { duty } = after(ALL, rowAt("cases", 0, "out"));
    expect(duty.cases).toEqual([ALL.cases?.[1]]);
  });

  it("of a single input that are gone are said, and the box keeps what was written", () => {
    const { duty, remarks } = after(ALL, rowAt("source_pressure", 0, "out"));
    expect(duty).toEqual(ALL);
    expect(remarks).toEqual([{ kind: "gone", text: "Source pressure: its cell was deleted; what was written stays." }]);
  });
});

describe("efficiencies typed as fractions", () => {
  const pump = ALL.pump as NonNullable<DutyText["pump"]>;
  const points = pump.points.map((point) => ({ ...point, efficiency: point.efficiency && `0.${point.efficiency}` }));

  it("are all in per cent once one is changed, as the sheet has them", () => {
    const { duty } = after({ ...ALL, pump: { ...pump, points } }, typed("pump_curve", 69, 3, 2));
    expect(duty.pump?.points.map(({ efficiency }) => efficiency)).toEqual(["", "50", "69", "75", "70"]);
    expect(decodeDuty(duty).duty.pump?.curve.efficiency).toBeDefined();
  });
});

describe("sheets of other names", () => {
  it("are found by the names of their cells", () => {
    const [found] = dutiesAfter(
      ALL,
      renamed((name) => `${name} old`.slice(-31)),
      typed("flow", 650),
    );
    expect(found?.sheet).toMatch(/old$/);
    expect(found?.back.duty).toEqual({ ...ALL, fields: { ...ALL.fields, flow: "650" } });
  });

  it("copied beside their own are a duty each", () => {
    const copied: Edit = ([first, ...others]) =>
      first === undefined ? [] : [...typed("flow", 650)([first]), ...others, { ...first, name: "Copy" }];
    const found = dutiesAfter(ALL, copied);
    expect(found.map(({ back }) => back.duty.fields.flow)).toEqual(["650", "600 gpm"]);
  });
});

describe("the estimate", () => {
  const isEstimate = ({ name }: { readonly name: string }): boolean => /estimate/i.test(name);
  const alone: Edit = (sheets) => sheets.filter(isEstimate);
  const without: Edit = (sheets) => sheets.filter((sheet) => !isEstimate(sheet));

  it("alone brings the duty back with its prices", () => {
    const { duty } = after(ALL, alone, typed("direct_cost", 1));
    expect(duty.fields).toEqual({ ...ALL.fields, directCost: "1" });
  });

  it("takes the prices with it when it is deleted: nothing else in the workbook holds one", () => {
    const marked = dutyText(
      { directCost: "48151", margin: "23.42" },
      { ...ALL, basis: { margin: "as the boss likes" } },
    );
    const { duty, remarks } = after(marked, without, typed("flow", 650));
    expect(duty.fields).toEqual({ ...ALL.fields, flow: "650", directCost: "", margin: "" });
    expect(remarks).toEqual([]);
    const set = setOfDuty(marked);
    const rest = `${set.records} ${JSON.stringify(set.sheets(set.wanted).filter((sheet) => !isEstimate(sheet)))}`;
    for (const price of ["48151", "23.42", "boss"]) expect(rest).not.toContain(price);
  });
});

describe("a field that nothing here knows", () => {
  const unknown = (duty: DutyText): DutyText => ({ ...duty, fields: { ...duty.fields, ...{ offerTo: "48151" } } });
  const without: Edit = (sheets) => sheets.filter(({ name }) => !/estimate/i.test(name));

  it("comes back from sheets with prices and from those without", () => {
    for (const duty of [unknown(ALL), unknown(dutyText())]) expect(after(duty).duty).toEqual(duty);
  });

  it("may be a price, and goes where the prices go", () => {
    const set = setOfDuty(unknown(ALL));
    const rest = `${set.records} ${JSON.stringify(without(set.sheets(set.wanted)))}`;
    expect(rest).not.toContain("48151");
    expect(after(unknown(ALL), without).duty.fields).not.toHaveProperty("offerTo");
  });
});

describe("a metric sheet", () => {
  it("gives what is typed in its own units", () => {
    const metric = (SAMPLE_DUTIES[1] as (typeof SAMPLE_DUTIES)[number]).duty;
    const { duty, taken } = after(metric, typed("flow", 111));
    expect(duty.fields.flow).toBe("111");
    expect(duty.unitSet).toBe(metric.unitSet);
    expect(taken).toHaveLength(1);
  });
});
