import { html, svg, type TemplateResult } from "lit";
import type { FlangeFace } from "../../../shared/package/flange-faces.ts";
import { figureSaid } from "../../../shared/text/figure.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";

/** Diameter the largest flange is drawn with, px; the others are to the same scale. */
const LARGEST = 148;
const LABEL_PITCH = 23;
const TITLE = 18;
const LABEL_GAP = 14;
/** Room that the longest label takes, px. */
const LABELS = 124;

/** Where a hole stands: its angle clockwise from the top, degrees. Holes straddle the centre lines. */
export function holeAngles(bolts: number): readonly number[] {
  return Array.from({ length: bolts }, (_, i) => (360 * (i + 0.5)) / bolts);
}

/** Faces of flanges to one scale: outline, raised face, bolts on their circle and the gasket, each with its size. */
export function flangeFacePicture(faces: readonly FlangeFace[], units: UnitSetName, width: number): TemplateResult {
  const unit = printedUnit("size", units);
  const scale = LARGEST / greatestOf(faces.map(({ outside }) => outside));
  const step = LARGEST + TITLE + 12;
  const left = Math.max(1, (width - LARGEST - LABEL_GAP - LABELS) / 2);
  const height = step * faces.length - 12;
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${faces.map((face) => flangeFaceWords(face, unit)).join(" ")}"
    >
      ${faces.map((face, i) => faceView(face, { scale, unit, left, top: step * i }))}
    </svg>
    <figcaption>
      ${faces.length > 1 ? "Both to one scale" : "To scale"}; holes straddle the ${spelt("centre lines", units)}, and the gasket, shaded, is
      ${faces.some(({ isFullFace }) => isFullFace) ? "full face" : "the flat ring inside the bolts"}.
    </figcaption>
  </figure>`;
}

/** A face in words. */
export function flangeFaceWords(face: FlangeFace, unit: string): string {
  const { name, outside, boltCircle, bolts, boltSize, raisedFace, gasketOutside, gasketInside } = face;
  const size = (value: number): string => `${figureSaid(unit, value)} ${unit}`;
  const raised = raisedFace === undefined ? "" : ` raised face ${size(raisedFace)},`;
  const gasket = face.isFullFace ? "full-face gasket" : "gasket";
  return `${name}: outside diameter ${size(outside)}, ${bolts} bolts of ${boltSize} on a circle of ${size(boltCircle)},${raised} ${gasket} ${size(gasketInside)} inside and ${size(gasketOutside)} outside.`;
}

interface Placing {
  readonly scale: number;
  readonly unit: string;
  readonly left: number;
  readonly top: number;
}

function faceView(face: FlangeFace, { scale, unit, left, top }: Placing): TemplateResult {
  const { name, outside, boltCircle, bolts, boltSize, hole, raisedFace, gasketOutside, gasketInside } = face;
  const x = left + LARGEST / 2;
  const y = top + TITLE + LARGEST / 2;
  const radius = (diameter: number): number => (diameter * scale) / 2;
  const at = (diameter: number, angle: number): readonly [number, number] => {
    const turned = (angle * Math.PI) / 180;
    return [x + radius(diameter) * Math.sin(turned), y - radius(diameter) * Math.cos(turned)];
  };
  const nearest = (angle: number): number =>
    holeAngles(bolts).reduce((best, one) => (Math.abs(one - angle) < Math.abs(best - angle) ? one : best));
  const labels = [
    { text: `OD ${figureSaid(unit, outside)} ${unit}`, point: at(outside, 40) },
    { text: `bolt circle ${figureSaid(unit, boltCircle)} ${unit}`, point: at(boltCircle, betweenHoles(50, bolts)) },
    { text: `${bolts} × ${boltSize}`, point: at(boltCircle, nearest(80)) },
    ...(raisedFace === undefined
      ? []
      : [{ text: `raised face ${figureSaid(unit, raisedFace)} ${unit}`, point: at(raisedFace, 108) }]),
    { text: `gasket OD ${figureSaid(unit, gasketOutside)} ${unit}`, point: at(gasketOutside, 122) },
    { text: `gasket ID ${figureSaid(unit, gasketInside)} ${unit}`, point: at(gasketInside, 138) },
    // In the order of their points, so that no line crosses another.
  ].toSorted((one, other) => one.point[1] - other.point[1]);
  const xText = left + LARGEST + LABEL_GAP;
  const first = y - (LABEL_PITCH * (labels.length - 1)) / 2;
  const arm = radius(outside) + 4;
  return svg`<text class="panel-title" x=${left} y=${top + 12}>${name}</text>
    <circle class="flange" cx=${x} cy=${y} r=${radius(outside)} />
    <path class="gasket" fill-rule="evenodd" d="${ring(x, y, radius(gasketOutside))}${ring(x, y, radius(gasketInside))}" />
    ${raisedFace === undefined ? "" : svg`<circle class="face" cx=${x} cy=${y} r=${radius(raisedFace)} />`}
    <circle class="bolt-circle" cx=${x} cy=${y} r=${radius(boltCircle)} />
    <path class="guide" d="M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}" />
    ${holeAngles(bolts).map((angle) => {
      const [cx, cy] = at(boltCircle, angle);
      return svg`<circle class="hole" cx=${cx} cy=${cy} r=${radius(hole)} />`;
    })}
    ${labels.map(({ text, point: [px, py] }, i) => {
      const yText = first + LABEL_PITCH * i;
      return svg`<path class="dimension" d="M${px} ${py}L${xText - 3} ${yText}" />
        <circle class="leader-end" cx=${px} cy=${py} r="2" />
        <text x=${xText} y=${yText + 4}>${text}</text>`;
    })}`;
}

/** The middle between two holes that is nearest to an angle, so that a line to the bolt circle ends beside them. */
function betweenHoles(angle: number, bolts: number): number {
  const step = 360 / bolts;
  return Math.round(angle / step) * step;
}

function ring(x: number, y: number, radius: number): string {
  return `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0Z`;
}
