import type { LogoItem } from "../plan.ts";
import { LABEL, VALUE } from "./columns.ts";
import type { Page } from "./page.ts";

/** Points. */
const HEIGHT = 48;

/** On a row of its own, as high as that is. */
export function placeLogo(page: Page, { logo, firm }: LogoItem): void {
  page.height(HEIGHT);
  const altText = firm === "" ? "Logo" : `Logo of ${firm}`;
  page.picture({ ...logo, altText }, { top: page.row, left: LABEL, bottom: page.row, right: VALUE });
  page.row += 1;
}
