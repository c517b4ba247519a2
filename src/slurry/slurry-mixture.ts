import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Input, type Method } from "../basis/method.ts";
import type { Quantity } from "../basis/quantities.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { PACKED, SOLIDS_SG, volumeRemarks } from "./solids.ts";

type Figure = "solidsSG" | "solidsByWeight" | "solidsByVolume" | "mixtureSG" | "solidsPerVolume";

/** What is known of a slurry; two of the figures beside the liquid fix the rest. */
export type SlurryMixtureInputs = { readonly liquidSG: number } & { readonly [F in Figure]?: number };

export interface SlurryMixture {
  readonly liquidSG: number;
  readonly solidsSG: number;
  /** C_w, mass fraction. */
  readonly solidsByWeight: number;
  /** C_v, volume fraction. */
  readonly solidsByVolume: number;
  /** S_m, relative to 998.2 kg/m³ as every specific gravity here. */
  readonly mixtureSG: number;
  /** Dry solids in a volume of slurry, kg/m³. A rate of dry solids over it is the slurry flow. */
  readonly solidsPerVolume: number;
}

const FIGURES: Readonly<Record<Figure, Input>> = {
  solidsSG: SOLIDS_SG,
  solidsByWeight: { name: "solids by weight", symbol: "C_w", quantity: "percent", atLeast: 0, below: 1 },
  solidsByVolume: { name: "solids by volume", symbol: "C_v", quantity: "percent", atLeast: 0, below: PACKED },
  mixtureSG: { name: "mixture SG", symbol: "S_m", quantity: "ratio", above: 0, atMost: 23 },
  solidsPerVolume: { name: "dry solids per volume of slurry", symbol: "c", quantity: "density", atLeast: 0 },
};

export const slurryMixtureMethod = {
  cites: [
    { source: "mass-balance", at: "mixture of solids and liquid" },
    { source: "house", at: "figures of a slurry contradict where they differ by more than 0.5 %" },
  ],
  inputs: { liquidSG: { name: "liquid SG", symbol: "S_l", quantity: "ratio", atLeast: 0.1, atMost: 23 } },
  figures: FIGURES,
} as const satisfies Method<"liquidSG"> & { readonly figures: typeof FIGURES };

/** How far a further figure may lie from what the first two give. */
const AGREEMENT = 0.005;

/** Volume fraction, and SG-weighted share of the solids k = C_v S_s = C_w S_m; everything else follows from the two. */
interface Solved {
  readonly v: number;
  readonly k: number;
}

interface Route {
  readonly from: readonly [Figure, Figure];
  readonly solve: (first: number, second: number, liquid: number) => Solved;
}

const bySolids = (solidsPerVolume: number): number => solidsPerVolume / SPECIFIC_GRAVITY_REFERENCE;
/** From S_m = S_l (1 − C_v) + k. */
const volumeOf = (mixture: number, k: number, liquid: number): number => 1 - (mixture - k) / liquid;

const ROUTES: readonly Route[] = [
  {
    from: ["solidsSG", "solidsByWeight"],
    solve: (s, w, l) => {
      const k = w / (w / s + (1 - w) / l);
      return { v: k / s, k };
    },
  },
  { from: ["solidsSG", "solidsByVolume"], solve: (s, v) => ({ v, k: v * s }) },
  {
    from: ["solidsSG", "mixtureSG"],
    solve: (s, m, l) => {
      const v = (m - l) / (s - l);
      return { v, k: v * s };
    },
  },
  { from: ["solidsSG", "solidsPerVolume"], solve: (s, c) => ({ v: bySolids(c) / s, k: bySolids(c) }) },
  { from: ["solidsByWeight", "solidsByVolume"], solve: (w, v, l) => ({ v, k: (w * l * (1 - v)) / (1 - w) }) },
  { from: ["solidsByWeight", "mixtureSG"], solve: (w, m, l) => ({ v: volumeOf(m, w * m, l), k: w * m }) },
  {
    from: ["solidsByWeight", "solidsPerVolume"],
    solve: (w, c, l) => ({ v: volumeOf(bySolids(c) / w, bySolids(c), l), k: bySolids(c) }),
  },
  { from: ["solidsByVolume", "mixtureSG"], solve: (v, m, l) => ({ v, k: m - l * (1 - v) }) },
  { from: ["solidsByVolume", "solidsPerVolume"], solve: (v, c) => ({ v, k: bySolids(c) }) },
  {
    from: ["mixtureSG", "solidsPerVolume"],
    solve: (m, c, l) => ({ v: volumeOf(m, bySolids(c), l), k: bySolids(c) }),
  },
];

