/** A number of one unit. The brand keeps newtons from being passed for kilograms. */
export type Quantity<U extends BaseUnit> = number & { readonly unit: U };

/** The unit in which each kind is held. */
export type BaseUnit = (typeof kinds)[Kind]['base'];

export type Metres = Quantity<'m'>;
export type SquareMetres = Quantity<'m²'>;
export type Litres = Quantity<'L'>;
export type Kilograms = Quantity<'kg'>;
export type Newtons = Quantity<'N'>;
export type NewtonMetres = Quantity<'N·m'>;
export type Hectopascals = Quantity<'hPa'>;
export type Celsius = Quantity<'°C'>;
export type CelsiusDifference = Quantity<'°C difference'>;
export type MetresPerSecond = Quantity<'m/s'>;
export type Degrees = Quantity<'°'>;
export type Percent = Quantity<'%'>;
export type Minutes = Quantity<'min'>;
export type Volts = Quantity<'V'>;
export type Amperes = Quantity<'A'>;
export type AmpereHours = Quantity<'Ah'>;
export type Watts = Quantity<'W'>;
export type WattHours = Quantity<'Wh'>;
export type Ohms = Quantity<'Ω'>;

export type Kind = keyof typeof kinds;
export type System = 'metric' | 'imperial';

/** How a unit is written, and what one of it is in the base unit: base = factor · number + offset. */
export interface Unit {
  readonly symbol: string;
  /** other ways people write it; compared without regard to capitals where `symbol` is longer than a letter */
  readonly also: readonly string[];
  readonly factor: number;
  readonly offset: number;
  /** decimals it is shown with when none are asked for */
  readonly decimals: number;
}

const unit = (symbol: string, factor: number, decimals: number, also: readonly string[] = [], offset = 0): Unit => ({
  symbol,
  also,
  factor,
  offset,
  decimals,
});

const inch_m = 0.0254;
const pound_kg = 0.45359237;
/** Standard acceleration of gravity: what a kilogram weighs, in newtons. Source: 3rd CGPM, 1901. */
export const standardGravity_m_s2 = 9.80665;
const fahrenheit = 5 / 9;

/**
 * Kinds of quantity and the units each may be written in.
 *
 * Factors: NIST Special Publication 811 (2008), appendix B.8. Exact by definition are the inch (0.0254 m), the
 * avoirdupois pound (0.453 592 37 kg), the nautical mile (1852 m), the US gallon (231 in³), g (9.806 65 m/s²) and all that
 * is built of them; the imperial gallon is 4.546 09 L (UK Weights and Measures Act 1985). Written from memory of these
 * definitions.
 */
