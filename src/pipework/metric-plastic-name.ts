import { POLYETHYLENE_SDR } from "../tables/polyethylene-pipe-iso-4427.ts";
import { PVC_PIPE_EN_ISO_1452 } from "../tables/pvc-pipe-en-iso-1452.ts";

/** A metric plastic pipe as its makers name it: in the order of our names, or why it is none. */
export type MetricPlasticName =
  | { readonly text: string }
  | {
      /** The class stated is not that of the rest, which has `due`; without it more than one pipe, or none, has this class. */
      readonly stated: string;
      readonly due: readonly string[];
      /** Names that would do, unquoted. */
      readonly instead: readonly string[];
    };

const GRADE = /\bpe[- ]?(100|80)(?:[- ]?rc)?\b/;
/** Of gas and water pipe in Britain: medium density is PE80, and “high performance” PE100. */
const BY_DENSITY: readonly (readonly [RegExp, string])[] = [
  [/\bmdpe\b/, "pe80"],
  [/\bhppe\b/, "pe100"],
];
const RATIO = /\bs?dr[- ]?(\d+(?:[.,]\d+)?)\b/;
const CLASS = /\bpn ?(\d+(?:[.,]\d+)?)\b/;
const PVC = /\b(?:pvc-u|u-?pvc|pvc)(?![a-z])/;
const POLYETHYLENE = /\b(?:hdpe|pehd|pead|polyethylene|pe)(?![a-z\d])/;
const SIZE = /^(?:dn ?\/ ?od|dn|od|d|ø)? ?(\d+)(?: ?mm)?(?: pipe)?$/;

/**
 * Reads "PE100 250 SDR 17", "315 PE100 SDR17 PN10", "110 PVC-U PN 10" in any order of their parts, tidied, without roughness.
 * A class that follows from the rest must agree with it; one that does not stands for the grade or the ratio left out.
 * Nothing where the text is no such name.
 */
export function metricPlasticName(tidied: string): MetricPlasticName | undefined {
  let rest = BY_DENSITY.reduce((text, [word, grade]) => text.replace(word, grade), tidied);
  const taken = (rule: RegExp): string | undefined => {
    const match = rule.exec(rest);
    if (match === null) return undefined;
    rest = `${rest.slice(0, match.index)} ${rest.slice(match.index + match[0].length)}`;
    return (match[1] ?? match[0]).replace(",", ".");
  };
  const grade = taken(GRADE);
  const ratio = taken(RATIO);
  const pn = taken(CLASS);
  const isPvc = taken(PVC) !== undefined;
  const isPolyethylene = taken(POLYETHYLENE) !== undefined || grade !== undefined;
  const size = SIZE.exec(rest.replace(/[,;]/g, " ").replace(/\s+/g, " ").trim())?.[1];
  if (size === undefined || (isPvc && isPolyethylene) || (ratio === undefined && pn === undefined)) return undefined;
  const isOpen = !isPvc && !isPolyethylene;
  // Without a class the grade may stay open; so may a ratio that no name of the size has: the nearest are then offered.
  if (pn === undefined) {
    const material = isOpen ? [] : [isPvc ? "pvc-u" : "hdpe"];
    return {
      text: [`${size}mm`, ...material, `sdr${ratio}`, ...(grade === undefined ? [] : [`pe${grade}`])].join(" "),
    };
  }
  const names = [...(isPvc ? [] : polyethyleneNames(size)), ...(isPolyethylene ? [] : pvcNames(Number(size)))];
  const alike = names.filter(
    (name) => [undefined, name.ratio].includes(ratio) && [undefined, name.grade].includes(grade),
  );
  const agreeing = alike.filter((name) => Number(pn) === name.pn || (Number(pn) === 6 && name.pn === 6.3));
  const [only] = agreeing;
  if (agreeing.length === 1 && only !== undefined) return { text: only.text };
  const due = [...new Set(alike.map((name) => `PN${name.pn}`))];
  const sameGrade = names.filter((name) => [undefined, name.grade].includes(grade));
  const others = sameGrade.filter((name) => name.ratio === ratio || name.pn === Number(pn));
  const near = [agreeing, others, names.toSorted((a, b) => Math.abs(a.pn - Number(pn)) - Math.abs(b.pn - Number(pn)))];
  return {
    stated: `PN${pn}`,
    due: agreeing.length > 0 || ratio === undefined ? [] : due,
    instead: (near.find((some) => some.length > 0) ?? []).slice(0, 4).map(({ text }) => text),
  };
}

interface PlasticName {
  readonly text: string;
  readonly ratio: string;
  readonly grade: string | undefined;
  readonly pn: number;
}

function polyethyleneNames(size: string): readonly PlasticName[] {
  return POLYETHYLENE_SDR.flatMap(([sdr, pe80, pe100]) =>
    [
      { grade: "80", pn: pe80 },
      { grade: "100", pn: pe100 },
    ].map(({ grade, pn }) => ({ text: `${size}mm HDPE SDR${sdr} PE${grade}`, ratio: String(sdr), grade, pn })),
  );
}

function pvcNames(size: number): readonly PlasticName[] {
  return PVC_PIPE_EN_ISO_1452.filter(([outsideDiameter]) => outsideDiameter === size).map(([, sdr, , , pn]) => ({
    text: `${size}mm PVC-U SDR${sdr}`,
    ratio: String(sdr),
    grade: undefined,
    pn,
  }));
}
