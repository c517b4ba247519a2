export interface Choice<T extends string> {
  readonly id: T;
  readonly label: string;
}

/** A question with what bears on it: lines of a list, and a remark under them. */
export interface Question {
  readonly text: string;
  readonly heading?: string;
  readonly lines?: readonly string[];
  readonly remark?: string;
}

const CANCEL: Choice<""> = { id: "", label: "Cancel" };

/** Puts a question in a dialog. Answers with the choice, or with nothing when the user steps back. */
export async function ask<const T extends string>(
  question: Question,
  choices: readonly Choice<T>[],
): Promise<T | undefined> {
  const dialog = opened(question, [...choices, CANCEL]);
  await closed(dialog);
  return choices.find(({ id }) => id === dialog.returnValue)?.id;
}

/**
 * Says what is waited for. Answers with true once it is there, with false when the user would rather not wait. What is said
 * may change meanwhile: `follow` is given the way to.
 */
export async function wait(
  words: string,
  until: Promise<unknown>,
  follow?: (say: (words: string) => void) => void,
): Promise<boolean> {
  const dialog = opened({ text: words }, [CANCEL]);
  follow?.((now) => {
    const text = dialog.querySelector("p");
    if (text !== null) text.textContent = now;
  });
  try {
    return await Promise.race([until.then(() => true), closed(dialog).then(() => false)]);
  } finally {
    dialog.close();
  }
}

function opened(
  { text: words, heading, lines = [], remark }: Question,
  choices: readonly Choice<string>[],
): HTMLDialogElement {
  const dialog = document.createElement("dialog");
  dialog.className = "ask";
  const paragraph = (content: string | undefined): readonly HTMLElement[] => {
    if (content === undefined) return [];
    const made = document.createElement("p");
    made.textContent = content;
    return [made];
  };
  const [text] = paragraph(words) as [HTMLElement];
  text.id = "question";
  dialog.setAttribute("aria-labelledby", text.id);
  const buttons = document.createElement("form");
  buttons.method = "dialog";
  for (const { id, label } of choices) {
    const button = document.createElement("button");
    button.value = id;
    button.textContent = label;
    buttons.append(button);
  }
  const list = document.createElement("ul");
  list.className = "lines";
  for (const line of lines) {
    const item = document.createElement("li");
    item.textContent = line;
    list.append(item);
  }
  const details = document.createElement("div");
  details.className = "details";
  details.append(...paragraph(heading), ...(lines.length === 0 ? [] : [list]), ...paragraph(remark));
  dialog.append(text, ...(details.childElementCount === 0 ? [] : [details]), buttons);
  document.body.append(dialog);
  dialog.showModal();
  return dialog;
}

function closed(dialog: HTMLDialogElement): Promise<void> {
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve();
    });
  });
}
