import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command, type Ran } from "../cli/command.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { type Authority, authorityIn } from "./authority.ts";
import { recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const DAY = "2021-04-02 09:00:00";
const QUERY = "seals/2021-04-01.tsq";
const REPLY = "seals/2021-04-01.tsr";
const CERTIFICATES = "seals/2021-04-01.pem";

const sealOn = (content: string, date: string, ...more: string[]): Promise<Ran> =>
  command(["seal", "--content", content, "--date", date, ...more]);
const keep = (content: string, reply: string, ...more: string[]): Promise<Ran> =>
  command(["seal", "--content", content, "--reply", reply, ...more]);
const verify = (content: string, ...more: string[]): Promise<Ran> => command(["verify", content, ...more]);

/** A record with a seal of 1 April whose query is written, and an authority. */
async function asked(): Promise<{ folder: string; content: string; authority: Authority }> {
  const folder = scratch();
  const content = await recordIn(folder);
  await sealOn(content, "2021-04-01", "--stamp");
  return { folder, content, authority: authorityIn(folder, "example") };
}

async function stamped(): Promise<{ folder: string; content: string; authority: Authority }> {
  const all = await asked();
  const reply = all.authority.reply(join(all.content, QUERY), DAY);
  expect(await keep(all.content, reply, "--authority", all.authority.root)).toMatchObject({ code: 0, err: "" });
  return all;
}

describe("scarfline seal --stamp", () => {
  it("writes a query of the digest that head and sha256sum print, which openssl reads, and sends nothing", async () => {
    const { content } = await asked();
    const digest = tool("sh", ["-c", "head -n 1 seals.txt | sha256sum"], content).out.slice(0, 64);
    const text = tool("openssl", ["ts", "-query", "-in", QUERY, "-text"], content).out;
    expect(text).toContain("Hash Algorithm: sha256\n");
    expect(text.replaceAll(/[^0-9a-f]/g, "")).toContain(digest.slice(0, 16));
    expect(text).toMatch(/Nonce: 0x[0-9A-F]+/);
    expect(text).toContain("Certificate required: yes");
    expect((await verify(content)).out).toContain(
      `${QUERY}: asks for a time stamp of the seal of 2021-04-01, and no reply is here. Keep it: scarfline seal --reply FILE\n`,
    );
  });

  it("leaves a query that stands, since another would not fit the reply to it", async () => {
    const { content } = await asked();
    const before = contentOf(content);
    expect((await sealOn(content, "2021-05-01", "--stamp")).out).toContain("was there already");
    expect(contentOf(content)).toEqual(before);
  });

  it("says which tool is missing and why, before it seals", async () => {
    const content = await recordIn(scratch());
    const path = process.env["PATH"];
    try {
      process.env["PATH"] = "/nowhere";
      expect(await sealOn(content, "2021-04-01", "--stamp")).toMatchObject({
        code: 2,
        err: "Time stamps need OpenSSL's openssl ts (Debian: the package openssl), which is not here.\n",
      });
    } finally {
      process.env["PATH"] = path;
    }
    expect(readdirSync(content)).not.toContain("seals.txt");
  });
});

describe("scarfline seal --reply", () => {
  it("keeps a reply that holds with the authority's certificates, and verify holds it at its own time", async () => {
    const { content, authority } = await asked();
    const reply = authority.reply(join(content, QUERY), DAY);
    const { code, err, out } = await keep(content, reply, "--authority", authority.root);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("CN = example stamps stamped the seal of 2021-04-01 at 2021-04-02 09:00:00 UTC. Kept:\n");
    expect(readFileSync(join(content, REPLY)).equals(readFileSync(reply))).toBe(true);
    expect(readFileSync(join(content, CERTIFICATES), "utf8")).toBe(readFileSync(authority.root, "utf8"));
    const says =
      "the seal of 2021-04-01, and every seal before it, was set by 2021-04-02 09:00:00 UTC, as CN = example stamps stamped";
    expect(await verify(content, "--authority", authority.root)).toMatchObject({
      code: 0,
      out: expect.stringContaining(`${REPLY}: ${says}\n`),
    });
    expect((await verify(content)).out).toContain(
      `${REPLY}: ${says}; whose certificate that is was not checked, which needs --authority\n`,
    );
    // Ten years on the certificate has run out, and the stamp holds as it did.
    const later = { now: () => new Date("2031-06-01T12:00:00") };
    expect(await command(["verify", content, "--authority", authority.root], later)).toMatchObject({
      code: 0,
      err: "",
    });
  });

  it("keeps what anyone can check with openssl ts, as the README says", async () => {
    const { content, authority } = await stamped();
    const line = `head -n 1 seals.txt > /tmp/scarfline-upto-$$ && openssl ts -verify -data /tmp/scarfline-upto-$$ -in ${REPLY} -CAfile ${authority.root} -attime ${Date.parse("2021-04-02T09:00:00Z") / 1000}; rm /tmp/scarfline-upto-$$`;
    expect(tool("sh", ["-c", line], content).out).toContain("Verification: OK");
  });

  it("keeps one without the authority's certificates, and says that whose they are was not checked", async () => {
    const { content, authority } = await asked();
    const { code, out } = await keep(content, authority.reply(join(content, QUERY), DAY));
    expect({ code, out }).toEqual({
      code: 0,
      out: expect.stringContaining("Whose certificate that is was not checked"),
    });
    expect((await verify(content)).code).toBe(0);
    expect((await verify(content, "--authority", authority.root)).code).toBe(0);
    expect((await verify(content, "--authority", authorityIn(scratch(), "other").root)).code).toBe(1);
  });

  it("goes into the bag, out of which the stamp holds too", async () => {
    const { folder, content, authority } = await stamped();
    expect((await command(["bag", "--content", content, "--out", join(folder, "archive")])).code).toBe(0);
    const bag = join(folder, "archive/stub-2021-03-09");
    const record = join(bag, "data/record");
    const before = contentOf(bag);
    const told = readFileSync(join(bag, "README.txt"), "utf8").match(/^ {2}(?=\S).*openssl ts .*$/gm) ?? [];
    expect(told.map((line) => tool("sh", ["-c", line], record).out)).toEqual([
      expect.stringContaining("Time stamp: Apr  2 09:00:00 2021 GMT"),
      expect.stringContaining("Verification: OK"),
    ]);
    expect(contentOf(bag)).toEqual(before);
    expect(readdirSync(join(record, "seals")).sort()).toEqual([
      "2021-04-01.pem",
      "2021-04-01.sha256",
      "2021-04-01.tsq",
      "2021-04-01.tsr",
    ]);
    expect(await verify(record, "--authority", authority.root)).toMatchObject({ code: 0, err: "" });
  });

  it.each<
    [string, (all: { content: string; folder: string; authority: Authority }) => Promise<string> | string, RegExp]
  >([
    [
      "of another authority",
      ({ content, folder }) => authorityIn(folder, "other").reply(join(content, QUERY), DAY),
      /certificate verify error/,
    ],
    [
      "signed by a certificate that is not for time stamps",
      ({ content, authority }) => {
        try {
          return authority.reply(join(content, QUERY), DAY, "other");
        } catch {
          return join(content, QUERY);
        }
      },
      /no reply|certificate/,
    ],
    [
      "after the certificate ran out",
      ({ content, authority }) => authority.reply(join(content, QUERY), "2023-04-02 09:00:00"),
      /certificate has expired/,
    ],
    [
      "to another query of the same digest",
      async ({ content, folder, authority }) => {
        const digest = tool("sh", ["-c", "head -n 1 seals.txt | sha256sum"], content).out.slice(0, 64);
        const query = join(folder, "other.tsq");
        tool("openssl", ["ts", "-query", "-digest", digest, "-sha256", "-cert", "-out", query], folder);
        return authority.reply(query, DAY);
      },
      /nonce mismatch/,
    ],
    [
      "of another record's seal",
      async ({ authority }) => {
        const other = await recordIn(scratch());
        writeFileSync(join(other, "papers/new.txt"), "new");
        await sealOn(other, "2021-04-01", "--stamp");
        return authority.reply(join(other, QUERY), DAY);
      },
      /which is the digest of no seal in seals\.txt/,
    ],
    [
      "from before the seal's day",
      ({ content, authority }) => authority.reply(join(content, QUERY), "2021-03-20 09:00:00"),
      /before the day that the seal says it was set on, 2021-04-01: one of the two is wrong/,
    ],
    [
      "from a day to come",
      ({ content, authority }) => authority.reply(join(content, QUERY), "2021-12-20 09:00:00"),
      /still to come by the clock of this machine/,
    ],
    [
      "cut short",
      ({ content, folder, authority }) => {
        const cut = join(folder, "cut.tsr");
        writeFileSync(cut, readFileSync(authority.reply(join(content, QUERY), DAY)).subarray(0, -40));
        return cut;
      },
      /no reply by RFC 3161/,
    ],
    [
      "that is a text",
      ({ folder }) => {
        writeFileSync(join(folder, "no.tsr"), "no");
        return join(folder, "no.tsr");
      },
      /no reply by RFC 3161/,
    ],
  ])("keeps none %s", async (_what, make, says) => {
    const all = await asked();
    const before = contentOf(all.content);
    const { code, err } = await keep(all.content, await make(all), "--authority", all.authority.root);
    expect(code).toBe(2);
    expect(err).toMatch(says);
    expect(contentOf(all.content)).toEqual(before);
  });
});

describe("scarfline verify of a stamped record", () => {
  it("finds out a token of another seal, one whose query was swapped with it, and a byte changed in it", async () => {
    const { folder, content, authority } = await stamped();
    const other = join(folder, "other");
    cpSync(content, other, { recursive: true });
    writeFileSync(join(other, "papers/new.txt"), "new");
    await sealOn(other, "2021-05-01", "--stamp");
    await keep(
      other,
      authority.reply(join(other, "seals/2021-05-01.tsq"), "2021-05-02 09:00:00"),
      "--authority",
      authority.root,
    );
    expect(await verify(other)).toMatchObject({ code: 0 });
    for (const kind of ["tsr", "tsq"]) {
      cpSync(join(other, `seals/2021-04-01.${kind}`), join(other, `seals/2021-05-01.${kind}`));
      expect((await verify(other)).err).toContain(
        "seals/2021-05-01.tsr: the time stamp of the seal of 2021-05-01 does not hold: it stamps another digest than this seal's\n",
      );
    }
    const bytes = readFileSync(join(content, REPLY));
    // What is stamped, when, and the signature; the authority's own certificate in it is not looked at, since it is given.
    for (const at of [60, 120, bytes.length - 5]) {
      const changed = Buffer.from(bytes);
      changed[at] = (changed[at] ?? 0) ^ 1;
      writeFileSync(join(content, REPLY), changed);
      expect(await verify(content, "--authority", authority.root), `byte ${at}`).toMatchObject({ code: 1 });
    }
  });

  it("finds out a list that was set anew under the stamp, and a stamp of a made-up authority", async () => {
    const { folder, content, authority } = await stamped();
    const stamp = readFileSync(join(content, REPLY));
    const query = readFileSync(join(content, QUERY));
    rmSync(join(content, "seals"), { recursive: true });
    rmSync(join(content, "seals.txt"));
    writeFileSync(join(content, "papers/new.txt"), "less");
    await sealOn(content, "2021-04-01");
    writeFileSync(join(content, REPLY), stamp);
    writeFileSync(join(content, QUERY), query);
    expect(await verify(content)).toMatchObject({
      code: 1,
      err: expect.stringContaining("it stamps another digest than this seal's"),
    });
    rmSync(join(content, REPLY));
    rmSync(join(content, QUERY));
    await sealOn(content, "2021-04-01", "--stamp");
    const made = authorityIn(folder, "made-up");
    await keep(content, made.reply(join(content, QUERY), DAY), "--authority", made.root);
    expect(await verify(content)).toMatchObject({
      code: 0,
      out: expect.stringContaining("whose certificate that is was not checked"),
    });
    expect(await verify(content, "--authority", authority.root)).toMatchObject({
      code: 1,
      err: expect.stringContaining("does not hold"),
    });
  });

  it("shows that a stamp was taken away once the next seal holds it, and to whoever names the authority at once", async () => {
    const { content, authority } = await stamped();
    expect((await verify(content)).out).toContain(`${REPLY}: added since the seal of 2021-04-01; not sealed yet\n`);
    await sealOn(content, "2021-05-01");
    expect(await verify(content)).toMatchObject({
      code: 0,
      out: expect.stringContaining("seals.txt: the last stamp is of line 1; the lines after it are not stamped\n"),
    });
    for (const path of [REPLY, QUERY, CERTIFICATES]) rmSync(join(content, path));
    expect(await verify(content)).toMatchObject({
      code: 1,
      err: expect.stringContaining(`${REPLY}: missing since the seal of 2021-05-01\n`),
    });
    expect((await verify(content, "--authority", authority.root)).err).toContain(
      `seals.txt: no seal is stamped by an authority in ${authority.root}\n`,
    );
  });

  it("finds out certificates without their stamp", async () => {
    const { content } = await stamped();
    rmSync(join(content, REPLY));
    rmSync(join(content, QUERY));
    expect((await verify(content)).err).toBe(
      `${CERTIFICATES}: certificates for a time stamp of the seal of 2021-04-01, and the stamp is gone\n`,
    );
  });
});
