/**
 * Copies of clips that hold the picture and the sound, and nothing that a camera notes beside them. Nothing is decoded:
 * the coded frames are put into a new container, so the copy looks and sounds as the clip does.
 */
import {
  EncodedAudioPacketSource,
  type EncodedPacket,
  EncodedPacketSink,
  EncodedVideoPacketSource,
  FilePathSource,
  FilePathTarget,
  Input,
  type InputAudioTrack,
  type InputVideoTrack,
  MP4,
  Mp4OutputFormat,
  Output,
  WEBM,
  WebMOutputFormat,
} from "mediabunny";
import { bareAvc, bareVorbis } from "./bare.ts";
import { Refused } from "./refused.ts";
import { type Container, expectWhole } from "./whole.ts";

export interface ClipFacts {
  /** Of the picture as it is shown, upright and with square pixels. */
  readonly width: number;
  readonly height: number;
  readonly seconds: number;
}

/** What browsers play in a file of each ending. */
const PLAYED = {
  mp4: { picture: ["avc"], sound: ["aac", "mp3"] },
  webm: { picture: ["vp8", "vp9"], sound: ["opus", "vorbis"] },
} as const satisfies {
  readonly [container in Container]: { readonly picture: readonly string[]; readonly sound: readonly string[] };
};

/** Bytes written at a time. */
const CHUNK = 2 ** 20;

type Track = InputVideoTrack | InputAudioTrack;

interface Source {
  readonly picture: InputVideoTrack;
  readonly sound?: InputAudioTrack;
}

/**
 * Writes a bare copy of the clip at `from` to `to`; the same clip gives the same bytes. A few megabytes are held at a
 * time, however long the clip is.
 * @throws Refused where the clip is damaged, cut short, or in a form that not every browser plays
 */
export async function copyBare(from: string, to: string, container: Container): Promise<ClipFacts> {
  await expectWhole(from, container);
  const input = new Input({ source: new FilePathSource(from), formats: [container === "mp4" ? MP4 : WEBM] });
  try {
    const source = await sourceOf(input, container);
    const facts = await factsOf(source);
    await write(source, to, container);
    return facts;
  } catch (error) {
    throw error instanceof Refused || isOfSystem(error) ? error : new Refused("damaged", firstLine(error));
  } finally {
    input.dispose();
  }
}

async function sourceOf(input: Input, container: Container): Promise<Source> {
  if ((await input.getTracks()).length === 0) throw new Refused("damaged", "no track of picture or sound");
  const picture = await input.getPrimaryVideoTrack();
  if (picture === null) throw new Refused("no picture", "no track with a picture");
  const sound = await input.getPrimaryAudioTrack();
  for (const [track, plays] of [
    [picture, PLAYED[container].picture],
    [sound, PLAYED[container].sound],
  ] as const) {
    const codec = await track?.getCodec();
    if (codec === undefined || (plays as readonly (string | null)[]).includes(codec)) continue;
    throw new Refused("codec", codec ?? String(await track?.getInternalCodecId()));
  }
  return sound === null ? { picture } : { picture, sound };
}

async function factsOf({ picture, sound }: Source): Promise<ClipFacts> {
  const seconds = Math.max(await picture.computeDuration(), (await sound?.computeDuration()) ?? 0);
  return { width: await picture.getDisplayWidth(), height: await picture.getDisplayHeight(), seconds };
}

/** A track of the copy, fed with packets of the clip's. */
interface Feed {
  readonly track: Track;
  readonly expected: number;
  readonly add: (packet: EncodedPacket) => Promise<void>;
}

async function write(source: Source, to: string, container: Container): Promise<void> {
  const format = container === "mp4" ? new Mp4OutputFormat({ fastStart: "reserve" }) : new WebMOutputFormat();
  const output = new Output({ format, target: new FilePathTarget(to, { chunked: true, chunkSize: CHUNK }) });
  if (container === "mp4") leaveTimesOpen(output);
  try {
    const feeds = [await pictureFeed(output, source.picture)];
    if (source.sound !== undefined) feeds.push(await soundFeed(output, source.sound));
    await output.start();
    await copyPackets(feeds);
    await output.finalize();
  } catch (error) {
    await output.cancel();
    throw error;
  }
}

/**
 * An MP4 states when it was made, and how many bytes it takes for that depends on it; 0 means that nobody knows. The
 * library has no option for it.
 */
function leaveTimesOpen(output: Output): void {
  const muxer = (output as unknown as { readonly _muxer?: { creationTime?: unknown } })._muxer;
  if (typeof muxer?.creationTime !== "number")
    throw new Error("mediabunny keeps the time of making elsewhere than it did");
  muxer.creationTime = 0;
}

async function pictureFeed(output: Output, track: InputVideoTrack): Promise<Feed> {
  const codec = await track.getCodec();
  const config = await track.getDecoderConfig();
  if (codec === null || config === null) throw new Refused("damaged", "the picture's coding is not described");
  const source = new EncodedVideoPacketSource(codec);
  const expected = await countOf(track);
  output.addVideoTrack(source, {
    rotation: await track.getRotation(),
    flip: await track.getFlip(),
    maximumPacketCount: expected,
  });
  const bare = codec === "avc" ? bareAvc(config.description) : (data: Uint8Array) => data;
  let meta: { decoderConfig: VideoDecoderConfig } | undefined = { decoderConfig: config };
  const add = async (packet: EncodedPacket): Promise<void> => {
    await source.add(packet.clone({ data: bare(packet.data), sideData: {} }), meta);
    meta = undefined;
  };
  return { track, expected, add };
}

async function soundFeed(output: Output, track: InputAudioTrack): Promise<Feed> {
  const codec = await track.getCodec();
  const config = await track.getDecoderConfig();
  if (codec === null || config === null) throw new Refused("damaged", "the sound's coding is not described");
  const source = new EncodedAudioPacketSource(codec);
  const expected = await countOf(track);
  output.addAudioTrack(source, { maximumPacketCount: expected });
  let meta: { decoderConfig: AudioDecoderConfig } | undefined = {
    decoderConfig: codec === "vorbis" ? { ...config, description: bareVorbis(config.description) } : config,
  };
  const add = async (packet: EncodedPacket): Promise<void> => {
    await source.add(packet, meta);
    meta = undefined;
  };
  return { track, expected, add };
}

async function countOf(track: Track): Promise<number> {
  let count = 0;
  for await (const packet of new EncodedPacketSink(track).packets(undefined, undefined, { metadataOnly: true }))
    count += packet.sequenceNumber < Infinity ? 1 : 0;
  return count;
}

/** Picture and sound side by side, as they are played, so that neither is waited for. */
async function copyPackets(feeds: readonly Feed[]): Promise<void> {
  const running = await Promise.all(
    feeds.map(async (feed) => {
      const packets = new EncodedPacketSink(feed.track).packets();
      return { feed, packets, count: 0, next: (await packets.next()).value ?? undefined };
    }),
  );
  for (;;) {
    const [first] = running
      .filter(({ next }) => next !== undefined)
      .sort((a, b) => (a.next?.timestamp ?? 0) - (b.next?.timestamp ?? 0));
    if (first?.next === undefined) break;
    await first.feed.add(first.next);
    first.count += 1;
    first.next = (await first.packets.next()).value ?? undefined;
  }
  for (const { feed, count } of running)
    if (count !== feed.expected || count === 0)
      throw new Refused("damaged", `${count} of ${feed.expected} pieces are there`);
}

/** A full disk is no fault of the clip. */
function isOfSystem(error: unknown): boolean {
  return error instanceof Error && "syscall" in error;
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split("\n")[0]?.trim() ?? "";
}
