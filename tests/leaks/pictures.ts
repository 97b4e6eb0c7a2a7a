/** Pictures that hold words in every place beside the picture that their form has. */
import { crc32, deflateSync } from "node:zlib";
import sharp, { type Exif } from "sharp";
import { exifOf, iptcOf, xmpOf } from "./exif.ts";

export type Form = "jpg" | "png" | "webp" | "tiff" | "gif" | "avif" | "svg";

interface Shot {
  readonly width: number;
  readonly height: number;
  readonly colour: string;
}

/** `say` gives a word for each place that is named to it. */
export async function pictureOf(form: Form, shot: Shot, say: (place: string) => string): Promise<Buffer> {
  if (form === "svg") return Buffer.from(drawingOf(shot, say));
  const plain = sharp({ create: { width: shot.width, height: shot.height, channels: 3, background: shot.colour } });
  if (form === "gif") return withExtensions(await plain.gif().toBuffer(), xmpOf(say("XMP creator")), say);
  if (form === "avif")
    return plain
      .avif({ effort: 0 })
      .withExif(namedNotes(say))
      .withXmp(xmpOf(say("XMP creator")))
      .toBuffer();
  const notes = {
    artist: say("artist"),
    owner: say("owner of the camera"),
    serial: say("serial number"),
    description: say("description"),
    comment: say("comment in UTF-16"),
    maker: say("maker's note"),
    place: say("GPS area"),
    thumbnail: withSegments(
      await sharp({ create: { width: 32, height: 24, channels: 3, background: shot.colour } })
        .jpeg()
        .toBuffer(),
      [[0xfe, Buffer.from(say("within the thumbnail"))]],
    ),
  };
  if (form === "tiff")
    return exifOf(notes, { width: shot.width, height: shot.height, bytes: await plain.raw().toBuffer() });
  const exif = exifOf(notes);
  const xmp = xmpOf(say("XMP creator"));
  if (form === "jpg") return withSegments(await plain.jpeg().toBuffer(), jpegSegments(exif, xmp, say));
  if (form === "png") return withChunks(await plain.png().toBuffer(), pngChunks(exif, xmp, say));
  return withRiff(await plain.webp().toBuffer(), shot, exif, Buffer.from(xmp));
}

/** Notes that sharp itself writes, by the directory and the name that libvips has for them. */
function namedNotes(say: (place: string) => string): Exif {
  return {
    IFD0: { Artist: say("artist"), ImageDescription: say("description") },
    IFD2: { CameraOwnerName: say("owner of the camera"), BodySerialNumber: say("serial number") },
    IFD3: { GPSLatitudeRef: "N", GPSLatitude: "38/1 41/1 305/10", GPSMapDatum: say("GPS datum") },
  };
}

function jpegSegments(exif: Buffer, xmp: string, say: (place: string) => string): [number, Buffer][] {
  return [
    [0xe1, Buffer.concat([Buffer.from("Exif\0\0"), exif])],
    [0xe1, Buffer.concat([Buffer.from("http://ns.adobe.com/xap/1.0/\0"), Buffer.from(xmp)])],
    [0xed, iptcOf(say("IPTC by-line"))],
    [0xfe, Buffer.from(say("JPEG comment"))],
    [0xe5, Buffer.from(`Private\0${say("segment of an unknown program")}`)],
  ];
}

/** Segments after the marker that begins a JPEG, and a word after the one that ends it. */
function withSegments(jpeg: Buffer, segments: readonly (readonly [number, Buffer])[]): Buffer {
  const made = segments.map(([marker, data]) => {
    const head = Buffer.from([0xff, marker, 0, 0]);
    head.writeUInt16BE(data.length + 2, 2);
    return Buffer.concat([head, data]);
  });
  return Buffer.concat([jpeg.subarray(0, 2), ...made, jpeg.subarray(2)]);
}

