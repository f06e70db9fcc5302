/**
 * The one template that sets every sheet: it reads the blocks of `block.ts` as JSON and lays them out.
 * All words come in as data, so nothing that a file says can be taken for markup. Black and white
 * first; a state is a word and a shape.
 */
export const TYPST_SOURCE = `
#let sheet = json(bytes(sys.inputs.sheet))
#let base = (usual: 10.5pt, large: 13pt, sign: 26pt).at(sheet.size)
#let ink = rgb("#1a2438")
#let rule = 0.6pt + ink

#set document(title: sheet.title, date: none)
#set page(
  paper: sheet.paper,
  flipped: sheet.at("isLandscape", default: false),
  margin: (x: 14mm, top: 13mm, bottom: 16mm),
  footer: context {
    set text(size: 8pt)
    grid(columns: (1fr, auto), sheet.foot, counter(page).display("1 / 1", both: true))
  },
)
#set text(font: "Atkinson Hyperlegible", size: base, lang: sheet.language, fill: ink, number-width: "tabular")
#set par(leading: 0.55em, spacing: 0.8em)
#show heading: set block(above: 1.1em, below: 0.6em, sticky: true)
#show heading.where(level: 1): set text(size: 1.9em)
#show heading.where(level: 2): set text(size: 1.3em)
#show heading.where(level: 3): set text(size: 1.05em)

#let picture(it) = image(bytes(it.svg), format: "svg", alt: it.alt, width: it.width * 1mm)

#let cell(it) = if type(it) == str { it } else if "svg" in it { picture(it) } else {
  set text(size: if it.at("isLarge", default: false) { 1.25em } else { 1em })
  if it.at("strong", default: false) { strong(it.text) } else { it.text }
  set text(size: if it.at("isLarge", default: false) { 0.8em } else { 1em })
  if "note" in it { linebreak() + text(size: 0.82em, it.note) }
}

#let head(it) = block(width: 100%, stroke: rule, inset: 0pt, grid(
  columns: (3fr, 2fr),
  stroke: (x, y) => if x == 1 { (left: rule) },
  inset: 3mm,
  {
    heading(level: 1, it.text)
    if "about" in it { text(size: 1.05em, it.about) }
  },
  align(horizon, for pair in it.facts { block(spacing: 0.55em)[#text(size: 0.82em, pair.at(0) + ": ")#strong(pair.at(1))] }),
))

#let triangle = box(baseline: 15%, polygon(stroke: 1pt + ink, (0pt, 10pt), (11pt, 10pt), (5.5pt, 0pt)))

#let lay(it) = {
  if it.block == "title" { head(it) }
  else if it.block == "heading" { heading(level: it.level, it.text) }
  else if it.block == "text" {
    let tone = it.at("tone", default: "plain")
    block(if tone == "small" { text(size: 0.82em, it.text) } else if tone == "large" { text(size: 1.3em, it.text) } else if tone == "strong" { strong(it.text) } else { it.text })
  }
  else if it.block == "list" { list(..it.items) }
  else if it.block == "steps" { enum(numbering: n => box(circle(radius: 0.62em, stroke: rule, inset: 0pt, align(center + horizon, strong(str(n))))), body-indent: 0.7em, spacing: 0.75em, ..it.items) }
  else if it.block == "ticks" { list(marker: box(width: 0.95em, height: 0.95em, stroke: 1pt + ink, baseline: 15%), body-indent: 0.7em, spacing: 0.75em, ..it.items) }
  else if it.block == "care" {
    block(width: 100%, stroke: (top: 1pt + ink, bottom: 1pt + ink), inset: (y: 2.5mm, x: 1mm), breakable: false, {
      triangle + h(0.5em) + strong(upper(it.word))
      list(..it.items)
    })
  }
  else if it.block == "table" {
    let n = it.widths.len()
    set text(size: if it.at("size", default: "usual") == "small" { 0.84em } else { 1em })
    table(
      columns: it.widths.map(w => if w == 0 { auto } else { w * 1fr }),
      align: (x, y) => {
        let named = it.at("align", default: ())
        let across = if x < named.len() { (left: left, right: right, center: center).at(named.at(x)) } else { left }
        across + horizon
      },
      rows: if "rowHeight" in it { (auto,) + (it.rowHeight * 1mm,) * it.rows.len() } else { auto },
      inset: (x: 2mm, y: if it.at("size", default: "usual") == "small" { 1.2mm } else { 1.6mm }),
      stroke: 0.5pt + ink,
      table.header(..it.head.map(h => table.cell(fill: luma(235), strong(h)))),
      ..it.rows.map(row => row.map(cell)).flatten(),
    )
  }
  else if it.block == "figure" {
    block(breakable: false, { picture(it); if "caption" in it { block(above: 0.4em, text(size: 0.82em, it.caption)) } })
  }
  else if it.block == "columns" { grid(columns: it.shares.map(s => s * 1fr), column-gutter: 5mm, ..it.columns.map(blocks => blocks.map(lay).join())) }
  else if it.block == "together" { block(breakable: false, width: 100%, it.blocks.map(lay).join()) }
  else if it.block == "tags" {
    grid(
      columns: calc.max(1, calc.floor((if sheet.paper == "a4" { 182 } else { 187.9 }) / it.width)) * (it.width * 1mm,),
      stroke: (dash: "dashed", paint: ink, thickness: 0.5pt),
      ..it.tags.map(blocks => block(width: 100%, height: it.height * 1mm, inset: 3mm, clip: false, blocks.map(lay).join())),
    )
  }
  else if it.block == "line" { grid(columns: (auto, 1fr), column-gutter: 3mm, it.name, box(width: 100%, height: 1em, stroke: (bottom: 0.6pt + ink))) }
  else if it.block == "page-break" { pagebreak(weak: true) }
  else if it.block == "space" { v(it.millimetres * 1mm) }
}

#sheet.blocks.map(lay).join()
`;
