import { posix } from "node:path";
import type { Problem } from "../../problem.ts";
import { conversion } from "../../record/heads.ts";
import type { Wanted } from "../pictures/wanted.ts";
import type { Refused } from "./refused.ts";

const PLAYED = "H.264 with AAC or MP3 in an MP4, VP8 or VP9 with Opus or Vorbis in a WebM";

/** A clip that cannot be shown, told where the record names it. */
export function unplayable({ file, place }: Wanted, { kind, message: found }: Refused): Problem {
  if (kind === "codec") {
    const bare = posix.basename(file).replace(/\.\w+$/, "");
    return {
      ...place,
      code: "clip-coding",
      found,
      message: `Not every browser plays the clip \`${file}\`, as it is coded`,
      expected: PLAYED,
      mend: `make an MP4 of it and name that, for example by: ${conversion(posix.basename(file), `${bare}-2.mp4`)}`,
    };
  }
  if (kind === "no picture")
    return {
      ...place,
      code: "clip-no-picture",
      found,
      message: `The clip \`${file}\` has no picture in it`,
      mend: "put the clip itself in its place, or name the sound under `attachments`",
    };
  return {
    ...place,
    code: "clip-unreadable",
    found,
    message: `The clip \`${file}\` cannot be read: it is damaged or cut short`,
    mend: "copy it again from the camera, and look whether it plays to its end",
  };
}
