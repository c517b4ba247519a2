import type { Grid } from "./grid-host.ts";

/** Commands after which a formula stands in another cell than the one it spoke for. */
const MOVES =
  /^sheet\.mutation\.(insert-row|insert-col|remove-rows|remove-col|move-rows|move-columns|move-range|reorder-range)$/;

/** Keeps the cell messages in step with the grid: each calculation anew, and all afresh once cells have moved. The answer stops. */
export function followCalculations({ api, messages }: Pick<Grid, "api" | "messages">): () => void {
  let pending: ReturnType<typeof setTimeout> | undefined;
  const starts = api.getFormula().calculationStart(() => messages.nextPass());
  const commands = api.addEvent(api.Event.CommandExecuted, ({ id }) => {
    if (!MOVES.test(id)) return;
    messages.forget();
    clearTimeout(pending);
    pending = setTimeout(() => api.getFormula().executeCalculation(), 0);
  });
  return () => {
    clearTimeout(pending);
    starts.dispose();
    commands.dispose();
  };
}
