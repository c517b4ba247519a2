import { html, nothing, type TemplateResult } from "lit";
import type { PaneContext } from "../context.ts";

/** Where to begin, as long as no box is filled. The pointer's way to the samples; the keyboard has them under File. */
export function welcomeView({ state }: PaneContext): TemplateResult | typeof nothing {
  if (Object.values(state.duty.fields).some((text) => text.trim() !== "")) return nothing;
  const openSamples = (event: Event): void => {
    const samples = (event.currentTarget as HTMLElement)
      .closest(".duty-pane")
      ?.querySelector<HTMLDetailsElement>(".samples");
    if (samples == null) return;
    samples.open = true;
    samples.querySelector("summary")?.focus();
  };
  return html`<p class="hint welcome">
    Begin with the flow, or
    <button class="link" type="button" tabindex="-1" @click=${openSamples}>start from a sample</button>
    (under File).
  </p>`;
}
