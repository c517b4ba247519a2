import { html, type TemplateResult } from "lit";
import type { Point } from "./pump-curves-frame.ts";

const WIDTH = 60;
const HEIGHT = 24;
/** The duty stands in the middle, so that one curve can be compared with the next. */
const SPAN = 2;

/** A head curve as small as a word, with the duty on it as a dot. Both axes go to twice the duty and begin at nothing. */
export function sparkline(path: string): TemplateResult {
  return html`<svg class="sparkline" viewBox="0 0 ${WIDTH} ${HEIGHT}" width=${WIDTH} height=${HEIGHT} aria-hidden="true">
    <path class="axes" d="M0.5 0V${HEIGHT - 0.5}H${WIDTH}" />
    <path class="curve" d=${path} />
    <circle class="duty" cx=${WIDTH / SPAN} cy=${HEIGHT - HEIGHT / SPAN} r="2.2" />
  </svg>`;
}

/** The curve of a sparkline through points of a pump, for a duty. */
export function sparklinePath(points: readonly Point[], duty: Point): string {
  const at = ({ flow, value }: Point): string =>
    `${round((WIDTH / SPAN) * (flow / duty.flow))} ${round(HEIGHT - (HEIGHT / SPAN) * (value / duty.value))}`;
  return points.length === 0 ? "" : `M${points.map(at).join("L")}`;
}

/** Far beyond the picture a place is any place. */
function round(value: number): number {
  return Math.round(Math.min(Math.max(value, -9999), 9999) * 10) / 10;
}
