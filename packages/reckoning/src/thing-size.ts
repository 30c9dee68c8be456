/** The size of a thing as its name says it, and whether another is of that size. */

/** What a name says of a size; null: nothing. */
export interface ThingSize {
  /** nominal diameter of a metric thread, M6 is 6 */
  readonly thread_mm: number | null;
  /** of a bolt, screw, pin or rivet */
  readonly length_mm: number | null;
  /** diameter, thickness or width */
  readonly size_mm: number | null;
  /** of a shackle or clevis */
  readonly pin_mm: number | null;
  /** strands × wires of a wire rope */
  readonly laid: '1×19' | '7×7' | '7×19' | null;
  /** of one conductor */
  readonly area_mm2: number | null;
  readonly cores: 'single' | 'twin' | null;
  /** of a fuse or breaker */
  readonly current_A: number | null;
  readonly metal: 'A2' | 'A4' | 'stainless' | 'galvanised' | 'bronze' | 'brass' | null;
}

const figure = (found: string | undefined): number | null =>
  found === undefined ? null : Number(found.replace(',', '.'));
const number = String.raw`(\d+(?:[.,]\d+)?)`;
const thread = new RegExp(String.raw`\bM${number}(?:\s*[×x]\s*${number})?(?:\s*[×x]\s*${number})?`, 'i');
const across = new RegExp(String.raw`${number}\s*(?:mm)?\s*[×x]\s*${number}(?:\s*mm)?`, 'i');
const laid = /\b(1|7)\s*[×x]\s*(7|19)\b/i;
const area = new RegExp(String.raw`${number}\s*(?:mm²|mm2|sq\.? ?mm)`, 'i');
const pin = new RegExp(String.raw`pin (?:of )?${number}\s*mm|${number}\s*mm pin`, 'i');
const millimetres = new RegExp(String.raw`${number}\s*mm(?![²2])`, 'i');
const ampere = new RegExp(String.raw`${number}\s*A\b(?![24]\b)`);
/** What has a length of its own, that is no amount. */
const fastener = /\b(bolts?|screws?|nails?|rivets?|studs?|pins?|machine screws?)\b/i;

/** Reads the size in a name: `M6 × 40 bolts, A4`, `7 × 19 wire, 4 mm`, `Tinned twin cable, 2.5 mm²`, `Shackle, pin 8 mm`. */
export function thingSize(name: string): ThingSize {
  const strands = laid.exec(name);
  const rest = strands === null ? name : name.replace(strands[0], ' ');
  const threaded = thread.exec(rest);
  const pinned = pin.exec(rest);
  const crossed = threaded === null && fastener.test(rest) ? across.exec(rest) : null;
  const conductor = area.exec(rest);
  const plain = rest
    .replace(pinned?.[0] ?? '', ' ')
    .replace(crossed?.[0] ?? '', ' ')
    .replace(threaded?.[0] ?? '', ' ');
  const length =
    threaded !== null
      ? // with a pitch between, the length comes last: M6 × 1 × 40
        (figure(threaded[3] ?? threaded[2]) ?? figure(/(\d+) mm long/i.exec(plain)?.[1]))
      : figure(crossed?.[2]);
  return {
    thread_mm: figure(threaded?.[1]),
    length_mm: length,
    size_mm: crossed === null ? (threaded === null ? figure(millimetres.exec(plain)?.[1]) : null) : figure(crossed[1]),
    pin_mm: figure(pinned?.[1] ?? pinned?.[2]),
    laid: strands === null ? null : (`${strands[1]}×${strands[2]}` as ThingSize['laid']),
    area_mm2: figure(conductor?.[1]),
    cores: /\btwin\b|\btwo[- ]core\b/i.test(name)
      ? 'twin'
      : /\bsingle[- ]core\b|\bsingly\b/i.test(name)
        ? 'single'
        : null,
    current_A: /\bfuse|\bbreaker/i.test(name) ? figure(ampere.exec(rest)?.[1]) : null,
    metal: metalOf(name),
  };
}

function metalOf(name: string): ThingSize['metal'] {
  if (/\bA4\b|\b316L?\b/i.test(name)) return 'A4';
  if (/\bA2\b|\b304\b/i.test(name)) return 'A2';
  if (/\bstainless\b/i.test(name)) return 'stainless';
  if (/\bgalvani[sz]ed\b/i.test(name)) return 'galvanised';
  if (/\bbronze\b/i.test(name)) return 'bronze';
  return /\bbrass\b/i.test(name) ? 'brass' : null;
}

export type SizeFit =
  /** of that size as far as either name says it; `unsaid`: what is asked and the other's name does not say */
  | { readonly kind: 'fits'; readonly unsaid: readonly string[] }
  | { readonly kind: 'other size'; readonly asked: string; readonly there: string };

/**
 * Whether a thing of a name can serve where another is asked for. Sizes must be equal: M6 × 40 is not M6 × 30, 2.5 mm²
 * is not 1.5 mm². Plain stainless is neither sure to be A2 nor A4, so it counts as not said.
 */
export function sizeFit(asked: string, there: string): SizeFit {
  const [want, have] = [thingSize(asked), thingSize(there)];
  const unsaid: string[] = [];
  for (const part of sizeParts) {
    const a = want[part];
    // of a bolt the thickness is its thread
    const b = have[part] ?? (part === 'size_mm' ? have.thread_mm : part === 'thread_mm' ? have.size_mm : null);
    if (a === null) continue;
    if (b === null || (part === 'metal' && vague(String(a), String(b)))) unsaid.push(partWords[part]);
    else if (a !== b && !(part === 'metal' && a === 'stainless'))
      return { kind: 'other size', asked: partSaid(part, a), there: partSaid(part, b) };
  }
  return { kind: 'fits', unsaid };
}

const vague = (asked: string, there: string) => there === 'stainless' && (asked === 'A2' || asked === 'A4');

const partWords = {
  thread_mm: 'thread',
  length_mm: 'length',
  size_mm: 'size',
  pin_mm: 'pin',
  laid: 'how it is laid',
  area_mm2: 'size of the conductor',
  cores: 'one core or two',
  current_A: 'ampere',
  metal: 'metal',
} as const;
const sizeParts = Object.keys(partWords) as (keyof ThingSize)[];

function partSaid(part: keyof ThingSize, value: string | number): string {
  switch (part) {
    case 'thread_mm':
      return `M${value}`;
    case 'length_mm':
      return `${value} mm long`;
    case 'pin_mm':
      return `pin ${value} mm`;
    case 'area_mm2':
      return `${value} mm²`;
    case 'current_A':
      return `${value} A`;
    case 'size_mm':
      return `${value} mm`;
    default:
      return String(value);
  }
}

/** What was read of a size, in words: `M6, 40 mm long, A4`; null: none. */
export function sizeInWords(name: string): string | null {
  const size = thingSize(name);
  const said = sizeParts.flatMap((part) => (size[part] === null ? [] : [partSaid(part, size[part])]));
  return said.length === 0 ? null : said.join(', ');
}
