import { describe, expect, it } from "vitest";
import { dutyPlan, fieldsNotUsed } from "../../../shared/calc-sheet/duty-plan.ts";
import { COLUMNS, LABEL, REFERENCE, REMARK, VALUE } from "../../../shared/calc-sheet/layout/columns.ts";
import { rangeName } from "../../../shared/calc-sheet/layout/range-name.ts";
import { layOut } from "../../../shared/calc-sheet/layout.ts";
import { stated } from "../../../shared/calc-sheet/sections/stated-input.ts";
import { STYLES } from "../../../shared/calc-sheet/styles.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { textIn } from "../../../shared/duty/boxes.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { FIELDS, type FieldKey, fieldsOf } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { shownSettings } from "../../../shared/package/shown-settings.ts";
import { roomIn } from "../../../shared/ports/column-room.ts";
import { linesIn } from "../../../shared/ports/text-width.ts";
import { dutyRead, dutyText, type Fields, QUARRY } from "../../support/duty-of.ts";
import { filledUp, TYPICAL } from "../../support/hostile-places.ts";
import { judged, stateOf } from "../../support/judged.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { after, typed } from "../../support/opened-again.ts";

const SETTINGS = fieldsOf("settings");

function withSettings(fields: Partial<Record<FieldKey, string>>, duty: DutyText = QUARRY): DutyText {
  return { ...duty, fields: { ...duty.fields, ...fields } };
}

const SAND = (SAMPLE_DUTIES[3] as (typeof SAMPLE_DUTIES)[number]).duty;
const cellsOf = (duty: DutyText) => workOut(dutyPlan(dutyRead(duty))).cells;

/** Keys of the inputs under the heading of the settings. */
function printed(duty: DutyText): readonly string[] {
  let isInside = false;
  return dutyPlan(decodeDuty(duty).duty).items.flatMap((item) => {
    if (item.kind === "section") isInside = item.id === "settings";
    return isInside && item.kind === "input" ? [item.key] : [];
  });
}

