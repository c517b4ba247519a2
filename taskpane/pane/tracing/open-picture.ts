import type { Picture } from "./state.ts";

/**
 * A picture file as the browser shows it, under an address that is good in this page alone and that reads from
 * memory: nothing is stored or sent. Nothing where the browser cannot show it. Who takes it lets go of the address.
 */
export async function openPicture(file: File): Promise<Picture | undefined> {
  const url = URL.createObjectURL(file);
  const image = new Image();
  image.src = url;
  try {
    await image.decode();
  } catch {
    URL.revokeObjectURL(url);
    return undefined;
  }
  const { naturalWidth: width, naturalHeight: height } = image;
  if (width > 0 && height > 0) return { name: file.name, url, width, height };
  URL.revokeObjectURL(url);
  return undefined;
}

/**
 * The picture among what was dropped or pasted; the first file where none of them calls itself a picture. Text that
 * comes with a picture of itself, as cells of a sheet do, is text.
 */
export function pictureIn(data: DataTransfer | null): File | undefined {
  if (data?.types.includes("text/plain") === true) return undefined;
  const files = [...(data?.files ?? [])];
  return files.find(({ type }) => type.startsWith("image/")) ?? files[0];
}
