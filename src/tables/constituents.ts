/**
 * Named liquids and constituents of the pumping trade: what a name is taken to mean, and what stands it.
 *
 * Columns: name | other names | kind | pH from, to | chloride from, to, mg/L | hottest, °C | what stands it. Kind: a liquid,
 * or a constituent that comes on top of whatever liquid is named. A verdict holds inside the ranges of its row; solids are
 * never in it. Letters: s suits, c suits with care, a not judged: ask, n not suited; in the order of `STANDING_COLUMNS`:
 * ten castings; five pairs of seal faces; five elastomers; bolts in contact or splash; lines.
 *
 * Verified: 35 of the 64 rows rest in part on a published source that was looked up (constituent-words.ts names it), the
 * rest on common practice; no row was tested. No standard rules this table. Held by test: both ductile irons alike, white
 * iron never free below pH 5.5, cobalt-bound carbide never offered below pH 6, bronze ruled out by ammonia and sulphide.
 */
export const STANDING_COLUMNS = [
  "DI",
  "DI395",
  "GI",
  "HCWI",
  "316C",
  "1B",
  "1A",
  "NAB",
  "WCB",
  "CA6NM",
  "carbon/SSiC",
  "WC-Co/SSiC",
  "WC-Ni/SSiC",
  "RBSiC",
  "SSiC",
  "NBR",
  "EPDM",
  "FKM",
  "natural rubber",
  "PTFE",
  "bolts B7",
  "bolts galvanised",
  "bolts B8M",
  "line carbon steel",
  "line HDPE",
  "line PVC",
  "line ductile iron, cement lined",
  "line 316L",
] as const;
export type StandingColumn = (typeof STANDING_COLUMNS)[number];

