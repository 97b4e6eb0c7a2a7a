/** Texts of record files. */

export type Value = string | undefined | readonly Value[] | { readonly [key: string]: Value };

/** A Markdown file with front matter; JSON is YAML, and text in it stays text. */
export function file(front: { readonly [key: string]: Value }, body = ""): string {
  const lines = Object.entries(front).flatMap(([key, value]) =>
    value === undefined ? [] : [`${key}: ${JSON.stringify(value)}`],
  );
  return `---\n${lines.join("\n")}\n---\n${body}\n`;
}

/** Keys with their values, or nothing at all. */
export function some<T extends object>(wanted: boolean, part: T): Partial<T> {
  return wanted ? part : {};
}
