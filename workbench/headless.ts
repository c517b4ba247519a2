import { createRequire } from "node:module";
import { CATALOGUE } from "../shared/catalogue/catalogue.ts";
import type { Entry } from "../shared/catalogue/entry.ts";
import { cellMessages } from "./cell-messages.ts";
import { followCalculations } from "./follow-calculations.ts";
import type { ChartPainter } from "./grid-charts.ts";
import { type FormulaEngine, gridFunctions } from "./grid-functions.ts";
import { type Grid, type GridHost, gridHost } from "./grid-host.ts";
import { type GridCore, gridInside } from "./grid-inside.ts";
import { emptyWorkbook } from "./grid-workbook.ts";

export interface HeadlessGrid extends Grid {
  readonly host: GridHost;
  readonly dispose: () => void;
}

interface HeadlessOptions {
  readonly entries?: readonly Entry[];
  readonly charts?: ChartPainter;
}

/** The workbench's grid in Node, without a page: for tests and terminal commands. Opens with one empty sheet. */
export function headlessGrid({ entries = CATALOGUE, charts }: HeadlessOptions = {}): HeadlessGrid {
  // Node cannot import the grid's packages as modules; as CommonJS they load.
  const load = createRequire(import.meta.url);
  const core = load("@univerjs/core") as GridCore;
  const { FUniver } = load("@univerjs/core/facade") as typeof import("@univerjs/core/facade");
  const engine = load("@univerjs/engine-formula") as FormulaEngine;
  const { UniverSheetsNodeCorePreset } = load(
    "@univerjs/preset-sheets-node-core",
  ) as typeof import("@univerjs/preset-sheets-node-core");
  const { UniverSheetsConditionalFormattingPlugin } = load(
    "@univerjs/sheets-conditional-formatting",
  ) as typeof import("@univerjs/sheets-conditional-formatting");
  load("@univerjs/sheets-conditional-formatting/facade");

  const messages = cellMessages();
  const { classes, descriptions } = gridFunctions(engine, entries, messages);
  const univer = new core.Univer({ locale: core.LocaleType.EN_US, logLevel: core.LogLevel.WARN, locales: {} });
  const preset = UniverSheetsNodeCorePreset({
    formula: { function: classes.map(([made, name]) => [made, name]), description: [...descriptions] },
  });
  for (const plugin of preset.plugins) {
    const [made, options] = Array.isArray(plugin) ? plugin : [plugin, undefined];
    univer.registerPlugin(made, options);
  }
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  const api = FUniver.newAPI(univer);
  api.createWorkbook(emptyWorkbook());
  const grid: Grid = { api, inside: gridInside(univer, core, engine), messages };
  const stopFollowing = followCalculations(grid);
  return {
    ...grid,
    host: gridHost(grid, charts),
    dispose: () => {
      stopFollowing();
      univer.dispose();
    },
  };
}
