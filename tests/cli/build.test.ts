import { execFileSync } from "node:child_process";
import { mkdirSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";
import { command } from "./command.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

async function places(): Promise<{ content: string; out: string }> {
  const folder = scratch();
  writeAll(join(folder, "content"), await smallRecord());
  return { content: join(folder, "content"), out: join(folder, "site") };
}

describe("scarfline build", () => {
  it("writes the public edition, tells what it read and wrote, and changes nothing in the record", async () => {
    const { content, out } = await places();
    const before = contentOf(content);
    const { code, out: told, err } = await command(["build", "--content", content, "--out", out]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(
      told
        .replaceAll(/\d+ pages/g, "… pages")
        .replace(/\d+\.\d s/, "… s")
        .split("\n"),
    ).toEqual([
      "Read the record of Stub up to 2021-03-09: 3 entries, 1 assembly, 0 batches.",
      expect.stringMatching(/^Pictures, documents and clips: 4, of which [02] made ready now\.$/),
      "Reckoned: 0 batches (0 shown, 0 pending, 0 not shown, 0 rejected) and 1 joint.",
      `Wrote the public edition to ${out}: … pages, 2 pictures and documents.`,
      "Done in … s.",
      "",
    ]);
    const site = contentOf(out);
    expect([...site.keys()]).toEqual(
      expect.arrayContaining([
        "index.html",
        "assets/style.css",
        "assets/chart.umd.js",
        "entry/2021-03-01-first.html",
        "joint/F-J1.html",
      ]),
    );
    expect(contentOf(content)).toEqual(before);
  });

  it("writes nothing into the public edition that is marked for others", async () => {
    const { content, out } = await places();
    await command(["build", "--content", content, "--out", out]);
    // The program's own sheets, in the page as in their files, have words of CSS such as letter-spacing.
    const site = new Map(
      [...contentOf(out)].map(([path, bytes]) => [path, bytes.replace(/<style>.*?<\/style>/gs, "")]),
    );
    for (const secret of ["marmalade", "quince", "vault", "Fullname", "letter"]) {
      const leaks = [...site]
        .filter(([path, bytes]) => !path.startsWith("assets/") && `${path}\n${bytes}`.includes(secret))
        .map(([path]) => path);
      expect(leaks, secret).toEqual([]);
    }
    expect([...site.keys()].filter((path) => /^(photos|drawings|files)\//.test(path))).toHaveLength(1 + 2 * 2);
  });

  it("writes the same bytes from the same record", async () => {
    const { content, out } = await places();
    await command(["build", "--content", content, "--out", out]);
    const first = contentOf(out);
    await command(["build", "--content", content, "--out", out], { now: () => new Date("2022-01-01T00:00:00") });
    expect(contentOf(out)).toEqual(first);
  });

  it("writes all editions side by side, each in a folder of its own", async () => {
    const { content, out } = await places();
    expect((await command(["build", "--content", content, "--out", out, "--edition", "all"])).code).toBe(0);
    const tops = new Set([...contentOf(out).keys()].map((path) => path.split("/")[0]));
    expect([...tops].sort()).toEqual([".scarfline", "archive", "inspector", "public"]);
    expect(contentOf(join(out, "inspector")).get("entry/2021-03-01-first.html")).toContain("marmalade");
  });

  it("refuses a record with problems, tells all of them, and leaves the earlier site byte for byte", async () => {
    const { content, out } = await places();
    await command(["build", "--content", content, "--out", out]);
    const before = contentOf(out);
    writeAll(content, { "entries/2021-03-10-wrong.md": "---\ndate: 2021-03-10\ntitel: Wrong\nassembly: find\n---\n" });
    const { code, err } = await command(["build", "--content", content, "--out", out]);
    expect(code).toBe(1);
    expect(err).toMatch(/entries\/2021-03-10-wrong\.md:3:1/);
    expect(err).toMatch(/entries\/2021-03-10-wrong\.md:4:\d+/);
    expect(err).toContain(`problems in the record.\nNothing was written to ${out}.`);
    expect(contentOf(out)).toEqual(before);
  });

  it("refuses a record with a picture cut short, by the same words as check", async () => {
    const { content, out } = await places();
    const jig = (await smallRecord())["photos/jig.jpg"] ?? "";
    writeAll(content, { "photos/jig.jpg": Buffer.from(jig).subarray(0, 700) });
    const built = await command(["build", "--content", content, "--out", out]);
    const checked = await command(["check", "--content", content]);
    expect([built.code, checked.code]).toEqual([1, 1]);
    expect(built.err).toContain("The picture `photos/jig.jpg` cannot be read");
    expect(built.err.replace(/\nNothing was written.*\n$/, "\n")).toBe(checked.err);
  });

  it("takes the date of the record from the builder where one is given, and refuses a wrong one", async () => {
    const { content, out } = await places();
    expect((await command(["build", "--content", content, "--out", out, "--date", "2021-05-05"])).out).toContain(
      "up to 2021-05-05",
    );
    expect(await command(["build", "--date", "2021-02-30"])).toMatchObject({
      code: 2,
      err: expect.stringContaining("2025-06-30"),
    });
  });

  it("tells wrong use from problems", async () => {
    const { content, out } = await places();
    expect(await command(["build", "--content", join(content, "nowhere")])).toMatchObject({
      code: 2,
      err: expect.stringContaining("--content DIR"),
    });
    mkdirSync(out);
    writeFileSync(join(out, "mine.txt"), "");
    expect(await command(["build", "--content", content, "--out", out])).toMatchObject({
      code: 2,
      err: expect.stringContaining("mine.txt"),
    });
    expect(await command(["build", "--edition", "secret"])).toMatchObject({
      code: 2,
      err: expect.stringContaining("public, inspector, archive, all"),
    });
    expect(await command(["bilud"])).toMatchObject({ code: 2, err: expect.stringContaining("Did you mean build?") });
  });

  it("tells a folder that cannot be made from a mistake of the program", async () => {
    const { content } = await places();
    expect(await command(["build", "--content", content, "--out", "/dev/null/site"])).toMatchObject({
      code: 2,
      err: expect.stringContaining("/dev/null is a file, and a folder is needed."),
    });
    const now = (): Date => {
      throw new TypeError("no such thing");
    };
    expect(await command(["build", "--content", content], { now })).toMatchObject({
      code: 70,
      err: expect.stringContaining("TypeError: no such thing"),
    });
  });
});

it("A build of what has not changed leaves the site as it stands and says so, and builds it anew with --fresh", async () => {
  const { content, out } = await places();
  const folder = join(content, "..");
  const run = (...words: string[]): string =>
    execFileSync(process.execPath, [COMMAND, "build", "--content", content, "--out", out, ...words], {
      cwd: folder,
      encoding: "utf8",
    });
  const first = run();
  const built = statSync(out).ino;
  const stands = `Nothing that it is made from has changed, so ${out} stands as it was built. To build it anew: --fresh`;
  const reckoned = first.split("\n").filter((line) => line.startsWith("Reckoned"));
  expect(run().split("\n")).toEqual([...reckoned, stands, ""]);
  expect(statSync(out).ino).toBe(built);
  expect(run("--fresh")).not.toContain(stands);
  expect(run("--edition", "inspector")).not.toContain(stands);
  writeFileSync(join(content, "entries/2021-03-12-new.md"), "---\ndate: 2021-03-12\ntitle: New\nassembly: fin\n---\n");
  run();
  expect(contentOf(out).get("entries.html")).toContain("2021-03-12-new");
});
