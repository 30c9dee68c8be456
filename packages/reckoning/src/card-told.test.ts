import { describe, expect, it } from 'vitest';
import { restCharge } from '#battery';
import type { Book, CircuitRecord } from '#boat-book';
import { cardTold, onAtAnchor } from './card-told.ts';
import { smallBook } from './testing/small-book.ts';

const now = Date.parse('2026-06-20T16:00:00Z');
const circuit = (name: string, uses: CircuitRecord['uses'], watts = 3): CircuitRecord => ({
  name,
  battery: 'house',
  watts,
  duty_pct: 100,
  uses,
  fuse_A: null,
  fuseAt_m: null,
  conductor: null,
  needs: 'other',
  zone: null,
});
const book = (parts: Partial<Book> = {}): Book =>
  smallBook({
    batteries: {
      house: {
        name: 'House battery',
        zone: null,
        chemistry: 'agm',
        nominal_Ah: 20,
        nominal_V: 12,
        made: null,
        floor_pct: 60,
        meter: '',
        note: '',
      },
    },
    ...parts,
  });

describe('the card of a battery', () => {
  it('counts as the load at anchor what is on while everyone sleeps', () => {
    const names = onAtAnchor([
      circuit('always', { kind: 'always' }),
      circuit('anchor light', { kind: 'sun', from: 'sunset', to: 'sunrise' }),
      circuit('cabin light', { kind: 'sun', from: 'sunset', to: '22:30' }),
      circuit('night watch', { kind: 'clock', from: '22:00', to: '06:00' }),
      circuit('fridge by day', { kind: 'sun', from: 'sunrise', to: 'sunset' }),
      circuit('sounder', { kind: 'hours', hours_a_day: 4 }),
    ]).map(({ name }) => name);
    expect(names).toEqual(['always', 'anchor light', 'night watch']);
  });

  it('reads rested volts as the tables do, at four temperatures, and says where each comes from', () => {
    const told = cardTold(book(), 'house', now)!;
    expect(told.temperatures_C).toHaveLength(4);
    expect(told.tables).toHaveLength(1);
    const row = told.tables[0]!.rows.find(({ volts }) => volts === '12.30')!;
    told.temperatures_C.forEach((heat, column) => {
      expect(row.figures[column]!.likely).toBe(String(Math.round(restCharge('agm', 12.3, heat).likely)));
    });
    expect(told.use.join(' ')).toMatch(/no table under load/);
    expect(told.sources.join(' ')).toMatch(/from memory.*our assumption/);
    expect(told.cautions.join(' ')).toMatch(/hydrogen.*terminals/);
  });

  it('marks what lies under this battery’s own floor, and gives the floor in volts', () => {
    const { tables, floor_pct } = cardTold(book(), 'house', now)!;
    expect(floor_pct).toBe(60);
    const figures = tables[0]!.rows.flatMap((row) => row.figures).filter(({ likely }) => Number(likely) >= 0);
    expect(figures.filter(({ likely }) => Number(likely) < 60).every(({ underFloor }) => underFloor)).toBe(true);
    expect(figures.filter(({ likely }) => Number(likely) > 60).some(({ underFloor }) => underFloor)).toBe(false);
    const heat = 2;
    const floor_V = Number(tables[0]!.floor_V[heat]);
    const under = tables[0]!.rows.find((row) => row.figures[heat]!.underFloor)!;
    expect(Number(under.volts)).toBeLessThanOrEqual(floor_V + 0.005);
  });

  it('has a second table under load, in which the same volts mean more', () => {
    const lit = book({
      circuits: { light: circuit('Anchor light', { kind: 'sun', from: 'sunset', to: 'sunrise' }, 12) },
    });
    const { tables } = cardTold(lit, 'house', now)!;
    expect(tables.map(({ title }) => title)).toEqual([
      'All off',
      expect.stringMatching(/^With Anchor light on, 0\.9\d A/),
    ]);
    const at = (table: number) => tables[table]!.rows.find(({ volts }) => volts === '12.20')!.figures[0]!.likely;
    expect(Number(at(1))).toBeGreaterThan(Number(at(0)));
  });

  it('says that LiFePO4 tells little, and nothing of a battery that is not there', () => {
    const lithium = book({
      batteries: { house: { ...book().batteries.house!, chemistry: 'lifepo4', floor_pct: 20 } },
    });
    expect(cardTold(lithium, 'house', now)!.use.join(' ')).toMatch(/hardly move/);
    expect(cardTold(lithium, 'house', now)!.cautions[0]).toMatch(/below 0 °C/);
    expect(cardTold(book(), 'gone', now)).toBeNull();
  });
});
