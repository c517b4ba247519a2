import type { VerdictSubject } from "../../../src/judgement/verdict.ts";
import type { Criterion } from "../../catalogue/parameters/criteria.ts";
import type { Duty } from "../../duty/duty.ts";
import { judgedRows } from "../verdicts.ts";
import type { Mend } from "./mend.ts";
import { classMends } from "./of-flanges.ts";
import { wallMends } from "./of-pipe-walls.ts";
import { speedMends } from "./of-speed.ts";
import { isBroken } from "./verdict-rows.ts";

/** What one text in one box changes of a verdict that does not pass. */
type VerdictMender = (rows: readonly Criterion[], duty: Duty) => readonly Mend[];

const OF_VERDICTS: Readonly<Partial<Record<VerdictSubject, VerdictMender>>> = {
  head: speedMends,
  pipe: wallMends,
  pressure: classMends,
};

/** The mends of a verdict, by its subject. */
export function mendsOfVerdict(subject: VerdictSubject, duty: Duty): readonly Mend[] {
  const mender = OF_VERDICTS[subject];
  if (mender === undefined) return [];
  const rows = judgedRows(duty).filter((row) => row.subject === subject);
  return rows.some(isBroken) ? mender(rows, duty) : [];
}
