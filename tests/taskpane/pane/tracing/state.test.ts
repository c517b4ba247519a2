import { describe, expect, it } from "vitest";
import { findingText } from "../../../../shared/text/finding-text.ts";
import {
  DRAG,
  NUDGE,
  nextTracing,
  openingTracing,
  type Picture,
  type TracingEvent,
  type TracingState,
} from "../../../../taskpane/pane/tracing/state.ts";
import { tracingWorked } from "../../../../taskpane/pane/tracing/worked.ts";

const PICTURE: Picture = { name: "curve.png", url: "blob:1", width: 1000, height: 600 };

function after(events: readonly TracingEvent[], from: TracingState = openingTracing("METRIC", ".")): TracingState {
  return events.reduce(nextTracing, from);
}

const place = (x: number, y: number, keep = false): TracingEvent => ({ type: "placed", at: { x, y }, keep });
const value = (axis: "flow" | "head" | "efficiency", end: 0 | 1, text: string): TracingEvent => ({
  type: "end-typed",
  axis,
  end,
  text,
});
const OPEN: TracingEvent = { type: "picture-offered", picture: PICTURE, units: "METRIC" };
// 2 px a m³/h from x 100, 5 px a m from y 500.
const CALIBRATE: readonly TracingEvent[] = [
  OPEN,
  place(100, 500),
  place(900, 500),
  place(100, 500),
  place(100, 50),
  value("flow", 0, "0"),
  value("flow", 1, "400"),
  value("head", 0, "0"),
  value("head", 1, "90"),
];
const NAMED: TracingEvent = { type: "curve-typed", field: "pump", text: "P-1" };
const codes = (state: TracingState): readonly string[] => tracingWorked(state).findings.map(({ code }) => code);

describe("setting the axes", () => {
  it("goes from the flow axis to that of the line, then traces, the origin shared", () => {
    const aims = [1, 2, 3, 4, 5].map((count) => after(CALIBRATE.slice(0, count)).aim);
    expect(aims).toEqual([
      { kind: "end", axis: "flow", end: 0 },
      { kind: "end", axis: "flow", end: 1 },
      { kind: "end", axis: "head", end: 0 },
      { kind: "end", axis: "head", end: 1 },
      undefined,
    ]);
    expect(tracingWorked(after(CALIBRATE)).calibration?.ok).toBe(true);
  });

  it("asks for the value of each point beside it, until it is given or a point of the curve is set", () => {
    const askedAfter = (...events: readonly TracingEvent[]): unknown => after([OPEN, ...events]).asked;
    const [flow, other] = [place(100, 500, true), place(900, 500)];
    expect(askedAfter()).toBeUndefined();
    expect(askedAfter(flow)).toEqual({ kind: "end", axis: "flow", end: 0 });
    expect(askedAfter(flow, value("flow", 0, "0"))).toEqual({ kind: "end", axis: "flow", end: 0 });
    expect(askedAfter(flow, other)).toEqual({ kind: "end", axis: "flow", end: 1 });
    expect(after([OPEN, flow, { type: "value-closed" }])).toMatchObject({ asked: undefined, selected: undefined });
    expect(askedAfter(flow, { type: "undone" })).toBeUndefined();
    expect(askedAfter(flow, { type: "removed" })).toBeUndefined();
    expect(askedAfter(flow, { type: "line-picked", line: "power" })).toBeUndefined();
    expect(after([...CALIBRATE, place(300, 300)]).asked).toBeUndefined();
    const again: TracingEvent = { type: "picked", mark: { kind: "end", axis: "head", end: 1 } };
    expect(after([...CALIBRATE, again]).asked).toEqual({ kind: "end", axis: "head", end: 1 });
  });

  it("asks another line for its own axis alone, and takes over the points of another", () => {
    const efficiency = after([...CALIBRATE, { type: "line-picked", line: "efficiency" }]);
    expect(efficiency.aim).toEqual({ kind: "end", axis: "efficiency", end: 0 });
    const taken = after(
      [{ type: "axis-taken", from: "head" }, value("efficiency", 0, "0"), value("efficiency", 1, "100")],
      efficiency,
    );
    expect(taken.aim).toBeUndefined();
    expect(taken.drawing.axes.efficiency.unit).toBe("%");
    const npshr = after(
      [
        { type: "line-picked", line: "npshRequired" },
        { type: "axis-taken", from: "head" },
      ],
      efficiency,
    );
    expect(npshr.drawing.axes.npshRequired).toEqual(npshr.drawing.axes.head);
  });

  it("sets a point outside the picture nowhere", () => {
    const state = after([OPEN]);
    expect(nextTracing(state, place(-1, 20))).toBe(state);
    expect(nextTracing(state, place(10, 600.1))).toBe(state);
  });

  it("says beside the box what is not a number, and reads no line with it", () => {
    const state = after([...CALIBRATE, place(300, 400), NAMED, value("flow", 1, "4oo")]);
    const worked = tracingWorked(state);
    expect(worked.atEnd("flow", 1).map(({ code }) => code)).toEqual(["not-a-number"]);
    expect(worked.atEnd("flow", 0)).toEqual([]);
    expect(codes(state)).toContain("tracing-line-without-axis");
    expect(worked.toWrite).toBeUndefined();
  });
});

