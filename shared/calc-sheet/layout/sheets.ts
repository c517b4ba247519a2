import { tagFor } from "../../ports/sheet-name.ts";
import type { PrintSpec } from "../../ports/sheet-spec.ts";
import { VERSION } from "../../ports/version.ts";
import type { CalcSheetPlan, SheetId } from "../plan.ts";

const NAMES = {
  duty: { around: (tag: string) => `Duty ${tag}`, alone: "Duty" },
  estimate: { around: (tag: string) => `${tag} estimate`, alone: "Estimate" },
  workings: { around: (tag: string) => `${tag} workings`, alone: "Workings" },
} as const satisfies Record<SheetId, object>;

/** What the sheets of a plan would be called: all after its tag, shortened alike. */
export function wantedNames({ tag }: Pick<CalcSheetPlan, "tag">): Readonly<Record<SheetId, string>> {
  const longest = Math.max(...Object.values(NAMES).map(({ around }) => around("").length));
  const short = tagFor(tag, longest);
  const nameOf = (of: SheetId): string => (short === "" ? NAMES[of].alone : NAMES[of].around(short));
  return { duty: nameOf("duty"), estimate: nameOf("estimate"), workings: nameOf("workings") };
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

/** A page header holds 255 characters with its marks (Microsoft, "Excel specifications and limits"); these leave room. */
const LONGEST = { project: 100, item: 50, revision: 24, date: 24 } as const;

/** How each sheet is printed. */
export function printOf(
  sheet: SheetId,
  { issue = {} }: Pick<CalcSheetPlan, "issue">,
): Pick<PrintSpec, "orientation" | "header" | "footer"> {
  const said = (of: keyof typeof LONGEST): string => headerText(issue[of] ?? "", LONGEST[of]);
  const revision = said("revision");
  const listed = (...texts: readonly string[]): string => texts.filter((text) => text !== "").join(", ");
  const footer = sheet === "estimate" ? "Internal: not for issue" : SAFETY;
  return {
    orientation: sheet === "workings" ? "landscape" : "portrait",
    header: `&L${listed(said("project"), said("item"))}&R${listed(revision === "" ? "" : `Rev. ${revision}`, said("date"))}`,
    footer: `&L&A, Dutybook ${VERSION}&C${footer}&RPage &P of &N`,
  };
}

/** A text in a page header: on one line, its ampersands doubled, cut where it is too long. */
function headerText(text: string, longest: number): string {
  const marked = text.replace(/\s+/g, " ").trim().replaceAll("&", "&&");
  if (marked.length <= longest) return marked;
  const cut = marked.slice(0, longest - 1).replace(/[\ud800-\udbff]$/, "");
  const ends = /&*$/.exec(cut)?.[0].length ?? 0;
  return `${ends % 2 === 1 ? cut.slice(0, -1) : cut}…`;
}
