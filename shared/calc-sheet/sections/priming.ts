import { COURSE_POINTS, RISE_STEPS } from "../../../src/priming/prime-course.ts";
import { PRIMETIME, PRIMINGMETHODS } from "../../catalogue/entries/priming.ts";
import { EDUCTORAIR, PRIMECURVE } from "../../catalogue/entries/priming-devices.ts";
import { type Duty, isGiven, isLifted } from "../../duty/duty.ts";
import { fieldsOf } from "../../duty/fields.ts";
import { asVacuum } from "../conversions.ts";
import { callOf, constant, type Expression, handles, ifAtLeast, ifText, part, range, spillOf } from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type OptionItem, type PlanItem, remark, spill, statement } from "../plan.ts";
import { byWeight } from "./as-pumped.ts";
import { LINES } from "./lines.ts";
import { NPSH } from "./npsh.ts";
import { AT_MOST, greatestLift, isNpshLiftStated } from "./priming-lift.ts";
import { rankedOptions } from "./ranked-options.ts";
import { stated } from "./stated-input.ts";
import { byArrangement, pumpsOfAll } from "./station.ts";

export const PRIMING = handles({
  airVolume: "volume",
  riseTime: "duration",
  primeTime: "duration",
  motiveAir: "freeAirFlow",
  eductorPowerLeast: "power",
  eductorPowerMost: "power",
  airDrawnLeast: "freeAirFlow",
  airDrawnMost: "freeAirFlow",
  eductorVacuum: "vacuum",
  eductorNotes: null,
  primeTimeNotes: null,
});

const SUCTION = {
  suctionLine: range(LINES.suctionLine),
  suctionLift: NPSH.suctionLift,
  altitude: FIELD.altitude,
  ...LIQUID,
};
const AIR_PUMP = { airPumpCapacity: FIELD.airPump, casingVolume: FIELD.casingVolume };

function primeTime(duty: Duty) {
  return callOf(PRIMETIME, { ...SUCTION, ...AIR_PUMP, numberOfPumps: pumpsOnLine(duty) });
}

/** Pumps side by side that draw on the suction line as its shares are stated. */
function pumpsOnLine(duty: Duty): Expression {
  return byArrangement(duty, constant(1), pumpsOfAll(duty));
}

export const METHODS = spillOf("primingMethods", PRIMINGMETHODS);
const METHOD_ROWS = 5;

/** How a pump above its liquid is primed, how high and how long that takes. Nothing where it is flooded. */
export const primingSection: PackageSection = {
  id: "priming",
  missing: "The pump stands at or below its liquid: it is flooded and needs no priming.",
  caution: "Hot or volatile liquid, and places where gas may burn, need their own check before any priming device.",
  elsewhere: "Solids by weight are stated under Slurry.",
  decidedBy: ["pumpLevel", "sourceLevel", "sourcePressure"],
  isOfPump: true,
  // Solids are an input here too, which no sheet may leave unprinted once they are stated.
  isAskedFor: (duty) => isPrimingAskedFor(duty) || isGiven(duty.state.solids),
  items: (duty) => {
    if (!isLifted(duty)) return [];
    return [
      ...stated(duty, "airPump", "casingVolume", "solids"),
      ...greatestLift(duty),
      ...(isPrimingAskedFor(duty) ? ways(duty) : []),
      ...(duty.sourcePressure === 0
        ? []
        : [
            statement(
              "Lift and time of priming are worked out for a source open to the air. The pressure stated on the source is not counted: a vacuum there takes its head off every lift.",
            ),
          ]),
    ];
  },
};

/** How it is primed is said with a pump, or where something of it is stated; a lift alone asks for the verdict on it, no more. */
export function isPrimingAskedFor({ pump, pumpState, state }: Duty): boolean {
  return pump !== undefined || pumpState !== "blank" || fieldsOf("priming").some((key) => isGiven(state[key]));
}

function ways(duty: Duty): readonly PlanItem[] {
  return [
    ...course(duty),
    ...eductor(duty),
    spill(
      METHODS,
      "Ways of priming",
      callOf(PRIMINGMETHODS, {
        ...SUCTION,
        ...AIR_PUMP,
        solids: byWeight(duty),
        numberOfPumps: pumpsOnLine(duty),
        ...(isNpshLiftStated(duty) && { maximumLift: NPSH.greatestLift }),
      }),
      METHOD_ROWS + 1,
    ),
    ...methods(),
    remark(PRIMING.primeTimeNotes, "Time to prime", primeTime(duty)),
  ];
}

