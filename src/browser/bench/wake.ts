/** Keeps the screen lit while the page is looked at, where the browser can. */
export function keepLit(): void {
  const ask = (): void => {
    if (document.visibilityState === "visible") void navigator.wakeLock?.request("screen").catch(() => undefined);
  };
  ask();
  document.addEventListener("visibilitychange", ask);
}
