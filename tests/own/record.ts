/** The small record with all that a builder may add to its site, and what comes of it. */
import { expect } from "vitest";
import { join } from "node:path";
import { command, type Ran } from "../cli/command.ts";
import { contentOf, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

export interface Files {
  readonly [path: string]: string | Buffer;
}

const VISIT = `---
title: Come & see
description: How to find us
---
The shed of {{ edition.aircraft.name }}: [hours](/hours.html), [tools](shop/tools.11ty.js), [a day](entry/2021-03-01-first.html).

{% for entry in edition.entries %}- [{{ entry.title }}]({{ entry.url }})
{% endfor %}
`;

const TOOLS = `import { bench } from "./_lib/bench.mjs";
export const data = { title: "Tools", layout: "framed.liquid", nav: false };
export const render = ({ edition }) => \`<p>\${bench} \${edition.joints.map(({ id, verdict }) => id + " " + verdict)}</p><p><a href="/">Home</a></p>\`;
`;

export const OWN: Files = {
  "pages/visit.md": VISIT,
  "pages/shop/tools.11ty.js": TOOLS,
  "pages/shop/_lib/bench.mjs": `export const bench = "A bench of beech.";\n`,
  "pages/for-looking.md": "---\ntitle: For the inspector\nfor: inspector\n---\nWhere the marmalade stands.\n",
  "layouts/framed.liquid": `<section class="framed">{{ content }}</section>\n`,
  "style.css": ".framed { border: 1px solid }\n",
};

export async function writeRecord(folder: string, more: Files = OWN): Promise<string> {
  const content = join(folder, "record");
  writeAll(content, { ...(await smallRecord()), ...more });
  return content;
}

export function build(folder: string, ...words: readonly string[]): Promise<Ran> {
  return command(["build", "--content", join(folder, "record"), "--out", join(folder, "site"), ...words]);
}

/** Files of the site that was built, which has to be without a problem. */
export async function siteOf(folder: string, ...words: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const { code, err } = await build(folder, ...words);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return contentOf(join(folder, "site"));
}
