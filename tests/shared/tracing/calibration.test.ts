import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findingText } from "../../../shared/text/finding-text.ts";
import {
  type Axes,
  type Axis,
  type AxisScale,
  amountsAt,
  type Calibration,
  calibrate,
  type Position,
  positionOf,
  withoutRemainder,
  worthOfPixel,
} from "../../../shared/tracing/calibration.ts";

function axis(
  name: string,
  unit: string,
  points: readonly [Position, number, Position, number],
  scale: AxisScale = "linear",
): Axis {
  const [first, firstValue, second, secondValue] = points;
  return {
    name,
    unit,
    scale,
    points: [
      { at: first, value: firstValue },
      { at: second, value: secondValue },
    ],
  };
}

function calibrated(axes: Axes): Calibration {
  const result = calibrate(axes);
  if (!result.ok) throw new Error(result.findings.map((finding) => findingText(finding, "SI")).join(" "));
  return result.value;
}

const at = (x: number, y: number): Position => ({ x, y });
const FLOW = axis("flow axis", "m³/h", [at(100, 500), 0, at(900, 500), 400]);
const HEAD = axis("head axis", "m", [at(100, 500), 0, at(100, 50), 90]);

/** Where a chart draws amounts: turned about its origin, y downwards. Written out from the rotation matrix. */
function drawn(degrees: number, origin: Position, perFlow: number, perHead: number) {
  const turn = (degrees * Math.PI) / 180;
  return (flow: number, head: number): Position => {
    const right = flow * perFlow;
    const down = -head * perHead;
    return {
      x: origin.x + right * Math.cos(turn) - down * Math.sin(turn),
      y: origin.y + right * Math.sin(turn) + down * Math.cos(turn),
    };
  };
}

describe("amounts at a place of a straight picture", () => {
  // 800 px for 400 m³/h and 450 px for 90 m, by hand: 2 px a m³/h and 5 px a m.
  const calibration = calibrated({ flow: FLOW, amount: HEAD });

  it.each([
    { place: at(100, 500), flow: 0, head: 0 },
    { place: at(900, 50), flow: 400, head: 90 },
    { place: at(300, 400), flow: 100, head: 20 },
    { place: at(101, 499), flow: 0.5, head: 0.2 },
    { place: at(50, 525), flow: -25, head: -5 },
  ])("$place.x, $place.y is $flow m³/h and $head m", ({ place, flow, head }) => {
    const read = amountsAt(calibration, place);
    expect(read?.flow).toBeCloseTo(flow, 12);
    expect(read?.amount).toBeCloseTo(head, 12);
  });

  it("gives the typed values to the last digit at the axis points", () => {
    const odd = calibrated({
      flow: axis("flow axis", "m³/h", [at(103.7, 500), 0.1, at(911.3, 500), 412.3]),
      amount: axis("head axis", "m", [at(100, 498.1), 0.3, at(100, 51.9), 91.7]),
    });
    expect(amountsAt(odd, at(103.7, 500))?.flow).toBe(0.1);
    expect(amountsAt(odd, at(911.3, 500))?.flow).toBe(412.3);
    expect(amountsAt(odd, at(100, 498.1))?.amount).toBe(0.3);
    expect(amountsAt(odd, at(100, 51.9))?.amount).toBe(91.7);
  });

  it("says what a pixel is worth", () => {
    const worth = worthOfPixel(calibration, at(300, 400));
    expect(worth?.flow).toBeCloseTo(0.5, 10);
    expect(worth?.amount).toBeCloseTo(0.2, 10);
  });
});

describe("a turned picture", () => {
  it.each([-8, -1.5, 0.7, 4, 30, 90])("is read true at %d°", (degrees) => {
    const place = drawn(degrees, at(140, 620), 1.7, 6.1);
    // Flow points on the grid line of 10 m, head points on the axis: neither goes through the origin.
    const calibration = calibrated({
      flow: axis("flow axis", "m³/h", [place(50, 10), 50, place(350, 10), 350]),
      amount: axis("head axis", "m", [place(0, 20), 20, place(0, 80), 80]),
    });
    for (const [flow, head] of [
      [0, 0],
      [120, 74.5],
      [333, 12.25],
      [400, 0],
    ] as const) {
      const read = amountsAt(calibration, place(flow, head));
      expect(read?.flow).toBeCloseTo(flow, 9);
      expect(read?.amount).toBeCloseTo(head, 9);
    }
  });

  it("would be read false by each axis on its own, so the turn matters here", () => {
    const place = drawn(2, at(140, 620), 1.7, 6.1);
    const mark = place(200, 80);
    const level = (mark.x - place(0, 0).x) / ((place(400, 0).x - place(0, 0).x) / 400);
    expect(Math.abs(level - 200)).toBeGreaterThan(5);
  });
});

