import { absolute, boxOf, rangeOf } from "../../shared/ports/a1.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import {
  asTyped,
  cellsOf,
  type MemoryChart,
  type MemorySeries,
  type MemorySheet,
  memorySheet,
  usedRange,
} from "./memory-sheet.ts";
import { type Action, type OfficeAnswer, type OfficeRequest, officePage } from "./office-library.ts";

/** Something a request can name. `ref` is an A1 range, or several parted by commas. */
type Node =
  | { readonly kind: "workbook" | "worksheets" }
  | { readonly kind: "missing" }
  | { readonly kind: "xmlParts"; readonly namespace?: string }
  | { readonly kind: "xmlPart"; readonly part: XmlPart }
  | { readonly kind: SheetPart; readonly sheet: MemorySheet }
  | { readonly kind: "range" | "areas" | "validation" | "rules"; readonly sheet: MemorySheet; readonly ref: string }
  | { readonly kind: "name"; readonly sheet: MemorySheet; readonly name: string }
  | { readonly kind: "chart" | "seriesList" | "axes"; readonly sheet: MemorySheet; readonly chart: MemoryChart }
  | { readonly kind: "series"; readonly sheet: MemorySheet; readonly chart: MemoryChart; readonly series: MemorySeries }
  /** Anything that only takes settings; each goes to `set` under `path`. */
  | { readonly kind: "bag"; readonly path: string; readonly set: (name: string, value: unknown) => void };

/** An XML text kept in the workbook. */
interface XmlPart {
  readonly id: string;
  readonly xml: string;
}

type SheetPart = "sheet" | "protection" | "charts" | "names" | "freezePanes" | "pageLayout" | "breaks" | "shapes";

interface RequestFault {
  readonly Code: string;
  readonly Message: string;
}

/** Where a request is made to fail: at one of its actions, or whole, before or after Excel has carried it out. */
export interface PlannedFault {
  readonly sync: number;
  readonly at: number | "before" | "after";
}

/** The library's own way in for tests of events. */
interface EventLibrary {
  readonly _testSetRichApiMessageReadyImpl: (ready: () => Promise<void>) => void;
  readonly _testTriggerRichApiMessageEvent: (message: { readonly entries: readonly object[] }) => void;
}

/** Excel's numbers for the events. */
const EVENTS = { onCalculated: 16, onChanged: 10 } as const;

/** Settings each part takes; any other is refused, so a misspelt one cannot pass. */
const SETTINGS: Readonly<Record<string, readonly string[]>> = {
  format: ["columnWidth", "rowHeight", "horizontalAlignment", "verticalAlignment", "wrapText", "indentLevel"],
  font: ["bold", "italic", "size", "color"],
  fill: ["color"],
  protection: ["locked"],
  border: ["style", "weight", "color"],
  rule: ["formula"],
  title: ["text"],
  legend: ["visible", "position"],
  line: ["color", "lineStyle", "weight"],
  categoryAxis: ["minimum"],
  shape: ["left", "top", "width", "height", "lockAspectRatio", "placement", "altTextDescription"],
  margins: ["leftHeader", "centerHeader", "rightHeader", "leftFooter", "centerFooter", "rightFooter"],
};

const LONGEST_ADDRESS = 8192;

/** Of every cell, points. */
const CELL = { width: 48, height: 15 } as const;

// Kinds of object path that do not step on from a parent.
const ROOT = 1;
const REFERENCE = 6;
const NOTHING = 7;

/** An action that only marks a place in the answer. */
const TRACE = 5;

/**
 * A workbook in memory behind the maker's own Excel library: the library makes the requests, this answers them, action
 * by action, and stops at the first that fails, leaving what came before, as Excel does. What it does not know it
 * refuses.
 */