export const CONSTITUENT_ROWS = `
fresh water | clean water; river water; ground water; well water; potable water | liquid | 6.5 | 8.5 | 0 | 250 | 40 | ssscssssss sccss sssss sss sssss
storm water | surface water; flood water; construction water | liquid | 6 | 9 | 0 | 500 | 40 | ssscsssccs nssss scscs sss sssss
hot fresh water | hot water | liquid | 6.5 | 9 | 0 | 250 | 90 | ccccsssccc sccss nscns sss cnncs
demineralised water | condensate; deionised water; DI water; boiler feed (cold) | liquid | 5.5 | 7.5 | 0 | 1 | 60 | ccccsssccs sacss csscs sss csscs
brackish water | estuary water | liquid | 6.5 | 8.5 | 1000 | 10000 | 30 | ccccnccscn scsss sssss cnc csscn
sea water, cold and flowing | seawater; salt water; marine | liquid | 7.5 | 8.4 | 17000 | 22000 | 20 | nnncnccsnn scsss sssss nnc nsscn
sea water, warm or stagnant | warm sea water | liquid | 7.5 | 8.4 | 17000 | 22000 | 40 | nnncnnncnn scsss sssss nnn nsscn
sea water, sulphide-polluted | harbour water; polluted sea water | liquid | 7 | 8.4 | 15000 | 22000 | 25 | nnncnccnnn scsss sssss nnc nssnn
brine, sodium chloride | brine; saturated brine; salt brine | liquid | 6 | 9 | 30000 | 190000 | 25 | nnnanaacnn sccss sssss nnn nssnn
brine, calcium or magnesium chloride | dust suppressant; calcium chloride; magnesium chloride | liquid | 5 | 9 | 50000 | 250000 | 25 | nnnanaaann sacss sssss nnn nssnn
potash brine | potassium chloride brine | liquid | 6 | 8 | 100000 | 180000 | 30 | nnnanaacnn nccss sssss nnn nssnn
produced water | oilfield brine; formation water | liquid | 5.5 | 8 | 10000 | 150000 | 40 | nnnanaannn caccs cnsns nnn nccnn
acid mine water | acid mine drainage; AMD; ARD; acid rock drainage; adit water | liquid | 2 | 4 | 0 | 500 | 30 | nnnnaccnnn cnccs csscs nnc nssna
mine water, weakly acid | acidic mine water | liquid | 4 | 6 | 0 | 500 | 30 | cccnsssaca cncss sssss cns csscs
mine water, saline neutral | saline mine water | liquid | 6 | 8.5 | 1000 | 10000 | 30 | ccccnccscn ncsss sssss cnc csscn
sewage, fresh | raw sewage; wastewater; sewage with rags; municipal wastewater | liquid | 6.5 | 8 | 30 | 500 | 30 | ssscsssccc nssss scscs ccs cssss
sewage, septic with hydrogen sulphide | septic sewage; sewage with H2S | liquid | 5.5 | 7.5 | 30 | 500 | 30 | cccccccncn nasss scscs cns csscc
sludge, digested | digestate; biosolids | liquid | 6.8 | 7.8 | 50 | 1000 | 40 | ssscsssncc nssss scscs cns cssss
landfill leachate | leachate | liquid | 5 | 9 | 500 | 5000 | 40 | cccaaccncn naccs cccas cna cscca
lime slurry | milk of lime; hydrated lime; calcium hydroxide | liquid | 12 | 12.6 | 0 | 200 | 50 | ssscsssass nccns sscss scs sssss
caustic soda to 30 % | caustic; sodium hydroxide; NaOH | liquid | 13 | 14 | 0 | 500 | 50 | cccnsssasa sccns csncs sns ssscs
caustic soda 30 to 50 % | caustic 50 | liquid | 14 | 14 | 0 | 1000 | 45 | cccnsssaca sccns csncs cns cssns
caustic soda, hot | hot caustic | liquid | 13 | 14 | 0 | 1000 | 90 | nnnnaaannn cnnns nsnns nna nnnna
sulphuric acid to 1 % | dilute sulphuric acid | liquid | 0.6 | 2 | 0 | 50 | 50 | nnnnsssann snccs csscs nnc nssnc
sulphuric acid 1 to 5 % | | liquid | 0 | 0.9 | 0 | 50 | 35 | nnnncssann snccs csscs nnc nssnc
sulphuric acid 5 to 10 % | | liquid | 0 | 0.3 | 0 | 50 | 20 | nnnncccann snccs nsscs nnc nssna
sulphuric acid 10 to 70 % | | liquid | 0 | 0 | 0 | 50 | 30 | nnnnnaannn snacs ncsns nnn nssnn
sulphuric acid 70 to 90 % | | liquid | 0 | 0 | 0 | 50 | 30 | nnnnnnnnnn anacs nnsns nnn nccnn
sulphuric acid 93 to 98 % | concentrated sulphuric acid | liquid | 0 | 0 | 0 | 20 | 40 | nnnnaaannn anacs nnsns nnn cnnnc
hydrochloric acid | HCl; muriatic acid | liquid | 0 | 2 | 1000 | 400000 | 25 | nnnnnnnnnn snncs ncscs nnn nssnn
hydrofluoric acid | HF | liquid | 0 | 3 | 0 | 0 | 20 | nnnnnnnnnn cnnnc nccns nnn nscnn
nitric acid to 20 % | HNO3 | liquid | 0 | 1 | 0 | 20 | 40 | nnnaccannn cnncs ncsns nnc nssnc
phosphoric acid to 50 % | H3PO4 | liquid | 0 | 1.5 | 0 | 100 | 40 | nnnncccann snccs csscs nnc nssnc
ferric chloride solution | FeCl3; iron chloride | liquid | 0 | 2 | 200000 | 300000 | 30 | nnnnnnnnnn snncs cssss nnn nssnn
ferric sulphate solution | ferric; polymeric ferric sulphate; iron sulphate | liquid | 0.5 | 2.5 | 0 | 500 | 30 | nnnncccnnn snccs cssss nnc nssnc
aluminium sulphate solution | alum; liquid alum | liquid | 2 | 3.5 | 0 | 200 | 40 | nnnnsssnnn sncss sssss nns nssns
sodium hypochlorite 10 to 15 % | hypochlorite; bleach; NaOCl | liquid | 11 | 13 | 50000 | 120000 | 25 | nnnnnnnnnn nnnns nccns nnn ncsnn
chlorinated water to 5 mg/L | chlorinated water; disinfected water | liquid | 6.5 | 8.5 | 0 | 250 | 30 | cccccsscca cccss csscs ccs csscc
oxidiser solutions | chlorine dioxide; permanganate; peroxide; ozone | constituent | 3 | 10 | 0 | 500 | 30 | aaaaaaaaaa nnnas nccns nna nccna
diesel-contaminated water | diesel water; oily water; interceptor water | liquid | 6 | 9 | 0 | 500 | 40 | ssscssssss sccss snsns sss sccss
petrol or solvent in water | gasoline; petrol; BTEX; solvent | constituent | 6 | 9 | 0 | 500 | 30 | ssscssssss sccss cnsns sss snnss
oil | mineral oil; lube oil; hydraulic oil; crude | constituent | 6 | 8 | 0 | 500 | 60 | ssscssssss sccss snsns sss sccss
ethylene glycol, inhibited | glycol; antifreeze; ethylene glycol | liquid | 7.5 | 10 | 0 | 100 | 90 | ssscssssss sccss csccs sns sccss
propylene glycol, inhibited | propylene glycol | liquid | 7.5 | 10 | 0 | 100 | 90 | ssscssssss sccss csccs sns sccss
ammonium nitrate solution | ammonium nitrate; AN solution; nitrate solution | liquid | 4.5 | 6 | 0 | 100 | 80 | aanasscnna cnccs cscns nns nscns
urea ammonium nitrate | UAN | liquid | 6.5 | 7.5 | 0 | 100 | 40 | cccasscnca ccccs ssccs cns csscs
urea solution | AUS 32; DEF; diesel exhaust fluid | liquid | 9 | 10.5 | 0 | 10 | 40 | nnnasssnna ccccs csccs nns nssns
ammonia solution | ammonia; aqua ammonia; NH3 | constituent | 10 | 13 | 0 | 100 | 40 | ssscsssnss sccas csncs sns ssscs
copper raffinate or leach liquor, low chloride | raffinate; PLS; pregnant leach solution; leach solution | liquid | 0.5 | 2 | 0 | 200 | 35 | nnnncccnnn cnccs cnsns nnc nssnc
copper raffinate or leach liquor, with chloride | chloride leach; raffinate with chlorides | liquid | 0.5 | 2 | 200 | 20000 | 35 | nnnnnaannn cnncs cnsns nnn nssnn
copper sulphate solution | electrolyte; bluestone | liquid | 0.5 | 4 | 0 | 50 | 60 | nnnnsssnnn cnccs csscs nns nccns
cyanide leach | cyanide solution; CIP; CIL | liquid | 10 | 11.5 | 0 | 2000 | 35 | ssscsssnss nsscs sssss sns sssss
tailings, neutral | sand slurry; tailings; mill slurry | liquid | 6 | 9 | 0 | 1000 | 40 | cccscccccc nssss scsss ccs csccc
tailings, acid | acid tailings | liquid | 2 | 5 | 0 | 1000 | 40 | nnnnaccnnn nnccs cssss nnc nssna
flue-gas gypsum slurry | FGD slurry; gypsum slurry | liquid | 4.5 | 6 | 5000 | 40000 | 55 | nnnanaannn nnccs cssss nnn nscnn
fly ash slurry | ash water; coal wash water; bottom ash | liquid | 4 | 12 | 0 | 1000 | 50 | cccacssaca naccs scsss ccs csccc
bentonite or drilling mud | mud; bentonite; drilling fluid | liquid | 8 | 11 | 0 | 5000 | 50 | ssssacccsc nssss scscs scs sscsa
concrete wash water | cement water; grout | liquid | 11 | 13 | 0 | 500 | 40 | ssscsssass nccas sscss scs sssss
manure | slurry (farm); pig slurry | liquid | 6.5 | 8.5 | 100 | 1500 | 35 | ssscsssncc ncsss scscs cns cssss
organic acids | silage; fruit waste; whey; acetic acid | constituent | 3.5 | 5 | 0 | 500 | 40 | nnnnsssana sncss csccs nns nssns
water rich in carbonic acid | CO2 water; geothermal water | liquid | 4.5 | 6.5 | 0 | 1000 | 60 | cccnsssccc sncss ssscs cns csscs
peat or humic water | bog water; moorland water | liquid | 4.5 | 6.5 | 0 | 100 | 25 | cccnsssccs sncss sssss cns csscs
sodium bisulphite solution | bisulphite; SBS | liquid | 3.5 | 5 | 0 | 500 | 40 | nnnnsssann sncss csscs nns nssns
hydrogen sulphide, sour service | H2S; sour water | constituent | 4 | 8 | 0 | 100000 | 60 | ccnncccncn cnccs cccns nnc cssnc
`;
