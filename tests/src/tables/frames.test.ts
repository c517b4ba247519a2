import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { flangeFrame, footFrame, pumpMotorFrame } from "../../../src/drive/motor-frame.ts";
import { IEC_FRAMES } from "../../../src/tables/iec-frames.ts";
import { NEMA_FRAMES } from "../../../src/tables/nema-frames.ts";
import { NEMA_PUMP_SHAFTS } from "../../../src/tables/nema-pump-shafts.ts";
import { figureIn, publishedTable } from "../../support/published-table.ts";

const INCH = unitOf("in").factor;
const MM = unitOf("mm").factor;

// Source: NEMA MG 1 Part 4 as printed in a hydraulics data book.
describe("NEMA T and TS frames", () => {
  const rows = publishedTable("nema-frames");

  it("has every frame of the list with its figures", () => {
    expect(rows).toHaveLength(32);
    expect(NEMA_FRAMES.map(([frame]) => frame)).toEqual(rows.map((row) => row["frame"]));
    for (const row of rows) {
      const found = footFrame(row["frame"] as string);
      if (!found.ok) throw new Error(row["frame"]);
      expect(found.value.shaftHeight / INCH).toBeCloseTo(figureIn(row, "D_in"), 9);
      expect(found.value.holesAcross / INCH).toBeCloseTo(figureIn(row, "twoE_in"), 9);
      expect(found.value.holesAlong / INCH).toBeCloseTo(figureIn(row, "twoF_in"), 9);
      expect(found.value.shaftDiameter / INCH).toBeCloseTo(figureIn(row, "U_in"), 9);
      expect(found.value.shaftLength / INCH).toBeCloseTo(figureIn(row, "NW_in"), 9);
      expect(found.value.directCouplingOnly).toBe(/TS$/.test(row["frame"] as string));
    }
  });

  it("stands as high as a quarter of its first two digits, in inches", () => {
    for (const [frame, D] of NEMA_FRAMES) expect(D).toBe(Number(frame.slice(0, 2)) / 4);
  });

  it("names frames near one that is not known", () => {
    const found = footFrame("326X");
    expect(found.ok).toBe(false);
    expect(found.findings[0]).toMatchObject({ code: "name-unknown", given: "326X" });
    expect(found.findings[0]?.suggestions).toContain("326T");
  });
});

// Source: NEMA MG 1 Part 4 in a one-page guide to its dimensions; 324 and 326 from memory.
describe("NEMA JM and JP frames", () => {
  const rows = publishedTable("nema-jm-jp");

  it("has every frame of the list with its figures", () => {
    expect(rows).toHaveLength(12);
    expect(NEMA_PUMP_SHAFTS).toHaveLength(12);
    for (const row of rows) {
      for (const frame of (row["frames"] as string).split(",")) {
        const found = pumpMotorFrame(frame);
        if (!found.ok) throw new Error(frame);
        const shaft = found.value;
        expect(shaft.type).toBe(frame.slice(-2));
        expect(shaft.shaftDiameter / INCH).toBeCloseTo(figureIn(row, "U_in"), 9);
        expect(shaft.sealDiameter / INCH).toBeCloseTo(figureIn(row, "EL_in"), 9);
        expect(shaft.innerDiameter / INCH).toBeCloseTo(figureIn(row, "EM_in"), 9);
        expect(shaft.EQ / INCH).toBeCloseTo(inchesOf(row["EQ"] as string), 9);
        expect(shaft.ET / INCH).toBeCloseTo(figureIn(row, "ET_in"), 9);
        expect(shaft.shaftLength / INCH).toBeCloseTo(figureIn(row, "AH_in"), 9);
        expect(shaft.boltCircle / INCH).toBeCloseTo(figureIn(row, "AJ_in"), 9);
        expect(shaft.rabbet / INCH).toBeCloseTo(figureIn(row, "AK_in"), 9);
        expect(shaft.faceThread).toBe(row["face_thread"]);
      }
    }
  });

  it("steps down along the shaft: seal, inner, impeller", () => {
    for (const [, U, EL, EM] of NEMA_PUMP_SHAFTS) {
      expect(EL).toBeGreaterThan(EM);
      expect(EM).toBeGreaterThan(U);
    }
  });

  it("has the long shaft of type JP", () => {
    const jm = pumpMotorFrame("254JM");
    const jp = pumpMotorFrame("254jp");
    expect(jm.ok && jp.ok && jp.value.shaftLength - jm.value.shaftLength).toBeCloseTo(2.875 * INCH, 9);
  });

  it("refuses a frame that is not listed", () => {
    expect(pumpMotorFrame("254T").findings[0]).toMatchObject({ code: "name-unknown", given: "254T" });
  });
});

function inchesOf(text: string): number {
  const [, whole = "0", above, below] = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(text) ?? [];
  return Number(whole) + Number(above) / Number(below);
}

// Source: IEC 60072-1 and EN 50347, from memory.
describe("IEC frames", () => {
  const rows = publishedTable("iec-frames");

  it("has every frame of the list with its figures", () => {
    expect(rows).toHaveLength(13);
    expect(IEC_FRAMES).toHaveLength(13);
    for (const row of rows) {
      const found = flangeFrame(row["frame"] as string, 4);
      if (!found.ok) throw new Error(row["frame"]);
      expect(found.value.flange).toBe(row["flange"]);
      expect(found.value.shaftHeight / MM).toBeCloseTo(figureIn(row, "shaft_height_mm"), 9);
      expect(found.value.boltCircle / MM).toBeCloseTo(figureIn(row, "bolt_circle_mm"), 9);
      expect(found.value.spigot / MM).toBeCloseTo(figureIn(row, "spigot_mm"), 9);
      expect(found.value.shaftDiameter / MM).toBeCloseTo(figureIn(row, "shaft_D_mm"), 9);
      expect(found.value.shaftLength / MM).toBeCloseTo(figureIn(row, "shaft_E_mm"), 9);
    }
  });

  it("bolts to the circle its flange is named for, outside the spigot", () => {
    for (const [, flange, boltCircle, spigot] of IEC_FRAMES) {
      expect(flange).toBe(`FF${boltCircle}`);
      expect(spigot).toBeLessThan(boltCircle);
    }
  });

  // Source: comment of the table, from memory.
  it.each([
    ["225M", 55, 110],
    ["250", 60, 140],
    ["280S", 65, 140],
    ["315", 65, 140],
    ["200L", 55, 110],
  ])("%s with two poles has a %d mm × %d mm shaft", (frame, diameter, length) => {
    const found = flangeFrame(frame, 2);
    expect(found.ok && found.value.shaftDiameter / MM).toBeCloseTo(diameter, 9);
    expect(found.ok && found.value.shaftLength / MM).toBeCloseTo(length, 9);
  });

  it.each(["", "abc", "81", "160X"])("refuses “%s”", (frame) => {
    expect(flangeFrame(frame, 4).findings[0]?.code).toBe("name-unknown");
  });
});
