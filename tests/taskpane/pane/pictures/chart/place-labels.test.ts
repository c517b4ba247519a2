import { describe, expect, it } from "vitest";
import { type Place, placeLabels } from "../../../../../taskpane/pane/pictures/chart/place-labels.ts";

const BOUNDS = { left: 40, right: 300, top: 20, bottom: 200 };

function boxOf({ text, x, y }: { readonly text: string; readonly x: number; readonly y: number }) {
  return { left: x, right: x + 5 * text.length, top: y - 9, bottom: y };
}

describe("names beside what they name", () => {
  const level = (y: number): readonly Place[] => [
    [40, y],
    [300, y],
  ];

  it("lie inside, on no curve and on one another nowhere", () => {
    const curves = [level(60), level(80), level(140)];
    const placed = placeLabels(
      curves.map((beside, i) => ({
        key: `${i}`,
        text: `curve number ${i}`,
        beside: [beside[1] as Place, [170, beside[0]?.[1] ?? 0]],
      })),
      BOUNDS,
      curves,
    );
    expect(placed.length).toBe(3);
    const boxes = placed.map(boxOf);
    for (const [i, one] of boxes.entries()) {
      expect(one.left).toBeGreaterThanOrEqual(BOUNDS.left);
      expect(one.right).toBeLessThanOrEqual(BOUNDS.right);
      for (const y of [60, 80, 140]) expect(one.top > y || one.bottom < y, `${y}`).toBe(true);
      for (const other of boxes.slice(i + 1)) {
        const apart =
          one.right <= other.left || other.right <= one.left || one.bottom <= other.top || other.bottom <= one.top;
        expect(apart).toBe(true);
      }
    }
  });

  it("are left out where there is no room", () => {
    const wanted = [
      {
        key: "a",
        text: "a name far too long for the room there is beside this very curve",
        beside: [[170, 100]] as const,
      },
    ];
    expect(placeLabels(wanted, BOUNDS, [])).toEqual([]);
    const crowded = Array.from({ length: 30 }, (_, i) => level(20 + 6 * i));
    expect(placeLabels([{ key: "a", text: "pump", beside: [[170, 100]] }], BOUNDS, crowded)).toEqual([]);
  });
});
