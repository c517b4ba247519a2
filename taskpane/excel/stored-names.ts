/**
 * A formula with our functions as a file keeps them, put back as they are typed:
 * "_xldudf_DUTY_NPSHA(" becomes "DUTY.NPSHA(". A foreign workbook name that Excel is known to put in front goes too.
 */
export function liveFormula(formula: string, namespace: string, ids: readonly string[]): string {
  const typed = new Map(ids.map((id) => [storedName(namespace, id), `${namespace}.${id}`]));
  return outsideTexts(formula, (part) =>
    part.replace(STORED, (whole, name: string) => typed.get(name.toUpperCase()) ?? whole),
  );
}

/** Whether a formula calls a function of ours, in either form. */
export function callsUs(formula: string, namespace: string): boolean {
  const call = new RegExp(`(^|[^A-Za-z0-9_.])(${namespace}\\.|_xldudf_${namespace}_)`, "i");
  let found = false;
  outsideTexts(formula, (part) => {
    found ||= call.test(part);
    return part;
  });
  return found;
}

const STORED = /(?:(?:'[^']*'|\[[^\]]*\]|[A-Za-z0-9_.\\:-]+)!)?_xldudf_([A-Za-z0-9_.]+)(?=\()/gi;

function storedName(namespace: string, id: string): string {
  return `${namespace}_${id}`.replaceAll(".", "_").toUpperCase();
}

/** Changes a formula everywhere but inside its quoted texts. */
function outsideTexts(formula: string, change: (part: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((part, i) => (i % 2 === 0 ? change(part) : part))
    .join("");
}
