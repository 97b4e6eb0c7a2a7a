import type { Dirent } from "node:fs";
import { lstat, readdir, realpath } from "node:fs/promises";
import { join } from "node:path";
import { bytesOf } from "../digest.ts";
import type { Tellings } from "../finding.ts";
import { Members } from "./members.ts";
import type { BagSource, Member } from "./source.ts";

/** A bag that is a folder. No link in it is followed. */
export async function folderSource(path: string): Promise<BagSource> {
  const root = await realpath(path);
  let listed: readonly Member[] = [];
  return {
    name: path,
    list: async (findings) => (listed = await filesWithin(root, findings)),
    visit: async (wanted, use) => {
      for (const member of listed) if (wanted(member.path)) await use(member.path, bytesOf(join(root, member.path)));
    },
    close: () => Promise.resolve(),
  };
}

async function filesWithin(root: string, findings: Tellings): Promise<Member[]> {
  const members = new Members(findings);
  const ahead = [""];
  for (let folder = ahead.pop(); folder !== undefined; folder = ahead.pop()) {
    // As bytes, since a name need not be text.
    const items = await readdir(join(root, folder), { withFileTypes: true, encoding: "buffer" });
    for (const item of items.sort((a, b) => Buffer.compare(a.name, b.name))) {
      const name = nameOf(item);
      const path = folder === "" ? name : `${folder}/${name}`;
      if (item.isDirectory() && !name.includes("\ufffd")) {
        members.addFolder(path);
        ahead.push(path);
      } else if (item.isFile()) members.add(path, name.includes("\ufffd") ? 0 : (await lstat(join(root, path))).size);
      else
        members.refuse(
          path,
          item.isSymbolicLink() ? "a symbolic link" : "a device, a pipe or a folder whose name is not UTF-8",
        );
    }
  }
  return members.end();
}

function nameOf({ name }: Dirent<Buffer>): string {
  return new TextDecoder("utf-8", { ignoreBOM: true }).decode(name);
}
