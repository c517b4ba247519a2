import { repairFunctions } from "./repair-functions.ts";

/** Ties the ribbon's buttons to their work. Does nothing outside Office. */
export function registerCommands(): void {
  const office = (globalThis as { readonly Office?: typeof Office }).Office;
  office?.actions?.associate("repairFunctions", async (event: Office.AddinCommands.Event) => {
    try {
      await repairFunctions();
    } finally {
      // Excel keeps the button waiting until it hears this.
      event.completed();
    }
  });
}