/**
 * All figures of a slurry from any two of them and the SG of its liquid; no solids dissolve and no air is held.
 * Formula: 1/S_m = C_w/S_s + (1 − C_w)/S_l, S_m = S_l + C_v (S_s − S_l), C_w = C_v S_s/S_m
 * Fails: out-of-range inputs; slurry-figures-too-few; slurry-figures-contradict by more than 0.5 %; slurry-impossible
 * (62 % by volume, where grains pack, is the most).
 * Warns: cautions solids-dense above 45 % by volume, solids-float.
 * Source: mass balance.
 */
export function slurryMixture(known: SlurryMixtureInputs): Result<SlurryMixture> {
  const { liquidSG } = known;
  const given = (Object.keys(FIGURES) as Figure[]).filter((figure) => known[figure] !== undefined);
  const bounds = { ...slurryMixtureMethod.inputs, ...Object.fromEntries(given.map((f) => [f, FIGURES[f]])) };
  const checked = checkInputs({ ...slurryMixtureMethod, inputs: bounds }, known as Readonly<Record<string, number>>);
  if (!checked.ok) return checked;

  const route = ROUTES.find(({ from }) => from.every((figure) => known[figure] !== undefined));
  if (route === undefined) return fail([tooFew(given)]);
  const [first, second] = route.from;
  const { v, k } = route.solve(known[first] as number, known[second] as number, liquidSG);
  const mixtureSG = liquidSG * (1 - v) + k;
  const mixture: SlurryMixture = {
    liquidSG,
    solidsSG: known.solidsSG ?? k / v,
    solidsByWeight: k / mixtureSG,
    solidsByVolume: v,
    mixtureSG,
    solidsPerVolume: k * SPECIFIC_GRAVITY_REFERENCE,
  };
  if (!Object.values(mixture).every(Number.isFinite)) return fail([tooFew(given)]);
  const impossible = impossibleFigure(mixture, known);
  if (impossible !== undefined) return fail([impossible]);
  const odd = given.find(
    (figure) => Math.abs((known[figure] as number) - mixture[figure]) > AGREEMENT * mixture[figure],
  );
  if (odd !== undefined) return fail([contradicts(odd, known[odd] as number, mixture[odd], route.from)]);
  return succeed(mixture, [...volumeRemarks(v), ...floating(mixture)]);
}

function tooFew(given: readonly Figure[]): Finding {
  const suggestions = Object.values(FIGURES).map(({ name }) => name);
  const subject = given.length === 0 ? "the slurry" : given.map((figure) => FIGURES[figure].name).join(" and ");
  return { code: "slurry-figures-too-few", kind: "error", subject, suggestions };
}

/** A figure that follows from those given and that no slurry has. */
function impossibleFigure(mixture: SlurryMixture, known: SlurryMixtureInputs): Finding | undefined {
  const subject = (Object.keys(FIGURES) as Figure[])
    .filter((figure) => known[figure] !== undefined)
    .map((figure) => FIGURES[figure].name)
    .join(" and ");
  const { solidsByVolume, solidsSG } = mixture;
  const found = amount("percent", solidsByVolume);
  if (solidsByVolume >= PACKED) {
    const limit = { quantity: "percent", value: PACKED, side: "below" } as const;
    return {
      code: "slurry-impossible",
      kind: "error",
      subject,
      found,
      limit,
      facts: { figure: "solids by volume" },
    };
  }
  if (solidsByVolume < 0) {
    const limit = { quantity: "percent", value: 0, side: "at least" } as const;
    return {
      code: "slurry-impossible",
      kind: "error",
      subject,
      found,
      limit,
      facts: { figure: "solids by volume" },
    };
  }
  if (solidsSG > 0 && solidsSG <= SOLIDS_SG.atMost) return undefined;
  const limit =
    solidsSG > 0
      ? ({ quantity: "ratio", value: SOLIDS_SG.atMost, side: "at most" } as const)
      : ({ quantity: "ratio", value: 0, side: "above" } as const);
  const facts = { figure: SOLIDS_SG.name };
  return { code: "slurry-impossible", kind: "error", subject, found: amount("ratio", solidsSG), limit, facts };
}

function contradicts(figure: Figure, given: number, due: number, from: readonly [Figure, Figure]): Finding {
  const { name, quantity }: { name: string; quantity: Quantity } = FIGURES[figure];
  const facts = { due: amount(quantity, due), first: FIGURES[from[0]].name, second: FIGURES[from[1]].name };
  return { code: "slurry-figures-contradict", kind: "error", subject: name, found: amount(quantity, given), facts };
}

function floating({ solidsSG, liquidSG }: SlurryMixture): readonly Finding[] {
  if (solidsSG >= liquidSG) return [];
  const limit = { quantity: "ratio", value: liquidSG, side: "at least" } as const;
  return [{ code: "solids-float", kind: "check", subject: SOLIDS_SG.name, found: amount("ratio", solidsSG), limit }];
}
