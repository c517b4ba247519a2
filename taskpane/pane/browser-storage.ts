/** Of this tab alone, or of the browser. */
export type StoredIn = "sessionStorage" | "localStorage";

/** Storage may be switched off, full or walled off from the page: each call then throws. */
function attempt<T>(act: () => T): T | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}

/** The text kept, or nothing. */
export function storedText(where: StoredIn, key: string): string | undefined {
  return attempt(() => window[where].getItem(key)) ?? undefined;
}

/** Whether the text is kept now. Where not, what was kept before still is. */
export function storeText(where: StoredIn, key: string, text: string): boolean {
  return attempt(() => window[where].setItem(key, text) ?? true) ?? false;
}

export function dropText(where: StoredIn, key: string): void {
  attempt(() => window[where].removeItem(key));
}
