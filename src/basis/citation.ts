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
  "wgs-84": {
    title: "NGA.STND.0036, World Geodetic System 1984",
    publisher: "NGA",
    year: 2014,
  },
  practice: { title: "Common practice, no source", publisher: "the trade" },
  house: { title: "Choice of this product, stated on the sheet", publisher: "this product" },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

/** Where a rule, formula or number was read: the work, and the place in it. */
export interface Citation {
  readonly source: SourceKey;
  readonly at: string;
}

/** "IAPWS R7-97 …, region 1" — a citation as one printed line. */
export function citationText({ source, at }: Citation): string {
  const { title, publisher, year }: Source = SOURCES[source];
  if (source === "practice" || source === "house") return `${title}: ${at}`;
  return `${title} (${year === undefined ? publisher : `${publisher}, ${year}`}), ${at}`;
}