export const kinds = {
  length: {
    base: 'm',
    name: 'length',
    units: [
      unit('mm', 1e-3, 1, ['millimetre', 'millimetres']),
      unit('cm', 1e-2, 1, ['centimetre', 'centimetres']),
      unit('m', 1, 2, ['metre', 'metres']),
      unit('km', 1e3, 2, ['kilometre', 'kilometres']),
      unit('in', inch_m, 3, ['inch', 'inches', '"', '″']),
      unit('ft', 12 * inch_m, 2, ['foot', 'feet', "'", '′']),
      unit('nmi', 1852, 2, ['nautical mile', 'nautical miles']),
    ],
    shown: { metric: 'm', imperial: 'ft' },
  },
  area: {
    base: 'm²',
    name: 'area',
    units: [
      unit('mm²', 1e-6, 2, ['mm2']),
      unit('cm²', 1e-4, 1, ['cm2']),
      unit('m²', 1, 2, ['m2', 'square metres']),
      unit('in²', inch_m ** 2, 2, ['in2', 'sq in']),
      unit('ft²', (12 * inch_m) ** 2, 1, ['ft2', 'sq ft']),
    ],
    shown: { metric: 'm²', imperial: 'ft²' },
  },
  volume: {
    base: 'L',
    name: 'volume',
    units: [
      unit('ml', 1e-3, 0, ['millilitre', 'millilitres']),
      unit('L', 1, 2, ['l', 'litre', 'litres']),
      unit('m³', 1e3, 3, ['m3']),
      unit('cm³', 1e-3, 0, ['cm3', 'cc']),
      unit('US fl oz', (231 * inch_m ** 3 * 1e3) / 128, 1, []),
      unit('US gal', 231 * inch_m ** 3 * 1e3, 2, []),
      unit('UK pt', 4.54609 / 8, 2, ['imp pt']),
      unit('UK gal', 4.54609, 2, ['imp gal']),
    ],
    shown: { metric: 'L', imperial: 'US gal' },
  },
  mass: {
    base: 'kg',
    name: 'mass',
    units: [
      unit('g', 1e-3, 0, ['gram', 'grams']),
      unit('kg', 1, 1, ['kilo', 'kilogram', 'kilograms']),
      unit('t', 1e3, 3, ['tonne', 'tonnes']),
      unit('oz', pound_kg / 16, 1, ['ounce', 'ounces']),
      unit('lb', pound_kg, 1, ['lbs', 'pound', 'pounds']),
    ],
    shown: { metric: 'kg', imperial: 'lb' },
  },
  force: {
    base: 'N',
    name: 'force',
    units: [
      unit('N', 1, 0, ['newton', 'newtons']),
      unit('daN', 10, 1, []),
      unit('kN', 1e3, 2, ['kilonewton', 'kilonewtons']),
      unit('kgf', standardGravity_m_s2, 1, ['kp']),
      unit('lbf', pound_kg * standardGravity_m_s2, 0, []),
    ],
    shown: { metric: 'N', imperial: 'lbf' },
  },
  torque: {
    base: 'N·m',
    name: 'torque',
    units: [
      unit('N·m', 1, 1, ['Nm', 'N m']),
      unit('lbf·ft', pound_kg * standardGravity_m_s2 * 12 * inch_m, 1, ['lbf ft', 'ft lbf']),
    ],
    shown: { metric: 'N·m', imperial: 'lbf·ft' },
  },
  pressure: {
    base: 'hPa',
    name: 'pressure',
    units: [
      unit('hPa', 1, 1, ['mbar', 'millibar']),
      unit('kPa', 10, 2, []),
      unit('bar', 1e3, 3, []),
      unit('psi', (pound_kg * standardGravity_m_s2) / inch_m ** 2 / 100, 1, ['lbf/in²']),
    ],
    shown: { metric: 'hPa', imperial: 'psi' },
  },
  temperature: {
    base: '°C',
    name: 'temperature',
    units: [
      unit('°C', 1, 1, ['C', 'deg C', 'degC']),
      unit('°F', fahrenheit, 0, ['F', 'deg F', 'degF'], -32 * fahrenheit),
    ],
    shown: { metric: '°C', imperial: '°F' },
  },
  'temperature difference': {
    base: '°C difference',
    name: 'difference of temperature',
    units: [unit('°C', 1, 1, ['C', 'K', 'deg C', 'degC']), unit('°F', fahrenheit, 1, ['F', 'deg F', 'degF'])],
    shown: { metric: '°C', imperial: '°F' },
  },
  speed: {
    base: 'm/s',
    name: 'speed',
    units: [
      unit('m/s', 1, 1, []),
      unit('kn', 1852 / 3600, 0, ['kt', 'kts', 'knot', 'knots']),
      unit('km/h', 1 / 3.6, 0, ['kph', 'kmh']),
      unit('mph', (5280 * 12 * inch_m) / 3600, 0, ['mi/h']),
    ],
    shown: { metric: 'kn', imperial: 'kn' },
  },
  angle: {
    base: '°',
    name: 'angle',
    units: [
      unit('°', 1, 1, ['deg', 'degree', 'degrees']),
      unit('rad', 180 / Math.PI, 4, ['radian', 'radians']),
      unit('arcmin', 1 / 60, 1, ['′']),
      unit('arcsec', 1 / 3600, 1, ['″']),
    ],
    shown: { metric: '°', imperial: '°' },
  },
  humidity: {
    base: '%',
    name: 'share',
    units: [unit('%', 1, 0, ['percent', 'per cent', 'pct'])],
    shown: { metric: '%', imperial: '%' },
  },
  duration: {
    base: 'min',
    name: 'length of time',
    units: [
      unit('s', 1 / 60, 0, ['sec', 'second', 'seconds']),
      unit('min', 1, 0, ['mins', 'minute', 'minutes']),
      unit('h', 60, 2, ['hr', 'hrs', 'hour', 'hours']),
      unit('d', 1440, 2, ['day', 'days']),
      unit('week', 10_080, 2, ['weeks']),
    ],
    shown: { metric: 'min', imperial: 'min' },
  },
  voltage: {
    base: 'V',
    name: 'voltage',
    units: [unit('mV', 1e-3, 0), unit('V', 1, 2, ['volt', 'volts'])],
    shown: { metric: 'V', imperial: 'V' },
  },
  current: {
    base: 'A',
    name: 'current',
    units: [unit('mA', 1e-3, 0), unit('A', 1, 2, ['amp', 'amps', 'ampere', 'amperes'])],
    shown: { metric: 'A', imperial: 'A' },
  },
  charge: {
    base: 'Ah',
    name: 'charge',
    units: [unit('mAh', 1e-3, 0), unit('Ah', 1, 1, ['amp hours', 'ampere hours'])],
    shown: { metric: 'Ah', imperial: 'Ah' },
  },
  power: {
    base: 'W',
    name: 'power',
    units: [unit('mW', 1e-3, 0), unit('W', 1, 1, ['watt', 'watts']), unit('kW', 1e3, 2, ['kilowatt', 'kilowatts'])],
    shown: { metric: 'W', imperial: 'W' },
  },
  energy: {
    base: 'Wh',
    name: 'energy',
    units: [unit('Wh', 1, 0, ['watt hours']), unit('kWh', 1e3, 2), unit('J', 1 / 3600, 0, ['joule', 'joules'])],
    shown: { metric: 'Wh', imperial: 'Wh' },
  },
  resistance: {
    base: 'Ω',
    name: 'resistance',
    units: [unit('mΩ', 1e-3, 1, ['mohm']), unit('Ω', 1, 2, ['ohm', 'ohms'])],
    shown: { metric: 'Ω', imperial: 'Ω' },
  },
} as const satisfies Record<
  string,
  {
    readonly base: string;
    readonly name: string;
    readonly units: readonly Unit[];
    readonly shown: Readonly<Record<System, string>>;
  }
