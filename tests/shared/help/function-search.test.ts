import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { functionsFound } from "../../../shared/help/function-search.ts";
import { TRADE_WORDS } from "../../../shared/help/trade-words.ts";

const found = (query: string): readonly string[] => functionsFound(query).map(({ id }) => id);

describe("the search of the functions", () => {
  // Words of the trade: common practice, no source.
  it.each([
    ["friction", "FRICTIONHEAD"],
    ["head loss", "FRICTIONHEAD"],
    ["C factor", "HAZENHEAD"],
    ["poly pipe", "BORE"],
    ["cavitation", "NPSHA"],
    ["bhp", "SHAFTPOWER"],
    ["BEP", "BESTEFFICIENCYPOINT"],
    ["VFD", "SPEEDRATIO"],
    ["affinity", "SPEEDRATIO"],
    ["water hammer", "SURGE"],
    ["hydrotest", "NOZZLECLASSES"],
    ["class 150", "FLANGECLASS"],
    ["genset", "GENERATORSIZE"],
    ["v-belt", "BELTDRIVE"],
    ["dry prime", "PRIMETIME"],
    ["wet well", "WORKINGVOLUME"],
    ["booster", "BOOSTERS"],
    ["tailings", "DEPOSITIONVELOCITY"],
    ["rent", "RENTAL"],
    ["lcc", "LIFECYCLECOST"],
    ["BOM", "TAKEOFF"],
    ["psi to feet", "PRESSUREHEAD"],
    ["altitude", "ATMOSPHERE"],
  ])("finds by “%s” %s among the first", (query, id) => {
    expect(found(query).slice(0, 6)).toContain(id);
  });

  it("puts the name before all, whole or begun", () => {
    expect(found("tdh")[0]).toBe("TDH");
    expect(found("frictionh")[0]).toBe("FRICTIONHEAD");
  });

  it("shows all in the order of the job where nothing is asked, and none for what no function is about", () => {
    expect(functionsFound(" ")).toEqual(CATALOGUE);
    expect(found("zeppelin")).toEqual([]);
  });

  it("has words for functions that there are, and for most of them", () => {
    const ids = new Set(CATALOGUE.map(({ id }) => id));
    const named = TRADE_WORDS.flatMap(([, functions]) => functions);
    expect(named.filter((id) => !ids.has(id))).toEqual([]);
    expect(new Set(named).size).toBeGreaterThan(ids.size * 0.7);
  });
});
