import { npshMargin, npshMarginMethod } from "../../../src/suction/npsh-margin.ts";
import { SERVICES } from "../../../src/tables/services.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { openChoice } from "../parameters/open-choice.ts";
import { inSI } from "./operating-region.ts";

export const NPSHMARGIN = defineEntry({
  id: "NPSHMARGIN",
  group: "System and suction",
  summary: "NPSH margin to keep over NPSH required, by service",
  method:
    "The greater of a head and a share of NPSHR. Dewatering, bypass, trash, rental, drainage, irrigation, slurry and every suction lift: 1.0 m (3.28 ft) and 30 %. Water and wastewater, power, pulp and paper, water injection, cooling towers: 0.6 m (1.97 ft) and 10 %, above a suction specific speed of 7500 (145 in SI) 1.0 m and 20 %. Chemical and general industry the same, from 11 000 (213) on. Oil, gas and pipelines: 1.0 m and 10 %. Building services: none, above 7500 0.6 m and 10 %. A margin that the customer or the maker states goes before these. Not yet verified against the standard, whose 2024 edition makes the share depend on flow.",
  cites: npshMarginMethod.cites,
  parameters: {
    NPSHR: quantity("head", { about: "NPSH the pump requires at this flow (3 % head drop)", range: "0 or more" }),
    service: openChoice(SERVICES, "What the pump is for", "the margin of a suction lift"),
    suctionSpecificSpeed: quantity("ratio", {
      about: "Suction specific speed, as SUCTIONSPECIFICSPEED gives it: rpm, US gpm, ft with US, rpm, m³/s, m else",
      example: "8500",
      range: "above 0",
      whenLeftOut: { value: null, shown: "not known: the greater margin" },
    }),
  },
  answer: { kind: "quantity", name: "NPSH margin", quantity: "head" },
  examples: [
    {
      args: [34.67, "water and wastewater", 7400],
      answer: 3.467,
      within: 1e-9,
      source: "by hand from ANSI/HI 9.6.1 as summarised: the greater of 0.6 m (1.97 ft) and 0.1 × 34.67 ft",
    },
    {
      args: [4.39, "dewatering", null, "SI"],
      answer: 1.317,
      within: 1e-9,
      source: "by hand: the greater of 1.0 m and 0.3 × 4.39 m",
    },
  ],
  run: ({ NPSHR, service, suctionSpecificSpeed }, { unitSet }) => {
    const converted = inSI(suctionSpecificSpeed, unitSet);
    return npshMargin({
      npshRequired: NPSHR,
      ...(service !== null && { service }),
      ...(converted !== undefined && { suctionSpecificSpeed: converted }),
    });
  },
});
