// What formulas in use have written down of each function: its name, and its arguments in their order.

/**
 * The functions as functions.json describes them, each with its arguments: "[liquid]" may be left out, "…argument" may
 * be repeated.
 *
 * @param {{ readonly functions: readonly { readonly id: string, readonly parameters: readonly { readonly name: string, readonly optional?: boolean, readonly repeating?: boolean }[] }[] }} metadata
 * @returns {Readonly<Record<string, string>>}
 */
export function signaturesOf({ functions }) {
  const shown = ({ name, optional, repeating }) => (repeating ? `…${name}` : optional ? `[${name}]` : name);
  const all = functions.map(({ id, parameters }) => [id, parameters.map(shown).join(", ")]);
  return Object.fromEntries(all.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/**
 * How formulas that rest on what was released would break, in words; empty where none does. A function may be new, and
 * an argument that may be left out may come after those there were.
 *
 * @param {Readonly<Record<string, string>>} released
 * @param {Readonly<Record<string, string>>} now
 * @returns {readonly string[]}
 */
export function brokenNames(released, now) {
  return Object.entries(released).flatMap(([name, before]) => {
    if (!Object.hasOwn(now, name)) return [`${name} is no more`];
    const [had, has] = [argumentsOf(before), argumentsOf(now[name])];
    const isKept = had.every((argument, i) => argument === has[i]);
    const isAdded = has.slice(had.length).every((argument) => argument.startsWith("["));
    return isKept && isAdded ? [] : [`${name}(${before}) would be ${name}(${now[name]})`];
  });
}

function argumentsOf(signature) {
  return signature === "" ? [] : signature.split(", ");
}
