import { describe, expect, expectTypeOf, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import type { BOLTTORQUE } from "../../../shared/catalogue/entries/bolting.ts";
import { MOTORFRAMES } from "../../../shared/catalogue/entries/drive-lists.ts";
import { FLANGECHECK } from "../../../shared/catalogue/entries/pressure-and-flanges.ts";
import type { ArgumentsOf, ColumnKeyOf } from "../../../shared/catalogue/entry.ts";

describe("an entry keeps its types", () => {
  it("the keys of its columns, in their order", () => {
    expectTypeOf<ColumnKeyOf<typeof FLANGECHECK>>().toEqualTypeOf<"verdict" | "rating" | "margin" | "testPressure">();
    expect(FLANGECHECK.answer.columns.map(({ key }) => key)).toEqual(["verdict", "rating", "margin", "testPressure"]);
    // @ts-expect-error a column that the answer does not have
    expect(FLANGECHECK.answer.columns.find(({ key }) => key === "presure")).toBeUndefined();
  });

  it("the keys of its arguments, and which may be left out", () => {
    expectTypeOf<ArgumentsOf<typeof FLANGECHECK, number>>().branded.toEqualTypeOf<{
      readonly flangeMaterial: number;
      readonly flangeClass: number;
      readonly pressure: number;
      readonly metalTemperature?: number;
    }>();
    const bare = { size: 6, flangeClass: 150, pressure: 250, gasket: 1 } satisfies ArgumentsOf<
      typeof BOLTTORQUE,
      number
    >;
    // @ts-expect-error the gasket must be stated
    const lacking: ArgumentsOf<typeof BOLTTORQUE, number> = { size: 6, flangeClass: 150, pressure: 250 };
    // @ts-expect-error no such argument
    const misspelt: ArgumentsOf<typeof BOLTTORQUE, number> = { ...bare, nutfactor: 1 };
    expect([lacking, misspelt]).toHaveLength(2);
  });

  it("none of them where it has none", () => {
    expectTypeOf<keyof ArgumentsOf<typeof MOTORFRAMES, number>>().toBeNever();
    expect(MOTORFRAMES.parameters).toEqual([]);
  });

  it("and stands in the catalogue by its own name", () => {
    expect(CATALOGUE).toContain(FLANGECHECK);
    expectTypeOf(FLANGECHECK.id).toEqualTypeOf<"FLANGECHECK">();
  });
});
