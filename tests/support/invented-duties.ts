import type { DutyText, OtherPumpText, SegmentText } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { convertNumbers } from "../../taskpane/pane/convert-numbers.ts";
import { BYPASS_CURVE, otherPump } from "./bypass.ts";
import { dutyText, pumpText, QUARRY, STRAIGHT_PUMP } from "./duty-of.ts";
import { STATION } from "./station-duty.ts";

const [, WORKS, HARBOUR, SAND] = SAMPLE_DUTIES.map(({ duty }) => duty) as unknown as readonly [
  DutyText,
  DutyText,
  DutyText,
  DutyText,
];

/** Two pumps over a levee: each with its hose and branch, one line behind them. */
const LEVEE = dutyText(
  {
    project: "Levee bypass (invented)",
    item: "P-101",
    liquid: "water",
    temperature: "70",
    altitude: "600",
    flow: "3000",
    sourceLevel: "588",
    pumpLevel: "600",
    deliveryLevel: "612",
    pumpsRunning: "2",
    pumpsStandby: "1",
  },
  {
    suctionLine: [{ pipe: "12in suction hose", length: "40", fittings: "1 entrance bell, 2 hose bend", share: "each" }],
    dischargeLine: [
      { pipe: "10in sch40", length: "10", fittings: "1 swing check, 1 gate, 1 elbow 90 long", share: "each" },
      { pipe: "18in HDPE DR17", length: "4200", fittings: "8 elbow 45, 1 exit", share: "all" },
    ],
    pump: { ...BYPASS_CURVE, name: "Pair pump (invented)", speed: "1750" },
  },
);

/** The same over a summit, with what holds by season. */
const SUMMIT: DutyText = {
  ...LEVEE,
  dischargeLine: [
    { ...(LEVEE.dischargeLine[0] as SegmentText), level: "600" },
    { pipe: "18in HDPE DR17", length: "2000", fittings: "4 elbow 45", share: "all", level: "640" },
    { pipe: "18in HDPE DR17", length: "2200", fittings: "4 elbow 45, 1 exit", share: "all", level: "612" },
  ],
  cases: [
    { name: "Dry weather", hours: "6000", fields: { flow: "1500", pumpsRunning: "1" } },
    { name: "Storm", hours: "300", fields: { sourceLevel: "592" } },
    { name: "Summer water", hours: "2000", fields: { temperature: "90" } },
  ],
};

const STAGE = pumpText(
  [0, 10, 20, 30, 40, 50, 60, 70, 80].map((flow) => [String(flow), (64 - 0.0036 * flow ** 2).toFixed(3)]),
  { name: "Stage pump (invented)", speed: "1750" },
);

/** Two stages that add their heads up a shaft. */
const SHAFT = dutyText(
  {
    project: "Mine stage (invented)",
    item: "P-202",
    liquid: "mine water SG 1.03",
    temperature: "20",
    altitude: "0",
    flow: "69.44",
    sourceLevel: "-2",
    pumpLevel: "0",
    deliveryLevel: "90",
    pumpsRunning: "2",
    arrangement: "series",
  },
  {
    unitSet: "SI",
    suctionLine: [{ pipe: "DN250 sch40", length: "6", fittings: "1 entrance bell" }],
    dischargeLine: [
      { pipe: "250 mm SDR 11 PE100", length: "300", fittings: "2 elbow 45", level: "45" },
      { pipe: "250 mm SDR 11 PE100", length: "300", fittings: "2 elbow 45, 1 exit", level: "90" },
    ],
    pump: STAGE,
  },
);

const second: OtherPumpText = otherPump(STRAIGHT_PUMP, { name: "second (invented)", speedRatio: "0.97" });

/** Figures as they are written where the decimal sign is a comma. */
const COMMAS = dutyText(
  { item: "P-8", flow: "45,5", sourceLevel: "-1,8", pumpLevel: "0,4", deliveryLevel: "22,25", frictionMargin: "7,5" },
  {
    unitSet: "METRIC",
    suctionLine: [{ pipe: "DN150 sch40", length: "6,5", fittings: "1 entrance flush" }],
    dischargeLine: [{ pipe: "DN125 sch40", length: "140,75 m", fittings: "3 elbow 90 long, 1 exit" }],
    pump: pumpText(
      [
        ["0", "42,5", "", ""],
        ["20", "41,25", "45,5", "2,1"],
        ["40", "37,5", "68,5", "2,4"],
        ["60", "31,25", "72,5", "3,1"],
        ["80", "22,5", "64,5", "4,6"],
      ],
      { speed: "1480", impellerDiameter: "265,5" },
    ),
  },
);

