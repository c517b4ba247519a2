import { type AlsoNamed, choice, type OptionalParameter } from "../parameter.ts";

/** A choice that the function makes itself where it is left out. */
export function openChoice<const C extends string>(
  choices: readonly C[],
  about: string,
  shown: string,
  also: AlsoNamed<NoInfer<C>> = {},
): OptionalParameter<C | null> {
  return { ...choice(choices, { about, also }), fallback: null, whenLeftOut: shown };
}
