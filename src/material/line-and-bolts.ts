import { isAtMost } from "../basis/at-most.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount } from "../basis/result.ts";
import type { StandingColumn } from "../tables/constituents.ts";
import { metalScreens } from "./corrosion.ts";
import { type Judgement, judge } from "./judgement.ts";
import { severity } from "./level.ts";
import { type MaterialOption, optionOf } from "./material-option.ts";
import { type Exact, overHeat, type Screens, type Standing, standing, together } from "./standing.ts";
import type { WettedDuty } from "./wetted-duty.ts";

/** Bolts in contact or splash, and lines, as their own rules know them. */
export interface Hardware {
  readonly name: string;
  readonly column: StandingColumn;
  readonly screens: Screens;
  /** K; of plastics, which soften. */
  readonly hottest?: number;
}

const nothing = (): readonly Judgement[] => [];

/** Inside these pH freely; beyond them at the levels given. */
function byPH(least: number, greatest: number, below: "out", above: "out" | "unknown") {
  return ({ pH }: Exact): readonly Judgement[] => {
    const facts = { pH, least, greatest };
    if (pH < least) return [judge(below, { code: "ph-too-low", facts })];
    if (pH > greatest) return [judge(above, { code: above === "out" ? "ph-too-high" : "ph-beyond-rule", facts })];
    return [];
  };
}

const STEEL = metalScreens("steel");
const STAINLESS = metalScreens("316");
const PLASTIC: Screens = { pH: nothing, heat: nothing, chlorides: nothing, takenAsPlain: [] };

/** Galvanised steel: zinc goes below pH 6 and above 11; in salt as the steel under it (common practice). */
const GALVANISED: Screens = { ...STEEL, pH: byPH(6, 11, "out", "out") };

/** Ordinary cement: from pH 5.5 (from memory) to 12. */
const CEMENT: Screens = { ...PLASTIC, pH: byPH(5.5, 12, "out", "unknown") };

export const BOLTS: readonly Hardware[] = [
  { name: "plain steel bolts (B7, 8.8)", column: "bolts B7", screens: STEEL },
  { name: "galvanised bolts", column: "bolts galvanised", screens: GALVANISED },
  { name: "316 stainless bolts (B8M)", column: "bolts B8M", screens: STAINLESS },
];

/** Polyethylene to 60 °C, PVC to 45 °C: common practice. */
export const LINES: readonly Hardware[] = [
  { name: "carbon steel line", column: "line carbon steel", screens: STEEL },
  { name: "polyethylene line", column: "line HDPE", screens: PLASTIC, hottest: 60 + CELSIUS_ZERO },
  { name: "PVC line", column: "line PVC", screens: PLASTIC, hottest: 45 + CELSIUS_ZERO },
  { name: "cement-lined ductile iron line", column: "line ductile iron, cement lined", screens: CEMENT },
  { name: "316L line", column: "line 316L", screens: STAINLESS },
];

/** Lines that are judged where they are stated, by the column of another part. */
export const GALVANISED_LINE: Hardware = {
  name: "galvanised steel line",
  column: "bolts galvanised",
  screens: GALVANISED,
};
export const BARE_IRON_LINE: Hardware = { name: "iron line", column: "DI", screens: metalScreens("iron") };

/** What bolts or a line stand of the liquid and its heat. */
export function hardwareStanding({ column, screens, hottest }: Hardware, duty: WettedDuty): Standing {
  const stands = standing(column, duty, screens);
  return hottest === undefined ? stands : together([overHeat(duty, (at) => softens(at, hottest)), stands]);
}

function softens(temperature: number, value: number): readonly Judgement[] {
  const found = amount("temperature", temperature);
  const limit = { quantity: "temperature", value, side: "at most" } as const;
  return isAtMost(temperature, value) ? [] : [judge("out", { code: "plastic-too-hot", found, limit })];
}

export function boltOptions(duty: WettedDuty): readonly MaterialOption[] {
  return ranked(BOLTS, duty, "bolts in contact with the liquid or its splash");
}

export function lineOptions(duty: WettedDuty): readonly MaterialOption[] {
  return ranked(LINES, duty, "suction and discharge line");
}

function ranked(list: readonly Hardware[], duty: WettedDuty, parts: string): readonly MaterialOption[] {
  return list
    .map((one) => ({ one, stands: hardwareStanding(one, duty) }))
    .toSorted((a, b) => severity(a.stands.worst) - severity(b.stands.worst))
    .map(({ one, stands }) => optionOf(one.name, stands, parts));
}
