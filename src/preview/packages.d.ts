/** The parts of Eleventy's dev server and watcher that are used here; the packages bring no types. */
declare module "@11ty/eleventy-dev-server" {
  import type { IncomingMessage, Server, ServerResponse } from "node:http";

  export interface DevServerOptions {
    readonly domDiff: boolean;
    readonly messageOnStart: () => false;
    readonly logger: { readonly [level in "info" | "log" | "error"]: (text: string) => void };
    readonly middleware: readonly ((request: IncomingMessage, response: ServerResponse, next: () => void) => void)[];
  }

  export default class DevServer {
    constructor(name: string, folder: string, options: DevServerOptions);
    readonly server: Server;
    serve(port: number): void;
    ready(): Promise<void>;
    reload(event: object): void;
    close(): Promise<void>;
    _serverListen(port: number): void;
    setupReloadNotifier(): void;
  }
}

declare module "@11ty/chokidar-with-glob-support" {
  export interface Watcher {
    on: (event: "all" | "ready", listener: () => void) => Watcher;
    close: () => Promise<void>;
  }
  const chokidar: {
    readonly watch: (
      folder: string,
      options: {
        readonly ignoreInitial: boolean;
        readonly disableGlobbing: boolean;
        readonly ignored: (path: string) => boolean;
      },
    ) => Watcher;
  };
  export default chokidar;
}
