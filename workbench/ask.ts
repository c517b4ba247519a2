export interface Choice<T extends string> {
  readonly id: T;
  readonly label: string;
}

const CANCEL: Choice<""> = { id: "", label: "Cancel" };

/** Puts a question in a dialog. Answers with the choice, or with nothing when the user steps back. */
export async function ask<const T extends string>(
  question: string,
  choices: readonly Choice<T>[],
): Promise<T | undefined> {
  const dialog = opened(question, [...choices, CANCEL]);
  await closed(dialog);
  return choices.find(({ id }) => id === dialog.returnValue)?.id;
}

/** Says what is waited for. Answers with true once it is there, with false when the user would rather not wait. */
export async function wait(words: string, until: Promise<void>): Promise<boolean> {
  const dialog = opened(words, [CANCEL]);
  try {
    return await Promise.race([until.then(() => true), closed(dialog).then(() => false)]);
  } finally {
    dialog.close();
  }
}

function opened(words: string, choices: readonly Choice<string>[]): HTMLDialogElement {
  const dialog = document.createElement("dialog");
  dialog.className = "ask";
  const text = document.createElement("p");
  text.textContent = words;
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
  dialog.append(text, buttons);
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