export class WorkbookHost {
  readonly Excel: typeof Excel;
  readonly sheets: MemorySheet[] = [memorySheet("sheet-1", "Sheet1")];
  /** XML texts kept in the workbook. */
  readonly xmlParts: XmlPart[] = [];
  active = "sheet-1";
  /** Round trips so far, and how many actions each carried. */
  readonly syncs: number[] = [];
  /** What the actions of each round trip were, by the members they went through: "worksheets.add". */
  readonly kinds: (readonly string[])[] = [];
  fault: PlannedFault | undefined;
  /** Called as each round trip arrives, with its number. */
  onSync: ((sync: number) => void) | undefined;
  /** Sheets that take no changes to their cells. */
  readonly protected = new Set<string>();
  /** How many more looks at values find functions still busy. */
  busy = 0;
  /** Series that Excel makes by itself for a new chart. */
  guessedSeries = 2;
  /** What formulas answer, by their text. */
  readonly answers: Record<string, unknown> = {};
  /** Cells given contents through the API since the start, in order. */
  readonly entered: string[] = [];
  readonly #watched = new Set<string>();
  readonly #library: EventLibrary;
  #next = 2;

  constructor() {
    const window = officePage(["excel-web-16.00.js"], (request) => this.#answer(request));
    const library = window as unknown as { readonly Excel: typeof Excel; readonly OfficeExtension: EventLibrary };
    this.Excel = library.Excel;
    this.#library = library.OfficeExtension;
    this.#library._testSetRichApiMessageReadyImpl(() => Promise.resolve());
  }

  /** Tells the add-in, as Excel does, that a sheet was calculated or changed. */
  async raise(event: keyof typeof EVENTS): Promise<void> {
    const message = JSON.stringify({ worksheetId: "sheet-1", address: "A1" });
    const entry = { messageCategory: 65_536, messageType: EVENTS[event], targetId: "Workbook", message };
    this.#library._testTriggerRichApiMessageEvent({ entries: [entry] });
    await this.settled();
  }

  /** The events Excel has been asked to tell of. */
  watched(): readonly string[] {
    return [...this.#watched];
  }

  /** Waits until nothing is under way any more. */
  async settled(): Promise<void> {
    for (let i = 0; i < 5; i += 1) await new Promise((resolve) => setTimeout(resolve, 0));
  }

  sheet(name: string): MemorySheet {
    const found = this.sheets.find((sheet) => sheet.name === name);
    if (found === undefined) throw new Error(`no sheet ${name}`);
    return found;
  }

  /** The whole workbook as text, to be compared. */
  snapshot(): string {
    const { sheets, active, xmlParts } = this;
    return JSON.stringify({ sheets, active, xmlParts, protected: [...this.protected] });
  }

  #answer({ ObjectPaths, Actions }: OfficeRequest): OfficeAnswer {
    // The library lets go of its ranges once a run is over; nobody waits for that.
    if (Actions.some(({ Name }) => Name === "_RemoveReference")) return done(Actions);
    this.syncs.push(Actions.length);
    this.kinds.push(Actions.map((action) => kindOf(action, ObjectPaths)));
    this.onSync?.(this.syncs.length);
    const fault = this.fault?.sync === this.syncs.length ? this.fault.at : undefined;
    if (fault === "before") return lost();
    const known = new Map<number, Node>();
    const resolve = (id: number): Node => {
      const done = known.get(id);
      if (done !== undefined) return done;
      const path = ObjectPaths[id];
      if (path === undefined) throw new Error(`the request names object ${id} and does not say what it is`);
      const { ObjectPathType, ParentObjectPathId, Name, ArgumentInfo } = path;
      const args = this.#argumentsOf(ArgumentInfo, resolve);
      const node = ((): Node => {
        if (ObjectPathType === ROOT) return { kind: "workbook" };
        if (ObjectPathType === REFERENCE) return this.#kept(Name);
        if (ObjectPathType === NOTHING) return { kind: "missing" };
        return this.#step(resolve(ParentObjectPathId as number), Name, args);
      })();
      known.set(id, node);
      return node;
    };
    const Results: object[] = [];
    for (const [index, action] of Actions.entries()) {
      try {
        if (fault === index) throw problem("GeneralException", "made to fail");
        Results.push({ ActionId: action.Id, Value: this.#act(action, resolve) });
      } catch (thrown) {
        const { Code, Message } = thrown as Partial<RequestFault>;
        const stopped = { Code: Code ?? "TestHost", Message: Message ?? String(thrown), ActionIndex: index };
        return { ErrorCode: "", ErrorMessage: "", Headers: {}, Body: { Results, Error: stopped } };
      }
    }
    if (fault === "after") return lost();
    return { ErrorCode: "", ErrorMessage: "", Headers: {}, Body: { Results } };
  }

  /** Cells that the library asked to be kept from one round trip to the next. */
  #kept(reference: string): Node {
    const [id, ref] = reference.split("!");
    const sheet = this.sheets.find((each) => each.id === id);
    if (sheet === undefined || ref === undefined) throw problem("ItemNotFound", `nothing kept as ${reference}`);
    return { kind: ref.includes(",") ? "areas" : "range", sheet, ref };
  }

  /** Arguments; where one is an object of the library, the object it names. */
  #argumentsOf(info: Action["ArgumentInfo"], resolve: (id: number) => Node): readonly unknown[] {
    const references = info?.ReferencedObjectPathIds;
    return (info?.Arguments ?? []).map((value, i) => {
      const reference = references?.[i];
      return typeof reference === "number" && reference > 0 ? resolve(reference) : value;
    });
  }

  #act(action: Action, resolve: (id: number) => Node): unknown {
    if (action.ActionType === TRACE) return null;
    const node = resolve(action.ObjectPathId);
    const args = this.#argumentsOf(action.ArgumentInfo, resolve);
    switch (action.ActionType) {
      case 1:
        return node.kind === "missing" ? null : identity(node);
      case 2:
        return this.#query(node, action.QueryInfo?.Select ?? []);
      case 3:
        if (node.kind === "xmlPart") return this.#doXml(node.part, action.Name);
        this.#do(node, action.Name, args);
        return null;
      case 4:
        this.#set(node, action.Name, args[0]);
        return null;
      default:
        throw unknown(`action type ${action.ActionType} ${action.Name}`);
    }
  }

