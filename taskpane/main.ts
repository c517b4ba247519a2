import { registerCommands } from "./excel/commands.ts";
import { detectHost } from "./excel/detect-host.ts";
import { excelHost } from "./excel/excel-host.ts";
import { isInOffice } from "./excel/office-address.ts";
import { mountPane } from "./pane/pane.ts";

const WAITING = "Waiting for Excel …";
const NO_LIBRARY =
  "The library that ties Dutybook to the workbook could not be loaded, so this pane can write no sheet and no DUTY " +
  "function answers. See that this machine reaches the address the add-in is served from, then close the pane and open it again.";

registerCommands();

async function openPane(): Promise<void> {
  const root = document.getElementById("pane");
  if (root === null) throw new Error("the page has no place for the pane");
  if (isInOffice(window)) say(root, WAITING);
  const program = await detectHost(window);
  if (program === "no library") say(root, NO_LIBRARY);
  else mountPane(root, { host: program === "excel" ? excelHost : undefined });
}

function say(root: HTMLElement, words: string): void {
  const line = document.createElement("p");
  line.className = "before-pane";
  line.role = "status";
  line.textContent = words;
  root.replaceChildren(line);
}

void openPane();
