/** Lines, lists, facts, pictures and blocks to be signed. */
export const BLOCKS = `
#let anchors(ids) = for id in ids [#metadata(id)#label(id)]

// A blank that no line is broken at costs less than a box around shape and word.
#let mark(m) = {
  box(baseline: 0.12em, image((if m.grave { "grave-" } else { "shape-" }) + m.shape + ".svg", height: 0.62em))
  text(weight: "bold", fill: if m.grave { accent } else { black }, "\\u{a0}" + m.word)
}

#let line-of(parts) = for part in parts {
  if type(part) == str { part }
  else if part.i == "id" { box(part.t) }
  else if part.i == "to" { link(label(part.to), line-of(part.c)) }
  else if part.i == "mark" { mark(part) }
  else if part.i == "break" { linebreak() }
  else if part.i == "strong" { strong(line-of(part.c)) }
  else if part.i == "emph" { emph(line-of(part.c)) }
  else if part.i == "code" { text(font: "DejaVu Sans Mono", size: 0.86em, line-of(part.c)) }
  else if part.i == "was" { strike(line-of(part.c)) }
  else if part.i == "is" { underline(line-of(part.c)) }
  else if part.i == "quiet" { text(fill: ink2, line-of(part.c)) }
}

#let set-blocks(blocks, set-block) = {
  if blocks.len() == 1 and blocks.first().b == "text" and blocks.first().look == "plain" { line-of(blocks.first().c) }
  else { for one in blocks { set-block(one) } }
}

#let set-text(one) = {
  let said = line-of(one.c)
  if one.look == "quiet" { par(text(fill: ink2, size: 0.94em, said)) }
  else if one.look == "small" { par(text(size: 0.94em, said)) }
  else if one.look == "label" { block(sticky: true, above: 1.3em, below: 0.5em, strong(said)) }
  else if one.look == "opens" { block(sticky: true, said) }
  else if one.look == "lead" { par(text(size: 1.2em, said)) }
  else { par(said) }
}

#let set-list(one, set-block) = {
  let sign = if one.sign == "box" { box(width: 0.72em, height: 0.72em, stroke: 0.6pt, baseline: 0.06em) } else if one.sign == "point" { [•] }
  let item-of(item) = list(marker: sign, indent: 0pt, body-indent: 0.5em, set-blocks(item, set-block))
  if one.short { grid(columns: (1fr,) * 3, column-gutter: 4mm, row-gutter: 0.5em, ..one.items.map(item-of)) }
  else if sign == none { for item in one.items { block(below: 0.5em, set-blocks(item, set-block)) } }
  else { list(marker: sign, indent: 0pt, body-indent: 0.5em, spacing: 0.5em, ..one.items.map(item => set-blocks(item, set-block))) }
}

#let set-facts(rows) = block(width: 100%, {
  set text(size: 0.94em)
  columns(2, gutter: 6mm, for (word, noted) in rows {
    block(spacing: 0.42em, width: 100%, breakable: false, grid(columns: (42%, 1fr), column-gutter: 2mm, text(fill: ink2, line-of(word)), line-of(noted)))
  })
})

#let set-drawings(items) = grid(columns: (1fr,) * 2, column-gutter: 4mm, row-gutter: 2mm, ..items.map(one => image(one.file, width: 100%, alt: one.alt)))

#let set-drawn(one) = if one.wide { image(one.file, width: 62%, alt: one.alt) } else { image(one.file, width: 62mm, alt: one.alt) }

#let set-picture(one, width: 100%) = block(breakable: false, width: width, {
  image(one.file, width: 100%, alt: one.alt)
  if one.caption.len() > 0 { v(-0.3em); text(size: 0.86em, line-of(one.caption)) }
})

#let set-pictures(items) = grid(columns: (1fr,) * 4, column-gutter: 3mm, row-gutter: 4mm, ..items.map(one => if one.b == "picture" { set-picture(one) }))

// Where marks and what they point at lie is known in shares of the picture, whose height is known once it is measured.
#let set-plate(one) = block(width: 43%, breakable: false, stroke: thin, layout(size => {
  let picture = image(one.file, width: size.width, alt: one.alt)
  let tall = measure(picture).height
  let at(x, y) = (x * 1% * size.width, y * 1% * tall)
  picture
  for m in one.marks {
    if "of" in m { place(top + left, line(start: at(m.left, m.top), end: at(..m.of), stroke: 0.6pt)) }
  }
  for m in one.marks {
    let (x, y) = at(m.left, m.top)
    place(top + left, dx: x, dy: y, place(center + horizon, box(fill: white, stroke: 0.5pt + (if m.grave { accent } else { black }), inset: (x: 1.6pt, y: 1.4pt), text(size: 6.4pt, mark(m)))))
  }
}))

#let set-signoff(words) = block(breakable: false, width: 100%, above: 1em, {
  let line-for(word, height) = block(height: height, width: 100%, stroke: (bottom: 0.7pt), text(size: 0.9em, word))
  let short = words.slice(0, calc.max(0, words.len() - 1))
  grid(columns: (1fr, 1fr), column-gutter: 6mm, row-gutter: 1mm, ..short.map(word => line-for(word, 8mm)))
  if words.len() > 0 { line-for(words.last(), 12mm) }
})

#let set-whole(one, set-block) = block(
  breakable: false,
  width: 100%,
  ..if one.framed { (stroke: (left: 2.4pt + rgb("#8a8a8a")), inset: (left: 6pt, y: 2pt)) },
  for each in one.c { set-block(each) },
)

#let set-index(rows) = {
  let longest = calc.max(1, ..rows.map(row => row.id.len()))
  let wide = calc.clamp(calc.floor(128 / (longest + 6)), 1, 8)
  let tall = calc.ceil(rows.len() / wide)
  let at(row) = link(label(row.to), {
    row.id
    box(width: 1fr, repeat[ .])
    context str(counter(page).at(label(row.to)).first())
  })
  let columns = range(wide).map(n => rows.slice(calc.min(n * tall, rows.len()), calc.min((n + 1) * tall, rows.len())))
  set text(size: 0.88em)
  grid(columns: (1fr,) * wide, column-gutter: 4mm, row-gutter: 0.45em, ..range(tall).map(y => columns.map(column => if y < column.len() { at(column.at(y)) } else { [] })).flatten())
}
`;
