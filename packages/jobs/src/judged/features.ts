/** What a topic, or a clause of it, is judged by: its words and what the rules take it for, each by a name. */
import type { TalkClause, Topic } from '../walk-topics.ts';

/** By name, how much of it there is. */
export type Features = ReadonlyMap<string, number>;

const senses = [
  'about',
  'parts',
  'defect',
  'remedy',
  'fine',
  'leftBe',
  'done',
  'putRight',
  'hearsay',
  'advised',
  'temporary',
  'pronoun',
  'subject',
  'minutes',
  'detail',
] as const;

const stemOf = (word: string) => {
  for (const end of ['ing', 'ed', 'es', 's'])
    if (word.endsWith(end) && word.length - end.length >= 4) return word.slice(0, -end.length);
  return word;
};
const stemsOf = (words: string) => (words.match(/[a-zß-ɏ']+|\d+/g) ?? []).map(stemOf);

/** What a fix for now is made of, where the thing itself was not to be had; what it does; and until when. */
const kinds = {
  makeshift:
    /^(?:string|twine|cord|shockcord|bungee|lashing|lanyard|tape|duct|gaffer|insulat|electrical|cork|bung|peg|clothes|bag|bin|bucket|bowl|tin|can|carton|bottle|lid|wedge|matchstick|matches|stick|broom|handle|plank|batten|offcut|scrap|tie|ties|clamp|clip|bolt|nail|screw|washer|staple|paperclip|hanger|hose|rag|towel|sock|glove|tights|sponge|cloth|putty|wax|grease|gum|plaster|cardboard|plywood|ply|tarp|tarpaulin|sheet|banner|brick|block|weight|strap|webbing|rope|line|halyard|hank|shackle|karabiner|carabiner|spare|bit|bits|piece|length|loop|twist|turns?|wipe|blob|dab|wodge|lump|scrap|strip|old|kitchen|garden|jam|milk|beer|cake|biscuit)$/,
  holds:
    /^(?:held|hold|keep|kept|ti|tied|tie|lash|wedg|stuff|wrap|jam|jamm|prop|propp|swap|swapp|bodg|tap|tape|plug|plugg|stuck|stick|clamp|clipp|clip|pegg|peg|hung|hang|strapp|strap|bound|bind|catch|caught|cover|pull|runn|run|mak|stand|serv|do|doing|suffic|chuck|sling|slung|whipp|parcel|seiz|cork|stop|patch|park|set|put|got)$/,
  meanwhile:
    /^(?:now|moment|present|meanwhile|meantime|time|till|until|temporary|temporarily|week|month|since|still|currently|instead|these|today|tonight|interim|stopgap|bodge|jury|emergency|far|again)$/,
} as const;
type Kind = keyof typeof kinds;
const kindsOf = (stems: readonly string[]) =>
  (Object.keys(kinds) as Kind[]).filter((kind) => stems.some((stem) => kinds[kind].test(stem)));

class Counted {
  readonly all = new Map<string, number>();
  add(name: string, much = 1, most = Number.POSITIVE_INFINITY) {
    this.all.set(name, Math.min(most, (this.all.get(name) ?? 0) + much));
  }
  atLeast(name: string, much: number) {
    this.all.set(name, Math.max(this.all.get(name) ?? 0, much));
  }
}

/** A topic among its neighbours, for whether there is a job in it. */
export function topicFeatures(topics: readonly Topic[], at: number): Features {
  const { clauses } = topics[at]!;
  const counted = new Counted();
  for (const { words, role, sense, asked } of clauses) {
    const stems = stemsOf(words);
    for (const stem of stems) counted.add(`w ${stem}`, 1, 1);
    for (const [n, stem] of stems.entries()) {
      if (n > 0) counted.add(`b ${stems[n - 1]} ${stem}`, 1, 1);
      counted.add(`r ${role} ${stem}`, 0.5, 1);
    }
    counted.add(`role ${role}`, 0.5, 2);
    counted.atLeast(`any ${role}`, 1);
    for (const name of senses)
      if (sense[name]) {
        counted.add(`s ${name}`, 0.5, 2);
        counted.atLeast(`any s ${name}`, 1);
      }
    if (sense.things.length > 0) counted.add('things', sense.things.length / 2, 2);
    if (asked) counted.add('asked', 0.5, 2);
  }
  counted.add(`first ${clauses[0]!.role}`);
  counted.add(`last ${clauses.at(-1)!.role}`);
  counted.add('length', Math.min(clauses.length, 8) / 4);
  if (clauses.some(({ listed }) => listed)) counted.add('listed');
  for (const [name, near] of [
    ['before', topics[at - 1]?.clauses.at(-1)],
    ['after', topics[at + 1]?.clauses[0]],
  ] as const) {
    if (near === undefined) continue;
    counted.add(`${name} ${near.role}`);
    for (const stem of stemsOf(near.words).slice(0, 6)) counted.atLeast(`${name} w ${stem}`, 0.5);
  }
  return counted.all;
}

/** A clause among its neighbours, for whether it tells of a fix that holds for now. */
export function clauseFeatures(
  talk: readonly { readonly topic: number; readonly clause: TalkClause }[],
  at: number,
): Features {
  const { topic, clause } = talk[at]!;
  const counted = new Counted();
  const stems = stemsOf(clause.words);
  for (const [n, stem] of stems.entries()) {
    counted.atLeast(`w ${stem}`, 1);
    counted.atLeast(`b ${stems[n - 1] ?? '^'} ${stem}`, 1);
    if (n > 1) counted.atLeast(`k ${stems[n - 2]} ${stem}`, 0.5);
  }
  if (stems.length > 0) counted.atLeast(`b ${stems.at(-1)} $`, 1);
  counted.add(`role ${clause.role}`);
  for (const name of senses) if (clause.sense[name]) counted.add(`s ${name}`);
  const own = kindsOf(stems);
  for (const kind of own) counted.add(`kind ${kind}`);
  if (own.length > 1) counted.add(`kinds ${own.join(' ')}`);
  for (const by of [-3, -2, -1, 1, 2, 3]) {
    const near = talk[at + by];
    if (near === undefined) continue;
    const share = 1 / Math.abs(by);
    const where = `${by < 0 ? 'before' : 'after'} ${near.topic === topic ? 'same' : 'other'}`;
    counted.atLeast(`${where} ${near.clause.role}`, share);
    for (const stem of stemsOf(near.clause.words))
      counted.atLeast(`${by < 0 ? 'before' : 'after'} w ${stem}`, share / 2);
    if (Math.abs(by) === 1) {
      const here = new Set(own);
      for (const kind of kindsOf(stemsOf(near.clause.words))) {
        counted.atLeast(`${where} kind ${kind}`, 1);
        if (!here.has(kind)) for (const each of own) counted.atLeast(`${where} kind ${kind} with ${each}`, 1);
      }
    }
    for (const name of ['defect', 'remedy', 'done', 'fine', 'minutes', 'hearsay', 'temporary'] as const)
      if (near.clause.sense[name]) counted.atLeast(`${where} s ${name}`, share);
  }
  if (clause.sense.things.length > 0) counted.add('things', Math.min(2, clause.sense.things.length));
  counted.add('length', Math.min(12, stems.length) / 6);
  if (talk[at - 1]?.topic !== topic) counted.add('first');
  if (clause.asked) counted.add('asked');
  return counted.all;
}
