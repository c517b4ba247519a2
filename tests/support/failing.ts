/** Where a call is made to fail: instead of being carried out, or just after. */
export interface PlannedFailure {
  readonly call: number;
  readonly when: "instead" | "after";
}

/** Opens what it hands out to be closed: where it fails it has opened nothing. */
const OPENS = /\.batchUndo$/;

/** Calls of an object and of what its calls answer with, counted, one of which may be made to fail. */
export class FailingCalls {
  /** What was called since the start, by the members it went through. */
  readonly calls: string[] = [];
  fault: PlannedFailure | undefined;
  readonly #bare = new WeakMap<object, object>();

  /** The same object; its calls are counted. */
  wrap<T extends object>(target: T, path: string): T {
    const proxy = new Proxy(target, {
      get: (_, name) => {
        const member: unknown = Reflect.get(target, name, target);
        if (typeof member !== "function" || typeof name === "symbol") return member;
        return (...args: readonly unknown[]) =>
          this.#called(`${path}.${name}`, () => {
            const given = args.map((one) => this.#unwrapped(one));
            return Reflect.apply(member, target, given);
          });
      },
    });
    this.#bare.set(proxy, target);
    return proxy;
  }

  #called(name: string, call: () => unknown): unknown {
    const index = this.calls.push(name) - 1;
    const isMeant = this.fault?.call === index;
    if (isMeant && (this.fault?.when === "instead" || OPENS.test(name))) throw new Error(`${name} was made to fail`);
    const answer = call();
    if (isMeant) throw new Error(`${name} was made to fail`);
    return this.#wrapped(answer, name);
  }

  #wrapped(answer: unknown, name: string): unknown {
    if (Array.isArray(answer)) return answer.map((one) => this.#wrapped(one, name));
    const isOfAClass =
      typeof answer === "object" && answer !== null && Object.getPrototypeOf(answer) !== Object.prototype;
    return isOfAClass && !(answer instanceof Promise) ? this.wrap(answer, name.split(".").slice(-1)[0] ?? "") : answer;
  }

  #unwrapped(given: unknown): unknown {
    return typeof given === "object" && given !== null ? (this.#bare.get(given) ?? given) : given;
  }
}
