/** The part of Eleventy's programmatic interface that is used here; the package brings no types. */
declare module "@11ty/eleventy" {
  /** What Eleventy knows of a page while it is made. */
  export interface PageContext {
    readonly url: string;
    /** From the folder it runs in. */
    readonly inputPath: string;
    readonly filePathStem: string;
  }

  export interface HtmlNode {
    readonly tag?: string | boolean;
    readonly attrs?: { readonly [name: string]: unknown };
  }

  export interface HtmlTree {
    walk: (visit: (node: HtmlNode | string) => HtmlNode | string) => unknown;
  }

  interface StoryData<Item> {
    readonly story: Item;
  }

  export interface Late {
    readonly htmlTransformer: {
      addPosthtmlPlugin: (
        endings: string,
        plugin: (page: Pick<PageContext, "url" | "inputPath">) => (tree: HtmlTree) => void,
      ) => void;
      addUrlTransform: (
        endings: string,
        transform: (
          this: Pick<PageContext, "url" | "inputPath">,
          url: string,
          at: { readonly tag: string; readonly attribute: string },
        ) => string,
        options: { readonly priority: number },
      ) => void;
    };
  }

  type Plugin = (late: Late) => void;

  export interface UserConfig {
    readonly benchmarkManager: { finish: () => void };
    readonly dataFilterSelectors: { add: (key: string) => void };
    setUseGitIgnore: (use: boolean) => void;
    setLayoutsDirectory: (folder: string) => void;
    addGlobalData: (key: string, make: () => unknown) => void;
    addPreprocessor: (
      name: string,
      endings: "*",
      process: (
        data: { readonly for?: unknown; readonly layout?: unknown; readonly page: Pick<PageContext, "inputPath"> },
        content: unknown,
      ) => false | undefined,
    ) => void;
    addPlugin: (plugin: Plugin) => void;
    addTemplate: <Item>(
      url: string,
      render: (data: StoryData<Item>) => string,
      data: {
        readonly layout: string;
        readonly storyPages: readonly Item[];
        readonly pagination: { readonly data: "storyPages"; readonly size: 1; readonly alias: "story" };
        readonly permalink: (data: StoryData<Item>) => string;
        readonly eleventyExcludeFromCollections: true;
        readonly eleventyComputed: { readonly [key: string]: (data: Partial<StoryData<Item>>) => unknown };
      },
    ) => void;
  }

  export interface MadePage {
    readonly url: string | false;
    readonly inputPath: string;
    readonly outputPath: string | false;
    readonly content: unknown;
    /** At the keys that `dataFilterSelectors` has, as they are once all is made. */
    readonly data?: {
      readonly title?: unknown;
      readonly description?: unknown;
      readonly nav?: unknown;
      readonly for?: unknown;
      readonly layout?: unknown;
    };
  }

  export const InputPathToUrlTransformPlugin: Plugin;

  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        readonly configPath: false;
        readonly quietMode: boolean;
        readonly config: (config: UserConfig) => void;
      },
    );
    disableLogger: () => void;
    toJSON: () => Promise<readonly MadePage[]>;
  }
}