>;

/** The branded type of a kind. */
export type QuantityOf<K extends Kind> = Quantity<(typeof kinds)[K]['base']>;

/**
 * A quantity of a kind, in its base unit; the only place a plain number becomes one.
 * @throws RangeError when it is not a finite number
 */
export function quantity<K extends Kind>(kind: K, value: number): QuantityOf<K> {
  if (!Number.isFinite(value))
    throw new RangeError(`${kinds[kind].name} must be a finite number of ${kinds[kind].base}, got ${value}`);
  return value as QuantityOf<K>;
}

/** The units a kind may be written in, in order of size or custom. */
export function unitsOf(kind: Kind): readonly Unit[] {
  return kinds[kind].units;
}

/** The unit of a kind written so: by its exact name first, then in any case. undefined: there is none */
export function unitWritten(kind: Kind, text: string): Unit | undefined {
  const units = unitsOf(kind);
  const plain = text.trim().replaceAll(/\s+/g, ' ');
  return (
    units.find((u) => u.symbol === plain || u.also.includes(plain)) ??
    // longer names may come in any case; but M for mega is never taken for m, a thousandth
    units.find((u) =>
      [u.symbol, ...u.also].some(
        (name) => name.length > 1 && same(name, plain) && !(/^m[WVAΩ]/.test(name) && plain.startsWith('M')),
      ),
    )
  );
}

/** A number of some unit as a quantity. @throws RangeError when the kind has no such unit */
export function inBase<K extends Kind>(kind: K, value: number, unitName: string): QuantityOf<K> {
  const found = required(kind, unitName);
  return quantity(kind, value * found.factor + found.offset);
}

/** A quantity as a number of some unit. @throws RangeError when the kind has no such unit */
export function inUnit<K extends Kind>(kind: K, value: QuantityOf<K>, unitName: string): number {
  const found = required(kind, unitName);
  return (value - found.offset) / found.factor;
}

export function required(kind: Kind, unitName: string): Unit {
  const found = unitWritten(kind, unitName);
  if (!found)
    throw new RangeError(
      `${kinds[kind].name} is written in ${unitsOf(kind)
        .map((u) => u.symbol)
        .join(', ')}; got '${unitName}'`,
    );
  return found;
}

const same = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();
