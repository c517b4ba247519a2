import { unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { fitted, sizeOfRange } from "../../../shared/ports/picture-fit.ts";
import type { PictureSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { writeWorkbook } from "../../../shared/xlsx/write-workbook.ts";
import { BASELINE_JPEG, WIDE_PNG } from "../../support/pictures.ts";
import { partsOf } from "./parts.ts";
import { SAMPLE } from "./sample-sheet.ts";

const LOGO: PictureSpec = {
  at: "B20:C20",
  type: "png",
  base64: WIDE_PNG,
  widthPx: 120,
  heightPx: 48,
  altText: 'Logo of "A & B"',
};
const PHOTO: PictureSpec = { ...LOGO, at: "A1", type: "jpeg", base64: BASELINE_JPEG, altText: "Site" };

function written(...sheets: readonly Partial<SheetSpec>[]): Uint8Array {
  const specs = sheets.map((change, i) => ({ ...SAMPLE, name: `Sheet ${i}`, ...change }));
  return writeWorkbook({ sheets: specs });
}

describe("a picture on a sheet", () => {
  it.each([
    // Twice as wide as the room is high, and the other way round.
    [
      { width: 60, height: 60 },
      { width: 60, height: 24 },
    ],
    [
      { width: 500, height: 24 },
      { width: 60, height: 24 },
    ],
    [
      { width: 120, height: 48 },
      { width: 120, height: 48 },
    ],
  ])("fits into its room in its own proportions: %o", (room, size) => {
    expect(fitted(LOGO, room)).toEqual(size);
  });

  it("has the room of its columns and rows", () => {
    // Two columns of 12 characters, 89 px of 0.75 pt each; row 20 is 40 pt, rows 21 and 22 the usual 12.75 pt.
    expect(sizeOfRange(SAMPLE, "B20:C22")).toEqual({ width: 2 * 89 * 0.75, height: 40 + 2 * 12.75 });
    // Beyond its columns a sheet has the usual 64 px.
    expect(sizeOfRange({ columns: [] }, "A1:B1")).toEqual({ width: 2 * 48, height: 12.75 });
  });

  it("stands in the file as it is, with its kind, after the charts of the sheet", () => {
    const file = written({ pictures: [LOGO, PHOTO] });
    const parts = partsOf(file);
    expect(Buffer.from(unzipSync(file)["xl/media/image1.png"] as Uint8Array).toString("base64")).toBe(WIDE_PNG);
    expect(Buffer.from(unzipSync(file)["xl/media/image2.jpeg"] as Uint8Array).toString("base64")).toBe(BASELINE_JPEG);
    expect(parts["[Content_Types].xml"]).toContain('<Default Extension="png" ContentType="image/png"/>');
    expect(parts["[Content_Types].xml"]).toContain('<Default Extension="jpeg" ContentType="image/jpeg"/>');
    expect(parts["[Content_Types].xml"]).not.toContain("/xl/media/");
    const links = parts["xl/drawings/_rels/drawing1.xml.rels"] ?? "";
    const targets = [...links.matchAll(/Id="(\w+)" Type="[^"]*\/(\w+)" Target="([^"]+)"/g)].map((m) => m.slice(1));
    expect(targets.slice(-2)).toEqual([
      ["rId2", "image", "/xl/media/image1.png"],
      ["rId3", "image", "/xl/media/image2.jpeg"],
    ]);
    const drawing = parts["xl/drawings/drawing1.xml"] ?? "";
    expect(drawing.match(/r:embed="(\w+)"/g)).toEqual(['r:embed="rId2"', 'r:embed="rId3"']);
    expect(drawing).toContain('descr="Logo of &quot;A &amp; B&quot;"');
    // 40 pt high, and 2.5 times as wide: 12,700 EMU a point.
    expect(drawing).toContain(`<xdr:ext cx="${100 * 12_700}" cy="${40 * 12_700}"/>`);
    expect(drawing).toContain("<xdr:from><xdr:col>1</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>19</xdr:row>");
    const ids = [...drawing.matchAll(/<xdr:cNvPr id="(\d+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("stands in the file once, however often it is drawn, and on a sheet without charts too", () => {
    const parts = partsOf(written({ charts: [], pictures: [LOGO] }, { pictures: [LOGO] }, { charts: [] }));
    expect(Object.keys(parts).filter((path) => path.startsWith("xl/media/"))).toEqual(["xl/media/image1.png"]);
    expect(parts["xl/worksheets/sheet1.xml"]).toContain('<drawing r:id="rId1"/>');
    expect(parts["xl/worksheets/sheet3.xml"]).not.toContain("<drawing");
    for (const [i, link] of ["rId1", "rId2"].entries()) {
      expect(parts[`xl/drawings/drawing${i + 1}.xml`]).toContain(`r:embed="${link}"`);
      expect(parts[`xl/drawings/_rels/drawing${i + 1}.xml.rels`]).toContain(`Id="${link}"`);
    }
  });

  it("must be a file in base64", () => {
    expect(() => written({ pictures: [{ ...LOGO, base64: "no file" }] })).toThrow("B20:C20: the picture is no base64");
  });
});
