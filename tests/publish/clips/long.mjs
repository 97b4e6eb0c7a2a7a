/** Writes a clip of 300 MB: the frames of a short one again and again, each made longer by filler that decoders pass over. */
import {
  EncodedPacketSink,
  EncodedVideoPacketSource,
  FilePathSource,
  FilePathTarget,
  Input,
  MP4,
  Mp4OutputFormat,
  Output,
} from "mediabunny";

const input = new Input({ source: new FilePathSource(new URL("front.mp4", import.meta.url).pathname), formats: [MP4] });
const track = await input.getPrimaryVideoTrack();
const decoderConfig = await track.getDecoderConfig();
const output = new Output({
  format: new Mp4OutputFormat({ fastStart: false }),
  target: new FilePathTarget(process.argv[2]),
});
const source = new EncodedVideoPacketSource("avc");
output.addVideoTrack(source);
await output.start();
const first = await new EncodedPacketSink(track).getFirstPacket();
const slice = Buffer.alloc(80_000, 7);
slice.writeUInt32BE(slice.length - 4, 0);
slice[4] = 0x41;
const data = Buffer.concat([first.data, slice]);
for (let at = 0; at < 3_800; at += 1)
  await source.add(first.clone({ data, timestamp: at / 25, duration: 1 / 25, type: "key" }), { decoderConfig });
await output.finalize();
