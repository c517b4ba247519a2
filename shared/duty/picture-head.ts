/** What a picture file says of itself. */
export interface PictureHead {
  readonly type: "png" | "jpeg";
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Why a file is no picture of those. */
export interface NoPicture {
  readonly not: string;
}

const BROKEN_OFF: NoPicture = { not: "the file breaks off before the end of the picture" };

/** Kind and size of a whole PNG or JPEG file by its bytes, whatever its name. */
export function pictureHead(bytes: Uint8Array): PictureHead | NoPicture {
  if (startsWith(bytes, PNG)) return pngHead(bytes);
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return jpegHead(bytes);
  const other = OTHERS.find(({ start, at = 0 }) => startsWith(bytes, start, at));
  return { not: `it is ${other?.name ?? "no picture of a known kind"}; save it as PNG or JPEG` };
}

/** W3C, Portable Network Graphics (second edition), 5.2. */
const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** First bytes of what else a logo may come as, as their own specifications print them. */
const OTHERS: readonly { readonly name: string; readonly start: readonly number[]; readonly at?: number }[] = [
  { name: "a GIF picture", start: lettersOf("GIF8") },
  { name: "a WebP picture", start: lettersOf("WEBP"), at: 8 },
  { name: "a BMP picture", start: lettersOf("BM") },
  { name: "a TIFF picture", start: [0x49, 0x49, 0x2a, 0] },
  { name: "a TIFF picture", start: [0x4d, 0x4d, 0, 0x2a] },
  { name: "a PDF file", start: lettersOf("%PDF") },
  { name: "a drawing in text form, such as SVG", start: lettersOf("<") },
  { name: "a drawing in text form, such as SVG", start: [0xef, 0xbb, 0xbf, 0x3c] },
];

/** Chunks of length, name, data and check, the first IHDR, the last IEND (W3C PNG, 5.3, 11.2.2 and 11.2.5). */
function pngHead(bytes: Uint8Array): PictureHead | NoPicture {
  const view = viewOf(bytes);
  if (bytes.length < 24 || !startsWith(bytes, lettersOf("IHDR"), 12)) return BROKEN_OFF;
  for (let at = PNG.length; at + 12 <= bytes.length; at += 12 + view.getUint32(at)) {
    if (startsWith(bytes, lettersOf("IEND"), at + 4)) return sized("png", view.getUint32(16), view.getUint32(20));
  }
  return BROKEN_OFF;
}

/** Segments of marker and length up to the frame header, then data up to the end of image (ITU-T T.81, B.1.1 and B.2.2). */
function jpegHead(bytes: Uint8Array): PictureHead | NoPicture {
  const view = viewOf(bytes);
  for (let at = 2; at + 9 <= bytes.length; ) {
    if (bytes[at] !== 0xff) return BROKEN_OFF;
    const marker = bytes[at + 1] as number;
    if (marker === 0xff) {
      // Any marker may be preceded by fill bytes.
      at += 1;
    } else if (isFrameHeader(marker)) {
      if (!hasEnd(bytes, at)) return BROKEN_OFF;
      return sized("jpeg", view.getUint16(at + 7), view.getUint16(at + 5));
    } else at += 2 + view.getUint16(at + 2);
  }
  return BROKEN_OFF;
}

/** SOF0 to SOF15 without DHT, JPG and DAC, which lie between them (ITU-T T.81, table B.1). */
function isFrameHeader(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

function hasEnd(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.length - 2; at > from; at -= 1) if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return true;
  return false;
}

function sized(type: PictureHead["type"], widthPx: number, heightPx: number): PictureHead | NoPicture {
  return widthPx > 0 && heightPx > 0 ? { type, widthPx, heightPx } : { not: "it does not say its width and height" };
}

function startsWith(bytes: Uint8Array, start: readonly number[], at = 0): boolean {
  return start.every((byte, i) => bytes[at + i] === byte);
}

function lettersOf(text: string): readonly number[] {
  return [...text].map((letter) => letter.charCodeAt(0));
}

function viewOf({ buffer, byteOffset, byteLength }: Uint8Array): DataView {
  return new DataView(buffer, byteOffset, byteLength);
}
