/** Letters of a revision, alone or after a word: "A", "Rev A", "bc". */
const LETTERS = /^([A-Za-z]+(?:\. ?|[ -]))?([A-Z]{1,2}|[a-z]{1,2})$/;
/** A number, alone, after letters or after a number and a full stop: "0", "P1", "Rev 3", "1.2". */
const NUMBER = /^([A-Za-z]{0,4}(?:\. ?|[ -])?|\d{1,3}\.)(\d{1,3})$/;

/**
 * The revision after this one: "A" for none, "B" after "A", "AA" after "Z", "1" after "0", "P2" after "P1". Undefined for
 * what nobody can count up without knowing the firm's way, such as "final" or a date: ask.
 */
export function nextRevision(revision: string): string | undefined {
  const typed = revision.trim();
  if (typed === "") return "A";
  const lettered = LETTERS.exec(typed);
  if (lettered !== null) return `${lettered[1] ?? ""}${afterLetters(lettered[2] as string)}`;
  const numbered = NUMBER.exec(typed);
  if (numbered === null) return undefined;
  const [, before = "", number = ""] = numbered;
  return `${before}${String(Number(number) + 1).padStart(number.length, "0")}`;
}

/** As the columns of a sheet count: Z is followed by AA, AZ by BA. */
function afterLetters(letters: string): string {
  const last = letters.slice(-1);
  if (last !== "Z" && last !== "z") return letters.slice(0, -1) + String.fromCharCode(last.charCodeAt(0) + 1);
  const first = last === "Z" ? "A" : "a";
  const before = letters.slice(0, -1);
  return `${before === "" ? first : afterLetters(before)}${first}`;
}
