import { andThen, succeed } from "../../../src/basis/result.ts";
import { gradeLine, gradeLineMethod } from "../../../src/route/grade-line.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { route } from "../parameters/route.ts";
import { ROUTE_PLACE } from "../parameters/route-place.ts";
import { SIPHON_LIMITS } from "../parameters/siphon-limits.ts";

const flow = quantity("flow", { about: "Flow through the line", range: "0 or more" });
const { startHead, startLevel, outletLevel, outletPressure, altitude } = ROUTE_PLACE;

export const GRADELINE = defineEntry({
  id: "GRADELINE",
  group: "System and suction",
  summary: "Hydraulic grade line and pressure along a route, with vacuum marked",
  method:
    "Marched from the first row. Start head is the level of the energy line there: elevation, plus pressure over ρg, plus velocity head; left out, the line is marched back from its outlet, where the velocity head is lost. The route is surveyed, chainage and elevation a row; or it is a line with the level of the end of each row and the level at which it starts, where chainage is √(L² − Δz²), a level not stated lies on the slope between its neighbours, and fittings are spread along their row. Of a surveyed route a pipe serves from its own row to the next and on, until another is named; fittings stand at their row and are lost just after it. Pipe length is √(Δx² + Δz²). Grade and pressure are those of the liquid as it arrives at the row; the remark judges the lower of the two sides. Remarks, from the mildest: below atmosphere; siphon too high (more than siphon height above the grade line, usually 7.0 m or 23 ft less 1.1 m per 1000 m of altitude); air release (below siphon pressure, usually 30 kPa absolute); lay-flat under vacuum; column separation (at or below vapour pressure: the figures then do not hold). Vacuum is judged against the atmosphere at sea level, of the altitude given, or at each row's own elevation where the route has a header row that says “elevation above sea level”. The line must also be filled at start-up: a caution says where the start head is less than the largest of elevation plus losses.",
  cites: gradeLineMethod.cites,
  parameters: {
    flow,
    route: route(
      "The route: one row a point, chainage, elevation of the pipe centreline, pipe, fittings; or one row a run, pipe, length, fittings, share, level of its end; a header row is optional",
    ),
    startHead,
    liquid,
    temperature,
    startLevel: {
      ...startLevel,
      whenLeftOut: "needed where the route is a line",
      fallback: null,
    },
    outletLevel,
    outletPressure,
    altitude,
    ...SIPHON_LIMITS,
  },
  unitsBefore: "siphonHeight",
  answer: {
    kind: "table",
    name: "grade line",
    columns: {
      chainage: { name: "chainage", quantity: "length" },
      elevation: { name: "elevation", quantity: "elevation" },
      hydraulicGrade: { name: "hydraulic grade", quantity: "elevation" },
      pressure: { name: "pressure", quantity: "gaugePressure" },
      remark: { name: "remark" },
    },
  },
  examples: [
    {
      args: [
        30,
        [
          [0, 0, "ID 154.08 mm rough 0.045 mm"],
          [298.9565, 25],
          [798.7315, 10],
        ],
        21.95815,
        "water",
        null,
        null,
        null,
        null,
        null,
        "SI",
      ],
      part: [2, 3],
      answer: -74.481,
      within: 0.01,
      source: "grade line worked back from the outlet, apart from this product",
    },
    {
      args: [
        20,
        [
          ["pipe", "length", "fittings", "share", "level"],
          ["ID 300 mm rough 0.05 mm", 100.498756211, null, null, 10],
          ["ID 300 mm rough 0.05 mm", 200.159936051, "1 exit", null, 2],
        ],
        null,
        "water",
        null,
        0,
        null,
        null,
        null,
        "SI",
      ],
      part: [2, 3],
      answer: -77.7949,
      within: 0.04,
      source: "grade line worked back from the outlet in Python, apart from this product",
    },
  ],
  run: ({ flow, route, startHead, liquid, temperature, outletPressure, ...of }) =>
    andThen(route(of), (placed) =>
      andThen(liquid.at(temperature), (state) =>
        andThen(gradeLine({ flow, route: placed, startHead, liquid: state, outletPressure, limits: of }), (points) =>
          succeed(
            points.map(({ chainage, elevation, hydraulicGrade, pressure, state: remark }) => ({
              chainage,
              elevation,
              hydraulicGrade,
              pressure,
              remark,
            })),
          ),
        ),
      ),
    ),
});
