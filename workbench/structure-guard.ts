import type { FUniver } from "@univerjs/core/facade";

/** Commands after which cells or sheets are not where the opened file has them. Their own steps are not asked about again. */
const BREAKING =
  /^sheet\.command\.(insert-(row|col|multi-rows|multi-cols|range-move)|remove-(row|col|sheet)|delete-range-move|move-(rows|cols|range)\b|set-worksheet-name)/;

/**
 * Holds up what a patch of the opened file cannot follow until the user has agreed. The answer stops.
 *
 * @param isGuarded whether the sheet, by the grid's id, is one of an opened file that is still whole
 * @param agree asks the user; once agreed, the command is carried out
 */
export function guardStructure(
  api: FUniver,
  isGuarded: (sheet: string) => boolean,
  agree: () => Promise<boolean>,
): () => void {
  let passing = false;
  const listening = api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    const { id, params } = event;
    if (passing || !BREAKING.test(id)) return;
    const sheet = (params as { subUnitId?: string } | undefined)?.subUnitId;
    const concerned = sheet ?? api.getActiveWorkbook()?.getActiveSheet().getSheetId();
    if (concerned === undefined || !isGuarded(concerned)) return;
    event.cancel = true;
    void agree().then(async (agreed) => {
      if (!agreed) return;
      passing = true;
      try {
        await api.executeCommand(id, params);
      } finally {
        passing = false;
      }
    });
  });
  return () => listening.dispose();
}
