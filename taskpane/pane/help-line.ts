/**
 * Shows at the foot of the pane what the box under the pointer, else the one with the focus, is for. It is the text that
 * describes the box to a screen reader, so it is hidden from that.
 */
export function showHelpLine(pane: HTMLElement): void {
  const show = (element: EventTarget | null): void => {
    const line = pane.querySelector(".help-line");
    if (line !== null) line.textContent = helpOf(element) ?? helpOf(document.activeElement) ?? "";
  };
  for (const event of ["focusin", "pointerover"]) pane.addEventListener(event, ({ target }) => show(target));
  for (const event of ["focusout", "pointerleave"]) pane.addEventListener(event, () => show(null));
}

/** The words beside the box an element belongs to. */
function helpOf(element: EventTarget | null): string | undefined {
  if (!(element instanceof Element)) return undefined;
  const box = element.closest(".field, .cell")?.querySelector("input, textarea, select");
  const ids = (box?.getAttribute("aria-describedby") ?? "").split(" ");
  const help = ids.find((id) => id.endsWith("-help"));
  const words = help === undefined ? null : (document.getElementById(help)?.textContent ?? null);
  return words?.replace(/\s+/g, " ").trim();
}
