import { joinedPumps, type PumpTables } from "../../../shared/pump-table/joined-tables.ts";
import { inWords } from "../../../shared/text/words.ts";
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
  /** The readings that they come from, one after the other. */
  readonly readings: readonly PumpReading[];
}

/** Tables that were read in one go. */
export interface PumpReading {
  readonly from: string;
  readonly tables: readonly PumpTables[];
  /** What was found in reading. */
  readonly findings: readonly Finding[];
}

/** The pumps of tables that were read, made ready once for every duty they are held against. */
export function candidatesOf(
  from: string,
  tables: readonly PumpTables[],
  findings: readonly Finding[] = [],
): Candidates {
  return candidatesFrom([{ from, tables, findings }]);
}

/** The same, beside those of earlier readings. What is read once more from the same place takes the place of the first. */
export function candidatesBeside(earlier: Candidates | undefined, added: PumpReading): Candidates {
  const others = (earlier?.readings ?? []).filter(({ from }) => from !== added.from);
  return candidatesFrom([...others, added]);
}

function candidatesFrom(readings: readonly PumpReading[]): Candidates {
  const tables = readings.flatMap((reading) => reading.tables);
  const joined = joinedPumps(tables);
  const read = tables.flatMap(({ curves }) => curves?.pumps ?? []);
  return {
    from: inWords(
      readings.map(({ from }) => from),
      "and",
    ),
    readings,
    pumps: joined.pumps.map(readyPump),
    unusable: read.filter(({ usable }) => !usable),
    findings: [
      ...joined.findings,
      ...read.filter(({ usable }) => usable).flatMap((pump) => pump.findings),
      ...readings.flatMap(({ findings }) => findings),
    ],
  };
}

/** The pump of a name among them. */
export function candidateNamed(candidates: Candidates | undefined, name: string): ReadyPump | undefined {
  const wanted = name.trim().toLowerCase();
  return candidates?.pumps.find(({ offered }) => offered.name.toLowerCase() === wanted);
}
