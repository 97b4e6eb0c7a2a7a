/** The least a program could do with the same entries: read, parse, render and write each, and nothing else. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import matter from "gray-matter";
import MarkdownIt from "markdown-it";

const [folder, out] = process.argv.slice(2);
const markdown = new MarkdownIt();
mkdirSync(out, { recursive: true });
for (const name of readdirSync(folder).filter((each) => each.endsWith(".md"))) {
  const { data, content } = matter(readFileSync(join(folder, name), "utf8"));
  const page = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${data.title}</title></head><body><h1>${data.title}</h1>${markdown.render(content)}</body></html>`;
  writeFileSync(join(out, name.replace(/\.md$/, ".html")), page);
}
