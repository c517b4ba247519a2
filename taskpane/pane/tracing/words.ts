import { CURVE_COLUMNS } from "../../../shared/pump-table/columns.ts";
import { amountsAt, type Position, worthOfPixel } from "../../../shared/tracing/calibration.ts";
import { axisName } from "../../../shared/tracing/traced-amounts.ts";
import { lineInHand, type Mark, placeOf } from "./drawing.ts";
import { pointNumber, type TracingEvent, type TracingState } from "./state.ts";
import { shownAmount, type TracingWorked } from "./worked.ts";

export const END_WORDS = ["first point", "second point"] as const;

/** With its first letter large, to begin a line with. */
export function headed(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What the next click is for. */
export function taskWords({ drawing, line, aim }: TracingState, { calibration }: TracingWorked): string {
  if (aim !== undefined) {
    const where = aim.end === 0 ? "near one end" : "far from the first";
    return `Click the ${END_WORDS[aim.end]} of the ${axisName(aim.axis)}: a printed value ${where}.`;
  }
  const { name } = CURVE_COLUMNS[line];
  if (calibration === undefined) {
    const untold = (["flow", line] as const).filter((key) =>
      drawing.axes[key].ends.some(({ text }) => text.trim() === ""),
    );
    const [axis] = untold;
    if (axis === undefined) return "Correct the values of the axes below; clicks on the picture already trace.";
    const axes = untold.length === 2 ? "both axes" : `the ${axisName(axis)}`;
    return `Type the printed values of ${axes} below, then click along the ${name} line.`;
  }
  return `Click along the ${name} line.`;
}

/** "602 m³/h, 81.9 ft"; the place in the picture while nothing can be read. */
export function placeWords({ calibration }: TracingWorked, at: Position): string {
  const read = calibration?.ok === true ? amountsAt(calibration.value, at) : undefined;
  const worth = calibration?.ok === true ? worthOfPixel(calibration.value, at) : undefined;
  if (calibration?.ok !== true || read === undefined || worth === undefined) {
    return `pixel ${Math.round(at.x)} across, ${Math.round(at.y)} down`;
  }
  const { flow, amount } = calibration.value.axes;
  const flowText = shownAmount(read.flow, flow, worth.flow);
  return `${flowText} ${flow.unit}, ${shownAmount(read.amount, amount, worth.amount)} ${amount.unit}`;
}

/** "Point 3 of 7" or "Flow axis, first point". */
export function markName(state: TracingState, mark: Mark): string {
  if (mark.kind === "end") {
    return `${headed(axisName(mark.axis))}, ${END_WORDS[mark.end]}`;
  }
  return `Point ${pointNumber(state, mark.id)} of ${lineInHand(state.drawing, state).length}`;
}

/** What an event did, for those who do not see the board; nothing where the page says it already. */
export function eventWords(
  event: TracingEvent,
  before: TracingState,
  state: TracingState,
  worked: TracingWorked,
): string | undefined {
  switch (event.type) {
    case "picture-offered":
      return state.picture === before.picture ? undefined : `Picture open. ${taskWords(state, worked)}`;
    case "placed": {
      if (state.drawing === before.drawing) return undefined;
      const placed = before.aim === undefined ? `Point placed at ${placeWords(worked, event.at)}.` : "Axis point set.";
      return before.aim === undefined ? placed : `${placed} ${taskWords(state, worked)}`;
    }
    case "picked":
      return state.selected === undefined ? "Crosshair." : markWords(state, worked, state.selected);
    case "moved":
      return event.run === "nudge" ? placeWords(worked, state.cursor) : undefined;
    case "cursor-moved":
      return event.show ? placeWords(worked, state.cursor) : undefined;
    case "removed":
      return state.drawing === before.drawing ? undefined : "Removed.";
    case "undone":
      return "Undone.";
    case "redone":
      return "Redone.";
    case "zoomed":
    case "fitted":
      return `Picture at ${zoomText(state)}.`;
    default:
      return undefined;
  }
}

export function zoomText({ view }: TracingState): string {
  return `${Math.round(view.scale * 100)} %`;
}

function markWords(state: TracingState, worked: TracingWorked, mark: Mark): string {
  const at = placeOf(state.drawing, state, mark);
  return at === undefined ? "" : `${markName(state, mark)}, ${placeWords(worked, at)}`;
}
