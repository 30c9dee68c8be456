/** Any book there can be, for property tests: sound records that name only what is there. */
import fc from 'fast-check';
import { contentId } from '../canonical.ts';
import { emptyBook } from '../empty-book.ts';
import type { Book, Id } from '../records.ts';
import { boat } from './devices.ts';

const id = fc.stringMatching(/^[a-z][a-z0-9]{0,11}$/).filter((value) => !(value in {}));
const title = fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' }).filter((value) => value.trim() !== '');
const text = fc.string({ maxLength: 60, unit: 'grapheme' });
const day = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2190-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const clock = fc
  .nat(1439)
  .map((minute) => `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`);
const at = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2190-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString());
const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((value) => (Object.is(value, -0) ? 0 : value));
const nullable = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: null });
const keyed = <T>(of: fc.Arbitrary<T>, maxKeys = 4) => fc.dictionary(id, of, { maxKeys, noNullPrototype: true });
const someOf = (ids: readonly Id[]) => fc.subarray([...ids]);
const oneOf = (ids: readonly Id[]) => (ids.length === 0 ? fc.constant(null) : nullable(fc.constantFrom(...ids)));
const consequence = fc.constantFrom('danger', 'unlawful', 'stops-sailing', 'worsens', 'comfort');

const conditions = fc.record(
  {
    dry: fc.constant(true as const),
    wind_max_kn: number(0, 120),
    air_min_C: number(-60, 60),
    daylight: fc.constant(true as const),
  },
  { requiredKeys: [] },
);

const law = fc.oneof(
  fc.record({ kind: fc.constant('set time' as const), minutes: fc.nat(5000), from: fc.constant('the tin' as const) }),
  fc.record({
    kind: fc.constant('reacts' as const),
    atReference_min: number(1, 5000),
    reference_C: number(-10, 40),
    doublesPer_C: number(1, 20),
    minimum_C: number(-10, 20),
    from: fc.constant('common practice' as const),
  }),
  fc.record({ kind: fc.constant('never cures' as const), from: fc.constant('our assumption' as const) }),
);

const minutes = fc
  .tuple(fc.integer({ min: 1, max: 1440 }), fc.integer({ min: 1, max: 1440 }), fc.integer({ min: 1, max: 1440 }))
  .map((three) => [...three].sort((a, b) => a - b) as [number, number, number])
  .map(([low, likely, high]) => ({ low, likely, high }));

const battery = fc.record({
  name: title,
  zone: fc.constant(null),
  chemistry: fc.constantFrom('flooded' as const, 'agm' as const, 'gel' as const, 'lifepo4' as const),
  nominal_Ah: number(1, 300),
  nominal_V: fc.constantFrom(6 as const, 12 as const, 24 as const),
  made: nullable(day),
  floor_pct: number(0, 90),
  meter: text,
  note: text,
});
const place = fc.record({
  name: title,
  latitude_deg: number(-90, 90),
  longitude_deg: number(-180, 180),
  timeZone: fc.constantFrom('UTC', 'Europe/Lisbon'),
  features: fc.subarray(['water' as const, 'mains' as const, 'level' as const]),
  sheltered: fc.boolean(),
});
const setUp = fc.record({
  name: title,
  states: fc.constant([
    { id: 'up', name: 'Up', shelters: false },
    { id: 'down', name: 'Down', shelters: true },
  ]),
  now: fc.constantFrom('up', 'down'),
  changes: fc.constant([]),
});
const tool = fc.record({ name: title, count: fc.nat(9), keptAt: text });
const outing = fc.record(
  {
    title,
    date: day,
    from: clock,
    nights: fc.nat(9),
    place: text,
    wind_kn: nullable(number(0, 60)),
    windLeast_kn: nullable(number(0, 60)),
    gust_kn: nullable(number(0, 90)),
    crew: nullable(fc.integer({ min: 1, max: 6 })),
    way: fc.constantFrom('water' as const, 'road' as const),
  },
  { requiredKeys: ['title', 'date', 'from', 'nights', 'place', 'wind_kn'] },
);
const stowage = fc.record({ name: title, within: fc.constant(null), aboard: fc.boolean() });
const store = fc.record(
  {
    name: title,
    keptAt: text,
    onHand: fc.boolean(),
    expected: nullable(day),
    lead_days: nullable(fc.nat(365)),
    note: text,
    amount: nullable(number(0, 1000)),
    unit: fc.constantFrom('' as const, 'ml' as const, null),
    pack: nullable(fc.record({ word: title, holds: number(0.1, 1000) })),
    opened: nullable(day),
    price: nullable(number(0, 1000)),
  },
  { requiredKeys: ['name', 'keptAt', 'onHand', 'expected', 'lead_days', 'note'] },
);

