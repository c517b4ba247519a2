import { boxOf } from "../../ports/a1.ts";
import type { XYChartSpec } from "../../ports/sheet-spec.ts";
import { DECLARATION, xmlAttribute } from "../xml-text.ts";
import { CHART, DRAWING, RELATIONSHIPS, SHEET_DRAWING } from "./schemas.ts";

/** Where the charts of a sheet stand. */
export function drawingPart(charts: readonly XYChartSpec[]): string {
  return `${DECLARATION}<xdr:wsDr xmlns:xdr="${SHEET_DRAWING}" xmlns:a="${DRAWING}">${charts.map(anchor).join("")}</xdr:wsDr>`;
}

function anchor({ at, title, xTitle, yTitle }: XYChartSpec, i: number): string {
  const { top, left, bottom, right } = boxOf(at);
  const corner = (name: "from" | "to", row: number, column: number): string =>
    `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  const words = xmlAttribute(`${title}: ${yTitle} against ${xTitle}`);
  return `<xdr:twoCellAnchor editAs="oneCell">${corner("from", top, left)}${corner("to", bottom + 1, right + 1)}<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${
    i + 2
  }" name="Chart ${i + 1}" descr="${words}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${CHART}"><c:chart xmlns:c="${CHART}" xmlns:r="${RELATIONSHIPS}" r:id="rId${
    i + 1
  }"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`;
}
