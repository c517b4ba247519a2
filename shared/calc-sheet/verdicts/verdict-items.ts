import { VERDICT_STATES, VERDICT_SUBJECTS, type VerdictSubject } from "../../../src/judgement/verdict.ts";
import { VERDICTS } from "../../catalogue/entries/verdicts.ts";
import type { Duty } from "../../duty/duty.ts";
import { STATE_SIGNS } from "../../text/verdict-text.ts";
import { callOf, constant, type Expression, ifText, part, range, spillOf } from "../expression.ts";
import { type PlanItem, spill, type VerdictsItem } from "../plan.ts";
import { criteriaOf } from "./criteria.ts";
import { CRITERIA, criteriaTable } from "./criterion.ts";

/** Where the verdicts stand, the count of all of them first. */
export const VERDICT_TABLE = spillOf("verdicts", VERDICTS);

/** What is judged, as a reader meets it. */
export const SUBJECT_NAMES: Readonly<Record<VerdictSubject, string>> = {
  head: "Head",
  npsh: "NPSH",
  sump: "Sump",
  region: "Operating region",
  solids: "Solids",
  pressure: "Pressure",
  pipe: "Pipe and hose",
  bolting: "Bolting",
  driver: "Driver",
  priming: "Priming",
  materials: "Materials",
  field: "Field check",
};

/** What this duty is judged on, in the order of the verdicts. */
export function subjectsOf(duty: Duty): readonly VerdictSubject[] {
  const judged = new Set(criteriaOf(duty).map(({ of }) => of));
  return VERDICT_SUBJECTS.filter((subject) => judged.has(subject));
}

/** The criteria and the verdicts drawn from them, in the workings. */
export function verdictWorkings(duty: Duty): readonly PlanItem[] {
  const criteria = criteriaOf(duty);
  const rows = subjectsOf(duty).length + 2;
  return [
    criteriaTable(criteria, duty.unitSet),
    spill(VERDICT_TABLE, "Verdicts", callOf(VERDICTS, { criteria: range(CRITERIA) }), rows),
  ];
}

/** What holds, what fails and what is open, at the head of the sheet; what waits for one and the same thing in one row. */
export function verdictBlock(duty: Duty): VerdictsItem {
  const groups: { readonly waits: string | undefined; readonly subjects: VerdictSubject[]; readonly at: number }[] = [];
  subjectsOf(duty).forEach((subject, i) => {
    const waits = waitsFor(subject, duty);
    const same = waits === undefined ? undefined : groups.find((group) => group.waits === waits);
    if (same !== undefined) same.subjects.push(subject);
    else groups.push({ waits, subjects: [subject], at: i + 1 });
  });
  return {
    kind: "verdicts",
    count: part(VERDICT_TABLE, "text"),
    rows: groups.map(({ subjects, at }) => ({
      key: `verdictOn${SUBJECT_NAMES[subjects[0] as VerdictSubject].replaceAll(" ", "")}`,
      label: subjects.map((subject) => SUBJECT_NAMES[subject]).join(", "),
      state: signed(part(VERDICT_TABLE, "state", at)),
      text: part(VERDICT_TABLE, "text", at),
    })),
  };
}

/** What alone keeps a subject open, whatever the figures are. */
function waitsFor(subject: VerdictSubject, duty: Duty): string | undefined {
  const [one, ...others] = criteriaOf(duty).filter(({ of }) => of === subject);
  const { state, what } = one?.row ?? {};
  return others.length === 0 && state === "open" && typeof what === "string" ? what : undefined;
}

/** "✗ FAIL", "✓ pass": told apart without colour. */
function signed(state: Expression): Expression {
  return VERDICT_STATES.reduceRight<Expression>(
    (otherwise, of) => ifText(state, of, constant(SIGNED[of]), otherwise),
    constant(""),
  );
}

export const SIGNED = {
  fail: `${STATE_SIGNS.fail} FAIL`,
  open: `${STATE_SIGNS.open} open`,
  check: `${STATE_SIGNS.check} check`,
  pass: `${STATE_SIGNS.pass} pass`,
} as const;
