import { html, nothing, svg, type TemplateResult } from "lit";
import type { PressureLine, StageNozzle, StagePressures } from "../../../shared/package/stage-pressures.ts";
import { amountText, bareFigure } from "../../../shared/text/words.ts";
import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { worstOf } from "../../../src/judgement/verdict.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import { runningSums } from "./running-sums.ts";
import { linearScale } from "./scale.ts";

const LINE_ROW = 15;
const BAR_ROW = 20;
const NOTE_ROW = 14;
const BAR = 11;
const FIGURE = 42;
/** Width of a letter of the pictures' type, px: enough to keep texts off the edge. */
const LETTER = 6;

const LINE_CLASSES: Readonly<Record<PressureLine["kind"], string>> = {
  offered: "line running",
  class: "line",
  part: "line aged",
  trade: "guide",
};

const BAR_CLASSES = { fail: "short", check: "near", open: "", pass: "" } as const;

/** Greatest pressure at each nozzle against the ratings of the classes, the other parts and the trade figures. */
export function stageBars(pressures: StagePressures, units: UnitSetName, width: number): TemplateResult {
  const { nozzles, lines } = pressures;
  const shown = (pressure: number): string => bareFigure(amount("gaugePressure", pressure), units);
  const labels = LETTER * greatestOf(nozzles.map(({ label }) => label.length)) + 12;
  const most = Math.max(
    greatestOf(nozzles.map(({ greatest }) => greatest)),
    greatestOf(lines.map(({ pressure }) => pressure)),
  );
  const x = linearScale([0, most], [labels, width - FIGURE]);
  // Highest on top: a label then stands left of its own line and of every line above it.
  const sorted = lines.toSorted((a, b) => b.pressure - a.pressure);
  const notes = nozzles.map((nozzle) => fitted(notesOf(nozzle), width));
  const first = LINE_ROW * sorted.length + 4;
  const tops = runningSums(notes.map((own) => BAR_ROW + NOTE_ROW * own.length)).map((sum) => first + sum);
  const height = (tops.at(-1) as number) + 2;
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${stageBarsWords(pressures, units)}"
    >
      ${nozzles.map(({ greatest, above }, i) => {
        const state = worstOf(above) ?? "pass";
        return svg`<rect class="bar ${BAR_CLASSES[state]}" x=${x(0)} y=${barTop(tops[i])}
          width=${Math.max(1, x(greatest) - x(0))} height=${BAR} />`;
      })}
      <path class="axis" d="M${x(0)} ${first}V${height}" />
      ${sorted.map(
        ({ kind, pressure }, i) =>
          svg`<path class=${LINE_CLASSES[kind]} d="M${x(pressure)} ${LINE_ROW * i + 2}V${height}" />`,
      )}
      ${nozzles.map(({ rating }, i) =>
        rating === undefined || lines.some(({ pressure }) => pressure === rating)
          ? nothing
          : svg`<path class="line running" d="M${x(Math.min(rating, most))} ${barTop(tops[i]) - 2}v${BAR + 4}" />`,
      )}
      ${sorted.map((line, i) => lineLabel(line, x(line.pressure), LINE_ROW * (i + 1) - 3, shown, width))}
      ${nozzles.map(
        ({ label, greatest }, i) =>
          svg`<text class="curve-name" x="0" y=${barTop(tops[i]) + 10}>${label}</text>
            <text class="curve-name" x=${width} y=${barTop(tops[i]) + 10} text-anchor="end">${shown(greatest)}</text>`,
      )}
      ${notes.map((own, i) =>
        own.map(({ text, isShort }, line) => {
          const y = (tops[i] as number) + BAR_ROW + NOTE_ROW * line + 9;
          return svg`${isShort ? svg`<path class="short-mark" d="M1 ${y}l5 -9l5 9Z" />` : nothing}
            <text class="curve-name ${isShort ? "short" : ""}" x=${NOTE_LEFT} y=${y}>${text}</text>`;
        }),
      )}
    </svg>
    <figcaption>
      Maximum pressure at each nozzle, ${printedUnit("gaugePressure", units)}. ${lineWords(pressures).join(" ")}
    </figcaption>
  </figure>`;
}

/** What each kind of line stands for, where there is one. */
function lineWords({ lines, classOffered }: StagePressures): readonly string[] {
  const has = (kind: PressureLine["kind"]): boolean => lines.some((line) => line.kind === kind);
  const thick = classOffered === undefined ? "" : ", thick for the class offered";
  return [
    ...(has("class") || has("offered") ? [`Solid lines: ratings at liquid temperature${thick}.`] : []),
    ...(has("part") ? ["Long dashes: what a part may carry."] : []),
    ...(has("trade") ? ["Short dashes: the trade figure, a check that decides nothing."] : []),
  ];
}

function barTop(top: number | undefined): number {
  return (top ?? 0) + 5;
}

/** Left of its line where it fits there, otherwise right of it. */
function lineLabel(
  { name, pressure, kind }: PressureLine,
  x: number,
  y: number,
  shown: (pressure: number) => string,
  width: number,
): TemplateResult {
  const text = `${name} ${shown(pressure)}`;
  const isLeft = x > LETTER * text.length + 4 || x > width / 2;
  return svg`<text class="curve-name ${kind === "offered" ? "total" : ""}" x=${isLeft ? x - 4 : x + 4} y=${y}
    text-anchor=${isLeft ? "end" : "start"}>${text}</text>` as TemplateResult;
}

interface Note {
  readonly text: string;
  /** Something does not hold. */
  readonly isShort: boolean;
}

/** What is to be said of a nozzle under its bar; nothing of one that holds with its pump running. */
function notesOf(nozzle: StageNozzle): readonly Note[] {
  const { classNeeded, isFirst, offered, above, governs } = nozzle;
  const needs = classNeeded.startsWith("beyond") ? `a class ${classNeeded}` : classNeeded;
  const flange = above.find(({ part }) => part === "flange");
  const parts = above.filter(({ part }) => part !== "flange");
  const notes = (state: "fail" | "check"): readonly Note[] => {
    const isShort = state === "fail";
    const lead = isShort ? "" : "to check: ";
    const named = parts.filter((one) => one.state === state).map(({ part }) => part);
    return [
      ...(flange?.state === state
        ? [{ text: `${lead}${isFirst ? "first " : ""}above ${offered}: needs ${needs}`, isShort }]
        : []),
      ...(named.length > 0 ? [{ text: `${lead}above the ${named.join(" and the ")}`, isShort }] : []),
    ];
  };
  return [
    ...notes("fail"),
    ...notes("check"),
    ...(flange === undefined && isFirst ? [{ text: `first to need ${needs}`, isShort: false }] : []),
    ...(governs in CASES ? [{ text: CASES[governs] as string, isShort: false }] : []),
  ];
}

/** Cases that are said; a pump running against a shut valve is the usual one. */
const CASES: Readonly<Record<string, string>> = {
  "pumps stopped": "static column, pumps stopped",
  "check valve failed": "static column, check valve failed",
};

const NOTE_LEFT = 15;
/** Letters of a note are bold. */
const NOTE_LETTER = 6.6;

/** Notes of a kind on one line where the picture is wide enough. */
function fitted(notes: readonly Note[], width: number): readonly Note[] {
  const lines: Note[] = [];
  for (const note of notes) {
    const last = lines.at(-1);
    const together = `${last?.text}; ${note.text}`;
    if (last?.isShort === note.isShort && NOTE_LETTER * together.length < width - NOTE_LEFT) {
      lines[lines.length - 1] = { text: together, isShort: note.isShort };
    } else lines.push(note);
  }
  return lines;
}

/** All that the picture shows, in words. */
export function stageBarsWords({ nozzles, lines }: StagePressures, units: UnitSetName): string {
  const said = (pressure: number): string => amountText(amount("gaugePressure", pressure), units);
  const bars = nozzles.map((nozzle) => {
    const notes = notesOf(nozzle).map(({ text }) => `, ${text}`);
    return `${nozzle.label} ${said(nozzle.greatest)}${notes.join("")}`;
  });
  const held = lines.map(({ name, pressure }) => `${name} ${said(pressure)}`);
  return `Maximum pressure at each nozzle: ${bars.join("; ")}. Compared with: ${held.join("; ")}.`;
}
