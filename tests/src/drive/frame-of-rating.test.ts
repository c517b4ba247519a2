import { describe, expect, it } from "vitest";
import { type Enclosure, frameOfRating, ratingsOfFrame } from "../../../src/drive/frame-of-rating.ts";
import type { MotorSeries } from "../../../src/drive/motor-rating.ts";
import { POLES, type Poles } from "../../../src/drive/motor-speed.ts";
import {
  type FrameRow,
  IEC_ENCLOSED_FRAMES,
  NEMA_ENCLOSED_FRAMES,
  NEMA_OPEN_FRAMES,
} from "../../../src/tables/motor-frames-by-rating.ts";
import { publishedTable } from "../../support/published-table.ts";

// Source: NEMA MG 1 Part 13; EN 50347 and IEC 60072-1; how each row was verified stands in the file.
const ROWS = publishedTable("motor-frames").map((row) => ({
  series: row["standard"] as MotorSeries,
  enclosure: row["enclosure"] as Enclosure,
  printed: Number(row["rating_hp"] || row["rating_kw"]),
  poles: Number(row["poles"]) as Poles,
  frame: row["frame"] ?? "",
  coupling: row["coupling_frame"] ?? "",
  basis: row["basis"],
  verified: row["verified"] ?? "",
}));

describe("frames by rating and poles", () => {
  it("are all that the list has, open and enclosed, with 2, 4, 6 and 8 poles", () => {
    expect(ROWS).toHaveLength(311);
    for (const { frame, coupling, basis, ...row } of ROWS) {
      const found = frameOfRating(row);
      const at = JSON.stringify(row);
      expect(found?.frame ?? "", at).toBe(frame);
      // The list repeats a TS frame that has no T beside it.
      expect(found?.couplingFrame ?? "", at).toBe(coupling === frame ? "" : coupling);
      if (found !== undefined) expect(found.basis, at).toBe(basis);
      else expect(basis, at).toBe("maker");
    }
  });

  it("are no more than the list has", () => {
    const count = (rows: readonly FrameRow[]): number =>
      rows.flatMap(([, ...frames]) => frames).filter((frame) => frame !== null).length;
    const held = count(NEMA_OPEN_FRAMES) + count(NEMA_ENCLOSED_FRAMES) + count(IEC_ENCLOSED_FRAMES);
    expect(held).toBe(ROWS.filter(({ frame }) => frame !== "").length);
  });

  it("name the frame of a maker that packs one size smaller", () => {
    for (const { frame, verified, basis, coupling, ...row } of ROWS) {
      const smaller = /list of 2000 has (\S+) \(packed/.exec(verified)?.[1];
      expect(frameOfRating(row)?.packedAs, JSON.stringify(row)).toBe(smaller);
    }
  });

  it("never get smaller as the rating grows", () => {
    const height = (frame: string): number => Number(/^\d+/.exec(frame)?.[0]);
    for (const table of [NEMA_OPEN_FRAMES, NEMA_ENCLOSED_FRAMES, IEC_ENCLOSED_FRAMES]) {
      for (const place of [1, 2, 3, 4] as const) {
        const heights = table.flatMap((row) => (row[place] === null ? [] : [height(row[place])]));
        expect(heights).toEqual(heights.toSorted((a, b) => a - b));
      }
    }
  });

  it("are found back from the frame", () => {
    for (const { series, printed, poles, enclosure, frame, coupling } of ROWS.filter(({ frame }) => frame !== "")) {
      const found = ratingsOfFrame(coupling === "" ? frame : coupling);
      expect(found, frame).toContainEqual(expect.objectContaining({ series, printed, poles, enclosure }));
    }
    expect(ratingsOfFrame("999T")).toEqual([]);
  });

  it("are none of an open IEC motor, nor of a rating between two", () => {
    expect(frameOfRating({ series: "IEC", printed: 75, poles: 4, enclosure: "open" })).toBeUndefined();
    for (const poles of POLES) {
      expect(frameOfRating({ series: "NEMA", printed: 12, poles, enclosure: "enclosed" })).toBeUndefined();
    }
  });
});
