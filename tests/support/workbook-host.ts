import { BAG, setInBag } from "./excel/bags.ts";
import { AREAS, RANGE } from "./excel/cells.ts";
import { AXES, CHART, CHARTS, SERIES, SERIES_LIST } from "./excel/charts.ts";
import { LIMITS } from "./excel/limits.ts";
import { NAME, NAMES } from "./excel/names.ts";
import type { Book, Members, Node, XmlPart } from "./excel/node.ts";
import { BREAKS, HEADERS_FOOTERS, MARGINS, PAGE_LAYOUT } from "./excel/pages.ts";
import { type ProblemCode, problem, type RequestProblem, unknown } from "./excel/problems.ts";
import { PROTECTION } from "./excel/protection.ts";
import { RULES, VALIDATION } from "./excel/rules.ts";
import { FREEZE_PANES, SHAPES, SHEET, WORKSHEETS } from "./excel/sheets.ts";
import { APPLICATION, WORKBOOK, XML_PART, XML_PARTS } from "./excel/workbook.ts";
import { type MemorySheet, memorySheet } from "./memory-sheet.ts";
import { type Action, type OfficeAnswer, type OfficeRequest, officePage, type SentAs } from "./office-library.ts";

/** Where a request is made to fail: at one of its actions, or whole, before or after Excel has carried it out. */
export interface PlannedFault {
  readonly sync: number;
  readonly at: number | "before" | "after";
  /** GeneralException where left out. */
  readonly code?: ProblemCode;
}

/** The library's own ways in for tests. */
interface InnerLibrary {
  readonly CommonUtility: { _doApiNotSupportedCheck: boolean };
  readonly _testSetRichApiMessageReadyImpl: (ready: () => Promise<void>) => void;
  readonly _testTriggerRichApiMessageEvent: (message: { readonly entries: readonly object[] }) => void;
}

/** Excel's numbers for the events. */
const EVENTS = { onCalculated: 16, onChanged: 10 } as const;

// Kinds of object path that do not step on from a parent.
const ROOT = 1;
const REFERENCE = 6;
const NOTHING = 7;

/** Kinds of action: what is only named, read, called, set; and one that only marks a place in the answer. */
const NAMED = 1;
const QUERY = 2;
const CALL = 3;
const SET = 4;
const TRACE = 5;

/** The library marks a request that may wait until a cell is no longer being edited. */
const MAY_WAIT = 64;

const MEMBERS: { readonly [K in Node["kind"]]: Members<K> } = {
  workbook: WORKBOOK,
  application: APPLICATION,
  worksheets: WORKSHEETS,
  missing: {},
  xmlParts: XML_PARTS,
  xmlPart: XML_PART,
  sheet: SHEET,
  protection: PROTECTION,
  charts: CHARTS,
  names: NAMES,
  name: NAME,
  freezePanes: FREEZE_PANES,
  pageLayout: PAGE_LAYOUT,
  headersFooters: HEADERS_FOOTERS,
  margins: MARGINS,
  breaks: BREAKS,
  shapes: SHAPES,
  range: RANGE,
  areas: AREAS,
  validation: VALIDATION,
  rules: RULES,
  chart: CHART,
  seriesList: SERIES_LIST,
  axes: AXES,
  series: SERIES,
  bag: BAG,
};

/**
 * A workbook in memory behind the maker's own Excel library: the library makes the requests, this answers them, action
 * by action, and stops at the first that fails, leaving what came before, as Excel does. What it does not know it
 * refuses, and what Excel would not take it refuses with Excel's code. What each object does stands under `excel/`.
 */
export class WorkbookHost implements Book {
  readonly Excel: typeof Excel;
  readonly sheets: MemorySheet[] = [memorySheet("sheet-1", "Sheet1")];
  readonly xmlParts: XmlPart[] = [];
  active = "sheet-1";
  selected = "A1";
  isStructureProtected = false;
  calculationMode: Book["calculationMode"] = "Automatic";
  /** Round trips so far, and how many actions each carried. */
  readonly syncs: number[] = [];
  /** What the actions of each round trip were, by the members they went through: "worksheets.add". */
  readonly kinds: (readonly string[])[] = [];
  fault: PlannedFault | undefined;
  /** Called as each round trip arrives, with its number. */
  onSync: ((sync: number) => void) | undefined;
  readonly protected = new Set<string>();
  busy = 0;
  guessedSeries = 2;
  /** What formulas answer, by their text. */
  readonly answers: Record<string, unknown> = {};
  /** What a formula of a cell answers, where its text alone does not say. */
  worksOut: (sheet: string, at: string) => unknown = () => undefined;
  readonly entered: string[] = [];
  showsAnchorInSpill = false;
  readonly events = new Set<string>();
  /** Whether this Excel has a requirement set; one that has it not knows nothing of its members. */
  supports: (set: string, version: string) => boolean = () => true;
  /** Bytes a request, and an answer, may have. */
  payload: number = LIMITS.payload;
  readonly #library: InnerLibrary;
  #editing: Promise<void> | undefined;
  #endEditing: () => void = () => undefined;
  #next = 2;