/** A book whose parts name each other only where they are there. */
export const anyBook: fc.Arbitrary<Book> = fc
  .record({
    name: title,
    places: keyed(place),
    zoneIds: fc.uniqueArray(id, { maxLength: 4 }),
    setUps: keyed(setUp, 2),
    tools: keyed(tool),
    outings: keyed(outing),
    stowages: keyed(stowage),
    stores: keyed(store),
    batteries: keyed(battery, 2),
    jobIds: fc.uniqueArray(id, { maxLength: 4 }),
  })
  .chain(({ name, zoneIds, jobIds, ...base }) => {
    const [placeIds, setUpIds] = [Object.keys(base.places), Object.keys(base.setUps)];
    const setUpNeeds = someOf(setUpIds).map((ids) => ids.map((one) => ({ setUp: one, states: ['up'] })));
    const zone = fc.record({
      name: title,
      words: fc.array(title, { maxLength: 2 }),
      room: fc.integer({ min: 1, max: 20 }),
      inside: fc.boolean(),
      near: someOf(zoneIds),
      along: number(0, 1),
      up: number(0, 2),
    });
    const job = fc.record({
      title,
      why: text,
      zone: oneOf(zoneIds),
      fitting: fc.constant(null),
      consequence,
      opened: day,
      due: nullable(day),
      outing: oneOf(Object.keys(base.outings)),
      state: fc.constantFrom('open' as const, 'done' as const, 'dropped' as const),
      closed: nullable(day),
      note: text,
      said: text,
      heldTo: fc.constant(null),
      heldAt: fc.constant(null),
      afterJobs: fc.constant([]),
    });
    const step = fc.record({
      job: jobIds.length === 0 ? fc.constant('none') : fc.constantFrom(...jobIds),
      order: number(-100, 100),
      title,
      minutes,
      hands: fc.nat(5),
      keeper: fc.boolean(),
      notAlone: fc.boolean(),
      zone: oneOf(zoneIds),
      needs: conditions,
      features: fc.constant([]),
      tools: someOf(Object.keys(base.tools)).map((ids) => ids.map((one) => ({ tool: one, count: 1 }))),
      setUps: setUpNeeds,
      stores: someOf(Object.keys(base.stores)),
      dusty: fc.boolean(),
      wet: fc.boolean(),
      mix: fc.constant(null),
      waits: fc.array(
        fc.record({
          id,
          title,
          law,
          needs: fc.constant({}),
          setUps: setUpNeeds,
          still: someOf(setUpIds),
          wet: fc.boolean(),
        }),
        { maxLength: 1 },
      ),
      follows: fc.constant(null),
      cautions: fc.array(text, { maxLength: 2 }),
      progress: fc.oneof(
        fc.constant({ kind: 'open' as const }),
        fc.record({ kind: fc.constant('done' as const), started: at, finished: at }),
      ),
    });
    const fixed = <T extends object>(of: fc.Arbitrary<T>) =>
      fc.array(of, { maxLength: 4 }).map((list) =>
        Object.fromEntries(
          list.map((one, i) => {
            const record = { ...one, order: i + 1 };
            return [contentId(record), record];
          }),
        ),
      );
    const batteryIds = Object.keys(base.batteries);
    const ofBattery = batteryIds.length === 0 ? fc.constant('none') : fc.constantFrom(...batteryIds);
    const circuit = fc.record({
      name: title,
      battery: ofBattery,
      watts: number(0, 500),
      duty_pct: number(0, 100),
      uses: fc.oneof(
        fc.constant({ kind: 'always' as const }),
        fc.record({ kind: fc.constant('clock' as const), from: clock, to: clock }),
        fc.record({ kind: fc.constant('sun' as const), from: fc.constant('sunset' as const), to: clock }),
        fc.record({ kind: fc.constant('hours' as const), hours_a_day: number(0, 24) }),
      ),
      fuse_A: nullable(number(0.1, 100)),
      fuseAt_m: nullable(number(0, 5)),
      fuseKind: nullable(fc.constantFrom('glass' as const, 'blade' as const)),
      sheathed: nullable(fc.boolean()),
      conductor: fc.constant(null),
      needs: fc.constantFrom('critical' as const, 'other' as const),
      zone: oneOf(zoneIds),
    });
    const stay = fc.record({
      name: title,
      zone: oneOf(zoneIds),
      laid: fc.constantFrom('1x19' as const, '7x7' as const),
      size_mm: number(2, 8),
      length_m: number(1, 12),
      screw: nullable(
        fc.record({ thread: fc.constant('m6' as const), ends: fc.constantFrom('both' as const, 'one' as const) }),
      ),
      aim_pct: nullable(number(5, 20)),
      made: nullable(day),
      note: text,
    });
    const stayReading = fc.record({
      stay: id,
      on: day,
      moment: fc.constantFrom('as set' as const, 'after towing' as const),
      told: fc.oneof(
        fc.record({ kind: fc.constant('sway' as const), sway_mm: number(0, 200) }),
        fc.record({ kind: fc.constant('stretch' as const), stretch_mm: number(0, 10), measured_m: fc.constant(2) }),
      ),
      turns: fc.constant(0),
      note: text,
    });
    const ofAnyPart = {
      id,
      name: text,
      since: nullable(day),
      juryRig: fc.constant(null),
      marked: nullable(fc.record({ force_kN: number(0.1, 100), as: fc.constant('breaking load' as const), by: text })),
      signs: nullable(fc.subarray(['chafed' as const, 'rust' as const])),
    };
    const loadPath = fc.record({
      name: title,
      use: fc.constantFrom('ground-tackle' as const, 'hoist' as const),
      zone: oneOf(zoneIds),
      parts: fc.uniqueArray(
        fc.oneof(
          fc.record({
            kind: fc.constant('rope' as const),
            fibre: fc.constant('nylon' as const),
            size_mm: number(1, 40),
            ...ofAnyPart,
          }),
          fc.record({
            kind: fc.constant('shackle' as const),
            make: fc.constantFrom('stainless' as const, 'galvanised' as const),
            size_mm: number(1, 40),
            pin_mm: nullable(number(1, 40)),
            jaw_mm: nullable(number(1, 80)),
            moused: nullable(fc.boolean()),
            ...ofAnyPart,
          }),
        ),
        { maxLength: 3, selector: (part) => part.id },
      ),
      cases: fc.constant([]),
      note: text,
    });
    const rode = fc.record({
      name: title,
      zone: oneOf(zoneIds),
      chain: fc.record({ size_mm: fc.constantFrom(6 as const, 8 as const), length_m: number(0.1, 50) }),
      rope: nullable(
        fc.record({
          fibre: fc.constantFrom('nylon' as const, 'polyester' as const),
          size_mm: fc.constantFrom(10 as const, 12 as const),
          length_m: number(0.1, 50),
        }),
      ),
      bow_m: number(0, 2),
      windage_m2: number(0.1, 10),
      below_m2: number(0, 1),
      limit_deg: number(0, 20),
      anchorage: nullable(
        fc.record({
          depth_m: number(1, 20),
          rise_m: number(0, 5),
          fall_m: number(0, 0.9),
          wind_kn: number(1, 60),
          current_kn: number(0, 4),
        }),
      ),
      path: fc.constant(null),
      note: text,
    });
    const hoist = fc.record({
      name: title,
      zone: oneOf(zoneIds),
      plate: fc.record({
        length_m: number(0.1, 4),
        breadth_m: number(0.02, 2),
        density_kg_m3: number(300, 12_000),
        mass: fc.oneof(
          fc.record({ kind: fc.constant('weighed' as const), mass_kg: number(0.5, 500) }),
          fc.record({ kind: fc.constant('by its sizes' as const), thickness_mm: number(1, 200) }),
        ),
      }),
      moves: fc.record({
        kind: fc.constant('slides' as const),
        travel_m: number(0.05, 3),
        topAboveWater_m: number(-3, 3),
        offMiddle_m: number(-1, 1),
        held_m: number(0.05, 3),
      }),
      wire: fc.record({ of: fc.constant('7x19' as const), size_mm: number(0.5, 24), ending: fc.constant(null) }),
      leads: fc.record({
        count: fc.integer({ min: 0, max: 6 }),
        bearing: fc.constantFrom('ball' as const, 'plain' as const),
        sheave_mm: nullable(number(5, 300)),
      }),
      tackles: fc.constant([]),
      cord: fc.constant(null),
      winch: fc.constant(null),
      note: text,
    });
    const trailer = fc.record({
      name: title,
      zone: oneOf(zoneIds),
      ballAhead_m: number(1, 10),
      axles: fc.constantFrom(1 as const, 2 as const),
      braked: fc.boolean(),
      emptyMass: fc.constant({ low_kg: 180, likely_kg: 190, high_kg: 205 }),
      emptyPlace: fc.oneof(
        fc.record({ kind: fc.constant('ball weighed' as const), ball_kg: number(-200, 500), give_kg: number(0, 100) }),
        fc.record({ kind: fc.constant('centre' as const), ahead_m: number(-10, 10), give_m: number(0, 3) }),
      ),
      stemAhead_m: nullable(number(-10, 10)),
      wheel_m: nullable(number(0.2, 1.2)),
      boatMoves: nullable(fc.record({ aft_m: number(0, 3), forward_m: number(0, 3) })),
      carBall_kg: nullable(number(1, 500)),
      barBall_kg: nullable(number(1, 500)),
      couplingBall_kg: nullable(number(1, 500)),
      gross_kg: nullable(number(1, 20_000)),
      axle_kg: nullable(number(1, 20_000)),
      train_kg: nullable(number(1, 40_000)),
      carKerb_kg: nullable(number(1, 20_000)),
      carLaden_kg: nullable(number(1, 20_000)),
      limitsRead: nullable(day),
      advice: fc.constantFrom('uk' as const, 'us' as const),
      tyres: nullable(
        fc.record({
          size: text,
          count: fc.integer({ min: 1, max: 8 }),
          loadIndex: nullable(fc.integer({ min: 20, max: 200 })),
          speed: nullable(fc.constantFrom('N', 'A8')),
          pressure_kPa: nullable(number(50, 1000)),
          asked_kPa: nullable(number(50, 1000)),
          wheels: fc.constant([{ wheel: 'Left', spare: false, code: '3519', tread_mm: null }]),
          readOn: day,
        }),
      ),
      towed_km_h: nullable(number(5, 200)),
      friction: nullable(number(0, 1)),
      post_N: nullable(number(0, 200_000)),
      boardRests: nullable(fc.boolean()),
      lashings: fc.constant([]),
      note: text,
    });
    const tinTime = nullable(fc.record({ hours: number(0.01, 500), at_C: number(-20, 60) }));
    const tin = fc.record({
      name: title,
      family: fc.constantFrom('epoxy-fast', 'varnish-one-pot'),
      store: fc.constant(null),
      readOn: day,
      nextCoat: tinTime,
      latestCoat_h: fc.constant(null),
      worked: tinTime,
      full: tinTime,
      firstDay_mm: nullable(number(0.1, 20)),
      minimum_C: nullable(number(-20, 40)),
      humidity_max_pct: nullable(number(5, 100)),
      potLife: nullable(
        fc.record({ minutes: number(0.5, 500), at_C: number(-20, 60), of_g: nullable(number(1, 1000)) }),
      ),
      ratio: nullable(
        fc.record({
          kind: fc.constant('parts' as const),
          by: fc.constantFrom('weight' as const, 'volume' as const),
          resin: number(0.01, 1000),
          hardener: number(0.01, 1000),
        }),
      ),
      spread_m2_l: nullable(number(0.1, 100)),
      strokePair_g: nullable(number(0.1, 1000)),
      note: text,
    });
    return fc.record({
      tins: keyed(tin, 2),
      loadPaths: keyed(loadPath, 2),
      stays: keyed(stay, 2),
      masts: fc.constant({}),
      stayReadings: fixed(stayReading),
      rodes: keyed(rode, 2),
      boardHoists: keyed(hoist, 2),
      trailers: keyed(trailer, 2),
      circuits: batteryIds.length === 0 ? fc.constant({}) : keyed(circuit),
      name: fc.constant(name),
      base: fc.constant(base),
      zones: fc
        .tuple(...zoneIds.map(() => zone))
        .map((zones) => Object.fromEntries(zones.map((one, i) => [zoneIds[i], one]))),
      jobs: fc
        .tuple(...jobIds.map(() => job))
        .map((jobs) => Object.fromEntries(jobs.map((one, i) => [jobIds[i], one]))),
      steps: jobIds.length === 0 ? fc.constant({}) : keyed(step),
      weather:
        placeIds.length === 0
          ? fc.constant({})
          : fixed(
              fc.record({
                place: fc.constantFrom(...placeIds),
                date: day,
                fromHour: fc.constant(6),
                toHour: fc.integer({ min: 7, max: 24 }),
                rain: fc.boolean(),
                rainOdds_pct: nullable(fc.integer({ min: 0, max: 100 })),
                wind_kn: number(0, 120),
                air_C: number(-60, 60),
                surface_C: nullable(number(-60, 100)),
                humidity_pct: number(1, 100),
                basis: fc.constantFrom('typed' as const, 'forecast' as const),
                entered: at,
              }),
            ),
      readings:
        batteryIds.length === 0
          ? fc.constant({})
          : fixed(
              fc.record({
                battery: ofBattery,
                at,
                volts: number(0, 60),
                current_A: nullable(number(-50, 50)),
                air_C: nullable(number(-20, 40)),
                circumstance: fc.constantFrom('rested' as const, 'under load' as const, 'not said' as const),
                on: fc.constant([]),
                panelDark: nullable(fc.boolean()),
                by: fc.constant('hand' as const),
              }),
            ),
      hoistForces: fixed(
        fc.record({
          hoist: id,
          at,
          handling: fc.constantFrom('hoisting' as const, 'lowering' as const),
          hauled_pct: nullable(number(0, 100)),
          in: fc.constantFrom('air' as const, 'sea' as const),
          hand_N: number(0, 2000),
          foretold_N: number(0, 2000),
          with: text,
          note: text,
        }),
      ),
      dues: keyed(
        fc.record({
          title,
          zone: fc.constant(null),
          fitting: fc.constant(null),
          consequence: fc.constantFrom('danger' as const, 'comfort' as const),
          printed: nullable(day),
          every: fc.constant({ count: 6, unit: 'months' as const }),
          season: nullable(fc.constantFrom('04-01', '02-29')),
          uses: fc.constant([{ use: 'tow' as const, count: 10 }]),
          condition: nullable(
            fc.constant({ measure: 'tread', unit: 'mm', limit: 2, way: 'falls' as const, within: 0.2 }),
          ),
          usual: fc.constant(null),
          recipe: fc.constant(null),
          source: text,
          lastDone: nullable(day),
          note: text,
        }),
      ),
      uses: fixed(
        fc.record({
          use: fc.constantFrom('sail' as const, 'engine-hours' as const),
          on: day,
          count: fc.integer({ min: 1, max: 99 }),
          entered: at,
          note: text,
        }),
      ),
      dueMeasures: fixed(fc.record({ due: id, on: day, value: number(0, 99), entered: at, note: text })),
      forecasts: fixed(
        fc.record({
          place: id,
          source: title,
          askedLatitude_deg: number(-90, 90),
          askedLongitude_deg: number(-180, 180),
          from: fc.constantFrom('2026-05-01T00:00:00Z', '2026-11-26T13:00:00Z'),
          rain_mm: fc.tuple(number(0, 300)),
          rainOdds_pct: fc.tuple(nullable(fc.integer({ min: 0, max: 100 }))),
          wind_kn: fc.tuple(number(0, 120)),
          air_C: fc.tuple(number(-60, 60)),
          humidity_pct: fc.tuple(number(1, 100)),
          taken: at,
        }),
      ),
      rigTrusts: fixed(
        fc.record({
          rig: id,
          on: day,
          trustedUntil: day,
          wind_max_kn: nullable(number(0, 60)),
          sails_max: nullable(fc.integer({ min: 0, max: 20 })),
          notOnRoad: fc.boolean(),
          reason: title,
          entered: at,
        }),
      ),
      seasonTicks: fixed(
        fc.record({
          list: fc.constantFrom('lay-up' as const, 'fit-out' as const),
          year: fc.integer({ min: 2020, max: 2030 }),
          item: id,
          at,
          who: text,
        }),
      ),
      morningLines: keyed(
        fc.record({
          list: fc.constantFrom('rig' as const, 'tow' as const),
          outing: oneOf(Object.keys(base.outings)),
          of: nullable(id),
          text: nullable(title),
          out: nullable(fc.boolean()),
          place: nullable(number(-1000, 1000)),
          setAside: fc.array(fc.record({ before: id, after: id, reason: title }), { maxLength: 2 }),
        }),
      ),
      morningTicks: fixed(
        fc.record({
          outing: id,
          list: fc.constantFrom('launch' as const, 'pack' as const),
          round: fc.integer({ min: 1, max: 3 }),
          line: nullable(id),
          text,
          came: fc.constantFrom('good' as const, 'failed' as const, 'list done' as const),
          job: nullable(id),
          at,
          who: text,
        }),
      ),
      papers: keyed(
        fc.record({
          title,
          kind: fc.constantFrom('insurance' as const, 'manual' as const),
          blob: fc.constant('0'.repeat(64)),
          bytes: fc.integer({ min: 1, max: 20_000_000 }),
          type: fc.constantFrom('application/pdf' as const, 'text/plain' as const),
          file: text,
          added: at,
          expires: nullable(day),
          fitting: fc.constant(null),
          job: fc.constant(null),
          note: text,
        }),
      ),
      timers: keyed(fc.record({ step: id, wait: nullable(id), words: title, started: at, ends: at }), 2),
      photos: fixed(
        fc.record({
          blob: fc.stringMatching(/^[0-9a-f]{64}$/),
          bytes: fc.integer({ min: 1, max: 400_000 }),
          width_px: fc.integer({ min: 1, max: 1600 }),
          height_px: fc.integer({ min: 1, max: 1600 }),
          taken: at,
          job: nullable(id),
          step: nullable(id),
          fitting: id,
          entry: nullable(id),
          shows: nullable(fc.constantFrom('before' as const, 'after' as const, 'proof' as const)),
          words: text,
          position: nullable(fc.record({ latitude_deg: number(-90, 90), longitude_deg: number(-180, 180) })),
        }),
      ),
      log: fixed(
        fc
          .tuple(
            fc.record({
              at,
              kind: fc.constantFrom('note' as const, 'measured' as const),
              job: fc.constant(null),
              step: fc.constant(null),
              zone: fc.constant(null),
              who: text,
              spent_min: nullable(fc.nat(500)),
              text,
            }),
            fc.record(
              {
                fitting: id,
                of: fc.record({ collection: fc.constantFrom('stays' as const, 'stores' as const), id }),
                with: fc.array(
                  fc.record(
                    { name: title, store: id, amount: number(0, 1000), unit: text },
                    { requiredKeys: ['name'] },
                  ),
                  { maxLength: 3 },
                ),
                cost: fc.record({ amount: number(0, 5000), currency: fc.constantFrom('EUR', 'GBP') }),
                corrects: id,
              },
              { requiredKeys: [] },
            ),
          )
          .map(([always, some]) => ({ ...always, ...some })),
      ),
    });
  })
  // plain objects only, as they come from JSON
  .map(
    ({ name, base, ...parts }) =>
      JSON.parse(JSON.stringify({ ...emptyBook('book1', { ...boat, name }), ...base, ...parts })) as Book,
  );
