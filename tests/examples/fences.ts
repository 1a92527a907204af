/** What stands in the boxes of a page written in Markdown. */
export interface Fence {
  readonly language: string
  readonly text: string
  /** The box that follows with nothing but prose between, where it holds words to be found in an answer. */
  readonly answer?: readonly string[]
}

/** The boxes of a page in their order; a box of plain text belongs to the command before it. */
export function fencesOf(page: string): readonly Fence[] {
  const boxes = [...page.matchAll(/^```(\w*)\n([\s\S]*?)^```$/gm)].map(([, language = '', text = '']) => ({ language, text }))
  return boxes.flatMap((box, i): Fence[] => {
    if (box.language === 'text') return []
    const next = boxes[i + 1]
    return [next?.language === 'text' ? { ...box, answer: linesOf(next.text) } : box]
  })
}

/** The lines of a box that say something; a comment at the end of a command belongs to the shell. */
export const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')

/** The links of a page that lead into the checkout. */
export const linksOf = (page: string): readonly string[] =>
  [...page.matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, path = '']) => path).filter((path) => !/^[a-z]+:/.test(path))
