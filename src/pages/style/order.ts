/** The work order, on screen and on paper: a sheet's frame, a title block, ruled tables with room to write. */
export const ORDER_CSS = `
.order { background: var(--sheet); border: 2px solid var(--rule); outline: 1px solid var(--hair); outline-offset: 5px; margin: 1.25rem .4rem; padding: .9rem }
.order h1 { margin: 0 0 .5rem } .order h2:not(#hazards) { border-bottom: 1.5px solid var(--rule); margin: 1.25rem 0 .4rem; padding-bottom: .15rem }
.running { border-collapse: collapse; width: 100% } .running > thead, .running > tfoot { display: none } .running > tbody > tr > td { padding: 0 }
.title-block dl { border: 1.5px solid var(--rule); display: flex; flex-wrap: wrap; margin: 0 0 .6rem }
.title-block dl > div { border: .5px solid var(--hair); flex: 1 1 7.5rem; padding: .2rem .5rem } .title-block dl > .wide { flex-basis: 100% }
.ruled .figure { white-space: nowrap } .title-block dt { color: var(--soft); font-size: .75rem } .title-block dd { margin: 0; overflow-wrap: anywhere } .hash { font-family: ui-monospace, "SF Mono", "Liberation Mono", monospace; font-size: .8125rem }
.ruled { border-collapse: collapse; font-size: .9375rem; width: 100% } .ruled th, .ruled td { border: 1px solid var(--hair); padding: .3rem .45rem; text-align: left; vertical-align: top } .ruled thead th { border-bottom: 1.5px solid var(--rule); font-size: .8125rem; font-weight: 600 }
.ruled .stage th { background: var(--note) } .ruled td:has(> .write) { min-width: 4.5rem; width: 14% } .verdicts td:last-child { width: 9rem }
.verdicts .mark { height: 1.4rem; width: 1.4rem } .verdicts td:first-child { width: 2.4rem } .verdicts td:last-child { width: 9rem }
.sign p { border-bottom: 1px solid var(--rule); display: flex; justify-content: space-between; gap: 2rem; margin: 2.4rem 0 0; padding-bottom: .15rem } .sign span:last-child { width: 9rem }
@media (max-width: 40rem) {
  .ruled, .ruled tbody, .ruled tr, .ruled td, .ruled th { display: block; width: auto } .ruled thead { display: none } .ruled tr { border-bottom: 1px solid var(--rule); padding: .35rem 0 } .ruled th, .ruled td, .verdicts td:first-child, .verdicts td:last-child { border: 0; padding: .1rem 0; width: auto } .ruled td:has(> .write) { display: none }
}
@page { size: A4; margin: 8mm 8mm 14mm; @bottom-left { content: "witnessmark"; font: 8pt sans-serif } @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif } }
@media print {
  :root { --paper: #fff; --sheet: #fff; --ink: #000; --soft: #333; --rule: #000; --hair: #888; --dye: #000; --note: #fff }
  html { font-size: 10pt } body { max-width: none; padding: 0 }
  .head, .foot, .sheet-form, .record button, .record a { display: none }
  .counter, .counter:has(.answer) { display: block }
  .on-paper { display: block }
  .order::before { border: .6mm solid #000; content: ""; inset: 0; position: fixed }
  .order { border: 0; margin: 0; outline: 0; padding: 0 5mm } .running > thead { display: table-header-group } .running > thead td { font-size: 8pt; padding: 3mm 0 } .running > thead span { border-bottom: 1.5px solid #000; display: block; padding-bottom: 1mm } .running > tfoot { display: table-footer-group } .running > tfoot td { height: 4mm } .running > tbody > tr > td { padding-top: 1mm }
  .order h2:not(#hazards) { break-after: avoid; margin-top: 5mm } .ruled tr, .hazards, header.title-block, .title-block dl > div, .sign, .verdict { break-inside: avoid } .stage { break-after: avoid } .ruled thead { display: table-header-group }
  .ruled { font-size: 9pt } .hazards { border-width: 2pt }
}
`