  constructor() {
    const window = officePage(["excel-web-16.00.js"], (request, sent) => this.#answer(request, sent));
    const library = window as unknown as { readonly Excel: typeof Excel; readonly OfficeExtension: InnerLibrary };
    const isSetSupported = (set: string, version = "1.1"): boolean => this.supports(set, String(version));
    Object.assign(window, { Office: { context: { requirements: { isSetSupported } } } });
    this.Excel = library.Excel;
    this.#library = library.OfficeExtension;
    // Excel answers so for a member it has not; the library knows which set each came with.
    this.#library.CommonUtility._doApiNotSupportedCheck = true;
    this.#library._testSetRichApiMessageReadyImpl(() => Promise.resolve());
  }

  readonly newId = (kind: string): string => `${kind}-${this.#next++}`;

  readonly answerOf = (sheet: string, at: string, formula: string): unknown =>
    this.answers[formula] ?? this.worksOut(sheet, at);

  /** The user begins to edit a cell: requests are refused, or wait where they say that they may. */
  editCell(): void {
    this.#editing = new Promise((resolve) => {
      this.#endEditing = resolve;
    });
  }

  leaveCell(): void {
    this.#editing = undefined;
    this.#endEditing();
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
    return [...this.events];
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

  #answer(request: OfficeRequest, { bytes, flags }: SentAs): OfficeAnswer | Promise<OfficeAnswer> {
    const { Actions, ObjectPaths } = request;
    // The library lets go of its ranges once a run is over; nobody waits for that.
    const isLettingGo = Actions.every(({ Name, ActionType }) => ActionType === NAMED || Name === "_RemoveReference");
    if (isLettingGo) return this.#carryOut(request, undefined);
    if (this.#editing !== undefined) {
      if ((flags & MAY_WAIT) === 0)
        return stoppedAt(0, problem("InvalidOperationInCellEditMode", "a cell is being edited"));
      return this.#editing.then(() => this.#answer(request, { bytes, flags }));
    }
    this.syncs.push(Actions.length);
    this.kinds.push(Actions.map((action) => kindOf(action, ObjectPaths)));
    this.onSync?.(this.syncs.length);
    if (bytes > this.payload) return lost("RequestPayloadSizeLimitExceeded", `${bytes} bytes`);
    const fault = this.fault?.sync === this.syncs.length ? this.fault : undefined;
    if (fault?.at === "before") return lost(fault.code);
    const answer = this.#carryOut(request, fault);
    if (fault?.at === "after") return lost(fault.code);
    const size = JSON.stringify(answer.Body).length;
    return size > this.payload ? lost("ResponsePayloadSizeLimitExceeded", `${size} bytes`) : answer;
  }

  #carryOut({ ObjectPaths, Actions }: OfficeRequest, fault: PlannedFault | undefined): OfficeAnswer {
    const known = new Map<number, Node>();
    const resolve = (id: number): Node => {
      const done = known.get(id);
      if (done !== undefined) return done;
      const path = ObjectPaths[id];
      if (path === undefined) throw new Error(`the request names object ${id} and does not say what it is`);
      const { ObjectPathType, ParentObjectPathId, Name, ArgumentInfo } = path;
      const args = argumentsOf(ArgumentInfo, resolve);
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
        if (fault?.at === index) throw problem(fault.code ?? "GeneralException", "made to fail");
        Results.push({ ActionId: action.Id, Value: this.#act(action, resolve) });
      } catch (thrown) {
        return stoppedAt(index, thrown as Partial<RequestProblem>, Results);
      }
    }
    return { ErrorCode: "", ErrorMessage: "", Headers: {}, Body: { Results } };
  }

  /** Cells that the library asked to be kept from one round trip to the next. */
  #kept(reference: string): Node {
    const [id, ref] = reference.split("!");
    const sheet = this.sheets.find((each) => each.id === id);
    if (sheet === undefined || ref === undefined) throw problem("ItemNotFound", `nothing kept as ${reference}`);
    return { kind: ref.includes(",") ? "areas" : "range", sheet, ref };
  }

  #act(action: Action, resolve: (id: number) => Node): unknown {
    if (action.ActionType === TRACE) return null;
    const node = resolve(action.ObjectPathId);
    if (node.kind === "missing") return null;
    const args = argumentsOf(action.ArgumentInfo, resolve);
    switch (action.ActionType) {
      case NAMED:
        return identity(node);
      case QUERY:
        return this.#query(node, action.QueryInfo?.Select ?? []);
      case CALL:
        return this.#call(node, action.Name, args);
      case SET:
        this.#set(node, action.Name, args[0]);
        return null;
      default:
        throw unknown(`action type ${action.ActionType} ${action.Name}`);
    }
  }

  #step(parent: Node, name: string, args: readonly unknown[]): Node {
    if (parent.kind === "missing") return parent;
    const step = membersOf(parent).steps?.[lower(name)];
    if (step === undefined) throw unknown(`${parent.kind}.${lower(name)}`);
    return step(parent as never, args, this);
  }

  #call(node: Node, name: string, args: readonly unknown[]): unknown {
    const event = /^_(Unr|R)egister(\w+)Event$/.exec(name);
    if (node.kind === "worksheets" && event !== null) {
      if (event[1] === "R") this.events.add(event[2] as string);
      else this.events.delete(event[2] as string);
      return null;
    }
    const call = membersOf(node).calls?.[lower(name)];
    if (call === undefined) throw unknown(`${node.kind}.${lower(name)}`);
    return call(node as never, args, this);
  }

  #set(node: Node, name: string, value: unknown): void {
    const key = lower(name);
    if (node.kind === "bag") {
      setInBag(node, key, value, this);
      return;
    }
    const set = membersOf(node).settings?.[key];
    if (set === undefined) throw unknown(`setting ${node.kind}.${key}`);
    set(node as never, value, this);
  }

  /** Only what was asked for: a member forgotten in a load is not there to be read. */
  #query(node: Node, select: readonly string[]): unknown {
    const { items, reads } = membersOf(node);
    const wanted = select.filter((name) => !name.startsWith("$"));
    if (items !== undefined) {
      const _Items = items(node as never, this).map(({ id, facts }) => ({
        _Id: id,
        ...Object.fromEntries(wanted.map((name) => [upper(name), known(facts, name, `${node.kind} items`)])),
      }));
      return { _Items };
    }
    const read = wanted.map((name): readonly [string, unknown] => {
      const one = reads?.[lower(name)];
      if (one === undefined) throw unknown(`reading ${node.kind}.${lower(name)}`);
      return [upper(name), one(node as never, this)];
    });
    return { ...identity(node), ...Object.fromEntries(read) };
  }
}

