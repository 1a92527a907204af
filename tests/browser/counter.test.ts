/** The counter in a real browser with script switched off: what a person at the bench sees, on a phone, in the dark and on paper. */
import type { AddressInfo } from 'node:net'
import { serve, type ServerType } from '@hono/node-server'
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openHouse, type House } from '../http/house.ts'

const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium'
const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

let house: House
let server: ServerType
let browser: Browser
let base: string
/** What the pages complained of or asked others for: a page in order does neither. */
const complaints: string[] = []

beforeAll(async () => {
  house = await openHouse()
  server = serve({ fetch: house.app.fetch, port: 0, hostname: '127.0.0.1' })
  await new Promise((resolve) => server.once('listening', resolve))
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS })
})
afterAll(async () => {
  await browser.close()
  server.close()
  await house.leave()
})
afterEach(() => {
  expect(complaints.splice(0)).toEqual([])
})

async function open(path: string, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ javaScriptEnabled: false, viewport: { width: 1200, height: 900 }, ...options })
  const page = await context.newPage()
  page.on('console', (message) => {
    // A form sent back with its faults is answered 422, which the browser remarks on.
    if (!message.text().includes('status of 422')) complaints.push(message.text())
  })
  page.on('request', (request) => {
    if (!request.url().startsWith(`${base}/`)) complaints.push(`asked for ${request.url()}`)
  })
  await page.goto(base + path)
  return page
}

async function groovedStud(page: Page): Promise<void> {
  await page.getByLabel('Where on the engine?').selectOption('3E')
  await page
    .getByRole('group', { name: /fingernail catch in a groove/ })
    .getByLabel('yes')
    .check()
  await page.getByRole('button', { name: 'Judge it' }).click()
}

describe('a person without script', () => {
  it('comes from the front of the counter to a verdict by links, fields and one button', async () => {
    const page = await open('/')
    await page.getByRole('navigation').getByRole('link', { name: 'Rocker stud' }).click()
    await groovedStud(page)
    expect(await page.locator('.says').first().innerText()).toBe('Replace the rocker stud on 3 exhaust.')
    await page.getByText('How this was worked out').first().click()
    expect(await page.getByText('rocker-stud.groove-condemns').first().isVisible()).toBe(true)
    expect(await page.getByText('Not recorded').isVisible()).toBe(true)
    // What was entered is still in the form.
    expect(
      await page
        .getByRole('group', { name: /fingernail catch in a groove/ })
        .getByLabel('yes')
        .isChecked(),
    ).toBe(true)
  })

  it('finds a fault at its field by the link above the form, and what was typed still there', async () => {
    const page = await open('/stud?engine=QL-6P')
    const depth = page.getByLabel('depth of the groove in the shoulder')
    await depth.fill('12 kg')
    await page.getByLabel('Where on the engine?').selectOption('3E')
    await page.getByRole('button', { name: 'Judge it' }).click()
    await page.getByRole('alert').getByRole('link').click()
    expect(await page.getByText(/is a unit of mass/).isVisible()).toBe(true)
    expect(await depth.inputValue()).toBe('12 kg')
    expect(await depth.getAttribute('aria-invalid')).toBe('true')
  })

  it('gets an answer with the keyboard alone', async () => {
    const page = await open('/stud?engine=QL-6P')
    await page.getByLabel('Where on the engine?').focus()
    await page.keyboard.type('3 exhaust')
    await page
      .getByRole('group', { name: /fingernail catch in a groove/ })
      .getByLabel('leave out')
      .focus()
    await page.keyboard.press('ArrowLeft')
    await page.keyboard.press('ArrowLeft')
    await page.getByRole('button', { name: 'Judge it' }).focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('.says').first().innerText()).toMatch(/rocker stud on 3 exhaust/)
  })
})

