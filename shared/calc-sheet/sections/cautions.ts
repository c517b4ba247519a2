import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import type { PlanItem } from "../plan.ts";

/** Liquid hotter than this burns at a touch, K (methods of work, common practice). */
const BURNS = 45 + CELSIUS_ZERO;

/** Outside these the liquid burns skin and eyes: common practice, no source. */
const CAUSTIC_PH = 10;
const ACID_PH = 4;

const ALWAYS = [
  "This sheet is an aid to estimating. A competent, where the law asks for it a licensed, engineer checks it before anything is built, ordered or run from it; local codes and the pump maker's data govern.",
  "Results hold for the liquid, levels and lines stated. Check the lowest and highest levels, aged pipe and the greatest flow the pump can reach, not the one duty alone.",
  "Surge from starting, stopping and closing valves is a screen here at most. Air pockets at summits, part-full reaches and solids that settle need their own check.",
  "Pumps and lines under pressure and rotating parts injure: isolate, vent and lock out before work, keep guards in place, and lift by rated lugs with nobody under the load.",
  "Sumps, pits and tanks are confined spaces: test the air, ventilate, and enter under permit alone. Where gas or vapour may burn, every motor, engine and instrument must suit the zone.",
] as const;

const WITH_PUMP = [
  "A pump that runs against a shut valve heats what it holds, and trapped liquid that boils can burst the casing below its rated pressure: fit a least-flow line, a relief or a temperature trip.",
  "A relief valve is set no higher than the weakest part, before the first valve that can shut, and sized by a qualified person to the local pressure code.",
  "Test with water, never with air: vent high points, take out or isolate hose, restrain what can whip, and keep people clear.",
] as const;

/** What the sheet warns of whatever comes out, and what this duty gives cause for. */
export function cautionTexts(duty: Duty | undefined): readonly string[] {
  return duty === undefined ? ALWAYS : [...ALWAYS, ...(duty.pump === undefined ? [] : WITH_PUMP), ...causesOf(duty)];
}

/** Lines for what this duty holds: vacuum, heat, chemistry, gas, driver. */
function causesOf(duty: Duty): readonly string[] {
  const { pH, makeUp = "", driver } = duty;
  const burns = pH !== undefined && (pH < ACID_PH || pH > CAUSTIC_PH);
  return [
    ...(isLifted(duty)
      ? [
          "The suction line stands under vacuum: hose and plastic pipe there must be rated for full vacuum, and a kink or a blocked strainer collapses them.",
        ]
      : []),
    ...((duty.temperature ?? 0) > BURNS || burns
      ? [
          "The liquid burns skin or eyes: shield joints and seals against spray, drain and cool before opening, and wear what the safety sheet asks for.",
        ]
      : []),
    ...(/hydrogen sul|h2s/i.test(makeUp)
      ? [
          "Hydrogen sulphide kills without warning, for the nose soon no longer smells it: monitor without a break, and no rescue without breathing apparatus. Metals for sour service are a matter of ISO 15156.",
        ]
      : []),
    ...(duty.pump === undefined ? [] : driver === "engine" ? [ENGINE] : [MOTOR]),
  ];
}

const ENGINE =
  "Engines give off carbon monoxide and hot gas: run them in the open or with the exhaust led away, refuel cold over a spill tray, and keep an extinguisher at hand.";
const MOTOR =
  "Electrical work is for trained electricians: earth-fault protection and a lockable isolator, with cable and enclosure fit for a wet place.";

export function cautions(duty: Duty): readonly PlanItem[] {
  return [
    { kind: "section", id: "cautions", text: "Cautions" },
    ...cautionTexts(duty).map((text): PlanItem => ({ kind: "statement", text, caution: true })),
  ];
}
