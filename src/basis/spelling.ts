/** Names and words that are spelt in two ways: British, American. Each derived form stands by itself. */
const READ_ALIKE = `
vapour vapor
vapours vapors
grey gray
centre center
centres centers
centred centered
centreline centerline
centrelines centerlines
aluminium aluminum
galvanised galvanized
galvanising galvanizing
oxidise oxidize
oxidised oxidized
oxidiser oxidizer
oxidisers oxidizers
oxidising oxidizing
sulphur sulfur
sulphuric sulfuric
sulphate sulfate
sulphates sulfates
sulphide sulfide
sulphides sulfides
sulphite sulfite
bisulphite bisulfite
disulphide disulfide
fibre fiber
fibres fibers
haematite hematite
demineralised demineralized
deionised deionized
mitre miter
mitred mitered
mobilisation mobilization
demobilisation demobilization
analyser analyzer
analysers analyzers
`;

/** Words alone: as a name, the second spelling may mean something else (a meter, a license). */
const WRITTEN = `
litre liter
litres liters
metre meter
metres meters
centimetre centimeter
centimetres centimeters
kilometre kilometer
kilometres kilometers
megalitre megaliter
megalitres megaliters
micrometre micrometer
micrometres micrometers
millilitre milliliter
millilitres milliliters
millimetre millimeter
millimetres millimeters
authorise authorize
authorised authorized
cancelled canceled
catalogue catalog
catalogues catalogs
colour color
colours colors
coloured colored
digitise digitize
digitised digitized
encyclopaedia encyclopedia
favour favor
favours favors
favourable favorable
unfavourable unfavorable
fluidisation fluidization
fluidised fluidized
harbour harbor
harbours harbors
judgement judgment
judgements judgments
labour labor
labelled labeled
licence license
licences licenses
neighbour neighbor
neighbours neighbors
neighbouring neighboring
pressurise pressurize
pressurised pressurized
recognise recognize
recognised recognized
summarise summarize
summarised summarized
vaporise vaporize
vaporises vaporizes
burnt burned
unburnt unburned
`;

type Pair = readonly [british: string, american: string];

function pairsOf(list: string): readonly Pair[] {
  return list
    .trim()
    .split("\n")
    .map((line) => line.split(" ") as unknown as Pair);
}

const NAMES = pairsOf(READ_ALIKE);

/** All words that are spelt in two ways. */
export const SPELLINGS: readonly Pair[] = [...NAMES, ...pairsOf(WRITTEN)];

const american = new Map(SPELLINGS);
const british = new Map(NAMES.map(([one, other]) => [other, one]));
const BRITISH_WORDS = new RegExp(`(?<!\\p{L})(?:${[...american.keys()].join("|")})(?!\\p{L})`, "giu");
/** Also within a word, "graywater"; the longest first, for "mitered" is more than "miter". */
const AMERICAN_NAMES = new RegExp([...british.keys()].toSorted((a, b) => b.length - a.length).join("|"), "gi");

/** The same few thousand texts are spelt again at every letter that is typed. */
const MOST_REMEMBERED = 10_000;
const LONGEST_REMEMBERED = 1000;
const remembered = new Map<string, string>();

/** A text with its words in American spelling, capitals as they were. */
export function inAmerican(text: string): string {
  const before = remembered.get(text);
  if (before !== undefined) return before;
  const now = text.replace(BRITISH_WORDS, (word) => respelt(word, american));
  if (text.length <= LONGEST_REMEMBERED) {
    if (remembered.size >= MOST_REMEMBERED) remembered.clear();
    remembered.set(text, now);
  }
  return now;
}

/** A name in British spelling, whichever it was written in: readers of names know this one alone. */
export function inBritish(name: string): string {
  return name.replace(AMERICAN_NAMES, (word) => respelt(word, british));
}

function respelt(word: string, as: ReadonlyMap<string, string>): string {
  return withCapitals(word, as.get(word.toLowerCase()) ?? word);
}

function withCapitals(as: string, word: string): string {
  if (as === as.toLowerCase()) return word;
  return as === as.toUpperCase() ? word.toUpperCase() : word.charAt(0).toUpperCase() + word.slice(1);
}
