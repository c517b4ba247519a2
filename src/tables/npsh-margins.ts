import type { ServiceName } from "./services.ts";

// NPSH to keep in hand over NPSH required, by service: the greater of a head and a share of NPSH required, more above a
// suction specific speed. ANSI/HI 9.6.1 (2012) as two public summaries print it; not yet verified against the standard.
// Its 2024 edition makes the share depend on flow. Dewatering, slurry and every suction lift: common practice, no source.
// Above N_ss 11 000 the summaries ask process pumps for more outside the preferred region alone; here always (house
// choice). Building services above 7500: "1.1 or 0.6 m", the greater taken.

export interface NpshMarginRow {
  /** m */
  readonly head: number;
  /** Of NPSH required. */
  readonly share: number;
}

interface NpshMarginGroup {
  readonly services: readonly ServiceName[];
  readonly usual: NpshMarginRow;
  /** Above a suction specific speed in US units (rpm, US gpm, ft). */
  readonly high?: NpshMarginRow & { readonly above: number };
}

export const NPSH_MARGIN_OF_LIFT: NpshMarginRow = { head: 1, share: 0.3 };

export const NPSH_MARGINS: readonly NpshMarginGroup[] = [
  {
    services: ["dewatering", "bypass", "trash", "rental", "drainage", "irrigation", "slurry"],
    usual: NPSH_MARGIN_OF_LIFT,
  },
  {
    services: ["water and wastewater", "electric power", "pulp and paper", "water injection", "cooling tower"],
    usual: { head: 0.6, share: 0.1 },
    high: { above: 7500, head: 1, share: 0.2 },
  },
  {
    services: ["chemical", "general industry"],
    usual: { head: 0.6, share: 0.1 },
    high: { above: 11_000, head: 1, share: 0.2 },
  },
  { services: ["oil and gas", "pipeline"], usual: { head: 1, share: 0.1 } },
  {
    services: ["building services"],
    usual: { head: 0, share: 0 },
    high: { above: 7500, head: 0.6, share: 0.1 },
  },
];
