import { html, nothing, svg, type TemplateResult } from "lit";
import { figures } from "../../../shared/text/words.ts";
import { levelPlaces } from "./level-places.ts";

/** Levels of a duty, all in the unit named. */
export interface DutyLevels {
  readonly source: number;
  readonly pump: number;
  readonly delivery: number;
  readonly unit: string;
}

const TOP = 30;
const HEIGHT = 112;
const BELOW = 42;
const LEAST_GAP = 30;
const TANK_WIDTH = 66;
const TANK_DEPTH = 24;
const PUMP_RADIUS = 9;

/** The duty seen from the side: source, pump and delivery at their levels, with lift and static head between them. */
export function elevationPicture(levels: DutyLevels, width: number): TemplateResult {
  const { source, pump, delivery, unit } = levels;
  const { places, toScale } = levelPlaces([source, pump, delivery], HEIGHT, LEAST_GAP);
  const [ySource, yPump, yDelivery] = places.map((place) => place + TOP) as [number, number, number];
  const show = (value: number): string => `${figures(value)} ${unit}`;
  const xTank = width - TANK_WIDTH - 4;
  const lifts = pump > source;
  const xPump = Math.round(width * 0.44);
  const xRise = xPump + 26;
  const xSuction = 4 + TANK_WIDTH / 2;
  const xLift = 4 + TANK_WIDTH + 14;
  const xStatic = xTank - 16;
  const height = TOP + HEIGHT + BELOW;
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${elevationWords(levels)}"
    >
      ${tank(4, ySource)} ${tank(xTank, yDelivery)}
      <path class="datum" d="M${4 + TANK_WIDTH} ${ySource}H${xStatic + 6}" />
      <path
        class="pipe"
        d="M${xSuction} ${ySource + TANK_DEPTH - 7}V${yPump}H${xPump}M${xPump} ${yPump}H${xRise}V${yDelivery + 10}H${xTank + 12}"
      />
      <circle class="pump" cx=${xPump} cy=${yPump} r=${PUMP_RADIUS} />
      <path class="pump-mark" d="M${xPump - 4} ${yPump - 5}L${xPump + 5} ${yPump}L${xPump - 4} ${yPump + 5}Z" />
      ${dimension(xLift, ySource, yPump, show(Math.abs(pump - source)), "start")}
      ${dimension(xStatic, ySource, yDelivery, show(Math.abs(delivery - source)), "end")}
      <text x="4" y=${lifts ? ySource + TANK_DEPTH + 14 : ySource - 11}>Source ${show(source)}</text>
      <text x=${width - 4} y=${yDelivery - 11} text-anchor="end">Delivery ${show(delivery)}</text>
      <text x=${xRise - 5} y=${lifts ? yPump - PUMP_RADIUS - 6 : yPump + PUMP_RADIUS + 14} text-anchor="end">
        Pump ${show(pump)}
      </text>
    </svg>
    <figcaption>
      ${liftWords(levels)} ${staticWords(levels)} ${toScale ? nothing : "Heights are not drawn to scale."}
    </figcaption>
  </figure>`;
}

/** The picture in words. */
export function elevationWords(levels: DutyLevels): string {
  const { source, pump, delivery, unit } = levels;
  const at = (value: number): string => `${figures(value)} ${unit}`;
  return `Source level ${at(source)}, pump ${at(pump)}, delivery level ${at(delivery)}. ${liftWords(levels)} ${staticWords(levels)}`;
}

function liftWords({ source, pump, unit }: DutyLevels): string {
  const lift = pump - source;
  if (lift === 0) return "The pump stands at the source level.";
  const by = `${figures(Math.abs(lift))} ${unit}`;
  return lift > 0 ? `Suction lift ${by}: the pump stands above the liquid.` : `Flooded suction: ${by} over the pump.`;
}

function staticWords({ source, delivery, unit }: DutyLevels): string {
  return `Static head ${figures(delivery - source)} ${unit}.`;
}

function tank(x: number, surface: number): TemplateResult {
  const mark = x + 12;
  return svg`<rect class="liquid" x=${x} y=${surface} width=${TANK_WIDTH} height=${TANK_DEPTH} />
    <path class="wall" d="M${x} ${surface - 8}V${surface + TANK_DEPTH}H${x + TANK_WIDTH}V${surface - 8}" />
    <path class="surface" d="M${x} ${surface}H${x + TANK_WIDTH}" />
    <path class="level-mark" d="M${mark - 5} ${surface - 7}H${mark + 5}L${mark} ${surface - 1}Z" />`;
}

/** An upright line from one level to another with the difference beside it. */
function dimension(
  x: number,
  from: number,
  to: number,
  text: string,
  anchor: "start" | "end",
): TemplateResult | typeof nothing {
  if (Math.abs(from - to) < 1) return nothing;
  const back = to > from ? -6 : 6;
  return svg`<path class="dimension" d="M${x} ${from}V${to}M${x - 6} ${to}H${x + 6}M${x - 3} ${to + back}L${x} ${to}L${x + 3} ${to + back}" />
    <text x=${x + (anchor === "start" ? 5 : -5)} y=${(from + to) / 2 + 4} text-anchor=${anchor}>${text}</text>`;
}
