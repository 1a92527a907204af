/** The look on a screen: a drawing office's paper and ink, one blue for what decided; a blueprint where the reader prefers the dark. */
export const SCREEN_CSS = `
:root {
  --paper: #f8f5ed; --sheet: #fdfbf6; --ink: #1b1d22; --soft: #565a63; --rule: #1b1d22; --hair: #b9b4a6; --dye: #1f3f9e; --note: #f0ebdd;
  --face: "Bahnschrift", "DIN Alternate", "Segoe UI", system-ui, -apple-system, "Liberation Sans", sans-serif;
}
@media (prefers-color-scheme: dark) {
  :root { --paper: #0c1a33; --sheet: #10213f; --ink: #e4ecf8; --soft: #a9bbd8; --rule: #a9c0e6; --hair: #3b5480; --dye: #8fb8ff; --note: #16294c; }
}
* { box-sizing: border-box }
html { background: var(--paper); color: var(--ink); font: 100%/1.45 var(--face); font-variant-numeric: tabular-nums lining-nums; -webkit-text-size-adjust: 100% }
body { margin: 0 auto; max-width: 76rem; padding: .75rem }
h1, h2, h3 { font-weight: 600; line-height: 1.2; margin: 0 0 .5rem; text-wrap: balance }
h1 { font-size: clamp(1.35rem, 4.2vw, 1.9rem); margin: 1.1rem 0 1rem }
h2 { font-size: 1.1rem } h3 { font-size: 1rem }
p, ul, ol, dl { margin: 0 0 .6rem }
ul, ol { padding-left: 1.25rem } li { margin-bottom: .3rem }
a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: .18em }
a:focus-visible, button:focus-visible, input:focus-visible, select:focus-visible, summary:focus-visible { outline: 2px solid var(--dye); outline-offset: 2px }
.small { color: var(--soft); font-size: .875rem } .lead { font-size: 1.1rem; max-width: 40em }
.on-paper { display: none }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap }
code { font-family: ui-monospace, "SF Mono", "Cascadia Mono", "Liberation Mono", monospace; font-size: .92em; overflow-wrap: anywhere }

.head { align-items: end; border-bottom: 3px double var(--rule); display: flex; flex-wrap: wrap; gap: .4rem 1.5rem; justify-content: space-between }
.head .name { font-weight: 600; letter-spacing: .02em; padding: .45rem 0; text-decoration: none }
.head nav { display: flex; flex-wrap: wrap; gap: 0 clamp(.75rem, 2.5vw, 1.2rem) }
@media (max-width: 30rem) { .head nav { font-size: .9375rem; letter-spacing: -.01em } }
.head nav a { padding: .45rem 0; text-decoration: none }
.head nav a:hover { text-decoration: underline }
.head nav a[aria-current] { border-bottom: 3px solid var(--ink); font-weight: 600; margin-bottom: -3px }
.foot { border-top: 1px solid var(--hair); margin-top: 2.5rem; padding-top: .75rem }
.key { align-items: center; display: flex; flex-wrap: wrap; gap: .5rem .75rem } .key p { color: var(--soft); font-size: .875rem; margin: 0 }

.questions { display: grid; gap: .75rem; grid-template-columns: repeat(auto-fit, minmax(min(15rem, 46%), 1fr)); list-style: none; margin-top: 1.5rem; padding: 0 }
.questions li { margin: 0 }
.questions a { background: var(--sheet); border: 1.5px solid var(--rule); display: block; height: 100%; padding: .9rem 1rem; text-decoration: none }
.questions a:hover { background: var(--note) }
.figure-of { display: block; height: 7.5rem; margin: .25rem 0 1rem } .figure-of path { fill: none; stroke: var(--ink); stroke-linejoin: round } .figure-of .heavy { stroke-width: 1.6 } .figure-of .thin { stroke-width: .7 } .figure-of .centre { stroke-dasharray: 9 2.5 1.5 2.5; stroke-width: .7 } .figure-of .dye { stroke: var(--dye); stroke-width: 1.6 }
.questions strong { display: block; font-size: 1.15rem; margin-bottom: .25rem } .questions span { color: var(--soft) }

.counter { display: grid; gap: 1.5rem 2.5rem; grid-template-columns: minmax(0, 1fr) }
.counter > form:only-child { max-width: 46rem }
@media (min-width: 62rem) {
  .counter:has(.answer) { grid-template-columns: minmax(0, 25rem) minmax(0, 1fr) }
  .counter:has(.answer) > form { grid-column: 1; grid-row: 1 } .answer { grid-column: 2; grid-row: 1 }
}
fieldset { border: 0; margin: 0; min-width: 0; padding: 0 } legend { padding: 0 }
.field { border-top: 1px solid var(--hair); padding: .7rem 0 .8rem }
.field > label:not(.tick), .field > legend { display: block; font-weight: 600; margin-bottom: .25rem; width: 100% }
.field > legend { float: left } .field > legend + * { clear: both }
.field .small { margin-bottom: .4rem } .field .hint { margin: .35rem 0 0 }
.where > legend { font-weight: 600; margin-bottom: .25rem } .where .field { border: 0; padding-top: .2rem }
.engines { display: flex; flex-wrap: wrap; gap: .25rem 1rem; margin: 0 0 .25rem } .engines b { border-bottom: 3px solid var(--ink) }
input, select, button { background: var(--sheet); border: 1.5px solid var(--rule); border-radius: 0; color: var(--ink); font: inherit; font-variant-numeric: inherit; max-width: 100%; min-height: 2.6rem; padding: .35rem .6rem }
select { width: 100% } input[type=radio], input[type=checkbox] { accent-color: var(--dye); flex: none; height: 1.15rem; margin: 0; min-height: 0; width: 1.15rem }
.names input { width: 100% }
.row { align-items: end; display: flex; flex-wrap: wrap; gap: .5rem .9rem } .row select { width: auto } .names > .field { border: 0; flex: 1 1 12rem; padding-bottom: 0 } .names { border-top: 1px solid var(--hair) }
.figures { align-items: center } input.figure { width: 10rem }
.station span { color: var(--soft); display: block; font-size: .875rem }
.tick { align-items: flex-start; display: inline-flex; gap: .45rem; line-height: 1.3; min-height: 2rem; padding-top: .4rem } .tick input { margin-top: .08rem }
.choices { display: flex; flex-wrap: wrap; gap: 0 1.25rem; margin: 0 }
.more { border-top: 1px solid var(--hair) } .more > summary { font-weight: 600; padding: .7rem 0 }
.buttons { border-top: 1px solid var(--hair); margin-top: .8rem; padding-top: 1rem }
button { cursor: pointer; padding: .35rem 1rem } button.main { background: var(--ink); color: var(--paper); font-weight: 600 } button:hover { text-decoration: underline }
summary { cursor: pointer }
.faults, .faulty { border-left: 4px solid var(--ink); padding-left: .8rem } .faults { background: var(--note); border: 1.5px solid var(--rule); border-left-width: 4px; margin-bottom: 1rem; padding: .6rem .8rem } .faults p:last-child { margin: 0 }
.faults ul { margin: .3rem 0 0 } .fault { font-weight: 600; margin: .4rem 0 0 } [aria-invalid] { border-style: dashed; border-width: 2px }
`
