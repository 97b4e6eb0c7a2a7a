/**
 * Opens photographs large, one after another: by pointer, by touch and by keyboard. Runs as a classic script after
 * the page has been
 * read; without it each photograph is a plain link to its largest file.
 */
interface Look {
  readonly link: HTMLAnchorElement;
  readonly alt: string;
  readonly caption: string;
}

const SWIPE = 40;

function looksIn(page: Document): Look[] {
  return [...page.querySelectorAll<HTMLAnchorElement>("a.photo__large")].map((link) => ({
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
  readonly #image = document.createElement("img");
  readonly #words = document.createElement("p");
  #at = 0;
  #touchedAt: number | undefined;

  constructor(looks: readonly Look[]) {
    this.#looks = looks;
    this.#dialog.className = "gallery";
    this.#dialog.setAttribute("aria-label", "Photographs");
    this.#words.setAttribute("aria-live", "polite");
    const ways = document.createElement("div");
    ways.className = "gallery__ways";
    if (looks.length > 1)
      ways.append(
        button("Before", "before", () => this.#show(this.#at - 1)),
        button("After", "after", () => this.#show(this.#at + 1)),
      );
    ways.append(button("Close", "close", () => this.#dialog.close()));
    this.#dialog.append(this.#image, this.#words, ways);
    this.#listen();
  }

  open(at: number): void {
    this.#show(at);
    // Not before: a picture that was not chosen yet would be a broken one of the page.
    if (!this.#dialog.isConnected) document.body.append(this.#dialog);
    this.#dialog.showModal();
  }

  #listen(): void {
    const steps: { readonly [key: string]: number } = { ArrowLeft: -1, ArrowRight: 1 };
    this.#dialog.addEventListener("keydown", ({ key }) => {
      const step = steps[key];
      if (step !== undefined) this.#show(this.#at + step);
    });
    this.#dialog.addEventListener("close", () => this.#looks[this.#at]?.link.focus());
    this.#image.addEventListener(
      "touchstart",
      (event) => {
        this.#touchedAt = event.touches.length === 1 ? event.touches[0]?.clientX : undefined;
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
    this.#image.src = look.link.href;
    this.#image.alt = look.alt;
    this.#words.textContent = `${this.#at + 1} of ${this.#looks.length}${look.caption === "" ? "" : `: ${look.caption}`}`;
  }
}

const looks = looksIn(document);
if (looks.length > 0 && "showModal" in HTMLDialogElement.prototype) {
  const gallery = new Gallery(looks);
  looks.forEach(({ link }, at) =>
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      gallery.open(at);
    }),
  );
}
