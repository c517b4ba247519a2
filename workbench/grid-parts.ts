import { breath } from "./breath.ts";

/**
 * The libraries of the grid, what others rest on first. All of them are one download; started together they would leave
 * the pane without an answer for most of a second.
 */
const LIBRARIES: readonly (() => Promise<unknown>)[] = [
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "react-dom/client"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/core"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/engine-render"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/engine-formula"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/sheets"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/ui"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/docs-ui"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/sheets-ui"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/preset-sheets-core"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/preset-sheets-drawing"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/preset-sheets-data-validation"),
  () => import(/* webpackChunkName: "grid", webpackExports: [] */ "@univerjs/preset-sheets-conditional-formatting"),
];

/** Starts the grid, its libraries one after another. */
export async function startedGrid(): Promise<typeof import("./grid-page.ts")> {
  for (const load of LIBRARIES) {
    await load();
    await breath();
  }
  return import(/* webpackChunkName: "grid" */ "./grid-page.ts");
}
