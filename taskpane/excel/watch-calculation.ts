/** Calls back after each calculation or edit anywhere in the workbook, until the answer is called. */
export function watchCalculation(callback: () => void): () => void {
  let stopped = false;
  const notify = async (): Promise<void> => {
    if (!stopped) callback();
  };
  const watching = Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    const handlers = [worksheets.onCalculated.add(notify), worksheets.onChanged.add(notify)];
    await context.sync();
    return handlers;
  });
  watching.catch((fault: unknown) => console.error("calculations cannot be watched", fault));
  return () => {
    stopped = true;
    watching.then(stopWatching).catch((fault: unknown) => console.error("watching did not end", fault));
  };
}

async function stopWatching(
  handlers: readonly Pick<OfficeExtension.EventHandlerResult<unknown>, "context" | "remove">[],
): Promise<void> {
  const [first] = handlers;
  if (first === undefined) return;
  await Excel.run(first.context as Excel.RequestContext, async (context) => {
    for (const handler of handlers) handler.remove();
    await context.sync();
  });
}
