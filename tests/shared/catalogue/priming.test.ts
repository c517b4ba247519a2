import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { motiveAir } from "../../../src/priming/eductor.ts";
import { pumpDownTime } from "../../../src/priming/pump-down.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

type Inputs = Readonly<Record<string, number>>;
interface Case {
  readonly id: string;
  readonly inputs: Inputs;
  readonly expected: Readonly<Record<string, number | string>>;
  readonly source: string;
}

const text = readFileSync(new URL("../../published/mechanical-priming.csv", import.meta.url), "utf8");
const CASES: readonly Case[] = Papa.parse<Record<string, string>>(text, {
  header: true,
  skipEmptyLines: true,
}).data.map((row) => ({
  id: row["case_id"] as string,
  inputs: JSON.parse(row["inputs"] as string),
  expected: JSON.parse(row["expected"] as string),
  source: row["source"] as string,
}));

const figure = (inputs: Inputs, key: string): number => inputs[key] as number;

/** What we answer for each case, with the tolerance the case states. */
const ANSWERS: Readonly<Record<string, (inputs: Inputs) => readonly [key: string, found: number, within: number][]>> = {
  "O-P01": ({ altitude_m = Number.NaN }) => [["kPa", numberIn("ATMOSPHERE", altitude_m, "SI"), 0.1]],
  "O-P02": ({ temp_C = Number.NaN }) => [["kPa", numberIn("VAPORPRESSURE", "water", temp_C, "SI"), 0.1]],
  "O-P03": (inputs) => {
    const time = pumpDownTime({
      volume: figure(inputs, "V_m3"),
      displacement: figure(inputs, "S_m3_s"),
      startPressure: figure(inputs, "p0_kPa") * 1e3,
      endPressure: figure(inputs, "p1_kPa") * 1e3,
      ultimatePressure: 0,
    });
    return [["s", time.ok ? time.value : Number.NaN, 0.005 * 29.93]];
  },
  "O-P04": (inputs) => {
    const line = (length: number) => [[`ID ${figure(inputs, "pipe_d_m") * 1e3} mm rough 0 mm`, length]];
    const length = figure(inputs, "lift_m") + figure(inputs, "horizontal_m");
    const pump = `${figure(inputs, "free_air_m3_s")} m3/s, blank-off ${figure(inputs, "blank_off_kPa_abs")} kPa(a)`;
    const casing = figure(inputs, "casing_and_chamber_m3") * 1e3;
    const time = numberIn(
      "PRIMETIME",
      line(length),
      figure(inputs, "lift_m"),
      pump,
      casing,
      null,
      null,
      null,
      null,
      "SI",
    );
    return [["t_total_s", time, 0.01 * 18.17]];
  },
  "O-P06": (inputs) => {
    const bore = 0.1;
    const speed = 0.01 / ((Math.PI / 4) * bore ** 2);
    const loss = `K ${figure(inputs, "suction_loss_m") / (speed ** 2 / (2 * 9.80665))}`;
    const line = [["ID 100 mm rough 0 mm", 0, loss]];
    const pump = [figure(inputs, "npshr_m"), figure(inputs, "margin_m"), figure(inputs, "altitude_m")];
    return [["max_lift_m", numberIn("MAXLIFT", 10, line, ...pump, "water", figure(inputs, "temp_C"), "SI"), 0.05]];
  },
  "O-P07": (inputs) => {
    const mass = motiveAir({
      nozzleDiameter: figure(inputs, "nozzle_d_mm") / 1e3,
      motivePressure: figure(inputs, "p0_kPa_abs") * 1e3,
      motiveTemperature: figure(inputs, "T_K"),
      backPressure: 101_325,
    });
    return [["kg_s", mass.ok ? mass.value : Number.NaN, 0.01 * 0.0237]];
  },
};

