import { FIELDS } from "../../duty/fields.ts";
import type { Logo } from "../../duty/logo.ts";
import { columnPoints } from "../../ports/picture-fit.ts";
import type { JobText, TitleBlockItem } from "../plan.ts";
import { COLUMNS, divided, LABEL, NUMBER, REFERENCE, REMARK, type Stretch, UNIT, VALUE, WHOLE } from "./columns.ts";
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
  [[VALUE, UNIT], "name"],
  [[REMARK, REMARK], "initials"],
  [[REMARK + 1, REMARK + 1], "date"],
];
const HISTORY: Stretch = [REMARK + 2, REFERENCE];

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

/** Names, initials and dates at the left, the last revisions at the right. */
function placeSigned(page: Page, signed: TitleBlockItem["signed"], revisions: TitleBlockItem["revisions"]): void {
  const heads = [
    [SIGNED, ""],
    ...BOXES,
    [HISTORY, revisions.length === 0 ? "" : "revision, date, by, change"],
  ] as const;
  for (const [at, text] of heads) page.merged(at[0], at[1], { v: text, style: "signHead" });
  page.height(HEADS_HEIGHT);
  page.row += 1;
  for (let row = 0; row < Math.max(signed.length, revisions.length); row += 1) {
    const one = signed[row];
    if (one !== undefined) {
      page.merged(SIGNED[0], SIGNED[1], { v: one.label, style: "blockLabel" });
      for (const [i, box] of one.boxes.entries()) {
        const [at] = BOXES[i] ?? [SIGNED];
        page.merged(at[0], at[1], { v: box.text, style: "jobText" });
        placeBox(page, box, at);
      }
    }
    const revision = revisions[row] ?? "";
    page.merged(HISTORY[0], HISTORY[1], { v: revision, style: "history" });
    page.next();
  }
}

const HEADS_HEIGHT = 11;
