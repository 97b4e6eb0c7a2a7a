/** Photographs taken at the bench: kept at once, and what is on them is said by a tap. */
import type { JSX } from "preact";
import { useSession } from "../bench.ts";
import { List, Screen, Tap } from "../parts.tsx";
import { PHOTOGRAPH_TYPES } from "../photograph.ts";
import { Running } from "./clock.tsx";

/** The phone's own camera; where it has none, its files. */
export function Camera(): JSX.Element {
  const { keepPhotograph } = useSession();
  const took = (input: HTMLInputElement): void => {
    const [file] = input.files ?? [];
    if (file !== undefined) void keepPhotograph(file);
    input.value = "";
  };
  return (
    <label class="tap tap--quiet camera">
      Take a photograph
      <input
        type="file"
        accept={PHOTOGRAPH_TYPES.join(",")}
        capture="environment"
        onChange={({ currentTarget }) => took(currentTarget)}
      />
    </label>
  );
}

/** Things of this session that a photograph may show. */
function useSubjects(): readonly string[] {
  const { given, session } = useSession();
  const titles = new Map(given.assemblies.flatMap(({ joints }) => joints.map(({ id, title }) => [id, title])));
  return [
    ...session.joints.map((id) => `${id}: ${titles.get(id) ?? "a joint"}`),
    ...(session.of === "gluing" ? session.cups.map(({ id }) => `Cup of ${id}`) : []),
    ...session.breaks.map(({ piece, failure }) => (failure === undefined ? piece : `${piece}, broken`)),
    "The work as a whole",
  ];
}

export function OnPhotograph({ photo }: { readonly photo: string }): JSX.Element {
  const { say } = useSession();
  return (
    <Screen title="What is on the photograph?">
      <Running />
      <List>
        {useSubjects().map((what) => (
          <Tap key={what} onTap={() => say({ kind: "shows", photo, what })}>
            {what}
          </Tap>
        ))}
      </List>
    </Screen>
  );
}
