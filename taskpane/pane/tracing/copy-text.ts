/** Puts text on the clipboard. False where the browser refuses, as some panes inside other programs do. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyThroughSelection(text);
  }
}

/** The old way, which needs no leave: select a box and copy the selection. */
function copyThroughSelection(text: string): boolean {
  const focused = document.activeElement;
  const box = document.createElement("textarea");
  box.value = text;
  box.style.position = "fixed";
  box.style.opacity = "0";
  document.body.append(box);
  box.select();
  try {
    return document.execCommand("copy");
  } catch {
    return false;
  } finally {
    box.remove();
    if (focused instanceof HTMLElement) focused.focus();
  }
}
