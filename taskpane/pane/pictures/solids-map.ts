import { html, nothing, svg, type TemplateResult } from "lit";
import {
  MAP_REGIONS,
  type MapBox,
  type MapRegion,
  MOST_SOLIDS,
  type SolidsMap,
} from "../../../shared/package/solids-map.ts";
import { figureSaid, figures } from "../../../shared/text/figure.ts";
import { NEUTRAL } from "../../../src/material/corrosion.ts";
import { ARM, type SolidsMapFrame, solidsMapFrame } from "./solids-map-frame.ts";

/** Where the trade's rule of thumb puts which metal, by pH and solids, with the case marked by a cross. */
export function solidsMapPicture(shown: SolidsMap, width: number): TemplateResult {
  const frame = solidsMapFrame(shown, width);
  const { x, y, height, left, right, top, bottom, labels, cross } = frame;
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${solidsMapWords(shown)}"
    >
      <path class="duty-cross" d="${crossAt(left + ARM, 9)}" />
      <text class="duty-label" x=${left + 3 * ARM} y="13">${caseWords(shown)}</text>
      ${MAP_REGIONS.map((region) => svg`<path class="map-region ${region.key}" d="${outline(region, frame)}" />`)}
      <path class="guide" d="M${x(shown.pH)} ${bottom}V${cross === null ? top : `${cross.y}H${left}`}" />
      ${labels.map((label) => svg`<text class="map-label" x=${label.x} y=${label.y} text-anchor="middle">${label.text}</text>`)}
      ${limitsOf("top").map((limit) => tick(x(limit), top, -4, -7, figures(limit)))}
      ${limitsOf("bottom").map((limit) => tick(x(limit), bottom, 4, 16, figures(limit)))}
      ${solidsLimits().map(
        (limit) => svg`<path class="tick" d="M${left} ${y(limit)}h-4" />
          <text x=${left - 6} y=${y(limit) + 4} text-anchor="end">${figureSaid("%", 100 * limit)} %</text>`,
      )}
      <text x=${(left + right) / 2} y=${height - 5} text-anchor="middle">pH</text>
      ${cross === null ? nothing : svg`<path class="duty-cross" d="${crossAt(cross.x, cross.y)}" />`}
    </svg>
    <figcaption>${captionWords(shown)}</figcaption>
  </figure>`;
}

/** The picture in words. */
export function solidsMapWords(shown: SolidsMap): string {
  const percent = (share: number): string => figureSaid("%", 100 * share);
  const regions = MAP_REGIONS.map(({ lines, boxes }) => {
    const where = boxes.map(
      ({ pH: [from, to], solids: [least, most] }) =>
        `pH ${figures(from)} to ${figures(to)} with ${percent(least)} to ${percent(most)} % solids`,
    );
    return `${lines.join(" ")} at ${where.join(", ")}`;
  });
  return `Map of metals by pH and solids, common practice: ${regions.join("; ")}. ${caseWords(shown)}. ${firstWords(shown)}`;
}

function caseWords({ pH, solids }: SolidsMap): string {
  const share = solids === null ? "solids not stated" : `${figureSaid("%", 100 * solids)} % by weight`;
  return `this case: pH ${figures(pH)}, ${share}`;
}

function captionWords(shown: SolidsMap): string {
  const [acid, alkaline] = NEUTRAL;
  return `${firstWords(shown)} Map of common practice, no source. Solids on a square-root scale. Chlorides and named liquids are not on the map: the ranking counts them. Iron below pH ${acid} is for short or inhibited duty; above pH ${alkaline} ask for the make-up.`;
}

function firstWords({ first, verdict, wearParts, solids, agrees, leftTo, missing }: SolidsMap): string {
  if (first === undefined) {
    const toState = missing.length === 0 ? "ask the maker" : `state ${missing.join(", ")}`;
    return `No material can be named: ${toState}.`;
  }
  const best = `${first} (${verdict})`;
  const wear = wearParts === undefined ? "" : ` Wear parts: ${wearParts}.`;
  if (solids === null) return `Solids by weight are not stated; of what is, ${best} ranks first.${wear}`;
  if (agrees === undefined)
    return `Here the map leaves it to ${leftTo}; all that is stated ranks ${best} first.${wear}`;
  if (agrees) return `All that is stated ranks ${best} first, as the map does.${wear}`;
  return `Hardness, chlorides, temperature or what else was stated shifts the choice from the map: ${best} ranks first.${wear}`;
}

/** Limits of pH, those of few solids below the map and those of many above it. */
function limitsOf(side: "top" | "bottom"): readonly number[] {
  const boxes = MAP_REGIONS.map((region) => (side === "top" ? region.boxes.at(-1) : region.boxes[0]) as MapBox);
  const edge = side === "top" ? MOST_SOLIDS : 0;
  const all = boxes.filter(({ solids }) => solids.includes(edge)).flatMap(({ pH }) => [...pH]);
  const limits = [...new Set(all)].toSorted((a, b) => a - b);
  return side === "top" ? limits.slice(1, -1) : limits;
}

function solidsLimits(): readonly number[] {
  const limits = MAP_REGIONS.flatMap(({ boxes }) => boxes.flatMap(({ solids }) => [...solids]));
  return [...new Set(limits)].toSorted((a, b) => a - b);
}

/** Up the left sides of the boxes and down their right sides. */
function outline({ boxes }: MapRegion, { x, y }: SolidsMapFrame): string {
  const corners = (side: 0 | 1): readonly string[] =>
    boxes.flatMap(({ pH, solids: [least, most] }) => [`${x(pH[side])} ${y(least)}`, `${x(pH[side])} ${y(most)}`]);
  return `M${[...corners(0), ...corners(1).toReversed()].join("L")}Z`;
}

function tick(at: number, from: number, length: number, text: number, words: string): TemplateResult {
  return svg`<path class="tick" d="M${at} ${from}v${length}" />
    <text x=${at} y=${from + text} text-anchor="middle">${words}</text>`;
}

function crossAt(x: number, y: number): string {
  return `M${x - ARM} ${y - ARM}l${2 * ARM} ${2 * ARM}m0 ${-2 * ARM}l${-2 * ARM} ${2 * ARM}`;
}
