import { html, nothing, svg, type TemplateResult } from "lit";
import type { Mend } from "../../../shared/package/mends/mend.ts";
import { findingText, KIND_NAMES, sourceText } from "../../../shared/text/finding-text.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Finding, FindingKind } from "../../../src/basis/result.ts";
import { boxId, type PaneContext } from "../context.ts";

const SHAPES: Readonly<Record<FindingKind, TemplateResult>> = {
  error: svg`<circle cx="8" cy="8" r="7"></circle><path d="M5 5l6 6M11 5l-6 6"></path>`,
  safety: svg`<path class="plate" d="M8 1.5L15 14.5H1z"></path><path d="M8 6v4M8 12v1"></path>`,
  limit: svg`<path class="plate" d="M5 1h6l4 4v6l-4 4H5l-4-4V5z"></path><path d="M8 4v5M8 11v1"></path>`,
  check: svg`<rect x="1" y="1" width="14" height="14" rx="2"></rect><path d="M8 4v1M8 7v5"></path>`,
  assumed: svg`<circle cx="8" cy="8" r="7"></circle><path d="M4 9c1.5-3 2.5-3 4-1s2.5 2 4-1"></path>`,
};

/** What clears a finding with one text in one box, and how that is done. */
export interface Mending {
  readonly mendsOf: (finding: Finding) => readonly Mend[];
  readonly mend: (mend: Mend) => void;
}

/** Findings as lines of icon, kind, reason and source. The kind is said in words; colour only helps. */
export function findingsView(
  findings: readonly Finding[],
  units: UnitSetName,
  id?: string,
  mending?: Mending,
): TemplateResult {
  return html`<ul class="findings" id=${id ?? nothing}>
    ${findings.map((finding) => findingView(finding, units, mending))}
  </ul>`;
}

/** What is found at a box, below it. */
export function boxFindingsView(context: PaneContext, key: string): TemplateResult | typeof nothing {
  const findings = findingsAt(context, key);
  if (findings.length === 0) return nothing;
  const mending = mendingIn(context, (finding) => context.worked.mends.at(key, finding));
  return findingsView(findings, context.state.duty.unitSet, `${boxId(key)}-findings`, mending);
}

/** For findings that the calculation made. */
export function mendingOf(context: PaneContext): Mending {
  return mendingIn(context, context.worked.mends.of);
}

/** One step back each; the box that was mended is shown and has the focus. */
function mendingIn({ send, goTo }: PaneContext, mendsOf: Mending["mendsOf"]): Mending {
  return {
    mendsOf,
    mend: (mend) => {
      send({ type: "mended", mend });
      goTo(boxId(mend.place));
    },
  };
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
  mending?: Mending,
): TemplateResult | typeof nothing {
  const [grave, mild] = [findings.filter(isGrave), findings.filter((finding) => !isGrave(finding))];
  return html`${grave.length === 0 ? nothing : findingsView(grave, units, undefined, mending)}
  ${
    mild.length === 0
      ? nothing
      : html`<details class="remarks">
          <summary>${heading} (${mild.length})</summary>
          ${findingsView(mild, units, undefined, mending)}
        </details>`
  }`;
}

export function isGrave({ kind }: Finding): boolean {
  return kind !== "check" && kind !== "assumed";
}

function findingView(finding: Finding, units: UnitSetName, mending: Mending | undefined): TemplateResult {
  const { kind, cites } = finding;
  const mends = mending?.mendsOf(finding) ?? [];
  return html`<li class="finding ${kind}">
    <svg class="icon" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${SHAPES[kind]}</svg>
    <span>
      <strong>${KIND_NAMES[kind]}:</strong> ${findingText(finding, units)}
      ${cites === undefined ? nothing : html`<span class="source">${sourceText(cites, units)}</span>`}
      ${mending === undefined ? nothing : mendsView(mends, mending)}
    </span>
  </li>`;
}

/** Buttons that clear what is said beside them. */
export function mendsView(mends: readonly Mend[], { mend }: Pick<Mending, "mend">): TemplateResult | typeof nothing {
  if (mends.length === 0) return nothing;
  return html`<span class="mends">
    ${mends.map((one) => html`<button type="button" class="mend" @click=${() => mend(one)}>${one.label}</button>`)}
  </span>`;
}
