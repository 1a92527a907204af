import { describe, expect, it } from 'vitest';
import { probabilityBetween, probabilityWithin } from '../../src/quantity/conformance.ts';

// JCGM 106:2012, Evaluation of measurement data: the role of measurement uncertainty in conformity assessment.
// The examples and their conformance probabilities are quoted from memory; the document was not at hand.
describe('conformance probability, examples of JCGM 106:2012', () => {
  it('breakdown voltage: upper limit −5.40, reading −5.47, u 0.05 gives 0.92', () => {
    expect(probabilityWithin({ value: -5.47, u: 0.05 }, -5.4, 'at-most').toFixed(2)).toBe('0.92');
  });
  it('burst strength: lower limit 490, reading 509.7, u 8.6 gives 0.99', () => {
    expect(probabilityWithin({ value: 509.7, u: 8.6 }, 490, 'at-least').toFixed(2)).toBe('0.99');
  });
  it('SAE 40 oil: 12.5 to 16.3, reading 13.6, u 1.8 gives 0.66', () => {
    expect(probabilityBetween({ value: 13.6, u: 1.8 }, 12.5, 16.3).toFixed(2)).toBe('0.66');
  });
});

describe('conformance probability', () => {
  it('is one half on the limit, and the two sides make one', () => {
    expect(probabilityWithin({ value: 3, u: 0.2 }, 3, 'at-most')).toBe(0.5);
    const x = { value: 2.7, u: 0.2 };
    expect(probabilityWithin(x, 3, 'at-most') + probabilityWithin(x, 3, 'at-least')).toBeCloseTo(1, 15);
  });
  it('is certain for an exact value, on the limit too', () => {
    const x = { value: 3, u: 0 };
    expect([probabilityWithin(x, 3, 'at-most'), probabilityWithin(x, 3, 'at-least'), probabilityWithin(x, 2.9, 'at-most')]).toEqual([1, 1, 0]);
    expect([probabilityBetween(x, 3, 3), probabilityBetween(x, 1, 2)]).toEqual([1, 0]);
  });
  it('gives no number where it has none', () => {
    expect(probabilityWithin({ value: Number.NaN, u: 1 }, 1, 'at-most')).toBeNaN();
    expect(probabilityWithin({ value: 1, u: -1 }, 1, 'at-most')).toBeNaN();
    expect(probabilityBetween({ value: 1, u: 1 }, 2, 1)).toBeNaN();
  });
});
