import { html, nothing, type TemplateResult } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { REACH } from "../../part.ts";
import type { PaneContext, StepContent } from "../context.ts";
import type { Candidates } from "../pump/candidates.ts";
import { fieldsView } from "./fields.ts";
import { pumpSourceView } from "./pump-source.ts";

const FIELDS = fieldsOf("ranking");

/** Where the pumps come from, how they rank on the duty, and up to four side by side. */
export const pumps: StepContent = {
  brief: ({ state }) => {
    const { candidates } = state.offers;
    return candidates === undefined ? "" : counted(candidates.pumps.length, "pump", "pumps");
  },
  view: (context) => {
    const { candidates } = context.state.offers;
    return html`${pumpSourceView(context)} ${decidesView(context)}
    ${candidates === undefined ? nothing : tableView(context, candidates)}`;
  },
};

/** What the pumps are ranked by. */
function decidesView(context: PaneContext): TemplateResult {
  return html`<h3>What decides the ranking</h3>
    <p class="hint">
      Pumps that keep every rule come first; then a score of four parts by these weights, the usual ones where left blank. Of
      several cases the one a pump does worst in counts.
    </p>
    ${fieldsView(context, FIELDS)}`;
}

let table: typeof import("../ranking/ranking-view.ts") | undefined;

/** The ranking itself, loaded when there are pumps to rank. */
function tableView(context: PaneContext, candidates: Candidates): TemplateResult {
  const { state, send } = context;
  if (table !== undefined) return table.rankingView(context, candidates);
  if (state.offers.table === "not loaded") {
    return html`<p class="hint" role="alert">The ranking could not be loaded. ${REACH}</p>
      <div class="buttons">
        <button type="button" @click=${() => send({ type: "ranking-table", table: "wanted" })}>Try again</button>
      </div>`;
  }
  void load(send);
  return html`<p class="hint">Loading the ranking …</p>`;
}

async function load(send: PaneContext["send"]): Promise<void> {
  try {
    table = await import(/* webpackChunkName: "ranking" */ "../ranking/ranking-view.ts");
    send({ type: "ranking-table", table: "loaded" });
  } catch {
    send({ type: "ranking-table", table: "not loaded" });
  }
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
