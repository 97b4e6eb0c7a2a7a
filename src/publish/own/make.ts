/** Runs Eleventy over `pages/`, as its users know it; nothing is written. */
import { existsSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import Eleventy, {
  InputPathToUrlTransformPlugin,
  type Late,
  type MadePage,
  type PageContext,
  type UserConfig,
} from "@11ty/eleventy";
import { linesBefore } from "./failure.ts";
import { elementFaults, linkOf, attributeValue, writtenOf } from "./marked-up.ts";
import { Readers } from "./readers.ts";
import type { OwnFault, OwnLink, OwnMade, OwnReply, OwnTask, StoryTask } from "./task.ts";

type Of = Pick<PageContext, "url" | "inputPath">;

const PAGES = "pages";
/** Nothing is written there. */
const OUT = ".scarfline-own";

export async function makeOwn(task: OwnTask): Promise<OwnReply> {
  const { view, story } = task;
  const readers = new Readers(task);
  const links: OwnLink[] = [];
  const faults: OwnFault[] = [];
  const layouts = new Map(story.map(({ path, layout }) => [`/${path}`, `layouts/${layout}`]));
  const fileOf = ({ url, inputPath }: Of): string =>
    layouts.get(url.replace(/\/$/, "/index.html")) ?? plainPath(inputPath);
  const input = existsSync(PAGES) ? PAGES : await mkdtemp(join(tmpdir(), "scarfline-"));
  const eleventy = new Eleventy(input, OUT, {
    configPath: false,
    quietMode: true,
    config: (config) => {
      // It tells what took long, whether asked or not.
      config.benchmarkManager.finish = () => undefined;
      config.setUseGitIgnore(false);
      config.setLayoutsDirectory(relative(input, "layouts"));
      config.addGlobalData("edition", () => view);
      config.addGlobalData("permalink", () => usualPath);
      for (const key of ["title", "description", "nav", "for", "layout"]) config.dataFilterSelectors.add(key);
      config.addPreprocessor("audience", "*", (data, content) => {
        const file = plainPath(data.page.inputPath);
        linesBefore.note(file, typeof content === "string" ? content : "");
        const seen = readers.sees(file, data);
        if (typeof seen === "object") faults.push(seen);
        return seen === true ? undefined : false;
      });
      addStory(config, story, view.entries);
      config.addPlugin(InputPathToUrlTransformPlugin);
      config.addPlugin((late) => lookAtAll(late, fileOf, readers, links, faults));
    },
  });
  eleventy.disableLogger();
  const made = await eleventy.toJSON().finally(() => (input === PAGES ? undefined : rm(input, { recursive: true })));
  const pages = made.flatMap((page) => {
    const file = fileOf({ url: page.url || "", inputPath: page.inputPath });
    faults.push(...readers.lateFaults(plainPath(page.inputPath), page.data ?? {}, file));
    faults.push(...readers.madeFaults(page, file));
    return ownMade(page, file);
  });
  return { pages, links, faults };
}

function ownMade({ outputPath, content, data: { title, description, nav } = {} }: MadePage, file: string): OwnMade[] {
  if (outputPath === false) return [];
  const path = plainPath(outputPath).slice(OUT.length + 1);
  const words = { ...text("title", title), ...text("description", description) };
  return [{ file, path, content: String(content), nav: nav !== false, ...words }];
}

/** Notes what all pages came to, and makes their links lead on from wherever they lie. */
function lookAtAll(
  late: Late,
  fileOf: (page: Of) => string,
  readers: Readers,
  links: OwnLink[],
  faults: OwnFault[],
): void {
  late.htmlTransformer.addPosthtmlPlugin("html", (page) => (tree) => {
    const file = fileOf(page);
    faults.push(...elementFaults(tree, file), ...readers.treeFaults(tree, file));
  });
  // Before them: names of source files are no HTML.
  late.htmlTransformer.addUrlTransform("html", attributeValue, { priority: 10 });
  // After the links to source files have become links to pages.
  const whole = { priority: -10 };
  late.htmlTransformer.addUrlTransform(
    "html",
    function (this: Of, typed, { tag, attribute }) {
      const link = linkOf(typed, this.url, tag === "a" && attribute === "href");
      if (link === "elsewhere") faults.push({ kind: "elsewhere", file: fileOf(this), typed });
      if (typeof link === "string") return writtenOf(typed);
      links.push({ file: fileOf(this), typed, path: link.path });
      return writtenOf(link.href);
    },
    whole,
  );
}

/** One template for each layout: every further template costs more than a further page of one. */
function addStory(config: UserConfig, story: readonly StoryTask[], entries: OwnTask["view"]["entries"]): void {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  for (const layout of new Set(story.map((one) => one.layout))) {
    const storyPages = story.filter((one) => one.layout === layout);
    config.addTemplate<StoryTask>(`scarfline-${layout}.11ty.js`, ({ story: { content } }) => content, {
      layout,
      storyPages,
      pagination: { data: "storyPages", size: 1, alias: "story" },
      permalink: ({ story: { path } }) => path,
      eleventyExcludeFromCollections: true,
      eleventyComputed: {
        title: ({ story: one }) => one?.title,
        entry: ({ story: one }) => byId.get(one?.entry ?? ""),
      },
    });
  }
}

const plainPath = (path: string): string => path.replace(/^\.\//, "");
const text = (key: "title" | "description", value: unknown): { readonly [key in typeof key]?: string } =>
  typeof value === "string" || typeof value === "number" ? { [key]: String(value) } : {};

/** Files that open from a disk: `pages/shop/tools.md` becomes `shop/tools.html`. */
const usualPath = ({ page: { filePathStem } }: { readonly page: Pick<PageContext, "filePathStem"> }): string =>
  `${filePathStem.replace(/^\//, "")}.html`;
