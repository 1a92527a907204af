/** All tables in one place, for the tool that writes migrations and for the test that compares them with a migrated file. */
export { decisions } from './decisions.ts'
export { disclosures } from './disclosures.ts'
export { editions } from './editions.ts'
export { hookEndpoints, receipts } from './endpoints.ts'
export { shopEngines } from './engines.ts'
export { adoptions, shopLimits } from './limits.ts'
export { apiKeys, shops } from './shops.ts'
