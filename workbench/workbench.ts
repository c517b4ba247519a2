import "./workbench.css";
import { mountPane } from "../taskpane/pane/pane.ts";
import { REACH } from "../taskpane/part.ts";
import { paneDuty } from "./before-grid.ts";
import { startDivider } from "./divider.ts";
import { element } from "./element.ts";
import { startedGrid } from "./grid-parts.ts";
import { hostToCome } from "./host-to-come.ts";
import { startZones } from "./zones.ts";

startDivider(element("divider"), element("workbench"));
const coming = hostToCome();
mountPane(element("pane"), {
  host: coming.host,
  opening: paneDuty.opening(),
  onDuty: paneDuty.changed,
  help: "../help/",
});
startZones([
  { element: element("grid"), first: () => element("grid").querySelector('[contenteditable="true"]') },
  { element: element("pane"), first: () => element("pane").querySelector('[role="tab"][tabindex="0"]') },
]);
void loadGrid();

/** The grid is by far the largest part of the page; the pane answers without it. */
async function loadGrid(): Promise<void> {
  try {
    const { host } = await startedGrid();
    coming.arrived(host);
  } catch (fault) {
    console.error(fault);
    coming.failed();
    // What was loaded and failed would fail again in this page.
    const isLoaded = !(fault instanceof Error && /^(ChunkLoadError|CSS_CHUNK_LOAD_FAILED)$/.test(codeOf(fault)));
    sayNotLoaded(isLoaded ? () => location.reload() : loadGrid);
  }
}

/** As the bundler marks a script or a style that could not be had. */
function codeOf(fault: Error & { readonly code?: unknown }): string {
  return typeof fault.code === "string" ? fault.code : fault.name;
}

function sayNotLoaded(tryAgain: () => void): void {
  const words = document.createElement("p");
  words.id = "loading";
  words.role = "alert";
  words.textContent = `The spreadsheet could not be loaded; the pane works without it, and nothing that was kept is lost. ${REACH} `;
  const again = document.createElement("button");
  again.type = "button";
  again.textContent = "Try again";
  again.addEventListener("click", tryAgain);
  words.append(again);
  element("grid").replaceChildren(words);
}
