/** How a file leaves the phone. */
import type { BenchFile } from "../../bench/bench-file.ts";

export type Sent = "shared" | "downloaded" | "copied";

const nameOf = ({ path }: BenchFile): string => path.slice(path.lastIndexOf("/") + 1);

/** As Markdown where the system takes it, else as plain text: some share no `.md`. */
function shareable(files: readonly BenchFile[]): File[] | undefined {
  const forms = [
    { ending: "", type: "text/markdown" },
    { ending: ".txt", type: "text/plain" },
  ];
  return forms
    .map(({ ending, type }) => files.map((file) => new File([file.text], `${nameOf(file)}${ending}`, { type })))
    .find((all) => navigator.canShare?.({ files: all }) === true);
}

/** The ways that this browser has. */
export function ways(files: readonly BenchFile[]): readonly Sent[] {
  return [
    ...(shareable(files) === undefined ? [] : (["shared"] as const)),
    "downloaded",
    ...(navigator.clipboard === undefined ? [] : (["copied"] as const)),
  ];
}

/** Why it did not go out, in words; undefined once it has. */
export async function send(files: readonly BenchFile[], way: Sent): Promise<string | undefined> {
  try {
    if (way === "shared") await navigator.share({ files: shareable(files) ?? [] });
    else if (way === "copied") await navigator.clipboard.writeText(files.map(({ text }) => text).join("\n"));
    else for (const file of files) save(file);
    return undefined;
  } catch (error) {
    return `It did not go out: ${error instanceof Error ? error.message : "the browser gave no reason"}`;
  }
}

function save(file: BenchFile): void {
  const address = URL.createObjectURL(new Blob([file.text], { type: "text/markdown" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = nameOf(file);
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
