/** Signatures by the builder's own SSH key, made and checked by OpenSSH's `ssh-keygen -Y`. */
import { ArchiveRefused } from "../refused.ts";
import { lastLine, ran, type Ran } from "../tool.ts";

/** What the signature is for, so that none made for something else counts here. */
export const NAMESPACE = "scarfline-seal";

/** The signature, as a text that begins with `-----BEGIN SSH SIGNATURE-----`. A key with a passphrase asks for it on the terminal. */
export async function signatureOf(text: string, key: string): Promise<string> {
  const { code, out, err } = await sshKeygen(["-Y", "sign", "-f", key, "-n", NAMESPACE], text);
  const signature = out.toString("latin1");
  if (code !== 0 || !signature.startsWith("-----BEGIN SSH SIGNATURE-----"))
    throw new ArchiveRefused(`ssh-keygen did not sign with ${key}: ${lastLine(err)}`);
  return signature;
}

export type Checked =
  /** By a person in the list of signers, or, without a list, by whoever has the key. */
  { readonly good: true; readonly by: string } | { readonly good: false; readonly why: string };

/** @param signers a file of allowed signers, as `man ssh-keygen` describes it */
export async function signatureChecked(
  text: string,
  signatureFile: string,
  signers: string | undefined,
): Promise<Checked> {
  if (signers === undefined)
    return checked(await sshKeygen(["-Y", "check-novalidate", "-n", NAMESPACE, "-s", signatureFile], text));
  const found = await sshKeygen(["-Y", "find-principals", "-f", signers, "-s", signatureFile], "");
  const [person] = found.out.toString("utf8").split("\n");
  if (found.code !== 0 || person === undefined || person === "")
    return { good: false, why: `the key is none of those in ${signers}` };
  return checked(
    await sshKeygen(["-Y", "verify", "-f", signers, "-I", person, "-n", NAMESPACE, "-s", signatureFile], text),
  );
}

function checked({ code, out, err }: Ran): Checked {
  if (code !== 0) return { good: false, why: lastLine(err) };
  const [, by] = /^Good "[^"]*" signature (?:for|with) (.*)$/m.exec(out.toString("utf8")) ?? [];
  return { good: true, by: by ?? "a key" };
}

function sshKeygen(words: readonly string[], input: string): Promise<Ran> {
  return ran("ssh-keygen", words, input);
}
