import { refuse } from "../read/refusal.ts";
import { xmlAttribute } from "../xml-text.ts";

/**
 * Tags of an XML text with their places in it, for texts that were read once and are known to be well-formed. Places
 * are what the reader of parts does not tell, and a patch needs.
 */
export interface Tag {
  readonly kind: "open" | "close" | "empty";
  /** As written, with its prefix. */
  readonly name: string;
  /** Of its "<" and behind its ">". */
  readonly start: number;
  readonly end: number;
}

/** The next tag from there on; comments, CDATA and instructions are passed over. */
export function nextTag(text: string, from: number): Tag | undefined {
  let start = text.indexOf("<", from);
  for (; start >= 0; start = text.indexOf("<", start)) {
    const passed = PASSED.find(([opening]) => text.startsWith(opening, start));
    if (passed === undefined) break;
    start = found(text, passed[1], start) + passed[1].length;
  }
  if (start < 0) return undefined;
  const end = tagEnd(text, start);
  const isClose = text[start + 1] === "/";
  const nameStart = isClose ? start + 2 : start + 1;
  let nameEnd = nameStart;
  while (!NAME_ENDS.has(text[nameEnd] ?? ">")) nameEnd += 1;
  return {
    kind: isClose ? "close" : text[end - 2] === "/" ? "empty" : "open",
    name: text.slice(nameStart, nameEnd),
    start,
    end,
  };
}

const PASSED = [
  ["<!--", "-->"],
  ["<![CDATA[", "]]>"],
  ["<?", "?>"],
] as const;
const NAME_ENDS = new Set([" ", "\t", "\n", "\r", "/", ">"]);

/** Behind the ">" of the tag; one in an attribute does not end it. */
function tagEnd(text: string, start: number): number {
  let end = found(text, ">", start);
  for (let quote = firstQuote(text, start, end); quote >= 0; quote = firstQuote(text, quote, end)) {
    const closing = found(text, text[quote] as string, quote + 1);
    quote = closing + 1;
    if (closing > end) end = found(text, ">", closing);
  }
  return end + 1;
}

function firstQuote(text: string, from: number, to: number): number {
  for (let i = from; i < to; i += 1) if (text[i] === '"' || text[i] === "'") return i;
  return -1;
}

function found(text: string, wanted: string, from: number): number {
  const at = text.indexOf(wanted, from);
  return at < 0 ? refuse("damaged", "A part of the file ends within a tag.") : at;
}

/** An element with its places: its open tag is start to openEnd, its close tag closeStart to end. */
export interface Element {
  readonly name: string;
  readonly start: number;
  readonly openEnd: number;
  closeStart: number;
  end: number;
  readonly isEmpty: boolean;
  readonly children: Element[];
}

/** The root of a whole part. */
export function elementTree(text: string): Element {
  const open: Element[] = [];
  let root: Element | undefined;
  for (let tag = nextTag(text, 0); tag !== undefined; tag = nextTag(text, tag.end)) {
    if (tag.kind === "close") {
      const closed = open.pop();
      if (closed !== undefined) Object.assign(closed, { closeStart: tag.start, end: tag.end });
      continue;
    }
    const { name, start, end } = tag;
    const element: Element = {
      name,
      start,
      openEnd: end,
      closeStart: end,
      end,
      isEmpty: tag.kind === "empty",
      children: [],
    };
    open.at(-1)?.children.push(element);
    root ??= element;
    if (tag.kind === "open") open.push(element);
  }
  return root ?? refuse("damaged", "A part of the file holds no element.");
}

export function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

/** "x:" of "x:row", or nothing. */
export function prefixOf(name: string): string {
  return name.slice(0, name.indexOf(":") + 1);
}

export function childNamed({ children }: Element, local: string): Element | undefined {
  return children.find(({ name }) => localName(name) === local);
}

export function childrenNamed({ children }: Element, local: string): readonly Element[] {
  return children.filter(({ name }) => localName(name) === local);
}

/** The attribute of a tag, its entities resolved. */
export function attributeOf(tag: string, name: string): string | undefined {
  const value = findAttribute(tag, name)?.value;
  return value === undefined ? undefined : resolved(value);
}

/** The text that an attribute or an element writes, its entities and CDATA resolved. */
export function resolved(written: string): string {
  return written.replace(TEXT_TOKEN, (whole, cdata, hex, decimal, word) => {
    if (cdata !== undefined) return cdata;
    if (hex !== undefined) return String.fromCodePoint(Number.parseInt(hex, 16));
    if (decimal !== undefined) return String.fromCodePoint(Number(decimal));
    return ENTITIES[word as string] ?? whole;
  });
}

const TEXT_TOKEN = /<!\[CDATA\[([\s\S]*?)\]\]>|&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi;

const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** The tag with the attribute set, or without it. Other attributes stay as they are written. */
export function withAttribute(tag: string, name: string, value: string | number | undefined): string {
  const there = findAttribute(tag, name);
  const written = value === undefined ? "" : ` ${name}="${xmlAttribute(String(value))}"`;
  if (there !== undefined) return tag.slice(0, there.start) + written + tag.slice(there.end);
  return value === undefined ? tag : tag.replace(/\s*\/?>$/, (ending) => `${written}${ending.trimStart()}`);
}

/** Where an attribute stands, the space before it with it. Names inside the values of others are passed over. */
function findAttribute(
  tag: string,
  name: string,
): { readonly start: number; readonly end: number; readonly value: string } | undefined {
  ATTRIBUTE.lastIndex = 0;
  for (let match = ATTRIBUTE.exec(tag); match !== null; match = ATTRIBUTE.exec(tag))
    if (match[1] === name)
      return { start: match.index, end: ATTRIBUTE.lastIndex, value: (match[2] as string).slice(1, -1) };
  return undefined;
}

const ATTRIBUTE = /\s+([^\s=/>"']+)\s*=\s*("[^"]*"|'[^']*')/g;

/** Elements of ours with the prefix that a part uses. */
export function withPrefix(xml: string, prefix: string): string {
  return prefix === "" ? xml : xml.replace(/<(\/?)(?=[A-Za-z]\w*[\s/>])/g, `<$1${prefix}`);
}

/** Elements as they would be in a part without that prefix. */
export function withoutPrefix(xml: string, prefix: string): string {
  return prefix === "" ? xml : xml.replaceAll(`<${prefix}`, "<").replaceAll(`</${prefix}`, "</");
}

export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The text with its splices made. None may overlap; what is put in at one place keeps its order, before what is replaced there. */
export function spliced(text: string, splices: readonly Splice[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, text: put } of [...splices].sort((a, b) => a.start - b.start || a.end - b.end)) {
    pieces.push(text.slice(at, start), put);
    at = end;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
}

/** Puts text at the end of an element's content, under another open tag where one is given. An empty element is opened. */
export function appendedTo(text: string, element: Element, inside: string, openTag?: string): readonly Splice[] {
  const { start, openEnd, closeStart, end, isEmpty, name } = element;
  const tag = openTag ?? tagOf(text, element);
  if (isEmpty) return [{ start, end, text: `${tag.replace(/\s*\/>$/, ">")}${inside}</${name}>` }];
  return [
    { start, end: openEnd, text: tag },
    { start: closeStart, end: closeStart, text: inside },
  ];
}

export function tagOf(text: string, { start, openEnd }: Element): string {
  return text.slice(start, openEnd);
}

export function outerOf(text: string, { start, end }: Element): string {
  return text.slice(start, end);
}

/** The children of an element, as written. */
export function childTexts(text: string, parent: Element): readonly string[] {
  return parent.children.map((child) => outerOf(text, child));
}
