/**
 * The one template that sets every sheet: it reads the blocks of `block.ts` as JSON and lays them out.
 * All words come in as data, so nothing that a file says can be taken for markup. Black and white
 * first; a state is a word and a shape.
 */
export const TYPST_SOURCE = `
#let sheet = json(bytes(sys.inputs.sheet))
#let base = (usual: 10.5pt, large: 13pt, sign: 26pt).at(sheet.size) * float(sys.inputs.at("share", default: "1"))
#let ink = rgb("#1a2438")
#let rule = 0.6pt + ink
#let thin = 0.35pt + ink
#let shade = luma(238)

#set document(title: sheet.title, date: none)
#set page(
  paper: sheet.paper,
  flipped: sheet.at("isLandscape", default: false),
  margin: (x: 14mm, top: 12mm, bottom: 15mm),
  footer-descent: 3.5mm,
  footer: context {
    set text(size: 8pt)
    let pages = if counter(page).final().first() > 1 { counter(page).display("1 / 1", both: true) }
    block(width: 100%, stroke: (top: thin), inset: (top: 1.5mm), grid(columns: (1fr, auto), column-gutter: 5mm, sheet.foot, pages))
    // Not seen: by it whoever sets the sheet counts its sides.
    [#metadata(none) <side>]
  },
)
#set text(font: "Atkinson Hyperlegible", size: base, lang: sheet.language, fill: ink, number-width: "tabular", hyphenate: false)
#set par(leading: 0.52em, spacing: 0.8em)
#show heading: set block(above: 1.15em, below: 0.6em, sticky: true)
#show heading: set par(leading: 0.35em)
#show heading.where(level: 1): set text(size: 1.9em)
#show heading.where(level: 2): set text(size: 1.22em)
#show heading.where(level: 3): set text(size: 1.05em)
#set table.cell(breakable: false)

// The first of some sizes at which words stay within their room, and no single word runs over its width.
#let fitting(words, sizes, room) = {
  let set-at(size, it) = { set text(size: size); strong(par(leading: 0.35em, it)) }
  let fits(size) = (
    measure(width: room.width, set-at(size, words)).height <= room.height
      and words.split(" ").all(word => measure(set-at(size, word)).width <= room.width)
  )
  let found = sizes.find(fits)
  if found == none { sizes.last() } else { found }
}

#let picture(it) = image(bytes(it.svg), format: "svg", alt: it.alt, width: it.width * 1mm)

// Signs before a line take no more height than its capitals, so that they stand level with its words.
#let before(sign, width) = box(width: width, height: 0.67em, place(center + horizon, sign))
#let tickbox = before(rect(width: 0.95em, height: 0.95em, stroke: 0.9pt + ink, radius: 0.6pt), 0.95em)

#let cell(it) = if type(it) == str { it } else if "svg" in it { picture(it) } else if "tick" in it { tickbox } else {
  set text(size: if it.at("isLarge", default: false) { 1.25em } else { 1em })
  if it.at("strong", default: false) { strong(it.text) } else { it.text }
  set text(size: if it.at("isLarge", default: false) { 0.8em } else { 1em })
  if "note" in it { linebreak() + text(size: 0.82em, it.note) }
}

// As high as asked for, and higher where its words need it: a row to write in never cuts a long word off.
#let raised(it, height) = grid(columns: (0pt, 1fr), align: horizon, box(height: height), it)

#let facts(pairs) = for pair in pairs {
  block(spacing: 0.55em)[#text(size: 0.82em, pair.at(0) + ": ")#strong(pair.at(1))]
}

#let name(it) = {
  heading(level: 1, it.text)
  if "about" in it { block(above: 0.6em, text(size: 1.05em, it.about)) }
}

// Word over mark, the mark as large as its letters allow: few are wider than three quarters of their height.
#let marked(word, mark, width, most) = {
  let size = calc.min(most, width / (0.75 * mark.clusters().len()))
  align(center, {
    block(below: size * 0.22, text(size: calc.max(9pt, size * 0.3), word))
    block(above: size * 0.22, strong(text(size: size, top-edge: "cap-height", bottom-edge: "baseline", mark)))
  })
}

#let head(it) = if it.facts.len() == 0 and "mark" not in it { block(width: 100%, below: 1em, inset: (bottom: 2mm), stroke: (bottom: rule), name(it)) } else {
  let sides = if it.facts.len() == 0 { (1fr,) } else { (3fr, 2fr) }
  let columns = if "mark" in it { (26mm, ..sides) } else { sides }
  block(width: 100%, stroke: rule, inset: 0pt, below: 0.8em, grid(
    columns: columns,
    stroke: (x, y) => if x > 0 { (left: rule) },
    inset: 3mm,
    ..if "mark" in it { (align(horizon, marked(it.mark.at(0), it.mark.at(1), 20mm, 40pt)),) },
    align(horizon, name(it)),
    ..if it.facts.len() > 0 { (align(horizon, facts(it.facts)),) },
  ))
}

#let sign(it) = {
  let room = 62mm
  block(width: 100%, stroke: 1.2pt + ink, below: 8mm, grid(
    columns: (70mm, 1fr),
    stroke: (x, y) => if x > 0 { (left: 1.2pt + ink) },
    inset: 4mm,
    align(horizon, marked(it.word, it.mark, 62mm, 150pt)),
    align(horizon, layout(size => {
      let sizes = (72pt, 64pt, 56pt, 50pt, 44pt, 38pt, 32pt, 26pt)
      show heading: set text(size: fitting(it.text, sizes, (width: size.width, height: room - 14mm)))
      heading(level: 1, it.text)
      block(above: 6mm, text(size: 24pt, it.about))
    })),
  ))
}

#let dot = before(circle(radius: 0.14em, fill: ink), 0.4em)

#let triangle = box(baseline: 12%, {
  place(dx: 4.9pt, dy: 2.3pt, text(size: 8pt, weight: "bold", "!"))
  polygon(stroke: 1pt + ink, (0pt, 10.5pt), (12pt, 10.5pt), (6pt, 0pt))
})

#let numbered(n) = before(circle(radius: 0.63em, stroke: rule, inset: 0pt, align(center + horizon, text(size: if n < 10 { 0.88em } else { 0.76em }, strong(str(n))))), 1.3em)

#let lay(it) = {
  if it.block == "title" { head(it) }
  else if it.block == "sign" { sign(it) }
  else if it.block == "heading" { heading(level: it.level, it.text) }
  else if it.block == "text" {
    let tone = it.at("tone", default: "plain")
    let tones = (
      plain: it.text,
      small: text(size: 0.82em, it.text),
      large: text(size: 1.3em, it.text),
      strong: strong(it.text),
      headline: text(size: 1.5em, strong(it.text)),
    )
    block(tones.at(tone))
  }
  else if it.block == "list" { list(marker: dot, body-indent: 0.6em, spacing: 0.6em, ..it.items) }
  else if it.block == "steps" {
    let numbers = it.at("numbers", default: range(1, it.items.len() + 1))
    enum(numbering: numbered, body-indent: 0.55em, spacing: 0.72em, number-align: start + top, ..it.items.zip(numbers).map(((words, n)) => enum.item(n, words)))
  }
  else if it.block == "ticks" { list(marker: tickbox, body-indent: 0.7em, spacing: 0.75em, ..it.items) }
  else if it.block == "care" {
    block(width: 100%, stroke: (top: 1.2pt + ink, bottom: 1.2pt + ink), inset: (y: 2.5mm, x: 1mm), breakable: false, {
      pdf.artifact(triangle) + h(0.5em) + strong(upper(it.word))
      list(marker: dot, body-indent: 0.6em, spacing: 0.6em, ..it.items)
    })
  }
  else if it.block == "table" {
    let isSmall = it.at("size", default: "usual") == "small"
    let inset = if isSmall { 1.2mm } else { 1.6mm }
    set text(size: if isSmall { 0.84em } else { 1em })
    table(
      columns: it.widths.map(w => if w == 0 { auto } else { w * 1fr }),
      align: (x, y) => {
        let named = it.at("align", default: ())
        let side = if x < named.len() { (left: left, right: right, center: center).at(named.at(x)) } else { left }
        side + horizon
      },
      inset: (x: 2mm, y: inset),
      stroke: (x, y) => (top: if y == 0 { 1pt + ink } else if y == 1 { rule } else { thin }, bottom: 1pt + ink, left: thin, right: thin),
      table.header(..it.head.map(h => table.cell(fill: shade, strong(h)))),
      ..it.rows.map(row => row.enumerate().map(((n, each)) => if n == 0 and "rowHeight" in it { raised(cell(each), it.rowHeight * 1mm - 2 * inset) } else { cell(each) })).flatten(),
    )
  }
  else if it.block == "figure" {
    // A picture keeps the size that its scale is true for; only one that is wider than its room gives way.
    let drawn = layout(size => picture((..it, width: calc.min(it.width, size.width / 1mm))))
    block(breakable: false, width: 100%, {
      if it.at("isCentred", default: false) { align(center, drawn) } else { drawn }
      if "caption" in it { block(above: 0.4em, text(size: 0.82em, it.caption)) }
    })
  }
  else if it.block == "columns" { grid(columns: it.shares.map(s => s * 1fr), column-gutter: 5mm, ..it.columns.map(blocks => blocks.map(lay).join())) }
  else if it.block == "together" { block(breakable: false, width: 100%, above: 1.3em, it.blocks.map(lay).join()) }
  else if it.block == "tags" {
    let (width, height) = (it.width * 1mm, it.height * 1mm)
    let inner = (width: width - 6mm, height: height - 6mm)
    let made(blocks, size) = block(width: inner.width, { set text(size: size * base); set par(spacing: 0.65em); blocks.map(lay).join() })
    layout(size => grid(
      columns: calc.max(1, calc.floor((size.width + 0.1mm) / width)) * (width,),
      rows: height,
      stroke: (dash: "dashed", paint: ink, thickness: 0.5pt),
      inset: 3mm,
      // Long words make the type of their own tag smaller: nothing is cut off.
      ..it.tags.map(blocks => {
        let sizes = (1, 0.94, 0.88, 0.82, 0.76, 0.7, 0.64, 0.58, 0.52)
        let found = sizes.find(size => measure(width: inner.width, made(blocks, size)).height <= inner.height)
        grid.cell(breakable: false, made(blocks, if found == none { sizes.last() } else { found }))
      }),
    ))
  }
  else if it.block == "slip" {
    let strips = it.strips.map(strip => { set text(size: 1.1em, lang: strip.language); strip.blocks.map(lay).join() })
    let adult = grid.cell(rowspan: strips.len(), it.adult.map(lay).join())
    block(breakable: false, width: 100%, above: 1.3em, grid(
      columns: (1fr, 1fr),
      stroke: (dash: "dashed", paint: ink, thickness: 0.5pt),
      inset: 3mm,
      strips.first(), adult, ..strips.slice(1),
    ))
  }
  else if it.block == "line" { grid(columns: (auto, 1fr), column-gutter: 3mm, it.name, box(width: 100%, height: 1em, stroke: (bottom: 0.6pt + ink))) }
  else if it.block == "page-break" { pagebreak(weak: true) }
  else if it.block == "space" { v(it.millimetres * 1mm) }
}

#sheet.blocks.map(lay).join()
`;