describe("points", () => {
  const traced = after([...CALIBRATE, NAMED, place(100, 250), place(300, 300), place(500, 400)]);

  it("are read as rows", () => {
    expect(tracingWorked(traced).rows[0]).toEqual([
      { flow: 0, head: 50 },
      { flow: 100, head: 40 },
      { flow: 200, head: 20 },
    ]);
  });

  it("move, one drag a step back, and one row of nudges a step back", () => {
    const second = traced.drawing.curves[0]?.lines.head[1]?.id ?? 0;
    const steps = traced.past.length;
    const dragged = after(
      [
        { type: "picked", mark: { kind: "point", id: second } },
        { type: "moved", at: { x: 310, y: 300 }, run: DRAG },
        { type: "moved", at: { x: 320, y: 310 }, run: DRAG },
        { type: "let-go" },
        { type: "moved", at: { x: 321, y: 310 }, run: NUDGE },
        { type: "moved", at: { x: 322, y: 310 }, run: NUDGE },
      ],
      traced,
    );
    expect(dragged.past.length).toBe(steps + 2);
    const [, row] = tracingWorked(dragged).rows[0] ?? [];
    expect(row?.flow).toBeCloseTo(111, 9);
    expect(row?.head).toBeCloseTo(38, 9);
    const back = after([{ type: "undone" }, { type: "undone" }], dragged);
    expect(back.drawing).toEqual(traced.drawing);
    expect(after([{ type: "redone" }, { type: "redone" }], back).drawing).toEqual(dragged.drawing);
  });

  it("placed and dragged in one press are one step back", () => {
    const pressed = after(
      [place(700, 450, true), { type: "moved", at: { x: 702, y: 451 }, run: DRAG }, { type: "let-go" }],
      traced,
    );
    expect(pressed.past.length).toBe(traced.past.length + 1);
    expect(pressed.selected).toEqual({ kind: "point", id: 4 });
  });

  it("are removed, and come back", () => {
    const id = traced.drawing.curves[0]?.lines.head[0]?.id ?? 0;
    const removed = after([{ type: "picked", mark: { kind: "point", id } }, { type: "removed" }], traced);
    expect(tracingWorked(removed).rows[0]?.map(({ flow }) => flow)).toEqual([100, 200]);
    expect(after([{ type: "undone" }], removed).drawing).toEqual(traced.drawing);
  });

  it("below 0, twice at a flow and far beyond the axis points are remarked", () => {
    expect(codes(after([place(98, 255)], traced))).toContain("tracing-below-zero");
    expect(codes(after([place(520, 501)], traced))).toContain("tracing-below-zero");
    expect(codes(after([place(300, 310)], traced))).toContain("tracing-flow-repeated");
    const short = after([value("flow", 1, "40"), { type: "aimed", axis: "flow", end: 1 }, place(180, 500)], traced);
    expect(codes(short)).toContain("tracing-beyond-axis-points");
    expect(codes(traced)).toEqual([]);
  });
});

describe("a point just below 0", () => {
  // 0.2 % of the 400 m³/h between the axis points is 0.8 m³/h, 1.6 px.
  const clicked = (x: number) => after([...CALIBRATE, NAMED, place(x, 250), place(300, 300), place(500, 400)]);

  it("is taken as 0 within the error of a click, and says so", () => {
    const state = clicked(98.5);
    expect(tracingWorked(state).rows[0]?.[0]?.flow).toBe(0);
    expect(tracingWorked(state).findings.map((finding) => findingText(finding, "SI"))).toEqual([
      "The flow of a point of head comes to -0.75 m³/h, within the error of a click of 0, and is taken as 0.",
    ]);
  });

  it("stands as it is beyond that", () => {
    const state = clicked(98.3);
    expect(tracingWorked(state).rows[0]?.[0]?.flow).toBeCloseTo(-0.85, 9);
    expect(codes(state)).toEqual(["tracing-below-zero"]);
  });
});

