import { greatestOf } from "../../../src/numeric/extremes.ts";
import { tagFor } from "../../ports/sheet-name.ts";
import type { PrintSpec } from "../../ports/sheet-spec.ts";
import { textWidth } from "../../ports/text-width.ts";
import { VERSION } from "../../ports/version.ts";
import type { CalcSheetPlan, SheetId } from "../plan.ts";
import { printedWidth } from "./page-breaks.ts";

const NAMES = {
  duty: { around: (tag: string) => `Duty ${tag}`, alone: "Duty" },
  estimate: { around: (tag: string) => `${tag} estimate`, alone: "Estimate" },
  workings: { around: (tag: string) => `${tag} workings`, alone: "Workings" },
} as const satisfies Record<SheetId, object>;

/** What the sheets of a plan would be called: all after its tag, shortened alike. */
export function wantedNames({ tag }: Pick<CalcSheetPlan, "tag">): Readonly<Record<SheetId, string>> {
  const longest = greatestOf(Object.values(NAMES).map(({ around }) => around("").length));
  const short = tagFor(tag, longest);
  const nameOf = (of: SheetId): string => (short === "" ? NAMES[of].alone : NAMES[of].around(short));
  return { duty: nameOf("duty"), estimate: nameOf("estimate"), workings: nameOf("workings") };
}

/** Letters of a revision in the name of a sheet. */
const LONGEST_REVISION = 8;

/** What the sheet of a copy would be called: after its tag and its revision. */
export function copyName({ tag, issue }: Pick<CalcSheetPlan, "tag" | "issue">): string {
  const revision = tagFor((issue?.revision ?? "").slice(0, LONGEST_REVISION), 0);
  const end = revision === "" ? "copy" : `copy ${revision}`;
  const short = tagFor(tag, `Duty  ${end}`.length);
  return ["Duty", short, end].filter((part) => part !== "").join(" ");
}

/** The title of each sheet and the line under it. */
export function titlesOf({
  title,
  unitSet,
}: CalcSheetPlan): Readonly<Record<SheetId, { readonly title: string; readonly legend: string }>> {
  const inputs = "Shaded cells are inputs; everything else recalculates.";
  const name = "Without the Dutybook add-in the formulas show an error of name.";
  const units = `Unit set ${unitSet}.`;
  return {
    duty: { title, legend: `${inputs} ${name} ${units}` },
    estimate: {
      title: "Estimate",
      legend: `Internal: not for issue. ${inputs} Nothing on the other sheets rests on this one. Unit set ${unitSet}.`,
    },
    workings: {
      title: "Workings",
      legend: `What the sheet of the duty rests on: nothing here is an input, everything recalculates. ${name} Unit set ${unitSet}.`,
    },
  };
}

const SAFETY = "An aid to estimating: local codes and licensed practice govern";

/** Points of the letters in page header and footer, and how two texts of a line stand apart at least. */
const SIZE = 8;
const APART = 12;
/** The size as a mark; the space keeps a figure that follows from being read as part of it. */
const SIZED = `&${SIZE} `;

/** A page header holds 255 characters with its marks (Microsoft, "Excel specifications and limits"); these leave room. */
const LONGEST = { project: 100, item: 50, revision: 24, date: 24 } as const;

/** How each sheet is printed. */
export function printOf(
  sheet: SheetId,
  { issue = {}, paper }: Pick<CalcSheetPlan, "issue" | "paper">,
): Pick<PrintSpec, "orientation" | "header" | "footer"> {
  const said = (of: keyof typeof LONGEST): string => shortened(tidy(issue[of] ?? ""), LONGEST[of]);
  const revision = said("revision");
  const right = listed(revision === "" ? "" : `Rev. ${revision}`, said("date"));
  const item = said("item");
  const beside = item === "" ? "" : `, ${item}`;
  const room = printedWidth(paper) - widthOf(right) - APART - widthOf(beside);
  const left = listed(fitted(said("project"), room), item);
  const footer = sheet === "estimate" ? "Internal: not for issue" : SAFETY;
  return {
    orientation: sheet === "workings" ? "landscape" : "portrait",
    header: `&L${SIZED}${marked(left)}&R${SIZED}${marked(right)}`,
    footer: `&L${SIZED}&A&C${SIZED}${footer}&R${SIZED}Dutybook ${VERSION}, page &P of &N`,
  };
}

function listed(...texts: readonly string[]): string {
  return texts.filter((text) => text !== "").join(", ");
}

function widthOf(text: string): number {
  return textWidth(text, { size: SIZE });
}

/** On one line. */
function tidy(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

/** No longer than so many characters, ampersands counted twice: they are doubled in the mark-up. */
function shortened(text: string, longest: number): string {
  return cutTo(text, (part) => marked(part).length <= longest);
}

/** No wider than so many points. */
function fitted(text: string, points: number): string {
  return cutTo(text, (part) => widthOf(part) <= points);
}

/** The text, or as much of its beginning as fits with the sign that it goes on. */
function cutTo(text: string, fits: (text: string) => boolean): string {
  if (fits(text)) return text;
  const letters = [...text];
  while (letters.length > 0 && !fits(`${letters.join("")}…`)) letters.pop();
  return letters.length === 0 ? "" : `${letters.join("").trimEnd()}…`;
}

/** A text in a page header: its ampersands doubled. */
function marked(text: string): string {
  return text.replaceAll("&", "&&");
}
