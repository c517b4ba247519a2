import { boxOf } from "../../ports/a1.ts";
import { fitted, sizeOfRange } from "../../ports/picture-fit.ts";
import type { PictureSpec, SheetSpec, XYChartSpec } from "../../ports/sheet-spec.ts";
import { DECLARATION, xmlAttribute } from "../xml-text.ts";
import { CHART, DRAWING, RELATIONSHIPS, SHEET_DRAWING } from "./schemas.ts";

const EMU_PER_POINT = 12_700;

/** Where the charts of a sheet stand, and then its pictures; the part points to them in this order. */
export function drawingPart(sheet: SheetSpec): string {
  const { charts = [], pictures = [] } = sheet;
  const anchors = [
    ...charts.map(chartAnchor),
    ...pictures.map((picture, i) => pictureAnchor(picture, charts.length + i, sheet)),
  ];
  return `${DECLARATION}<xdr:wsDr xmlns:xdr="${SHEET_DRAWING}" xmlns:a="${DRAWING}" xmlns:r="${RELATIONSHIPS}">${anchors.join("")}</xdr:wsDr>`;
}

function corner(name: "from" | "to", row: number, column: number): string {
  return `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
}

function chartAnchor({ at, title, xTitle, yTitle }: XYChartSpec, i: number): string {
  const { top, left, bottom, right } = boxOf(at);
  const words = xmlAttribute(`${title}: ${yTitle} against ${xTitle}`);
  return `<xdr:twoCellAnchor editAs="oneCell">${corner("from", top, left)}${corner("to", bottom + 1, right + 1)}<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${
    i + 2
  }" name="Chart ${i + 1}" descr="${words}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${CHART}"><c:chart xmlns:c="${CHART}" r:id="rId${
    i + 1
  }"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`;
}

/** Hung in one cell with a size of its own, so that no width of a column bends it. */
function pictureAnchor(picture: PictureSpec, i: number, sheet: SheetSpec): string {
  const { top, left } = boxOf(picture.at);
  const { width, height } = fitted(picture, sizeOfRange(sheet, picture.at));
  const extent = `cx="${Math.round(width * EMU_PER_POINT)}" cy="${Math.round(height * EMU_PER_POINT)}"`;
  return `<xdr:oneCellAnchor>${corner("from", top, left)}<xdr:ext ${extent}/><xdr:pic><xdr:nvPicPr><xdr:cNvPr id="${
    i + 2
  }" name="Picture ${i + 1}" descr="${xmlAttribute(picture.altText)}"/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr><xdr:blipFill><a:blip r:embed="rId${
    i + 1
  }"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext ${extent}/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:oneCellAnchor>`;
}
