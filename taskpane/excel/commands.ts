/** Ties the ribbon's buttons to their work, which shows in the pane. Does nothing outside Office. */
export function registerCommands(commands: Readonly<Record<"repairFunctions", () => Promise<void>>>): void {
  const office = (globalThis as { readonly Office?: typeof Office }).Office;
  for (const [name, act] of Object.entries(commands)) {
    office?.actions?.associate(name, async (event: Office.AddinCommands.Event) => {
      try {
        // The work is done where the pane cannot be shown, too.
        await Office.addin.showAsTaskpane().catch(() => undefined);
        await act();
      } finally {
        // Excel keeps the button waiting until it hears this.
        event.completed();
      }
    });
  }
}
