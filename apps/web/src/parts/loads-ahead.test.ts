import { describe, expect, it } from 'vitest';
import { type Load, LoadsAhead } from './loads-ahead.ts';

/** Pages by name, each with what it brings along. */
function ahead(brings: Readonly<Record<string, readonly string[]>>, ...there: readonly string[]) {
  const loads = new LoadsAhead();
  const named = new Map<string, Load>();
  const add = (name: string) => {
    const load: Load = async () => {
      const came = loads.begin(load);
      for (const brought of brings[name] ?? []) add(brought);
      came();
    };
    named.set(name, load);
    loads.add(load);
  };
  for (const name of there) add(name);
  const nameOf = (load: Load) => [...named].find(([, other]) => other === load)![0];
  const loadOf = (name: string) => named.get(name)!;
  return { loads, nameOf, loadOf };
}

/** Everything, in the order in which it comes; what is likely to be asked for soon is starred. */
async function order({ loads, nameOf }: ReturnType<typeof ahead>): Promise<string[]> {
  const came: string[] = [];
  for (let next = loads.next(); next !== null; next = loads.next()) {
    came.push(`${nameOf(next.load)}${next.soon ? '*' : ''}`);
    await next.load();
  }
  return came;
}

describe('what is loaded ahead', () => {
  it('comes in the order in which it was brought along', async () => {
    expect(await order(ahead({ work: ['a job'] }, 'work', 'days'))).toEqual(['work', 'days', 'a job']);
  });

  it('begins with what is to come first, and leaves what that brings to its turn', async () => {
    const all = ahead({ days: ['a day'] }, 'work', 'days', 'go');
    all.loads.first([all.loadOf('days')]);
    expect(await order(all)).toEqual(['days*', 'work', 'go', 'a day']);
  });

  it('goes on with what the page shown can open, and with what that can open in turn, no further', async () => {
    const all = ahead({ boat: ['masts'], masts: ['a mast'], 'a mast': ['its card'] }, 'boat', 'days');
    await all.loadOf('boat')();
    all.loads.shown(all.loadOf('boat'));
    expect(await order(all)).toEqual(['masts*', 'a mast*', 'days', 'its card']);
  });

  it('goes on with what a page can open that was loaded before it was shown', async () => {
    const all = ahead({ boat: ['masts'], masts: ['a mast'] }, 'boat', 'days');
    await all.loadOf('boat')();
    await all.loadOf('masts')();
    all.loads.shown(all.loadOf('boat'));
    expect(await order(all)).toEqual(['a mast*', 'days']);
  });
});
