/** The form of a language: a sentence for every code of evidence. A code without one does not compile. */
import type { Code, Say, Saying, Values } from "../../evidence/saying.ts";
import type { Units } from "../quantities.ts";

/** What sentences are made with beside their values; `say` makes those that stand within others. */
export interface Telling {
  readonly units: Units;
  readonly say: Say;
}

export type Sentences<V> = { readonly [C in keyof V]: (values: V[C], telling: Telling) => string };

export type Catalogue = Sentences<Values>;

/** Makes sentences in one language, in the units that the aircraft is built in. */
export function sayIn(catalogue: Catalogue, units: Units): Say {
  const sentences = catalogue as { readonly [C in Code]: (values: object, telling: Telling) => string };
  const telling: Telling = { units, say: ({ code, values }: Saying) => sentences[code](values, telling) };
  return telling.say;
}
