import { html, nothing, render, type TemplateResult } from "lit";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { type Entry, GROUPS } from "../../../shared/catalogue/entry.ts";
import { filledExample } from "../../../shared/help/filled-example.ts";
import { formulaText } from "../../../shared/help/formula-text.ts";
import { functionsFound } from "../../../shared/help/function-search.ts";
import { failureText } from "../../../shared/ports/host-fault.ts";
import { referenceParts } from "../../../shared/ports/reference.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Part } from "../later-part.ts";
import { functionBody, type Outcome, PUT_ID, REPLACE_ID } from "./function-body.ts";
import "./functions.css";

export interface FunctionSurroundings {
  readonly host: SheetHost | undefined;
  readonly units: UnitSetName;
  /** Folder of the help pages; ends in "/". */
  readonly help: string;
}

const SEARCH_ID = "duty-function-search";

/** The functions by group, or those that a search finds; one of them is open. */
export function mountFunctionList(root: HTMLElement, first: FunctionSurroundings): Part<FunctionSurroundings> {
  let surroundings = first;
  let query = "";
  let open: string | undefined;
  /** The one among the names that the Tab key comes to. */
  let current: string | undefined;
  let place: string | undefined;
  let outcome: Outcome | undefined;

  const nameId = (id: string): string => `duty-function-${id}`;
  const shown = (): readonly Entry[] => functionsFound(query);
  const focus = (id: string): void => document.getElementById(id)?.focus();

  const lookUpPlace = async (): Promise<void> => {
    const selection = surroundings.host?.selection;
    if (selection === undefined || open === undefined) return;
    // Nothing can be put anywhere that is not known.
    const found = await selection.cell().catch(() => undefined);
    if (found === place) return;
    place = found;
    outcome = undefined;
    draw();
  };

  const toggle = (id: string): void => {
    open = open === id ? undefined : id;
    current = id;
    outcome = undefined;
    draw();
    void lookUpPlace();
  };

  const put = async (entry: Entry, mayReplace: boolean): Promise<void> => {
    const selection = surroundings.host?.selection;
    const at = place;
    if (selection === undefined || at === undefined) return;
    const formula = formulaText(entry, filledExample(entry, surroundings.units).args);
    try {
      const isIn = await selection.enter(at, formula, mayReplace);
      outcome = isIn
        ? { kind: "done", text: `${formula} is in ${placeWords(at)}.` }
        : { kind: "filled", text: `${placeWords(at)} is not empty.` };
    } catch (fault) {
      outcome = { kind: "failed", text: failureText(fault) };
    }
    draw();
    focus(outcome.kind === "filled" ? REPLACE_ID : PUT_ID);
  };

  const move = (event: KeyboardEvent): void => {
    const entries = shown();
    const at = entries.findIndex(({ id }) => (event.target as Element).id === nameId(id));
    const isSearch = (event.target as Element).id === SEARCH_ID;
    if (at < 0 && !isSearch) return;
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, ...(isSearch ? {} : { Home: 0, End: entries.length - 1 }) }[
      event.key
    ];
    if (to === undefined) return;
    event.preventDefault();
    const next = entries[to];
    if (next !== undefined) {
      current = next.id;
      draw();
      focus(nameId(next.id));
    } else if (to < 0) focus(SEARCH_ID);
  };

  const one = (entry: Entry, isFirst: boolean): TemplateResult => {
    const { id, summary } = entry;
    const isOpen = open === id;
    const isReached = current === id || (isFirst && !shown().some((other) => other.id === current));
    return html`<li>
      <button
        type="button"
        class="function-name"
        id=${nameId(id)}
        aria-expanded=${isOpen}
        tabindex=${isReached ? 0 : -1}
        @click=${() => toggle(id)}
      >
        <code>${id}</code> <span>${summary}</span>
      </button>
      ${
        isOpen
          ? functionBody({
              entry,
              units: surroundings.units,
              help: surroundings.help,
              place: place === undefined ? undefined : placeWords(place),
              outcome,
              put: (mayReplace) => void put(entry, mayReplace),
              leave: () => {
                outcome = undefined;
                draw();
                focus(PUT_ID);
              },
            })
          : nothing
      }
    </li>`;
  };

  function draw(): void {
    const entries = shown();
    const [top] = entries;
    const items = (some: readonly Entry[]): TemplateResult =>
      html`<ul>${some.map((entry) => one(entry, entry === top))}</ul>`;
    const isAll = entries === CATALOGUE;
    render(
      html`<div class="function-search">
          <label for=${SEARCH_ID}>Search functions</label>
          <input
            id=${SEARCH_ID}
            type="search"
            autocomplete="off"
            spellcheck="false"
            placeholder="friction, NPSH, water hammer …"
            .value=${query}
            @input=${(event: Event) => {
              query = (event.currentTarget as HTMLInputElement).value;
              draw();
            }}
          />
          <p class="hint" role="status">${countWords(entries.length, isAll)}</p>
        </div>
        <div class="function-names">
          ${
            isAll
              ? GROUPS.map((group) => html`<h3>${group}</h3>${items(entries.filter((entry) => entry.group === group))}`)
              : items(entries)
          }
        </div>`,
      root,
    );
  }

  root.addEventListener("keydown", move);
  // The label says where it goes; another cell may have been selected meanwhile.
  root.addEventListener("pointerenter", () => void lookUpPlace());
  root.addEventListener("focusin", () => void lookUpPlace());
  draw();
  focus(SEARCH_ID);

  return {
    update: (next) => {
      if (next.host === surroundings.host && next.units === surroundings.units) return;
      surroundings = next;
      outcome = undefined;
      draw();
    },
  };
}

function countWords(count: number, isAll: boolean): string {
  if (isAll) return `${count} functions, by group.`;
  if (count === 0) return "No function is about that. Try fewer or other words.";
  return count === 1 ? "1 function." : `${count} functions, the best first.`;
}

/** "C7 of Sheet1". */
function placeWords(reference: string): string {
  const { sheet, target } = referenceParts(reference);
  return `${target.replaceAll("$", "")} of ${sheet ?? ""}`;
}
