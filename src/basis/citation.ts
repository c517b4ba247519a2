/** The works the engine leans on. A method or table names one by its key. */
export interface Source {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number;
}

export const SOURCES = {
  "iso-17769-1": {
    title:
      "ISO 17769-1, Liquid pumps and installation: general terms, definitions, quantities, letter symbols and units, part 1",
    publisher: "ISO",
    year: 2012,
  },
  "nist-sp-811": {
    title: "NIST Special Publication 811, Guide for the Use of the International System of Units (SI)",
    publisher: "NIST",
    year: 2008,
  },
  "ansi-hi-9.6.1": {
    title: "ANSI/HI 9.6.1, Rotodynamic Pumps: Guideline for NPSH Margin",
    publisher: "Hydraulic Institute",
    year: 2012,
  },
  "white-fluid-mechanics": {
    title: "F. M. White, Fluid Mechanics, 4th edition",
    publisher: "McGraw-Hill",
    year: 1999,
  },
  "iapws-if97": {
    title: "IAPWS R7-97(2012), Industrial Formulation 1997 for the Thermodynamic Properties of Water and Steam",
    publisher: "IAPWS",
    year: 2012,
  },
  "iapws-r12-08": {
    title: "IAPWS R12-08, Formulation 2008 for the Viscosity of Ordinary Water Substance",
    publisher: "IAPWS",
    year: 2008,
  },
  "sharqawy-2010": {
    title: "Sharqawy, Lienhard and Zubair, Thermophysical properties of seawater",
    publisher: "Desalination and Water Treatment 16",
    year: 2010,
  },
  "nayar-2016": {
    title: "Nayar, Sharqawy, Banchik and Lienhard, Thermophysical properties of seawater",
    publisher: "Desalination 390",
    year: 2016,
  },
  "melinder-2010": {
    title: "Melinder, Properties of Secondary Working Fluids for Indirect Systems",
    publisher: "IIR",
    year: 2010,
  },
  "murphy-koop-2005": {
    title: "Murphy and Koop, Review of the vapour pressures of ice and supercooled water",
    publisher: "Quarterly Journal of the Royal Meteorological Society 131",
    year: 2005,
  },
  "us-standard-atmosphere": {
    title: "U.S. Standard Atmosphere, 1976",
    publisher: "NOAA, NASA and USAF",
    year: 1976,
  },
  "colebrook-1939": {
    title: "C. F. Colebrook, Turbulent flow in pipes, with particular reference to the transition region",
    publisher: "Journal of the Institution of Civil Engineers 11",
    year: 1939,
  },
  "clamond-2009": {
    title: "D. Clamond, Efficient resolution of the Colebrook equation",
    publisher: "Industrial & Engineering Chemistry Research 48",
    year: 2009,
  },
  "moody-1944": {
    title: "L. F. Moody, Friction factors for pipe flow",
    publisher: "Transactions of the ASME 66",
    year: 1944,
  },
  "darcy-weisbach": { title: "Darcy–Weisbach equation", publisher: "textbooks of hydraulics" },
  "hazen-williams": {
    title: "G. S. Williams and A. Hazen, Hydraulic Tables",
    publisher: "Wiley",
    year: 1905,
  },
  "tp-410": {
    title: "Technical Paper 410, resistance of valves, fittings and pipe",
    publisher: "industry technical paper",
    year: 2009,
  },
  "borda-carnot": { title: "Borda–Carnot momentum balance", publisher: "textbooks of hydraulics" },
  "darby-2001": {
    title: "R. Darby, Correlate pressure drops through fittings",
    publisher: "Chemical Engineering 108",
    year: 2001,
  },
  "iec-60534-2-1": {
    title: "IEC 60534-2-1, Industrial-process control valves: sizing equations for fluid flow",
    publisher: "IEC",
    year: 2011,
  },
  "asme-b36.10m": {
    title: "ASME B36.10M, Welded and Seamless Wrought Steel Pipe",
    publisher: "ASME",
    year: 2018,
  },
  "asme-b36.19m": { title: "ASME B36.19M, Stainless Steel Pipe", publisher: "ASME", year: 2018 },
  "astm-d1785": {
    title: "ASTM D1785, Poly(Vinyl Chloride) (PVC) Plastic Pipe, Schedules 40, 80, and 120",
    publisher: "ASTM",
  },
  "astm-f714": {
    title: "ASTM F714, Polyethylene (PE) Plastic Pipe (DR-PR) Based on Outside Diameter",
    publisher: "ASTM",
  },
  "asme-b31.3": { title: "ASME B31.3, Process Piping", publisher: "ASME", year: 2018 },
  "asme-b31.4": { title: "ASME B31.4, Pipeline Transportation Systems for Liquids and Slurries", publisher: "ASME" },
  "en-13480-3": { title: "EN 13480-3, Metallic industrial piping: design and calculation", publisher: "CEN" },
  "iso-4427": {
    title: "ISO 4427-2, Plastics piping systems for water supply: polyethylene pipes; EN 12201-1 and -2",
    publisher: "ISO, CEN",
    year: 2019,
  },
  "awwa-m55": { title: "AWWA M55, PE Pipe: Design and Installation", publisher: "AWWA", year: 2006 },
  "astm-d2241": {
    title: "ASTM D2241, Poly(Vinyl Chloride) (PVC) Pressure-Rated Pipe (SDR Series)",
    publisher: "ASTM",
    year: 2020,
  },
  "awwa-c900": {
    title: "AWWA C900, Polyvinyl Chloride (PVC) Pressure Pipe, 4 to 60 in",
    publisher: "AWWA",
    year: 2016,
  },
  "en-iso-1452": {
    title: "EN ISO 1452-2, Plastics piping systems for water supply: PVC-U pipes",
    publisher: "CEN",
    year: 2010,
  },
  "en-545": { title: "EN 545, Ductile iron pipes and fittings for water; ISO 2531", publisher: "CEN", year: 2010 },
  "awwa-c150": { title: "AWWA C150/A21.50, Thickness Design of Ductile-Iron Pipe", publisher: "AWWA" },
  "en-iso-8029": { title: "EN ISO 8029, Collapsible (lay-flat) hoses of thermoplastics", publisher: "CEN" },
  "astm-f1216": { title: "ASTM F1216, appendix X1, buckling of a round liner with ovality", publisher: "ASTM" },
  "valve-tests-1993": {
    title:
      "S. Kalsi and J. P. Tullis, tests of check and butterfly valves, as tabled in an environmental engineering handbook",
    publisher: "handbook",
    year: 1993,
  },
  "miller-1990": { title: "D. S. Miller, Internal Flow Systems", publisher: "BHRA", year: 1990 },
  "rahmeyer-2002": {
    title: "W. J. Rahmeyer, tests of fittings, as tabled in an environmental engineering handbook",
    publisher: "handbook",
    year: 2002,
  },
  "astm-c76": { title: "ASTM C76, Reinforced Concrete Culvert, Storm Drain, and Sewer Pipe", publisher: "ASTM" },
  "en-14420-7": { title: "EN 14420-7, Hose fittings with clamp units: cam locking couplings", publisher: "CEN" },
  "nrcs-430": { title: "Conservation practice standard 430, Irrigation Pipeline", publisher: "USDA NRCS" },
  "awwa-c906": { title: "AWWA C906, Polyethylene (PE) Pressure Pipe and Fittings", publisher: "AWWA", year: 2015 },
  "awwa-c151": { title: "AWWA C151/A21.51, Ductile-Iron Pipe, Centrifugally Cast", publisher: "AWWA" },
  "astm-b88": { title: "ASTM B88, Seamless Copper Water Tube", publisher: "ASTM" },
  "en-10220": {
    title: "EN 10220, Seamless and welded steel tubes: dimensions and masses per unit length",
    publisher: "CEN",
    year: 2002,
  },
  "iso-1307": {
    title: "ISO 1307, Rubber and plastics hoses: hose sizes, minimum and maximum inside diameters",
    publisher: "ISO",
  },
  idelchik: { title: "Idelchik, Handbook of Hydraulic Resistance", publisher: "Begell House" },
  "ppi-handbook": { title: "Handbook of Polyethylene Pipe", publisher: "Plastics Pipe Institute" },
  "fritsch-butland-1984": {
    title: "F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic interpolants",
    publisher: "SIAM Journal on Scientific and Statistical Computing 5",
    year: 1984,
  },
  "brent-1973": {
    title: "R. P. Brent, Algorithms for Minimization without Derivatives",
    publisher: "Prentice-Hall",
    year: 1973,
  },
  "ansi-hi-9.6.3": {
    title: "ANSI/HI 9.6.3, Rotodynamic Pumps: Guideline for Operating Regions",
    publisher: "Hydraulic Institute",
    year: 2012,
  },
  "ansi-hi-9.6.7": {
    title: "ANSI/HI 9.6.7, Rotodynamic Pumps: Guideline for Effects of Liquid Viscosity on Performance",
    publisher: "Hydraulic Institute",
    year: 2010,
  },
  "ansi-hi-9.8": {
    title: "ANSI/HI 9.8, Rotodynamic Pumps for Pump Intake Design",
    publisher: "Hydraulic Institute",
    year: 2012,
  },
  "mil-hdbk-1005-9a": {
    title: "MIL-HDBK-1005/9A, Industrial and Oily Wastewater Control",
    publisher: "United States Department of Defense",
  },
  "ei-11c201": {
    title: "EI 11C201, Wastewater Collection and Pumping",
    publisher: "United States Army Corps of Engineers",
    year: 1997,
  },
  "ansi-hi-14.1-14.2": {
    title: "ANSI/HI 14.1-14.2, Rotodynamic Pumps for Nomenclature and Definitions",
    publisher: "Hydraulic Institute",
    year: 2019,
  },
  "ansi-hi-14.3": {
    title: "ANSI/HI 14.3, Rotodynamic Pumps for Design and Application",
    publisher: "Hydraulic Institute",
    year: 2019,
  },
  "ansi-hi-14.6": {
    title: "ANSI/HI 14.6, Rotodynamic Pumps for Hydraulic Performance Acceptance Tests",
    publisher: "Hydraulic Institute",
    year: 2011,
  },
  "iso-5199": {
    title: "ISO 5199, Technical specifications for centrifugal pumps, class II",
    publisher: "ISO",
    year: 2002,
  },
  "iso-9906": {
    title: "ISO 9906, Rotodynamic pumps: hydraulic performance acceptance tests, grades 1, 2 and 3",
    publisher: "ISO",
    year: 2012,
  },
  "pump-handbook": { title: "I. J. Karassik and others, Pump Handbook", publisher: "McGraw-Hill" },
  "momentum-balance": { title: "Conservation of momentum", publisher: "textbooks of hydraulics" },
  "mass-balance": { title: "Conservation of mass and volume", publisher: "textbooks of process engineering" },
  "thomas-1979": {
    title:
      "A. D. Thomas, The role of laminar/turbulent transition in determining the critical deposit velocity and the operating pressure gradient for long distance slurry pipelines",
    publisher: "Hydrotransport 6, BHRA",
    year: 1979,
  },
  "thomas-1965": {
    title: "D. G. Thomas, Transport characteristics of suspension VIII",
    publisher: "Journal of Colloid Science 20",
    year: 1965,
  },
  "ferguson-church-2004": {
    title: "R. I. Ferguson and M. Church, A simple universal equation for grain settling velocity",
    publisher: "Journal of Sedimentary Research 74",
    year: 2004,
  },
  "richardson-zaki-1954": {
    title: "J. F. Richardson and W. N. Zaki, Sedimentation and fluidisation, part 1",
    publisher: "Transactions of the Institution of Chemical Engineers 32",
    year: 1954,
  },
  "durand-1953": {
    title: "R. Durand, Basic relationships of the transportation of solids in pipes",
    publisher: "Minnesota International Hydraulics Convention",
    year: 1953,
  },
  "schiller-herbich-1991": {
    title: "R. E. Schiller and J. B. Herbich, Sediment transport in pipes, in Handbook of Dredging Engineering",
    publisher: "McGraw-Hill",
    year: 1991,
  },
  "wasp-1977": {
    title: "E. J. Wasp, J. P. Kenny and R. L. Gandhi, Solid-Liquid Flow: Slurry Pipeline Transportation",
    publisher: "Trans Tech",
    year: 1977,
  },
  "oroskar-turian-1980": {
    title: "A. R. Oroskar and R. M. Turian, The critical velocity in pipeline flow of slurries",
    publisher: "AIChE Journal 26",
    year: 1980,
  },
  "wilson-slurry": {
    title: "K. C. Wilson, G. R. Addie, A. Sellgren and R. Clift, Slurry Transport Using Centrifugal Pumps, 3rd edition",
    publisher: "Springer",
    year: 2006,
  },
  "cave-1976": {
    title: "I. Cave, Effects of suspended solids on the performance of centrifugal pumps",
    publisher: "Hydrotransport 4, BHRA",
    year: 1976,
  },
  "kazim-1997": {
    title:
      "K. A. Kazim, B. Maiti and P. Chand, A correlation to predict the performance of centrifugal pumps handling slurries",
    publisher: "Proceedings of the Institution of Mechanical Engineers, part A, 211",
    year: 1997,
  },
  "karassik-handbook": { title: "I. J. Karassik and others, Pump Handbook", publisher: "McGraw-Hill" },
  "ansi-hi-12": { title: "ANSI/HI 12.1-12.6, Rotodynamic Slurry Pumps", publisher: "Hydraulic Institute" },
  "asme-b16.42": {
    title: "ASME B16.42, Ductile Iron Pipe Flanges and Flanged Fittings, Classes 150 and 300",
    publisher: "ASME",
    year: 2016,
  },
  "asme-b16.5": { title: "ASME B16.5, Pipe Flanges and Flanged Fittings", publisher: "ASME", year: 2017 },
  "asme-b16.1": {
    title: "ASME B16.1, Gray Iron Pipe Flanges and Flanged Fittings, Classes 25, 125 and 250",
    publisher: "ASME",
    year: 2015,
  },
  "en-1092-1": { title: "EN 1092-1, Circular flanges, PN designated: steel flanges", publisher: "CEN", year: 2013 },
  "en-1514-1": { title: "EN 1514-1, Non-metallic flat gaskets for PN flanges", publisher: "CEN", year: 1997 },
  "as-2129": { title: "AS 2129, Flanges for pipes, valves and fittings", publisher: "Standards Australia", year: 2000 },
  "as-4087": {
    title: "AS/NZS 4087, Metallic flanges for waterworks purposes",
    publisher: "Standards Australia",
    year: 2011,
  },
  "jis-b-2220": { title: "JIS B 2220, Steel pipe flanges", publisher: "JSA", year: 2012 },
  "en-1092-2": { title: "EN 1092-2, Circular flanges, PN designated: cast iron flanges", publisher: "CEN", year: 1997 },
  "asme-b16.21": { title: "ASME B16.21, Nonmetallic Flat Gaskets for Pipe Flanges", publisher: "ASME", year: 2016 },
  "asme-viii-1": {
    title: "ASME Boiler and Pressure Vessel Code, Section VIII, Division 1",
    publisher: "ASME",
  },
  "asme-pcc-1": {
    title: "ASME PCC-1, Guidelines for Pressure Boundary Bolted Flange Joint Assembly",
    publisher: "ASME",
    year: 2013,
  },
  "joukowsky-1898": {
    title: "N. Joukowsky, On the hydraulic hammer in water supply pipes",
    publisher: "Imperial Academy of Sciences, St Petersburg",
    year: 1898,
  },
  "korteweg-1878": {
    title: "D. J. Korteweg, On the velocity of propagation of sound in elastic tubes",
    publisher: "Annalen der Physik und Chemie",
    year: 1878,
  },
  "wylie-streeter": { title: "E. B. Wylie and V. L. Streeter, Fluid Transients", publisher: "McGraw-Hill" },
  "energy-balance": { title: "Conservation of energy", publisher: "textbooks of physics" },
  "hi-europump-lcc": {
    title: "Pump Life Cycle Costs: A Guide to LCC Analysis for Pumping Systems",
    publisher: "Hydraulic Institute and Europump",
    year: 2001,
  },
  "boyle-mariotte": { title: "Boyle–Mariotte law", publisher: "textbooks of physics" },
  "gas-dynamics": { title: "Choked flow of an ideal gas through a nozzle", publisher: "textbooks of gas dynamics" },
  "nema-mg1": { title: "NEMA MG 1, Motors and Generators", publisher: "NEMA" },
  "iec-60072-1": {
    title: "IEC 60072-1, Dimensions and output series for rotating electrical machines",
    publisher: "IEC",
  },
  "en-50347": {
    title: "EN 50347, General purpose three-phase induction motors having standard dimensions and outputs",
    publisher: "CENELEC",
    year: 2001,
  },
  "iec-60034-1": { title: "IEC 60034-1, Rotating electrical machines: rating and performance", publisher: "IEC" },
  "iec-60034-30-1": {
    title: "IEC 60034-30-1, Rotating electrical machines: efficiency classes of line operated AC motors (IE code)",
    publisher: "IEC",
    year: 2014,
  },
  "si-2021-745": {
    title: "The Ecodesign for Energy-Related Products and Energy Information Regulations 2021, SI 2021/745",
    publisher: "United Kingdom",
    year: 2021,
  },
  "cfr-10-431": {
    title: "10 CFR Part 431, Energy efficiency program for certain commercial and industrial equipment",
    publisher: "United States",
  },
  "pump-data-book": {
    title: "Open engineering data book of the pump industry, tables that cite AWWA, ASTM, ASME and NEMA",
    publisher: "Hydraulic Institute",
    year: 2025,
  },
  "nfpa-70": { title: "NFPA 70, National Electrical Code", publisher: "NFPA", year: 2008 },
  "nfpa-20": { title: "NFPA 20, Installation of Stationary Pumps for Fire Protection", publisher: "NFPA" },
  "iso-3046-1": {
    title: "ISO 3046-1, Reciprocating internal combustion engines: performance, declarations of power",
    publisher: "ISO",
    year: 2002,
  },
  "agricultural-engineering": {
    title: "Textbook of agricultural engineering, section on altitude",
    publisher: "textbook",
  },
  "en-590": { title: "EN 590, Automotive fuels: diesel", publisher: "CEN" },
  "sae-j617": {
    title: "SAE J617, Engine Flywheel Housing and Mating Transmission Housing Flanges",
    publisher: "SAE",
    year: 2020,
  },
  "sae-j620": { title: "SAE J620, Flywheels for Industrial Engines", publisher: "SAE" },
  "osha-1910.219": {
    title: "29 CFR 1910.219, Mechanical power-transmission apparatus",
    publisher: "United States",
  },
  "astm-a536": { title: "ASTM A536-84, Ductile Iron Castings", publisher: "ASTM" },
  "astm-a395": { title: "ASTM A395/A395M-99, Ferritic Ductile Iron Pressure-Retaining Castings", publisher: "ASTM" },
  "astm-a48": { title: "ASTM A48/A48M-03, Gray Iron Castings", publisher: "ASTM" },
  "astm-a532": { title: "ASTM A532/A532M-10, Abrasion-Resistant Cast Irons", publisher: "ASTM" },
  "astm-a743": {
    title: "ASTM A743/A743M, Castings, Iron-Chromium and Iron-Chromium-Nickel, Corrosion Resistant",
    publisher: "ASTM",
  },
  "astm-a890": {
    title: "ASTM A890/A890M, Castings, Duplex (Austenitic/Ferritic), Corrosion Resistant",
    publisher: "ASTM",
  },
  "astm-b148": { title: "ASTM B148, Aluminum-Bronze Sand Castings", publisher: "ASTM" },
  "astm-a216": { title: "ASTM A216/A216M, Steel Castings, Carbon, for High-Temperature Service", publisher: "ASTM" },
  "iso-15156": {
    title: "ISO 15156 (NACE MR0175), Materials for use in H2S-containing environments in oil and gas production",
    publisher: "ISO",
  },
  "corrosion-data": { title: "Published corrosion data, row by row", publisher: "as named" },
  "sanks-pumping-station": {
    title: "R. L. Sanks and others, Pumping Station Design",
    publisher: "Butterworth-Heinemann",
  },
  "escarameia-2005": {
    title: "M. Escarameia, Air problems in pipelines, report SR 649",
    publisher: "HR Wallingford",
    year: 2005,
  },
  "awwa-m51": {
    title: "AWWA M51, Air-Release, Air/Vacuum, and Combination Air Valves, ch. 3 and 4",
    publisher: "AWWA",
  },
  "jcgm-100": {
    title: "JCGM 100, Evaluation of measurement data: Guide to the expression of uncertainty in measurement",
    publisher: "BIPM",
    year: 2008,
  },
  "nebraska-criteria": {
    title: "Nebraska pumping plant performance criteria",
    publisher: "University of Nebraska",
    year: 2008,
  },
  "primefact-1410": {
    title: "Primefact 1410, Measuring flow and pressure of irrigation",
    publisher: "NSW Department of Primary Industries",
    year: 2015,
  },
  practice: { title: "Common practice, no source", publisher: "the trade" },
  house: { title: "Dutybook's own choice", publisher: "this product" },
  stated: { title: "Stated by the reader", publisher: "the reader" },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

/** What is said of figures that nobody has yet held against the work they come from. */
export const NOT_VERIFIED = "not yet verified against the standard";

/** What a table says of how its figures were verified, as a reader meets it. */
export function verificationText(verified: string): string {
  return verified.replaceAll("from memory", NOT_VERIFIED);
}

/** Where a rule, formula or number was read: the work, and the place in it. */
export interface Citation {
  readonly source: SourceKey;
  readonly at: string;
  /** Written from memory, and nobody has yet held it against the work. */
  readonly unverified?: true;
}

/** "IAPWS R7-97 …, region 1" — a citation as one printed line. */
export function citationText({ source, at, unverified }: Citation): string {
  const { title, publisher, year }: Source = SOURCES[source];
  const place = unverified ? `${at}, ${NOT_VERIFIED}` : at;
  if (source === "practice" || source === "house" || source === "stated") return `${title}: ${place}`;
  return `${title} (${year === undefined ? publisher : `${publisher}, ${year}`}), ${place}`;
}
