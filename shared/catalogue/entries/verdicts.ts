import { succeed } from "../../../src/basis/result.ts";
import { verdictsOf, worstOf } from "../../../src/judgement/verdict.ts";
import { countsText } from "../../text/verdict-text.ts";
import { defineEntry } from "../entry.ts";
import { criteria } from "../parameters/criteria.ts";

const EXAMPLE = [
  ["verdict", "what", "found", "limit", "unit", "must be"],
  ["pressure", "suction flange NPS 16 grey iron", 168.7, 150, "psig", "at most"],
  ["pressure", "discharge flange NPS 8 grey iron", 168.7, 200, "psig", "at most"],
  ["npsh", "NPSH available", 15, 12, "ft", "at least"],
] as const;

export const VERDICTS = defineEntry({
  id: "VERDICTS",
  group: "Verdicts",
  summary: "What holds, what fails and what is open, from figures and their limits",
  method:
    "Each row of the table compares a found figure with its limit, both in the unit beside them. Broken, it means fail, or check where the limit is a recommendation; kept, pass, or check where an assumed figure decides. Where a figure rests on an assumption, found is its careful end and “at best” its favourable one: broken at the careful end alone means check. Equal to the limit, to a billionth, counts as kept. A row whose figure or limit is no number is open. A state may be given in words in place of the figures. The verdict on a subject is the worst of its rows, in the order fail, open, check, pass; among rows of one state the one furthest beyond its limit, or closest to it, decides and is named; where all pass, a limit speaks before a recommendation. The first row counts the verdicts.",
  cites: [{ source: "house", at: "order of the states" }],
  parameters: { criteria },
  unitless: true,
  answer: {
    kind: "table",
    name: "verdicts",
    columns: {
      verdict: { name: "verdict" },
      state: { name: "state" },
      text: { name: "in words" },
      found: { name: "found" },
      limit: { name: "limit" },
      unit: { name: "unit" },
      where: { name: "where" },
      source: { name: "source" },
    },
  },
  examples: [
    {
      args: [EXAMPLE],
      part: [3, 2],
      answer: "Fails: suction flange NPS 16 grey iron, 168.7 of 150 psig.",
      source: "ASME B16.1: Class 125 grey iron of NPS 14 to 24 holds 150 psi cold, NPS 1 to 12 200 psi",
    },
    {
      args: [EXAMPLE],
      part: [1, 2],
      answer: "1 fail, 1 pass",
      source: "By definition: the suction flange is above its rating, the NPSH available above that required",
    },
  ],
  run: ({ criteria: rows }) => {
    const verdicts = verdictsOf(rows);
    const all = {
      verdict: "all",
      state: worstOf(verdicts),
      text: countsText(verdicts.map(({ state }) => state)),
      found: undefined,
      limit: undefined,
      unit: undefined,
      where: undefined,
      source: undefined,
    };
    const spilled = verdicts.map(({ subject, state, deciding: { text, found, limit, unit, what, source }, others }) => {
      const more = others === 0 ? "" : ` ${others} more ${state === "check" ? "to check" : state}.`;
      return { verdict: subject, state, text: text + more, found, limit, unit, where: what, source };
    });
    return succeed([all, ...spilled]);
  },
});
