import { html, nothing, svg, type TemplateResult } from "lit";
import { figureIn } from "../../../shared/text/figure.ts";
import { levelPlaces } from "./level-places.ts";

/** Levels of a duty, all in the unit named. */
export interface DutyLevels {
  readonly source: number;
  readonly pump: number;
  readonly delivery: number;
  readonly unit: string;
}

const TOP = 24;
const HEIGHT = 112;
const BELOW = 38;
const LEAST_GAP = 30;
const TANK_WIDTH = 66;
const TANK_DEPTH = 24;
const PUMP_RADIUS = 9;

/** The duty seen from the side: source, pump and delivery at their levels, with lift and static head between them. */
export function elevationPicture(levels: DutyLevels, width: number): TemplateResult {
  const { source, pump, delivery, unit } = levels;
  const { places, toScale } = levelPlaces([source, pump, delivery], HEIGHT, LEAST_GAP);
  const show = (value: number): string => `${figureIn(unit, value)} ${unit}`;
  return html`<figure>
    ${sideView(places, width, elevationWords(levels), {
      source: `Source ${show(source)}`,
      pump: `Pump ${show(pump)}`,
      delivery: `Delivery ${show(delivery)}`,
      lift: show(Math.abs(pump - source)),
      staticHead: show(Math.abs(delivery - source)),
    })}
    <figcaption>
      ${liftWords(levels)} ${staticWords(levels)} ${toScale ? nothing : "Heights are not drawn to scale."}
    </figcaption>
  </figure>`;
}

/** What the three levels are, before they are stated. */
export function elevationSketch(width: number): TemplateResult {
  const words = "Source, pump and delivery seen from the side, with suction lift and static head between their levels.";
  return html`<figure>
    ${sideView([HEIGHT, HEIGHT * 0.6, 0], width, words, {
      source: "Source level",
      pump: "Pump level",
      delivery: "Delivery level",
      lift: "lift",
      staticHead: "static head",
    })}
    <figcaption>
      All three above one datum you like: for a lift of 12 and a rise of 60, source 0, pump 12, delivery 72.
    </figcaption>
  </figure>`;
}

interface SideWords {
  readonly source: string;
  readonly pump: string;
  readonly delivery: string;
  readonly lift: string;
  readonly staticHead: string;
}

function sideView(
  places: readonly number[],
  width: number,
  words: string,
  { source, pump, delivery, lift, staticHead }: SideWords,
): TemplateResult {
  const [ySource, yPump, yDelivery] = places.map((place) => place + TOP) as [number, number, number];
  const xTank = width - TANK_WIDTH - 4;
  const lifts = yPump < ySource;
  const xPump = Math.round(width * 0.44);
  const xRise = xPump + 26;
  const xSuction = 4 + TANK_WIDTH / 2;
  const xLift = 4 + TANK_WIDTH + 14;
  const xStatic = xTank - 16;
  const height = TOP + HEIGHT + BELOW;
  return html`<svg
    class="picture"
    viewBox="0 0 ${width} ${height}"
    width=${width}
    height=${height}
    role="img"
    aria-label=${words}
  >
    ${tank(4, ySource)} ${tank(xTank, yDelivery)}
    <path class="datum" d="M${4 + TANK_WIDTH} ${ySource}H${xStatic + 6}" />
    <path
      class="pipe"
      d="M${xSuction} ${ySource + TANK_DEPTH - 7}V${yPump}H${xPump}M${xPump} ${yPump}H${xRise}V${yDelivery + 10}H${xTank + 12}"
    />
    <circle class="pump" cx=${xPump} cy=${yPump} r=${PUMP_RADIUS} />
    <path class="pump-mark" d="M${xPump - 4} ${yPump - 5}L${xPump + 5} ${yPump}L${xPump - 4} ${yPump + 5}Z" />
    ${dimension(xLift, ySource, yPump, lift, "start")} ${dimension(xStatic, ySource, yDelivery, staticHead, "end")}
    <text x="4" y=${lifts ? ySource + TANK_DEPTH + 14 : ySource - 11}>${source}</text>
    <text x=${width - 4} y=${yDelivery - 11} text-anchor="end">${delivery}</text>
    <text x=${xRise - 5} y=${lifts ? yPump - PUMP_RADIUS - 6 : yPump + PUMP_RADIUS + 14} text-anchor="end">
      ${pump}
    </text>
  </svg>`;
}

/** The picture in words. */
export function elevationWords(levels: DutyLevels): string {
  const { source, pump, delivery, unit } = levels;
  const at = (value: number): string => `${figureIn(unit, value)} ${unit}`;
  return `Source level ${at(source)}, pump ${at(pump)}, delivery level ${at(delivery)}. ${liftWords(levels)} ${staticWords(levels)}`;
}

function liftWords({ source, pump, unit }: DutyLevels): string {
  const lift = pump - source;
  if (lift === 0) return "The pump stands at the source level.";
  const by = `${figureIn(unit, Math.abs(lift))} ${unit}`;
  return lift > 0 ? `Suction lift ${by}: the pump stands above the liquid.` : `Flooded suction: ${by} over the pump.`;
}

function staticWords({ source, delivery, unit }: DutyLevels): string {
  return `Static head ${figureIn(unit, delivery - source)} ${unit}.`;
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
