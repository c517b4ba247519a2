import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { type Place, placeKey } from "../../../shared/duty/duty-text.ts";
import { boxId, type PaneContext } from "../context.ts";
import type { Matches } from "../names.ts";
import { type OpenList, textAt } from "../state.ts";

interface Combobox {
  readonly place: Place;
  /** Ids of what describes the box. */
  readonly describedBy: string;
  readonly invalid: boolean;
  readonly required: boolean;
  readonly placeholder: string;
  /** Names that fit what is typed. */
  readonly matches: (list: OpenList) => Matches;
  /** The whole text of the box once a name is chosen. */
  readonly chosen: (list: OpenList, name: string) => string;
}

/**
 * A box with a list of known names under it, after the WAI-ARIA combobox pattern with list autocomplete: the
 * arrows mark a name, Enter or Tab takes it, Escape shuts the list. Whatever is typed stands; the list only offers.
 */
export function comboboxView(context: PaneContext, box: Combobox): TemplateResult {
  const { send, state } = context;
  const key = placeKey(box.place);
  const id = boxId(key);
  const listId = `${id}-list`;
  const text = textAt(state.duty, box.place);
  const list = state.list?.place === key ? state.list : undefined;
  const matches = list === undefined ? undefined : box.matches(list);
  const shown = matches !== undefined && matches.names.length > 0;
  const active = shown ? list?.active : undefined;
  /** What stands in the box is the one name that fits. */
  const isTyped = shown && matches.more === 0 && matches.names.length === 1 && matches.names[0] === text.trim();
  const optionId = (index: number): string => `${listId}-${index}`;

  function open(input: HTMLInputElement): void {
    send({ type: "list-opened", place: box.place, caret: input.selectionStart ?? input.value.length });
    bringIntoView();
  }

  /** A box low in the pane has its list below the edge. */
  function bringIntoView(): void {
    document.getElementById(listId)?.parentElement?.scrollIntoView({ block: "nearest" });
  }

  function mark(index: number): void {
    send({ type: "list-moved", active: index });
    document.getElementById(optionId(index))?.scrollIntoView({ block: "nearest" });
  }

  function choose(index: number): void {
    const name = matches?.names[index];
    if (list === undefined || name === undefined) return;
    send({ type: "name-chosen", place: box.place, text: box.chosen(list, name) });
  }

  function onKey(event: KeyboardEvent): void {
    const input = event.target as HTMLInputElement;
    const count = matches?.names.length ?? 0;
    switch (event.key) {
      case "ArrowDown":
      case "ArrowUp": {
        event.preventDefault();
        if (list === undefined) {
          open(input);
        } else if (count > 0) {
          const by = event.key === "ArrowDown" ? 1 : -1;
          mark(list.active === undefined ? (by === 1 ? 0 : count - 1) : (list.active + by + count) % count);
        }
        return;
      }
      case "Enter":
        if (active === undefined && !isTyped) return;
        event.preventDefault();
        if (active === undefined) send({ type: "list-closed" });
        else choose(active);
        return;
      case "Tab":
        if (active !== undefined) choose(active);
        return;
      case "Escape":
        if (list === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        send({ type: "list-closed" });
        return;
      case "ArrowLeft":
      case "ArrowRight":
      case "Home":
      case "End":
        send({ type: "list-closed" });
    }
  }

  return html`<div class="combobox">
    <input
      id=${id}
      type="text"
      role="combobox"
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      aria-autocomplete="list"
      aria-haspopup="listbox"
      aria-expanded=${shown}
      aria-controls=${listId}
      aria-activedescendant=${active === undefined ? nothing : optionId(active)}
      aria-describedby=${box.describedBy}
      aria-invalid=${box.invalid}
      aria-required=${box.required}
      placeholder=${box.placeholder}
      .value=${live(text)}
      @input=${(event: InputEvent) => {
        const input = event.target as HTMLInputElement;
        const caret = input.selectionStart ?? input.value.length;
        send({ type: "typed", place: box.place, text: input.value, caret });
        bringIntoView();
      }}
      @keydown=${onKey}
      @blur=${() => send({ type: "list-closed" })}
    />
    <div class="names" ?hidden=${!shown} @mousedown=${(event: MouseEvent) => event.preventDefault()}>
      <ul id=${listId} role="listbox" aria-label="Known names" tabindex="-1">
        ${(matches?.names ?? []).map(
          (name, index) => html`<li
            id=${optionId(index)}
            role="option"
            aria-selected=${index === active}
            @click=${() => choose(index)}
          >
            ${name}
          </li>`,
        )}
      </ul>
      ${matches !== undefined && matches.more > 0 ? html`<p class="more">and ${matches.more} more: type on</p>` : nothing}
    </div>
  </div>`;
}
