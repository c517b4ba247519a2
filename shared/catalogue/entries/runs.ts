import { andThen, succeed } from "../../../src/basis/result.ts";
import { branchFlows, branchFlowsMethod } from "../../../src/pipework/branch-flows.ts";
import { parallelRuns, parallelRunsMethod } from "../../../src/pipework/parallel-runs.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { branchRows, parallelRows } from "../parameters/runs.ts";

export const PARALLELRUNS = defineEntry({
  id: "PARALLELRUNS",
  group: "Pipe and friction",
  summary: "How a flow divides between unlike runs side by side, and the head each of them loses",
  method:
    "The head at which all runs lose the same and together carry the flow: h_1(Q_1) = h_2(Q_2) = …, ΣQ = Q, each run by Darcy–Weisbach at its own Reynolds number with its fittings, or by Hazen–Williams where its pipe states a C. Each run leads from the place where the flow divides to that where it meets again; the tees there belong to the runs as fittings. The head counts once on the path of the pump: in a line, take one of the runs with its share, never all of them. Equal runs need no such answer: a row with share 1/2 is one of two. A run without loss is refused, and so is a liquid with solids that sink: where the slower run plugs is not known. Look that the least velocity keeps clear of air and sediment what it has to.",
  cites: parallelRunsMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow through all runs together", range: "0 or more" }),
    runs: parallelRows,
    liquid,
    temperature,
  },
  answer: {
    kind: "table",
    name: "parallel runs",
    columns: {
      run: { name: "run" },
      flow: { name: "flow", quantity: "flow" },
      share: { name: "share" },
      velocity: { name: "velocity", quantity: "velocity" },
      head: { name: "head lost", quantity: "head" },
    },
  },
  examples: [
    {
      args: [
        "0.03 m3/s",
        [
          ["ID 4 cm rough 0.045 mm", 36],
          ["ID 8 cm rough 0.045 mm", 36],
        ],
        "998 kg/m3, 1.002 cP",
        null,
        "SI",
      ],
      part: [1, 1],
      answer: 4.15,
      within: 0.005,
      source:
        "Çengel and Cimbala, Fluid Mechanics, pumping water through two parallel pipes (0.00415 m³/s of 0.03 printed)",
    },
    {
      args: [
        "0.35 ft3/s",
        [
          ["ID 2 in rough 0.0021562 in", 90, "K 3"],
          ["ID 3 in rough 0.0076392 in", 120, "K 5"],
          ["ID 2.5 in rough 0.0039368 in", 180, "K 1"],
        ],
        "62.4 lb/ft3, 0.000001 cP",
      ],
      part: [2, 2],
      answer: 0.4686,
      within: 0.0015,
      source:
        "George Mason University, CEIE 230, assignment 8, problem 2 (0.164 of 0.35 ft³/s printed; the roughness gives the factor stated)",
    },
    {
      args: [
        "0.231 m3/s",
        [
          ["ID 300 mm C 120", 3000],
          ["ID 200 mm C 120", 1300],
          ["ID 250 mm C 120", 2600],
        ],
        null,
        15,
        "SI",
      ],
      part: [1, 1],
      answer: 105,
      within: 1.2,
      source: "Evett and Liu, 2500 Solved Problems in Fluid Mechanics and Hydraulics, problem 11.1 (read off a chart)",
    },
  ],
  run: ({ runs, liquid: described, temperature: at, flow }) =>
    andThen(described.at(at), (state) =>
      andThen(parallelRuns({ flow, runs: runs.map(({ run }) => run), liquid: state }), ({ head, runs: carrying }) =>
        succeed(
          carrying.map(({ flow: own, share, velocity }, i) => ({
            run: runs[i]?.name,
            flow: own,
            share,
            velocity,
            head,
          })),
        ),
      ),
    ),
});

export const BRANCHFLOWS = defineEntry({
  id: "BRANCHFLOWS",
  group: "Pipe and friction",
  summary: "Flows in branches that meet at a junction and end at levels of their own, with the grade at the junction",
  method:
    "The grade at the junction at which what is brought there leaves by the branches: |G − z| = h(Q) for each, ΣQ = flow, each branch by Darcy–Weisbach at its own Reynolds number with its fittings, or by Hazen–Williams where its pipe states a C. A branch whose end lies above the grade feeds the junction: its flow is below 0 and it says “from its end”. Between reservoirs alone the flow is 0 or left out; for a pump it is that of the pump, whose line then ends at the junction with the grade for its delivery level. List an entrance where a branch is fed, an exit where it ends; the velocity head at the junction is left out, and a free outlet feeds nothing back. A branch without loss is refused, and so is a liquid with solids that sink.",
  cites: branchFlowsMethod.cites,
  parameters: {
    branches: branchRows,
    flow: quantity("flow", {
      about: "Flow brought to the junction by a pump or a main",
      range: "below 0 for what is drawn off there",
      whenLeftOut: { value: 0, shown: "0, reservoirs alone" },
    }),
    liquid,
    temperature,
  },
  answer: {
    kind: "table",
    name: "branch flows",
    columns: {
      branch: { name: "branch" },
      flow: { name: "flow", quantity: "flow" },
      direction: { name: "direction" },
      velocity: { name: "velocity", quantity: "velocity" },
      head: { name: "head lost", quantity: "head" },
      grade: { name: "grade at the junction", quantity: "elevation" },
    },
  },
  examples: [
    {
      args: [
        [
          ["ID 900 mm C 110", 1410, null, 282],
          ["ID 600 mm C 90", 1022, null, 257],
        ],
        605,
        null,
        15,
        "SI",
      ],
      part: [1, 1],
      answer: -270,
      within: 2.6,
      source: "board-examination problem on three reservoirs, Hazen–Williams (0.27 m³/s from the upper one)",
    },
  ],
  run: ({ branches, liquid: described, temperature: at, flow }) =>
    andThen(described.at(at), (state) =>
      andThen(
        branchFlows({ flow, branches: branches.map(({ run }) => run), liquid: state }),
        ({ grade, branches: carrying }) =>
          succeed(
            carrying.map(({ flow: own, velocity, loss }, i) => ({
              branch: branches[i]?.name,
              flow: own,
              direction: directionOf(own),
              velocity,
              head: loss.total,
              grade,
            })),
          ),
      ),
    ),
});

function directionOf(flow: number): string {
  if (flow === 0) return "at rest";
  return flow > 0 ? "to its end" : "from its end";
}
