/** The language that a builder writes in, by its tag (BCP 47). */
import { onlyYouKnow, type Reading, shown } from "./reading.ts";

export function readLanguage(typed: string): Reading<string> {
  try {
    const [tag = ""] = Intl.getCanonicalLocales(typed.trim());
    if (new Intl.DisplayNames("en", { type: "language", fallback: "none" }).of(tag) !== undefined)
      return { value: tag };
  } catch {
    // Not even of the form of a tag.
  }
  return {
    fault: {
      code: "no-language",
      message: "this is no language by its tag",
      expected: "the tag of a language, such as de, fr or pt-BR",
      found: shown(typed),
      ...onlyYouKnow("give the two letters of the language, and those of the country only where it matters"),
    },
  };
}
