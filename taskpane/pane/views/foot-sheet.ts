/** Closes what folds up from the foot of the pane, and goes back to what opened it. */
export function closeFootSheet(event: Event): void {
  const details = (event.currentTarget as HTMLElement).closest("details");
  details?.removeAttribute("open");
  details?.querySelector("summary")?.focus();
}

export function closeOnEscape(event: KeyboardEvent): void {
  if (event.key === "Escape") closeFootSheet(event);
}
