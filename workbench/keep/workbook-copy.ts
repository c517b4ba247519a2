import type { IWorkbookData } from "@univerjs/core";
import type { BesideGrid, Grid, GridHost } from "../grid-host.ts";

/** A workbook of the grid as plain data, whole: the looks and sheet ids of the grid's own, and what the host keeps beside it. */
export interface WorkbookCopy {
  readonly book: IWorkbookData;
  readonly beside: BesideGrid;
}

export function workbookCopy({ api }: Grid, host: GridHost): WorkbookCopy {
  const workbook = api.getActiveWorkbook();
  if (workbook === null) throw new Error("no workbook is open");
  const { resources = [], ...book } = workbook.save();
  return { book: { ...book, resources: resources.map(withoutFloats) }, beside: host.beside() };
}

/** Puts the copy in the place of the present workbook, and calculates it. */
export async function putBack({ api }: Grid, host: GridHost, { book, beside }: WorkbookCopy): Promise<void> {
  const present = api.getActiveWorkbook();
  if (present !== null) api.disposeUnit(present.getId());
  api.createWorkbook(book);
  await host.takeBack(beside);
}

/** What the grid calls the drawings over its sheets, and those among them that the page draws itself. */
const DRAWINGS = "SHEET_DRAWING_PLUGIN";
const DRAWN_BY_PAGE = 8;

interface Drawings {
  readonly data?: Readonly<Record<string, { readonly drawingType?: number }>>;
  readonly order?: readonly string[];
}

/** Charts and our own pictures are drawn anew: what drew them is gone with the page. */
function withoutFloats<R extends { readonly name: string; readonly data: string }>(resource: R): R {
  if (resource.name !== DRAWINGS || resource.data === "") return resource;
  const sheets = JSON.parse(resource.data) as Readonly<Record<string, Drawings>>;
  const kept = Object.entries(sheets).map(([sheet, { data = {}, order = [] }]) => {
    const others = Object.entries(data).filter(([, { drawingType }]) => drawingType !== DRAWN_BY_PAGE);
    const ids = new Set(others.map(([id]) => id));
    return [sheet, { data: Object.fromEntries(others), order: order.filter((id) => ids.has(id)) }] as const;
  });
  return { ...resource, data: JSON.stringify(Object.fromEntries(kept)) };
}