function membersOf(node: Node): Members<Node["kind"]> {
  return MEMBERS[node.kind] as Members<Node["kind"]>;
}

function known(facts: Readonly<Record<string, unknown>>, name: string, of: string): unknown {
  if (!(lower(name) in facts)) throw unknown(`reading ${of}.${lower(name)}`);
  return facts[lower(name)];
}

/** Arguments; where one is an object of the library, the object it names. */
function argumentsOf(info: Action["ArgumentInfo"], resolve: (id: number) => Node): readonly unknown[] {
  const references = info?.ReferencedObjectPathIds;
  return (info?.Arguments ?? []).map((value, i) => {
    const reference = references?.[i];
    return typeof reference === "number" && reference > 0 ? resolve(reference) : value;
  });
}

/** What the library needs to find an object again in a later request. */
function identity(node: Node): Record<string, unknown> {
  if (node.kind === "sheet") return { _Id: node.sheet.id };
  if (node.kind === "chart") return { Id: node.chart.id };
  if (node.kind === "xmlPart") return { Id: node.part.id };
  if (node.kind === "range" || node.kind === "areas") return { _ReferenceId: `${node.sheet.id}!${node.ref}` };
  return {};
}

function kindOf({ ActionType, Name, ObjectPathId }: Action, paths: OfficeRequest["ObjectPaths"]): string {
  // An object only named is of the kind of what is done with it.
  if (ActionType === NAMED || ActionType === TRACE) return "named";
  const names = [`${Name} ${ActionType}`];
  for (let path = paths[ObjectPathId]; path !== undefined; path = paths[path.ParentObjectPathId ?? -1])
    names.unshift(path.Name);
  return names.filter((name) => name !== "").join(".");
}

function stoppedAt(
  ActionIndex: number,
  { Code, Message }: Partial<RequestProblem>,
  Results: object[] = [],
): OfficeAnswer {
  const stopped = { Code: Code ?? "TestHost", Message: Message ?? "the workbook in memory failed", ActionIndex };
  return { ErrorCode: "", ErrorMessage: "", Headers: {}, Body: { Results, Error: stopped } };
}

function lost(code: ProblemCode = "GeneralException", detail = "the connection is gone"): OfficeAnswer {
  return { ErrorCode: code, ErrorMessage: problem(code, detail).Message, Headers: {}, Body: null };
}

/** The library names members in either case. */
function lower(name: string): string {
  return name.startsWith("_") ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

function upper(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