describe("log axes", () => {
  const log = axis("flow axis", "m³/h", [at(100, 500), 1, at(700, 500), 1000], "log");

  it.each([
    // Three decades over 600 px: 200 px a decade, from the meaning of a logarithm.
    { x: 300, flow: 10 },
    { x: 500, flow: 100 },
    { x: 200, flow: 10 ** 0.5 },
    { x: 100 + 200 * Math.log10(2), flow: 2 },
    { x: 900, flow: 10_000 },
  ])("read $flow at $x", ({ x, flow }) => {
    expect((amountsAt(calibrated({ flow: log, amount: HEAD }), at(x, 300))?.flow ?? 0) / flow).toBeCloseTo(1, 12);
  });

  it("have no place for 0", () => {
    expect(positionOf(calibrated({ flow: log, amount: HEAD }), { flow: 0, amount: 10 })).toBeUndefined();
    expect(positionOf(calibrated({ flow: log, amount: HEAD }), { flow: -3, amount: 10 })).toBeUndefined();
  });

  it("give nothing rather than infinity far off the picture", () => {
    expect(amountsAt(calibrated({ flow: log, amount: HEAD }), at(1e6, 300))).toBeUndefined();
  });
});

describe("there and back again", () => {
  const coordinate = fc.double({ min: 0, max: 4000, noNaN: true });
  const angle = fc.double({ min: 0, max: 360, noNaN: true });
  const positive = fc.double({ min: 0.01, max: 1e5, noNaN: true });

  it.each([
    ["linear", "linear"] as const,
    ["log", "linear"] as const,
    ["linear", "log"] as const,
    ["log", "log"] as const,
  ])("a place comes back, %s flow and %s amount", (flowScale, amountScale) => {
    fc.assert(
      fc.property(
        fc.tuple(coordinate, coordinate),
        fc.tuple(coordinate, coordinate),
        angle,
        fc.double({ min: 45, max: 135, noNaN: true }),
        fc.tuple(positive, fc.double({ min: 1.5, max: 1000, noNaN: true })),
        fc.tuple(positive, fc.double({ min: 1.5, max: 1000, noNaN: true })),
        fc.tuple(fc.double({ min: -0.5, max: 1.5, noNaN: true }), fc.double({ min: -0.5, max: 1.5, noNaN: true })),
        ([x1, y1], [x2, y2], turn, between, [flowFrom, flowTimes], [upFrom, upTimes], [along, up]) => {
          const radians = (turn * Math.PI) / 180;
          const other = ((turn + between) * Math.PI) / 180;
          const length = 500;
          const flowEnd = at(x1 + length * Math.cos(radians), y1 + length * Math.sin(radians));
          const upEnd = at(x2 + length * Math.cos(other), y2 + length * Math.sin(other));
          const calibration = calibrated({
            flow: axis("flow axis", "m³/h", [at(x1, y1), flowFrom, flowEnd, flowFrom * flowTimes], flowScale),
            amount: axis("head axis", "m", [at(x2, y2), upFrom, upEnd, upFrom * upTimes], amountScale),
          });
          const place = at(
            x1 + along * length * Math.cos(radians) + up * length * Math.cos(other),
            y1 + along * length * Math.sin(radians) + up * length * Math.sin(other),
          );
          const read = amountsAt(calibration, place);
          // A log axis may lead out of double precision far away from its points, which is refused.
          if (read === undefined) return;
          const back = positionOf(calibration, read);
          expect(back).toBeDefined();
          expect(Math.hypot((back?.x ?? 0) - place.x, (back?.y ?? 0) - place.y)).toBeLessThan(1e-6);
        },
      ),
    );
  });
});

