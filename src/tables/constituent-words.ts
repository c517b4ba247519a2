/**
 * What is said of the rows of `CONSTITUENT_ROWS`: name | what governs | better metal, outside the castings here | conditions
 * | danger to people | sources looked up. Where no source stands it is common practice.
 */
export const CONSTITUENT_WORDS = `
fresh water | rust by oxygen | | ranges are what the name is taken to mean where nothing is stated | |
storm water | grit | | diesel and grit likely: ask | |
hot fresh water | oxygen above 60 °C; elastomers; plastic line | | 60 to 90 °C; 316 by the chloride screen | scald |
demineralised water | soft water takes iron up; oxygen | | iron pick-up may matter more than life | |
brackish water | pitting; graphitic corrosion | super duplex; Ni-resist | duplex at or below 20 °C, flowing | | NP
sea water, cold and flowing | pitting and crevices; galvanic couples | super duplex PREN 40; titanium; Ni-resist D2 | moves whenever wet, flushed with fresh water when idle; bronze to 4.3 m/s in casings; iron only for days | | SW IM
sea water, warm or stagnant | pitting and crevices | super duplex (crevices to 20 °C, open castings to 30 °C); titanium | above 20 °C or standing | | SW IM
sea water, sulphide-polluted | sulphide on copper alloys; pitting | super duplex; titanium | as cold sea water, bronze struck out | | SW PO
brine, sodium chloride | pitting; crevices | super duplex; titanium; rubber lining | oxygen and warmth decide; deaerated cold brine is milder | | BR
brine, calcium or magnesium chloride | pitting; acid by hydrolysis when hot | super duplex; titanium; rubber lining | SG to 1.40: power and pressure | | BR
potash brine | pitting; crystals | super duplex; rubber lining | crystals wear soft faces | |
produced water | chloride, CO2, H2S, oil | super duplex; nickel alloys by ISO 15156 | H2S partial pressure decides (sour above 0.3 kPa) | H2S; flammable | SO
acid mine water | acid with ferric iron; chloride; grit | super duplex; alloy 20; 316L with nil chloride | 316 with care to 100 mg/L chloride, at pH 2.5 or above, to 25 °C; ask to 500; duplex with care to 1000 mg/L, 35 °C; wear parts never in white iron below pH 5.5 | acid splash | PH HI MT
mine water, weakly acid | acid; oxygen | | white iron from pH 5.5 with care | acid | PH
mine water, saline neutral | pitting; sulphate scale | super duplex | as brackish water, with grit | | NP
sewage, fresh | rags and grit; fats | | cast iron is the trade's standard | disease; confined space; H2S and lack of oxygen | EP WW
sewage, septic with hydrogen sulphide | H2S; acid on the crown of part-full line | | up to 10 mg/L H2S in water is below the 0.3 kPa of sour service; above: constituent hydrogen sulphide | H2S kills; confined space | SO EP WW
sludge, digested | grit; ammonia; struvite | | | |
landfill leachate | chloride; ammonia; organics; gas | super duplex | 316 to the chloride screen | methane, H2S |
lime slurry | scale; fine grit | rubber lining | named liquid: the pH limit of 11 for iron does not apply; flush on stopping | burns eyes | RB
caustic soda to 30 % | caustic cracking of steel when hot | nickel | steel not stress relieved to 50 °C; zinc and aluminium never | burns | RB CN TT
caustic soda 30 to 50 % | caustic cracking of steel | nickel | steel to 45 °C; freezes near 12 °C at 50 % | burns | RB CN TT
caustic soda, hot | caustic cracking | nickel; alloy 600 | above 65 °C (150 °F) no plain steel | burns | RB CN
sulphuric acid to 1 % | acid | alloy 20 | 316: below 0.1 mm a year at 20 and 50 °C, up to 1 at 85 °C | acid | SA
sulphuric acid 1 to 5 % | acid | alloy 20 | 316: below 0.1 mm a year at 20 and 35 °C, up to 1 at 60 °C | acid | SA
sulphuric acid 5 to 10 % | acid | alloy 20 | 316: below 0.1 mm a year at 20 °C, up to 1 at 50 °C; duplex of the 2304 kind below 0.1 to 60 °C, over 1 at 80 °C | acid | SA
sulphuric acid 10 to 70 % | acid, reducing | alloy 20; lined pumps | heat of mixing | acid; heat on dilution | SA AE
sulphuric acid 70 to 90 % | acid | alloy 20 by makers' data; lined pumps | ask the acid maker | acid | AE
sulphuric acid 93 to 98 % | velocity strips the sulphate film | alloy 20; high-silicon iron | steel line to 0.75 m/s (2.5 ft/s), 316 to 2.4 m/s, alloy 20 to 6 m/s; freezes near −15 to 10 °C by strength | acid; never water into it | EN AM
hydrochloric acid | acid with chloride | lined pumps; rubber; nickel-molybdenum | | fumes |
hydrofluoric acid | acid; attacks silicon and glass | by specialists | ask | poison through skin | RB
nitric acid to 20 % | oxidising acid | 304L | to 50 % 304L still | fumes | NA
phosphoric acid to 50 % | acid; fluoride and chloride of wet acid | alloy 20 | pure acid; wet-process acid: ask | acid |
ferric chloride solution | pitting by ferric and chloride: the test liquid for pitting | titanium; rubber lining; plastics; nickel alloy C | no stainless steel, super duplex included | acid; stains | FC
ferric sulphate solution | acid, passivating to stainless | alloy 20 | 316 where chloride is below 200 mg/L | acid | FC FI
aluminium sulphate solution | acid | | 316: to 10 % at 20 °C recommended in a hose maker's table, carbon steel and copper alloys not | | HT
sodium hypochlorite 10 to 15 % | oxidising chloride | titanium; plastics; nickel alloy C | gas comes out: vent | chlorine if acid is mixed in |
chlorinated water to 5 mg/L | chlorine | | 316 to 2 mg/L suits, to 5 with care | | CH
oxidiser solutions | oxidising | titanium; plastics | dose and strength decide | oxidiser |
diesel-contaminated water | elastomers and plastic line | | polyethylene swells: half its pressure rating in hydrocarbon (industry practice) | flammable vapour; static |
petrol or solvent in water | elastomers and plastic line | | explosion-proof set | explosive vapour |
oil | elastomers | | viscosity | flammable |
ethylene glycol, inhibited | inhibitor spent turns acid | | never zinc: it uses up the inhibitor | toxic |
propylene glycol, inhibited | as ethylene glycol | | | |
ammonium nitrate solution | nitrate cracking of steel; copper and zinc form sensitive salts | 304L | chloride as low as it can be; no oil, no grease | oxidiser: a dead-headed or dry pump has exploded; trip on flow and temperature |
urea ammonium nitrate | nitrate; copper | 304L | inhibited UAN on steel | |
urea solution | purity; copper; steel | 304L | | |
ammonia solution | copper alloys crack and dissolve | | dry ammonia cracks strong steel: not this | gas | AP
copper raffinate or leach liquor, low chloride | sulphuric acid with ferric and cupric, passivating | 904L; super duplex | organic diluent carried over: no EPDM, no natural rubber | acid | LE CL
copper raffinate or leach liquor, with chloride | acid with chloride and ferric | super duplex and 6Mo at middling chloride; titanium at high | duplex asked about to 1000 mg/L, above that not suited | acid | LE
copper sulphate solution | copper plates out on iron | 904L | | acid |
cyanide leach | copper and zinc dissolve; grit | rubber lining | 316 by the chloride screen | hydrogen cyanide below pH 10 |
tailings, neutral | wear | rubber lining | white iron from 5 % hard solids; see the hardness ratio | | PB
tailings, acid | acid with wear | rubber lining; high-chrome duplex | white iron only from pH 5.5 | acid | HI PB
flue-gas gypsum slurry | chloride, acid, wear | rubber lining; super duplex; white iron with 28 % Cr low carbon | | |
fly ash slurry | wear; acid or alkaline by coal | rubber lining | state the pH | |
bentonite or drilling mud | wear; not Newtonian | | head losses by rheology, not by these methods | |
concrete wash water | alkali; setting | | aluminium and zinc never; flush before it sets | burns |
manure | ammonia; H2S | | | H2S kills when stirred |
organic acids | acid | | acetic 5 to 20 %: 316 recommended, steel and copper alloys not, in a hose maker's table | | HT
water rich in carbonic acid | carbonic acid on iron | | 316 by the chloride screen | CO2 in pits |
peat or humic water | soft and acid | | | |
sodium bisulphite solution | acid, reducing | | | sulphur dioxide |
hydrogen sulphide, sour service | sulphide cracking | by ISO 15156 | above 0.3 kPa (0.05 psi) H2S, about 10 mg/L in water at pH below 6: hardness limits of ISO 15156; bolts B7M | H2S kills | SO
`;