/** The ways of priming; above the greatest lift, NPSH counted, only what stands below the liquid. */
function methods(): readonly OptionItem[] {
  const lifted = (row: number, met: Expression, beyond: string): Expression =>
    ifAtLeast(
      AT_MOST,
      NPSH.suctionLift,
      met,
      ifText(part(METHODS, "method", row), "flooded suction or submerged pump", met, constant(beyond)),
    );
  return rankedOptions(METHODS, "method", "Methods, best first", METHOD_ROWS, (row) => [
    { label: "", text: lifted(row, part(METHODS, "reasons", row), "The lift is above the maximum, all counted.") },
    { label: "Needs", text: lifted(row, part(METHODS, "needs", row), "") },
    { label: "Cautions", text: lifted(row, part(METHODS, "cautions", row), "") },
  ]).map((option, row) => ({ ...option, verdict: lifted(row, option.verdict, "not suited") }));
}

/** The water from the liquid surface until the casing is full. */
export const COURSE = spillOf("primeCourse", PRIMECURVE);

/** How much air is drawn, how long that takes and how the water rises meanwhile. */
function course(duty: Duty): readonly PlanItem[] {
  return [
    spill(
      COURSE,
      "Course of the priming",
      callOf(PRIMECURVE, { ...SUCTION, ...AIR_PUMP, numberOfPumps: pumpsOnLine(duty) }),
      COURSE_POINTS + 1,
    ),
    figure(
      PRIMING.airVolume,
      "Air to draw",
      part(COURSE, "airLeft"),
      "All of the suction line of the pump, and the casing and chamber.",
    ),
    figure(
      PRIMING.riseTime,
      "Water at the pump after",
      part(COURSE, "time", RISE_STEPS),
      "Water rising; the rest goes on level run and casing.",
    ),
    figure(
      PRIMING.primeTime,
      "Time to prime",
      ifAtLeast(AT_MOST, NPSH.suctionLift, primeTime(duty), constant("none: the lift is above the maximum")),
      "Until the casing is full; add 5 to 20 s (common practice).",
      "main",
    ),
  ];
}

const EDUCTOR = spillOf("eductorRecord", EDUCTORAIR);

const EDUCTOR_FIGURES = [
  [PRIMING.motiveAir, "Motive air", "motiveAir", "Choked nozzle; air at 15 °C and one atmosphere.", "main"],
  [PRIMING.eductorPowerLeast, "Compressor power, from", "leastPower", "Common practice: 5 ft³/min a horsepower."],
  [PRIMING.eductorPowerMost, "Compressor power, to", "mostPower", "Common practice: 4 ft³/min a horsepower."],
  [PRIMING.airDrawnLeast, "Air drawn, from", "leastDrawn", "Common practice: 0.2 of the motive air."],
  [PRIMING.airDrawnMost, "Air drawn, to", "mostDrawn", "Common practice: 0.5 of it, at 10 to 20 inHg."],
] as const;

/** Compressed air for an eductor; nothing until nozzle and pressure are both stated. */
function eductor(duty: Duty): readonly PlanItem[] {
  if (duty.state.eductorNozzle === "blank" || duty.state.motivePressure === "blank") return [];
  const call = callOf(EDUCTORAIR, {
    nozzleBore: FIELD.eductorNozzle,
    motivePressure: FIELD.motivePressure,
    altitude: FIELD.altitude,
  });
  return [
    ...stated(duty, "eductorNozzle", "motivePressure"),
    spill(EDUCTOR, "Eductor", call),
    ...EDUCTOR_FIGURES.map(([of, label, from, how, main]) => figure(of, label, part(EDUCTOR, from), how, main)),
    figure(
      PRIMING.eductorVacuum,
      "Vacuum reached",
      asVacuum(part(EDUCTOR, "leastVacuum"), duty.unitSet),
      "Common practice: 25 inHg at sea level.",
    ),
    remark(PRIMING.eductorNotes, "Eductor", call),
  ];
}
