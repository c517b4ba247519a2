import { fitted } from "../../shared/ports/picture-fit.ts";
import type { PictureSpec } from "../../shared/ports/sheet-spec.ts";

/** Whether this Excel has pictures on sheets: they came with ExcelApi 1.9. */
export function holdsPictures(): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", "1.9");
}

/** A picture and the room for it, whose size is known after the next sync. */
export interface StartedPicture {
  readonly room: Excel.Range;
  readonly spec: PictureSpec;
}

export function startPicture(sheet: Excel.Worksheet, spec: PictureSpec): StartedPicture {
  return { room: sheet.getRange(spec.at).load("left,top,width,height"), spec };
}

/** Puts the picture into its room. */
export function finishPicture(sheet: Excel.Worksheet, { room, spec }: StartedPicture): void {
  const picture = sheet.shapes.addImage(spec.base64);
  const { width, height } = fitted(spec, room);
  // Locked, the second of the two sides would change the first.
  picture.lockAspectRatio = false;
  picture.left = room.left;
  picture.top = room.top;
  picture.width = width;
  picture.height = height;
  picture.lockAspectRatio = true;
  picture.placement = "OneCell";
  picture.altTextDescription = spec.altText;
}
