import { html, type TemplateResult } from "lit";
import type { OtherPumpText } from "../../../shared/duty/duty-text.ts";
import { placeKey } from "../../../shared/duty/duty-text.ts";
import { OWN_KEYS, PUMP_KEYS } from "../../../shared/duty/fields/pump.ts";
import { boxId, type PaneContext } from "../context.ts";
import { ownBoxView, pumpBoxView } from "./pump-box.ts";
import { pumpPointsView } from "./pump-points.ts";

/** Pumps unlike the chosen one that run beside it, or after it in series: their boxes, their curves. */
export function furtherPumpsView(context: PaneContext): TemplateResult {
  const { send, goTo, state } = context;
  const pumps = state.duty.otherPumps ?? [];
  return html`<h3>Further pumps</h3>
    <p class="hint">
      Pumps unlike the chosen one, in the order in which they start, or in the order of flow. Rows of a line marked
      “each” are every pump’s own.
    </p>
    ${pumps.map((pump, other) => otherPumpView(context, pump, other))}
    <div class="buttons">
      <button
        type="button"
        @click=${() => {
          send({ type: "other-pump-added" });
          goTo(boxId(placeKey({ pump: "name", other: pumps.length })));
        }}
      >
        Add a further pump by hand
      </button>
    </div>`;
}

function otherPumpView(context: PaneContext, pump: OtherPumpText, other: number): TemplateResult {
  const name = pump.name.trim() === "" ? `Further pump ${other + 1}` : pump.name.trim();
  return html`<article class="further-pump" aria-label=${name}>
    <div class="row-head"><strong class="pump-name">${name}</strong></div>
    ${PUMP_KEYS.map((key) => pumpBoxView(context, key, other))} ${OWN_KEYS.map((key) => ownBoxView(context, key, other))}
    ${pumpPointsView(context, pump, other)}
    <div class="buttons">
      <button type="button" @click=${() => context.send({ type: "other-pump-removed", other })}>
        Remove ${name} from the station
      </button>
    </div>
  </article>`;
}