function pngChunks(exif: Buffer, xmp: string, say: (place: string) => string): [string, Buffer][] {
  const packed = (text: string): Buffer => deflateSync(Buffer.from(text));
  return [
    ["tEXt", Buffer.from(`Author\0${say("PNG text")}`)],
    ["zTXt", Buffer.concat([Buffer.from("Comment\0\0"), packed(say("packed PNG text"))])],
    ["iTXt", Buffer.concat([Buffer.from("Title\0\x01\0\0\0"), packed(say("packed PNG text in Unicode"))])],
    ["iTXt", Buffer.from(`XML:com.adobe.xmp\0\0\0\0\0${xmp}`)],
    ["eXIf", exif],
  ];
}

function withChunks(png: Buffer, chunks: readonly (readonly [string, Buffer])[]): Buffer {
  const made = chunks.map(([name, data]) => {
    const body = Buffer.concat([Buffer.from(name), data]);
    const [size, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32BE(data.length);
    sum.writeUInt32BE(crc32(body));
    return Buffer.concat([size, body, sum]);
  });
  return Buffer.concat([png.subarray(0, 33), ...made, png.subarray(33)]);
}

function riff(name: string, data: Buffer): Buffer {
  const size = Buffer.alloc(4);
  size.writeUInt32LE(data.length);
  return Buffer.concat([Buffer.from(name), size, data, Buffer.alloc(data.length % 2)]);
}

/** The extended form of a WebP file, which has room for EXIF and XMP. */
function withRiff(webp: Buffer, { width, height }: Shot, exif: Buffer, xmp: Buffer): Buffer {
  const flags = Buffer.alloc(10);
  flags[0] = 0x08 | 0x04;
  flags.writeUIntLE(width - 1, 4, 3);
  flags.writeUIntLE(height - 1, 7, 3);
  const body = Buffer.concat([
    Buffer.from("WEBP"),
    riff("VP8X", flags),
    webp.subarray(12),
    riff("EXIF", exif),
    riff("XMP ", xmp),
  ]);
  return riff("RIFF", body);
}

/** A comment and an application's block, before the first image. */
function withExtensions(gif: Buffer, xmp: string, say: (place: string) => string): Buffer {
  const blocks = (text: string): Buffer =>
    Buffer.concat(
      [...Array(Math.ceil(text.length / 255)).keys()]
        .map((at) => Buffer.from(text.slice(at * 255, at * 255 + 255), "latin1"))
        .flatMap((part) => [Buffer.from([part.length]), part])
        .concat(Buffer.from([0])),
    );
  const comment = Buffer.concat([Buffer.from([0x21, 0xfe]), blocks(say("GIF comment"))]);
  const application = Buffer.concat([
    Buffer.from([0x21, 0xff, 11]),
    Buffer.from("XMP DataXMP"),
    Buffer.from(xmp),
    Buffer.from([1, ...Array.from({ length: 256 }, (_, at) => 255 - at), 0]),
  ]);
  const colours = (gif[10] ?? 0) & 0x80 ? 3 * 2 ** (((gif[10] ?? 0) & 7) + 1) : 0;
  const head = 13 + colours;
  return Buffer.concat([gif.subarray(0, head), comment, application, gif.subarray(head)]);
}

/** What drawing programs leave in a drawing besides what is drawn. */
function drawingOf({ width, height, colour }: Shot, say: (place: string) => string): string {
  return `<?xml version="1.0"?>
<?editor ${say("instruction to an editor")}?>
<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
<!-- ${say("comment")} -->
<svg xmlns="http://www.w3.org/2000/svg" xmlns:editor="http://example.org/${say("name space")}" viewBox="0 0 ${width} ${height}" editor:docname="/home/${say("name of the drawing's file")}.svg" data-author="${say("data attribute")}">
  <metadata><creator>${say("metadata")}</creator></metadata>
  <editor:view path="${say("settings of an editor")}"/>
  <style>/* ${say("comment in the styles")} */ .a { fill: ${colour} } /* ${say("second comment in the styles")} */</style>
  <style><![CDATA[ /* ${say("comment in styles that are quoted")} */ .b { fill: none } ]]></style>
  <g editor:label="${say("name of a layer")}" data-name="${say("name of an object")}"><path class="a" d="M1 1h9v9z"/><!-- ${say("comment within")} --></g>
</svg>
<!-- ${say("comment at the end")} -->
`;
}
