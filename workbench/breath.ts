/** Between two pieces of long work: what waits, a letter or a click among it, is answered first. */
export function breath(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve);
  });
}
