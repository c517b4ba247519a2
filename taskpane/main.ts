import { registerCommands } from "./excel/commands.ts";
import { detectHost } from "./excel/detect-host.ts";
import { excelHost } from "./excel/excel-host.ts";
import { mountPane } from "./pane/pane.ts";

registerCommands();

async function openPane(): Promise<void> {
  const root = document.getElementById("pane");
  if (root === null) throw new Error("the page has no place for the pane");
  mountPane(root, { host: (await detectHost()) === "excel" ? excelHost : undefined });
}

void openPane();
