import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { MOHS_VICKERS, NAMED_PARTICLES } from "../tables/materials-particles.ts";

/** The solids of a slurry as far as they wear a pump. */
export interface Particle {
  /** As stated, tidied: "quartz", "Mohs 6". */
  readonly name: string;
  /** Vickers hardness; null where only soft or hard is stated. */
  readonly vickers: number | null;
  readonly isHard: boolean;
}

/**
 * Vickers hardness above which particles wear iron hard: 1.2 times that of ductile iron at the low end of its band,
 * 156 HB or about 164 HV (common practice: hard wear where the abrasive is 1.2 times as hard as the metal).
 */
export const HARD_VICKERS = 1.2 * 1.05 * 156;

const SOFT_WORDS = ["soft", "organic", "sewage", "sludge", "food", "fibre", "pulp", "rags", "wood"];
const HARD_WORDS = ["hard", "abrasive", "sharp"];

/** Every named hardness, for drop-downs. */
export const PARTICLE_NAMES: readonly string[] = [
  "soft",
  "hard",
  ...NAMED_PARTICLES.map(([name]) => name),
  ...MOHS_VICKERS.map(([, mineral]) => mineral),
];

const LABELLED =
  /^(?:(mohs|hv|vickers|hb|brinell)\s*[=:]?\s*)?([\d.]+)\s*(mohs|hv|vickers|hb|brinell)?(?:\s*hardness)?$/i;

/**
 * Reads the hardness of the particles: "soft", "hard sand", "quartz", "Mohs 7", "HV 1100"; a bare number is Mohs up to
 * 10 and Vickers from 20 on. Of several names the hardest counts.
 * Fails: `name-unknown`; `hardness-unreadable` for a figure outside its scale.
 */
export function particleNamed(text: string, subject: string): Result<Particle> {
  const given = text.trim();
  const labelled = LABELLED.exec(given);
  if (labelled !== null) {
    const label = (labelled[1] ?? labelled[3] ?? "").toLowerCase();
    if (labelled[1] === undefined || labelled[3] === undefined)
      return measured(Number(labelled[2]), label, subject, given);
  }
  const words = ` ${inBritish(given.toLowerCase()).replace(/[^a-z]+/g, " ")} `;
  const holds = (name: string): boolean => words.includes(` ${name} `);
  const mohs = [
    ...NAMED_PARTICLES.filter(([name]) => holds(name)).map(([, figure]) => figure),
    ...MOHS_VICKERS.filter(([, mineral]) => holds(mineral)).map(([figure]) => figure),
  ];
  const name = words.trim();
  if (mohs.length > 0) {
    const vickers = vickersOf(greatestOf(mohs));
    return succeed({ name, vickers, isHard: vickers > HARD_VICKERS || HARD_WORDS.some(holds) });
  }
  if (HARD_WORDS.some(holds)) return succeed({ name, vickers: null, isHard: true });
  if (SOFT_WORDS.some(holds)) return succeed({ name, vickers: null, isHard: false });
  const near = nearestNames(given.slice(0, 60), PARTICLE_NAMES);
  const suggestions = near.length > 0 ? near : ["soft", "sand", "Mohs 7", "HV 1100"];
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions }]);
}

function measured(value: number, label: string, subject: string, given: string): Result<Particle> {
  const isMohs = label === "mohs" || (label === "" && value <= 10);
  if (isMohs && value >= 1 && value <= 10) return succeed(particle(`Mohs ${value}`, vickersOf(value)));
  const isVickers = !isMohs && (label !== "" || value >= 20);
  if (isVickers && value > 0 && value <= 12_000) return succeed(particle(`HV ${value}`, value));
  const suggestions = ["Mohs 1 to 10", "HV 20 to 12 000", "a name such as sand"];
  return fail([{ code: "hardness-unreadable", kind: "error", subject, given, suggestions }]);
}

function particle(name: string, vickers: number): Particle {
  return { name, vickers, isHard: vickers > HARD_VICKERS };
}

/** Vickers hardness at a Mohs figure from 1 to 10, on straight lines of its logarithm between the minerals. */
export function vickersOf(mohs: number): number {
  const below = Math.min(Math.floor(mohs), 9);
  const [, , low] = MOHS_VICKERS[below - 1] as (typeof MOHS_VICKERS)[number];
  const [, , high] = MOHS_VICKERS[below] as (typeof MOHS_VICKERS)[number];
  return low * (high / low) ** (mohs - below);
}