  #step(parent: Node, name: string, args: readonly unknown[]): Node {
    const member = `${parent.kind}.${lower(name)}`;
    if (member === "workbook.worksheets") return { kind: "worksheets" };
    if (member === "workbook.customXmlParts") return { kind: "xmlParts" };
    if (parent.kind === "xmlParts") return this.#stepFromXmlParts(name, args);
    if (parent.kind === "worksheets") return this.#stepFromSheets(name, args);
    if (parent.kind === "bag") return bagIn(parent, name, args);
    if (!("sheet" in parent)) throw unknown(member);
    const { sheet } = parent;
    switch (member) {
      case "sheet.charts":
      case "sheet.protection":
      case "sheet.names":
      case "sheet.freezePanes":
      case "sheet.pageLayout":
      case "sheet.shapes":
        return { kind: lower(name) as SheetPart, sheet };
      case "sheet.horizontalPageBreaks":
        return { kind: "breaks", sheet };
      case "shapes.addImage": {
        if (!/^[A-Za-z0-9+/]+=*$/.test(String(args[0]))) throw problem("InvalidArgument", "no base64 text");
        const picture = { base64: String(args[0]), set: {} };
        sheet.pictures.push(picture);
        return { kind: "bag", path: "shape", set: (key, value) => assign(picture.set, key, value) };
      }
      case "breaks.add":
        sheet.breaks.push(String(args[0]));
        return { kind: "bag", path: "break", set: refuse };
      case "pageLayout.headersFooters":
        return { kind: "bag", path: "headersFooters", set: (key, value) => assign(sheet.set, key, value) };
      case "sheet.getRange":
        return { kind: "range", sheet, ref: checkedAddress(args[0]) };
      case "sheet.getRanges":
        return { kind: "areas", sheet, ref: checkedAddress(args[0]) };
      case "sheet.getCell":
        return { kind: "range", sheet, ref: cellAt(args[0], args[1]) };
      case "sheet.getUsedRange":
        return { kind: "range", sheet, ref: usedRange(sheet) ?? "A1" };
      case "sheet.getUsedRangeOrNullObject": {
        const ref = usedRange(sheet);
        return ref === undefined ? { kind: "missing" } : { kind: "range", sheet, ref };
      }
      case "names.add": {
        if (sheet.names[String(args[0])] !== undefined) throw problem("InvalidArgument", "name taken");
        sheet.names[String(args[0])] = refOf(args[1]);
        return { kind: "name", sheet, name: String(args[0]) };
      }
      case "names.getItemOrNullObject":
        if (sheet.names[String(args[0])] === undefined) return { kind: "missing" };
        return { kind: "name", sheet, name: String(args[0]) };
      case "names.":
      case "names.getItem":
        if (sheet.names[String(args[0])] === undefined) throw problem("ItemNotFound", `no name ${String(args[0])}`);
        return { kind: "name", sheet, name: String(args[0]) };
      case "name.getRange":
        return { kind: "range", sheet, ref: sheet.names[(parent as { name: string }).name] as string };
      default:
        return this.#stepFromPart(parent, member, args);
    }
  }

  #stepFromXmlParts(name: string, args: readonly unknown[]): Node {
    const given = String(args[0]);
    switch (lower(name)) {
      case "add": {
        const part = { id: `xml-${this.#next++}`, xml: given };
        this.xmlParts.push(part);
        return { kind: "xmlPart", part };
      }
      case "getByNamespace":
        return { kind: "xmlParts", namespace: given };
      case "": {
        const part = this.xmlParts.find(({ id }) => id === given);
        if (part === undefined) throw problem("ItemNotFound", `no XML part ${given}`);
        return { kind: "xmlPart", part };
      }
      default:
        throw unknown(`customXmlParts.${name}`);
    }
  }

  #doXml(part: XmlPart, name: string): unknown {
    if (lower(name) === "getXml") return part.xml;
    if (lower(name) !== "delete") throw unknown(`customXmlPart.${name}`);
    this.xmlParts.splice(this.xmlParts.indexOf(part), 1);
    return null;
  }

  #stepFromSheets(name: string, args: readonly unknown[]): Node {
    const key = String(args[0]);
    const found = this.sheets.find((sheet) => sheet.id === key || sheet.name.toLowerCase() === key.toLowerCase());
    switch (lower(name)) {
      case "getActiveWorksheet":
        return { kind: "sheet", sheet: this.sheets.find(({ id }) => id === this.active) as MemorySheet };
      case "add": {
        if (found !== undefined) throw problem("ItemAlreadyExists", `there is a sheet ${key}`);
        if (key.length > 31) throw problem("InvalidArgument", "sheet name too long");
        const sheet = memorySheet(`sheet-${this.#next++}`, key);
        this.sheets.push(sheet);
        return { kind: "sheet", sheet };
      }
      case "getItemOrNullObject":
        return found === undefined ? { kind: "missing" } : { kind: "sheet", sheet: found };
      case "":
      case "getItem":
        if (found === undefined) throw problem("ItemNotFound", `no sheet ${key}`);
        return { kind: "sheet", sheet: found };
      default:
        throw unknown(`worksheets.${name}`);
    }
  }

  #stepFromPart(parent: Node & { readonly sheet: MemorySheet }, member: string, args: readonly unknown[]): Node {
    const { sheet } = parent;
    const ref = "ref" in parent ? parent.ref : "";
    switch (member) {
      case "range.format":
      case "areas.format":
        return {
          kind: "bag",
          path: "format",
          set: (key, value) => {
            for (const area of ref.split(",")) assign(slot(sheet.formats, area), key, value);
          },
        };
      // Large arrays are sent in pieces of so many rows.
      case "range.getRow": {
        const { top, left, right } = boxOf(ref);
        const row = top + Number(args[0]);
        return { kind: "range", sheet, ref: rangeOf({ top: row, left, bottom: row, right }) };
      }
      case "range.getBoundingRect": {
        const [one, other] = [boxOf(ref), boxOf(refOf(args[0]))];
        const all = {
          top: Math.min(one.top, other.top),
          left: Math.min(one.left, other.left),
          bottom: Math.max(one.bottom, other.bottom),
          right: Math.max(one.right, other.right),
        };
        return { kind: "range", sheet, ref: rangeOf(all) };
      }
      case "range.dataValidation":
        return { kind: "validation", sheet, ref };
      case "range.conditionalFormats":
        return { kind: "rules", sheet, ref };
      case "rules.add": {
        if (args[0] !== "Custom") throw unknown(`a rule of type ${String(args[0])}`);
        const rule = { ref, set: {} };
        sheet.rules.push(rule);
        return { kind: "bag", path: "conditionalFormat", set: (key, value) => assign(rule.set, key, value) };
      }
      case "charts.add": {
        const series = Array.from({ length: this.guessedSeries }, (_, i) => ({ name: `Series${i + 1}`, set: {} }));
        const chart = { id: `chart-${this.#next++}`, series, set: { type: args[0] } };
        if (refOf(args[1]) === "" || args[2] !== "Columns") throw problem("InvalidArgument", "chart source");
        sheet.charts.push(chart);
        return { kind: "chart", sheet, chart };
      }
      case "charts.": {
        const chart = sheet.charts.find(({ id }) => id === args[0]);
        if (chart === undefined) throw problem("ItemNotFound", `no chart ${String(args[0])}`);
        return { kind: "chart", sheet, chart };
      }
      default:
        return stepFromChart(parent, member, args);
    }
  }

  #query(node: Node, select: readonly string[]): unknown {
    if (node.kind === "missing") return null;
    if (node.kind === "worksheets") {
      return { _Items: this.sheets.map(({ id, name }) => ({ Id: id, Name: name })) };
    }
    if (node.kind === "xmlParts") {
      const own = this.xmlParts.filter(({ xml }) => xml.includes(`xmlns="${node.namespace ?? ""}"`));
      return { _Items: own.map(({ id }) => ({ Id: id })) };
    }
    if (node.kind === "names") {
      const items = Object.entries(node.sheet.names);
      const formula = (ref: string): string => `=${quotedSheetName(node.sheet.name)}!${absolute(ref)}`;
      return { _Items: items.map(([name, ref]) => ({ Name: name, Formula: formula(ref) })) };
    }
    const wanted = select.filter((name) => !name.startsWith("$"));
    return { ...identity(node), ...Object.fromEntries(wanted.map((name) => [upper(name), this.#read(node, name)])) };
  }

  #read(node: Node, name: string): unknown {
    const member = `${node.kind}.${lower(name)}`;
    if (node.kind === "sheet") {
      if (member === "sheet.name") return node.sheet.name;
      if (member === "sheet.id") return node.sheet.id;
    }
    if (node.kind === "name" && member === "name.name") return node.name;
    if (member === "seriesList.count" && node.kind === "seriesList") return node.chart.series.length;
    if (node.kind !== "range") throw unknown(`reading ${member}`);
    const cells = cellsOf(boxOf(node.ref));
    switch (member) {
      case "range.formulas":
        return cells.map((row) => row.map((at) => node.sheet.cells[at] ?? ""));
      case "range.values": {
        const busy = this.busy > 0;
        if (busy) this.busy -= 1;
        return cells.map((row) => row.map((at) => (busy ? "#BUSY!" : this.#valueAt(node.sheet, at))));
      }
      case "range.valueTypes":
        return cells.map((row) => row.map((at) => typeOf(this.#valueAt(node.sheet, at))));
      case "range.rowIndex":
        return boxOf(node.ref).top;
      case "range.columnIndex":
        return boxOf(node.ref).left;
      case "range.left":
        return boxOf(node.ref).left * CELL.width;
      case "range.top":
        return boxOf(node.ref).top * CELL.height;
      case "range.width":
        return (cells[0]?.length ?? 0) * CELL.width;
      case "range.height":
        return cells.length * CELL.height;
      default:
        throw unknown(`reading ${member}`);
    }
  }

  #valueAt(sheet: MemorySheet, at: string): unknown {
    const held = sheet.cells[at] ?? "";
    return typeof held === "string" && held.startsWith("=") && held in this.answers ? this.answers[held] : held;
  }

  #do(node: Node, name: string, args: readonly unknown[]): void {
    const member = `${node.kind}.${lower(name)}`;
    const event = /^_(Unr|R)egister(\w+)Event$/.exec(name);
    if (node.kind === "worksheets" && event !== null) {
      if (event[1] === "R") this.#watched.add(event[2] as string);
      else this.#watched.delete(event[2] as string);
      return;
    }
    // The library asks so before it sends many cells.
    if (name === "_KeepReference" || name === "_ValidateArraySize") return;
    if (node.kind === "series") {
      if (member === "series.setValues") node.series.y = refFrom(node.sheet, args[0]);
      else if (member === "series.setXAxisValues") node.series.x = refFrom(node.sheet, args[0]);
      else if (member === "series.delete") node.chart.series.splice(node.chart.series.indexOf(node.series), 1);
      else throw unknown(member);
      return;
    }
    if (node.kind === "chart" && member === "chart.setPosition") {
      node.chart.position = args;
      return;
    }
    if (!("sheet" in node)) throw unknown(member);
    const { sheet } = node;
    if (member === "range.merge" && "ref" in node) sheet.merges.push(node.ref);
    else if (member === "sheet.activate") this.active = sheet.id;
    else if (member === "sheet.delete") this.#delete(sheet);
    else if (member === "protection.protect") this.#protect(sheet);
    else if (member === "freezePanes.freezeRows") sheet.set["freezeRows"] = args[0];
    else if (member === "pageLayout.setPrintArea") sheet.set["printArea"] = checkedAddress(args[0]);
    else if (member === "pageLayout.setPrintMargins") sheet.set["margins"] = { unit: args[0], ...(args[1] as object) };
    else if (member === "pageLayout.setPrintTitleRows") sheet.set["titleRows"] = args[0];
    else throw unknown(member);
  }

  /** As Excel does, in every formula of the workbook; what stands between quotes is no reference. */
  #rename(sheet: MemorySheet, name: string): void {
    const old = `${quotedSheetName(sheet.name)}!`;
    for (const { cells } of this.sheets) {
      for (const [at, held] of Object.entries(cells)) {
        if (typeof held !== "string" || !held.startsWith("=")) continue;
        const parts = held.split(/("(?:[^"]|"")*")/);
        cells[at] = parts
          .map((part, i) => (i % 2 === 0 ? part.replaceAll(old, `${quotedSheetName(name)}!`) : part))
          .join("");
      }
    }
    sheet.name = name;
  }

  #protect(sheet: MemorySheet): void {
    if (this.protected.has(sheet.name)) throw problem("InvalidOperation", "the sheet is protected already");
    this.protected.add(sheet.name);
    sheet.set["isProtected"] = true;
  }

  #delete(sheet: MemorySheet): void {
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    this.protected.delete(sheet.name);
    if (this.active === sheet.id) this.active = this.sheets[0]?.id ?? "";
  }

  #set(node: Node, name: string, value: unknown): void {
    const key = lower(name);
    const member = `${node.kind}.${key}`;
    if (node.kind === "bag") {
      const allowed = SETTINGS[node.path.split(".").at(-1) as string];
      if (allowed?.includes(key) !== true) throw unknown(`setting ${node.path}.${key}`);
      node.set(key, value);
    } else if (node.kind === "sheet" && member === "sheet.name") {
      const taken = this.sheets.some(
        (sheet) => sheet !== node.sheet && sheet.name.toLowerCase() === String(value).toLowerCase(),
      );
      if (taken) throw problem("ItemAlreadyExists", `there is a sheet ${String(value)}`);
      this.#rename(node.sheet, String(value));
    } else if (node.kind === "sheet" && member === "sheet.gridlines") node.sheet.set["gridlines"] = value;
    else if (node.kind === "pageLayout" && ["orientation", "paperSize", "zoom"].includes(key))
      node.sheet.set[key] = value;
    else if (node.kind === "validation" && ["rule", "errorAlert", "prompt"].includes(key)) {
      slot(node.sheet.lists, node.ref)[key] = value;
    } else if (node.kind === "series" && SERIES_SETTINGS.includes(key)) node.series.set[key] = value;
    else if (node.kind === "range") this.#fillRange(node.sheet, node.ref, key, value);
    else throw unknown(`setting ${member}`);
  }

  #fillRange(sheet: MemorySheet, ref: string, key: string, value: unknown): void {
    if (this.protected.has(sheet.name)) throw problem("AccessDenied", "the sheet is protected");
    const cells = cellsOf(boxOf(ref));
    const rows = value as readonly (readonly unknown[])[];
    if (rows.length !== cells.length || rows.some((row, i) => row.length !== cells[i]?.length)) {
      throw problem("InvalidArgument", "rows or columns do not match the range");
    }
    for (const [i, row] of cells.entries()) {
      for (const [j, at] of row.entries()) {
        const given = rows[i]?.[j];
        if (given === null || given === undefined) continue;
        if (key === "numberFormat") assign(slot(sheet.formats, at), "numberFormat", given);
        else if (key === "formulas" || key === "values") {
          const held = asTyped(given as number | string | boolean);
          this.entered.push(`${sheet.name}!${at}`);
          if (held === undefined) delete sheet.cells[at];
          else sheet.cells[at] = held;
        } else throw unknown(`setting range.${key}`);
      }
    }
  }
}

