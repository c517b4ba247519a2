import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

describe("units", () => {
  const flows = fc.double({ min: 1, max: 5000, noNaN: true });

  it("do not change the answer: US and SI agree to 1e-12", () => {
    fc.assert(
      fc.property(flows, fc.double({ min: 1, max: 1e4, noNaN: true }), (gpm, feet) => {
        const litres = (gpm * 231 * 0.0254 ** 3 * 1000) / 60;
        const metres = feet * 0.3048;
        for (const name of ["FRICTIONHEAD", "HAZENHEAD"]) {
          const rest = name === "HAZENHEAD" ? [120] : ["water", "60 degF"];
          const us = numberIn(name, gpm, "6in sch40", feet, ...rest, "US") * 0.3048;
          const si = numberIn(name, litres, "6in sch40", metres, ...rest, "SI");
          expect(Math.abs(us - si)).toBeLessThanOrEqual(1e-12 * si);
        }
        const line = (length: number) => [["6in sch40", length, "2 elbow 90 long, 1 exit"]];
        const us = numberIn("LINEHEAD", gpm, line(feet)) * 0.3048;
        const si = numberIn("LINEHEAD", litres, line(metres), null, null, "SI");
        expect(Math.abs(us - si)).toBeLessThanOrEqual(1e-12 * si);
      }),
    );
  });
});

describe("FRICTIONHEAD", () => {
  it("works down a column, and keeps a bad row to itself", () => {
    const spilled = cell("FRICTIONHEAD", [[500], [-1], [0], ["1000 gpm"], [{ error: "#N/A" }]], "6in sch40", 100);
    const single = numberIn("FRICTIONHEAD", 500, "6in sch40", 100);
    const double = numberIn("FRICTIONHEAD", 1000, "6in sch40", 100);
    expect(spilled).toMatchObject([[single], [{ error: "#VALUE!" }], [0], [double], [{ error: "#N/A" }]]);
  });

  it("works down a column of pipes", () => {
    const spilled = cell("FRICTIONHEAD", 500, [["6in sch40"], ["8in sch40"]], 100) as number[][];
    expect(spilled[0]?.[0]).toBeGreaterThan(3 * (spilled[1]?.[0] as number));
  });

  it.each([
    { why: "an ordinary flow", args: [500, "6in sch40", 100], say: [] },
    { why: "a length of 0", args: [500, "6in sch40", 0], say: ["check zero-may-be-blank"] },
    // 6 m/s in 6.065 in is 1772.6 US gpm, by hand.
    { why: "just below 6 m/s", args: [1772, "6in sch40", 100], say: [] },
    { why: "just above 6 m/s", args: [1774, "6in sch40", 100], say: ["check velocity-high"] },
    {
      why: "a wall beyond the chart",
      args: [500, "ID 6.1 in rough 0.31 in", 100],
      say: ["limit outside-usual-range"],
    },
    { why: "the critical zone", args: [6, "6in sch40", 100], say: ["check critical-zone"] },
  ])("has its say on $why", ({ args, say }) => expect(remarks("FRICTIONHEAD", ...args)).toEqual(say));

  it("multiplies in a corrugated hose", () => {
    const corrugated = numberIn("FRICTIONHEAD", 500, "6in corrugated suction hose", 100);
    const factor = numberIn("FRICTIONFACTOR", numberIn("REYNOLDS", 500, "6in corrugated suction hose"), 0);
    expect(corrugated).toBeGreaterThan((factor * 100 * 12) / 6);
  });

  it.each([
    [[-1, "6in sch40", 100], "#VALUE! Flow must be at least 0 US gpm; -1 US gpm was given."],
    [["-1 L/s", "6in sch40", 100, null, null, "SI"], "#VALUE! Flow must be at least 0 L/s; -1 L/s was given."],
    [[500, "6in sch40", -1], "#VALUE! Length must be at least 0 ft; -1 ft was given."],
    [[500, "6in sch41", 100], "#N/A Pipe “6in sch41” is not known"],
    [[500, "6in sch40", 100, "beer"], "#N/A Liquid “beer” is not known"],
    [[null, "6in sch40", 100], "#VALUE! Flow is left out or blank"],
  ])("refuses %j", (args, message) => expect(refusal("FRICTIONHEAD", ...args)).toContain(message));

  it("reads a number stored as text in the unit set, and says so", () => {
    const asText = ["500", "6in sch40", " 1,200.0 "] as const;
    expect(numberIn("FRICTIONHEAD", ...asText)).toBe(numberIn("FRICTIONHEAD", 500, "6in sch40", 1200));
    expect(numberIn("FRICTIONHEAD", ...asText, null, null, "SI")).toBe(
      numberIn("FRICTIONHEAD", "500 L/s", "6in sch40", "1200 m", null, null, "SI"),
    );
    expect(remarks("FRICTIONHEAD", ...asText).filter((one) => one === "check number-as-text")).toHaveLength(2);
    expect(remarks("FRICTIONHEAD", "500 gpm", "6in sch40", 1200)).not.toContain("check number-as-text");
    expect(cell("NOTES", "FRICTIONHEAD", ...asText)).toContain(
      "Flow is the text “500” without a unit; it was read as 500 US gpm.",
    );
  });
});

