import { TRADE_FIGURES } from "../../../src/pressure/trade-figure.ts";
import { placeOfPart } from "../../catalogue/parameters/series-pumps.ts";
import type { Duty } from "../../duty/duty.ts";
import { amountText } from "../../text/words.ts";
import { constant, difference, type Handle, handles, join, part, product, ratio, verdict } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, statement } from "../plan.ts";
import { greatestHead } from "./pressure-head.ts";
import { CLASSES, firstOf, nozzleCall, nozzleLabels, nozzleTables } from "./pressure-nozzles.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section; those of the greatest head apart. */
export const PRESSURE = handles({
  greatestPressure: "gaugePressure",
  classNeeded: null,
  firstToNeed: null,
  classVerdict: null,
  classRating: "gaugePressure",
  classMargin: "percent",
  testPressure: "gaugePressure",
  weakestPart: null,
  weakestLimit: "gaugePressure",
  casingVerdict: null,
  otherPartVerdict: null,
  tradeFigure: null,
  nozzleNotes: null,
});

/** Pressure at every nozzle, running against a shut valve and standing, and the flange class each needs. */
export const pressureSection: PackageSection = {
  id: "pressure",
  title: "Pressure and flanges",
  missing: "Choose a pump: the greatest pressure comes of its curve.",
  caution:
    "A casing or flange above its pressure bursts: check each nozzle, seal and hose, and test with people clear.",
  decidedBy: ["otherPart"],
  isOfPump: true,
  items: (duty) => {
    const { pump } = duty;
    if (pump === undefined) return [];
    const labels = nozzleLabels(pump);
    const call = nozzleCall(duty);
    return [
      ...stated(
        duty,
        "greatestSuctionPressure",
        "greatestSpeed",
        "greatestImpeller",
        "standingLevel",
        "casingMaterial",
        "flangeClass",
        "suctionFlange",
        "dischargeFlange",
        "casingWorkingPressure",
      ),
      ...otherPart(duty),
      ...greatestHead(duty, pump),
      ...nozzleTables(duty, labels, call),
      ...verdicts(duty, labels),
      remark(PRESSURE.nozzleNotes, "Nozzles and flange class", call),
    ];
  },
};

/** A part that is named without its pressure is said, not passed over. */
function otherPart(duty: Duty): readonly PlanItem[] {
  const { otherPart: name, state } = duty;
  const isOpen = name !== undefined && state.otherPartPressure === "blank";
  const said = `What the ${name} may carry is not stated, so it is not compared with the nozzle pressures.`;
  return [...stated(duty, "otherPart", "otherPartPressure"), ...(isOpen ? [statement(said)] : [])];
}

function verdicts({ state, otherPart: name, unitSet }: Duty, labels: readonly string[]): readonly PlanItem[] {
  const last = labels.length - 1;
  const of = (side: string): string => (labels.length > 2 ? `last ${side}` : side);
  const place = of("discharge");
  const hasCasing = state.casingWorkingPressure !== "blank";
  const hasPart = state.otherPartPressure !== "blank";
  const holds = (verdictOf: Handle, label: string, limit: Handle, isSuction = false): PlanItem => {
    const at = isSuction ? of("suction") : place;
    const pressure = isSuction ? part(CLASSES, "greatest", last - 1) : PRESSURE.greatestPressure;
    const held = verdict(limit, pressure, `holds the ${at}`, "EXCEEDED");
    return figure(verdictOf, label, held, `Against the greatest pressure at the ${at}.`);
  };
  const trade = (flangeClass: "Class 150" | "Class 300"): string => {
    const pressure = { quantity: "gaugePressure", value: TRADE_FIGURES[flangeClass]?.pressure ?? 0 } as const;
    return `${amountText(pressure, unitSet)} for ${flangeClass}`;
  };
  return [
    figure(
      PRESSURE.greatestPressure,
      `Pressure at the ${place}`,
      part(CLASSES, "greatest", last),
      "The greater of running and standing.",
    ),
    figure(
      PRESSURE.classNeeded,
      `Class the ${place} needs`,
      part(CLASSES, "class", last),
      "Lowest of the material's own standard at liquid temperature.",
      "main",
    ),
    {
      kind: "finding",
      key: PRESSURE.firstToNeed.key,
      label: "First to need the next class",
      expression: firstOf(labels, "next", "None: one class holds at every nozzle."),
    },
    ...(state.flangeClass === "blank" ? [] : offered(last)),
    ...(hasCasing || hasPart
      ? [
          figure(
            PRESSURE.weakestPart,
            `Weakest at the ${place}`,
            part(CLASSES, "governedBy", last),
            "The lowest of flange rating, casing and other part governs.",
          ),
          figure(
            PRESSURE.weakestLimit,
            "What it may carry",
            part(CLASSES, "limit", last),
            "The margins above are left of what governs at each nozzle.",
          ),
        ]
      : []),
    ...(hasCasing ? [holds(PRESSURE.casingVerdict, "Casing working pressure", FIELD.casingWorkingPressure)] : []),
    ...(hasPart
      ? [
          holds(
            PRESSURE.otherPartVerdict,
            name === undefined ? "Other part" : `Other part: ${name}`,
            FIELD.otherPartPressure,
            name !== undefined && placeOfPart(name).side === "suction",
          ),
        ]
      : []),
    // The trade's figure stands beside the standard's, in the reader's units; it decides nothing.
    {
      kind: "finding",
      key: PRESSURE.tradeFigure.key,
      label: "Trade figure as a check",
      expression: join(
        constant(`${trade("Class 150")}, ${trade("Class 300")}; the standard decides. `),
        firstOf(labels, "trade", "It agrees at every nozzle."),
      ),
    },
  ];
}

function offered(last: number): readonly PlanItem[] {
  return [
    figure(
      PRESSURE.classVerdict,
      "Class offered",
      verdict(part(CLASSES, "rating", last), PRESSURE.greatestPressure, "pass", "fail"),
      "Against the greatest discharge pressure of all.",
      "main",
    ),
    figure(
      PRESSURE.classRating,
      "Rating of the class offered",
      part(CLASSES, "rating", last),
      "At liquid temperature, between printed rows, rounded down.",
    ),
    figure(
      PRESSURE.classMargin,
      "Margin under the rating",
      product(ratio(difference(PRESSURE.classRating, PRESSURE.greatestPressure), PRESSURE.classRating), constant(100)),
      "(Rating less pressure) / rating.",
    ),
    figure(
      PRESSURE.testPressure,
      "Hydrostatic test of the flanged joint",
      part(CLASSES, "test", last),
      "1.5 × cold rating, rounded up; vented, and people clear.",
    ),
  ];
}
