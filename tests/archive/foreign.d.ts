/** As far as the tests use them: BagIt libraries of other authors. */
declare module "bagit-tools" {
  export function verify(
    folder: string,
    options: { readonly version: string; readonly test: true },
    done: (
      error: Error | null,
      isValid: boolean,
      results: readonly { readonly type?: string; readonly ok?: boolean; readonly name?: string }[],
    ) => void,
  ): void;
}

declare module "bagit-fs" {
  interface Bag {
    mkdir(name: string, done: (error: Error | null) => void): void;
    mkdir(name: string, options: { readonly recursive: boolean }, done: (error: Error | null) => void): void;
    createWriteStream(name: string): NodeJS.WritableStream;
    finalize(done: (error: Error | null) => void): void;
  }
  export default function bag(folder: string, algorithm: string, info: { readonly [label: string]: string }): Bag;
}

declare module "datapackage" {
  interface Resource {
    readonly name: string;
    /** Rows, each cell cast by its schema; it throws where one cannot be. */
    read(options: { readonly relations: boolean }): Promise<readonly unknown[]>;
  }
  export class Package {
    static load(descriptor: string, options: { readonly basePath: string }): Promise<Package>;
    readonly errors: readonly Error[];
    readonly resources: readonly Resource[];
  }
}
