import { pipeCollapseMethod } from "../../../src/estimate/pipe-collapse.ts";
import { LAY_FLAT_PRACTICE } from "../../../src/head/line-remarks.ts";
import { ratingCitation } from "../../../src/pressure/pipe-rating.ts";
import { USUAL_RATINGS } from "../../../src/pressure/usual-rating.ts";
import type { Duty } from "../../duty/duty.ts";
import { FIELDS } from "../../duty/fields.ts";
import { asVacuum } from "../conversions.ts";
import {
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  ifAtLeast,
  ifError,
  ifNumber,
  join,
  part,
  ratio,
  sum,
  verdict,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { caseStatesOf } from "../sections/duty-cases.ts";
import { PIPE, suctionVacuumIn } from "../sections/pipe.ts";
import {
  collapseOf,
  HOSE_RATING,
  isByUsual,
  isCollapseKnown,
  isLevelled,
  isRated,
  nameOfRun,
  type PipeRun,
  pipeRuns,
  RUNS,
  ratingOf,
  shortCollapseOf,
  steadyPressure,
  worstPressure,
  worstPressureIn,
} from "../sections/pipe-runs.ts";
import { CLASSES } from "../sections/pressure-nozzles.ts";
import { type Criterion, limitOf, openPoint, worded } from "./criterion.ts";

/** Pipe and hose of every run against the pressure in it, and suction pipe against its vacuum. */
export function pipeCriteria(duty: Duty): readonly Criterion[] {
  const { pump, pumpState } = duty;
  if (pump === undefined) {
    const what = pumpState === "unreadable" ? "the selected pump cannot be read" : "no pump is selected";
    return [worded({ of: "pipe", state: "open", what })];
  }
  const runs = pipeRuns(duty);
  if (runs.length === 0) return [worded({ of: "pipe", state: "open", what: "no line is stated" })];
  const rated = runs.filter((run) => isRated(duty, run));
  return [
    ...runs.flatMap((run) => {
      if (isRated(duty, run)) return pressureIn(duty, run, rated.indexOf(run));
      if (run.line === "suctionLine" || isByUsual(duty, run)) return [unrated(duty, run)];
      const what = `${run.place}, ${run.stated.typed.pipe.trim()}`;
      return [openPoint({ of: "pipe", what, missing: [HOSE_RATING[run.line]] })];
    }),
    ...runs
      .filter(({ line }) => line === "suctionLine")
      .flatMap((run) => [
        ...vacuumIn(duty, run, PIPE.suctionVacuum, "at the flow stated"),
        ...vacuumIn(duty, run, PIPE.vacuumRunning, "at the operating flow"),
        ...caseStatesOf(duty).flatMap((one) =>
          vacuumIn(duty, run, suctionVacuumIn(one, duty), `at the operating flow, ${one.words}`),
        ),
      ]),
    ...runs.filter((run) => isLevelled(duty, run)).flatMap((run) => alongTheRoute(duty, run)),
  ];
}

/**
 * A run of which nothing is stated: what such hose usually holds never passes it, and above that its maker is asked. On a
 * suction lift it carries no pressure, and nothing need be known of it.
 */
function unrated(duty: Duty, run: PipeRun): Criterion {
  const asked = isByUsual(duty, run) ? byUsual(duty, run) : { state: "open", why: `${missingOf(run)} not stated` };
  const isSuction = run.line === "suctionLine";
  const withoutPressure = (state: Expression, otherwise: string | Expression): Expression =>
    ifAtLeast(constant(0), part(CLASSES, "greatest", 0), state, inWords(otherwise));
  return worded({
    of: "pipe",
    what: nameOfRun(run),
    state: isSuction ? withoutPressure(constant("pass"), asked.state) : inWords(asked.state),
    why: isSuction ? withoutPressure(constant("never above the pressure of the air"), asked.why) : asked.why,
    ...(isByUsual(duty, run) && { cites: USUAL_RATINGS }),
  });
}

function inWords(text: string | Expression): Expression {
  return typeof text === "string" ? constant(text) : text;
}

function missingOf(run: PipeRun): string {
  return FIELDS[HOSE_RATING[run.line]].label;
}

function byUsual(duty: Duty, run: PipeRun): { readonly state: Expression; readonly why: Expression } {
  const rating = part(ratingOf(run), "rating");
  // A temperature that such hose does not stand leaves it unrated.
  const said = (within: string, above: string, unrated: string): Expression =>
    ifNumber(ifError(rating, ""), verdict(rating, steadyPressure(duty, run), within, above), unrated);
  return {
    state: said("check", "open", "open"),
    why: said(
      `within the usual rating of such hose: ask the maker, and state it as ${missingOf(run)}`,
      `above the minimum usual rating of such hose: ${missingOf(run)} not stated`,
      `no usual rating of such hose at its temperature: ${missingOf(run)} not stated`,
    ),
  };
}

/** The limit that may fail a run: the careful end while it is kept, else the favourable end of what is not stated. */
function limitFor(found: Expression, careful: Expression, atBest: Expression): Expression {
  return ifAtLeast(careful, found, careful, atBest);
}

const AT_LOWEST = "closed valve or standing, at its lowest end";

function pressureIn(duty: Duty, run: PipeRun, row: number): readonly Criterion[] {
  const rating = ratingOf(run);
  const cites = ratingCitation(run.stated.segment?.pipe.make?.rule);
  const facts = {
    of: "pipe",
    what: nameOfRun(run),
    found: cell(RUNS, row, "pressure"),
    quantity: "gaugePressure",
    mustBe: "at most",
    when: isLevelled(duty, run) ? said(AT_LOWEST, duty, run, "greatest") : AT_LOWEST,
    ...(cites && { cites }),
  } as const;
  return [
    limitOf({ ...facts, limit: limitFor(facts.found, part(rating, "rating"), part(rating, "atBest")), broken: "fail" }),
    limitOf({ ...facts, limit: part(rating, "rating"), broken: "check", assumed: part(rating, "assumed") }),
    ...(isLevelled(duty, run)
      ? [
          limitOf({
            ...facts,
            found: worstPressure(duty, run, "withSurge"),
            limit: part(rating, "withSurge"),
            broken: "check",
            when: said("with the surge of a sudden stop, at its lowest end", duty, run, "withSurge"),
            why: "beyond what it may reach with the surge of every stop: needs a surge study",
          }),
        ]
      : []),
    ...(run.isByMaker && run.line === "dischargeLine" && !isLevelled(duty, run)
      ? [
          limitOf({
            ...facts,
            found: sum(cell(RUNS, row, "pressure"), PIPE.surgePressure),
            limit: part(rating, "withSurge"),
            broken: "check",
            when: "with full surge",
            why: "hose has no room for surge: needs a surge study",
          }),
        ]
      : []),
  ];
}

/** What is below the air at the higher end of a run: running and standing for long, hanging or in a surge for a while. */
function alongTheRoute(duty: Duty, run: PipeRun): readonly Criterion[] {
  const vacuum = (of: "least" | "hanging" | "leastWithSurge"): Expression =>
    asVacuum(greatest(constant(0), difference(constant(0), worstPressure(duty, run, of))), duty.unitSet);
  const lasting = vacuumIn(duty, run, vacuum("least"), said("running full, at its highest end", duty, run, "least"));
  if (!isCollapseKnown(duty, run)) return lasting;
  const facts = {
    of: "pipe",
    what: join(constant("vacuum in "), nameOfRun(run)),
    limit: ratio(asVacuum(part(shortCollapseOf(run), "pressure"), duty.unitSet), FIELD.passingVacuum),
    quantity: "vacuum",
    mustBe: "at most",
    broken: "check",
    cites: PASSING_PRACTICE,
  } as const;
  const why = join(constant("the pipe is to stand "), FIELD.passingVacuum, constant(" times a vacuum that passes"));
  return [
    ...lasting,
    ...(duty.summitValve === "air valve"
      ? []
      : [
          limitOf({
            ...facts,
            found: vacuum("hanging"),
            when: said("at rest, no air let in", duty, run, "hanging"),
            why,
          }),
        ]),
    limitOf({
      ...facts,
      found: vacuum("leastWithSurge"),
      when: said("in the fall of a sudden stop", duty, run, "leastWithSurge"),
      why,
    }),
  ];
}

const PASSING_PRACTICE = { source: "practice", at: "a factor against a vacuum that passes" } as const;

/** When it is so, and in which of the cases. */
function said(when: string, duty: Duty, run: PipeRun, of: Parameters<typeof worstPressureIn>[2]): Expression {
  return join(constant(when), worstPressureIn(duty, run, of));
}

function vacuumIn(duty: Duty, run: PipeRun, found: Expression, when: string | Expression): readonly Criterion[] {
  const facts = {
    of: "pipe",
    found,
    when,
    quantity: "vacuum",
    mustBe: "at most",
  } as const;
  const what = join(constant("vacuum in "), nameOfRun(run));
  if (run.stated.segment?.pipe.collapsible === true) {
    const why = "lay-flat hose collapses under any vacuum";
    const limit = constant(0);
    return [limitOf({ ...facts, what, limit, broken: "fail", unanswered: "fail", why, cites: LAY_FLAT_PRACTICE })];
  }
  if (!isCollapseKnown(duty, run)) return [];
  const collapse = collapseOf(run);
  const buckles = asVacuum(part(collapse, "pressure"), duty.unitSet);
  const atBest = asVacuum(part(collapse, "atBest"), duty.unitSet);
  const [cites, , factor] = pipeCollapseMethod.cites;
  return [
    limitOf({
      ...facts,
      what,
      limit: limitFor(found, buckles, atBest),
      broken: "fail",
      why: "beyond it the pipe buckles",
      cites,
    }),
    limitOf({
      ...facts,
      what,
      limit: buckles,
      broken: "check",
      assumed: part(collapse, "assumed"),
      cites,
    }),
    limitOf({
      ...facts,
      what,
      limit: ratio(buckles, FIELD.lastingVacuum),
      broken: "check",
      why: join(
        constant(run.line === "suctionLine" ? "a suction line is to stand " : "a lasting vacuum requires "),
        FIELD.lastingVacuum,
        constant(run.line === "suctionLine" ? " times its vacuum" : " times its pressure"),
      ),
      cites: factor,
    }),
  ];
}