describe("rows to hand out", () => {
  const head = [...CALIBRATE, place(100, 250), place(300, 300), place(500, 400)];
  const withEfficiency = after([
    ...head,
    NAMED,
    { type: "line-picked", line: "efficiency" },
    { type: "axis-taken", from: "head" },
    value("efficiency", 0, "0"),
    value("efficiency", 1, "90"),
    place(100, 500),
    place(400, 200),
  ]);

  it("wait for the name of the pump", () => {
    expect(tracingWorked(after(head)).toWrite).toBeUndefined();
    expect(codes(after(head))).toEqual(["left-out"]);
    expect(tracingWorked(after([...head, NAMED])).toWrite?.[0]?.pump).toBe("P-1");
  });

  it("stay blank where a line has no point, and say that the pump table needs a head", () => {
    const worked = tracingWorked(withEfficiency);
    expect(worked.rows[0]).toEqual([
      { flow: 0, head: 50, efficiency: 0 },
      { flow: 100, head: 40 },
      { flow: 150, efficiency: 60 },
      { flow: 200, head: 20 },
    ]);
    expect(codes(withEfficiency)).toEqual(["tracing-rows-without-head"]);
    expect(worked.toWrite).toHaveLength(1);
  });

  it("at the flows of the head line say that they are read between points, and what stays blank", () => {
    const state = after([{ type: "rows-picked", rows: "head-flows" }], withEfficiency);
    const worked = tracingWorked(state);
    // Two points are joined by a straight line: 60 % at 150 m³/h is 40 % at 100.
    expect(worked.rows[0]).toEqual([
      { flow: 0, head: 50, efficiency: 0 },
      { flow: 100, head: 40, efficiency: 40 },
      { flow: 200, head: 20 },
    ]);
    expect(codes(state)).toEqual(["tracing-read-between", "tracing-beyond-line"]);
  });

  it("of several curves must differ, and all state what one states", () => {
    const two = after(
      [
        { type: "curve-added" },
        { type: "line-picked", line: "head" },
        place(100, 300),
        place(300, 350),
        place(500, 450),
      ],
      after([...head, NAMED]),
    );
    expect(codes(two)).toEqual(["tracing-curve-repeated"]);
    const half = after([{ type: "curve-typed", field: "diameter", text: "240" }], two);
    expect(codes(half)).toEqual(["tracing-curve-unlike"]);
    expect(tracingWorked(half).findings.map((finding) => findingText(finding, "SI"))).toEqual([
      "Curve 1 of “P-1” leaves out the impeller diameter that another curve of it states; a blank would be read as that of the curve above.",
    ]);
    const both = after(
      [
        { type: "curve-picked", curve: 0 },
        { type: "curve-typed", field: "diameter", text: "260" },
      ],
      half,
    );
    expect(codes(both)).toEqual([]);
    expect(tracingWorked(both).tableFindings).toEqual([]);
    expect(tracingWorked(both).toWrite?.map(({ diameter }) => diameter)).toEqual([260, 240]);
  });

  it("refuse a speed that is none", () => {
    const state = after([...head, NAMED, { type: "curve-typed", field: "speed", text: "-1480" }]);
    expect(
      tracingWorked(state)
        .atField(0, "speed")
        .map(({ code }) => code),
    ).toEqual(["out-of-range"]);
    expect(tracingWorked(state).toWrite).toBeUndefined();
  });

  it("doubt an efficiency axis that ends at 1", () => {
    const state = after([value("efficiency", 1, "1")], withEfficiency);
    expect(codes(state)).toContain("tracing-efficiency-as-fraction");
  });
});

describe("another picture", () => {
  const other: Picture = { ...PICTURE, url: "blob:2", name: "other.png" };

  it("waits for leave once anything is set, and takes the place of all of it", () => {
    const asked = after([...CALIBRATE, NAMED, { type: "picture-offered", picture: other, units: "US" }]);
    expect(asked.picture?.url).toBe("blob:1");
    expect(asked.offered?.url).toBe("blob:2");
    const kept = after([{ type: "picture-answered", replace: false, units: "US" }], asked);
    expect([kept.picture?.url, kept.offered, kept.drawing]).toEqual(["blob:1", undefined, asked.drawing]);
    const taken = after([{ type: "picture-answered", replace: true, units: "US" }], asked);
    expect(taken.picture?.url).toBe("blob:2");
    expect(taken.past).toEqual([]);
    expect(taken.drawing.axes.flow).toMatchObject({ unit: "US gpm", ends: [{ at: undefined }, { at: undefined }] });
    expect(taken.drawing.curves[0]?.pump).toBe("P-1");
  });

  it("opens at once over an untouched one", () => {
    expect(after([OPEN, { type: "picture-offered", picture: other, units: "US" }]).picture?.url).toBe("blob:2");
  });
});
