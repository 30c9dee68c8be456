/**
 * A battery of another kind than the one the estimate thinks of: acid in the pores of the plates and acid between them, a
 * fast double layer on top, gassing, surface charge, and for LiFePO4 a voltage that remembers which way it came. Written from
 * the literature named beside each part, so that what the estimate says of it can be held against a truth it does not know.
 *
 * H. Bode, Lead-Acid Batteries (1977), as in the data of Sulzer and others (arXiv:1902.01771): volts of a cell from the acid.
 * J. Manwell and J. McGowan, Solar Energy 50 (1993) 399: two wells of charge. From memory.
 * J. Schiffer and others, J. Power Sources 168 (2007) 66: gassing current by volts and heat. From memory.
 */
import type { Chemistry } from '#battery';

/** What one battery is, drawn once. Currents are positive out of the battery; volts are those of a 12 V battery. */
export interface OtherBattery {
  readonly chemistry: Chemistry;
  readonly nominal_Ah: number;
  /** charge the model can give in all, more than any discharge takes out. [Ah] */
  charge_Ah: number;
  readonly fullAcid_mol_L: number;
  readonly emptyAcid_mol_L: number;
  /** share of the charge at hand in the pores, and how fast the rest follows. [–, 1/h at 25 °C] */
  readonly inPores: number;
  readonly follow_1_h: number;
  /** ohmic, new to worn, full, 25 °C. [Ω] */
  readonly ohms: number;
  readonly ohmsNearEmpty: number;
  /** plates that run out before the acid does: volts lost at the 20-hour current, over the share left in the pores. [V] */
  readonly exhaust_V: number;
  /** double layer: resistance at small currents, current from which it no longer grows in step, time constant. [Ω, A, s] */
  readonly layer_ohms: number;
  readonly layerKnee_A: number;
  readonly layer_s: number;
  /** LiFePO4 only: slow spread within the plates. [Ω, s] */
  readonly spread_ohms: number;
  readonly spread_s: number;
  readonly surface_V: number;
  readonly surface_h: number;
  readonly gas_A_per_Ah: number;
  readonly selfLoss_per_day: number;
  /** LiFePO4: half the gap between coming up and going down; place and height of its two steps. [V, share, V] */
  readonly memory_V: number;
  readonly lithium: readonly [
    level: number,
    stepAt: number,
    step: number,
    secondAt: number,
    second: number,
    slope: number,
  ];
}

export interface OtherState {
  /** how full the pores are and what lies between the plates; LiFePO4 uses the first only. 0–1 */
  pores: number;
  rest: number;
  layer_V: number;
  spread_V: number;
  surface_V: number;
  /** LiFePO4: −1 came down, 1 came up */
  memory: number;
}

export const rested = (full: number): OtherState => ({
  pores: full,
  rest: full,
  layer_V: 0,
  spread_V: 0,
  surface_V: 0,
  memory: 0,
});

/** Charge in the battery, of all it could hold. */
const fill = (battery: OtherBattery, state: OtherState): number =>
  battery.chemistry === 'lifepo4' ? state.pores : battery.inPores * state.pores + (1 - battery.inPores) * state.rest;

/** Share by mass and density of sulphuric acid at 25 °C, textbook table, from memory. [%, kg/L] */
const acid: readonly (readonly [share: number, density: number])[] = [
  [0, 0.997],
  [5, 1.03],
  [10, 1.064],
  [20, 1.137],
  [30, 1.215],
  [40, 1.299],
  [50, 1.391],
];

/** Moles in a litre of acid of this density at 25 °C. */
export function acidOfDensity_mol_L(density: number): number {
  for (let i = 1; i < acid.length; i++) {
    const [s0, d0] = acid[i - 1]!;
    const [s1, d1] = acid[i]!;
    if (density <= d1 || i === acid.length - 1)
      return ((s0 + ((density - d0) / (d1 - d0)) * (s1 - s0)) / 100) * density * (1000 / 98.08);
  }
  throw new Error('the table of acid has no rows');
}

