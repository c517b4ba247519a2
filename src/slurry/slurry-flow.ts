import type { Input, Method } from "../basis/method.ts";
import { checkInputs } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { type SlurryMixture, type SlurryMixtureInputs, slurryMixture, slurryMixtureMethod } from "./slurry-mixture.ts";

const FLOW: Input = { name: "flow", symbol: "Q", quantity: "flow", above: 0 };
const DRY_SOLIDS: Input = { name: "dry solids", symbol: "M", quantity: "massFlow", above: 0 };

export const slurryFlowMethod = {
  cites: slurryMixtureMethod.cites,
  inputs: {},
} as const satisfies Method<never>;

/** What is known of a slurry beside its composition; null where it is not. */
export interface SlurryFlowInputs {
  readonly known: Omit<SlurryMixtureInputs, "solidsPerVolume">;
  /** Of the slurry, m³/s. */
  readonly flow: number | null;
  /** Mass of solids in a time, kg/s. */
  readonly drySolids: number | null;
}

export interface SlurryFlow {
  readonly mixture: SlurryMixture;
  /** Null where neither flow nor solids were stated, or the solids are none. */
  readonly flow: number | null;
  readonly drySolids: number | null;
}

/**
 * A slurry from any two of its figures, flow and dry solids together counting as one; m³/s and kg/s.
 * Formula: M = c Q, c = C_v ρ_s, dry solids in a volume of slurry
 * Fails: a flow or a rate of solids that is not above 0; as `slurryMixture`.
 * Warns: as `slurryMixture`.
 * Source: mass balance.
 */
export function slurryFlow({ known, flow, drySolids }: SlurryFlowInputs): Result<SlurryFlow> {
  const inputs = { ...(flow === null ? {} : { FLOW }), ...(drySolids === null ? {} : { DRY_SOLIDS }) };
  const checked = checkInputs({ ...slurryFlowMethod, inputs } as Method<string>, {
    FLOW: flow ?? 0,
    DRY_SOLIDS: drySolids ?? 0,
  });
  if (!checked.ok) return checked;
  const together = flow === null || drySolids === null ? {} : { solidsPerVolume: drySolids / flow };
  return andThen(slurryMixture({ ...known, ...together }), (mixture) => {
    const { solidsPerVolume } = mixture;
    if (flow !== null) return succeed({ mixture, flow, drySolids: drySolids ?? flow * solidsPerVolume });
    const carried = drySolids === null || solidsPerVolume === 0 ? null : drySolids / solidsPerVolume;
    return succeed({ mixture, flow: carried, drySolids });
  });
}