/** The works that a row rests on in part; the rest of it is common practice. */
export const CONSTITUENT_SOURCES: Readonly<Record<string, string>> = {
  RB: "seal institute's page on reaction-bonded carbide: not for sodium, potassium or calcium hydroxide, hydrofluoric or strong acids",
  SA: "a steel maker's corrosion table for sulphuric acid to 10 %, 0.1 and 1 mm a year",
  SW: "article on super duplex in sea water quoting NORSOK M-001, revision of 1997",
  SO: "ISO 15156, threshold of sour service (not yet verified against the standard)",
  CN: "consultants' newsletter on caustic, 1999: steel to 65 °C",
  NP: "nickel producers' guideline 11003 on 304 and 316 in water, reprint of 1998",
  IM: "copper seminar report 7044-1919, impeller metals in fast sea water",
  BR: "a steel maker's corrosion paper on brines, 2014",
  PH: "a pump supplier's table of metals by pH",
  HI: "mining engineers' preprint 12-013 on hard irons in acid",
  EP: "US EPA report 430/09-91-010 on hydrogen sulphide corrosion, title only",
  WW: "a pump maker's paper on materials for wastewater, 2013, opening only",
  TT: "teaching text: steel not stress relieved to 50 % and 50 °C",
  AE: "corrosion adviser's answer: 316L not for 20 % acid",
  FC: "abstract on ferric coagulants; ferric chloride is the test liquid of ASTM G48",
  HT: "a hose maker's resistance table (BS 6501)",
  LE: "a pump maker's slides on leaching",
  PB: "pump handbook: high-chrome iron to pH 5",
  PO: "NACE paper 5446 of 2015, abstract: copper alloys in polluted sea water",
  MT: "mining article of 2021 on acid mine water, opening only",
  EN: "encyclopaedia chapter: steel pipe in strong acid below 0.76 m/s",
  AM: "an acid plant supplier's answers on velocities",
  NA: "a pump maker on high-chrome irons in nitric acid",
  FI: "abstract: soluble ferric salts keep stainless steel from acid",
  CH: "a steel maker's corrosion paper of 2011 and the drinking-water doses of the WHO",
  AP: "summary of API 571: copper alloys crack in ammonia above pH 8.5",
  CL: "article on stainless steel in copper leaching",
};
