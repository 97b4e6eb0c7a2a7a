/** At each screen a second tap on the same place, at each of a ladder of intervals up to half a second: nothing comes of it. */
import { isDeepStrictEqual } from "node:util";
import { afterEach, expect, it } from "vitest";
import { scratchFolders } from "../publish/scratch.ts";
import { addressIn, benchOfRecord, Phone } from "./phone.ts";
import { ASKING_RECORD } from "./record.ts";

/** ms by a clock that stands still meanwhile; at 0 the second tap comes before anything of the first is kept. */
const LADDER = [0, 1, 60, 150, 260, 330, 400, 460, 499, 500];
/** Both ends and the middle; `npm run taps` tries all. */
const INTERVALS = process.env["SCARFLINE_TAPS"] === "all" ? LADDER : [0, 260, 500];
const TAKE_BACK = /^Take back the last tap/;

/** A tap that is tried, after those that only turn to where it is. */
interface Tried {
  readonly turns?: readonly RegExp[];
  readonly tap: RegExp;
  /** Whether it only turns to something within its screen, and is kept nowhere. */
  readonly isTurn?: true;
}

const turn = (tap: RegExp, ...turns: RegExp[]): Tried => ({ tap, turns, isTurn: true });
const GLUING: readonly Tried[] = [
  turn(/^Glue from other tins/),
  turn(/^Two-part structural epoxy$/, /^Glue from other tins/),
  turn(/^R-1/, /^Glue from other tins/, /^Two-part structural epoxy$/),
  { tap: /^Glue: Two-part/ },
  { tap: /RD-J02/ },
  { tap: /RD-J03/ },
  { tap: /^These 2/ },
  turn(/^Another value/),
  turn(/^It reads in °F/, /^Another value/),
  turn(/^Below or above nought/, /^Another value/, /^5$/),
  { tap: /^20\.0$/ },
  { tap: /^50$/ },
  { turns: [/^Another value/, /^9$/], tap: /^Note 9 %/ },
  { tap: /^now$/ },
  turn(/^Of several/),
  { tap: /^S-1/ },
  { tap: /^40\.3$/ },
  { tap: /^The hardener goes in now/ },
  { tap: /^It is in/ },
  { tap: /^18\.8$/ },
  { tap: /^Note the hardener anew/ },
  { tap: /^17\.8$/ },
  { tap: /^Another cup/ },
  { tap: /^40\.3$/ },
  { tap: /^The hardener goes in now/ },
  { tap: /^It is in/ },
  { tap: /^17\.8$/ },
  turn(/^Throw B-003 away/),
  { turns: [/^Throw B-003 away/], tap: /^It stood too long/ },
  { tap: /^Closed/ },
  { tap: /^Closed/ },
  { tap: /^Nothing more/ },
  turn(/^They are glued only now/),
  turn(/^Another number of S-1/),
  { turns: [/^Another number of S-1/, /^2$/], tap: /^Note 2/ },
  turn(/^Another task/),
  turn(/^Several together/),
  { tap: /^Ines$/ },
];
const BREAKING: readonly Tried[] = [
  { tap: /^Break 3 pieces/ },
  { tap: /^In the wood/ },
  { tap: /^100 %$|^100$/ },
  turn(/^33–$/),
  { turns: [/^33–$/], tap: /^335$/ },
  { tap: /^Not broken today/ },
  { tap: /^In the glue line/ },
  { tap: /^No load was read/ },
  { tap: /^Ines$/ },
];
/** Where nothing of what is asked was read. */
const UNKNOWN: readonly Tried[] = [
  turn(/^A second phone writes too/),
  { tap: /^Glue: Two-part/ },
  { tap: /RD-J02/ },
  { tap: /^These 1/ },
  { tap: /^It was not read/ },
  { tap: /^It was not read/ },
  { tap: /^It was not read/ },
  { tap: /^Earlier, or not known/ },
];
const UNESTIMATED: readonly Tried[] = [
  { tap: /^Break 3 pieces/ },
  { tap: /^In the wood/ },
  { tap: /^It was not estimated/ },
];

const scratch = scratchFolders();
let phone: Phone | undefined;
afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

interface Seen {
  readonly kept: number;
  /** What is asked, what can be tapped, and what a pad shows. */
  readonly screen: string;
}

