import { registerCommands } from "./excel/commands.ts";
import { detectHost } from "./excel/detect-host.ts";
import { excelHost } from "./excel/excel-host.ts";
import { isInOffice } from "./excel/office-address.ts";
import { functionRepair } from "./excel/repair-functions.ts";
import { mountPane, type Pane } from "./pane/pane.ts";

const WAITING = "Waiting for Excel …";
const NO_LIBRARY =
  "The library that ties Dutybook to the workbook could not be loaded, so this pane can write no sheet and no DUTY " +
  "function answers. See that this machine reaches the address the add-in is served from, then close the pane and open it again.";

registerCommands({ repairFunctions: async () => (await pane)?.repairFunctions() });
const pane = openPane();

async function openPane(): Promise<Pane | undefined> {
  const root = document.getElementById("pane");
  if (root === null) throw new Error("the page has no place for the pane");
  if (isInOffice(window)) say(root, WAITING);
  const program = await detectHost(window);
  if (program === "no library") {
    say(root, NO_LIBRARY);
    return undefined;
  }
  return mountPane(root, program === "excel" ? { host: excelHost, repair: functionRepair } : { host: undefined });
}

function say(root: HTMLElement, words: string): void {
  const line = document.createElement("p");
  line.className = "before-pane";
  line.role = "status";
  line.textContent = words;
  root.replaceChildren(line);
}
