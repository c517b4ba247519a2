import { joinedPumps, type PumpTables } from "../../../shared/pump-table/joined-tables.ts";
import type { Finding } from "../../../src/basis/result.ts";
import { type ReadyPump, readyPump } from "../../../src/pump/ready-pump.ts";

/** The pumps to choose from, and where they were read. */
export interface Candidates {
  /** “Pump curves” and “Curves TEST-1”. */
  readonly from: string;
  readonly pumps: readonly ReadyPump[];
  /** Pumps whose rows hold a mistake, with what is wrong; they are not ranked. */
  readonly unusable: readonly { readonly name: string; readonly findings: readonly Finding[] }[];
  /** What else there is to say of the tables. */
  readonly findings: readonly Finding[];
}

/** The pumps of tables that were read, made ready once for every duty they are held against. */
export function candidatesOf(
  from: string,
  tables: readonly PumpTables[],
  findings: readonly Finding[] = [],
): Candidates {
  const joined = joinedPumps(tables);
  const read = tables.flatMap(({ curves }) => curves?.pumps ?? []);
  return {
    from,
    pumps: joined.pumps.map(readyPump),
    unusable: read.filter(({ usable }) => !usable),
    findings: [
      ...joined.findings,
      ...read.filter(({ usable }) => usable).flatMap((pump) => pump.findings),
      ...findings,
    ],
  };
}

/** The pump of a name among them. */
export function candidateNamed(candidates: Candidates | undefined, name: string): ReadyPump | undefined {
  const wanted = name.trim().toLowerCase();
  return candidates?.pumps.find(({ offered }) => offered.name.toLowerCase() === wanted);
}