describe('with the shop’s key', () => {
  it('enters the decision and sees the work order, and the key stays out of the page', async () => {
    const page = await open('/stud?engine=QL-6P')
    await page.getByLabel('Shop key').fill(house.key)
    await page.getByRole('button', { name: 'Use it' }).click()
    await groovedStud(page)
    await page.getByLabel('Job').fill('QLE-11')
    await page.locator('.answer').getByRole('button', { name: 'Enter it in the ledger' }).click()
    expect(page.url()).toMatch(/\/decisions\/[\w-]+(?:#answer)?$/)
    expect(await page.getByRole('heading', { name: 'Work order' }).isVisible()).toBe(true)
    expect(await page.locator('header.title-block').innerText()).toContain('QLE-11')
    expect(await page.content()).not.toContain(house.key)
  })

  it('on paper: a frame, the job at the head of each page, nothing to click', async () => {
    const page = await open('/stud?engine=QL-6P')
    await page.getByLabel('Shop key').fill(house.key)
    await page.getByRole('button', { name: 'Use it' }).click()
    await groovedStud(page)
    await page.getByLabel('Job').fill('QLE-12')
    await page.locator('.answer').getByRole('button', { name: 'Enter it in the ledger' }).click()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.running > thead').innerText()).toMatch(/QLE-12 · QL-6P · decision \d+ · [0-9a-f]{12}/)
    for (const part of ['.head', '.foot']) expect(await page.locator(part).isVisible()).toBe(false)
    const frame = await page.evaluate(() => {
      const { position, borderTopStyle } = getComputedStyle(document.querySelector('.order') as Element, '::before')
      return [position, borderTopStyle]
    })
    expect(frame).toEqual(['fixed', 'solid'])
  })
})

describe('what it looks like', () => {
  const PAGES = ['/', '/tip?engine=QL-6P', '/stud?engine=QL-8S', '/seal?engine=QL-8S', '/springs?engine=QL-8S']

  it.each(PAGES)('%s fits a phone without scrolling sideways, and its fields can be hit with a thumb', async (path) => {
    const page = await open(path, { viewport: { width: 375, height: 700 } })
    await page.locator('details').evaluateAll((all) => all.forEach((d) => d.setAttribute('open', '')))
    const [wide, low] = await page.evaluate(() => {
      const heights = [...document.querySelectorAll('main select, main button, main input.figure')].map(
        (e) => e.getBoundingClientRect().height,
      )
      return [document.documentElement.scrollWidth, Math.min(Number.POSITIVE_INFINITY, ...heights)]
    })
    expect(wide).toBeLessThanOrEqual(375)
    expect(low).toBeGreaterThanOrEqual(40)
  })

  it('an answer fits a phone with its chain open', async () => {
    const page = await open('/stud?engine=QL-6P', { viewport: { width: 375, height: 700 } })
    await groovedStud(page)
    await page.locator('details').evaluateAll((all) => all.forEach((d) => d.setAttribute('open', '')))
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(375)
  })

  it.each(['light', 'dark'] as const)('in %s, every text stands out from its paper by 4.5 to 1 or more', async (colorScheme) => {
    const page = await open('/stud?engine=QL-6P', { colorScheme })
    await groovedStud(page)
    await page.locator('details').evaluateAll((all) => all.forEach((d) => d.setAttribute('open', '')))
    const faint = await page.evaluate(faintTexts)
    expect(faint).toEqual([])
  })

  it('the dispositions differ by word and by line, and by no colour', async () => {
    const page = await open('/springs?engine=QL-8S')
    for (const [name, card] of [
      ['casting', 'QS-2'],
      ['camshaft', 'H-2'],
      ['springs', 'K-2'],
      ['seals', 'PS-50'],
    ] as const)
      await page.locator(`[name="job:${name}"]`).selectOption(card)
    await page.getByRole('button', { name: 'Judge it' }).click()
    const marks = await page.locator('.verdict').evaluateAll((all) =>
      all.map((v) => {
        const lines = [...v.querySelectorAll('.mark path')]
        return {
          disposition: v.className.split(' ')[1],
          drawn: lines.map((l) => `${l.getAttribute('class')} ${l.getAttribute('d')}`).join('|'),
          ink: lines.map((l) => getComputedStyle(l).stroke),
        }
      }),
    )
    const byDisposition = new Map(marks.map((m) => [m.disposition, m.drawn]))
    expect(byDisposition.size).toBeGreaterThanOrEqual(3)
    expect(new Set(byDisposition.values()).size).toBe(byDisposition.size)
    expect(new Set(marks.flatMap((m) => m.ink)).size).toBe(1)
  })
})

/** Runs in the page: texts whose contrast with what is painted under them is under 4.5 (WCAG 2.2, success criterion 1.4.3; from memory). */
function faintTexts(): string[] {
  const channels = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number)
  const luminance = (colour: string): number => {
    const [r = 0, g = 0, b = 0] = channels(colour)
      .slice(0, 3)
      .map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4))
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  const paper = (element: Element | null): string => {
    for (let e = element; e !== null; e = e.parentElement) {
      const colour = getComputedStyle(e).backgroundColor
      if ((channels(colour)[3] ?? 1) > 0) return colour
    }
    return 'rgb(255,255,255)'
  }
  const faint: string[] = []
  for (const element of document.querySelectorAll('main *, header *, footer *')) {
    const own = [...element.childNodes]
      .filter((n) => n.nodeType === Node.TEXT_NODE)
      .map((n) => n.textContent?.trim() ?? '')
      .join('')
    if (own === '' || element.closest('.unseen, svg') !== null) continue
    const [a, b] = [luminance(getComputedStyle(element).color), luminance(paper(element))]
    const contrast = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)
    if (contrast < 4.5) faint.push(`${own.slice(0, 40)}: ${contrast.toFixed(2)}`)
  }
  return faint
}
