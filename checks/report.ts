import { markdownTable } from './markdown-table.ts';
import type { OtherCheck } from './other-check.ts';
import type { RowKind } from './row.ts';
import type { OutsideRun, RowResult } from './run-rows.ts';

/** One line of the table: rows of one subject, family, kind and provenance. */
export interface TableLine {
  readonly subject: string;
  readonly family: string;
  readonly kind: RowKind;
  readonly provenance: string;
  readonly rows: number;
  readonly failed: number;
  /** worst error over what is allowed */
  readonly worst: number;
}

/** How a row's figure was had: found in stored material, recalled, or common practice; and printed or worked out. */
export function provenanceOf({ provenance, basis }: { readonly provenance: string; readonly basis: string }): string {
  const had = provenance.startsWith('found')
    ? 'found'
    : provenance === 'memory'
      ? 'recalled'
      : provenance === 'common practice'
        ? 'common practice'
        : 'other';
  return `${had}, ${basis}`;
}

/** The results as table lines, in the order subject, family, kind, provenance. */
export function tableLines(results: readonly RowResult[]): TableLine[] {
  const lines = new Map<
    string,
    { line: Omit<TableLine, 'rows' | 'failed' | 'worst'>; shares: number[]; failed: number }
  >();
  for (const { row, comparison } of results) {
    const [subject, family] = row.id.split('.') as [string, string];
    const line = { subject, family: `${subject}.${family}`, kind: row.kind, provenance: provenanceOf(row) };
    const key = Object.values(line).join('|');
    const entry = lines.get(key) ?? { line, shares: [], failed: 0 };
    entry.shares.push(comparison.share);
    if (!comparison.passed) entry.failed++;
    lines.set(key, entry);
  }
  return [...lines.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { line, shares, failed }]) => ({ ...line, rows: shares.length, failed, worst: Math.max(...shares) }));
}

const kinds: readonly { readonly kind: RowKind; readonly title: string }[] = [
  { kind: 'outside answer', title: 'Against outside answers' },
  { kind: 'default in its band', title: 'Defaults that must lie in the band of the trade' },
  { kind: 'transcription', title: 'Transcription: the same source on both sides, so only the copying is checked' },
];

/** The table in Markdown: rows by subject and provenance, transcription and what is derived twice apart. */
export function tableInMarkdown(results: readonly RowResult[], others: readonly OtherCheck[]): string[] {
  const lines = tableLines(results);
  const text: string[] = [];
  for (const { kind, title } of kinds) {
    const ofKind = lines.filter((line) => line.kind === kind);
    if (ofKind.length === 0) continue;
    text.push(
      `## ${title}`,
      '',
      ...markdownTable(
        [
          { head: 'family' },
          { head: 'provenance' },
          { head: 'rows', right: true },
          { head: 'failed', right: true },
          { head: 'worst error over allowed', right: true },
        ],
        ofKind.map((line) => [line.family, line.provenance, `${line.rows}`, `${line.failed}`, share(line.worst)]),
      ),
    );
    text.push('');
  }
  for (const kind of ['another program', 'derived twice'] as const) {
    const ofKind = others.filter((other) => other.kind === kind);
    if (ofKind.length === 0) continue;
    text.push(
      `## ${kind === 'another program' ? 'Against another program' : 'Derived twice'}`,
      '',
      ...markdownTable(
        [
          { head: 'subject' },
          { head: 'what' },
          { head: 'against' },
          { head: 'compared', right: true },
          { head: 'mean', right: true },
          { head: 'worst', right: true },
          { head: 'allowed', right: true },
          { head: 'why any remains' },
        ],
        ofKind.map((other) => [
          other.subject,
          other.what,
          other.against,
          `${other.compared}`,
          figure(other.mean, other.unit),
          figure(other.worst, other.unit),
          figure(other.allowed, other.unit),
          other.why,
        ]),
      ),
    );
    text.push('');
  }
  return text;
}

/** What came of a folder of rows: run, passed, failed with both figures, and what could not be asked. */
export function outsideRunInLines(run: OutsideRun): string[] {
  const failed = run.results.filter(({ comparison }) => !comparison.passed);
  const count = (each: readonly { readonly rows: number }[]) => each.reduce((sum, { rows }) => sum + rows, 0);
  const lines = [
    `${run.results.length} rows run, ${run.results.length - failed.length} passed, ${failed.length} failed`,
    ...failed.map(
      ({ row, comparison }) =>
        `  failed ${row.id}: ${comparison.got} here, ${comparison.wanted} ${row.unit} in the row (${row.question}, ${row.pick}; ${row.source})`,
    ),
  ];
  if (run.unmapped.length > 0)
    lines.push(
      `${run.unmapped.length} rows not mapped:`,
      ...run.unmapped.map(({ id, because }) => `  ${id}: ${because}`),
    );
  const left = [...run.unasked, ...run.unknown.map((each) => ({ ...each, because: 'not listed either' }))];
  if (left.length > 0)
    lines.push(
      `${left.length} families not mapped, ${count(left)} rows:`,
      ...left.map(({ family, rows, because }) => `  ${family} (${rows}): ${because}`),
    );
  return lines;
}

const share = (worst: number) => (Number.isFinite(worst) ? worst.toFixed(2) : 'failed');
const figure = (value: number, unit: string) => `${Number(value.toPrecision(2))}${unit === '' ? '' : ` ${unit}`}`;