describe("axes that cannot be used", () => {
  const codes = (axes: Axes): readonly string[] => {
    const result = calibrate(axes);
    return result.ok ? [] : result.findings.map(({ code }) => code);
  };

  it.each([
    {
      why: "same place",
      flow: axis("flow axis", "m³/h", [at(100, 500), 0, at(100, 500), 400]),
      code: "tracing-axis-points-together",
    },
    {
      why: "less than a pixel apart",
      flow: axis("flow axis", "m³/h", [at(100, 500), 0, at(100.7, 500.7), 400]),
      code: "tracing-axis-points-together",
    },
    {
      why: "same value",
      flow: axis("flow axis", "m³/h", [at(100, 500), 20, at(900, 500), 20]),
      code: "tracing-axis-values-equal",
    },
    {
      why: "log from 0",
      flow: axis("flow axis", "m³/h", [at(100, 500), 0, at(900, 500), 400], "log"),
      code: "tracing-log-not-positive",
    },
    {
      why: "log below 0",
      flow: axis("flow axis", "m³/h", [at(100, 500), 10, at(900, 500), -1], "log"),
      code: "tracing-log-not-positive",
    },
    {
      why: "parallel",
      flow: axis("flow axis", "m³/h", [at(100, 500), 0, at(100, 900), 400]),
      code: "tracing-axes-parallel",
    },
    {
      why: "19° apart",
      flow: axis("flow axis", "m³/h", [
        at(0, 0),
        0,
        at(400 * Math.sin((19 * Math.PI) / 180), -400 * Math.cos((19 * Math.PI) / 180)),
        4,
      ]),
      code: "tracing-axes-parallel",
    },
  ])("$why", ({ flow, code }) => {
    expect(codes({ flow, amount: HEAD })).toEqual([code]);
  });

  it("says every reason at once, for both axes", () => {
    const flow = axis("flow axis", "m³/h", [at(1, 1), 5, at(1, 1), 5]);
    const amount = axis("head axis", "m", [at(100, 500), 0, at(100, 50), 90], "log");
    expect(codes({ flow, amount })).toEqual([
      "tracing-axis-points-together",
      "tracing-axis-values-equal",
      "tracing-log-not-positive",
    ]);
  });

  it("names the axis and the value in its own unit", () => {
    const result = calibrate({
      flow: axis("flow axis", "US gpm", [at(100, 500), 0, at(900, 500), 400], "log"),
      amount: HEAD,
    });
    expect(result.findings.map((finding) => findingText(finding, "SI"))).toEqual([
      "The flow axis is logarithmic and states 0 US gpm; a log axis has only values above 0.",
    ]);
  });
});

describe("axes to look at again", () => {
  const cautions = (flow: Axis): readonly string[] =>
    calibrate({ flow, amount: HEAD }).findings.map(({ code }) => code);
  const tilted = (degrees: number, length = 800): Axis => {
    const turn = (degrees * Math.PI) / 180;
    return axis("flow axis", "m³/h", [
      at(100, 500),
      0,
      at(100 + length * Math.cos(turn), 500 + length * Math.sin(turn)),
      400,
    ]);
  };

  it("are more than 3° out of square, either way", () => {
    expect(cautions(tilted(2.9))).toEqual([]);
    expect(cautions(tilted(-2.9))).toEqual([]);
    expect(cautions(tilted(3.1))).toEqual(["tracing-axes-skewed"]);
    expect(cautions(tilted(-3.1))).toEqual(["tracing-axes-skewed"]);
  });

  it("are nearer than 40 pixels", () => {
    expect(cautions(tilted(0, 40.5))).toEqual([]);
    expect(cautions(tilted(0, 39.5))).toEqual(["tracing-axis-points-close"]);
  });
});

describe("rounding remainders", () => {
  it("are 0 on an even axis, and real amounts stay", () => {
    expect(withoutRemainder(-3e-14, FLOW)).toBe(0);
    expect(withoutRemainder(-3e-9, FLOW)).toBe(-3e-9);
    expect(withoutRemainder(1e-15, axis("flow axis", "m³/h", [at(0, 0), 1e-16, at(9, 0), 1e-14], "log"))).toBe(1e-15);
  });
});
