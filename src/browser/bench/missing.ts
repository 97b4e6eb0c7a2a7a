/** What a browser does not do for this page, in words: a page by plain http or from a disk has less. */
export function missing(): readonly string[] {
  const isFile = location.protocol === "file:";
  return [
    ...(navigator.serviceWorker !== undefined && !isFile
      ? []
      : [isFile ? "Opened from a file: works without a network." : "This address gives no page without a network."]),
    ...(navigator.locks === undefined ? ["This browser cannot tell a second tab: keep only one open."] : []),
    ...("wakeLock" in navigator ? [] : ["The screen may go dark: this browser does not keep it on."]),
  ];
}
