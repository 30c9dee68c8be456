import { expect, test } from 'vitest';
import { readBoatFile } from './boat-file.ts';
import { also, begun, boardHoist, done, battery as house, meet } from './testing/devices.ts';
import type { CarriedRecord, TrailerRecord } from './trailer-records.ts';

const trailer: TrailerRecord = {
  name: 'The trailer',
  zone: null,
  ballAhead_m: 4,
  axles: 1,
  braked: true,
  emptyMass: { low_kg: 215, likely_kg: 220, high_kg: 225 },
  emptyPlace: { kind: 'ball weighed', ball_kg: 20, give_kg: 2 },
  stemAhead_m: 3,
  wheel_m: null,
  boatMoves: null,
  carBall_kg: 75,
  barBall_kg: null,
  couplingBall_kg: null,
  gross_kg: null,
  axle_kg: null,
  train_kg: null,
  carKerb_kg: null,
  carLaden_kg: null,
  limitsRead: null,
  advice: 'uk',
  tyres: null,
  towed_km_h: null,
  friction: null,
  post_N: null,
  boardRests: null,
  lashings: [],
  note: '',
};

const thing = (of: string, parts: Partial<CarriedRecord> = {}): CarriedRecord => ({
  trailer: of,
  name: 'Battery',
  rides: 'boat',
  mass: { low_kg: 5, likely_kg: 6, high_kg: 7 },
  massFrom: 'guessed',
  ahead_m: 0.5,
  give_m: 0.1,
  up_m: null,
  moves: null,
  aboard: true,
  hoist: null,
  battery: null,
  note: '',
  ...parts,
});

test('the load is changed in one go, a board’s hoist learns its mass, and one undo takes all of it back', () => {
  const book = begun();
  const of = done(book.run('addTrailer', trailer));
  const board = done(book.run('addBoardHoist', boardHoist));
  const battery = done(book.run('addCarried', thing(of)));
  const plate = done(book.run('addCarried', thing(of, { name: 'Board', hoist: board })));
  const before = book.view();
  const mass = { low_kg: 89, likely_kg: 90, high_kg: 91 };
  done(
    book.run('changeLoad', {
      things: [
        { carried: plate, mass },
        { carried: battery, ahead_m: -1.2 },
      ],
    }),
  );
  expect(book.view().carried[plate]).toMatchObject({ mass, massFrom: 'weighed' });
  expect(book.view().boardHoists[board]?.plate).toEqual({
    ...boardHoist.plate,
    mass: { kind: 'weighed', mass_kg: 90 },
  });
  expect(book.view().carried[battery]?.ahead_m).toBe(-1.2);
  book.undo();
  expect(book.view().carried).toEqual(before.carried);
  expect(book.view().boardHoists).toEqual(before.boardHoists);
});

test('a trailer is taken out with what stands on it, and comes back whole; a battery that stands on it is not taken out under it', () => {
  const book = begun();
  const of = done(book.run('addTrailer', trailer));
  const battery = done(book.run('addBattery', house));
  const carried = done(book.run('addCarried', thing(of, { battery })));
  expect(book.run('removeBattery', { id: battery }).kind).toBe('refused');
  done(book.run('removeTrailer', { id: of }));
  expect([book.view().trailers, book.view().carried]).toEqual([{}, {}]);
  book.undo();
  expect(Object.keys(book.view().carried)).toEqual([carried]);
});

