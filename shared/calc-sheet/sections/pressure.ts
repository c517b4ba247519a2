import { TRADE_FIGURES } from "../../../src/pressure/trade-figure.ts";
import type { Duty } from "../../duty/duty.ts";
import { amountText } from "../../text/words.ts";
import { constant, handles, ifText, join, part } from "../expression.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, inWords, type PlanItem, remark } from "../plan.ts";
import { greatestAtNozzleIn, pressedStates, pressureInState } from "./case-pressures.ts";
import { greatestHead, isHighIdleTaken } from "./pressure-head.ts";
import {
  CLASSES,
  firstOf,
  nozzleCall,
  nozzleLabels,
  nozzleTables,
  suctionCall,
  suctionItems,
} from "./pressure-nozzles.ts";
import { checkValveInput, stageInputs } from "./pressure-stages.ts";

import { flushPressure } from "./slurry-clear.ts";

import { stated } from "./stated-input.ts";

/** Worked cells of this section; those of greatest head, suction and stages apart. */
export const PRESSURE = handles({
  greatestPressure: "gaugePressure",
  greatestPressureIn: null,
  toleranceTaken: null,
  classNeeded: null,
  firstToNeed: null,
  classRating: "gaugePressure",
  testPressure: "gaugePressure",
  packageTest: "gaugePressure",
  tradeFigure: null,
  suctionNotes: null,
  nozzleNotes: null,
});

/** Pressure at every nozzle, running against a shut valve and standing, and the flange class each needs. */
export const pressureSection: PackageSection = {
  id: "pressure",
  missing: "Select a pump: the maximum pressure comes of its curve.",
  caution:
    "A casing or flange above its pressure bursts: check each nozzle, seal and hose, and test with people clear.",
  decidedBy: [
    "otherPart",
    "driver",
    "governor",
    "acceptanceGrade",
    "service",
    "stages",
    "checkFailure",
    "sourceLevel",
    "highestSourceLevel",
    "sourcePressure",
  ],
  isOfPump: true,
  items: (duty) => {
    const { pump } = duty;
    if (pump === undefined) return [];
    return [
      ...stated(
        duty,
        "highestSourceLevel",
        "greatestSuctionPressure",
        "greatestSpeed",
        ...(duty.state.governor !== "assumed" || isHighIdleTaken(duty, pump) ? (["governor"] as const) : []),
        "greatestImpeller",
        "standingLevel",
      ),
      checkValveInput(duty),
      ...stated(
        duty,
        "checkFailure",
        "casingMaterial",
        "flangeClass",
        "suctionFlange",
        "dischargeFlange",
        "casingWorkingPressure",
        "otherPart",
        "otherPartPressure",
      ),
      ...stageInputs(duty),
      ...suctionItems(duty),
      ...greatestHead(duty, pump),
      ...nozzleTables(duty, pump),
      ...deciding(duty, nozzleLabels(duty)),
      ...inCases(duty),
      ...flushPressure(duty, nozzleCall(duty, pump, "careful"), nozzleLabels(duty).length),
      remark(PRESSURE.suctionNotes, "Suction pressure", suctionCall(duty)),
      remark(PRESSURE.nozzleNotes, "Nozzles", nozzleCall(duty, pump, "careful")),
    ];
  },
};

/** What each case by itself puts on the first suction and the last discharge. */
function inCases(duty: Duty): readonly PlanItem[] {
  const states = pressedStates(duty);
  if (states.length === 1) return [];
  const count = nozzleLabels(duty).length;
  return [
    {
      kind: "table",
      key: "casePressures",
      heading: "case by itself; above, the heaviest, hottest and highest of all at once",
      columns: [
        { key: "suction", label: "suction", quantity: "gaugePressure" },
        { key: "discharge", label: "discharge", quantity: "gaugePressure" },
      ],
      rows: states.map(({ label }, state) => ({
        label,
        cells: [0, count - 1].map((nozzle) => pressureInState(state, nozzle, count, "careful")),
      })),
    },
    inWords(PRESSURE.greatestPressureIn, "Maximum pressure in", greatestAtNozzleIn(count - 1)),
  ];
}

/** The last discharge, where the pressure is greatest, and what the standards ask for. */
function deciding({ state, unitSet }: Duty, labels: readonly string[]): readonly PlanItem[] {
  const last = labels.length - 1;
  const place = labels.length > 2 ? "last discharge" : "discharge";
  const trade = (flangeClass: "Class 150" | "Class 300"): string => {
    const pressure = { quantity: "gaugePressure", value: TRADE_FIGURES[flangeClass]?.pressure ?? 0 } as const;
    return `${amountText(pressure, unitSet)} for ${flangeClass}`;
  };
  return [
    figure(
      PRESSURE.toleranceTaken,
      "Head tolerance counted",
      part(CLASSES, "tolerance"),
      "Of the acceptance grade, or of the default grade.",
    ),
    figure(
      PRESSURE.greatestPressure,
      `Maximum, ${place}`,
      part(CLASSES, "greatest", last),
      "The largest of the cases in the table above.",
      "main",
    ),
    figure(
      PRESSURE.classNeeded,
      `Class required, ${place}`,
      part(CLASSES, "class", last),
      "Lowest of the material's own standard at liquid temperature.",
    ),
    {
      kind: "finding",
      key: PRESSURE.firstToNeed.key,
      label: state.flangeClass === "blank" ? "First nozzle to need the next class" : "First nozzle above class",
      expression: firstOf(
        labels,
        "next",
        state.flangeClass === "blank" ? "None: one class holds at every nozzle." : "None.",
      ),
    },
    ...(state.flangeClass === "blank" ? [] : offered(last)),
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
  const reason = part(CLASSES, "noTest");
  return [
    figure(
      PRESSURE.classRating,
      "Rating of the class offered",
      part(CLASSES, "rating", last),
      "At the last discharge; between printed rows, rounded down.",
    ),
    figure(
      PRESSURE.testPressure,
      "Joint test allowed up to",
      part(CLASSES, "test", last),
      "1.5 × cold rating: a ceiling, not the package test.",
    ),
    figure(
      PRESSURE.packageTest,
      "Package test pressure",
      ifText(reason, "", part(CLASSES, "packageTest"), join(constant("none: "), reason)),
      "1.5 × the weakest part; hose isolated, vented, people clear.",
    ),
  ];
}
