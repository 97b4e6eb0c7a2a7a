/** Tables, and which block is set by what. */
export const TABLES = `
#let set-table(one, set-block) = {
  let widths = one.columns.map(column => if column.share == 0 { auto } else { column.share * 1fr })
  if widths.len() > 0 and widths.all(width => width == auto) { widths.last() = 1fr }
  let cells = one.rows.map(row => row.cells.enumerate().map(((at, blocks)) => table.cell(
    breakable: row.long,
    {
      if at == 0 { anchors(row.ids) }
      set-blocks(blocks, set-block)
    },
  ))).flatten()
  if one.caption.len() > 0 { block(sticky: true, above: 0.9em, below: 0.4em, text(size: 0.94em, fill: ink2, emph(line-of(one.caption)))) }
  if one.alike.len() > 0 {
    block(sticky: true, above: 0.4em, below: 0.4em, text(size: 0.94em, {
      text(fill: ink2)[In each row ]
      one.alike.map(((word, said)) => { text(fill: ink2, { line-of(word); [: ] }); line-of(said) }).join[ · ]
    }))
  }
  block(width: 100%, above: 0.4em, below: 0.7em, {
    set text(size: 0.89em)
    set par(leading: 0.44em, spacing: 0.4em)
    table(
      columns: widths,
      align: one.columns.map(column => if column.right { right + top } else { left + top }),
      stroke: (x, y) => if y == 0 { (bottom: 0.7pt) } else { (bottom: 0.3pt + rgb("#bbbbbb")) },
      inset: (x, y) => (left: if x == 0 { 0pt } else { 3pt }, right: 3pt, y: 1.8pt),
      ..if one.head.len() > 0 { (table.header(repeat: true, ..one.head.map(words => strong(line-of(words)))),) },
      ..cells,
    )
  })
}

#let set-block(one) = {
  if one.b == "heading" {
    anchors(one.ids)
    if one.level == 0 { block(above: 9pt, below: 16pt, text(size: 20pt, weight: "bold", par(leading: 8pt, line-of(one.c)))) }
    else { heading(level: one.level, outlined: one.told, bookmarked: true, line-of(one.c)) }
  }
  else if one.b == "text" { set-text(one) }
  else if one.b == "list" { set-list(one, set-block) }
  else if one.b == "facts" { set-facts(one.rows) }
  else if one.b == "table" { set-table(one, set-block) }
  else if one.b == "drawn" { set-drawn(one) }
  else if one.b == "drawings" { set-drawings(one.items) }
  else if one.b == "picture" { set-picture(one, width: 60mm) }
  else if one.b == "pictures" { set-pictures(one.items) }
  else if one.b == "plate" { set-plate(one) }
  else if one.b == "whole" { set-whole(one, set-block) }
  else if one.b == "anchors" { anchors(one.ids) }
  else if one.b == "signoff" { set-signoff(one.words) }
  else if one.b == "index" { set-index(one.rows) }
  else if one.b == "contents" { heading(level: 3, outlined: false, bookmarked: false)[Contents]
    columns(2, gutter: 8mm, { set text(size: 0.94em); outline(title: none, depth: 2, indent: 1em) }) }
}
`;
