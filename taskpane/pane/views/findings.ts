import { html, nothing, svg, type TemplateResult } from "lit";
import { findingText } from "../../../shared/text/finding-text.ts";
import { citationText } from "../../../src/basis/citation.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Finding, Severity } from "../../../src/basis/result.ts";
import type { PaneContext } from "../context.ts";

const WORDS: Readonly<Record<Severity, string>> = { error: "Error", warning: "Warning", caution: "Caution" };

const SHAPES: Readonly<Record<Severity, TemplateResult>> = {
  error: svg`<circle cx="8" cy="8" r="7"></circle><path d="M5 5l6 6M11 5l-6 6"></path>`,
  warning: svg`<path class="plate" d="M8 1.5L15 14.5H1z"></path><path d="M8 6v4M8 12v1"></path>`,
  caution: svg`<rect x="1" y="1" width="14" height="14" rx="2"></rect><path d="M8 4v1M8 7v5"></path>`,
};

/** Findings as lines of icon, kind, reason and source. The kind is said in words; colour only helps. */
export function findingsView(findings: readonly Finding[], units: UnitSetName, id?: string): TemplateResult {
  return html`<ul class="findings" id=${id ?? nothing}>
    ${findings.map((finding) => findingView(finding, units))}
  </ul>`;
}

/** What to show beside a box. A name being typed with its list open is not called unknown yet. */
export function findingsAt({ state, worked }: PaneContext, key: string): readonly Finding[] {
  const beingTyped = state.list?.typed === true && state.list.place === key;
  return beingTyped ? worked.at(key).filter(({ code }) => code !== "name-unknown") : worked.at(key);
}

/** Findings under a heading of their own; nothing where there are none. */
export function remarksView(
  heading: string,
  findings: readonly Finding[],
  units: UnitSetName,
): TemplateResult | typeof nothing {
  return findings.length === 0
    ? nothing
    : html`<h3>${heading}</h3>
        ${findingsView(findings, units)}`;
}

function findingView(finding: Finding, units: UnitSetName): TemplateResult {
  const { severity, cites } = finding;
  return html`<li class="finding ${severity}">
    <svg class="icon" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${SHAPES[severity]}</svg>
    <span>
      <strong>${WORDS[severity]}:</strong> ${findingText(finding, units)}
      ${cites === undefined ? nothing : html`<span class="source">${citationText(cites)}</span>`}
    </span>
  </li>`;
}