describe("the settings of a sheet", () => {
  it.each(SAMPLE_DUTIES)("are those that its formulas name, and no others: $name", ({ duty }) => {
    const formulas = sheetsOf(duty).all.flatMap(({ cells }) => cells.flatMap(({ f }) => f ?? []));
    const isNamed = (key: string): boolean => {
      const name = new RegExp(`(?<![\\w.])${rangeName(key)}(?![\\w.(])`);
      return formulas.some((f) => name.test(f.replace(/"(?:[^"]|"")*"/g, "")));
    };
    expect(printed(duty)).toEqual(SETTINGS.filter(isNamed));
    expect(shownSettings(dutyRead(duty))).toEqual(printed(duty));
  });

  it("say what they do and where they come from, in inputs that are named and unlocked", () => {
    const { duty } = sheetsOf(QUARRY);
    for (const key of printed(QUARRY) as FieldKey[]) {
      const at = duty.names?.[rangeName(key)] as string;
      const { style } = duty.cells.find((cell) => cell.at === at) ?? {};
      expect([key, duty.styles[style as string]?.unlocked]).toEqual([key, true]);
      const row = at.replace(/\D/g, "");
      const words = duty.cells.filter((cell) => cell.at.replace(/\D/g, "") === row).map(({ v, cached }) => cached ?? v);
      expect(words).toContain(FIELDS[key].label);
      expect(words).toContain(`${FIELDS[key].help} ${FIELDS[key].usual}`);
    }
  });

  it("say from what they were changed on the sheet, and no longer the source of what is usual", () => {
    const basisIn = (typed: DutyText) =>
      dutyPlan(dutyRead(typed)).items.find((item) => item.kind === "input" && item.key === "tankReserve");
    expect(basisIn(withSettings({ tankReserve: "25" }))).toMatchObject({ basis: "stated" });
    const { cells, names } = sheetsOf(QUARRY).duty;
    const row = names?.[rangeName("tankReserve")]?.replace(/\D/g, "");
    const live = cells.find(({ at, f = "" }) => at.replace(/\D/g, "") === row && f.includes("Changed from"));
    expect(live?.f).toMatch(
      /^IF\(.+=0,"Of what can be drawn\. Common practice, no source\.","Of what can be drawn\. Changed from 10 %\."\)$/,
    );
    const own = { ...withSettings({ tankReserve: "25" }), basis: { tankReserve: "the customer's rule" } };
    expect(basisIn(own)).toMatchObject({ basis: "the customer's rule" });
  });

  it("take a line of the page each, every one of them", () => {
    const once = stated(dutyRead(dutyText()), ...SETTINGS).map(({ onceChanged = "" }) => onceChanged);
    expect(once.filter((text) => text.includes("Changed from"))).toHaveLength(SETTINGS.length);
    const texts = [...SETTINGS.map((key) => `${FIELDS[key].help} ${FIELDS[key].usual}`), ...once];
    const room = roomIn(COLUMNS.slice(REMARK, REFERENCE));
    expect(texts.filter((text) => linesIn(text, room, STYLES.basis ?? {}) > 1)).toEqual([]);
    const labels = SETTINGS.map((key) => FIELDS[key].label);
    const beside = roomIn(COLUMNS.slice(LABEL, VALUE));
    expect(labels.filter((label) => linesIn(label, beside, {}) > 1)).toEqual([]);
  });

  it("are on no sheet that judges nothing by them", () => {
    expect(printed(dutyText())).toEqual([]);
    expect(dutyPlan(dutyRead(dutyText())).items.some((item) => item.kind === "section" && item.id === "settings")).toBe(
      false,
    );
  });

  it("that are stated without use are said to be", () => {
    const duty = dutyRead(dutyText({ tankReserve: "15" }));
    expect(fieldsNotUsed(duty, dutyPlan(duty).items)).toEqual([
      { key: "tankReserve", reason: "Nothing on the sheet rests on it." },
    ]);
    expect(shownSettings(duty)).toEqual(["tankReserve"]);
  });

  it("are on no list of what is stated without use where a verdict rests on them", () => {
    const typed = withSettings({ lightLoad: "35", npshOff: "8", ratingUsed: "85", slopeFrom: "20" });
    const words = JSON.stringify(dutyPlan(dutyRead(typed)).items);
    expect(printed(typed)).toEqual(expect.arrayContaining(["lightLoad", "npshOff", "ratingUsed"]));
    expect(words.match(/[^"]*: Nothing on the sheet rests on it\./g)).toEqual([
      `${FIELDS.slopeFrom.label}, 20: Nothing on the sheet rests on it.`,
    ]);
  });

  it("that are stated without use take a few lines, each named with what was typed", () => {
    const typed = withSettings(Object.fromEntries(SETTINGS.map((key) => [key, TYPICAL[key][0]])));
    const { items } = dutyPlan(dutyRead(typed));
    const lines = items.flatMap((item) =>
      item.kind === "statement" && item.text.endsWith("Nothing on the sheet rests on it.") ? [item.text] : [],
    );
    const unused = SETTINGS.filter((key) => !printed(typed).includes(key) && !["priceSwing"].includes(key));
    expect(unused.length).toBeGreaterThan(20);
    expect(lines.length).toBeLessThan(5);
    for (const key of unused)
      expect(lines.join("\n").split(`${FIELDS[key].label}, ${TYPICAL[key][0]}`)).toHaveLength(2);
  });

  it("are nobody's to confirm: what is usual is said beside them", () => {
    const confirmed = dutyPlan(dutyRead(QUARRY)).items.flatMap((item) =>
      item.kind === "blocks" ? item.blocks.flatMap(({ rows }) => rows.map(({ label }) => label)) : [],
    );
    expect(confirmed.filter((label) => SETTINGS.some((key) => FIELDS[key].label === label))).toEqual([]);
  });
});

describe("a setting changed", () => {
  it("moves the endurance of a tank and what it is to hold", () => {
    const usual = cellsOf(QUARRY);
    const rate = usual.get("operatingFuelRate") as number;
    // A tank of 100 gal: 90 % drawn less a tenth of it, and three quarters of that with a reserve of 32.5 %.
    expect(usual.get("tankHours")).toBeCloseTo((100 * 0.81) / rate, 9);
    expect(usual.get("tankFor.2.tank")).toBeCloseTo((48 * rate) / 0.81, 9);
    const changed = cellsOf(withSettings({ tankReserve: "32.5", tankLong: "72" }));
    expect(changed.get("tankHours")).toBeCloseTo((100 * 0.9 * 0.675) / rate, 9);
    expect(changed.get("tankFor.2.tank")).toBeCloseTo((72 * rate) / 0.9 / 0.675, 9);
    expect(changed.get("tankFor.0.tank")).toBeCloseTo((8 * rate) / 0.9 / 0.675, 9);
  });

  it("moves a limit of a verdict, and its words", () => {
    const load = /load of the engine/;
    expect(stateOf(dutyRead(QUARRY), "driver", load)).toBe("pass");
    expect(stateOf(dutyRead(withSettings({ lightLoad: "95" })), "driver", load)).toBe("check");
    const flow = (fields: Partial<Record<FieldKey, string>>): string =>
      judged(dutyRead(withSettings(fields)), "head", /over the duty flow/)[0]?.text ?? "";
    expect(flow({})).toMatch(/20 % over the duty flow/);
    expect(flow({ flowInHand: "5" })).toMatch(/of 1,260 .*5 % over the duty flow/);
  });

  it("moves what a suction line is to stand of its vacuum, and says how many times", () => {
    const rowOf = (fields: Partial<Record<FieldKey, string>>) => {
      const cells = cellsOf(withSettings(fields, SAND));
      const [key = "", words] = [...cells].find(([, cell]) => /^a suction line is to stand/.test(String(cell))) ?? [];
      return { words, limit: cells.get(key.replace(/why$/, "limit")) as number };
    };
    const [usual, changed] = [rowOf({}), rowOf({ lastingVacuum: "4" })];
    expect([usual.words, changed.words]).toEqual([
      "a suction line is to stand 2 times its vacuum",
      "a suction line is to stand 4 times its vacuum",
    ]);
    expect(usual.limit).toBeGreaterThan(0);
    expect(changed.limit).toBeCloseTo(usual.limit / 2, 9);
  });

  // Specific speeds on their sheets, 1785 of US units and 20 of SI: 20 × 51.64 (n_s 58.1 is N_s 3000) is N_s 1033.
  it.each([
    ["the quarry's pump", QUARRY, "1800", "1700"],
    ["the sand plant's pump", SAND, "1100", "950"],
  ] as const)("moves the specific speed up to which a pump is trimmed deeper: %s", (_, duty, above, below) => {
    const trimmed = { ...duty, pump: { ...(duty.pump as NonNullable<DutyText["pump"]>), trimRatio: "0.85" } };
    const stateAt = (deepTrimSpeed: string) =>
      judged(dutyRead(withSettings({ deepTrimSpeed }, trimmed)), "head", /impeller over that of the curve/)[0]?.state;
    expect([stateAt(above), stateAt(below)]).toEqual(["pass", "check"]);
  });

  // The line of siphon-credit.test.ts: its pipe stands 4.61 m over its grade line, at 53.8 kPa absolute.
  it("moves whether a siphon is counted on, and to what head the pump is selected", () => {
    const row = { length: "400", fittings: "", level: "12" };
    const pipe = "ID 200 mm rough 0.02 mm";
    const overSummit = (fields: Fields): DutyText => ({
      ...dutyText({
        ...{ flow: "60", sourceLevel: "0", pumpLevel: "0", deliveryLevel: "6", altitude: "200", liquid: "water" },
        ...{ outlet: "submerged", summitValve: "release only", ...fields },
      }),
      unitSet: "SI",
      suctionLine: [{ ...row, pipe: "ID 2 m rough 0 mm", length: "0.001", level: "" }],
      dischargeLine: [
        { ...row, pipe },
        { ...row, pipe, length: "100", fittings: "1 exit", level: "6" },
      ],
    });
    const siphonOf = (fields: Fields) => {
      const cells = cellsOf(overSummit(fields));
      const [grade, level] = ["vacuum", "level"].map((key) => cells.get(`routeProfile.1.${key}`) as number);
      return {
        says: cells.get("siphon"),
        summit: cells.get("routePoints.1.remark"),
        credit: (cells.get("headOver") as number) - (cells.get("headToSelect") as number),
        drawn: (level as number) - (grade as number),
      };
    };
    // 7 m less 1.1 m each 1000 m at 200 m; the pump must still fill the line.
    expect(siphonOf({})).toMatchObject({ says: "earned", summit: "yes", drawn: expect.closeTo(6.78, 9) });
    expect(siphonOf({}).credit).toBeGreaterThan(1);
    expect(siphonOf({ siphonHeight: "4.5" })).toEqual({
      ...{ says: "not earned: summit too high", summit: "too high" },
      ...{ credit: expect.closeTo(0, 9), drawn: expect.closeTo(4.28, 9) },
    });
    expect(siphonOf({ siphonHeight: "5", siphonHeightLoss: "2.5" })).toMatchObject({
      drawn: expect.closeTo(4.5, 9),
      credit: expect.closeTo(0, 9),
    });
    expect(siphonOf({ siphonPressure: "55" })).toMatchObject({
      ...{ says: "not earned: air comes out of solution", summit: "air out", credit: expect.closeTo(0, 9) },
      // 98.945 kPa less 55 of it, over 998.2 × 9.80665.
      drawn: expect.closeTo(43.945 / 9.789, 3),
    });
    const told = JSON.stringify([
      ...workOut(dutyPlan(dutyRead(overSummit({ siphonHeight: "4.5" })))).findings.values(),
    ]);
    expect(told).toContain("siphon-too-high");
  });

  it("moves what energy costs on the estimate, which alone says it", () => {
    const moved = cellsOf(withSettings({ priceSwing: "50" }));
    const cost = moved.get("runningCost") as number;
    expect(moved.get("sensitivity.0.running")).toBeCloseTo(0.5 * cost, 6);
    expect(moved.get("sensitivity.1.running")).toBeCloseTo(1.5 * cost, 6);
    const { duty, estimate } = sheetsOf(QUARRY);
    expect(estimate?.names).toHaveProperty("price_swing");
    expect(duty.names).not.toHaveProperty("price_swing");
  });

  it("on the sheet comes back to the duty, with the words beside it, and is written again", () => {
    const { duty, taken, remarks } = after(
      QUARRY,
      typed("tank_reserve", 25),
      typed("tank_reserve", "the customer's rule", 0, 2),
      typed("lift_clear", "1 m"),
      typed("price_swing", 30),
    );
    expect(remarks).toEqual([]);
    expect(taken.map(({ place }) => place).toSorted()).toEqual([
      "liftClear",
      "priceSwing",
      "tankReserve",
      "tankReserve.basis",
    ]);
    expect(["tankReserve", "liftClear", "priceSwing"].map((place) => textIn(duty, place))).toEqual(["25", "1 m", "30"]);
    const again = dutyPlan(dutyRead(duty)).items.find((item) => item.kind === "input" && item.key === "tankReserve");
    expect(again).toMatchObject({ value: 25, basis: "the customer's rule" });
    expect(after(duty).taken).toEqual([]);
  });

  it("beyond its bounds is refused, and what rests on it waits", () => {
    const refused = withSettings(Object.fromEntries(SETTINGS.map((key) => [key, "-1e9"])), filledUp(QUARRY));
    const { duty, findings } = decodeDuty(refused);
    for (const key of SETTINGS) expect([key, findings.get(key)?.map(({ kind }) => kind)]).toEqual([key, ["error"]]);
    const plan = dutyPlan(duty);
    const worked = workOut(plan);
    expect(printed(refused).length).toBeGreaterThan(10);
    for (const key of printed(refused) as FieldKey[])
      expect(worked.cells.get(key)).toMatchObject({ error: "#N/A", waitsFor: FIELDS[key].label });
    expect(() => layOut(plan, worked)).not.toThrow();
  });

  it("refused withholds the figure that rests on it", () => {
    const cells = workOut(dutyPlan(decodeDuty(withSettings({ tankUsable: "5" })).duty)).cells;
    expect(cells.get("tankHours")).toMatchObject({ error: "#N/A", waitsFor: FIELDS.tankUsable.label });
  });
});
