import { describe, expect, it } from "vitest";
import { folded, type SearchDocument, searchPages } from "../../../shared/help/search.ts";
import { HELP_FILES } from "../../support/help.ts";

const documents: readonly SearchDocument[] = JSON.parse(HELP_FILES["search.json"] as string);

const found = (query: string) => searchPages(documents, query).map(({ file }) => file);

describe("the search of the help", () => {
  it.each([
    ["friction", "FRICTIONHEAD.html"],
    ["friction loss in pipe", "FRICTIONHEAD.html"],
    ["NPSH", "NPSHA.html"],
    ["cavitation", "NPSHA.html"],
    ["flange", "FLANGECLASS.html"],
    ["flange class", "FLANGECLASS.html"],
    ["fuel", "FUELRATE.html"],
    ["fuel tank", "FUELTANKHOURS.html"],
    ["generator", "GENERATORSIZE.html"],
    ["bolt torque", "BOLTTORQUE.html"],
    ["water hammer", "SURGE.html"],
    ["solids settle", "DEPOSITIONVELOCITY.html"],
    ["TDH", "TDH.html"],
    ["wet well", "WORKINGVOLUME.html"],
    ["elbows", "FITTINGHEAD.html"],
    ["priming time", "PRIMETIME.html"],
    ["motor size", "MOTORSIZE.html"],
    ["rental", "RENTAL.html"],
    ["vapor pressure", "VAPORPRESSURE.html"],
    ["vapour pressure", "VAPORPRESSURE.html"],
  ])("finds by “%s” %s among the first", (query, file) => {
    expect(found(query).slice(0, 6)).toContain(file);
  });

  it("finds the same by either spelling", () => {
    for (const [british, american] of [
      ["grey iron", "gray iron"],
      ["galvanised", "galvanized"],
      ["hydrogen sulphide", "hydrogen sulfide"],
    ] as const) {
      expect(found(british).length).toBeGreaterThan(0);
      expect(found(american)).toEqual(found(british));
    }
  });

  it("finds a function by its name before all others", () => {
    expect(found("npsha")[0]).toBe("NPSHA.html");
    expect(found("surge")[0]).toBe("SURGE.html");
    expect(found("vaporpressure")[0]).toBe("VAPORPRESSURE.html");
  });

  it("asks for every word, and finds nothing by none", () => {
    expect(found("friction zeppelin")).toEqual([]);
    expect(found("  ")).toEqual([]);
  });

  it("compares without case, accents and plurals", () => {
    expect(folded("Flanges, JOUKOWSKY’s Décharge; losses 10in")).toEqual([
      "flange",
      "joukowsky",
      "s",
      "decharge",
      "losse",
      "10in",
    ]);
  });
});
