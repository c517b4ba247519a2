import type { FUniver } from "@univerjs/core/facade";

/** The grid is dark where the rest of the page is. What the cells hold keeps its colours: only their showing turns. */
export function followTheme(api: Pick<FUniver, "toggleDarkMode">): void {
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const show = (): void => api.toggleDarkMode(dark.matches);
  dark.addEventListener("change", show);
  show();
}
