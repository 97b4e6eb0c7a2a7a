/**
 * Finds what is typed in the index that lies beside the page, asked for when somebody is about to search. Runs as a classic script
 * after the page has been read; without it the page lists all entries. What is looked for stands behind the `#` of the address, so that
 * it can be shared and survives Back.
 */
import type { PackedIndex, Thing } from "../words/search/packed.ts";
import { type Answer, type Index, openIndex, search } from "../words/search/search.ts";
import { dateWords } from "../words/dates.ts";
import { counted, listed } from "../words/lists.ts";

const PLURALS: { readonly [kind: string]: string } = { Entry: "Entries", Assembly: "Assemblies", Batch: "Batches" };
/** So many of a kind at first. */
const FIRST = 8;
/** So many words are told that one was taken for. */
const MOST_TOLD = 4;
const WAIT_MS = 60;

let index: Promise<Index | undefined> | undefined;

/** The script of the index says what it holds by a name of the window. */
function theIndex(): Promise<Index | undefined> {
  index ??= new Promise((have) => {
    const script = document.createElement("script");
    script.src = "search-index.js";
    const there = (): PackedIndex | undefined => (window as unknown as { scarflineIndex?: PackedIndex }).scarflineIndex;
    script.onload = () => have(there() && openIndex(there() as PackedIndex));
    script.onerror = () => have(undefined);
    document.head.append(script);
  });
  return index;
}

function made<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className: string,
  ...within: (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  if (className !== "") element.className = className;
  element.append(...within);
  return element;
}

function line({ path, id, title, day, lead }: Thing): HTMLLIElement {
  const link = made("a", "", id === undefined ? title : `${id}${title === "" ? "" : `: ${title}`}`);
  link.href = path;
  const when = day === undefined ? [] : [made("time", "search__when", dateWords(day))];
  const beside = when.length === 0 && lead === "" ? [] : [made("span", "search__lead", ...when, lead)];
  return made("li", "", link, ...beside);
}

function group(kind: string, things: readonly Thing[]): HTMLElement {
  const many = PLURALS[kind] ?? `${kind}s`;
  const heading = made("h2", "", things.length === 1 ? kind : `${many} (${things.length})`);
  heading.id = `found-${kind.toLowerCase().replace(" ", "-")}`;
  const list = made("ul", "", ...things.slice(0, FIRST).map(line));
  const section = made("section", "", heading, list);
  section.setAttribute("aria-labelledby", heading.id);
  if (things.length > FIRST) section.append(more(list, many, things));
  return section;
}

function more(list: HTMLElement, many: string, things: readonly Thing[]): HTMLElement {
  const button = made("button", "search__more", `All ${things.length} ${many.toLowerCase()}`);
  button.type = "button";
  button.addEventListener("click", () => {
    const rest = things.slice(FIRST).map(line);
    list.append(...rest);
    button.remove();
    rest[0]?.querySelector("a")?.focus();
  });
  return button;
}

/** Kinds in the order of the best of each. */
function groups(found: readonly Thing[]): HTMLElement[] {
  const kinds = new Map<string, Thing[]>();
  for (const thing of found) kinds.set(thing.kind, [...(kinds.get(thing.kind) ?? []), thing]);
  return [...kinds].map(([kind, things]) => group(kind, things));
}

function stateWords({ found, readAs }: Answer): string {
  const alike = readAs.map(
    ({ typed, as }) => `“${typed}” stands nowhere so; taken for ${listed(as.slice(0, MOST_TOLD))}. `,
  );
  return `${alike.join("")}${found.length === 0 ? "Nothing found." : `${counted(found.length, "place")} found.`}`;
}

function start(box: HTMLElement): void {
  const input = box.querySelector("input");
  const state = box.querySelector("output");
  const list = box.querySelector(".search__found");
  const all = document.querySelector<HTMLElement>(".search__all");
  if (input === null || state === null || list === null || all === null) return;
  const show = async (): Promise<void> => {
    const asked = input.value.trim();
    const known = asked === "" ? undefined : await theIndex();
    if (input.value.trim() !== asked) return;
    all.hidden = asked !== "";
    const answer = known === undefined ? undefined : search(known, asked);
    list.replaceChildren(...groups(answer?.found ?? []));
    state.textContent =
      answer === undefined
        ? asked === ""
          ? ""
          : "The index of this site, search-index.js, is not there."
        : stateWords(answer);
  };
  let waiting = 0;
  const typed = (): void => {
    history.replaceState(
      null,
      "",
      input.value.trim() === "" ? location.href.replace(/#.*/, "") : `#${encodeURIComponent(input.value.trim())}`,
    );
    clearTimeout(waiting);
    waiting = window.setTimeout(() => void show(), WAIT_MS);
  };
  const fromAddress = (): void => {
    input.value = wordsOf(location.hash);
    void show();
  };
  input.addEventListener("focus", () => void theIndex(), { once: true });
  input.addEventListener("input", typed);
  addEventListener("hashchange", fromAddress);
  box.hidden = false;
  if (wordsOf(location.hash) !== "") fromAddress();
  else input.focus();
}

/** What stands behind `#`; the place of the page itself is no word to look for. */
function wordsOf(hash: string): string {
  if (hash === "" || hash === "#main") return "";
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return "";
  }
}

const box = document.querySelector<HTMLElement>("[data-search]");
if (box !== null) start(box);
