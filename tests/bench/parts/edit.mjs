/** One edit in a preview, from the saving of an entry to its page as it is served after the message to load anew; against a full build of Hugo's. */
import { spawn } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { get } from "node:http";
import { createRequire } from "node:module";
import { join } from "node:path";
import { contestants, HUGO, prepare } from "../contestants.mjs";
import { inFolder, median, medians, root } from "../measure.mjs";
import { TIMES, times, told } from "../table.mjs";

/** The dev server's own. */
const { WebSocket } = createRequire(createRequire(import.meta.url).resolve("@11ty/eleventy-dev-server"))("ws");

export function edit({ entries, rounds, dir }) {
  return inFolder(dir, async (work) => {
    const ids = prepare(work, entries);
    const hugo = contestants(work).find(({ name }) => name === HUGO);
    const builds = [];
    const turn = (round) => {
      if (hugo !== undefined && round > 0) builds.push(hugo.run(round));
    };
    const edits = await measureEdits(join(work, "content"), ids[Math.floor(ids.length / 2)], rounds, work, turn);
    const [ours, theirs] = [medians(edits), hugo && medians(builds)];
    return {
      title: `One entry edited in a preview of ${entries}, medians of ${rounds} by turns`,
      heads: ["", ...TIMES],
      rows: [
        ["from saved to page served again", ...times(ours, theirs ?? ours)],
        ...(theirs === undefined ? [] : [["full build of Hugo's", ...times(theirs, theirs)]]),
      ],
      notes: theirs === undefined ? [] : [eachTurn(edits, builds)],
    };
  });
}

function eachTurn(edits, builds) {
  const ratios = edits.map(({ cpu }, at) => cpu / builds[at].cpu).sort((a, b) => a - b);
  return `Of each turn by itself: ${told(median(ratios), 2)} × Hugo's processor time, from ${told(ratios[0], 2)} to ${told(ratios.at(-1), 2)}.`;
}

/** Seconds on the clock and of processor time of each edit after the first, which is left out because the program is still warming up; before each another takes its turn. */
async function measureEdits(content, entry, rounds, cwd, turn) {
  const preview = spawn(
    process.execPath,
    [join(root, ".build/cli.js"), "preview", "--content", content, "--port", "8790"],
    { cwd, stdio: ["ignore", "pipe", "inherit"] },
  );
  try {
    const url = await served(preview);
    const file = join(content, `entries/${entry}.md`);
    const page = `${url}entry/${entry}.html`;
    const socket = new WebSocket(url.replace("http", "ws").replace("localhost", "127.0.0.1"));
    await new Promise((open) => socket.once("open", open));
    const edits = [];
    for (let round = 0; round <= rounds; round += 1) {
      turn(round);
      const reload = new Promise((told) =>
        socket.on("message", (data) => (JSON.parse(data).type === "eleventy.reload" ? told() : undefined)),
      );
      const began = performance.now();
      const spent = cpuOf(preview.pid);
      writeFileSync(file, `${readFileSync(file, "utf8")}\nEdit ${round}.\n`);
      await reload;
      if (!(await bodyOf(page)).includes(`Edit ${round}.`)) throw new Error("The page that was served lacks the edit.");
      if (round > 0) edits.push({ seconds: (performance.now() - began) / 1000, cpu: cpuOf(preview.pid) - spent });
      socket.removeAllListeners("message");
    }
    socket.close();
    return edits;
  } finally {
    preview.kill("SIGTERM");
    await new Promise((ended) => preview.once("exit", ended));
  }
}

/** Seconds of processor time that a process has taken so far; Linux counts them in hundredths. */
function cpuOf(pid) {
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8")
    .replace(/^.*\) /, "")
    .split(" ");
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

/** The preview's address, once it has read the record for the first time. */
function served(preview) {
  return new Promise((ready, failed) => {
    let said = "";
    preview.once("exit", () => failed(new Error(`The preview ended: ${said}`)));
    preview.stdout.on("data", (data) => {
      said += data;
      if (said.includes("Read and reckoned")) ready(/http:\/\/\S+/.exec(said)[0]);
    });
  });
}

function bodyOf(url) {
  return new Promise((done, failed) => {
    get(url.replace("localhost", "127.0.0.1"), (response) =>
      response
        .setEncoding("utf8")
        .toArray()
        .then((parts) => done(parts.join("")), failed),
    ).on("error", failed);
  });
}
