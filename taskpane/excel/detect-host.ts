export type HostName = "excel" | "other office" | "browser";

/** Office settles within a second or so inside Excel; some pages outside it never hear from it. */
const PATIENCE = 4000;

/** Which program the page is open in. A missing, blocked or silent office.js means a plain browser. */
export async function detectHost(patience: number = PATIENCE): Promise<HostName> {
  const office = (globalThis as { readonly Office?: typeof Office }).Office;
  if (office?.onReady === undefined) return "browser";
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<undefined>((resolve) => {
    timer = setTimeout(() => resolve(undefined), patience);
  });
  const info = await Promise.race([office.onReady(), silence]);
  clearTimeout(timer);
  if (info === undefined || info.host === null || info.host === undefined) return "browser";
  // The typings call it a numbered enum; at run time it is text.
  return String(info.host) === "Excel" ? "excel" : "other office";
}
