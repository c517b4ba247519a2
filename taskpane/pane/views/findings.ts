import { html, nothing, svg, type TemplateResult } from "lit";
import { findingText, KIND_NAMES } from "../../../shared/text/finding-text.ts";
import { citationText } from "../../../src/basis/citation.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Finding, FindingKind } from "../../../src/basis/result.ts";
import type { PaneContext } from "../context.ts";

const SHAPES: Readonly<Record<FindingKind, TemplateResult>> = {
  error: svg`<circle cx="8" cy="8" r="7"></circle><path d="M5 5l6 6M11 5l-6 6"></path>`,
  safety: svg`<path class="plate" d="M8 1.5L15 14.5H1z"></path><path d="M8 6v4M8 12v1"></path>`,
  limit: svg`<path class="plate" d="M5 1h6l4 4v6l-4 4H5l-4-4V5z"></path><path d="M8 4v5M8 11v1"></path>`,
  check: svg`<rect x="1" y="1" width="14" height="14" rx="2"></rect><path d="M8 4v1M8 7v5"></path>`,
  assumed: svg`<circle cx="8" cy="8" r="7"></circle><path d="M4 9c1.5-3 2.5-3 4-1s2.5 2 4-1"></path>`,
};

/** Findings as lines of icon, kind, reason and source. The kind is said in words; colour only helps. */
export function findingsView(findings: readonly Finding[], units: UnitSetName, id?: string): TemplateResult {
  return html`<ul class="findings" id=${id ?? nothing}>
    ${findings.map((finding) => findingView(finding, units))}
  </ul>`;
}

/** What to show beside a box. A name being typed with its list open is not called unknown yet. */
export function findingsAt({ state, worked }: PaneContext, key: string): readonly Finding[] {
  const refused = state.refusedSums.get(key);
  if (refused !== undefined) return [refused];
  const beingTyped = state.list?.typed === true && state.list.place === key;
  return beingTyped ? worked.at(key).filter(({ code }) => code !== "name-unknown") : worked.at(key);
}

/** Findings: what someone must act on stands in sight, what someone should check opens under the heading. */
export function remarksView(
  heading: string,
  findings: readonly Finding[],
  units: UnitSetName,
): TemplateResult | typeof nothing {
  const [grave, mild] = [findings.filter(isGrave), findings.filter((finding) => !isGrave(finding))];
  return html`${grave.length === 0 ? nothing : findingsView(grave, units)}
  ${
    mild.length === 0
      ? nothing
      : html`<details class="remarks">
          <summary>${heading} (${mild.length})</summary>
          ${findingsView(mild, units)}
        </details>`
  }`;
}

export function isGrave({ kind }: Finding): boolean {
  return kind !== "check" && kind !== "assumed";
}

function findingView(finding: Finding, units: UnitSetName): TemplateResult {
  const { kind, cites } = finding;
  return html`<li class="finding ${kind}">
    <svg class="icon" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${SHAPES[kind]}</svg>
    <span>
      <strong>${KIND_NAMES[kind]}:</strong> ${findingText(finding, units)}
      ${cites === undefined ? nothing : html`<span class="source">${citationText(cites)}</span>`}
    </span>
  </li>`;
}
