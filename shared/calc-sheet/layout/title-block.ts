import { FIELDS } from "../../duty/fields.ts";
import type { Logo } from "../../duty/logo.ts";
import { columnPoints } from "../../ports/picture-fit.ts";
import type { JobText, TitleBlockItem } from "../plan.ts";
import { COLUMNS, divided, LABEL, NUMBER, REFERENCE, REMARK, type Stretch, VALUE, WHOLE } from "./columns.ts";
import type { Page } from "./page.ts";

/** Points of the row with the firm's name and its picture. */
const FIRM_HEIGHT = 34;

const [LEFT_LABEL, LEFT, RIGHT_LABEL, RIGHT] = divided([2, 3.5, 1.5, 3]) as readonly [
  Stretch,
  Stretch,
  Stretch,
  Stretch,
];
const SIGNED: Stretch = [NUMBER, LABEL];
/** Name, initials and date. */
const BOXES: readonly (readonly [Stretch, head: string])[] = [
  [[VALUE, REMARK], "name"],
  [[REMARK + 1, REMARK + 1], "initials"],
  [[REMARK + 2, REFERENCE], "date"],
];

/** Who the sheet is from and for, who signed it, and its last revisions. */
export function placeTitleBlock(page: Page, { firm, logo, facts, signed, revisions }: TitleBlockItem): void {
  placeFirm(page, firm, logo);
  for (const [left, right] of facts) {
    placeText(page, left, "blockLabel", LEFT_LABEL, LEFT);
    if (right !== undefined) placeText(page, right, "labelBeside", RIGHT_LABEL, RIGHT);
    page.next();
  }
  placeSigned(page, signed, revisions);
}

/** The name at the left, the picture at the right; no row where there is neither. */
function placeFirm(page: Page, firm: JobText | undefined, logo: TitleBlockItem["logo"]): void {
  if (firm === undefined && logo === undefined) return;
  if (firm !== undefined) {
    page.merged(LEFT_LABEL[0], LEFT[1], { v: firm.text, style: "firm" });
    placeBox(page, firm, LEFT_LABEL);
  }
  if (logo !== undefined) {
    const { type, base64, widthPx, heightPx } = logo;
    const altText = firm === undefined ? "Logo" : `Logo of ${firm.text}`;
    const box = { top: page.row, bottom: page.row, left: leftOf(logo), right: WHOLE[1] };
    page.picture({ type, base64, widthPx, heightPx, altText }, box);
  }
  page.height(FIRM_HEIGHT);
  page.row += 1;
}

/** Its cell is that of the box. */
function placeBox(page: Page, { key, label, text }: JobText, [column]: Stretch): void {
  page.input(key, column, { label, written: text, place: key });
  page.offer(column, FIELDS[key]);
}

/** The last column from which the picture has its width up to the right edge. */
function leftOf({ widthPx, heightPx }: Logo): number {
  const wanted = (FIRM_HEIGHT * widthPx) / heightPx;
  let left = WHOLE[1];
  for (let room = 0; left > RIGHT_LABEL[0]; left -= 1) {
    room += columnPoints(COLUMNS[left] as number);
    if (room >= wanted) break;
  }
  return left;
}

function placeText(
  page: Page,
  { key, label, text }: JobText,
  style: "blockLabel" | "labelBeside",
  of: Stretch,
  at: Stretch,
): void {
  page.merged(of[0], of[1], { v: label, style });
  page.merged(at[0], at[1], { v: text, style: "jobText" });
  placeBox(page, { key, label, text }, at);
}

/** Names, initials and dates, and under them the last revisions. */
function placeSigned(page: Page, signed: TitleBlockItem["signed"], revisions: TitleBlockItem["revisions"]): void {
  page.space(UNDER_BOX);
  for (const [at, text] of BOXES) page.merged(at[0], at[1], { v: text, style: "signHead" });
  page.next();
  for (const { label, boxes } of signed) {
    page.merged(SIGNED[0], SIGNED[1], { v: label, style: "blockLabel" });
    for (const [i, box] of boxes.entries()) {
      const [at] = BOXES[i] ?? [SIGNED];
      page.merged(at[0], at[1], { v: box.text, style: "jobText" });
      placeBox(page, box, at);
    }
    page.next();
  }
  if (revisions.length === 0) return;
  page.space(UNDER_BOX);
  page.merged(SIGNED[0], SIGNED[1], { v: "Revision, date, by, change", style: "blockLabel" });
  for (const [row, text] of revisions.entries()) {
    if (row > 0) page.merged(SIGNED[0], SIGNED[1], { style: "blockLabel" });
    page.merged(VALUE, REFERENCE, { v: text, style: "history" });
    page.next();
  }
}

/** Points between a box and what stands under it. */
const UNDER_BOX = 3;