/** Volts of a lead cell from the acid at its plates, by Bode's fit in the logarithm of the molality. */
export function cellVolts(acid_mol_L: number): number {
  const c = Math.max(0.06, acid_mol_L);
  // density of the solution from its moles: 0.997 + 0.0605 c − 0.0004 c² goes through the table above to 0.3 %
  const water_kg_L = 0.997 + 0.0605 * c - 0.0004 * c * c - c * 0.09808;
  const x = Math.log10(c / water_kg_L);
  return 1.628 + 0.294 + 0.148 * x + 0.064 * x ** 2 + 0.074 * x ** 3 + 0.034 * x ** 4;
}

const logistic = (x: number) => 1 / (1 + Math.exp(-x));

function lithiumVolts(battery: OtherBattery, full: number): number {
  const [level, at, step, secondAt, second, slope] = battery.lithium;
  const q = Math.min(1.02, Math.max(-0.01, full));
  return (
    4 *
    (level +
      step * logistic((q - at) / 0.035) +
      second * logistic((q - secondAt) / 0.03) +
      slope * (q - 0.5) -
      0.22 * Math.exp(-q / 0.035) -
      0.9 * Math.exp(-q / 0.006) +
      0.03 * Math.exp((q - 1) / 0.01))
  );
}

/** Volts the battery would come to if it stood for days as it is at its plates now. */
function plateVolts(battery: OtherBattery, state: OtherState, battery_C: number): number {
  if (battery.chemistry === 'lifepo4')
    return lithiumVolts(battery, state.pores) + battery.memory_V * state.memory + 0.0004 * (battery_C - 25);
  const { emptyAcid_mol_L: empty, fullAcid_mol_L: full } = battery;
  return 6 * cellVolts(empty + (full - empty) * state.pores) + 0.0014 * (battery_C - 25);
}

function ohmsNow(battery: OtherBattery, state: OtherState, battery_C: number): number {
  const cold = Math.exp(-(battery.chemistry === 'lifepo4' ? 0.022 : 0.012) * (battery_C - 25));
  return cold * (battery.ohms + battery.ohmsNearEmpty * (0.05 / (Math.max(0, state.pores) + 0.05)));
}

/**
 * What the cold keeps back: the plates run dry that much earlier. Data pages give 85 % and 82 % of an AGM battery's 20-hour
 * capacity at 0 °C; the loss is full from a fiftieth of the capacity in amperes on. [V]
 */
function coldLoss_V(battery: OtherBattery, state: OtherState, amps: number, battery_C: number): number {
  if (amps <= 0 || battery_C >= 25) return 0;
  const kept = (battery.chemistry === 'lifepo4' ? 0.003 : 0.006) * (25 - battery_C) * (1 - state.pores);
  const early = { ...state, pores: state.pores - kept };
  const drop = plateVolts(battery, state, battery_C) - plateVolts(battery, early, battery_C);
  return drop * (1 - Math.exp(-amps / (0.02 * battery.nominal_Ah)));
}

/** Flooded plates give out while there is still acid; starved ones run out of acid first. [V] */
function exhausted_V(battery: OtherBattery, state: OtherState, amps: number): number {
  if (amps <= 0 || battery.exhaust_V === 0) return 0;
  return (battery.exhaust_V / (Math.max(0, state.pores) + 0.008)) * Math.sqrt((20 * amps) / battery.nominal_Ah);
}

/** What the charge is pushed against near the end of it, before gas takes the current. [V] */
function endOfCharge_V(battery: OtherBattery, state: OtherState, amps: number): number {
  if (amps >= 0) return 0;
  if (battery.chemistry === 'lifepo4') return 1.2 * logistic((state.pores - 0.998) / 0.004);
  return 1.5 * logistic((fill(battery, state) - 0.96) / 0.05) * (1 - Math.exp(amps / (0.03 * battery.nominal_Ah)));
}

/** Volts at the terminals while this current flows. @param amps positive out of the battery */
export function terminalVolts(battery: OtherBattery, state: OtherState, amps: number, battery_C: number): number {
  return (
    plateVolts(battery, state, battery_C) -
    amps * ohmsNow(battery, state, battery_C) -
    state.layer_V -
    state.spread_V +
    state.surface_V -
    coldLoss_V(battery, state, amps, battery_C) -
    exhausted_V(battery, state, amps) +
    endOfCharge_V(battery, state, amps)
  );
}

