import { type Archive, openArchive } from "../read/archive.ts";
import { LIMITS, type Limits } from "../read/limits.ts";
import { type Relation, relationsOf } from "../read/xml-part.ts";
import { partText } from "./part-text.ts";
import { type AttributeReader, countsOf, type TagCounts } from "./tag-counts.ts";
import { listedSheets } from "./workbook-text.ts";

/** What a file holds that a grid of cells does not show; of a sheet, or of the workbook where none is named. */
export interface Unseen {
  readonly sheet?: string;
  /** In words: "2 charts", "protection". */
  readonly things: readonly string[];
}

/** What of an opened file the grid does not show, in the order of its sheets. */
export function unseenIn(bytes: Uint8Array, limits: Limits = LIMITS): readonly Unseen[] {
  const archive = openArchive(bytes, limits);
  const workbook = relationsOf(archive, "", limits).find(({ type }) => type === "officeDocument")?.target;
  if (workbook === undefined) return [];
  const relations = relationsOf(archive, workbook, limits);
  const text = partText(archive, workbook);
  const sheets = listedSheets(text).map(({ name, relation, state }): Unseen => {
    const part = relations.find(({ id }) => id === relation);
    const things = part === undefined ? [] : thingsOn(archive, part, limits);
    return { sheet: name, things: state === "visible" ? things : ["the sheet itself, hidden", ...things] };
  });
  const whole: Unseen = { things: thingsOf(text, relations) };
  return [...sheets, whole].filter(({ things }) => things.length > 0);
}

function thingsOf(workbook: string, relations: readonly Relation[]): readonly string[] {
  const { of } = countsOf(workbook);
  const linked = (type: string): number => relations.filter((relation) => relation.type === type).length;
  // A print area or the rows of a filter are names of the program's own.
  const names = of(
    "definedName",
    (attribute) => !/^_xlnm\./.test(attribute("name") ?? "") && attribute("localSheetId") === undefined,
  );
  return words([
    [names, "workbook name", "workbook names"],
    [linked("externalLink"), "link to another workbook", "links to other workbooks"],
    [
      of("workbookProtection", (attribute) => isOn(attribute("lockStructure")) || isOn(attribute("lockWindows"))),
      "protection of the workbook",
    ],
    [linked("vbaProject"), "macros"],
    [linked("connections"), "data connections"],
  ]);
}

function thingsOn(archive: Archive, { target, type }: Relation, limits: Limits): readonly string[] {
  if (type !== "worksheet") return ["the sheet itself: it has no cells"];
  const relations = relationsOf(archive, target, limits);
  const parts = (kind: string): readonly TagCounts[] =>
    relations
      .filter((relation) => relation.type === kind && archive.has(relation.target))
      .map((relation) => countsOf(partText(archive, relation.target)));
  const sum = (counts: readonly TagCounts[], ...names: readonly string[]): number =>
    counts.reduce((total, { of }) => total + names.reduce((own, name) => own + of(name), 0), 0);
  const linked = (kind: string): number => relations.filter((relation) => relation.type === kind).length;

  const drawings = parts("drawing");
  const { of } = countsOf(partText(archive, target));
  return words([
    [sum(drawings, "chart"), "chart", "charts"],
    [sum(drawings, "pic"), "picture", "pictures"],
    [sum(drawings, "sp", "cxnSp"), "shape or text box", "shapes or text boxes"],
    [sum(parts("comments"), "comment"), "comment", "comments"],
    [linked("pivotTable"), "pivot table", "pivot tables"],
    [linked("table"), "table", "tables"],
    [linked("slicer") + linked("timeline"), "slicer", "slicers"],
    [linked("oleObject") + linked("package"), "embedded object", "embedded objects"],
    [linked("ctrlProp"), "form control", "form controls"],
    [of("hyperlink"), "link", "links"],
    [of("sparkline"), "sparkline", "sparklines"],
    [of("sheetProtection", (attribute) => isOn(attribute("sheet"))), "protection"],
    [of("autoFilter"), "filter"],
    [
      of("dataValidation", (attribute) => attribute("type") !== "list"),
      "input rule that is no list",
      "input rules that are no lists",
    ],
    [
      of("cfRule", (attribute) => attribute("type") !== "expression"),
      "conditional format without a formula",
      "conditional formats without a formula",
    ],
    [of("row", (attribute) => isOn(attribute("hidden"))), "hidden row", "hidden rows"],
    [of("col", (attribute) => isOn(attribute("hidden"))), "hidden columns"],
    [of("row", isOutlined) + of("col", isOutlined), "outline"],
    [of("pane", (attribute) => attribute("xSplit") !== undefined), "frozen columns"],
    [of("tabColor"), "tab colour"],
    [of("picture") + linked("image"), "background picture"],
    [of("pageSetup") + of("headerFooter"), "page set-up"],
  ]);
}

/** What there is of each, counted where a plural is given. */
function words(counted: readonly (readonly [number, string, string?])[]): readonly string[] {
  return counted.flatMap(([count, one, many]) => {
    if (count === 0) return [];
    if (many === undefined) return [one];
    return [count === 1 ? `1 ${one}` : `${count} ${many}`];
  });
}

function isOutlined(attribute: AttributeReader): boolean {
  return Number(attribute("outlineLevel") ?? 0) > 0;
}

function isOn(value: string | undefined): boolean {
  return value !== undefined && value !== "0" && value !== "false";
}
