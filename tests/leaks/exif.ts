/** A small writer of EXIF and of what else picture files hold beside the picture, so that tests know byte by byte what they planted. */

type Value = string | Buffer | number;
interface Field {
  readonly tag: number;
  readonly type: number;
  readonly count: number;
  readonly bytes: Buffer;
}

const ASCII = 2;
const SHORT = 3;
const LONG = 4;
const UNDEFINED = 7;

const long = (number: number): Buffer => {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32LE(number);
  return bytes;
};

function field(tag: number, value: Value, type = typeof value === "string" ? ASCII : UNDEFINED): Field {
  const bytes = typeof value === "string" ? Buffer.from(`${value}\0`) : typeof value === "number" ? long(value) : value;
  return {
    tag,
    type,
    bytes,
    count: type === LONG ? 1 : type === SHORT ? 1 : type === 5 ? bytes.length / 8 : bytes.length,
  };
}

/** An image file directory at an offset of the TIFF, its long values after it. */
function directory(fields: readonly Field[], at: number, next = 0): Buffer {
  const head = Buffer.alloc(2 + fields.length * 12 + 4);
  head.writeUInt16LE(fields.length);
  const tail: Buffer[] = [];
  let end = at + head.length;
  [...fields]
    .sort((a, b) => a.tag - b.tag)
    .forEach(({ tag, type, count, bytes }, index) => {
      const place = 2 + index * 12;
      head.writeUInt16LE(tag, place);
      head.writeUInt16LE(type, place + 2);
      head.writeUInt32LE(count, place + 4);
      if (bytes.length <= 4) bytes.copy(head, place + 8);
      else {
        head.writeUInt32LE(end, place + 8);
        const even = bytes.length % 2 === 0 ? bytes : Buffer.concat([bytes, Buffer.alloc(1)]);
        tail.push(even);
        end += even.length;
      }
    });
  head.writeUInt32LE(next, head.length - 4);
  return Buffer.concat([head, ...tail]);
}

const rationals = (...numbers: readonly number[]): Buffer =>
  Buffer.concat(numbers.flatMap((number) => [long(Math.round(number * 1000)), long(1000)]));

export interface Planted {
  readonly artist: string;
  readonly owner: string;
  readonly serial: string;
  readonly description: string;
  readonly comment: string;
  readonly maker: string;
  readonly place: string;
  /** A whole JPEG file that stands as the thumbnail. */
  readonly thumbnail: Buffer;
}

/** A picture of one colour after another, three bytes a pixel. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly bytes: Buffer;
}

/** What makes the block a picture in its own right. */
function pictureFields({ width, height, bytes }: Pixels, at: number): Field[] {
  const shorts = Buffer.from([8, 0, 8, 0, 8, 0]);
  return [
    field(0x0100, width, LONG),
    field(0x0101, height, LONG),
    { tag: 0x0102, type: SHORT, count: 3, bytes: shorts },
    field(0x0103, 1, SHORT),
    field(0x0106, 2, SHORT),
    field(0x0111, at, LONG),
    field(0x0115, 3, SHORT),
    field(0x0116, height, LONG),
    field(0x0117, bytes.length, LONG),
  ];
}

/** A TIFF block as EXIF holds it: owner, serial number, GPS, maker's note, comment in UTF-16, a thumbnail. */
export function exifOf(planted: Planted, picture?: Pixels): Buffer {
  const own = (at: number): Buffer =>
    directory(
      [
        field(0x9286, Buffer.concat([Buffer.from("UNICODE\0"), Buffer.from(planted.comment, "utf16le")])),
        field(0x927c, Buffer.from(planted.maker)),
        field(0xa430, planted.owner),
        field(0xa431, planted.serial),
        field(0xa435, planted.serial),
      ],
      at,
    );
  const notes = [
    field(0x010e, planted.description),
    field(0x010f, "Camera"),
    field(0x013b, planted.artist),
    field(0x8298, planted.artist),
    field(0x9c9d, Buffer.from(planted.artist, "utf16le"), 1),
  ];
  const gps = (at: number): Buffer =>
    directory(
      [
        field(0x0001, "N"),
        field(0x0002, rationals(38, 41, 30.5), 5),
        field(0x0003, "W"),
        field(0x0004, rationals(9, 12, 7.25), 5),
        field(0x001c, Buffer.concat([Buffer.from("ASCII\0\0\0"), Buffer.from(planted.place)])),
      ],
      at,
    );
  const main = [...notes, ...(picture === undefined ? [] : pictureFields(picture, 0))];
  const sizeOf = (pointers: readonly Field[]): number => directory([...main, ...pointers], 8).length;
  const blank = [field(0x8769, 0, LONG), field(0x8825, 0, LONG)];
  const exifAt = 8 + sizeOf(blank);
  const gpsAt = exifAt + own(exifAt).length;
  const thumbAt = gpsAt + gps(gpsAt).length;
  const thumb = (at: number): Buffer =>
    directory(
      [field(0x0103, 6, SHORT), field(0x0201, at, LONG), field(0x0202, planted.thumbnail.length, LONG)],
      thumbAt,
    );
  const pixelsAt = thumbAt + thumb(0).length + planted.thumbnail.length;
  const first = directory(
    [
      ...notes,
      ...(picture === undefined ? [] : pictureFields(picture, pixelsAt)),
      field(0x8769, exifAt, LONG),
      field(0x8825, gpsAt, LONG),
    ],
    8,
    picture === undefined ? thumbAt : 0,
  );
  return Buffer.concat([
    Buffer.from("II*\0"),
    long(8),
    first,
    own(exifAt),
    gps(gpsAt),
    thumb(thumbAt + thumb(0).length),
    planted.thumbnail,
    picture?.bytes ?? Buffer.alloc(0),
  ]);
}

export const xmpOf = (word: string): string =>
  `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" photoshop:City="${word}"><dc:creator><rdf:Seq><rdf:li>${word}</rdf:li></rdf:Seq></dc:creator></rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`;

/** IPTC by-line and city, as Photoshop keeps them in a JPEG. */
export function iptcOf(word: string): Buffer {
  const data = (dataset: number): Buffer =>
    Buffer.concat([Buffer.from([0x1c, 2, dataset, 0, word.length]), Buffer.from(word)]);
  const iim = Buffer.concat([data(80), data(90)]);
  const size = Buffer.alloc(4);
  size.writeUInt32BE(iim.length);
  return Buffer.concat([
    Buffer.from("Photoshop 3.0\0"),
    Buffer.from("8BIM"),
    Buffer.from([0x04, 0x04, 0, 0]),
    size,
    iim,
    Buffer.alloc(iim.length % 2),
  ]);
}
