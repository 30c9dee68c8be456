import { describe, expect, it } from 'vitest';
import type { WeatherHour } from '#sky';
import { cureLawOf, cureLaws } from './cure-laws.ts';
import { recoatFigures, recoatWindow } from './recoat-window.ts';

const hour = (air_C: number, humidity_pct = 60): WeatherHour => ({
  rain: false,
  wind_kn: 5,
  air_C,
  surface_C: null,
  humidity_pct,
  basis: 'typed',
});

describe('default cure laws', () => {
  it('each has an id of its own and says where every figure is from', () => {
    expect(new Set(cureLaws.map((product) => product.id)).size).toBe(cureLaws.length);
    for (const product of cureLaws) {
      expect(product.figures.length, product.id).toBeGreaterThan(0);
      for (const figure of product.figures) {
        expect(figure.source, product.id).not.toBe('');
        if (!figure.band) continue;
        const stated = Number.parseFloat(figure.figure.match(/[\d.]+/)![0]);
        expect(stated, figure.figure).toBeGreaterThanOrEqual(figure.band[0]);
        expect(stated, figure.figure).toBeLessThanOrEqual(figure.band[1]);
      }
    }
  });

  it('names what there is when asked for a product there is none of', () => {
    expect(() => cureLawOf('magic')).toThrow(/no product 'magic'; there are: epoxy-fast/);
  });
});

describe('recoat window', () => {
  it('opens and closes by the law of the product', () => {
    // one-pot varnish: 16 h and 48 h at 20 °C; twice as long at 10 °C (handbook materials.recoat.temp: the ten-degree rule)
    expect(recoatWindow('varnish-one-pot', Array(200).fill(hour(20)), 0)).toEqual({
      kind: 'window',
      earliest: 16 * 60,
      latest: 48 * 60,
    });
    expect(recoatWindow('varnish-one-pot', Array(200).fill(hour(10)), 60)).toEqual({
      kind: 'window',
      earliest: 60 + 32 * 60,
      latest: 60 + 96 * 60,
    });
  });

  it('says what is not known', () => {
    expect(recoatWindow('varnish-one-pot', Array(24).fill(hour(20)), 0).kind).toBe('open window');
    expect(recoatWindow('antifouling', Array(24).fill(hour(20)), 0).kind).toBe('open window');
    expect(recoatWindow('varnish-one-pot', Array(24).fill(hour(2)), 0).kind).toBe('no window');
  });

  it('never closes before it opens', () => {
    for (const { product, latest_h } of recoatFigures) {
      const { law } = cureLawOf(product);
      expect('atReference_min' in law && latest_h !== null && latest_h * 60 > law.atReference_min, product).toBe(true);
    }
  });
});
