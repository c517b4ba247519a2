/** Terms a user meets that docs/terms.md, which is of the code, does not hold or words for developers. */
export const USER_TERMS = [
  {
    names: "duty",
    symbol: "",
    meaning:
      "what the customer requires: a flow from a level to a level through stated lines, with a liquid, at a site",
  },
  {
    names: "calc sheet",
    symbol: "",
    meaning:
      "the calculation of a duty written into the workbook: inputs in shaded cells, every result a live formula; [more](calc-sheet.html)",
  },
  {
    names: "basis",
    symbol: "",
    meaning:
      "where an input comes from, such as a drawing, a survey or the enquiry; typed beside the box and printed beside the cell",
  },
  {
    names: "stated, assumed",
    symbol: "",
    meaning: "stated: somebody typed it; assumed: the box was blank and a default was taken, which the sheet lists",
  },
  {
    names: "finding",
    symbol: "",
    meaning:
      "a remark beside an answer, of one of four kinds (Safety, Limit, Check, Assumed), or the error in its place; [more](errors.html)",
  },
  {
    names: "verdict",
    symbol: "",
    meaning:
      "pass, fail, check or open, for each thing a package must hold: pressure, NPSH, driver, priming, materials …",
  },
  {
    names: "total dynamic head, TDH",
    symbol: "H",
    meaning:
      "head the pump must add at a flow: static head, losses of both lines, pressure and velocity head; TDH works it out",
  },
  {
    names: "static head",
    symbol: "H_s",
    meaning: "delivery level less source level, liquid surface to liquid surface or to a free outlet",
  },
  {
    names: "suction lift",
    symbol: "",
    meaning: "height of the pump above the liquid; a pump below it has flooded suction, a negative lift here",
  },
  {
    names: "NPSH available",
    symbol: "NPSHA",
    meaning: "absolute head at the pump’s suction over the vapour pressure of the liquid; NPSHA works it out",
  },
  {
    names: "NPSH required, NPSH3",
    symbol: "NPSHR",
    meaning: "NPSH at which the pump has lost 3 % of its head by cavitation; it needs a margin above it",
  },
  {
    names: "cavitation",
    symbol: "",
    meaning:
      "vapour bubbles that form where the pressure falls below the vapour pressure and collapse where it rises: noise, pitting, loss of head",
  },
  {
    names: "shutoff head",
    symbol: "",
    meaning: "head of the pump at zero flow; on a drooping curve the maximum head lies to the right of it",
  },
  {
    names: "maximum head",
    symbol: "",
    meaning: "the highest point of the curve, wherever it lies; the pressure against a shut valve follows from it",
  },
  {
    names: "best efficiency point",
    symbol: "BEP",
    meaning: "flow at which the pump is most efficient; BESTEFFICIENCYPOINT",
  },
  {
    names: "preferred operating region",
    symbol: "POR",
    meaning: "share of BEP flow in which the pump runs well, by its specific speed; OPERATINGREGION",
  },
  { names: "runout", symbol: "", meaning: "the end of the curve at high flow" },
  {
    names: "system curve",
    symbol: "",
    meaning: "head the lines ask for over the flow; where it crosses the pump’s curve the pump runs",
  },
  {
    names: "operating point",
    symbol: "",
    meaning: "where the pump’s curve and the system curve cross; OPERATINGPOINT",
  },
  {
    names: "affinity laws",
    symbol: "",
    meaning: "flow goes with speed, head with its square, power with its cube; [more](method-affinity.html)",
  },
  { names: "trim", symbol: "", meaning: "an impeller cut to a smaller diameter" },
  {
    names: "maximum allowable working pressure",
    symbol: "MAWP",
    meaning: "maximum pressure the casing is made for at a temperature, as its manufacturer states it",
  },
  {
    names: "trade figure",
    symbol: "",
    meaning:
      "a round figure the trade goes by, such as 260 psi for Class 150 in ductile iron; shown beside the standard’s and decides nothing",
  },
  {
    names: "running, static pressure",
    symbol: "",
    meaning: "running: pumps against a shut valve; static: pumps stopped under the column of a full line",
  },
  {
    names: "surge, water hammer",
    symbol: "Δp",
    meaning:
      "pressure rise where a flow stops or turns round suddenly; the figures here are a screen only; [more](method-surge.html)",
  },
  {
    names: "blank-off",
    symbol: "",
    meaning: "vacuum at which a priming air pump draws nothing more; some 25 to 27 inHg at sea level",
  },
  {
    names: "dry prime",
    symbol: "",
    meaning: "a pump that primes itself by an air pump and runs on without water in its casing",
  },
  {
    names: "summit",
    symbol: "",
    meaning: "a place of the line higher than its neighbours, where air gathers and the pressure is minimum",
  },
  { names: "derating", symbol: "", meaning: "what altitude, heat or solids take off a rating or a curve" },
  {
    names: "light load, wet stacking",
    symbol: "",
    meaning: "a diesel run below some 30 % of its power for long fouls with carbon and unburnt fuel",
  },
  {
    names: "specific gravity",
    symbol: "SG",
    meaning:
      "density over 998.2 kg/m³, water at 20 °C (68 °F); the trade’s own reference at 60 °F, 999.0 kg/m³, lies within 0.1 % of it",
  },
  {
    names: "d50, d85",
    symbol: "d50, d85",
    meaning: "sizes that 50 % and 85 % of the solids by weight are smaller than",
  },
  {
    names: "solids by weight, by volume",
    symbol: "C_w, C_v",
    meaning:
      "share of the solids in the weight, or in the volume, of the slurry; SOLIDSBYVOLUME turns one into the other",
  },
  {
    names: "deposition velocity",
    symbol: "V_L",
    meaning: "below it solids settle in the pipe; [more](method-deposition.html)",
  },
  {
    names: "head ratio, efficiency ratio",
    symbol: "H_r, η_r",
    meaning: "what a pump keeps of its head and its efficiency on slurry; SLURRYDERATE",
  },
  {
    names: "margin, markup",
    symbol: "",
    meaning:
      "margin: profit over the selling price; markup: profit over the cost. A margin of 20 % is a markup of 25 %",
  },
  {
    names: "rating, class, PN",
    symbol: "",
    meaning:
      "Class 150 and PN16 are names, not pressures: the rating in psi or bar depends on material and temperature; [more](method-flange-class.html)",
  },
] as const;
