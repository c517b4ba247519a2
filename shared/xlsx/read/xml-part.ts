import { SaxesParser } from "saxes";
import type { Archive } from "./archive.ts";
import type { Limits } from "./limits.ts";
import { refuse } from "./refusal.ts";

export type Attributes = Readonly<Record<string, string>>;

/** Called as a part is read. Names come without their namespace prefix. */
export interface PartHandler {
  readonly open: (name: string, attributes: Attributes) => void;
  readonly close?: (name: string) => void;
  readonly text?: (text: string) => void;
}

/** Reads an XML part as it unpacks. A DOCTYPE is refused: no workbook needs one, and entities can grow without end. */
export function readPart(archive: Archive, path: string, handler: PartHandler, limits: Limits): void {
  const parser = new SaxesParser({ xmlns: false, position: false });
  let depth = 0;
  parser.on("error", (problem) => refuse("damaged", `Part ${path} is not well-formed: ${problem.message}.`));
  parser.on("doctype", () => refuse("not-allowed", `Part ${path} holds a DOCTYPE, which a workbook must not have.`));
  parser.on("opentag", ({ name, attributes }) => {
    depth += 1;
    if (depth > limits.depth) refuse("not-allowed", `Part ${path} is nested deeper than any workbook is.`);
    handler.open(localName(name), attributes);
  });
  parser.on("closetag", ({ name }) => {
    depth -= 1;
    handler.close?.(localName(name));
  });
  parser.on("text", (text) => handler.text?.(text));
  parser.on("cdata", (text) => handler.text?.(text));

  const decoder = new TextDecoder("utf-8", { fatal: true });
  archive.unpack(path, (bytes, last) => {
    let text: string;
    try {
      text = decoder.decode(bytes, { stream: !last });
    } catch {
      return refuse("damaged", `Part ${path} is not in UTF-8.`);
    }
    parser.write(text);
    if (last) parser.close();
  });
}

export function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

/** On unless "0", "false" or not there. */
export function isOn(value: string | undefined): boolean {
  return value !== undefined && value !== "0" && value !== "false";
}

export interface Relation {
  readonly id: string;
  readonly type: string;
  readonly target: string;
}

/** What a part points to inside the file; nothing outside is followed. "" stands for the file itself. */
export function relationsOf(archive: Archive, part: string, limits: Limits): readonly Relation[] {
  const end = part.lastIndexOf("/") + 1;
  const folder = part.slice(0, end);
  const path = `${folder}_rels/${part.slice(end)}.rels`;
  if (!archive.has(path)) return [];
  const relations: Relation[] = [];
  const open = (name: string, { Id = "", Type = "", Target = "", TargetMode }: Attributes): void => {
    if (name !== "Relationship" || TargetMode === "External") return;
    relations.push({ id: Id, type: Type.slice(Type.lastIndexOf("/") + 1), target: resolved(folder, Target) });
  };
  readPart(archive, path, { open }, limits);
  return relations;
}

function resolved(folder: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps: string[] = [];
  for (const step of `${folder}${target}`.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}

/** The relation id among the attributes, whatever prefix it has. */
export function relationId(attributes: Attributes): string | undefined {
  return Object.entries(attributes).find(([name]) => name.endsWith(":id"))?.[1];
}
