import { spawnSync } from "node:child_process";

/** Numbers of the system call `renameat2`, by the machine's kind as Node names it. */
const RENAMEAT2: { readonly [arch: string]: number } = { x64: 316, arm64: 276 };

/**
 * Lets two folders on one disk change places in one step of the system, so that at no instant there is none at either
 * place.
 * Node cannot ask for it (RENAME_EXCHANGE of Linux's renameat2), but tools that most systems have can: `mv` of
 * coreutils 9.5 and later, else Perl.
 * @returns whether they changed places; if not, both are where they were
 */
export function exchangeAtOnce(one: string, other: string): boolean {
  if (process.platform !== "linux") return false;
  const number = RENAMEAT2[process.arch];
  const ways: readonly (readonly [string, readonly string[]])[] = [
    ["mv", ["--exchange", "--no-target-directory", "--", one, other]],
    ...(number === undefined
      ? []
      : [
          [
            "perl",
            ["-e", `exit(syscall(${number}, -100, $ARGV[0], -100, $ARGV[1], 2) == 0 ? 0 : 1)`, "--", one, other],
          ] as const,
        ]),
  ];
  return ways.some(([tool, words]) => spawnSync(tool, words, { stdio: "ignore" }).status === 0);
}