describe("published priming cases", () => {
  it("leaves none aside", () => {
    expect(CASES.map(({ id }) => id)).toEqual([...Object.keys(ANSWERS), "O-P05"].toSorted());
  });

  it.each(CASES.filter(({ id }) => id !== "O-P05"))("$id: $source", ({ id, inputs, expected }) => {
    const found = ANSWERS[id]?.(inputs) ?? [];
    expect(found.length).toBeGreaterThan(0);
    for (const [key, value, within] of found) {
      expect(Math.abs(value - (expected[key] as number)), `${key} ${value}`).toBeLessThanOrEqual(within);
    }
  });

  it("O-P05: never primes, with both lifts", () => {
    const { inputs, expected } = CASES.find(({ id }) => id === "O-P05") as Case;
    const pump = `50 cfm, blank-off ${figure(inputs, "blank_off_kPa_abs")} kPa(a)`;
    const message = refusal("PRIMETIME", LINE, figure(inputs, "lift_m"), pump, 0, null, null, null, null, "SI");
    const [blankOff, lift] = String(expected["error"]).match(/[\d.]+(?= m)/g) ?? [];
    const [said, saidLift] = message.match(/[\d.]+(?= m)/g) ?? [];
    expect(message).toMatch(/^#VALUE! It never primes: the blank-off lift/);
    expect(Math.abs(Number(said) - Number(blankOff))).toBeLessThanOrEqual(0.051);
    expect(Number(saidLift)).toBe(Number(lift));
  });
});

const LINE = [["6in sch40", 20, "1 strainer"]];

describe("PRIMETIME", () => {
  it("takes the capacity as a number, and any line of the unit set", () => {
    const metres = numberIn("PRIMETIME", [["6in sch40", 20]], 4, 23.6, 60, 500, "water", 15, null, "SI");
    const inFeet = numberIn(
      "PRIMETIME",
      [["6in sch40", "20 m"]],
      "4 m",
      "23.6 L/s",
      "60 L",
      "500 m",
      "water",
      "15 degC",
    );
    expect(inFeet).toBeCloseTo(metres, 9);
    const cubic = numberIn("PRIMETIME", [["6in sch40", 20]], 4, 0.0236 * 3600, 0.06, 500, "water", 15, null, "METRIC");
    expect(cubic).toBeCloseTo(metres, 9);
  });

  it("spills over a column of lifts and keeps the refusal in its row", () => {
    const spilled = cell("PRIMETIME", LINE, [[2], [5], [40]], 50, 10) as readonly (readonly unknown[])[];
    expect(spilled[0]?.[0]).toBeLessThan(spilled[1]?.[0] as number);
    expect(spilled[2]?.[0]).toMatchObject({ error: "#VALUE!" });
  });

  it("says what it rests on", () => {
    const said = remarks("PRIMETIME", LINE, 15, 50);
    expect(said).toEqual([
      "assumed priming-profile-assumed",
      "assumed blank-off-assumed",
      "assumed casing-not-counted",
    ]);
    expect(remarks("PRIMETIME", [["6in sch40", 15]], 15, "50 cfm, blank-off 26 inHg", 10)).toEqual([]);
    expect(remarks("PRIMETIME", LINE, 10, 50, 10, null, null, 120)).toContain("check priming-vapour-counted");
    expect(remarks("PRIMETIME", LINE, 10, 50, 10, null, "SG 1, 1 cP")).toContain("check priming-vapour-unknown");
    expect(remarks("PRIMETIME", LINE, 0, 50, 0)).toContain("check zero-may-be-blank");
  });

  it.each([
    ["a flooded pump", [LINE, -3, 50], /#VALUE! The pump stands 3 ft below the liquid/],
    ["a lift above the barometric", [[["6in sch40", 50]], 36, 50], /more than the atmosphere can push/],
    ["a lift at which the water boils", [[["6in sch40", 50]], 33.5, 50], /boils in the line/],
    ["a line shorter than the lift", [LINE, 21, 50], /20 ft long and cannot gain a suction lift of 21 ft/],
    ["no air pump", [LINE, 10, 0], /Air pump capacity must be above 0/],
    ["a negative casing", [LINE, 10, 50, -1], /Casing volume must be at least 0/],
    ["an unknown pipe", [[["6in sch41", 20]], 10, 50], /#N\/A/],
    ["an unknown liquid", [LINE, 10, 50, 1, null, "wather"], /#N\/A/],
    ["lay-flat hose", [[["6in layflat", 20]], 10, 50], /collapses/],
  ])("refuses %s", (_, args, words) => {
    expect(refusal("PRIMETIME", ...args)).toMatch(words);
  });
});

describe("PRIMINGMETHODS", () => {
  it("spills seven plain columns, rank first", () => {
    const rows = cell("PRIMINGMETHODS", 15, LINE, 5) as readonly (readonly unknown[])[];
    expect(rows[0]).toEqual(["rank", "method", "verdict", "prime time, s", "reasons", "needs", "cautions"]);
    expect(rows.slice(1).map(([rank]) => rank)).toEqual([1, 2, 3, 4, 5]);
    for (const row of rows.slice(1)) expect(String(row[4]).length).toBeGreaterThan(10);
  });

  it("agrees with PRIMETIME on the time of its air pump", () => {
    const rows = cell("PRIMINGMETHODS", 15, LINE, 5) as readonly (readonly unknown[])[];
    expect(rows[1]?.[3]).toBeCloseTo(numberIn("PRIMETIME", LINE, 15, 50, 0), 9);
  });

  it("speaks in the reader's units", () => {
    const us = JSON.stringify(cell("PRIMINGMETHODS", "4 m", [["6in sch40", "10 m"]], "rags"));
    const si = JSON.stringify(
      cell("PRIMINGMETHODS", "4 m", [["6in sch40", "10 m"]], "rags", null, null, null, null, null, null, null, "SI"),
    );
    expect(us).toContain("13.1 ft");
    expect(si).toContain("4 m");
  });

  it.each([
    ["70 % solids", [15, LINE, 70], /Solids must be below 70 %; 70 % was given/],
    ["unknown solids", [15, LINE, "moonlight"], /#VALUE! Solids “moonlight” is not one of the choices/],
    ["a truth value", [15, LINE, true], /Solids was given as TRUE/],
    ["nothing at all", [15, LINE], /Solids is left out/],
  ])("refuses %s", (_, args, words) => {
    expect(refusal("PRIMINGMETHODS", ...args)).toMatch(words);
  });

  it("reads solids as a share or a word", () => {
    expect(cell("PRIMINGMETHODS", 15, LINE, "5 %")).toEqual(cell("PRIMINGMETHODS", 15, LINE, 0.05));
    expect(refusal("PRIMINGMETHODS", 15, LINE, "5 m")).toMatch(/a unit of another kind; use %/);
  });
});
