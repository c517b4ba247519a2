import { html, nothing, svg, type TemplateResult } from "lit";
import type { RisingWater, WaterCourse, WaterMark } from "../../../shared/package/rising-water.ts";
import { amountText } from "../../../shared/text/words.ts";
import { isAtMost } from "../../../src/basis/at-most.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { type LiftLine, risingWaterFrame } from "./rising-water-frame.ts";
import { linearScale } from "./scale.ts";

const TANK_DEPTH = 26;
const TIME_LINE = 58;
/** The bore as drawn. */
const BORE = 11;
const TANK_WIDTH = 96;
const X_RISER = 66;
const X_PUMP = 140;
const PUMP_RADIUS = 9;

/** The suction seen from the side: how high the water rises, when it stands where, and which lifts bound it. */
export function risingWaterPicture(water: RisingWater, units: UnitSetName, width: number): TemplateResult {
  const { lift, byBlankOff, course } = water;
  const frame = risingWaterFrame(water);
  const { y, lines, marks, toScale } = frame;
  const surface = y(0);
  const top = y(lift);
  const reached = course === undefined ? y(Math.min(lift, Math.max(0, byBlankOff))) : top;
  const bottom = surface + TANK_DEPTH;
  const height = course === undefined ? bottom + 6 : bottom + TIME_LINE;
  const half = BORE / 2;
  const foot = bottom - 8;
  const left = X_RISER - half;
  const filled =
    course === undefined
      ? `M${left} ${foot}V${reached}h${BORE}V${foot}Z`
      : `M${left} ${foot}V${top - half}H${X_PUMP}v${BORE}H${left + BORE}V${foot}Z`;
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${risingWaterWords(water, units)}"
    >
      <rect class="liquid" x=${X_RISER - TANK_WIDTH / 2} y=${surface} width=${TANK_WIDTH} height=${TANK_DEPTH} />
      <path
        class="wall"
        d="M${X_RISER - TANK_WIDTH / 2} ${surface - 8}V${bottom}h${TANK_WIDTH}V${surface - 8}"
      />
      <path class="surface" d="M${X_RISER - TANK_WIDTH / 2} ${surface}h${TANK_WIDTH}" />
      ${lines.map((line) => liftLine(line, units, width))}
      <path class="riser-water" d="${filled}" />
      <path
        class="wall"
        d="M${left} ${foot}V${top - half}H${X_PUMP}M${left + BORE} ${foot}V${top + half}H${X_PUMP}"
      />
      <circle class="pump" cx=${X_PUMP} cy=${top} r=${PUMP_RADIUS} />
      <path class="pump-mark" d="M${X_PUMP - 4} ${top - 5}L${X_PUMP + 5} ${top}L${X_PUMP - 4} ${top + 5}Z" />
      ${marks.map((mark) => timeMark(mark, y(mark.height)))}
      ${course === undefined ? nothing : timeLine(course, bottom + 32, width)}
    </svg>
    <figcaption>${captionOf(water, units)} ${toScale ? nothing : "Heights are not drawn to scale."}</figcaption>
  </figure>`;
}

function liftLine({ names, height, y, isDuty }: LiftLine, units: UnitSetName, width: number): TemplateResult {
  const from = isDuty ? X_PUMP + PUMP_RADIUS : X_RISER + BORE;
  // Clear of the pump, which a long label reaches.
  const above = isDuty ? PUMP_RADIUS + 5 : 4;
  return svg`<path class=${isDuty ? "dimension" : "guide"} d="M${from} ${y}H${width - 4}" />
    <text class=${isDuty ? "total" : "part"} x=${width - 4} y=${y - above} text-anchor="end">${sentenceStart(
      names.join(", "),
    )} ${head(height, units)}</text>`;
}

function timeMark({ time }: WaterMark, y: number): TemplateResult {
  const end = X_RISER - BORE / 2;
  return svg`<path class="tick" d="M${end - 5} ${y}h${BORE + 5}" />
    <text x=${end - 8} y=${y + 4} text-anchor="end">${shortDuration(time)}</text>`;
}

/** From the start to the full casing, the rise and what follows it told apart by shade and label. */
function timeLine({ riseTime, total }: WaterCourse, y: number, width: number): TemplateResult {
  const x = linearScale([0, total], [4, width - 4]);
  const gained = x(riseTime);
  const share = riseTime / total;
  const anchor = share < 0.35 ? "start" : share > 0.65 ? "end" : "middle";
  return svg`<rect class="bar total" x="4" y=${y} width=${gained - 4} height="6" />
    <rect class="bar" x=${gained} y=${y} width=${width - 4 - gained} height="6" />
    <path class="axis" d="M4 ${y - 3}v12M${gained} ${y - 3}v12M${width - 4} ${y - 3}v12" />
    <text x=${gained} y=${y - 7} text-anchor=${anchor}>Lift gained ${durationText(riseTime)}</text>
    <text x="4" y=${y + 21}>Start</text>
    <text class="total" x=${width - 4} y=${y + 21} text-anchor="end">Primed ${durationText(total)}</text>`;
}

/** The picture in words. */
export function risingWaterWords(water: RisingWater, units: UnitSetName): string {
  const { byBlankOff, byPractice, byNpsh, course } = water;
  const stands = risingWaterFrame(water).marks.map(
    ({ height, time }) => `${head(height, units)} after ${durationText(time)}`,
  );
  const lifts = [
    `by practice ${head(byPractice, units)}`,
    `by blank-off of the air pump ${head(byBlankOff, units)}`,
    ...(byNpsh === undefined ? [] : [`by NPSH ${head(byNpsh, units)}`]),
  ];
  return [
    "Suction line from the side.",
    captionOf(water, units),
    ...(course === undefined ? [] : [`The water stands at ${stands.join(", ")}.`]),
    `Maximum lifts: ${lifts.join(", ")}.`,
  ].join(" ");
}

function captionOf({ lift, greatest, course }: RisingWater, units: UnitSetName): string {
  const priming =
    course === undefined
      ? `No time to prime at a suction lift of ${head(lift, units)}.`
      : `The water gains the suction lift of ${head(lift, units)} in ${durationText(course.riseTime)}; line and casing are full after ${durationText(course.total)}.`;
  return `${priming} ${verdictOf(lift, greatest, units)}`;
}

function verdictOf(lift: number, greatest: number, units: UnitSetName): string {
  if (greatest < 0) return `No lift is left: the pump must stand ${head(-greatest, units)} below the liquid.`;
  return `The lift is ${isAtMost(lift, greatest) ? "within" : "beyond"} the largest of ${head(greatest, units)}.`;
}

function head(height: number, units: UnitSetName): string {
  return amountText(amount("head", height), units);
}

/** "8.2 s", "45 s", "3 min 10 s", "12 min": no finer than a priming can be foretold. */
export function durationText(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 120 || whole >= 600) return shortDuration(seconds);
  const rest = whole % 60;
  return rest === 0 ? `${whole / 60} min` : `${Math.floor(whole / 60)} min ${rest} s`;
}

/** The same in one unit, for beside the riser. */
function shortDuration(seconds: number): string {
  if (seconds < 9.95) return `${Number(seconds.toPrecision(2))} s`;
  const whole = Math.round(seconds);
  return whole < 600 ? `${whole} s` : `${Math.round(seconds / 60)} min`;
}

function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