describe("FITTINGHEAD", () => {
  const text = numberIn("FITTINGHEAD", 500, "6in sch40", "2 elbow 90 long, 1 gate, 1 exit");

  it("takes fittings as one text or as two columns", () => {
    const range = [
      ["fitting", "count"],
      ["elbow 90 long", 2],
      [null, null],
      ["", 0],
      ["gate", "1"],
      ["exit", null],
    ];
    expect(numberIn("FITTINGHEAD", 500, "6in sch40", range)).toBe(text);
    expect(numberIn("FITTINGHEAD", 500, "6in sch40", [["2 elbow 90 long"], ["gate, exit"]])).toBe(text);
  });

  it.each([
    [[["gate", 1.5]], "#VALUE! Count in fittings must be a whole number; 1.5 was given."],
    [[["gate", -1]], "#VALUE! Count in fittings must be at least 0; -1 was given."],
    [
      [
        ["gate", 1],
        ["ball", 0.5],
      ],
      "#VALUE! Count in fittings row 2 must be a whole number; 0.5 was given.",
    ],
    [
      [
        ["gate", 1],
        ["gaet", 1],
      ],
      "#N/A Fittings row 2 “gaet” is not known; the nearest",
    ],
    [[["gate", "two"]], "#VALUE! Count in fittings was given as two; give a whole number"],
    [[[null, 2]], "#VALUE! Fittings was given as 2; give the fitting beside its count"],
    [[["gate", 1, "x"]], "#VALUE! Fittings was given as x; give two columns"],
    [[[5, 1]], "#VALUE! Fittings was given as 5"],
    ["1.5 gate", "#VALUE! Count of “gate” must be a whole number; 1.5 was given."],
    ["reducer to 8in sch40", "#VALUE! Reducer to 8in sch40 in 6in sch40: the other bore of 7.981 in must be at most"],
    [null, "#VALUE! Fittings is left out or blank"],
  ])("refuses %j", (fittings, message) =>
    expect(refusal("FITTINGHEAD", 500, "6in sch40", fittings)).toContain(message),
  );

  it("carries the fittings' own cautions, but none for a length it does not have", () => {
    expect(remarks("FITTINGHEAD", 500, "6in sch40", "strainer")).toEqual(["assumed fitting-assumed"]);
    expect(remarks("FITTINGHEAD", 500, "6in sch40", "gate")).toEqual([]);
    expect(remarks("FITTINGHEAD", 5000, "6in sch40", "gate")).toEqual(["check velocity-high"]);
  });
});