const SERIES_SETTINGS: readonly string[] = [
  "chartType",
  "axisGroup",
  "markerStyle",
  "markerSize",
  "markerBackgroundColor",
  "markerForegroundColor",
];

function stepFromChart(parent: Node & { readonly sheet: MemorySheet }, member: string, args: readonly unknown[]): Node {
  if (!("chart" in parent)) throw unknown(member);
  const { sheet, chart } = parent;
  const bag = (path: string): Node => ({
    kind: "bag",
    path,
    set: (key, value) => assign(chart.set, `${path}.${key}`, value),
  });
  switch (member) {
    case "chart.series":
      return { kind: "seriesList", sheet, chart };
    case "chart.title":
      return bag("title");
    case "chart.legend":
      return bag("legend");
    case "chart.axes":
      return { kind: "axes", sheet, chart };
    case "axes.valueAxis":
    case "axes.categoryAxis":
      return bag(member.replace("axes.", ""));
    case "axes.getItem": {
      const drawn = chart.series.some(({ set }) => set["axisGroup"] === args[1]);
      if (!drawn) throw problem("ItemNotFound", "no series is on that axis");
      return bag(`${String(args[0])} ${String(args[1])}`);
    }
    case "seriesList.add": {
      const series = { name: String(args[0]), set: {} };
      chart.series.push(series);
      return { kind: "series", sheet, chart, series };
    }
    case "seriesList.getItemAt": {
      const series = chart.series[Number(args[0])];
      if (series === undefined) throw problem("ItemNotFound", `no series ${String(args[0])}`);
      return { kind: "series", sheet, chart, series };
    }
    case "series.format": {
      const { series } = parent as { readonly series: MemorySeries };
      return { kind: "bag", path: "format", set: (key, value) => assign(series.set, key, value) };
    }
    default:
      throw unknown(member);
  }
}

