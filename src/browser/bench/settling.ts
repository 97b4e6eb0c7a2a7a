/** A second tap, half a second or less after the first, was meant for the screen before: it is not taken. */
const SETTLES_MS = 500;

let until = 0;
let only: string | undefined;

/** From now on no tap counts for half a second, or none on the one thing named. */
export function settle(key?: string): void {
  until = performance.now() + SETTLES_MS;
  only = key;
  document.documentElement.toggleAttribute("data-settling", key === undefined);
  setTimeout(settled, SETTLES_MS + 1);
}

/** A browser's timer may come early by its clock. */
function settled(): void {
  if (isSettling()) setTimeout(settled, 1);
  else document.documentElement.removeAttribute("data-settling");
}

const isSettling = (): boolean => performance.now() <= until;

/** Stops taps, by finger or by key, before anything hears of them. */
export function guardTaps(root: HTMLElement): void {
  root.addEventListener(
    "click",
    (event) => {
      const key = (event.target as Element).closest<HTMLElement>("button")?.dataset["key"];
      if (!isSettling() || (only !== undefined && key !== only)) return;
      event.stopImmediatePropagation();
      event.preventDefault();
    },
    { capture: true },
  );
}
