import { describe, expect, it } from "vitest";
import type { RouteLine } from "../../../../shared/package/route-line.ts";
import { routeProfile, routeProfileWords } from "../../../../taskpane/pane/pictures/route-profile.ts";
import { markup } from "../../../support/markup.ts";

const place = (chainage: number, level: number, grade: number, remark = "") => ({
  chainage,
  level,
  grade,
  pressure: (grade - level) * 9789,
  vacuumLimit: level - 7,
  remark,
});

const LEVEE: RouteLine = {
  places: [place(0, 183, 195), place(610, 195, 190, "below atmosphere"), place(1280, 186.5, 186.5)],
  ratings: [{ from: [0, 271], to: [610, 283] }],
  summit: 610,
  siphon: "not earned: outlet not sealed",
  fills: "fills",
  fillFlow: 0.16453,
};

describe("the picture of a route", () => {
  it("says in words what it shows", () => {
    const words = routeProfileWords(LEVEE, "US");
    expect(words).toContain("2,001.3 ft along: level 639.8 ft, grade line 623.4 ft, -7.1 psig, below atmosphere");
    expect(words).toContain("Siphon credit not earned: outlet not sealed.");
    expect(words).toContain("The line fills: 2,608 US gpm over the summit.");
  });

  it("marks vacuum by hatching and a triangle, not by colour alone", () => {
    const drawn = markup(routeProfile(LEVEE, "US", 296));
    expect(drawn).toContain("short-mark");
    expect(drawn).toContain('class="guide"');
    expect(drawn).toContain("summit -7.1 psig");
    const dry = { ...LEVEE, places: [place(0, 183, 195), place(610, 185, 190), place(1280, 186.5, 186.5)] };
    expect(markup(routeProfile(dry, "US", 296))).not.toContain("short-mark");
  });

  it("hatches only where the pipe lies over its grade line", () => {
    const drawn = markup(routeProfile(LEVEE, "SI", 296));
    // 12 m under and 5 m over 610 m apart: they cross at 12/17 of it.
    const crossing = 46 + ((296 - 56) * (610 * 12)) / 17 / 1280;
    const hatch = [...drawn.matchAll(/class="guide" d="([^"]+)"/g)].flatMap(([, d = ""]) =>
      [...d.matchAll(/M([\d.]+)/g)].map(([, at]) => Number(at)),
    );
    expect(Math.min(...hatch)).toBeGreaterThan(crossing);
    expect(hatch.length).toBe(18);
  });

  it("keeps a rating out that would flatten the line", () => {
    expect(markup(routeProfile(LEVEE, "US", 296))).not.toContain("line running");
    const near = { ...LEVEE, ratings: [{ from: [0, 200], to: [610, 212] }] as const };
    expect(markup(routeProfile(near, "US", 296))).toContain("line running");
  });
});
