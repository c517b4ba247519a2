/** As many answers of each object are kept as a duty of twelve cases asks for. */
const MOST = 32;

interface Answer<A, R> {
  readonly args: A;
  readonly answer: R;
}

/**
 * A function of an object and a few figures or further objects that gives an answer again without working where all of
 * them are the same. For pure functions of objects that nobody changes; what was worked out of an object goes with it.
 */
export function remembered<K extends object, A extends readonly unknown[], R>(
  work: (of: K, ...args: A) => R,
): (of: K, ...args: A) => R {
  const kept = new WeakMap<K, Answer<A, R>[]>();
  return (of, ...args) => {
    let answers = kept.get(of);
    if (answers === undefined) {
      answers = [];
      kept.set(of, answers);
    }
    for (const one of answers) if (isSame(one.args, args)) return one.answer;
    const answer = work(of, ...args);
    if (answers.length === MOST) answers.shift();
    answers.push({ args, answer });
    return answer;
  };
}

function isSame(kept: readonly unknown[], args: readonly unknown[]): boolean {
  for (let i = 0; i < args.length; i += 1) if (!Object.is(kept[i], args[i])) return false;
  return kept.length === args.length;
}
