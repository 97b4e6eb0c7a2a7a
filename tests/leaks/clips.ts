/** Short clips with a word in every place in which a camera or a program notes something. */
import {
  BufferTarget,
  EncodedPacketSink,
  EncodedVideoPacketSource,
  FilePathSource,
  Input,
  MP4,
  Mp4OutputFormat,
  Output,
  WEBM,
  WebMOutputFormat,
} from "mediabunny";

export type Film = "mp4" | "webm";

const MADE = new URL("../publish/clips/", import.meta.url).pathname;
const FRAMES = 6;

/** `say` gives the word for a place. The picture is the same in all of them. */
export async function clipOf(film: Film, say: (where: string) => string): Promise<Buffer> {
  const isMp4 = film === "mp4";
  const input = new Input({
    source: new FilePathSource(`${MADE}${isMp4 ? "front.mp4" : "later.webm"}`),
    formats: [MP4, WEBM],
  });
  const track = await input.getPrimaryVideoTrack();
  const codec = await track?.getCodec();
  const decoderConfig = await track?.getDecoderConfig();
  if (track === null || codec === null || codec === undefined || decoderConfig === null || decoderConfig === undefined)
    throw new Error("the clip of the tests has no picture");
  const target = new BufferTarget();
  const output = new Output({
    format: isMp4 ? new Mp4OutputFormat({ fastStart: false, metadataFormat: "mdta" }) : new WebMOutputFormat(),
    target,
  });
  const source = new EncodedVideoPacketSource(codec);
  // Two records that say the same are the same, whenever they were made.
  if (isMp4)
    (output as unknown as { _muxer: { creationTime: number } })._muxer.creationTime =
      Date.UTC(2025, 2, 8) / 1000 + 2_082_844_800;
  output.addVideoTrack(source, { name: say("name of the track") });
  output.setMetadataTags({
    title: say("title"),
    artist: say("artist"),
    comment: say("comment"),
    description: say("description"),
    raw: { [isMp4 ? "com.apple.quicktime.location.ISO6709" : "LOCATION"]: say("location") },
  });
  await output.start();
  let left = FRAMES;
  for await (const packet of new EncodedPacketSink(track).packets()) {
    if ((left -= 1) < 0) break;
    await source.add(
      packet.clone({
        data: isMp4 ? Buffer.concat([supplement(say("supplement of a frame")), packet.data]) : packet.data,
      }),
      { decoderConfig },
    );
  }
  await output.finalize();
  input.dispose();
  const bytes = Buffer.from(target.buffer ?? new ArrayBuffer(0));
  return isMp4
    ? Buffer.concat([
        bytes,
        box("uuid", XMP_ID, `<x:xmpmeta>${say("XMP")}</x:xmpmeta>`),
        box("free", say("free space")),
        box("meta", say("box at the end")),
      ])
    : bytes;
}

/** The identifier of XMP in a container, as Adobe's specification of it gives it. */
const XMP_ID = Buffer.from("be7acfcb97a942e89c71999491e3afac", "hex");

function box(kind: string, ...parts: readonly (Buffer | string)[]): Buffer {
  const content = Buffer.concat(parts.map((part) => Buffer.from(part)));
  const head = Buffer.alloc(8);
  head.writeUInt32BE(8 + content.length);
  head.write(kind, 4, "latin1");
  return Buffer.concat([head, content]);
}

/** A unit of H.264 with user data that is not registered: ITU-T H.264, D.1.7. */
function supplement(word: string): Buffer {
  const content = Buffer.concat([Buffer.alloc(16, 0xab), Buffer.from(word)]);
  const unit = Buffer.concat([Buffer.from([6, 5, content.length]), content, Buffer.from([0x80])]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(unit.length);
  return Buffer.concat([length, unit]);
}
