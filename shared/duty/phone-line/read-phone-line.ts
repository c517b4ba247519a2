import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Result } from "../../../src/basis/result.ts";
import type { Unit } from "../../../src/basis/units.ts";
import { liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { LONGEST_TEXT } from "../../cells/long-text.ts";
import { FIELDS, type FieldKey } from "../fields.ts";
import { amountsAt, type SaidAmount, timesText, withUnit } from "./amounts.ts";
import type { Clause } from "./clauses.ts";
import { levelsSaid, type SaidHeight } from "./levels-said.ts";
import { linesSaid } from "./lines-said.ts";
import type { FilledBox, PhoneLine, PhonePart, PhoneProposal } from "./phone-line.ts";
import { fieldOutcome, type Outcome, refusedBy } from "./reading.ts";
import type { Said, SaidPart } from "./said.ts";
import { scan } from "./scan.ts";
import { unitsSaid } from "./unit-set.ts";
import { PIPE_WORDS } from "./words.ts";

/**
 * A duty said in one sentence: "1000 gpm, lift 12 ft, up 60 ft, 20 ft of 8in suction hose, 900 ft 8in HDPE DR17". Each part goes
 * into the boxes it is of, read by the readers of those boxes, or is left with the reason why. `present` is the unit set of the duty.
 */
export function readPhoneLine(text: string, present: UnitSetName): PhoneLine {
  if (text.length > LONGEST_TEXT) return tooLong(text);
  const { said, unread } = scan(text);
  const { set, isBareClear } = unitsSaid(said.flatMap(unitsOf), present);
  const unitSet = set ?? present;
  const outcomes = new Map<number, Outcome>();
  const fields: Partial<Record<FieldKey, string>> = {};
  const textOf = (part: number): string => text.slice(said[part]?.from, said[part]?.to);
  const filledBy = new Map<number, readonly FieldKey[]>();
  const refuse = (part: number, outcome: Outcome): void => {
    // A part is understood as a whole or not at all.
    for (const key of filledBy.get(part) ?? []) delete fields[key];
    outcomes.set(part, outcome);
  };
  const fill = (part: number, key: FieldKey, value: string, remark?: string): void => {
    const before = outcomes.get(part) ?? { boxes: [], remarks: [] };
    if ("refused" in before) return;
    const isTwice = fields[key] !== undefined && fields[key] !== value;
    const outcome = isTwice ? twice(key) : fieldOutcome(key, value, unitSet, textOf(part));
    if ("refused" in outcome) {
      refuse(part, outcome);
      return;
    }
    fields[key] = value;
    filledBy.set(part, [...(filledBy.get(part) ?? []), key]);
    outcomes.set(part, {
      boxes: [...before.boxes, ...outcome.boxes],
      remarks: [...before.remarks, ...(remark === undefined ? [] : [remark]), ...outcome.remarks],
    });
  };
  const clear = said.map(({ said: one }) => isBareClear || !isBare(one));
  const heights: SaidHeight[] = [];
  const pumps = said.map(({ said: one }) => one).find((one) => one.what === "pumps");
  for (const [part, { said: one }] of said.entries()) {
    if (!clear[part]) {
      outcomes.set(part, {
        refused: "it has no unit, and the units of the others are not those of the duty",
        instead: [],
      });
      continue;
    }
    switch (one.what) {
      case "field":
        fill(part, one.key, one.text);
        break;
      case "flow":
        sayFlow(part, one, pumps?.count ?? 1, pumps?.arrangement);
        break;
      case "pumps":
        fill(part, "pumpsRunning", String(one.count));
        if (one.arrangement !== undefined) fill(part, "arrangement", one.arrangement);
        break;
      case "height":
        heights.push({ part, kind: one.kind, amount: one.amount });
        break;
      case "liquid":
        fill(part, "liquid", one.text);
        if (one.temperature !== undefined) fill(part, "temperature", one.temperature);
        break;
      case "refused":
        outcomes.set(part, { refused: one.remark, instead: one.instead });
        break;
      default:
    }
  }
  const { levels, refused } = levelsSaid(heights, unitSet);
  for (const { part, key, text: level, remark } of levels) fill(part, key, level, remark);
  for (const { part, refused: why, instead } of refused) refuse(part, { refused: why, instead });
  const lines = linesSaid(
    said.map((one, part) => (clear[part] ? one : { ...one, said: REFUSED })),
    unread.filter(({ from, to }) => PIPE_WORDS.test(text.slice(from, to))).map(({ from }) => from),
    unitSet,
  );
  for (const [part, outcome] of lines.outcomes) outcomes.set(part, outcome);
  const proposal: PhoneProposal = {
    ...(set !== undefined && set !== present && { unitSet: set }),
    fields,
    lines: lines.lines,
  };
  return { text, parts: partsOf(text, said, outcomes, unread, unitSet), proposal };

  function sayFlow(
    part: number,
    { amount, of }: Extract<Said, { readonly what: "flow" }>,
    count: number,
    arrangement: string | undefined,
  ): void {
    const own = amount.text;
    if (count === 1 || arrangement === "series" || of === "all") fill(part, "flow", own);
    else if (of === "each")
      fill(part, "flow", timesText(count, withUnit(amount, "flow", unitSet)), `${count} pumps side by side`);
    else {
      const instead = [`${own} each`, `${own} in total`];
      outcomes.set(part, { refused: `of each of the ${count} pumps, or of all together? Say which`, instead });
    }
  }
}

/** Stands for a part without a unit that may be a run. */
const REFUSED: Said = { what: "refused", remark: "", instead: [], isRun: true };

function twice(key: FieldKey): Outcome {
  return { refused: `${FIELDS[key].label} is said twice; the first stands`, instead: [] };
}

/** Its figures: their units tell the unit set. */
function figuresOf(said: Said): readonly SaidAmount[] {
  switch (said.what) {
    case "flow":
    case "height":
      return [said.amount];
    case "run":
    case "length":
      return [said.length];
    case "field":
      return FIELDS[said.key].quantity === undefined ? [] : amountsAt(said.text).slice(0, 1);
    case "liquid":
      return amountsAt(said.temperature ?? "").slice(0, 1);
    default:
      return [];
  }
}

function unitsOf({ said }: SaidPart): readonly Unit[] {
  return figuresOf(said).flatMap(({ unit }) => unit ?? []);
}

/** Whether it hangs on the unit set; 0 is the same in all. */
function isBare(said: Said): boolean {
  if (said.what === "field" && FIELDS[said.key].quantity === "ratio") return false;
  return figuresOf(said).some(({ unit, text }) => unit === undefined && Number(text) !== 0);
}

/** All of the text, part by part. */
function partsOf(
  text: string,
  said: readonly SaidPart[],
  outcomes: ReadonlyMap<number, Outcome>,
  unread: readonly Clause[],
  unitSet: UnitSetName,
): readonly PhonePart[] {
  const spans = [
    ...said.map(({ from, to }, part) => ({ from, to, outcome: outcomes.get(part) ?? NOT_USED })),
    ...unread.map(({ from, to }) => ({ from, to, outcome: nearest(text.slice(from, to), unitSet) })),
  ].sort((a, b) => a.from - b.from);
  const parts: PhonePart[] = [];
  let at = 0;
  const between = (to: number): void => {
    if (to > at)
      parts.push({ from: at, to, text: text.slice(at, to), kind: "between", boxes: [], remarks: [], instead: [] });
  };
  for (const { from, to, outcome } of spans) {
    between(from);
    const isRead = "boxes" in outcome;
    parts.push({
      from,
      to,
      text: text.slice(from, to),
      kind: isRead ? "understood" : "not understood",
      boxes: isRead ? outcome.boxes : [],
      remarks: isRead ? outcome.remarks : [outcome.refused],
      instead: isRead ? [] : outcome.instead,
    });
    at = to;
  }
  between(text.length);
  return parts;
}

const NOT_USED: Outcome = { boxes: [] as readonly FilledBox[], remarks: [] };

/** Why a text was not understood, by the reader it was most likely meant for. */
function nearest(given: string, unitSet: UnitSetName): Outcome {
  const isPipe = PIPE_WORDS.test(given);
  const read: (text: string) => Result<unknown> = isPipe
    ? pipeNamed
    : LIQUID_WORDS.test(given)
      ? liquidNamed
      : fittingsNamed;
  const found = read(given);
  if (!found.ok) {
    const why = refusedBy(found.findings, unitSet, (text) => read(text).ok);
    if (isPipe || why.instead.length > 0) return why;
  }
  return { refused: "nothing here reads this", instead: [] };
}

const LIQUID_WORDS = /\bwater|glycol|brine|diesel|slurry/i;

function tooLong(text: string): PhoneLine {
  const remark = `a sentence of up to ${LONGEST_TEXT} letters is read; this has ${text.length}`;
  const part = {
    from: 0,
    to: text.length,
    text,
    kind: "not understood",
    boxes: [],
    remarks: [remark],
    instead: [],
  } as const;
  return { text, parts: [part], proposal: { fields: {}, lines: {} } };
}
