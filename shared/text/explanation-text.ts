import type { Explanation } from "../../src/field/explanation.ts";

interface ExplanationText {
  readonly likely: string;
  /** What would tell. */
  readonly check: string;
}

/** What may make a pump differ from its curve, and how to find out. */
export const EXPLANATION_TEXTS: Readonly<Record<Explanation, ExplanationText>> = {
  "speed or impeller less": {
    likely: "speed or impeller diameter below that of the curve, or a slipping belt",
    check: "tachometer; head goes with the square of speed and diameter; the mark of the trim",
  },
  "suction obstructed": {
    likely: "a blocked impeller eye or strainer, an obstructed suction, or worn rings at the inlet",
    check: "vacuum gauge against the losses worked out; strainer and foot valve; the eye through the handhole",
  },
  "wear or leakage": {
    likely:
      "worn rings or wear plate, or liquid that leaks back: casing gasket, by-pass, check valve of the pump beside it",
    check: "clearances; close the branch beside it and measure again",
  },
  "flow meter reads low": {
    likely: "the flow meter reads low: with more flow than it shows, head and what power was measured lie on the curve",
    check: "a second meter, or the time to fill a known volume; straight pipe, bore and full pipe at the meter",
  },
  "flow meter reads high": {
    likely:
      "the flow meter reads high: with less flow than it shows, head and what power was measured lie on the curve",
    check: "a second meter, or the time to fill a known volume; straight pipe, bore and air in the pipe at the meter",
  },
  "cavitation or air": {
    likely: "cavitation, a vortex, or air drawn in at a joint or gland of the suction",
    check: "NPSH available, water over the bell, joints; noise that goes when the discharge is throttled",
  },
  "rubbing, viscosity or density": {
    likely: "rubbing or tight parts, or a liquid thicker or heavier than stated",
    check: "turn the shaft by hand; specific gravity and viscosity of a sample",
  },
  "motor, drive or power reading": {
    likely: "the motor, its drive or supply, or amps read as power",
    check: "power analyser with the power factor; voltage at the motor; its efficiency at this load",
  },
  "system resists more": {
    likely:
      "the pump is on its curve and the system resists more than worked out: a valve, air at a summit, an aged or blocked pipe, a level",
    check: "gauges along the line against the grade line; valves open; air valves",
  },
  "system resists less": {
    likely:
      "the pump is on its curve and the system resists less than worked out: less static head, a break, an open by-pass",
    check: "levels; by-passes and drains shut; walk the line",
  },
  "speed or impeller more": {
    likely: "a larger impeller or more speed than that of the curve, or heights of the gauges left out",
    check: "tachometer, the mark of the trim, heights of both gauges over one datum",
  },
  "turns backwards": {
    likely: "the impeller turns the wrong way",
    check: "the arrow on the casing, with the motor started for a moment; swap two phases",
  },
  scatter: {
    likely: "readings that scatter: pulsation, or air in the lines to the gauges",
    check: "bleed and damp the gauge lines, and read again at steady flow",
  },
};
