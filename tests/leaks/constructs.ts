/** Every construct of CommonMark, and tables, with a word in each place where one can be. */

/** A word of the passage; `optional` where readers get it in no page: the name of a language, a label. */
type Say = (what: string, optional?: boolean) => string;

/** Named by the sections of the CommonMark specification, 0.31.2; an HTML block and inline HTML are text here. */
export const CONSTRUCTS: readonly ((say: Say) => string)[] = [
  (say) => `# ${say("heading")} #\n\n###### ${say("small heading")}`,
  (say) => `${say("heading over two lines")}\n${say("its second line")}\n===\n\n${say("heading underlined")}\n---`,
  (say) => `***\n${say("after a thematic break")}\n\n- - -\n${say("after another")}`,
  (say) => `    ${say("indented code")}\n\n        ${say("deeper")}\n\n\t${say("by a tab")}`,
  (say) =>
    `\`\`\`${say("language", true)} ${say("info", true)}\n${say("fenced code")}\n~~~\n\`\`\`\`\`\n${say("after it")}`,
  (say) => `~~~~ ${say("language", true)}\n${say("fenced by tildes")}\n\`\`\`\n~~~~`,
  (say) =>
    `<div title="${say("attribute")}">\n${say("HTML block")}\n</div>\n\n${say("after it")} <b>${say("inline")}</b>`,
  (say) =>
    `[${say("label", true)}a]: https://example.org/${say("address unused", true)} '${say("title unused", true)}'`,
  (say) => {
    const label = say("label", true);
    return `[${say("text of a reference")}][${label}]\n\n[${label}]: <https://example.org/${say("address")}>\n  "${say("title")}"`;
  },
  (say) => {
    const label = say("short label");
    return `[${label}] and [${label}][]\n\n[${label}]: https://example.org/${say("address")}`;
  },
  (say) => `[${say("text")} **${say("strong in it")}**](https://example.org/${say("address")} "${say("title")}")`,
  (say) => `<https://example.org/${say("autolink")}> and <mailto:${say("post")}@example.org>`,
  (say) => `> ${say("quote")}\n${say("lazy line")}\n>> ${say("quote in it")}\n>\n> ${say("its end")}`,
  (say) =>
    `- ${say("bullet")}\n\n  ${say("its paragraph")}\n  - ${say("bullet in it")}\n+ ${say("another list")}\n* ${say("and another")}`,
  (say) =>
    `7. ${say("item")}\n8) ${say("item of another list")}\n\n   > ${say("quote in it")}\n\n       ${say("code in it")}`,
  (say) => `1. - > ${say("deep")}\n     > \`\`\`\n     > ${say("fence within")}`,
  (say) =>
    `*${say("emphasis")}* __${say("strong")}__ ~~${say("struck")}~~ \`\`${say("code")} \`\` \\*${say("escaped")}\\*`,
  (say) => `&quot;${say("entities")}&#8212;${say("more")}&copy; (c) ... -- "${say("typographer")}"`,
  (say) => `${say("hard break")}  \n${say("after it")}\\\n${say("after another")}\n${say("soft break")}`,
  (say) =>
    `| ${say("head")} | ${say("head")} |\n|:--|--:|\n| ${say("cell")} | \`${say("code")}\` |\n${say("row without bars")}`,
  (say) => `\\[${say("no link")}\\](x) ![](y "z${say("no picture")}`.replace("![](", "!\\[]("),
];

/** What may stand right before a passage's mark, its block not ended yet. */
export const OPENINGS: readonly ((say: Say) => string)[] = [
  (say) => `${say("paragraph before a mark")}`,
  (say) => `- ${say("item before a mark")}\n  - ${say("item in it")}`,
  (say) => `> ${say("quote before a mark")}`,
  (say) => `1. ${say("item")}\n\n   ${say("its paragraph before a mark")}`,
  (say) => `    ${say("code before a mark")}`,
  (say) => `| ${say("head before a mark")} |\n| --- |\n| ${say("row")} |`,
  (say) => `<div>\n${say("HTML before a mark")}`,
  (say) => `[${say("text of a link without a place")}][kept] *${say("emphasis begun")}`,
  (say) => `# ${say("heading before a mark")}`,
];
