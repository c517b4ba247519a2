/** A part of the page that F6 goes to, and what in it takes the focus where nothing in it had it yet. */
export interface Zone {
  readonly element: HTMLElement;
  readonly first: () => HTMLElement | null;
}

/** F6 goes to the next part of the page, Shift+F6 to the one before, each time to where the focus was in it. */
export function startZones(zones: readonly [Zone, Zone, ...Zone[]]): void {
  const last = new Map<Zone, HTMLElement>();
  const holding = (target: EventTarget | null): number =>
    zones.findIndex(({ element }) => target instanceof Node && element.contains(target));

  document.addEventListener("focusin", ({ target }) => {
    const zone = zones[holding(target)];
    if (zone !== undefined && target instanceof HTMLElement && target !== zone.element) last.set(zone, target);
  });
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
      if (document.querySelector("dialog[open]") !== null) return;
      event.preventDefault();
      event.stopPropagation();
      const at = holding(document.activeElement);
      const next = event.shiftKey ? (at <= 0 ? zones.length - 1 : at - 1) : (at + 1) % zones.length;
      enter(zones[next] as Zone, last);
    },
    { capture: true },
  );
}

function enter(zone: Zone, last: ReadonlyMap<Zone, HTMLElement>): void {
  const before = last.get(zone);
  const isThere = before?.isConnected === true && before.checkVisibility();
  const target = isThere ? before : zone.first();
  target?.focus();
  if (document.activeElement !== target) zone.element.focus();
}

/**
 * The grid takes the focus as it starts, into boxes that it puts anywhere in the document. Until it is let, who types in
 * the rest of the page keeps it, and a page that nobody has begun with begins at its top, where the way past the grid is.
 */
export function holdFocus(page: HTMLElement, grid: HTMLElement): () => void {
  const isOfPage = (target: EventTarget | null): target is HTMLElement =>
    target instanceof HTMLElement && page.contains(target) && !grid.contains(target);
  let last = isOfPage(document.activeElement) ? document.activeElement : undefined;
  const giveBack = ({ target }: FocusEvent): void => {
    const { body } = document;
    if (isOfPage(target)) last = target;
    else if (last?.isConnected === true) last.focus();
    else if (target !== body) {
      body.tabIndex = -1;
      body.focus();
      body.removeAttribute("tabindex");
    }
  };
  document.addEventListener("focusin", giveBack);
  return () => document.removeEventListener("focusin", giveBack);
}