/** Texts that a spreadsheet would take for formulas, numbers, days or truths, in every box that takes any text. */
const FORMULA_LIKE = dutyText(
  {
    firm: "=HYPERLINK(A1)",
    project: "=1+1",
    customer: "+44 20",
    item: "-P-1",
    reference: "007",
    revision: "1.10",
    status: "TRUE",
    date: "1/2/26",
    preparedBy: "@ab",
    preparedInitials: "=A1",
    checkedBy: "'quoted",
    approvedBy: "#N/A",
    exclusions: '=SUM(A1:A2)\n"quoted, twice"\n\t{tab}',
  },
  {
    pump: { ...STRAIGHT_PUMP, name: "=2*3" },
    basis: { flow: "=as asked", deliveryLevel: "-", sourceLevel: "'" },
    cases: [
      { name: "=3", hours: "", fields: { flow: "500" } },
      { name: "1e3", hours: "", fields: { sourceLevel: "1 ft" } },
    ],
    revisions: [{ revision: "=A", date: "=TODAY()", by: "+x", change: "-1" }],
  },
);

/** Prices without anything that they could be worked out of. */
const PRICES_ALONE = dutyText({ tariff: "0.12", discountRate: "7", years: "12" }, { basis: { tariff: "last bill" } });

/** Duties of our own, of every kind that a sheet takes. */
export const INVENTED_DUTIES: readonly { readonly name: string; readonly duty: DutyText }[] = [
  { name: "head and suction alone", duty: dutyText() },
  { name: "a pair over a levee, with standby", duty: LEVEE },
  { name: "a summit and three cases", duty: SUMMIT },
  {
    name: "a siphon with a vacuum primer",
    duty: { ...SUMMIT, fields: { ...SUMMIT.fields, outlet: "submerged", summitValve: "vacuum primer" } },
  },
  { name: "two stages in series", duty: SHAFT },
  {
    name: "a booster part of the way up",
    duty: { ...SHAFT, fields: { ...SHAFT.fields, stages: "2: level 45 m, after row 1, check valve" } },
  },
  {
    name: "a trash lift by hose at altitude",
    duty: dutyText(
      {
        project: "Trash lift (invented)",
        item: "P-303",
        liquid: "water",
        temperature: "90",
        altitude: "5,500 ft",
        flow: "1,200 gpm",
        sourceLevel: "0",
        pumpLevel: "20",
        deliveryLevel: "40",
        npshMargin: "3",
      },
      {
        suctionLine: [{ pipe: "8in suction hose", length: "40", fittings: "1 entrance bell" }],
        dischargeLine: [{ pipe: "8in lay-flat hose", length: "300", fittings: "1 swing check, 1 exit" }],
        pump: pumpText(
          [
            ["0", "110", "0 %", "4"],
            ["400", "106", "45 %", "5.5"],
            ["800", "96", "65 %", "7.5"],
            ["1200", "80", "72 %", "11.5"],
            ["1600", "58", "66 %", "17"],
          ],
          { name: "Trash pump (invented)", speed: "1750" },
        ),
      },
    ),
  },
  { name: "unlike pumps side by side, every box of a case", duty: STATION },
  {
    name: "two unlike pumps in series",
    duty: dutyText({ arrangement: "series", deliveryLevel: "300 ft" }, { pump: STRAIGHT_PUMP, otherPumps: [second] }),
  },
  {
    name: "slurry in two cases",
    duty: { ...SAND, cases: [{ name: "thin season", hours: "3000", fields: { flow: "100 m3/h" } }] },
  },
  {
    name: "slurry without a pump",
    duty: (({ pump: _, ...bare }) => bare)(SAND) as DutyText,
  },
  {
    name: "a thick liquid, priced",
    duty: dutyText(
      { liquid: "SG 0.9, 150 cP, pv 0.1 kPa", directCost: "12,500.50", overhead: "12 %", margin: "18" },
      { pump: STRAIGHT_PUMP, basis: { directCost: "own list", liquid: "customer’s sheet" } },
    ),
  },
  { name: "comma decimals", duty: COMMAS },
  { name: "texts that look like formulas", duty: FORMULA_LIKE },
  { name: "prices that nothing is worked out of", duty: PRICES_ALONE },
  { name: "the quarry in SI", duty: convertNumbers(QUARRY, "SI") },
  { name: "the works in US units", duty: convertNumbers(WORKS, "US") },
  {
    name: "the harbour in metric units, with cases",
    duty: convertNumbers({ ...HARBOUR, ...casesOf(HARBOUR) }, "METRIC"),
  },
  {
    name: "amounts in units of their own",
    duty: dutyText({
      flow: "120 m3/h",
      sourceLevel: "0 m",
      deliveryLevel: "33.5 m",
      sourcePressure: "0.25 bar",
      deliveryPressure: "20 psig",
      temperature: "293.15 K",
    }),
  },
  {
    name: "a station with shares, headers and blank rows",
    duty: {
      ...LEVEE,
      suctionLine: [...LEVEE.suctionLine, { pipe: "", length: "", fittings: "" }],
      dischargeLine: [
        { pipe: "", length: "", fittings: "" },
        ...LEVEE.dischargeLine,
        { pipe: "18in HDPE DR17", length: "12", fittings: "header, 1 gate", share: "1/2" },
      ],
    },
  },
];

function casesOf({ fields }: DutyText): Pick<DutyText, "cases"> {
  return {
    cases: [
      { name: "spring tide", hours: "50", fields: { sourceLevel: fields.deliveryLevel } },
      { name: "neap", hours: "", fields: { sourceLevel: "-0.5", temperature: "8" } },
    ] as NonNullable<DutyText["cases"]>,
  };
}
