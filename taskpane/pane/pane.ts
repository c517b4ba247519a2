import { html, nothing, render } from "lit";
import { type DutyText, EMPTY_DUTY } from "../../shared/duty/duty-text.ts";
import { failureText } from "../../shared/ports/host-fault.ts";
import type { SheetHost } from "../../shared/ports/sheet-host.ts";
import { findingText } from "../../shared/text/finding-text.ts";
import { part } from "../part.ts";
import { widthsIn } from "./columns.ts";
import type { PaneContext } from "./context.ts";
import { headWorkedOut, type WorkedOut } from "./head-worked.ts";
import { showHelpLine, tellHeights } from "./help-line.ts";
import { inBrief } from "./in-brief.ts";
import { type Later, loadLaterPart } from "./later/later.ts";
import { recentDuties } from "./recent.ts";
import { keepDuty, keptDuty, putAside } from "./remember.ts";
import { type BrokenFormulas, type FunctionRepair, repairWords } from "./repair.ts";
import { STAGES } from "./stages.ts";
import { next, openingState, type PaneEvent, type PaneState } from "./state.ts";
import { loadParser, sumsWith } from "./sums.ts";
import { failedView } from "./views/failed.ts";
import { notKnownView, unkeptView } from "./views/file-bar.ts";
import { footBarView } from "./views/foot-bar.ts";
import { paneHeadView } from "./views/pane-head.ts";
import { phoneLineView } from "./views/phone-line.ts";
import { repairView } from "./views/repair.ts";
import { broughtWords, sheetDutiesView } from "./views/sheet-duties.ts";
import { stageView } from "./views/stage.ts";
import { welcomeView } from "./views/welcome.ts";
import "./pane.css";

/** A pause in typing, or in calculating, after which the screen reader is told how the duty stands, or the sheets are read, ms. */
const PAUSE = 1200;

/** Boxes whose text is no part of the duty: stepping back in them is not stepping back in it. */
const NOT_OF_THE_DUTY = ".phone-line, .places, .tracing";

const PUT_ASIDE =
  "The duty kept from last time could not be shown and is put aside. “Save the duty put aside” hands it to you as a file; please report it.";

export interface PaneServices {
  /** Without one the pane works out everything but writes no sheet. */
  readonly host: SheetHost | undefined;
  /** Where the host may have read formulas before it knew their functions. */
  readonly repair?: FunctionRepair;
  /** The duty to open with, in place of the one kept last. */
  readonly opening?: DutyText | undefined;
  /** Told of each change of the duty. */
  readonly onDuty?: (duty: DutyText) => void;
  /** Folder of the help pages, where it is not beside the page. */
  readonly help?: string;
}

/** A pane in its place. */
export interface Pane {
  /** Enters formulas again that show an unknown name, and says what came of it. */
  readonly repairFunctions: () => Promise<void>;
}

