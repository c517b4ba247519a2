import { andThen, succeed } from "../../../src/basis/result.ts";
import { acceptanceGradeNamed, acceptanceMethod } from "../../../src/pump/acceptance.ts";
import { acceptanceTest } from "../../../src/pump/acceptance-test.ts";
import { pumpCurve } from "../../../src/pump/pump-curve.ts";
import { ACCEPTANCE_GRADES } from "../../../src/tables/acceptance-grades.ts";
import { defineEntry } from "../entry.ts";
import { quantity, text } from "../parameter.ts";
import { LARGE, share } from "../parameters/share.ts";
import { atRatedSpeed, testPoints } from "../parameters/test-points.ts";

export const ACCEPTANCETEST = defineEntry({
  id: "ACCEPTANCETEST",
  group: "Pump",
  summary: "A tested pump compared with its guarantee by an acceptance grade of ISO 9906 (ANSI/HI 14.6)",
  method:
    "The points are carried to the rated speed (Q/r, H/r², P/r³) where each states its own, sorted, and drawn through as a pump curve. The cross stands round the guaranteed point: a bar of head at the guaranteed flow, a bar of flow at the guaranteed head; met where the curve cuts or touches either of them. Efficiency and power are those where the line from the origin through the guarantee meets the curve: efficiency at least the guaranteed one less its tolerance, a part of it and not points; power at most the guaranteed one and its tolerance. Nothing is extended: where the curve ends before a bar, or a test of grade 1 has fewer than five points, it cannot be judged. Unilateral grades (1U, 2U) make the guarantee a minimum. NPSHR has no tolerance upward. The factors of the standard's table are from memory, for pumps above 10 kW; the contract and the standard in force govern.",
  cites: acceptanceMethod.cites,
  parameters: {
    testPoints,
    guaranteedFlow: quantity("flow", { about: "Flow guaranteed", range: "above 0" }),
    guaranteedHead: quantity("head", { about: "Head guaranteed at that flow", range: "above 0" }),
    acceptanceGrade: text(
      {
        about: "Acceptance grade",
        example: '"2B"',
        choices: ACCEPTANCE_GRADES.map(({ grade }) => grade),
      },
      (given) => acceptanceGradeNamed(given),
    ),
    guaranteedEfficiency: share({
      ...LARGE,
      about: "Efficiency guaranteed at that flow and head",
      example: '0.78, or "78 %"',
      range: "above 0, at most 100 %",
      whenLeftOut: { value: null, shown: "none guaranteed" },
    }),
    guaranteedPower: quantity("power", {
      about: "Shaft power guaranteed at that flow and head, with water",
      range: "above 0",
      whenLeftOut: { value: null, shown: "none guaranteed" },
    }),
    ratedSpeed: quantity("speed", {
      about: "Speed the guarantee is for",
      example: "1450",
      range: "above 0",
      whenLeftOut: { value: null, shown: "that of the points, which state none" },
    }),
  },
  answer: {
    kind: "record",
    name: "acceptance test",
    columns: {
      headAtFlow: { name: "head at the guaranteed flow", quantity: "head" },
      leastHead: { name: "minimum head", quantity: "head" },
      greatestHead: { name: "maximum head", quantity: "head" },
      flowAtHead: { name: "flow at the guaranteed head", quantity: "flow" },
      leastFlow: { name: "minimum flow", quantity: "flow" },
      greatestFlow: { name: "maximum flow", quantity: "flow" },
      efficiency: { name: "efficiency", quantity: "ratio" },
      leastEfficiency: { name: "minimum efficiency", quantity: "ratio" },
      power: { name: "power", quantity: "power" },
      greatestPower: { name: "maximum power", quantity: "power" },
      flowAndHead: { name: "flow and head" },
      verdict: { name: "verdict" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head", "speed"],
          [180, 31.9, 1468],
          [220, 29.1, 1468],
          [250, 26.4, 1468],
          [280, 23.2, 1468],
          [310, 19.6, 1468],
        ],
        250,
        25.8,
        "2B",
        null,
        null,
        1450,
        "METRIC",
      ],
      part: [1, 0],
      answer: 25.4574,
      within: 0.005,
      source: "carried to 1450 rpm and drawn through with the general-purpose library SciPy, apart from this product",
    },
  ],
  run: ({
    testPoints,
    guaranteedFlow,
    guaranteedHead,
    acceptanceGrade,
    guaranteedEfficiency,
    guaranteedPower,
    ratedSpeed,
  }) =>
    andThen(atRatedSpeed(testPoints, ratedSpeed, "test points"), ({ points, labels }) =>
      andThen(pumpCurve({ points, subject: "test points", labels }), (curve) =>
        andThen(
          acceptanceTest({
            curve,
            grade: acceptanceGrade,
            guarantee: {
              flow: guaranteedFlow,
              head: guaranteedHead,
              ...(guaranteedEfficiency !== null && { efficiency: guaranteedEfficiency }),
              ...(guaranteedPower !== null && { power: guaranteedPower }),
            },
          }),
          ({ bands, ...found }) =>
            succeed({
              ...found,
              leastHead: bands.head.least,
              greatestHead: bands.head.most,
              leastFlow: bands.flow.least,
              greatestFlow: bands.flow.most,
              leastEfficiency: bands.leastEfficiency,
            }),
        ),
      ),
    ),
});
