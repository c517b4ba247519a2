/** Letters and figures that tell what this start of the grid names from what an earlier one did. */
export function startMark(): string {
  return Date.now().toString(36);
}
