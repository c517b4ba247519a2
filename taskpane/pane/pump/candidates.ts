import type { CurveTable } from "../../../shared/pump-table/curve-table.ts";
import { offeredPumps } from "../../../shared/pump-table/offered-pumps.ts";
import type { PumpList } from "../../../shared/pump-table/pump-list.ts";
import type { Finding } from "../../../src/basis/result.ts";
import { type ReadyPump, readyPump } from "../../../src/pump/ready-pump.ts";

/** The pumps to choose from, and where they were read. */
export interface Candidates {
  /** Such as "the sheet “Pump curves”". */
  readonly from: string;
  readonly pumps: readonly ReadyPump[];
  /** Pumps whose rows hold a mistake, with what is wrong; they are not ranked. */
  readonly unusable: readonly { readonly name: string; readonly findings: readonly Finding[] }[];
  /** What else there is to say of the tables. */
  readonly findings: readonly Finding[];
}

export interface PumpTables {
  readonly curves: CurveTable;
  readonly list?: PumpList;
}

/** The pumps of tables that were read, made ready once for every duty they are held against. */
export function candidatesOf(
  from: string,
  { curves, list }: PumpTables,
  findings: readonly Finding[] = [],
): Candidates {
  return {
    from,
    pumps: offeredPumps(curves, list).map(readyPump),
    unusable: curves.pumps.filter(({ usable }) => !usable),
    findings: [...curves.pumps.filter(({ usable }) => usable).flatMap((pump) => pump.findings), ...findings],
  };
}

/** The pump of a name among them. */
export function candidateNamed(candidates: Candidates | undefined, name: string): ReadyPump | undefined {
  const wanted = name.trim().toLowerCase();
  return candidates?.pumps.find(({ offered }) => offered.name.toLowerCase() === wanted);
}
