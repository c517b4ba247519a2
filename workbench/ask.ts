export interface Choice<T extends string> {
  readonly id: T;
  readonly label: string;
}

/** Puts a question in a dialog. Answers with the choice, or with nothing when the user steps back. */
export function ask<const T extends string>(question: string, choices: readonly Choice<T>[]): Promise<T | undefined> {
  const dialog = document.createElement("dialog");
  dialog.className = "ask";
  const text = document.createElement("p");
  text.textContent = question;
  text.id = "question";
  dialog.setAttribute("aria-labelledby", text.id);
  const buttons = document.createElement("form");
  buttons.method = "dialog";
  for (const { id, label } of [...choices, { id: "", label: "Cancel" }]) {
    const button = document.createElement("button");
    button.value = id;
    button.textContent = label;
    buttons.append(button);
  }
  dialog.append(text, buttons);
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(choices.find(({ id }) => id === dialog.returnValue)?.id);
    });
  });
}
