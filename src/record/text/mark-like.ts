/** Whether a reader would take a line for the mark of a passage, whatever a parser takes it for. */

/**
 * Characters that look like a colon: those which Unicode's list of confusable characters gives for it (confusables.txt, from memory),
 * and those of two or three colons. Full-width and small forms come under NFKC.
 */
const LOOK_ALIKES =
  /[\u02d0\u02f8\u0589\u05c3\u0703\u0704\u0903\u0a83\u16ec\u1803\u1809\u205a\u2236\ua4fd\ua789\ufe30\u2982\u2e2c\u205d\u22ee\u205e]/gu;
const SEVERAL = /[\u2237\u2af6\u2a74]/gu;
const UNSEEN = /[\p{Default_Ignorable_Code_Point}\p{Cf}\p{Cc}\p{M}\\]/gu;
const MAY =
  /[:;\u02d0\u02f8\u0589\u05c3\u0703\u0704\u0903\u0a83\u16ec\u1803\u1809\u205a\u2236\ua4fd\ua789\ufe13\ufe30\ufe55\uff1a\u2982\u2e2c\u205d\u22ee\u205e\ufe19\u2237\u2af6\u2a74\ufe14\ufe54\uff1b]/u;

/** Three colons anywhere, two at the beginning or before the word for a passage's readers, or any before that word alone; blanks between do not count. */
const LIKE = [
  /:\s*:\s*:/u,
  /^(?:[^\p{L}\p{N}:]|\d{1,9}[.)]\s)*:\s*:/u,
  /:\s*:\s*(?:public|inspector|archive)(?![\p{L}\p{N}])/iu,
  /^(?:[^\p{L}\p{N}:;]|\d{1,9}[.)]\s)*[:;][\s:;]*(?:public|inspector|archive)[^\p{L}\p{N}]*$/iu,
];

export function isMarkLike(line: string): boolean {
  if (!MAY.test(line)) return false;
  const plain = line
    .replace(SEVERAL, ":::")
    .replace(LOOK_ALIKES, ":")
    .normalize("NFKC")
    .replace(LOOK_ALIKES, ":")
    .replace(UNSEEN, "");
  return LIKE.some((like) => like.test(plain));
}
