/** The ending under which a paper is published, so that no browser runs what is in it when somebody opens it. */
import { open } from "node:fs/promises";
import { extname } from "node:path";

/**
 * As much as browsers look at to tell what a file without a known ending is (WHATWG MIME Sniffing Standard, section
 * 7: the resource header).
 */
const HEADER_BYTES = 1445;
/**
 * Endings that browsers take for pages or for scripts of the site's own, or that servers run, whatever the file begins
 * with.
 */
const PAGE = /^\.(?:[a-z]*html?|php[\ds]?)$/;
const ALIVE: ReadonlySet<string> = new Set(
  `.xht .xml .xsl .xslt .xbl .mht .hta .htc .svgz .js .cjs .mjs .pht .phar .asp .aspx .ashx .asmx .jsp .jspx .cfm .stm
    .cgi .fcgi .pl .py .rb .lua`.split(/\s+/),
);
/** Endings of papers that are shown, played or saved: any other is a stranger's, and may name somebody. */
const KEPT: ReadonlySet<string> = new Set(
  `.txt .md .csv .tsv .pdf .rtf .doc .docx .odt .xls .xlsx .ods .ppt .pptx .odp .eml .ics .json .yaml .yml
    .jpg .jpeg .png .gif .webp .avif .heic .tif .tiff .bmp .dng .raw
    .dxf .dwg .step .stp .igs .iges .stl .obj .3mf .fcstd .ps .eps
    .mp3 .m4a .wav .ogg .flac .mp4 .m4v .mov .webm .gpx .kml .tcx
    .zip .gz .tar .tgz .bz2 .xz .7z .sig .asc .pem .crt .tsr .tsq`.split(/\s+/),
);
/** Marks of byte order, and the blanks that may stand before a tag; a letter of UTF-16 has a zero byte beside it. */
const BEFORE_TAG = /^(?:\xef\xbb\xbf|\xff\xfe|\xfe\xff)?[\0\t\n\f\r ]*/;

/**
 * `.txt` for what is alive, or begins as a tag does; else the file's own ending where it is known, or `.bin`. `path`
 * is where the file lies.
 * Fails as the disk does.
 */
export async function inertEnding(path: string): Promise<string> {
  const ending = extname(path).toLowerCase();
  if (PAGE.test(ending) || ALIVE.has(ending) || (await beginsWithTag(path))) return ".txt";
  return ending === "" || KEPT.has(ending) ? ending : ".bin";
}

async function beginsWithTag(path: string): Promise<boolean> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(HEADER_BYTES), 0, HEADER_BYTES, 0);
    return buffer.toString("latin1", 0, bytesRead).replace(BEFORE_TAG, "").startsWith("<");
  } finally {
    await file.close();
  }
}