/** Parts of parts: the font of a format, the title of an axis. Settings keep the way they came. */
function bagIn(parent: Node & { readonly kind: "bag" }, name: string, args: readonly unknown[]): Node {
  const member = lower(name);
  const within = (path: string, prefix: string): Node => ({
    kind: "bag",
    path,
    set: (key, value) => parent.set(`${prefix}.${key}`, value),
  });
  switch (member) {
    case "font":
    case "fill":
    case "protection":
    case "line":
    case "rule":
    case "title":
    case "format":
    case "borders":
      return within(member, member);
    case "custom":
      return { ...parent, path: "custom" };
    case "defaultForAllPages":
      return { ...parent, path: "margins" };
    case "":
    case "getItem":
      if (!/^(Edge|Inside|Diagonal)/.test(String(args[0])))
        throw problem("InvalidArgument", `border ${String(args[0])}`);
      return within("border", String(args[0]));
    default:
      throw unknown(`${parent.path}.${member}`);
  }
}

/** What the library needs to find an object again in a later request. */
function identity(node: Node): Record<string, unknown> {
  if (node.kind === "sheet") return { Id: node.sheet.id };
  if (node.kind === "chart") return { Id: node.chart.id };
  if (node.kind === "xmlPart") return { Id: node.part.id };
  if (node.kind === "range" || node.kind === "areas") return { _ReferenceId: `${node.sheet.id}!${node.ref}` };
  return {};
}

