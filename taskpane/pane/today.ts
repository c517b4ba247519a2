/** The reader's day, as "2026-11-29". */
export function today(now = new Date()): string {
  const [month, day] = [now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0"));
  return `${now.getFullYear()}-${month}-${day}`;
}
