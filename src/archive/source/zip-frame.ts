/** Whether a zip holds what its list at the end says and nothing else, so that each reader gets the same of it. */
import { open } from "node:fs/promises";
import { type Entry, parseExtraFields, type ZipFile } from "yauzl";
import type { Tellings } from "../finding.ts";
import { Damaged } from "./source.ts";

/** Flags of an entry, APPNOTE.TXT 4.4.4. */
const SIZES_FOLLOW = 8;
const NAME_IS_UTF8 = 0x800;
/** Info-ZIP's second name of a file, APPNOTE.TXT 4.6.9. */
const OTHER_NAME = 0x7075;
/** The version that a large file needs, times ten; nothing that is read here needs a later one (APPNOTE.TXT 4.4.3). */
const NEWEST = 45;
/** Sizes after a file, with and without a mark of their own, of 4 or 8 bytes each. */
const DESCRIPTORS = [12, 16, 20, 24];
/** The end of the list, and before it the record and its pointer where the zip is a large one. */
const END = 22;
const LARGE_END = 76;
const LARGE_MARK = 0x06064b50;

/** @param listAt where the list at the end begins, and `listEnd` where it ends */
export async function checkFrame(
  path: string,
  zip: ZipFile,
  entries: readonly Entry[],
  { listAt, listEnd }: { readonly listAt: number; readonly listEnd: number },
  findings: Tellings,
): Promise<void> {
  const inOrder = [...entries].sort((a, b) => a.relativeOffsetOfLocalHeader - b.relativeOffsetOfLocalHeader);
  let at = 0;
  for (const [index, entry] of inOrder.entries()) {
    const name = entry.fileNameRaw.toString("utf8");
    if (entry.relativeOffsetOfLocalHeader !== at)
      throw new Damaged(`holds bytes before ${name} that its list does not know`);
    const end = await endOf(zip, entry, name, findings);
    const next = inOrder[index + 1]?.relativeOffsetOfLocalHeader ?? listAt;
    const isFollowed = (entry.generalPurposeBitFlag & SIZES_FOLLOW) !== 0 && DESCRIPTORS.includes(next - end);
    at = isFollowed ? next : end;
  }
  if (at !== listAt) throw new Damaged("holds bytes before its list that the list does not know");
  const comment = Buffer.from(zip.comment).length;
  if (![0, LARGE_END].includes(zip.fileSize - listEnd - END - comment))
    throw new Damaged("holds bytes after its list that the list does not know");
  await checkEnd(path, entries.length, listAt, listEnd);
  if (comment > 0) findings.note("container", ".", "this zip has a comment, which no manifest vouches for");
}

/** What the zip's end, and that of a large one before it, say of the list: some readers go by one of these, and some by another. */
async function checkEnd(path: string, entries: number, listAt: number, listEnd: number): Promise<void> {
  const handle = await open(path, "r");
  const { buffer, bytesRead } = await handle
    .read(Buffer.alloc(LARGE_END + END), 0, LARGE_END + END, listEnd)
    .finally(() => handle.close());
  const isLarge = buffer.readUInt32LE(0) === LARGE_MARK && bytesRead === LARGE_END + END;
  const end = buffer.subarray(isLarge ? LARGE_END : 0);
  const says = (said: number, real: number, open: number): boolean => said === real || (isLarge && said === open);
  const [size, disks] = [listEnd - listAt, end.readUInt32LE(4)];
  const holds =
    disks === 0 &&
    says(end.readUInt16LE(8), entries, 0xffff) &&
    says(end.readUInt16LE(10), entries, 0xffff) &&
    says(end.readUInt32LE(12), size, 0xffffffff) &&
    says(end.readUInt32LE(16), listAt, 0xffffffff);
  const large = [0, entries, entries, size, listAt].map(BigInt);
  const holdsLarge = !isLarge || large.every((real, index) => buffer.readBigUInt64LE(16 + 8 * index) === real);
  if (!holds || !holdsLarge) throw new Damaged("says otherwise of its list at its end than the list is");
}

/** Where a file's bytes end. Its own head must say the same of it as the list does, for there are readers that go by either. */
async function endOf(zip: ZipFile, entry: Entry, name: string, findings: Tellings): Promise<number> {
  const head = await zip.readLocalFileHeaderPromise(entry).catch((error: Error) => {
    throw "syscall" in error ? error : new Damaged(`is damaged at ${name}: ${error.message}`);
  });
  if (Math.max(entry.versionNeededToExtract, head.versionNeededToExtract) > NEWEST)
    throw new Damaged(`says that ${name} needs a later unzip than there is; some tools would leave it out`);
  const flags = entry.generalPurposeBitFlag;
  const differs =
    !head.fileName.equals(entry.fileNameRaw) ||
    head.compressionMethod !== entry.compressionMethod ||
    head.generalPurposeBitFlag !== flags ||
    ((flags & SIZES_FOLLOW) === 0 && !hasSizes(head, entry));
  if (differs) throw new Damaged(`says otherwise of ${name} in its list than at the file itself`);
  for (const { id, data } of [...entry.extraFields, ...parseExtraFields(head.extraField)])
    if (id === OTHER_NAME && !data.subarray(5).equals(entry.fileNameRaw))
      throw new Damaged(`gives ${name} a second name, which some tools would write it under`);
  if ((flags & NAME_IS_UTF8) === 0 && /[^\x20-\x7e]/.test(name))
    findings.note("encoding", name, "this name is not marked as UTF-8, and some tools will read it otherwise");
  return head.fileDataStart + entry.compressedSize;
}

function hasSizes(
  head: { readonly compressedSize: number; readonly uncompressedSize: number; readonly crc32: number },
  entry: Entry,
): boolean {
  const is = (said: number, real: number): boolean => said === real || said === 0xffffffff;
  return (
    is(head.compressedSize, entry.compressedSize) &&
    is(head.uncompressedSize, entry.uncompressedSize) &&
    head.crc32 === entry.crc32
  );
}
