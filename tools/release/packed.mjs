import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { zipSync } from "fflate";

/**
 * A folder as a zip. The same files of the same date give the same bytes, wherever and whenever.
 *
 * @param {string} folder
 * @param {Date} date
 */
export function packed(folder, date) {
  // A zip holds a time of day without its zone.
  const mtime = new Date(date.getTime() + date.getTimezoneOffset() * 60_000);
  const files = readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => [relative(folder, file).split(sep).join("/"), readFileSync(file)])
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return zipSync(Object.fromEntries(files), { level: 9, mtime });
}