/** The most of a charging current that keeps the volts at or under a regulator's. @param amps negative */
export function regulated(
  battery: OtherBattery,
  state: OtherState,
  amps: number,
  battery_C: number,
  most_V: number,
): number {
  if (terminalVolts(battery, state, amps, battery_C) <= most_V) return amps;
  let low = amps;
  let high = 0;
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (terminalVolts(battery, state, middle, battery_C) > most_V) low = middle;
    else high = middle;
  }
  return high;
}

/** Lets a current flow for some seconds. Changes `state`. */
export function flow(battery: OtherBattery, state: OtherState, amps: number, seconds: number, battery_C: number): void {
  const h = seconds / 3600;
  const lithium = battery.chemistry === 'lifepo4';
  let stored = amps;
  if (amps < 0 && !lithium) {
    // gas: Schiffer's normalised current, 0.2 mA for an Ah at 2.23 V a cell and 20 °C when new, more with age
    const cell = terminalVolts(battery, state, amps, battery_C) / 6;
    const gas = battery.gas_A_per_Ah * battery.nominal_Ah * Math.exp(11 * (cell - 2.23) + 0.06 * (battery_C - 20));
    stored = Math.min(0, amps + gas);
  } else if (lithium && amps < 0) stored = amps * 0.995;
  const lost_Ah = battery.charge_Ah * battery.selfLoss_per_day * 2 ** ((battery_C - 20) / 10) * (h / 24);
  const out_Ah = stored * h + lost_Ah;
  if (lithium) {
    state.pores = Math.min(1.002, state.pores - out_Ah / battery.charge_Ah);
    const turn = Math.min(1, Math.abs(out_Ah) / (0.05 * battery.charge_Ah));
    state.memory += turn * (-Math.sign(amps) * (amps === 0 ? 0 : 1) - state.memory);
    const far = battery.spread_ohms * amps;
    state.spread_V += (far - state.spread_V) * (1 - Math.exp(-seconds / battery.spread_s));
  } else {
    const share = battery.inPores;
    const rate = battery.follow_1_h * Math.exp(0.02 * (battery_C - 25));
    state.pores -= out_Ah / (share * battery.charge_Ah);
    // the two wells draw together; exact over the stretch
    const mean = share * state.pores + (1 - share) * state.rest;
    const apart = (state.pores - state.rest) * Math.exp(-rate * h);
    state.pores = mean + (1 - share) * apart;
    state.rest = mean - share * apart;
    if (state.pores > 1) {
      const over = (state.pores - 1) * share;
      state.pores = 1;
      state.rest = Math.min(1, state.rest + over / (1 - share));
    }
    if (amps < 0) {
      const most = battery.surface_V * logistic((mean - 0.75) / 0.08);
      state.surface_V += (most - state.surface_V) * (1 - Math.exp(-h / 1.2));
    } else {
      const eaten = amps * h > 0 ? Math.exp((-amps * h) / (0.015 * battery.nominal_Ah)) : 1;
      state.surface_V *= Math.exp(-h / battery.surface_h) * eaten;
    }
  }
  const cold = Math.exp(-0.02 * (battery_C - 25));
  const target = cold * battery.layer_ohms * battery.layerKnee_A * Math.asinh(amps / battery.layerKnee_A);
  state.layer_V += (target - state.layer_V) * (1 - Math.exp(-seconds / battery.layer_s));
}

/** Charge still to come at a steady current down to the cut-off, from a state that is left as it is. [Ah] */
export function stillToCome_Ah(
  battery: OtherBattery,
  from: OtherState,
  amps: number,
  battery_C: number,
  cutOff_V: number,
): number {
  const state = { ...from };
  const seconds = Math.min(120, (battery.nominal_Ah / amps / 400) * 3600);
  let given = 0;
  let before = terminalVolts(battery, state, amps, battery_C);
  for (let n = 0; n < 3000; n++) {
    flow(battery, state, amps, seconds, battery_C);
    const now = terminalVolts(battery, state, amps, battery_C);
    const step = (amps * seconds) / 3600;
    if (now <= cutOff_V) return given + (before <= cutOff_V ? 0 : (step * (before - cutOff_V)) / (before - now));
    given += step;
    before = now;
  }
  throw new Error('the battery never came to its cut-off');
}

