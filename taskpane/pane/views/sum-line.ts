import { html, nothing, type TemplateResult } from "lit";
import { textIn } from "../../../shared/duty/boxes.ts";
import { type Place, placeKey } from "../../../shared/duty/duty-text.ts";
import { listOfAmounts } from "../../../shared/duty/sums/amount-list.ts";
import { sumIn } from "../../../shared/duty/sums/written-sum.ts";
import { printedUnit, type Quantity } from "../../../src/basis/quantities.ts";
import { boxId, type PaneContext } from "../context.ts";

/** What the sum in a box comes to, with the unit of the box where it has none of its own. */
export function sumLineView(
  { state: { duty } }: PaneContext,
  place: Place,
  quantity: Quantity,
): TemplateResult | typeof nothing {
  const answer = sumIn(textIn(duty, placeKey(place)))?.answer;
  if (answer === undefined) return nothing;
  const unit = !/^[-\d.e+]+$/.test(answer) ? "" : ` ${printedUnit(quantity, duty.unitSet)}`;
  return html`<p class="sum-line" id=${sumLineId(place)}>= ${answer}${unit}</p>`;
}

/** The id of that line, where there is one. */
export function sumLineOf({ state: { duty } }: PaneContext, place: Place): readonly string[] {
  return sumIn(textIn(duty, placeKey(place)))?.answer === undefined ? [] : [sumLineId(place)];
}

function sumLineId(place: Place): string {
  return `${boxId(placeKey(place))}-sum`;
}

/** Asks whether several lengths in one box are to be added; nothing where there are none. */
export function listQuestionView(context: PaneContext, place: Place): TemplateResult | typeof nothing {
  const { state, send, goTo } = context;
  const lengths = listOfAmounts(textIn(state.duty, placeKey(place)), "length", state.duty.unitSet);
  if (lengths === undefined) return nothing;
  const id = boxId(placeKey(place));
  return html`<div class="question" role="group" aria-labelledby="${id}-list">
    <p id="${id}-list">${lengths.length} lengths in one box: add them up?</p>
    <button
      type="button"
      @click=${() => {
        send({ type: "lengths-added", place, sum: lengths.join(" + ") });
        goTo(id);
      }}
    >
      ${lengths.join(" + ")}
    </button>
  </div>`;
}
