/** Where things are on most small boats, for talk that names the thing and not the place. */
import { type LineText, type Phrase, phrase } from './line-text.ts';
import type { Lexicon, Understood } from './read-line-parts.ts';

/** Words a zone may be called by, then the things that are there. What may be in several places is left out. */
const places: readonly (readonly [zone: readonly string[], things: readonly string[]])[] = [
  // first: what would be taken for another thing by its first word
  [
    ['mast', 'rigging', 'rig'],
    ['anchor light', 'steaming light', 'masthead light', 'deck light', 'spreader light'],
  ],
  [
    [],
    [
      'compass light',
      'compass lamp',
      'chart light',
      'board shorts',
      'starting battery lead',
      'bottom (?:pintle|step|rung|bolt|hinge|edge|corner|end|batten|screw|gudgeon|bearing|washboard|half|one|plate|swage|terminal|of)',
      '(?:go|goes|went|sink|sinks) to the bottom',
    ],
  ],
  [
    ['cabin', 'below'],
    ['cabin lights?', 'reading light'],
  ],
  [
    ['board case', 'board', 'case'],
    ['board winch', 'board wire', 'board tackle', 'board sheave'],
  ],
  [
    ['trailer'],
    [
      'tyres?',
      'tyre pressures?',
      'wheel bearings?',
      'hubs?',
      'jockey wheel',
      'coupling',
      'tow ?hitch',
      'draw ?bar',
      'mudguards?',
      'winch strap',
      'winch post',
      'trailer board',
      'light board',
      'lighting board',
      'number plate',
      'brake cable',
      'brake shoes?',
      'hand ?brake',
      'brakes?',
      'mudflaps?',
      'ball hitch',
      'hitch',
      'bow post',
      'wheel studs?',
      'trailer (?:winch|lights?|wheels?|rollers?)',
      'leaf springs?',
      'bow snubber',
      'snubber',
      'tail ?(?:lamp|light)s?',
      'indicators?',
      'spare wheel',
      'breakaway cable',
      'wheel nuts?',
      'keel rollers?',
      'stub axle',
      'lashing straps?',
    ],
  ],
  [
    ['mast', 'rigging', 'rig'],
    [
      'spreaders?',
      'gooseneck',
      'forestay',
      'backstay',
      'mast step',
      'mast foot',
      'mast heel',
      'topping lift',
      'luff (?:track|groove|slides?)',
      'mast track',
      'mainsail (?:luff )?(?:track|slides?)',
      'aloft',
      'burgee halyard',
      'burgee',
      'turnbuckles?',
      'bottle ?screws?',
      'rigging screws?',
      'lower shrouds?',
      'cap shrouds?',
      'vhf aerial',
      'aerial',
      'kicking strap',
      'vang',
    ],
  ],
  [
    ['bow', 'stem', 'anchor'],
    [
      'anchor',
      'anchor chain',
      'chain locker',
      'anchor locker',
      'stemhead',
      'stem head',
      'stem fitting',
      'bow fitting',
      'bow light',
      'pulpit',
      'windlass',
    ],
  ],
  [['foredeck'], ['forehatch', 'samson post']],
  [
    ['side deck', 'deck'],
    ['stanchions?', 'stanchion base', 'toe ?rail', 'chain ?plates?', 'side deck', 'genoa track'],
  ],
  [
    ['cabin', 'below'],
    [
      'bunks?',
      'berths?',
      'galley',
      'stove',
      'cooker',
      'headlining',
      'bilge',
      'companionway',
      'windows?',
      'port ?holes?',
      'switch ?panel',
      'fuse (?:panel|board|box)',
      'bilge pump',
      'washboards?',
      'gas (?:ring|stove|cooker|hose)',
      'battery',
      'chart table',
    ],
  ],
  [
    ['board case', 'board', 'case'],
    ['centre ?board', 'dagger ?board', 'board case', 'centre case', 'pendant'],
  ],
  [['cockpit'], ['tiller', 'main ?sheet', 'traveller', 'cam cleats?', 'cockpit sole', 'thwart']],
  [
    ['rudder', 'transom', 'stern'],
    ['rudder', 'pintles?', 'gudgeons?', 'rudder (?:blade|stock|head|downhaul)'],
  ],
  [
    ['outboard', 'transom', 'stern'],
    [
      'outboard bracket',
      'kill[- ]?cord',
      'spark plugs?',
      'carburettor',
      'fuel (?:line|hose|bulb)',
      'water pump',
      'tell[- ]?tale is',
      'propeller',
      'prop',
      'shear pin',
      'gear oil',
      'lower unit',
    ],
  ],
  [
    ['transom', 'stern'],
    ['stern ?light', 'stern lamp', 'boarding ladder', 'swim ladder', 'drain bung', 'push ?pit'],
  ],
  [
    ['topsides', 'hull'],
    ['rubbing (?:strake|strip)', 'hull side', 'topsides'],
  ],
  [
    ['bottom', 'keel'],
    ['keel bolts?', 'anti ?fouling', 'skeg', 'keel', 'bottom paint'],
  ],
];

const patterns = places.map(([zone, things]) => ({
  zone,
  pattern: phrase([...things].sort((a, b) => b.length - a.length).join('|')),
}));

const nowhere = patterns.filter(({ zone }) => zone.length === 0);

/**
 * The zone of the thing first named, where a zone of the boat goes by one of the usual words for its place. Nothing is
 * claimed by it: the words stand in the title.
 */
export function zoneOfThing(text: LineText, zones: Lexicon['zones']): Understood<string> | null {
  let first: Understood<string> | null = null;
  for (const { id, pattern } of placesIn(zones)) {
    const match = [...pattern.all(text.plain)].find(
      ({ index, 0: words }) => !text.claimed.some((span) => index < span.to && span.from < index + words.length),
    );
    if (!match) continue;
    const from = match.index;
    if (first !== null && from >= first.from) continue;
    const to = from + match[0].length;
    first = { value: id, from, to, words: text.line.slice(from, to), inTitle: true };
  }
  return first;
}

const known = new WeakMap<Lexicon['zones'], readonly { readonly id: string; readonly pattern: Phrase }[]>();

/** The usual places that this boat has zones for. */
function placesIn(zones: Lexicon['zones']) {
  const before = known.get(zones);
  if (before) return before;
  const here = patterns.flatMap(({ zone, pattern }) => {
    const id = zoneCalled(zone, zones);
    return id === null ? [] : [{ id, pattern }];
  });
  known.set(zones, here);
  return here;
}

/**
 * Places in a line where a thing's name holds a zone's word that does not mean that zone: `anchor light`, `chain locker`,
 * `compass light`, `winch strap`.
 */
export function misleading(
  text: LineText,
  zones: Lexicon['zones'],
): readonly { readonly from: number; readonly to: number }[] {
  return [...placesIn(zones), ...nowhere].flatMap(({ pattern }) =>
    [...pattern.all(text.plain)]
      .filter(([words]) => words.includes(' '))
      .map((match) => ({ from: match.index, to: match.index + match[0].length })),
  );
}

function zoneCalled(names: readonly string[], zones: Lexicon['zones']): string | null {
  for (const wanted of names) {
    for (const [id, { name, words }] of Object.entries(zones))
      if ([name, ...words].some((each) => has(each, wanted))) return id;
  }
  return null;
}

const has = (name: string, wanted: string) => {
  const said = name.toLowerCase().replace(/s\b/g, '');
  return said === wanted || said.startsWith(`${wanted} `) || said.endsWith(` ${wanted}`);
};
