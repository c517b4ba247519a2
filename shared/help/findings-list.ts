import type { FindingKind } from "../../src/basis/result.ts";
import { KIND_NAMES } from "../text/finding-text.ts";
import { findingWords } from "./finding-words.ts";
import { escaped, type Html } from "./html.ts";
import { codesOf, type RaisedBy } from "./raised.ts";

/** What a kind of finding asks of the reader, the gravest first. */
export const KIND_MEANINGS: readonly (readonly [FindingKind, string])[] = [
  ["safety", "people are in danger"],
  ["limit", "a published limit is broken or near: act on it"],
  ["check", "the answer stands; someone should confirm what it rests on"],
  ["assumed", "nothing was stated, and a default was taken"],
  ["error", "there is no answer"],
];

/** Every finding by kind, folded: the words with gaps where a call puts its names and figures. */
export function findingsList(raised: RaisedBy): Html {
  const groups = KIND_MEANINGS.map(([kind, meaning]) => {
    const texts = codesOf(raised)
      .filter(([, kinds]) => kinds.includes(kind))
      .map(([code]) => findingWords(code, kind));
    return group(`<span class="kind ${kind}">${KIND_NAMES[kind]}</span> ${escaped(meaning)}`, texts);
  });
  const said = codesOf(raised)
    .filter(([, kinds]) => kinds.length === 0)
    .map(([code]) => findingWords(code, "check"));
  return [...groups, group("Reasons it may give within its answer", said)].filter((one) => one !== "").join("\n");
}

function group(heading: Html, texts: readonly string[]): Html {
  if (texts.length === 0) return "";
  const items = [...new Set(texts)].map((text) => `<li>${escaped(text)}</li>`).join("\n");
  return `<details>\n<summary>${heading} (${new Set(texts).size})</summary>\n<ul>\n${items}\n</ul>\n</details>`;
}
