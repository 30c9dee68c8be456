import { expect, test } from 'vitest';
import { also, battery, begun, done, meet, reading } from './testing/devices.ts';

const circuit = {
  name: 'Anchor light',
  watts: 2.5,
  duty_pct: 100,
  uses: { kind: 'sun', from: 'sunset', to: 'sunrise' },
  fuse_A: 3,
  fuseAt_m: 0.15,
  conductor: null,
  needs: 'other',
  zone: null,
} as const;

test('a battery is put in, changed and taken out, and undo brings it back', () => {
  const book = begun();
  const id = done(book.run('addBattery', battery));
  done(book.run('changeBattery', { id, nominal_Ah: 20 }));
  expect(book.view().batteries[id]).toEqual({ ...battery, nominal_Ah: 20 });
  done(book.run('removeBattery', { id }));
  expect(book.view().batteries).toEqual({});
  book.undo();
  expect(book.view().batteries[id]).toEqual({ ...battery, nominal_Ah: 20 });
});

test('a battery is not taken out while a circuit hangs on it, nor a circuit put on one that is not there', () => {
  const book = begun();
  const id = done(book.run('addBattery', battery));
  const light = done(book.run('addCircuit', { ...circuit, battery: id }));
  expect(book.run('removeBattery', { id })).toMatchObject({
    kind: 'refused',
    wrong: expect.stringContaining('Anchor'),
  });
  expect(book.run('changeCircuit', { id: light, battery: 'gone' })).toMatchObject({ kind: 'refused' });
  expect(book.run('changeCircuit', { id: light, uses: { kind: 'sun', from: 'noon', to: 'sunrise' } })).toMatchObject({
    kind: 'refused',
    where: expect.stringContaining('from'),
  });
  expect(book.run('addBattery', { ...battery, nominal_Ah: 0 })).toMatchObject({ kind: 'refused', where: 'nominal_Ah' });
});

test('what was never asked of a circuit may be left out, said, and said to be unknown again', () => {
  const book = begun();
  const id = done(book.run('addBattery', battery));
  const light = done(book.run('addCircuit', { ...circuit, battery: id }));
  expect(book.view().circuits[light]).toEqual({ ...circuit, battery: id });
  done(book.run('changeCircuit', { id: light, fuseKind: 'blade', sheathed: true }));
  done(book.run('changeCircuit', { id: light, sheathed: null }));
  done(book.run('changeBattery', { id, isolator: true }));
  expect(book.view().circuits[light]).toMatchObject({ fuseKind: 'blade', sheathed: null });
  expect(book.view().batteries[id]).toEqual({ ...battery, isolator: true });
});

test('readings are entered together and taken back together; one that a load test names stays', () => {
  const book = begun();
  const id = done(book.run('addBattery', battery));
  const readings = [12.5, 12.4].map((volts, n) => ({ ...reading, battery: id, volts, at: `2026-05-02T2${n}:00:00Z` }));
  done(book.run('enterReadings', { readings }));
  const ids = Object.keys(book.view().readings);
  expect(Object.values(book.view().readings).map(({ volts, order }) => [volts, order])).toEqual([
    [12.5, 1],
    [12.4, 2],
  ]);
  const test = { battery: id, readings: ids, circuit: null, watts: null, note: '' };
  expect(book.run('addLoadTest', test)).toMatchObject({ kind: 'refused', where: 'watts' });
  done(book.run('addLoadTest', { ...test, watts: 10 }));
  expect(book.run('removeReading', { id: ids[0]! })).toMatchObject({ kind: 'refused' });
  book.undo();
  book.undo();
  expect(book.view().readings).toEqual({});
  expect(book.run('enterReadings', { readings: [{ ...reading, battery: 'gone' }] })).toMatchObject({ kind: 'refused' });
});

test('readings made on two devices are all there when they meet', () => {
  const one = begun();
  const id = done(one.run('addBattery', battery));
  const two = also(one, 'b');
  done(one.run('enterReadings', { readings: [{ ...reading, battery: id }] }));
  done(two.run('enterReadings', { readings: [{ ...reading, battery: id, volts: 12.4 }] }));
  meet(one, two);
  expect(
    Object.values(one.view().readings)
      .map(({ volts }) => volts)
      .sort(),
  ).toEqual([12.4, 12.55]);
});

test('of one night only what was foretold last is kept, and undo passes over it', () => {
  const book = begun();
  const id = done(book.run('addBattery', battery));
  const night = (likely: number) => ({
    battery: id,
    morning: '2026-05-03',
    at: '2026-05-03T04:40:00Z',
    volts: { low: 12.2, likely, high: 12.7 },
    charge_pct: { low: 60, likely: 70, high: 80 },
  });
  done(book.run('keepNightAhead', night(12.5)));
  done(book.run('keepNightAhead', night(12.4)));
  expect(Object.values(book.view().nightsAhead).map(({ volts }) => volts.likely)).toEqual([12.4]);
  expect(book.run('keepNightAhead', night(12.9))).toMatchObject({ kind: 'refused' });
  expect(book.undo().title).toBe('Put in a battery: The battery');
});

test('a charger may be put in with or without the hours it runs, and they can be taken away again', () => {
  const book = begun();
  const id = done(book.run('addBattery', battery));
  const charger = { name: 'Bench', battery: id, kind: 'mains', amps: 3, volts_max: 14.4 } as const;
  const bench = done(book.run('addCharger', charger));
  expect(book.view().chargers[bench]).toEqual(charger);
  done(book.run('changeCharger', { id: bench, hours_a_day: 2 }));
  done(book.run('changeCharger', { id: bench, hours_a_day: null }));
  expect(book.view().chargers[bench]?.hours_a_day).toBeNull();
  expect(book.run('changeCharger', { id: bench, hours_a_day: 25 })).toMatchObject({
    kind: 'refused',
    where: 'hours_a_day',
  });
  book.undo();
  expect(book.view().chargers[bench]?.hours_a_day).toBe(2);
});

test('a load test is entered with its readings, in order, and taken back with them', () => {
  const book = begun();
  const id = done(book.run('addBattery', battery));
  const at = (clock: string, volts: number) => ({ ...reading, battery: id, volts, at: `2026-05-02T${clock}:00Z` });
  const given = { battery: id, circuit: null, watts: 12, note: '', readings: [at('20:00', 12.8), at('21:00', 12.6)] };
  const made = done(book.run('enterLoadTest', given));
  const { readings } = book.view().loadTests[made]!;
  expect(readings.map((each) => book.view().readings[each]?.volts)).toEqual([12.8, 12.6]);
  book.undo();
  expect([book.view().loadTests, book.view().readings]).toEqual([{}, {}]);
  const refused = (parts: object) => book.run('enterLoadTest', { ...given, ...parts } as never);
  expect(refused({ watts: null })).toMatchObject({ kind: 'refused', where: 'watts' });
  expect(refused({ readings: [at('21:00', 12.6), at('20:00', 12.8)] })).toMatchObject({
    kind: 'refused',
    where: 'readings › 2. › at',
  });
  expect(refused({ readings: [at('21:00', 12.6)] })).toMatchObject({ kind: 'refused', where: 'readings' });
  expect(book.view().readings).toEqual({});
});
