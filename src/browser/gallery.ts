/**
 * Opens photographs large, one after another: by pointer, by touch and by keyboard; Back closes them. Runs as a classic script after
 * the page has been read; without it each photograph is a plain link to its largest file.
 */
interface Look {
  readonly link: HTMLAnchorElement;
  readonly alt: string;
  readonly caption: string;
}

const SWIPE = 40;

/** Each photograph once, though a page may show it in its story and beside it. */
function looksIn(links: readonly HTMLAnchorElement[]): Look[] {
  return [...new Map([...links].reverse().map((link) => [link.href, link])).values()]
    .reverse()
    .map((link) => ({
      link,
      alt: link.querySelector("img")?.alt ?? "",
      caption: link.closest("figure")?.querySelector("figcaption")?.textContent ?? "",
    }));
}

function button(words: string, name: string, press: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.className = `gallery__${name}`;
  made.textContent = words;
  made.addEventListener("click", press);
  return made;
}

class Gallery {
  readonly #looks: readonly Look[];
  readonly #dialog = document.createElement("dialog");
  readonly #look = document.createElement("div");
  readonly #image = document.createElement("img");
  readonly #words = document.createElement("p");
  #at = 0;
  #touchedAt: number | undefined;
  readonly #nearer = button("Larger", "nearer", () => this.#near(!this.#isNear()));

  constructor(looks: readonly Look[]) {
    this.#looks = looks;
    this.#dialog.className = "gallery";
    this.#dialog.setAttribute("aria-label", "Photographs");
    this.#words.setAttribute("aria-live", "polite");
    this.#look.className = "gallery__look";
    this.#look.append(this.#image);
    const ways = document.createElement("div");
    ways.className = "gallery__ways";
    if (looks.length > 1)
      ways.append(
        button("Before", "before", () => this.#show(this.#at - 1)),
        button("After", "after", () => this.#show(this.#at + 1)),
      );
    ways.append(
      this.#nearer,
      button("Close", "close", () => this.#dialog.close()),
    );
    this.#dialog.append(this.#look, this.#words, ways);
    this.#listen();
  }

  open(at: number): void {
    this.#show(at);
    // Not before: a picture that was not chosen yet would be a broken one of the page.
    if (!this.#dialog.isConnected) document.body.append(this.#dialog);
    this.#dialog.showModal();
    // A step that Back takes away again.
    history.pushState({ gallery: true }, "");
  }

  #isNear(): boolean {
    return this.#dialog.classList.contains("gallery--near");
  }

  /** Larger than the screen, to be moved about; its middle first. */
  #near(isNear: boolean): void {
    this.#dialog.classList.toggle("gallery--near", isNear);
    this.#nearer.textContent = isNear ? "Whole" : "Larger";
    this.#look.scrollTo(
      (this.#look.scrollWidth - this.#look.clientWidth) / 2,
      (this.#look.scrollHeight - this.#look.clientHeight) / 2,
    );
  }

  #listen(): void {
    const steps: { readonly [key: string]: number } = { ArrowLeft: -1, ArrowRight: 1 };
    this.#dialog.addEventListener("keydown", ({ key }) => {
      const step = steps[key];
      if (step !== undefined && !this.#isNear()) this.#show(this.#at + step);
    });
    this.#dialog.addEventListener("close", () => {
      if ((history.state as { gallery?: boolean } | null)?.gallery === true) history.back();
      this.#looks[this.#at]?.link.focus({ preventScroll: true });
    });
    addEventListener("popstate", () => this.#dialog.close());
    this.#image.addEventListener("dblclick", () => this.#near(!this.#isNear()));
    this.#image.addEventListener(
      "touchstart",
      (event) => {
        this.#touchedAt = event.touches.length === 1 && !this.#isNear() ? event.touches[0]?.clientX : undefined;
      },
      { passive: true },
    );
    this.#image.addEventListener("touchend", (event) => {
      const moved = (event.changedTouches[0]?.clientX ?? 0) - (this.#touchedAt ?? Number.NaN);
      if (Math.abs(moved) >= SWIPE) this.#show(this.#at + (moved < 0 ? 1 : -1));
    });
  }

  /** Beyond the last comes the first. */
  #show(at: number): void {
    this.#at = (at + this.#looks.length) % this.#looks.length;
    const look = this.#looks[this.#at];
    if (look === undefined) return;
    this.#near(false);
    this.#image.src = look.link.href;
    this.#image.alt = look.alt;
    this.#words.textContent = `${this.#at + 1} of ${this.#looks.length}${look.caption === "" ? "" : `: ${look.caption}`}`;
  }
}

const links = [...document.querySelectorAll<HTMLAnchorElement>("a.photo__large")];
const looks = looksIn(links);
if (looks.length > 0 && "showModal" in HTMLDialogElement.prototype) {
  const gallery = new Gallery(looks);
  for (const link of links)
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      gallery.open(looks.findIndex((look) => look.link.href === link.href));
    });
}