function assign(target: Record<string, unknown>, key: string, value: unknown): void {
  if (value === undefined || value === null) throw problem("InvalidArgument", `${key} cannot be nothing`);
  target[key] = value;
}

/** The settings kept under a key, begun where there are none. */
function slot(kept: Record<string, Record<string, unknown>>, key: string): Record<string, unknown> {
  kept[key] ??= {};
  return kept[key];
}

function refuse(key: string): void {
  throw unknown(`setting ${key}`);
}

function checkedAddress(given: unknown): string {
  const address = String(given);
  if (address.length > LONGEST_ADDRESS) throw problem("InvalidArgument", "address too long");
  for (const area of address.split(",")) {
    if (/^\$?\d+:\$?\d+$/.test(area) || /^[A-Z]{1,3}:[A-Z]{1,3}$/.test(area)) continue;
    try {
      boxOf(area);
    } catch {
      throw problem("InvalidArgument", `address ${area}`);
    }
  }
  return address;
}

function cellAt(row: unknown, column: unknown): string {
  const [top, left] = [Number(row), Number(column)];
  return rangeOf({ top, left, bottom: top, right: left }).split(":")[0] as string;
}

function refOf(value: unknown): string {
  return typeof value === "object" && value !== null && "ref" in value ? String(value.ref) : String(value ?? "");
}

