import { expect, it } from "vitest";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { openingState } from "../../../../taskpane/pane/state.ts";
import { results } from "../../../../taskpane/pane/views/results.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { dutyText } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";

it("says once why the figures of head and NPSH are missing", () => {
  const duty = dutyText({}, { suctionLine: [{ pipe: "10in sch40", length: "20 ft", fittings: "1 gatee valve" }] });
  const context = { state: openingState(duty), worked: workedOut(duty) } as unknown as PaneContext;
  const figures = [...markup(results.view(context)).matchAll(/<dt>([^<]*)<\/dt>\s*<dd>([^<]*)<\/dd>/g)].map(
    ([, label = "", text = ""]) => [label, text.trim()] as const,
  );
  const refused = figures.filter(([, text]) => text.includes("gatee"));
  expect(refused).toEqual([["Total dynamic head", expect.stringMatching(/“gatee valve” is not known/)]]);
  const waiting = figures.filter(([, text]) => text === "–").map(([label]) => label);
  expect(waiting).toEqual(expect.arrayContaining(["Suction fittings", "NPSH available", "Suction line losses"]));
  expect(figures.find(([label]) => label === "Static head")?.[1]).toMatch(/^100\.0 ft$/);
});