describe("FITTINGK", () => {
  it("refuses a 3-K fitting, and says what to ask instead", () => {
    expect(refusal("FITTINGK", "3K gate", "6in sch40")).toBe(
      "#VALUE! 3K gate has a coefficient that depends on the flow; ask for its head at a flow instead.",
    );
  });

  it("refuses an unknown fitting with the nearest", () => {
    expect(refusal("FITTINGK", "glob valve", "6in sch40")).toMatch(/^#N\/A Fitting “glob valve” is not known.*globe/);
  });
});

describe("LINEHEAD", () => {
  const plain = [
    ["6in sch40", 100, "1 entrance, 2 elbow 90 long"],
    ["4in sch40", 50, "reducer from 6in sch40, 1 exit"],
  ];
  const due = numberIn("LINEHEAD", 300, plain);

  it("is the friction and the fittings of its rows", () => {
    const parts =
      numberIn("FRICTIONHEAD", 300, "6in sch40", 100) +
      numberIn("FRICTIONHEAD", 300, "4in sch40", 50) +
      numberIn("FITTINGHEAD", 300, "6in sch40", "1 entrance, 2 elbow 90 long") +
      numberIn("FITTINGHEAD", 300, "4in sch40", "reducer from 6in sch40, 1 exit");
    expect(due).toBeCloseTo(parts, 10);
  });

  it.each([
    { why: "blank rows and zeros", line: [[null, null, null], plain[0], [0, 0, 0], ["", "", ""], plain[1]] },
    { why: "a heading", line: [["Pipe", "Length", "Fittings"], ...plain] },
    { why: "a heading with the unit of the set", line: [["pipe", "length, ft", "fittings"], ...plain] },
    {
      why: "lengths as texts",
      line: [
        ["6in sch40", "100 ft", plain[0]?.[2]],
        ["4in sch40", "15.24 m", plain[1]?.[2]],
      ],
    },
    {
      why: "a heading in metres",
      line: [
        ["pipe or hose", "length (m)", "fittings"],
        ["6in sch40", 30.48, plain[0]?.[2]],
        ["4in sch40", 15.24, plain[1]?.[2]],
      ],
    },
    {
      why: "columns in another order, and notes",
      line: [
        ["Fittings", "remark", "Length", "Pipe size"],
        ...plain.map(([pipe, length, fittings]) => [fittings, "by the fence", length, pipe]),
      ],
    },
  ])("takes $why", ({ line }) => {
    expect(numberIn("LINEHEAD", 300, line as never)).toBeCloseTo(due, 10);
  });

  it("reads two columns as a line without fittings", () => {
    expect(numberIn("LINEHEAD", 300, [["6in sch40", 100]])).toBe(numberIn("FRICTIONHEAD", 300, "6in sch40", 100));
  });

  it("takes a length of 0 with a caution that names the row", () => {
    const rows = [
      ["pipe", "length", "fittings"],
      ["6in sch40", 0, "1 exit"],
    ];
    expect(remarks("LINEHEAD", 300, rows)).toEqual(["check zero-may-be-blank"]);
  });

  it.each([
    [[["6in sch40", -1, ""]], "#VALUE! Line row 1: length must be at least 0 ft; -1 ft was given."],
    [
      [
        ["6in sch40", 10],
        ["6in sch40", null],
      ],
      "#VALUE! Line row 2: length is left out or blank",
    ],
    [[["6in sch40", "long"]], "#VALUE! Line row 1: length is not a number: “long”"],
    [[["6in sch40", "10 gpm"]], "#VALUE! Line row 1: length was given as “10 gpm”, a unit of another kind"],
    [
      [
        [null, null],
        ["6in sch41", 10],
      ],
      "#N/A Line row 2: pipe “6in sch41” is not known",
    ],
    [[[null, 10, "gate"]], "#VALUE! Line row 1: pipe is left out or blank"],
    [[[6, 10, "gate"]], "#VALUE! Line row 1: pipe was given as 6"],
    [[["6in sch40", 10, "gaet"]], "#N/A Line row 1: fittings “gaet” is not known; the nearest"],
    [[["6in sch40", 10, 3]], "#VALUE! Line row 1: fittings was given as 3"],
    [
      [["6in sch40", 10, "gate", "elbow"]],
      "#VALUE! Line row 1: share “elbow” is not one of the choices; use “1/2”, “50 %”, 0.5 or “all”",
    ],
    [
      [["6in sch40", 10, "gate", "all", 5, "elbow"]],
      "#VALUE! Line row 1 was given as elbow; give pipe, length, fittings, share, level, or a header row that names them",
    ],
    [
      [
        ["pipe", "length (gal)"],
        ["6in sch40", 10],
      ],
      "#VALUE! Line column “length” was given as “gal”, a unit of another kind; use ft or m",
    ],
    [
      [
        ["what", "length"],
        ["6in sch40", 10],
      ],
      "#VALUE! Line has no heading that names its columns; head them, such as pipe, length, fittings",
    ],
    [[["pipe", "length", "fittings"]], "#VALUE! Line has no filled rows; give rows of pipe, length, fittings"],
    [[[null, null, null]], "#VALUE! Line has no filled rows; give rows of pipe, length, fittings"],
  ])("refuses %j", (line, message) => expect(refusal("LINEHEAD", 300, line)).toContain(message));
});

describe("HAZENHEAD", () => {
  it("takes C as 140 where it is left out, and refuses 0", () => {
    expect(numberIn("HAZENHEAD", 500, "6in sch40", 100)).toBe(numberIn("HAZENHEAD", 500, "6in sch40", 100, 140));
    expect(refusal("HAZENHEAD", 500, "6in sch40", 100, 0)).toBe("#VALUE! C must be above 0; 0 was given.");
  });

  it("cautions of a length of 0", () => {
    expect(remarks("HAZENHEAD", 500, "6in sch40", 0)).toEqual(["check zero-may-be-blank"]);
  });
});

describe("PIPESIZE", () => {
  // 8 ft/s carries 3.1169 × 8 × d²/1.2732… : 5.047 in carries 499 US gpm and 6.065 in 720 (ASME B36.10M bores), by hand.
  it("takes 8 ft/s where no velocity is given", () => {
    expect([498, 500, 719, 721].map((flow) => cell("PIPESIZE", flow, "sch40"))).toEqual([
      "5in sch40",
      "6in sch40",
      "6in sch40",
      "8in sch40",
    ]);
  });

  it("keeps within the gradient", () => {
    expect(cell("PIPESIZE", 500, "sch40", 8, 0.03)).toBe("6in sch40");
    expect(cell("PIPESIZE", 500, "sch40", 8, "1 %")).toBe("8in sch40");
  });

  it("names sizes by the units of the reader", () => {
    expect(cell("PIPESIZE", "500 gpm", "sch40", null, null, null, null, "SI")).toBe("DN150 sch40");
  });

  it.each([
    [[1e6, "sch40"], "#VALUE! No size of “sch40” meets the limits: the largest, 36in sch40, still runs at 343.2 ft/s"],
    [[500, "shc40"], "#N/A Family “shc40” is not known"],
    [[500, "sch40", 0], "#VALUE! Maximum velocity must be above 0 ft/s"],
    [[0, "sch40"], "#VALUE! Flow must be above 0 US gpm"],
  ])("refuses %j", (args, message) => expect(refusal("PIPESIZE", ...args)).toContain(message));
});

describe("FITTINGS", () => {
  const [header, ...rows] = cell("FITTINGS") as readonly (readonly (string | number)[])[];

  it("lists every fitting with its source", () => {
    expect(header).toEqual(["name", "also called", "basis", "value", "source"]);
    // 51 by equivalent length, 14 by K, 34 by 3-K, 4 and 26 of the trade, 16 forms with a figure of their own.
    expect(rows).toHaveLength(51 + 14 + 34 + (4 + 26) + 16);
    for (const row of rows) expect(row[4]).toMatch(/.{20}/);
  });

  it("lists names that can be used", () => {
    for (const [name] of rows) expect(numberIn("FITTINGHEAD", 100, "6in sch40", `1 ${name}`)).toBeGreaterThanOrEqual(0);
  });
});