export const cutOff_V = (chemistry: Chemistry): number => (chemistry === 'lifepo4' ? 10 : 10.8);

/** What this battery gives from full at its 20-hour current, 25 °C. [Ah] */
export function ownCapacity_Ah(battery: OtherBattery): number {
  return stillToCome_Ah(battery, rested(1), battery.nominal_Ah / 20, 25, cutOff_V(battery.chemistry));
}

const between = (random: () => number, low: number, high: number) => low + (high - low) * random();
/** A normal draw, by adding twelve. */
const normal = (random: () => number) => {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += random();
  return sum;
};

/** A battery off the shelf of some years. @param random from 0 up to 1, seeded */
export function drawnBattery(
  chemistry: Chemistry,
  nominal_Ah: number,
  age_years: number,
  random: () => number,
): OtherBattery {
  const lead = chemistry !== 'lifepo4';
  // makers rate with some room; the loss of a year differs from owner to owner
  const whenNew = 1.04 + 0.06 * normal(random);
  const yearly = (lead ? 0.04 : 0.018) * Math.exp(0.5 * normal(random));
  const wanted_Ah = nominal_Ah * Math.max(0.35, whenNew * (1 - yearly * age_years));
  const worn = 1 + age_years * (lead ? 0.07 : 0.03) * Math.exp(0.5 * normal(random));
  const full = { flooded: 1.268, agm: 1.288, gel: 1.28, lifepo4: 1.28 }[chemistry] + 0.008 * normal(random);
  const ohmAh = (lead ? 0.17 : 0.12) * Math.exp(0.25 * normal(random)) * worn;
  const battery: OtherBattery = {
    chemistry,
    nominal_Ah,
    charge_Ah: wanted_Ah,
    fullAcid_mol_L: acidOfDensity_mol_L(full),
    emptyAcid_mol_L: acidOfDensity_mol_L(
      chemistry === 'flooded' ? between(random, 1.06, 1.13) : between(random, 1.03, 1.1),
    ),
    inPores: between(random, 0.35, 0.7),
    follow_1_h: between(random, 0.8, 3),
    ohms: ohmAh / nominal_Ah,
    ohmsNearEmpty: (between(random, 0.5, 2.5) * ohmAh) / nominal_Ah,
    exhaust_V: lead ? (chemistry === 'flooded' ? between(random, 0.004, 0.015) : between(random, 0, 0.006)) : 0,
    layer_ohms: (between(random, 0.5, 1.5) * ohmAh) / nominal_Ah,
    layerKnee_A: between(random, 0.05, 0.2) * nominal_Ah,
    layer_s: between(random, 25, 240),
    spread_ohms: (between(random, 0.3, 1.2) * ohmAh) / nominal_Ah,
    spread_s: between(random, 900, 4000),
    surface_V: between(random, 0.2, 0.6),
    surface_h: between(random, 1.5, 8),
    gas_A_per_Ah: 0.0002 * (1 + 0.4 * age_years * random()),
    selfLoss_per_day: lead ? between(random, 0.0003, chemistry === 'flooded' ? 0.0025 : 0.0012) : 0.0003,
    memory_V: lead ? 0 : 4 * between(random, 0.004, 0.012),
    lithium: [
      3.235 + 0.006 * normal(random),
      between(random, 0.14, 0.3),
      between(random, 0.03, 0.06),
      between(random, 0.62, 0.74),
      between(random, 0.025, 0.045),
      between(random, 0.01, 0.04),
    ],
  };
  // the model holds more than it gives: made to give what was wanted
  for (let i = 0; i < 3; i++) battery.charge_Ah *= wanted_Ah / ownCapacity_Ah(battery);
  return battery;
}
