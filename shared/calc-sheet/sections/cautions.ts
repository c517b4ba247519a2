import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import type { Constituent } from "../../../src/material/constituent.ts";
import { rowsNamed } from "../../../src/material/material-choice.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import type { PlanItem } from "../plan.ts";
import { wettedDutyOf } from "./wetted-duty.ts";

/** Liquid hotter than this burns at a touch, K (methods of work, common practice). */
const BURNS = 45 + CELSIUS_ZERO;

/** Outside these the liquid burns skin and eyes: common practice, no source. */
const CAUSTIC_PH = 10;
const ACID_PH = 4;

const ALWAYS = [
  "This sheet is an aid to estimating. A competent engineer, licensed where the law requires it, must check it before anything is ordered, built or run; local codes and the pump maker's data govern.",
  "Results hold for the liquid, levels and lines stated. Check the lowest and highest levels, aged pipe and the maximum flow the pump can reach, not the one duty alone.",
  "Surge figures here are a screen only. Starting, stopping, closing valves, air pockets at summits, part-full reaches and solids that settle need their own study.",
  "Pressurised pumps and lines and rotating parts can injure or kill: isolate, lock out, release the pressure and drain before work, and keep guards in place.",
  "Sumps, pits and tanks are confined spaces: test the air, ventilate, and never enter without a permit and an attendant outside. Where gas or vapour may burn, every motor, engine and instrument must suit the zone.",
] as const;

const WITH_PUMP = [
  "A pump that runs against a shut valve heats what it holds, and trapped liquid that boils can burst the casing below its rated pressure: fit a minimum-flow bypass, relief valve or high-temperature trip.",
  "A relief valve is set no higher than the weakest part, before the first valve that can shut, and sized by a qualified person to the local pressure code.",
  "Test with water, never with air. The test pressure is limited by the weakest part that is tested together: pipe, hose, coupling, valve and casing as well as flanges. Vent high points, isolate what is rated lower, restrain what can whip, and keep people clear.",
  "Lift by a written plan: weigh pump, driver and pipe or take their masses from the maker, use rated gear and lifting points, and let nobody stand under the load.",
] as const;

/** What the sheet warns of whatever comes out, and what this duty gives cause for. */
export function cautionTexts(duty: Duty | undefined): readonly string[] {
  return duty === undefined ? ALWAYS : [...ALWAYS, ...(duty.pump === undefined ? [] : WITH_PUMP), ...causesOf(duty)];
}

/** The same in a few lines for the first page; the whole stands at the end. */
export function cautionsInShort(duty: Duty): string {
  const withPump = duty.pump === undefined ? "" : " Never run the pump against a shut valve or test with air.";
  return `An aid to estimating: a competent engineer, licensed where the law requires it, checks it before anything is ordered, built or run; local codes, licensed practice and the makers' data govern. Isolate, lock out, release the pressure and drain before work, and keep guards in place.${withPump} Sumps and tanks: tested air, a permit and an attendant outside. All cautions for this duty stand at the end of the sheet.`;
}

/** Lines for what this duty holds: water, height, vacuum, compressed air, heat, chemistry, gas, germs, driver. */
function causesOf(duty: Duty): readonly string[] {
  const rows = rowsNamed(wettedDutyOf(duty));
  return [
    ...(duty.sourcePressure === 0 ? [DROWNING] : []),
    ...(isUphill(duty) ? [FULL_LINE] : []),
    ...(isLifted(duty) ? [VACUUM] : []),
    ...(isStated(duty, "eductorNozzle") || isStated(duty, "motivePressure") ? [COMPRESSED_AIR] : []),
    ...(burns(duty, rows) ? [SKIN] : []),
    ...rows.flatMap(({ name, danger }) => (danger === "" ? [] : [chemical(name, danger)])),
    ...(isDosed(duty) ? [chemical("the oxidiser", "it feeds fire, burns and gives off gas")] : []),
    ...(rows.some(({ danger }) => danger.includes("H2S")) ? [HYDROGEN_SULPHIDE] : []),
    ...(isFoul(duty, rows) ? [FOUL] : []),
    ...(duty.pump === undefined ? [] : duty.driver === "engine" ? [ENGINE] : [MOTOR]),
  ];
}

function isDosed({ oxidiser = 0 }: Duty): boolean {
  return oxidiser > 0;
}

function isStated({ state }: Duty, key: "eductorNozzle" | "motivePressure"): boolean {
  return state[key] === "stated";
}

/** Whether the line stands full above the pump once it stops. */
function isUphill({ deliveryLevel, pumpLevel }: Duty): boolean {
  return deliveryLevel !== undefined && pumpLevel !== undefined && deliveryLevel > pumpLevel;
}

/** A named liquid that burns, or what pH and temperature say of one without a name. */
function burns({ pH, temperature = 0 }: Duty, rows: readonly Constituent[]): boolean {
  const isStrong = pH !== undefined && (pH < ACID_PH || pH > CAUSTIC_PH);
  return temperature > BURNS || isStrong || rows.some(({ danger }) => /acid|burn|scald|fumes/.test(danger));
}

/** Sewage and its like, by name, by what comes with it, or by the service. */
function isFoul({ service, solidsHardness = "" }: Duty, rows: readonly Constituent[]): boolean {
  const isNamed = rows.some(({ name }) => /sewage|sludge|manure|leachate/.test(name));
  return isNamed || service === "bypass" || /sewage|sludge/i.test(solidsHardness);
}

const DROWNING =
  "Open water and the edge of a sump drown: guard the edge, keep a way out and a life ring at hand, and let nobody work alone beside it. Floods come back when a pump stops.";
const FULL_LINE =
  "A line that stands full above the pump keeps its pressure and runs back when the pump stops: check that it is shut in and drained before a joint is broken, and that a backward run is prevented.";
const VACUUM =
  "The suction line stands under vacuum: hose and plastic pipe there must be rated for full vacuum, and a kink or a blocked strainer collapses them.";
const COMPRESSED_AIR =
  "Compressed air injures and kills: rated hose with whip checks, shut and vented before a coupling is opened, hearing protection beside the eductor, and never pointed at anyone.";
const SKIN =
  "The liquid can burn skin and eyes: shield joints and seals against spray, drain and cool before opening, and wear the protective equipment the safety data sheet requires.";
const HYDROGEN_SULPHIDE =
  "Hydrogen sulphide kills; it quickly deadens the sense of smell: monitor without a break, and no rescue without breathing apparatus. Metals for sour service are a matter of ISO 15156.";
const FOUL =
  "Sewage and its like carry disease: gloves, eye protection and washing before food, cuts covered, spills and hose ends kept off people; gas and lack of oxygen come with them.";
const ENGINE =
  "Engines give off carbon monoxide and hot gas: run them in the open or with the exhaust led away, refuel cold over a spill tray, and keep an extinguisher at hand.";
const MOTOR =
  "Electrical work is for trained electricians: earth-fault protection and a lockable isolator, with cable and enclosure fit for a wet place.";

function chemical(name: string, danger: string): string {
  return `Danger to people from ${name}: ${danger}. Have its safety data sheet at hand and follow it, whatever its pH.`;
}

export function cautions(duty: Duty): readonly PlanItem[] {
  return [
    { kind: "section", id: "cautions", text: "Cautions" },
    ...cautionTexts(duty).map((text): PlanItem => ({ kind: "statement", text, caution: true, runsOn: true })),
  ];
}
