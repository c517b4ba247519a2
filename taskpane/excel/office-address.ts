/** Where a program of the suite says, to a page it has opened, which program it is. */
export interface OfficePlaces {
  readonly location: { readonly search: string };
  readonly name: string;
  readonly sessionStorage: Pick<Storage, "getItem">;
  readonly external?: unknown;
  /** Some desktop programs put an object of their own into the page. */
  readonly agaveHost?: unknown;
}

/**
 * Whether the page was opened by a program of the suite. Read where the maker's library reads it, so that the library
 * need not be loaded to know: in a plain browser it would have nothing to do.
 */
export function isInOffice(page: OfficePlaces): boolean {
  return (
    page.location.search.includes("_host_Info=") ||
    tells(page.external) ||
    tells(page.agaveHost) ||
    attempt(() => (JSON.parse(page.name) as { readonly hostInfo?: unknown }).hostInfo) ||
    // Kept by the library over a reload.
    attempt(() => page.sessionStorage.getItem("hostInfoValue"))
  );
}

function tells(host: unknown): boolean {
  return attempt(() => (host as { readonly GetHostInfo?: unknown }).GetHostInfo);
}

/** Whether there is anything to be had. Storage may be walled off, and the name of a window is any text. */
function attempt(read: () => unknown): boolean {
  try {
    return Boolean(read());
  } catch {
    return false;
  }
}
