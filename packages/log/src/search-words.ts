/** The words of a text as the search goes by them: folded, without endings, each under the one word of its family. */

/** Words that carry nothing in a question put to the log: `what was this bedded with?` */
const empty = new Set(
  'a an and are as at be been by did do does for from had has have how in into is it its last me my now of off on or our she that the then there these this to up was we were what when where which who why will with you your'.split(
    ' ',
  ),
);

/**
 * Words that keepers use one for the other, first the one the search goes by. From memory and common practice: the log
 * is the keeper's own, and what another calls a thread of tape is found under either word.
 */
const families: readonly (readonly string[])[] = [
  ['bed', 'rebed', 'sealant', 'seal', 'reseal', 'mastic', 'caulk', 'goo'],
  ['glue', 'bond', 'adhesive', 'stick', 'reglue'],
  ['epoxy', 'resin'],
  ['varnish', 'revarnish', 'brightwork'],
  ['paint', 'repaint', 'topcoat', 'undercoat'],
  ['antifoul', 'antifouling', 'bottompaint'],
  ['bolt', 'screw', 'fastening', 'fastener', 'machinescrew'],
  ['plate', 'chainplate'],
  ['rope', 'line', 'cord', 'cordage'],
  ['halyard', 'halliard'],
  ['shroud', 'stay', 'wire'],
  ['turnbuckle', 'bottlescrew', 'riggingscrew'],
  ['grease', 'greased', 'lubricate', 'oil'],
  ['leak', 'weep', 'drip', 'seep'],
  ['crack', 'split', 'craze'],
  ['replace', 'renew', 'swap', 'exchange', 'change'],
  ['mend', 'repair', 'fix', 'patch'],
  ['fit', 'install', 'mount'],
  ['buy', 'bought', 'got', 'purchase', 'cost', 'price', 'paid', 'pay', 'spend', 'spent'],
  ['measure', 'read', 'reading', 'gauge', 'volt', 'voltage'],
  ['board', 'centreboard', 'centerboard', 'plateboard', 'dagger', 'daggerboard'],
  ['rudder', 'helm', 'tiller'],
  ['engine', 'outboard', 'motor'],
  ['battery', 'accumulator'],
  ['trailer', 'roadtrailer'],
  ['anchor', 'groundtackle', 'rode'],
  ['insurance', 'policy', 'insured'],
  ['manual', 'handbook', 'instructions'],
  ['inspect', 'check', 'look', 'survey'],
];

/** A word without the ending that says only how it stands in its sentence: `bedded`, `bedding`, `beds` are `bed`. */
function stemOf(word: string): string {
  const stem = withoutEnding(word);
  // `rebedded` has the ending twice
  return stem === word ? stem : stemOf(stem);
}

function withoutEnding(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  let stem = word;
  if (/ies$/.test(stem)) stem = `${stem.slice(0, -3)}y`;
  else if (/(?:sh|ch|x|z|ss)es$/.test(stem)) stem = stem.slice(0, -2);
  else if (/[^su]s$/.test(stem)) stem = stem.slice(0, -1);
  for (const ending of ['ing', 'ed']) {
    if (!stem.endsWith(ending)) continue;
    const bare = stem.slice(0, -ending.length);
    if (bare.length < 3 || !/[aeiouy]/.test(bare)) continue;
    // doubled for the ending alone: `fitted`, `bedding`
    stem = /([bdgmnprt])\1$/.test(bare) ? bare.slice(0, -1) : bare;
    break;
  }
  // `glue` and `glued`, `grease` and `greasing` meet here
  return stem.length > 3 && stem.endsWith('e') ? stem.slice(0, -1) : stem;
}

const folded = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

const familyOf = new Map(
  families.flatMap((words) => words.map((word) => [stemOf(word), stemOf(words[0] ?? word)] as const)),
);

/** The one word a word is searched by, or null where it says nothing. */
export function searchedWord(word: string): string | null {
  const plain = folded(word);
  if (plain === '' || empty.has(plain)) return null;
  const stem = stemOf(plain);
  return familyOf.get(stem) ?? stem;
}

/** The words of a text, in order: letters and figures together, what stands between them left out. */
export function wordsIn(text: string): string[] {
  return folded(text)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}
