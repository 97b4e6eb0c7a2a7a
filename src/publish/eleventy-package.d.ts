/** The part of Eleventy's programmatic interface that is used here; the package brings no types. */
declare module "@11ty/eleventy" {
  export interface TemplateData<Item> {
    readonly file: Item;
  }

  export interface UserConfig {
    setUseGitIgnore: (use: boolean) => void;
    addTemplate: <Item>(
      url: string,
      render: (data: TemplateData<Item>) => string | Buffer,
      data: {
        readonly files: readonly Item[];
        readonly pagination: { readonly data: "files"; readonly size: 1; readonly alias: "file" };
        readonly permalink: (data: TemplateData<Item>) => string;
      },
    ) => void;
  }

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
    write: () => Promise<unknown>;
  }
}
