import type { Context } from 'hono'
import { readEngine } from '../usecases/engines.ts'
import { readDecision } from '../usecases/read.ts'
import type { Service } from '../usecases/service.ts'
import { trouble } from './layout.ts'
import { orderView } from './order-view.ts'
import { shown } from './reply.ts'
import { shopOfBrowser } from './shop-key.ts'

/** GET /decisions/:id: the work order of one of the shop's own decisions. Another shop's is not there. @throws StoreTrouble */
export async function workOrder(service: Service, c: Context): Promise<Response> {
  const shop = await shopOfBrowser(service, c)
  const id = c.req.param('id') ?? ''
  const here = `/decisions/${encodeURIComponent(id)}`
  if (shop === undefined) {
    return shown(c, 403, {
      title: 'Work order',
      here,
      content: trouble('A work order is the shop’s own', 'Enter the shop’s key below to see it.', 'A key is kept for the working day.'),
    })
  }
  const record = await readDecision(service, shop, id)
  if (record === undefined) {
    return shown(c, 404, {
      title: 'Work order',
      shop,
      here: '/',
      content: trouble(
        'This shop has no decision of that id',
        'It may belong to another shop, or the address is cut short.',
        'Open it from the answer that entered it.',
      ),
    })
  }
  const engine = await readEngine(service, shop, record.engine)
  const content = orderView(service.book, record, engine?.sheet, shop.name)
  return shown(c, 200, { title: `Work order, ${record.job}`, shop, here, content })
}
