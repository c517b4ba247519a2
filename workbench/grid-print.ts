import { absolute, boxOf } from "../shared/ports/a1.ts";
import type { PrintSpec } from "../shared/ports/sheet-spec.ts";
import type { GridInside } from "./grid-inside.ts";

/** Names with a space, which no user can give. */
const AREA = "print area";
const TITLES = "print titles";
const endOf = (page: number): string => `print page ${page}`;

/** Keeps what is printed, what is repeated and where pages end as hidden names, which the grid moves along with the cells. */
export function anchorPrint(
  inside: GridInside,
  workbook: string,
  sheet: string,
  sheetName: string,
  { area, titleRows, breaks = [] }: PrintSpec,
): void {
  const set = (name: string, range: string): void => inside.setName(workbook, sheet, sheetName, name, absolute(range));
  set(AREA, area);
  if (titleRows !== undefined)
    set(
      TITLES,
      titleRows.replace(/\d+/g, (row) => `A${row}`),
    );
  for (const [i, row] of breaks.entries()) set(endOf(i), `A${row}`);
}

/** The same where it stands now. A page whose last row is gone goes on; an area that is gone is as it was. */
export function anchoredPrint(inside: GridInside, workbook: string, sheet: string, print: PrintSpec): PrintSpec {
  const now = new Map(inside.namesOf(workbook, sheet).map(({ name, range }) => [name, range]));
  const { titleRows: _, breaks = [], ...others } = print;
  const titles = now.get(TITLES);
  const ends = breaks.flatMap((_row, i) => {
    const at = now.get(endOf(i));
    return at === undefined ? [] : [boxOf(at).bottom + 1];
  });
  return {
    ...others,
    area: now.get(AREA) ?? print.area,
    ...(titles === undefined
      ? {}
      : { titleRows: titles.includes(":") ? titles.replaceAll("A", "") : rowTwice(titles) }),
    ...(print.breaks === undefined ? {} : { breaks: ends }),
  };
}

/** "A4" as "4:4". */
function rowTwice(cell: string): string {
  const row = cell.replace("A", "");
  return `${row}:${row}`;
}
