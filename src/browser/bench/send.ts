/** How a file leaves the phone. */
import type { BenchFile } from "../../bench/bench-file.ts";
import type { Photograph } from "./store.ts";

export type Sent = "shared" | "downloaded" | "copied";

const nameOf = ({ path }: BenchFile): string => path.slice(path.lastIndexOf("/") + 1);

/** Entries, and photographs that they name. */
export interface Going {
  readonly entries: readonly BenchFile[];
  readonly photographs: readonly Photograph[];
}

/** As Markdown where the system takes it, else as plain text: some share no `.md`. */
function shareable({ entries, photographs }: Going): File[] | undefined {
  const pictures = photographs.map(({ bytes, name, type }) => new File([bytes], name, { type }));
  const forms = [
    { ending: "", type: "text/markdown" },
    { ending: ".txt", type: "text/plain" },
  ];
  return forms
    .map(({ ending, type }) => [
      ...entries.map((file) => new File([file.text], `${nameOf(file)}${ending}`, { type })),
      ...pictures,
    ])
    .find((all) => navigator.canShare?.({ files: all }) === true);
}

/** The ways that this browser has; by copying no photograph goes out. */
export function ways(going: Going): readonly Sent[] {
  return [
    ...(shareable(going) === undefined ? [] : (["shared"] as const)),
    "downloaded",
    ...(navigator.clipboard === undefined || going.photographs.length > 0 ? [] : (["copied"] as const)),
  ];
}

/** Why it did not go out, in words; undefined once it has. */
export async function send(going: Going, way: Sent): Promise<string | undefined> {
  try {
    if (way === "shared") await navigator.share({ files: shareable(going) ?? [] });
    else if (way === "copied") await navigator.clipboard.writeText(going.entries.map(({ text }) => text).join("\n"));
    else {
      for (const file of going.entries) save(nameOf(file), file.text, "text/markdown");
      for (const { name, bytes, type } of going.photographs) save(name, bytes, type);
    }
    return undefined;
  } catch (error) {
    return `It did not go out: ${error instanceof Error ? error.message : "the browser gave no reason"}`;
  }
}

function save(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
