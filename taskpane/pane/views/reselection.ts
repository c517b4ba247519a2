import { html, nothing, type TemplateResult } from "lit";
import type { PumpText } from "../../../shared/duty/duty-text.ts";
import type { PumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { rankingRows } from "../../../shared/pump-table/ranking-table.ts";
import { reasonsText, reasonText } from "../../../shared/pump-table/reason-text.ts";
import { figureSaid } from "../../../shared/text/figure.ts";
import { amountText } from "../../../shared/text/words.ts";
import type { Quantity, UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import type { PaneContext } from "../context.ts";
import { type AskedThen, pumpSetAgain, type Reselection, reselection } from "../pump/reselection.ts";
import { stateView } from "./verdict-strip.ts";

/** Differences smaller than this are none. */
const SAME = 0.005;

/**
 * Said where the duty has moved since the pump was selected for it, or the pump falls short of what the duty must cover:
 * what became of it, and what would do. Nothing is changed unasked.
 */
export function reselectionView(context: PaneContext, pump: PumpText): TemplateResult | typeof nothing {
  const { state, worked, send, goTo } = context;
  const again = reselection(state.duty);
  const isShort = worked.verdicts.some(({ subject, state: found }) => subject === "head" && found === "fail");
  if (again === undefined || !(again.hasMoved || isShort)) return nothing;
  const units = state.duty.unitSet;
  const { set } = again;
  const speed = set?.speed === undefined ? undefined : say("speed", set.speed, units);
  return html`<div class="reselection" role="note" aria-label="The selection and the duty">
    <p><strong>${thenText(again, units)}</strong> ${nowText(worked.pump, units)}</p>
    <p>${speed === undefined ? noSpeedText(again, units) : setText(again, speed, units)}</p>
    <div class="buttons">
      ${
        speed === undefined
          ? nothing
          : html`<button
              type="button"
              @click=${() =>
                send({
                  type: "pump-set",
                  pump: pumpSetAgain(pump, again, units),
                  what: `setting the speed to ${speed}`,
                  notice: `Speed set to ${speed}.`,
                })}
            >
              Set speed to ${speed}
            </button>`
      }
      <button type="button" @click=${() => goTo("duty-step-pumps")}>Open the ranking</button>
    </div>
  </div>`;
}

function thenText({ before, now, hasMoved }: Reselection, units: UnitSetName): string {
  const at = ({ flow, head }: AskedThen): string => `${say("flow", flow, units)} and ${say("head", head, units)}`;
  return hasMoved
    ? `Selected at ${at(before)}; the duty is now ${at(now)}.`
    : `Selected at ${at(before)}; its setting, or what the duty must cover, has changed since.`;
}

/** What the pump as it is set does on the duty as it is now. */
function nowText(pump: PumpOnDuty | undefined, units: UnitSetName): string {
  if (pump === undefined) return "";
  const { flowOverDuty, headOverDuty } = pump;
  if (typeof flowOverDuty !== "number") return "As it is set it has no operating point on it.";
  if (flowOverDuty < -SAME) return `As it is set it is ${percent(-flowOverDuty)} % short of the flow.`;
  if (typeof headOverDuty === "number" && headOverDuty < 0) {
    return `As it is set it is ${say("head", -headOverDuty, units)} short of the head.`;
  }
  return flowOverDuty > SAME ? `As it is set it gives ${percent(flowOverDuty)} % more flow.` : "";
}

function setText({ set }: Reselection, speed: string, units: UnitSetName): TemplateResult | typeof nothing {
  const row = set && rankingRows({ ranked: [set], leftOut: [] })[0];
  if (row?.ranked === undefined) return nothing;
  const against = row.ranked.reasonsAgainst;
  return html`At ${speed} it meets the duty, ${stateView(row.verdict)}${against.length === 0 ? "." : html`: ${reasonsText(against, units)}.`}`;
}

function noSpeedText({ speeds, missed }: Reselection, units: UnitSetName): string {
  const reason = missed === undefined ? "" : `: ${reasonText(missed, units)}`;
  if (speeds === undefined) return `How far its speed may go is not known${reason}.`;
  const range = `${say("speed", speeds.least, units)} to ${say("speed", speeds.most, units)}`;
  return speeds.least === speeds.most
    ? `Its table has one speed, ${say("speed", speeds.most, units)}, and at that it does not meet the duty${reason}.`
    : `At no speed of its table, ${range}, does it meet the duty${reason}.`;
}

function say(quantity: Quantity, value: number, units: UnitSetName): string {
  return amountText(amount(quantity, value), units);
}

function percent(fraction: number): string {
  return figureSaid("%", 100 * fraction);
}
