import type { FindingCode } from "../../../src/basis/finding-code.ts";
import { type Amount, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { textIn } from "../../duty/boxes.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { asTyped } from "../../duty/sums/written-sum.ts";
import { amountText } from "../../text/words.ts";
import { amountInBox, type FoundAt, type Mend, type Mender } from "./mend.ts";

/** What clears a finding that stands at a box and names nothing that would do. */
export const OF_BOXES: { readonly [C in FindingCode]?: Mender<C> } = {
  "number-read-as": ({ found }, at) => {
    const typed = asTyped(at.text);
    if (typed.includes(",")) return ["", "."].flatMap((sign) => readings(at, typed.replace(",", sign)));
    return found === undefined ? [] : readings(at, amountInBox(found, at.duty));
  },
  "digits-parted": (_, at) => readings(at, asTyped(at.text).replace(/(?<=\d)[\s\u00a0\u202f']+(?=\d)/g, "")),
  "gravity-of-no-liquid": ({ suggestions = [] }, at) =>
    suggestions.map((words) =>
      use(at, at.text.replace(/\b(?:SG|specific gravity)\s*\d+(?:[.,]\d+)?/i, words.replace(/[“”]/g, ""))),
    ),
  "class-is-a-designation": ({ facts }, at) => [use(at, facts.name)],
  "class-by-metric-name": ({ facts }, at) => [use(at, facts.name)],
  "bolt-grade-taken-as": ({ facts }, at) => [use(at, facts.grade)],
  "gasket-taken-as": ({ facts }, at) => [use(at, facts.gasket)],
  "bore-is-nominal": ({ suggestions: [name = ""] = [] }, at) => {
    const nominal = name.replaceAll('"', "");
    const size = /^[\d./-]+/.exec(nominal)?.[0] ?? "";
    const text = at.text.replace(new RegExp(`(?:ID\\s*)?\\b${size}\\s*(?:inch|in|")(?: steel)?`, "i"), nominal);
    return [{ ...use(at, nominal), text }];
  },
  "not-a-whole-number": ({ found }, at) =>
    found === undefined
      ? []
      : [Math.floor, Math.ceil].map((whole) => use(at, amountInBox({ ...found, value: whole(found.value) }, at.duty))),
  "out-of-range": ({ limit }, at) =>
    limit === undefined || !isOfOtherBox(at.place) ? [] : amounts(at, at.place, limit),
  "liquid-temperature-contradicts": ({ facts }, at) => amounts(at, at.place, facts.named),
  "slurry-figures-contradict": ({ subject, facts }, at) => {
    const box = SLURRY_BOXES[subject];
    return box === undefined ? [] : amounts(at, box, facts.due);
  },
  "efficiency-mixed": ({ facts }, at) => {
    const row = Number(/\d+$/.exec(facts.fractionRow)?.[0]) - 1;
    const place = `${at.place}.${row}.efficiency`;
    const percent = 100 * Number(textIn(at.typed, place));
    const text = String(Number(percent.toPrecision(6)));
    return Number.isFinite(percent) ? [{ label: `Use ${text} % in row ${row + 1}`, place, text }] : [];
  },
  "pump-named-twice": (_, at) => [use(at, `${at.text.trim()} (2)`)],
  "case-named-twice": ({ subject }, at) => [use(at, subject)],
  "level-not-at-end": (_, at) => {
    const box: FieldKey = at.place.startsWith("suctionLine") ? "pumpLevel" : "deliveryLevel";
    const end = asTyped(textIn(at.typed, box));
    const name = box === "pumpLevel" ? "pump level" : "delivery level";
    return [
      { label: `Use the ${name}, ${end}, here`, place: at.place, text: end },
      { label: `Use ${asTyped(at.text)} as ${name}`, place: box, text: asTyped(at.text) },
    ];
  },
  "share-of-each-assumed": (_, at) => [state(at, "each"), state(at, "all")],
  "share-of-all-assumed": (_, at) => [state(at, "all")],
  "suction-common-to-pumps": (_, at) => [state(at, "each")],
  "check-valve-common-to-pumps": (_, at) => [state(at, "each")],
  "share-may-be-header": (_, at) => [header(at), state(at, "each")],
  "share-leaves-a-rest": (_, at) => [header(at)],
  "rows-side-by-side": (_, at) => [header(at)],
};

/** Boxes that are held against another box: what the other says is the limit. */
const LIMITED_BY_OTHERS: readonly FieldKey[] = [
  "coarseSize",
  "highestSourceLevel",
  "leastStaticHead",
  "greatestStaticHead",
  "curveFlow",
];

function isOfOtherBox(place: string): boolean {
  return LIMITED_BY_OTHERS.some((field) => field === place);
}

const SLURRY_BOXES: Readonly<Record<string, FieldKey>> = {
  "solids by weight": "solids",
  "solids by volume": "solidsByVolume",
  "solids SG": "solidsGravity",
  "mixture SG": "slurryGravity",
};

function use({ place }: FoundAt, text: string): Mend {
  return { label: `Use “${text}”`, place, text };
}

function state({ place }: FoundAt, text: string): Mend {
  return { label: `State “${text}”`, place, text };
}

function readings({ place, text: typed }: FoundAt, text: string): readonly Mend[] {
  return text === asTyped(typed) ? [] : [{ label: `Read as “${text}”`, place, text }];
}

/** In a few figures, and in as many as keep it on its side of a limit. */
function amounts({ duty }: FoundAt, place: string, amount: Amount): readonly Mend[] {
  const label = `Use ${amountText(amount, duty.unitSet)}`;
  const number = String(Number(fromEngine(amount.value, UNIT_SETS[duty.unitSet][amount.quantity]).toPrecision(12)));
  return [amountInBox(amount, duty), number].map((text) => ({ label, place, text }));
}

function header({ place, typed }: FoundAt): Mend {
  const pipe = place.replace(/\.share$/, ".pipe");
  return { label: "Write “header” beside the pipe", place: pipe, text: `${textIn(typed, pipe).trim()} header` };
}
