import { kindsText, kindText, markdownPage } from "../../desk/fields/told.ts";
import { KINDS } from "../../desk/fields/rows.ts";
import { nearest } from "../../facts/nearest.ts";
import { EXIT, type Surroundings, WrongUse } from "../surroundings.ts";

/**
 * Tells of all fields of a kind of file, or which kinds there are.
 * @throws WrongUse where there is no such kind
 */
export async function fieldsCommand(
  typed: string | undefined,
  { markdown = false }: { readonly markdown?: boolean },
  { out, columns }: Surroundings,
): Promise<number> {
  const kind = KINDS.find((one) => one === typed);
  if (markdown) out(markdownPage());
  else if (kind !== undefined) out(kindText(kind, columns));
  else if (typed === undefined) out(`${kindsText()}\nAll fields of one of them: scarfline fields KIND\n`);
  else {
    const meant = nearest(typed, KINDS);
    throw new WrongUse(
      `There is no kind of file ${typed}. ${meant === undefined ? "" : `Did you mean ${meant}? `}There are ${KINDS.join(", ")}.`,
    );
  }
  return EXIT.fine;
}
