import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";
import { US_PER_SI } from "../pump/specific-speed.ts";
import { NPSH_MARGIN_OF_LIFT, NPSH_MARGINS, type NpshMarginRow } from "../tables/npsh-margins.ts";
import type { ServiceName } from "../tables/services.ts";

export interface NpshMarginInput {
  /** NPSH the pump asks for (3 % head drop), m. */
  readonly npshRequired: number;
  /** The margin of a suction lift where left out. */
  readonly service?: ServiceName;
  /** Of the pump, rpm, m³/s, m; where left out the dearer margin is kept. */
  readonly suctionSpecificSpeed?: number;
}

export const npshMarginMethod = {
  cites: [
    {
      source: "ansi-hi-9.6.1",
      at: "NPSH margin by service, as summarised in public digests; check the edition in force",
    },
    { source: "practice", at: "dewatering, slurry and suction lift: the greater of 1.0 m (3.28 ft) and 0.3 NPSHR" },
  ],
  inputs: {
    npshRequired: { name: "NPSHR", symbol: "NPSHR", quantity: "head", atLeast: 0 },
    suctionSpecificSpeed: { name: "suction specific speed", quantity: "ratio", above: 0 },
  },
} as const satisfies Method<"npshRequired" | "suctionSpecificSpeed">;

/**
 * NPSH to keep in hand over NPSH required where nobody states it [m], by service and suction specific speed.
 * Formula: the greater of a head and a share of NPSH required, both by the table
 * Fails: NPSH required below 0, a suction specific speed not above 0.
 * Source: ANSI/HI 9.6.1 as summarised; common practice for dewatering, slurry and lifts.
 */
export function npshMargin(input: NpshMarginInput): Result<number> {
  const { npshRequired, suctionSpecificSpeed = DEAREST } = input;
  const checked = checkInputs(npshMarginMethod, { npshRequired, suctionSpecificSpeed });
  return checked.ok ? succeed(marginBy(rowOf(input), npshRequired)) : checked;
}

/** NPSH margin kept on a suction lift, and where the service is not stated [m]. */
export function defaultNpshMargin(npshRequired: number): number {
  return marginBy(NPSH_MARGIN_OF_LIFT, npshRequired);
}

function marginBy({ head, share }: NpshMarginRow, npshRequired: number): number {
  return Math.max(head, share * npshRequired);
}

/** A suction specific speed above every step of the table. */
const DEAREST = Number.MAX_VALUE;

function rowOf({ service, suctionSpecificSpeed = DEAREST }: NpshMarginInput): NpshMarginRow {
  const group = NPSH_MARGINS.find(({ services }) => service !== undefined && services.includes(service));
  if (group === undefined) return NPSH_MARGIN_OF_LIFT;
  const { usual, high } = group;
  return high !== undefined && suctionSpecificSpeed > high.above / US_PER_SI ? high : usual;
}
