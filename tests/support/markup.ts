/** The markup of a lit template with its values in place; nothing of what is no text, number or template. */
export function markup(part: unknown): string {
  if (Array.isArray(part)) return part.map(markup).join("");
  if (typeof part === "object" && part !== null && "strings" in part && "values" in part) {
    const values = part.values as readonly unknown[];
    return (part.strings as readonly string[]).map((text, i) => text + markup(values[i])).join("");
  }
  return typeof part === "string" || typeof part === "number" ? String(part) : "";
}

/** A bar of a drawn picture, by its class. */
export interface Bar {
  readonly kind: string;
  readonly x: number;
  readonly width: number;
}

export function barsOf(text: string): readonly Bar[] {
  return [...text.matchAll(/<rect class="?bar (\w+)"? x=([\d.]+) y=[\d.]+ width=([\d.]+)/g)].map(
    ([, kind = "", x, width]) => ({ kind, x: Number(x), width: Number(width) }),
  );
}
