import { html, nothing, render } from "lit";
import type { PumpText } from "../../../shared/duty/duty-text.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Part } from "../later-part.ts";
import { BOARD_ID, type TracingContext } from "./context.ts";
import { boardGestures } from "./gestures.ts";
import { openPicture, pictureIn } from "./open-picture.ts";
import { nextTracing, openingTracing, type Picture, type TracingEvent, type TracingState } from "./state.ts";
import { axesView } from "./views/axes.ts";
import { boardView } from "./views/board.ts";
import { curveView } from "./views/curve.ts";
import { pictureView } from "./views/picture.ts";
import { rowsView } from "./views/rows.ts";
import { eventWords } from "./words.ts";
import { tracingWorked } from "./worked.ts";
import "./tracing.css";

/** What the pane lends the step. */
export interface Surroundings {
  readonly host: SheetHost | undefined;
  readonly units: UnitSetName;
  /** Takes a traced curve as the pump of the duty. */
  readonly use: (pump: PumpText) => void;
}

/** Height of the board as part of its width, and its bounds in pixels. */
const BOARD_SHAPE = { part: 0.86, least: 220, most: 440 } as const;

/**
 * The tracing step with a state of its own: a pointer on the board redraws the step, not the pane. The picture lives
 * in memory alone and its address is let go of with it.
 */
export function mountTracer(root: HTMLElement, first: Surroundings): Part<Surroundings> {
  let surroundings = first;
  let state = openingTracing(first.units, decimalSignHere());
  let announcement = "";
  const gestures = boardGestures({ state: () => state, send });

  function send(event: TracingEvent): void {
    const before = state;
    state = nextTracing(state, event);
    if (state === before) return;
    const held = heldBy(state);
    for (const picture of heldBy(before)) if (!held.includes(picture)) URL.revokeObjectURL(picture.url);
    announcement = eventWords(event, before, state, tracingWorked(state)) ?? announcement;
    draw();
  }

  async function open(file: File): Promise<void> {
    const picture = await openPicture(file);
    if (picture === undefined) send({ type: "picture-unreadable", name: file.name });
    else send({ type: "picture-offered", picture, units: surroundings.units });
  }

  function draw(): void {
    const context: TracingContext = {
      state,
      worked: tracingWorked(state),
      host: surroundings.host,
      units: surroundings.units,
      send,
      open: (file) => void open(file),
      use: (pump) => surroundings.use(pump),
      focusBoard: () => document.getElementById(BOARD_ID)?.focus(),
      announcement,
    };
    const isOpen = state.picture !== undefined;
    render(
      html`${pictureView(context)}
        ${
          isOpen
            ? html`${boardView(context, gestures)} ${axesView(context)} ${curveView(context)} ${rowsView(context)}`
            : nothing
        }
        <p class="unseen" role="status">${announcement}</p>`,
      root,
    );
  }

  /** A picture pasted anywhere in the pane, or on the page while nothing has the focus. */
  function paste(event: ClipboardEvent): void {
    if (!root.isConnected) {
      document.removeEventListener("paste", paste);
      return;
    }
    const target = event.target as Node;
    const isOurs = target === document.body || root.closest(".duty-pane")?.contains(target) === true;
    const file = isOurs && root.offsetParent !== null ? pictureIn(event.clipboardData) : undefined;
    if (file === undefined) return;
    event.preventDefault();
    void open(file);
  }

  /** Anywhere on the step: a browser left to itself would leave the pane to show the file. */
  function drop(event: DragEvent): void {
    if (event.dataTransfer?.types.includes("Files") !== true) return;
    event.preventDefault();
    const file = event.type === "drop" ? pictureIn(event.dataTransfer) : undefined;
    if (file !== undefined) void open(file);
  }

  draw();
  document.addEventListener("paste", paste);
  root.addEventListener("dragover", drop);
  root.addEventListener("drop", drop);
  new ResizeObserver(() => {
    const width = Math.floor(root.clientWidth);
    const height = Math.round(Math.min(BOARD_SHAPE.most, Math.max(BOARD_SHAPE.least, width * BOARD_SHAPE.part)));
    if (width > 0) send({ type: "board-resized", board: { width, height } });
  }).observe(root);

  return {
    update: (next) => {
      const isSame = next.host === surroundings.host && next.units === surroundings.units;
      surroundings = next;
      if (isSame) return;
      draw();
    },
  };
}

function heldBy({ picture, offered }: TracingState): readonly Picture[] {
  return [picture, offered].filter((one) => one !== undefined);
}

/** The decimal sign of the reader's own language, which the spreadsheet most likely reads as well. */
function decimalSignHere(): "." | "," {
  const sign = new Intl.NumberFormat().formatToParts(0.5).find(({ type }) => type === "decimal")?.value;
  return sign === "," ? "," : ".";
}