const seen = (on: Phone): Promise<Seen> =>
  on.page.evaluate(() => ({
    kept: Number(document.querySelector("[data-kept]")?.textContent ?? 0),
    // A ladder of times moves on with the clock.
    screen: [...document.querySelectorAll("h1, button, output")]
      .map((part) => part.textContent?.replace(/^\d\d:\d\d$/, "a time"))
      .join(" | "),
  }));

interface Tap {
  readonly words: RegExp;
  /** Whether it is to be kept: a screen may turn before that has come about. */
  readonly keeps: boolean;
  /** ms; without it one tap alone. */
  readonly apart?: number | undefined;
}

/** Two taps at one place; the second hits whatever stands there by then. */
async function tapped(on: Phone, { words, keeps, apart }: Tap): Promise<Seen> {
  const button = on.page.getByRole("button", { name: words }).first();
  await button.scrollIntoViewIfNeeded({ timeout: 5000 }).catch(async () => {
    throw new Error(`no button ${words.source}: ${(await seen(on)).screen}`);
  });
  const box = await button.boundingBox();
  if (box === null) throw new Error(`no button ${words.source}`);
  const at = [box.x + box.width / 2, box.y + box.height / 2] as const;
  const before = await seen(on);
  const hit = (times: number): Promise<void> =>
    on.page.evaluate(
      ([x, y, n]) => {
        for (let done = 0; done < n; done += 1) document.elementFromPoint(x, y)?.closest("button")?.click();
      },
      [...at, times] as const,
    );
  await hit(apart === 0 ? 2 : 1);
  const told = ({ kept, screen }: Seen): unknown => (keeps ? kept : screen);
  await expect.poll(async () => told(await seen(on)), { interval: 5, timeout: 10_000 }).not.toEqual(told(before));
  if (apart !== undefined && apart > 0) {
    await on.page.clock.runFor(apart);
    await hit(1);
  }
  await on.page.clock.runFor(600);
  return atRest(on);
}

/** What a screen reads of the phone's store comes a moment after it. */
async function atRest(on: Phone): Promise<Seen> {
  for (let last = await seen(on); ; ) {
    await on.page.waitForTimeout(15);
    const now = await seen(on);
    if (isDeepStrictEqual(now, last)) return now;
    last = now;
  }
}

async function triedAt(on: Phone, { turns = [], tap, isTurn }: Tried): Promise<string[]> {
  const wrong: string[] = [];
  const begin = await seen(on);
  const back = async (apart?: number): Promise<void> => {
    if (isTurn !== true) {
      const { kept: was } = await seen(on);
      const { kept, screen } = await tapped(on, { words: TAKE_BACK, keeps: true, apart });
      if (screen !== begin.screen) wrong.push(`${tap.source}, taken back by two taps ${apart} ms apart: ${screen}`);
      if (begin.kept > 0 && kept - was !== 1) wrong.push(`${tap.source}, ${apart} ms: ${kept - was} taken back`);
      return;
    }
    await on.page.reload();
    await on.page.waitForSelector("footer");
  };
  const turned = async (): Promise<void> => {
    for (const words of turns) await tapped(on, { words, keeps: false });
  };
  const own = { words: tap, keeps: isTurn !== true };
  await turned();
  const once = await tapped(on, own);
  for (const apart of INTERVALS) {
    await back(apart);
    const before = await seen(on);
    await turned();
    const { kept, screen } = await tapped(on, { ...own, apart });
    if (screen !== once.screen) wrong.push(`${tap.source}, two taps ${apart} ms apart: ${screen}`);
    const more = isTurn === true ? 0 : 1;
    if (begin.kept > 0 && kept - before.kept !== more)
      wrong.push(`${tap.source}, ${apart} ms apart: ${kept - before.kept} kept`);
  }
  if (isTurn === true) await back();
  return wrong;
}

it.each([
  { what: "gluing", screens: GLUING },
  { what: "breaking", screens: BREAKING },
  { what: "gluing by no readings", screens: UNKNOWN },
  { what: "breaking without an estimate", screens: UNESTIMATED },
])(
  "at each screen of $what two taps do what one does, $screens.length screens by a ladder of intervals",
  async ({ screens }) => {
    const { bench } = await benchOfRecord(scratch(), ASKING_RECORD);
    phone = await Phone.open();
    await phone.page.clock.install();
    await phone.go(addressIn(bench));
    await phone.page.clock.pauseAt(Date.now() + 5000);
    const wrong: string[] = [];
    for (const tried of screens) wrong.push(...(await triedAt(phone, tried)));
    expect(wrong).toEqual([]);
    expect(phone.errors).toEqual([]);
  },
  600_000,
);
