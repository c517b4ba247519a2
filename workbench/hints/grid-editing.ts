import { CommandType, ICommandService, type Univer } from "@univerjs/core";
import {
  DocSelectionManagerService,
  IDescriptionService,
  IEditorBridgeService,
  IEditorService,
  IShortcutService,
  KeyCode,
} from "@univerjs/preset-sheets-core";
import type { GridFunctionFacts } from "./hint.ts";
import type { Edges } from "./hint-place.ts";

/** What is being typed into a cell, in the cell itself or in the formula bar. */
export interface CellEdit {
  /** The cell, for telling one from another. */
  readonly cell: string;
  readonly text: string;
  readonly caret: number;
  /** What the reader is looking at: the cell with the box that is typed into. */
  readonly edges: Edges;
}

/** Typing into the grid of the page, which the grid's public calls do not tell of. */
export interface GridEditing {
  readonly now: () => CellEdit | undefined;
  /** Calls back whenever text or caret have moved, and when typing begins and ends. */
  readonly onChange: (callback: () => void) => void;
  /** Has a key do this, and nothing else, as long as that is wanted. */
  readonly onKey: (key: EditKey, isWanted: () => boolean, act: () => void) => void;
  /** Puts another text in the place of what is typed. */
  readonly replace: (text: string, caret: number) => void;
  readonly functionFacts: (name: string) => GridFunctionFacts | undefined;
}

const KEYS = { Escape: KeyCode.ESC, F8: KeyCode.F8 } as const;
export type EditKey = keyof typeof KEYS;
/** The grid's own go to 1000. */
const ABOVE_ALL = 2000;

export function gridEditing(univer: Univer): GridEditing {
  const injector = univer.__getInjector();
  const bridge = injector.get(IEditorBridgeService);
  const editors = injector.get(IEditorService);
  const selection = injector.get(DocSelectionManagerService);
  const descriptions = injector.get(IDescriptionService);
  return {
    now: () => {
      const state = bridge.getEditCellState();
      const editor = editors.getFocusEditor();
      if (!bridge.isVisible().visible || state === null || state === undefined || !editor) return undefined;
      const [range] = editor.getSelectionRanges();
      if (range === undefined) return undefined;
      const text = (editor.getDocumentData().body?.dataStream ?? "").replace(/\r\n$/, "");
      const { position, canvasOffset, sheetId, row, column } = state;
      const cell: Edges = {
        left: canvasOffset.left + position.startX,
        top: canvasOffset.top + position.startY,
        right: canvasOffset.left + position.endX,
        bottom: canvasOffset.top + position.endY,
      };
      return {
        cell: `${sheetId} ${row} ${column}`,
        text,
        caret: range.startOffset,
        edges: grown(cell, editor.getBoundingClientRect()),
      };
    },
    onChange: (callback) => {
      selection.textSelection$.subscribe(callback);
      bridge.visible$.subscribe(callback);
    },
    onKey: (key, isWanted, act) => {
      const id = `workbench.operation.${key.toLowerCase()}`;
      const handler = (): boolean => {
        act();
        return true;
      };
      injector.get(ICommandService).registerCommand({ id, type: CommandType.OPERATION, handler });
      const shortcut = { id, binding: KEYS[key], preconditions: isWanted, priority: ABOVE_ALL };
      injector.get(IShortcutService).registerShortcut(shortcut);
    },
    replace: (text, caret) => {
      editors.getFocusEditor()?.replaceText(text, [{ startOffset: caret, endOffset: caret, collapsed: true }]);
    },
    functionFacts: (name) => {
      const info = descriptions.getFunctionInfo(name);
      if (info === undefined) return undefined;
      return {
        about: info.abstract,
        parameters: info.functionParameter.map((one) => ({
          name: one.name,
          about: one.detail,
          isOptional: one.require === 0,
        })),
        repeats: info.functionParameter.at(-1)?.repeat === 1,
      };
    },
  };
}

/** The cell with the box that grows from it as a formula gets longer; the formula bar stands elsewhere. */
function grown(cell: Edges, box: DOMRect): Edges {
  if (box.bottom <= cell.top || box.top > cell.bottom) return cell;
  return { ...cell, top: Math.min(cell.top, box.top), bottom: Math.max(cell.bottom, box.bottom) };
}
