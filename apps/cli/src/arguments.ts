/** Reading a command's arguments: what stands by itself, `--name value`, `--name=value` and bare `--name`. */

export interface ArgumentForm {
  /** what stands by itself, in order, with the word for it in messages */
  readonly plain: readonly string[];
  /** options with a value, with what the value must be */
  readonly valued: Readonly<Record<string, string>>;
  /** options without one */
  readonly bare: readonly string[];
}

export type ReadArguments =
  | {
      readonly kind: 'read';
      readonly plain: readonly string[];
      readonly valued: Readonly<Record<string, string>>;
      readonly bare: ReadonlySet<string>;
    }
  | { readonly kind: 'refused'; readonly wrong: string };

/** The arguments by the form, or the first thing wrong with them in words. */
export function readArguments(args: readonly string[], form: ArgumentForm): ReadArguments {
  const plain: string[] = [];
  const valued: Record<string, string> = {};
  const bare = new Set<string>();
  const known = [...Object.keys(form.valued), ...form.bare].map((name) => `--${name}`).join(', ');
  for (let at = 0; at < args.length; at++) {
    const arg = args[at]!;
    if (!arg.startsWith('--')) {
      plain.push(arg);
      continue;
    }
    const [name = '', ...rest] = arg.slice(2).split('=');
    if (Object.hasOwn(form.valued, name)) {
      const value = rest.length > 0 ? rest.join('=') : args[++at];
      if (value === undefined) return refused(`--${name} has no value after it; it takes ${form.valued[name]}`);
      if (Object.hasOwn(valued, name)) return refused(`--${name} is given twice; give it once`);
      valued[name] = value;
    } else if (form.bare.includes(name)) {
      if (rest.length > 0) return refused(`--${name} takes no value, got '${rest.join('=')}'`);
      bare.add(name);
    } else return refused(`there is no option '${arg}'; there ${known === '' ? 'are none' : `are ${known}`}`);
  }
  if (plain.length < form.plain.length) return refused(`${form.plain[plain.length]} is missing`);
  if (plain.length > form.plain.length)
    return refused(`'${plain[form.plain.length]}' is one too many; give ${form.plain.join(' ') || 'none'}`);
  return { kind: 'read', plain, valued, bare };
}

const refused = (wrong: string): ReadArguments => ({ kind: 'refused', wrong });
