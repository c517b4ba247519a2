import * as core from "@univerjs/core";
import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import * as engine from "@univerjs/engine-formula";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import rulesEnglish from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreEnglish from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import listsEnglish from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingEnglish from "@univerjs/preset-sheets-drawing/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import { CATALOGUE } from "../shared/catalogue/catalogue.ts";
import { breath } from "./breath.ts";
import { cellMessages } from "./cell-messages.ts";
import { followCalculations } from "./follow-calculations.ts";
import { leaveErrorsToStrip } from "./grid-alerts.ts";
import { gridFunctions } from "./grid-functions.ts";
import { type Grid, type GridHost, gridHost } from "./grid-host.ts";
import { gridInside } from "./grid-inside.ts";
import { followTheme } from "./grid-theme.ts";
import { emptyWorkbook } from "./grid-workbook.ts";
import { type GridEditing, gridEditing } from "./hints/grid-editing.ts";
import { pageCharts } from "./page-charts.tsx";

export interface PageGrid extends Grid {
  readonly host: GridHost;
  readonly editing: GridEditing;
}

/** Starts the grid in an element of the page, with one empty sheet, in pieces that let the rest of the page answer. */
export async function pageGrid(container: HTMLElement): Promise<PageGrid> {
  const messages = cellMessages();
  const { classes, descriptions } = gridFunctions(engine, CATALOGUE, messages);
  await breath();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    logLevel: LogLevel.WARN,
    locales: { [LocaleType.EN_US]: mergeLocales(coreEnglish, listsEnglish, rulesEnglish, drawingEnglish) },
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      ribbonType: "simple",
      disableAutoFocus: true,
      // Text such as "007" is text because it was written as text; nothing to warn of.
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
      footer: { menus: false },
      formula: { function: classes.map(([made, name]) => [made, name]), description: [...descriptions] },
    }),
    UniverSheetsDrawingPreset(),
    UniverSheetsDataValidationPreset({ showEditOnDropdown: false }),
    UniverSheetsConditionalFormattingPreset(),
  ];
  const registered = new Set<unknown>();
  for (const plugin of presets.flatMap(({ plugins }) => plugins)) {
    const [made, options] = Array.isArray(plugin) ? plugin : [plugin, undefined];
    if (registered.has(made)) continue;
    registered.add(made);
    univer.registerPlugin(made, options);
  }
  await breath();
  const api = FUniver.newAPI(univer);
  const grid: Grid = { api, inside: gridInside(univer, core, engine), messages };
  await breath();
  api.createWorkbook(emptyWorkbook());
  followCalculations(grid);
  leaveErrorsToStrip(univer);
  // Before the first frame is drawn.
  followTheme(api);
  await breath();
  return { ...grid, host: gridHost(grid, pageCharts(api)), editing: gridEditing(univer) };
}
