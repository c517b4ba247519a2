import type { Archive } from "../read/archive.ts";
import type { FreePath } from "../write/free-paths.ts";
import { freePaths } from "../write/free-paths.ts";
import {
  contentType,
  folderOf,
  isMedia,
  type Part,
  relation,
  relations,
  relationsPath,
  withAll,
} from "../write/package.ts";
import { PACKAGE } from "../write/schemas.ts";
import { DECLARATION } from "../xml-text.ts";
import { partText, textOf } from "./part-text.ts";
import { type PartChanges, repacked } from "./repacked.ts";
import {
  appendedTo,
  attributeOf,
  type Element,
  elementTree,
  prefixOf,
  type Splice,
  spliced,
  tagOf,
  withPrefix,
} from "./xml-tags.ts";

/** An opened file with the changes made to its parts so far. */
export interface PackageEdit {
  /** A part as it now is. */
  readonly text: (path: string) => string;
  readonly put: (path: string, text: string) => void;
  /** Takes a part out, its content type with it, and what `from` says of it. */
  readonly remove: (path: string, from: string) => void;
  /** Adds a part with all it points to. Answers with the id by which `from` points to it. */
  readonly add: (part: Part, from: string) => string;
  readonly freePath: FreePath;
  readonly bytes: () => Uint8Array;
}

const CONTENT_TYPES = "[Content_Types].xml";

export function packageEdit(archive: Archive): PackageEdit {
  const changes = new Map<string, Uint8Array | undefined>();
  const spelled = new Map(archive.paths.map((path) => [path.toLowerCase(), path]));
  const nameOf = (path: string): string => spelled.get(path.toLowerCase()) ?? path;
  const has = (path: string): boolean =>
    changes.has(nameOf(path)) ? changes.get(nameOf(path)) !== undefined : archive.has(path);

  const text = (path: string): string => {
    const changed = changes.get(nameOf(path));
    return changed === undefined ? partText(archive, path) : textOf(changed);
  };
  const put = (path: string, written: string): void => {
    changes.set(nameOf(path), new TextEncoder().encode(written));
  };

  return {
    text,
    put,
    freePath: freePaths(archive.paths),
    remove: (path, from) => {
      changes.set(nameOf(path), undefined);
      if (has(relationsPath(path))) changes.set(nameOf(relationsPath(path)), undefined);
      put(
        CONTENT_TYPES,
        withoutChildren(text(CONTENT_TYPES), (tag) => isSame(attributeOf(tag, "PartName"), path)),
      );
      const links = relationsPath(from);
      put(
        links,
        withoutChildren(text(links), (tag) => {
          const target = attributeOf(tag, "Target") ?? "";
          return isSame(target.startsWith("/") ? target : `${folderOf(from)}${target}`, path);
        }),
      );
    },
    add: (part, from) => {
      const parts = [...new Map(withAll([part]).map((each) => [each.path, each])).values()];
      for (const each of parts) {
        if (isMedia(each)) changes.set(each.path, each.bytes);
        else put(each.path, each.text);
        if (each.pointsTo !== undefined && each.pointsTo.length > 0)
          put(relationsPath(each.path), relations(each.pointsTo, folderOf(each.path)));
      }
      put(CONTENT_TYPES, withChildren(text(CONTENT_TYPES), parts.map(contentType).join("")));
      const links = relationsPath(from);
      const there = has(links) ? text(links) : `${DECLARATION}<Relationships xmlns="${PACKAGE}/relationships"/>`;
      const id = freeId(there);
      put(links, withChildren(there, relation(part, id, folderOf(from))));
      return id;
    },
    bytes: () => repacked(archive, changes satisfies PartChanges),
  };
}

function withoutChildren(text: string, isOut: (tag: string) => boolean): string {
  const out = elementTree(text).children.filter((child) => isOut(tagOf(text, child)));
  return spliced(
    text,
    out.map(({ start, end }): Splice => ({ start, end, text: "" })),
  );
}

function withChildren(text: string, children: string): string {
  const root: Element = elementTree(text);
  return spliced(text, appendedTo(text, root, withPrefix(children, prefixOf(root.name))));
}

function freeId(relationsText: string): string {
  const root = elementTree(relationsText);
  const used = new Set(root.children.map((child) => attributeOf(tagOf(relationsText, child), "Id")));
  let n = used.size + 1;
  while (used.has(`rId${n}`)) n += 1;
  return `rId${n}`;
}

function isSame(target: string | undefined, path: string): boolean {
  return target?.replace(/^\//, "").toLowerCase() === path.toLowerCase();
}
