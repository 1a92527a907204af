import { ANSWER_CSS } from './answer.ts'
import { ORDER_CSS } from './order.ts'
import { SCREEN_CSS } from './screen.ts'

/** The one style sheet, served as /assets/sheet.css. A text and no file, since workerd has no files to read. */
export const SHEET_CSS = `${SCREEN_CSS}${ANSWER_CSS}${ORDER_CSS}`
