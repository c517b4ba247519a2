/**
 * Shows at the foot of the pane what the box with the focus is for, until another has it: nothing moves under the pointer
 * when a box is left. It is the text that describes the box to a screen reader, so it is hidden from that.
 */
export function showHelpLine(pane: HTMLElement): void {
  pane.addEventListener("focusin", ({ target }) => {
    const line = pane.querySelector(".help-line");
    const help = helpOf(target);
    if (line === null || help === undefined) return;
    line.textContent = help;
    tellHeights(pane);
    // The line may have grown over the box.
    (target as Element).scrollIntoView({ block: "nearest" });
  });
}

/** How much of the pane its head and foot take, for what is scrolled into sight between them. */
export function tellHeights(pane: HTMLElement): void {
  for (const part of ["pane-head", "foot-bar"]) {
    const height = pane.querySelector<HTMLElement>(`.${part}`)?.offsetHeight;
    if (height !== undefined) pane.style.setProperty(`--${part}`, `${height}px`);
  }
}

/** The words that describe a box. */
function helpOf(box: EventTarget | null): string | undefined {
  if (!(box instanceof Element)) return undefined;
  const ids = (box.getAttribute("aria-describedby") ?? "").split(" ");
  const help = ids.find((id) => id.endsWith("-help"));
  const words = help === undefined ? null : (document.getElementById(help)?.textContent ?? null);
  return words?.replace(/\s+/g, " ").trim();
}
