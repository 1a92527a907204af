/** Answers: verdicts told apart by word and mark, hazards in a box, the chain as a hand calculation. */
export const ANSWER_CSS = `
.hazards { background: var(--note); border: 3px solid var(--ink); margin: 0 0 1.25rem; padding: .6rem .9rem } .hazards h2 { border: 0; font-size: 1rem; letter-spacing: .08em; margin: 0 0 .3rem; padding: 0; text-transform: uppercase } .hazards ul { margin: 0 }
.verdict { display: grid; gap: 0 1rem; grid-template-columns: 2.25rem minmax(0, 1fr); margin-bottom: 1.5rem }
.says { font-size: 1.15rem; font-weight: 600; line-height: 1.25; margin: .05rem 0 .5rem; text-wrap: balance } .first .says { font-size: clamp(1.4rem, 4.5vw, 2rem); line-height: 1.15 }
.mark { display: block; height: 2.25rem; width: 2.25rem } .mark path { fill: none; stroke: var(--ink); stroke-width: 1.5; vector-effect: non-scaling-stroke } .mark .heavy { stroke-width: 5 } .mark .dashed { stroke-dasharray: 6 4 }
.must { margin: .4rem 0 .1rem }
.next { border: 1.5px dashed var(--rule); margin-bottom: 1.25rem; padding: .7rem .9rem .4rem } .next p { margin: 0 0 .15rem } .with { white-space: nowrap; font-style: italic }
.record { align-items: center; border-top: 1px solid var(--hair); display: flex; flex-wrap: wrap; gap: .5rem 1rem; margin-top: 1rem; padding-top: .75rem }
.answer-said { white-space: normal }
.chain > summary, .notes > summary { color: var(--soft); padding: .3rem 0 }
.calc { border-top: 1px solid var(--rule); counter-reset: step; list-style: none; margin: .3rem 0 .6rem; padding: 0 }
.step { border-bottom: 1px solid var(--hair); counter-increment: step; display: grid; gap: 0 1rem; grid-template-columns: minmax(0, 1fr); margin: 0; padding: .55rem 0 }
@media (min-width: 48rem) { .step { grid-template-columns: minmax(0, 1fr) 12rem } .margin { border-left: 1px solid var(--hair) } }
.worked { counter-reset: none; padding-left: 2rem; position: relative } .worked::before { color: var(--soft); content: counter(step); left: 0; position: absolute; text-align: right; width: 1.25rem }
.worked p { margin: 0 0 .15rem } .rule b { margin-right: .35rem }
.line { margin: .3rem 0 .3rem .9rem } .line .op { color: var(--soft) } .answer-said { font-weight: 600 } .decided .found { color: var(--dye); font-weight: 600 }
.answer-said::before { content: "→ " }
.margin { color: var(--soft); font-size: .8125rem; list-style: none; margin: .3rem 0 0; padding: 0 0 0 .7rem } .margin li { margin: 0 0 .2rem }
.strip { display: block; height: 42px; max-width: 100%; width: 240px } .strip path { fill: none; stroke: var(--ink) } .strip .thin { stroke-width: 1 } .strip .limit { stroke-width: 3 } .strip .spread { stroke-width: 1.5 } .strip .reading { fill: var(--ink) } .decided .strip .spread { stroke: var(--dye) } .decided .strip .reading { fill: var(--dye) }
`
