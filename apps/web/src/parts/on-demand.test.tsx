import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { loadTheRest, onDemand, onDemandWithLoad } from './on-demand.tsx';

const sheet = async () => ({ default: () => createElement('p', null, 'the sheet') });
const shown = (component: Parameters<typeof createElement>[0]) => renderToStaticMarkup(createElement(component));

describe('a component loaded on demand', () => {
  it('leaves its place to what stands there meanwhile when it is shown before it is there', () => {
    expect(shown(onDemand(sheet, 'not yet'))).toBe('not yet');
  });

  it('is shown in the same breath once it has been loaded', async () => {
    const { Component, load } = onDemandWithLoad(sheet);
    await load();
    expect(shown(Component)).toBe('<p>the sheet</p>');
  });

  it('is loaded once, and with the rest where nobody asked for it', async () => {
    let times = 0;
    const component = onDemand(() => {
      times++;
      return sheet();
    });
    await loadTheRest();
    await loadTheRest();
    expect(times).toBe(1);
    expect(shown(component)).toBe('<p>the sheet</p>');
  });

  it('is loaded in the order in which they were brought along', async () => {
    const order: string[] = [];
    const named = (name: string) => () => {
      order.push(name);
      return sheet();
    };
    onDemand(async () => {
      order.push('a page');
      onDemand(named('its sheet'));
      return sheet();
    });
    onDemand(named('the other page'));
    await loadTheRest();
    expect(order).toEqual(['a page', 'the other page', 'its sheet']);
  });

  it('is fetched again where the first time failed', async () => {
    let times = 0;
    const { Component, load } = onDemandWithLoad(() => {
      times++;
      return times === 1 ? Promise.reject(new Error('no network')) : sheet();
    });
    await expect(load()).rejects.toThrow('no network');
    await load();
    expect(shown(Component)).toBe('<p>the sheet</p>');
  });
});