test('masses out of order, places turned round and a beam shorter than its arm are refused by name', () => {
  const book = begun();
  const of = done(book.run('addTrailer', trailer));
  expect(book.run('addCarried', thing(of, { mass: { low_kg: 7, likely_kg: 6, high_kg: 8 } }))).toMatchObject({
    kind: 'refused',
    where: 'mass',
    wrong: '7, 6 and 8 kg are not in order',
  });
  expect(book.run('addCarried', thing(of, { moves: { aftmost_m: 1, foremost_m: 0 } }))).toMatchObject({
    kind: 'refused',
    where: 'moves',
  });
  const weighing = { trailer: of, at: '2026-05-02T09:00:00Z', scale_kg: 30, told_kg: 44, stood: [], note: '' };
  expect(book.run('enterBallWeighing', { ...weighing, arm_mm: 900, beam_mm: 800 })).toMatchObject({
    kind: 'refused',
    where: 'arm_mm',
  });
  const id = done(book.run('enterBallWeighing', { ...weighing, arm_mm: 600, beam_mm: 900 }));
  expect(Object.values(book.view().log).map(({ text }) => text)).toEqual([
    'The trailer: 45.0 kg on the ball by the scale, 44.0 kg by the table',
  ]);
  done(book.run('removeBallWeighing', { id }));
  expect(book.view().ballWeighings).toEqual({});
});

test('two devices that move two things at once keep both; two answers to one limit wait for the keeper', () => {
  const here = begun();
  const of = done(here.run('addTrailer', trailer));
  const battery = done(here.run('addCarried', thing(of)));
  const water = done(here.run('addCarried', thing(of, { name: 'Water' })));
  const there = also(here, 'b');
  done(here.run('changeLoad', { things: [{ carried: battery, ahead_m: -1 }] }));
  done(there.run('changeLoad', { things: [{ carried: water, ahead_m: 1.5 }] }));
  done(here.run('changeTrailer', { id: of, carBall_kg: 100 }));
  done(there.run('changeTrailer', { id: of, carBall_kg: 60, barBall_kg: 50 }));
  meet(here, there);
  for (const book of [here, there]) {
    expect(book.view().carried[battery]?.ahead_m).toBe(-1);
    expect(book.view().carried[water]?.ahead_m).toBe(1.5);
    expect(book.view().trailers[of]?.barBall_kg).toBe(50);
    // the lower limit stands until the keeper chooses
    expect(book.view().trailers[of]?.carBall_kg).toBe(60);
    expect(book.questions()).toMatchObject([{ collection: 'trailers', field: 'carBall_kg' }]);
  }
});

test('a file of this version that was kept before trailers had a place opens, with none', () => {
  const { trailers: _, carried: _things, ballWeighings: _ball, ...before } = begun().view();
  const read = readBoatFile(new TextEncoder().encode(JSON.stringify(before)));
  expect(read).toMatchObject({ kind: 'book', notes: [], book: { trailers: {}, carried: {}, ballWeighings: {} } });
});

test('the table put right moves nothing: the weighing has the place so too, and undo brings both back', () => {
  const book = begun();
  const of = done(book.run('addTrailer', trailer));
  const carried = done(book.run('addCarried', thing(of, { name: 'Hull', ahead_m: 0.2 })));
  const stood = [{ carried, name: 'Hull', mass_kg: 400, ahead_m: 0.2, ball_kg: 20, give_kg: 10 }];
  const said = { trailer: of, at: '2026-05-02T09:00:00Z', scale_kg: 24, arm_mm: 1000, beam_mm: 1000, note: '' };
  const weighing = done(book.run('enterBallWeighing', { ...said, told_kg: 20, stood }));
  const before = book.view();
  // 400 kg by 0.04 m of 4 m: 4 kg
  done(book.run('putTableRight', { weighing, carried, ahead_m: 0.24 }));
  expect(book.view().carried[carried]?.ahead_m).toBe(0.24);
  const [now, ...more] = Object.values(book.view().ballWeighings);
  expect(more).toEqual([]);
  expect(now).toMatchObject({ scale_kg: 24, stood: [{ ahead_m: 0.24 }] });
  expect(now?.told_kg).toBeCloseTo(24, 9);
  expect(book.run('putTableRight', { weighing, carried, ahead_m: 0.3 }).kind).toBe('refused');
  book.undo();
  expect(book.view().carried).toEqual(before.carried);
  expect(Object.values(book.view().ballWeighings)[0]?.told_kg).toBe(20);
});
