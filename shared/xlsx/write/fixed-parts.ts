import { DECLARATION } from "../xml-text.ts";
import type { Part } from "./package.ts";
import { DRAWING, MAIN } from "./schemas.ts";

/** The number by which a cell points to the one entry of SPILL_PART. */
export const SPILL_MARK = 1;
export const SPILL_NAME = "XLDAPR";

const DYNAMIC_ARRAY = ' xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"';

export const SPILL_TYPE = `<metadataType name="${SPILL_NAME}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;

/** What the entry of a spilling formula says, its namespace declared in place. */
export const SPILL_FUTURE = `<futureMetadata name="${SPILL_NAME}" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties${DYNAMIC_ARRAY} fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>`;

/** Says of a cell that its formula may fill further cells. */
export const SPILL_TEXT = `${DECLARATION}<metadata xmlns="${MAIN}"${DYNAMIC_ARRAY}><metadataTypes count="1">${SPILL_TYPE}</metadataTypes>${SPILL_FUTURE.replace(DYNAMIC_ARRAY, "")}<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

export const SPILL_PART: Part = { path: "xl/metadata.xml", type: "sheetMetadata", text: SPILL_TEXT };

const COLORS = {
  dk2: "1F3A4D",
  lt2: "EEF1F3",
  accent1: "1F4E79",
  accent2: "B5541C",
  accent3: "3B7A57",
  accent4: "7A4B8C",
  accent5: "8C7A1F",
  accent6: "4F5B66",
  hlink: "0B5CAD",
  folHlink: "6B3FA0",
};

/** Colours and fonts the user finds in the menus. */
export const THEME_PART: Part = { path: "xl/theme/theme1.xml", type: "theme", text: theme() };

function theme(): string {
  const colors = Object.entries(COLORS).map(([name, value]) => `<a:${name}><a:srgbClr val="${value}"/></a:${name}>`);
  const fonts = '<a:latin typeface="Arial"/><a:ea typeface=""/><a:cs typeface=""/>';
  const own = '<a:solidFill><a:schemeClr val="phClr"/></a:solidFill>';
  const line = `<a:ln w="9525">${own}<a:prstDash val="solid"/></a:ln>`;
  const effect = "<a:effectStyle><a:effectLst/></a:effectStyle>";
  return `${DECLARATION}<a:theme xmlns:a="${DRAWING}" name="Sheet"><a:themeElements><a:clrScheme name="Sheet"><a:dk1><a:sysClr val="windowText" lastClr="000000"/></a:dk1><a:lt1><a:sysClr val="window" lastClr="FFFFFF"/></a:lt1>${colors.join("")}</a:clrScheme><a:fontScheme name="Sheet"><a:majorFont>${fonts}</a:majorFont><a:minorFont>${fonts}</a:minorFont></a:fontScheme><a:fmtScheme name="Sheet"><a:fillStyleLst>${own.repeat(3)}</a:fillStyleLst><a:lnStyleLst>${line.repeat(3)}</a:lnStyleLst><a:effectStyleLst>${effect.repeat(3)}</a:effectStyleLst><a:bgFillStyleLst>${own.repeat(3)}</a:bgFillStyleLst></a:fmtScheme></a:themeElements></a:theme>`;
}
