import { andThen, type Finding, succeed } from "../../../src/basis/result.ts";
import { judgePart, PART_KINDS, type PartJudgement, type PartKind } from "../../../src/material/stated-part.ts";
import { wettedDutyMethod } from "../../../src/material/wetted-duty.ts";
import { findingText } from "../../text/finding-text.ts";
import { defineEntry } from "../entry.ts";
import { choice, text } from "../parameter.ts";
import { wettedDutyFrom, wettedParameters } from "../parameters/wetted-duty.ts";

/** Reasons that a sentence has room for. */
const MOST_REASONS = 2;

export const MATERIALCHECK = defineEntry({
  id: "MATERIALCHECK",
  group: "Materials",
  summary: "Whether one stated wetted part stands the liquid: casing, impeller, seal faces, elastomer, bolts or line",
  method:
    "The rules of WETTEDPARTS for the part and material stated. fail: not suited, whatever the unstated may be. open: something not stated decides. check: suits with care; or is not judged although all is stated; or suits by the range that a named liquid is taken to mean. pass: suits, and pH, temperature, make-up, for metals chloride and for casing, impeller and seal solids are stated. A casing or impeller is any casting or rated material; 304 is judged as 316 with a fifth of its chloride. Seal faces: carbon, tungsten carbide (cobalt-bound unless nickel is said), silicon carbide (reaction-bonded or sintered). A line is a pipe or hose by its name; of rubber hose the rubber decides. Bolts are judged as wetted or splashed.",
  cites: [...wettedDutyMethod.cites, { source: "corrosion-data", at: "as the row of each named liquid says" }],
  parameters: {
    part: choice<PartKind>(PART_KINDS, { about: "The part" }),
    material: text<string>({ about: "What it is made of", example: '"CD4MCuN", "10in HDPE DR17" or "EPDM"' }, (given) =>
      succeed(given),
    ),
    ...wettedParameters,
  },
  answer: {
    kind: "record",
    name: "stated part",
    columns: {
      state: { name: "state" },
      verdict: { name: "verdict" },
      text: { name: "in words" },
      why: { name: "why" },
    },
  },
  examples: [
    {
      args: ["casing", "ductile iron", 2.9, 20, 350, 3, "sand", 5, 50, 0, "acid mine water", "SI"],
      part: [1, 0],
      answer: "fail",
      source: "common practice, no source: iron below pH 4 dissolves",
    },
    {
      args: ["line", "10in HDPE DR17", 2.9, 20, 350, 3, "sand", 5, 50, 0, "acid mine water", "SI"],
      part: [1, 0],
      answer: "pass",
      source: "common practice, no source: polyethylene stands acid mine water",
    },
  ],
  run: ({ part, material, ...given }, { unitSet }) =>
    andThen(judgePart(part, material, wettedDutyFrom(given)), (judged) =>
      succeed({
        state: judged.state,
        verdict: judged.verdict,
        ...inWords(judged, (finding) => findingText(finding, unitSet)),
      }),
    ),
});

/** "ranks 4th of 10, cast duplex CD4MCuN ranks first: pH 2.9 is below 4: rapid attack"; the same after the verdict. */
function inWords(
  { verdict, rank, better, reasons }: PartJudgement,
  say: (finding: Finding) => string,
): { readonly text: string; readonly why: string } {
  const ranked = [
    ...(rank === null ? [] : [`ranks ${ordinal(rank.place)} of ${rank.of}`]),
    ...(better === null || verdict === "suits" ? [] : [`${better} ranks first`]),
  ].join(", ");
  const why = reasons.slice(0, MOST_REASONS).map((finding) => {
    const words = say(finding).replace(/\.$/, "");
    return /^(?:pH|PV)/.test(words) ? words : words.charAt(0).toLowerCase() + words.slice(1);
  });
  const because = [ranked, why.join("; ")].filter((words) => words !== "").join(": ");
  return { text: because === "" ? verdict : `${verdict}${ranked === "" ? ":" : ","} ${because}`, why: because };
}

function ordinal(place: number): string {
  const isTeen = place % 100 >= 11 && place % 100 <= 13;
  return `${place}${isTeen ? "th" : (["th", "st", "nd", "rd"][place % 10] ?? "th")}`;
}
