import { expect, it } from "vitest";
import { dutyText } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

const { cells, styles } = sheetsOf(
  dutyText(
    {},
    {
      suctionLine: [{ pipe: "10in sch40", length: "3 m", fittings: "" }],
      dischargeLine: [
        { pipe: "8in sch40", length: "123.4567", fittings: "" },
        { pipe: "8in sch40", length: "2 km", fittings: "1 exit" },
        { pipe: "8in sch40", length: "1 mm", fittings: "" },
      ],
    },
  ),
).duty;

/** By hand: 3 m / 0.3048 m a ft = 9.842519685 ft, of which four figures are 9.843; 2 km 6561.679790; 1 mm 0.003280839895. */
it.each([
  [3 / 0.3048, "#,##0.000"],
  [123.4567, undefined],
  [2000 / 0.3048, "#,##0"],
  [0.001 / 0.3048, "#,##0.000000"],
])("%d ft stands whole in its cell and is shown with four figures where conversion left more", (feet, format) => {
  const cell = cells.find(
    ({ v, style }) => typeof v === "number" && Math.abs(v - feet) < 1e-9 && /^input/.test(style ?? ""),
  );
  expect(cell).toBeDefined();
  expect(styles[cell?.style ?? ""]).toMatchObject({ unlocked: true, align: "right" });
  expect(styles[cell?.style ?? ""]?.numFmt).toBe(format);
});
