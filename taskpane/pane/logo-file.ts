import { logoOfSize, readLogo } from "../../shared/duty/logo.ts";
import { fail, type Result, succeed } from "../../src/basis/result.ts";

/** A chosen file as the logo that a duty keeps, in base64; refused where it is none, or where the browser cannot show it. */
export async function readLogoFile(file: File): Promise<Result<string>> {
  const size = logoOfSize(file.size);
  if (!size.ok) return size;
  const logo = readLogo(await base64Of(file));
  if (!logo.ok) return logo;
  const { type, base64 } = logo.value;
  const image = new Image();
  image.src = logoSource({ type, base64 });
  try {
    await image.decode();
  } catch {
    const reason = "the picture is damaged: it cannot be shown";
    return fail([{ code: "logo-refused", kind: "check", subject: "logo", facts: { reason } }]);
  }
  return succeed(base64);
}

/** The address under which a page shows it. */
export function logoSource({ type, base64 }: { readonly type: "png" | "jpeg"; readonly base64: string }): string {
  return `data:image/${type};base64,${base64}`;
}

function base64Of(file: File): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^[^,]*,?/, ""));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(file);
  });
}