/** A range as a chart of a sheet has it: the identity of its own sheet before it where that is another. */
function refFrom(sheet: MemorySheet, value: unknown): string {
  const node = value as { readonly sheet?: MemorySheet };
  return node.sheet === undefined || node.sheet === sheet ? refOf(value) : `${node.sheet.id}!${refOf(value)}`;
}

function typeOf(value: unknown): string {
  if (value === "") return "Empty";
  if (typeof value === "string") return value.startsWith("#") ? "Error" : "String";
  return typeof value === "number" ? "Double" : "Boolean";
}

function kindOf({ ActionType, Name, ObjectPathId }: Action, paths: OfficeRequest["ObjectPaths"]): string {
  // An object only named is of the kind of what is done with it.
  if (ActionType === 1 || ActionType === TRACE) return "named";
  const names = [`${Name} ${ActionType}`];
  for (let path = paths[ObjectPathId]; path !== undefined; path = paths[path.ParentObjectPathId ?? -1])
    names.unshift(path.Name);
  return names.filter((name) => name !== "").join(".");
}

function done(actions: readonly Action[]): OfficeAnswer {
  const Results = actions.map(({ Id }) => ({ ActionId: Id, Value: null }));
  return { ErrorCode: "", ErrorMessage: "", Headers: {}, Body: { Results } };
}

function lost(): OfficeAnswer {
  return { ErrorCode: "GeneralException", ErrorMessage: "the connection is gone", Headers: {}, Body: null };
}

function problem(Code: string, Message: string): RequestFault {
  return { Code, Message };
}

function unknown(what: string): RequestFault {
  return problem("ApiNotFound", `the workbook in memory does not know ${what}`);
}

/** The library names members in either case. */
function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function upper(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
