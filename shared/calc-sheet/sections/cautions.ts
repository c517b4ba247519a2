import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import { NOTHING_ELSE } from "../../../src/material/make-up.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import type { PlanItem } from "../plan.ts";

/** Liquid hotter than this burns at a touch, K (methods of work, common practice). */
const BURNS = 45 + CELSIUS_ZERO;

/** Outside these the liquid burns skin and eyes: common practice, no source. */
const CAUSTIC_PH = 10;
const ACID_PH = 4;

const ALWAYS = [
  "This sheet is an aid to estimating. A competent engineer, licensed where the law requires it, must check it before anything is ordered, built or run; local codes and the pump maker's data govern.",
  "Results hold for the liquid, levels and lines stated. Check the lowest and highest levels, aged pipe and the maximum flow the pump can reach, not the one duty alone.",
  "Surge figures here are a screen only: starting, stopping and closing valves need a study where they matter. Air pockets at summits, part-full reaches and solids that settle need their own check.",
  "Pressurised pumps and lines and rotating parts can injure or kill: isolate, lock out, release the pressure and drain before work (a full line drives the pump back long after it stops), and keep guards in place.",
  "Sumps, pits and tanks are confined spaces: test the air, ventilate, and never enter without a permit and an attendant outside. Where gas or vapour may burn, every motor, engine and instrument must suit the zone.",
  "People drown at open water: guard the edges of sumps and pits, with life-saving equipment at hand. Lift by rated lugs, by a plan that knows the weights, with nobody under the load.",
] as const;

const WITH_PUMP = [
  "A pump that runs against a shut valve heats what it holds, and trapped liquid that boils can burst the casing below its rated pressure: fit a minimum-flow bypass, a relief valve or a high-temperature trip.",
  "A relief valve is set no higher than the weakest part, before the first valve that can shut, and sized by a qualified person to the local pressure code.",
  "Test with water, never with air, and at no more than the weakest part stands, pipe and hose too: vent high points, take out or isolate hose, restrain what can whip, and keep people clear.",
] as const;

/** What the sheet warns of whatever comes out, and what this duty gives cause for. */
export function cautionTexts(duty: Duty | undefined): readonly string[] {
  return duty === undefined ? ALWAYS : [...ALWAYS, ...(duty.pump === undefined ? [] : WITH_PUMP), ...causesOf(duty)];
}

/** Lines for what this duty holds: vacuum, heat, chemistry, gas, driver. */
function causesOf(duty: Duty): readonly string[] {
  const { pH, makeUp = "", driver } = duty;
  const isNamed = makeUp.trim() !== "" && makeUp.trim().toLowerCase() !== NOTHING_ELSE;
  const burns = pH !== undefined && (pH < ACID_PH || pH > CAUSTIC_PH);
  return [
    ...(isLifted(duty)
      ? [
          "The suction line stands under vacuum: hose and plastic pipe there must be rated for full vacuum, and a kink or a blocked strainer collapses them.",
        ]
      : []),
    ...((duty.temperature ?? 0) > BURNS || burns
      ? [
          "The liquid can burn skin and eyes: shield joints and seals against spray, drain and cool before opening, and wear the protective equipment the safety data sheet requires.",
        ]
      : []),
    ...(isNamed || (duty.oxidiser ?? 0) > 0
      ? [
          "Before anyone handles a liquid with named constituents: have its safety data sheet at hand, the protective equipment it requires worn, and spray, vapour and washings kept from people; sewage carries disease.",
        ]
      : []),
    ...(/hydrogen sul|h2s/i.test(makeUp)
      ? [
          "Hydrogen sulphide kills; it quickly deadens the sense of smell: monitor without a break, and no rescue without breathing apparatus. Metals for sour service are a matter of ISO 15156.",
        ]
      : []),
    ...(duty.eductorNozzle === undefined ? [] : [COMPRESSED_AIR]),
    ...(duty.pump === undefined ? [] : driver === "engine" ? [ENGINE] : [MOTOR]),
  ];
}

const COMPRESSED_AIR =
  "Compressed air to an eductor: hose rated for the pressure with whip checks, hearing protection, and never at a person.";
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
