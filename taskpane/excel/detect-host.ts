import { isInOffice, type OfficePlaces } from "./office-address.ts";

/** "no library": Excel has opened the page, and its maker's library could not be had. */
export type HostName = "excel" | "other office" | "browser" | "no library";

/** Which program the page is open in. Inside Office the answer may take minutes: it is waited for without limit. */
export async function detectHost(page: OfficePlaces): Promise<HostName> {
  if (!isInOffice(page)) return "browser";
  const office = (globalThis as { readonly Office?: typeof Office }).Office;
  if (office?.onReady === undefined) return "no library";
  const { host } = await office.onReady();
  if (host === null || host === undefined) return "browser";
  // The typings call it a numbered enum; at run time it is text.
  return String(host) === "Excel" ? "excel" : "other office";
}