/** Puts the side pane into an element. */
export function mountPane(root: HTMLElement, services: PaneServices): Pane {
  let state = services.opening === undefined ? stateKept() : openingState(services.opening);
  let announcement = "";
  let hasFailed = false;
  let later: Later = "loading";
  /** What is to have the focus once it is there. */
  let awaited: string | undefined;
  let pause: ReturnType<typeof setTimeout> | undefined;
  const pane = document.createElement("div");
  pane.className = "duty-pane";
  root.replaceChildren(pane);
  let page = freshPage();
  const sums = sumsWith(loadParser, settleNow);

  /** What was waited for may be worked out. */
  function settleNow(): void {
    const before = state;
    state = settled(state);
    if (state === before || !draw()) return;
    keep();
    if (state.duty !== before.duty) services.onDuty?.(state.duty);
  }

  /** A page that no earlier drawing has a hold on. */
  function freshPage(): HTMLElement {
    const fresh = document.createElement("div");
    pane.replaceChildren(fresh);
    return fresh;
  }

  function send(event: PaneEvent): void {
    const before = state;
    state = settled(next(state, event));
    if (state === before) return;
    const isChanged = state.duty !== before.duty;
    if (isChanged) {
      // What was announced, or was to be, is of the duty before.
      clearTimeout(pause);
      announcement = "";
    }
    if (!draw()) return;
    // A stage is read from its top.
    if (state.stage !== before.stage) pane.scrollIntoView({ block: "start" });
    if (!isChanged) return;
    keep();
    services.onDuty?.(state.duty);
    pause = setTimeout(announce, PAUSE);
  }

  /** The state with its sums worked out, unless that has to be waited for. */
  function settled(found: PaneState): PaneState {
    const all = sums(found.duty);
    return all === undefined ? found : next(found, { type: "sums-settled", settled: all });
  }

  function keep(): void {
    send({ type: "kept", isKept: keepDuty(state.duty) });
  }

  function announce(): void {
    announcement = inBrief(worked(), state.duty.unitSet).join(". ");
    draw();
  }

  /** As much of the duty as can be worked out with what is loaded. */
  function worked(): WorkedOut {
    return typeof later === "string" ? headWorkedOut(state.duty) : later.workedOut(state.duty);
  }

  function goTo(id: string): void {
    for (const { key: stage, steps } of STAGES) {
      const step = steps.find(
        ({ key, holds }) => id === `duty-step-${key}` || holds?.some((place) => id.startsWith(`duty-${place}`)),
      );
      if (step === undefined) continue;
      send({ type: "stage-shown", stage });
      send({ type: "step-toggled", step: step.key, open: true });
    }
    awaited = later === "loading" && document.getElementById(id) === null ? id : undefined;
    focusOn(id);
  }

  function focusOn(id: string): void {
    const target = document.getElementById(id);
    for (let fold = target?.closest("details"); fold; fold = fold.parentElement?.closest("details")) fold.open = true;
    const focusable = target instanceof HTMLDetailsElement ? target.querySelector("summary") : target;
    focusable?.focus();
  }

  /** Loads what the first screen does without; where that cannot be had, the steps that need it say so. */
  async function loadLater(): Promise<void> {
    if (later === "failed") {
      later = "loading";
      draw();
    }
    later = await loadLaterPart();
    show();
    if (awaited !== undefined) focusOn(awaited);
    awaited = undefined;
  }

  /** Looks up the duties of the workbook; a single one comes into a pane that nothing was typed in. */
  async function readSheets(): Promise<void> {
    try {
      const recorded = await services.host?.recorded();
      if (recorded === undefined) return;
      const { dutiesIn } = await part(import("../../shared/calc-sheet/open-again/duties-in.ts"));
      send({ type: "sheets-read", found: dutiesIn(recorded) });
      const byHand = await services.host?.calculatesByHand?.();
      send({ type: "calculation-told", byHand: byHand === true });
    } catch (error) {
      send({ type: "sheets-unread", reason: failureText(error) });
      return;
    }
    const [only, ...others] = state.found?.duties ?? [];
    if (only === undefined || others.length > 0 || state.past.length > 0 || state.duty !== EMPTY_DUTY) return;
    send({ type: "duty-replaced", duty: only.back.duty, what: broughtWords(only) });
  }

  async function repairFunctions(which: "read before" | "misspelt" = "read before"): Promise<void> {
    if (services.repair === undefined || state.repair?.kind === "working") return;
    send({ type: "repairing", repair: { kind: "working" } });
    try {
      const report = await services.repair.repair(which);
      send({ type: "repairing", repair: undefined });
      const kind = report.refused.length === 0 ? "done" : "failed";
      send({ type: "noticed", notice: { kind, text: repairWords(report) } });
      // What was not asked about yet; what would not be entered is told already.
      await lookForRepair(({ misspelt }) => ({ cells: 0, misspelt: which === "misspelt" ? [] : misspelt }));
    } catch (error) {
      send({ type: "repairing", repair: undefined });
      const text = `The formulas were not all entered again. ${failureText(error)}`;
      send({ type: "noticed", notice: { kind: "failed", text } });
    }
  }

  /** Offers to enter formulas again where there are any. Where they cannot be counted, the button of the ribbon tells. */
  async function lookForRepair(offered = (found: BrokenFormulas): BrokenFormulas => found): Promise<void> {
    const found = await services.repair?.look().catch(() => undefined);
    if (found === undefined || state.repair !== undefined) return;
    const { cells, misspelt } = offered(found);
    if (cells > 0 || misspelt.length > 0) send({ type: "repairing", repair: { kind: "offered", cells, misspelt } });
  }

  /** Whether the pane shows the state. Where it cannot, nothing of an earlier state stays in sight. */
  function draw(): boolean {
    try {
      if (hasFailed) page = freshPage();
      drawPane();
      hasFailed = false;
    } catch (error) {
      hasFailed = true;
      page = freshPage();
      render(failedView(state, error instanceof Error ? error.message : String(error), send), page);
    }
    return !hasFailed;
  }

  /** Draws what the pane opened with: a duty of last time that cannot be shown is put aside, and does not stop this start or the next. */
  function show(): boolean {
    if (draw()) return true;
    if (state.past.length > 0) return false;
    putAside(state.duty);
    state = { ...openingState(), aside: state.duty, notice: { kind: "failed", text: PUT_ASIDE } };
    draw();
    return false;
  }

  function drawPane(): void {
    const context: PaneContext = {
      state,
      worked: worked(),
      host: services.host,
      help: services.help ?? "help/",
      send,
      goTo,
      later,
      loadLater,
      announcement,
      readSheets,
      repairFunctions,
    };
    render(
      html`<h1 class="unseen">Duty</h1>
        ${paneHeadView(context)} ${unkeptView(context)} ${repairView(context)} ${notKnownView(context)} ${sheetDutiesView(context)} ${state.stage === "duty" ? html`${phoneLineView(context)} ${welcomeView(context)}` : nothing} ${STAGES.map((stage) => stageView(context, stage))} ${footBarView(context)}`,
      page,
    );
  }

  if (show() && services.opening !== undefined) keep();
  void loadLater();
  settleNow();
  send({ type: "recent-told", recent: recentDuties() });
  window.addEventListener("beforeunload", (event) => {
    if (state.isUnkept) event.preventDefault();
  });
  showHelpLine(pane);
  pane.addEventListener("focusout", () => send({ type: "left" }));
  pane.addEventListener("keydown", (event) => {
    const by = event.altKey || !(event.ctrlKey || event.metaKey) ? undefined : stepBack(event);
    if (by === undefined || (event.target as Element).closest(NOT_OF_THE_DUTY) !== null) return;
    event.preventDefault();
    event.stopPropagation();
    send({ type: by });
  });
  let looking: ReturnType<typeof setTimeout> | undefined;
  services.host?.onCalculated(() => {
    clearTimeout(looking);
    looking = setTimeout(readSheets, PAUSE);
  });
  void readSheets();
  void lookForRepair();
  new ResizeObserver(() => {
    tellHeights(pane);
    send({ type: "resized", ...widthsIn(pane.clientWidth) });
  }).observe(pane);
  return { repairFunctions };
}

/** What the keys ask for: Ctrl+Z and, either way it is usually typed, Ctrl+Y. */
function stepBack({ key, shiftKey }: KeyboardEvent): "undone" | "redone" | undefined {
  const letter = key.toLowerCase();
  if (letter === "z") return shiftKey ? "redone" : "undone";
  return letter === "y" && !shiftKey ? "redone" : undefined;
}

/** The duty of last time, if there is one that can be read. */
function stateKept(): PaneState {
  const kept = keptDuty();
  if (kept === undefined) return openingState();
  if (kept.ok) return openingState(kept.value);
  const reasons = kept.findings.map((finding) => findingText(finding, "US")).join(" ");
  const text = `The duty kept from last time could not be read. ${reasons}`;
  return { ...openingState(), notice: { kind: "failed", text } };
}
