import { html } from 'hono/html'

/** What a template gives: text in which everything that was put in has been escaped. */
export type Markup = ReturnType<typeof html>

/** Nothing at all. */
export const NOTHING: Markup = html``

/** A sentence with a capital and a full stop, for words that may lack either. */
export const sentence = (words: string): string => {
  const said = `${words.charAt(0).toUpperCase()}${words.slice(1)}`
  return said === '' || /[.!?]$/.test(said) ? said : `${said}.`
}
