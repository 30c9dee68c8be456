import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod/mini';

/** A row of the handbook's form: inputs in the words of its source, not yet of a question. */
const tolerance = z.union([
  z.object({ kind: z.enum(['abs', 'rel']), value: z.number() }),
  z.object({ kind: z.enum(['exact', 'range', 'text']) }),
]);
const expected = z.union([z.number(), z.string(), z.array(z.number()).check(z.minLength(2))]);
const outsideRow = z.object({
  id: z.string(),
  quantity: z._default(z.string(), ''),
  inputs: z.union([z.record(z.string(), z.unknown()), z.string()]),
  expected: z.unknown(),
  unit: z.string(),
  tolerance,
  source: z.string(),
  provenance: z.string(),
  basis: z._default(z.string(), 'basis not stated'),
  note: z.optional(z.string()),
});
export type OutsideRow = z.infer<typeof outsideRow>;

/** A row that a question answers: inputs are the question's own fields, `pick` the figure compared. */
const checkRow = z.object({
  id: z.string(),
  question: z.string(),
  inputs: z.record(z.string(), z.union([z.string(), z.number()])),
  pick: z.string(),
  expected,
  unit: z.string(),
  tolerance,
  source: z.string(),
  provenance: z.string(),
  basis: z.string(),
  /** what the comparison shows: see `RowKind` */
  kind: z.enum(['outside answer', 'default in its band', 'transcription']),
});
export type CheckRow = z.infer<typeof checkRow>;

/**
 * - `outside answer`: the figure was worked out or measured outside this project;
 * - `default in its band`: a figure of ours lies where the trade says it should;
 * - `transcription`: the row and our table are from the same source, so agreement shows only that it was copied well.
 */
export type RowKind = CheckRow['kind'];

/** Reads every JSON file of a folder as rows of the handbook's form. @throws Error naming the file and what is wrong */
export function outsideRows(folder: string): { readonly file: string; readonly row: OutsideRow }[] {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort();
  if (files.length === 0) throw new Error(`there is no .json file in ${folder}`);
  return files.flatMap((file) => {
    let data: unknown;
    try {
      data = JSON.parse(readFileSync(join(folder, file), 'utf8'));
    } catch (cause) {
      throw new Error(`${file} is not JSON: ${cause instanceof Error ? cause.message : String(cause)}`);
    }
    if (!Array.isArray(data)) throw new Error(`${file} holds no list of rows`);
    return data.map((each, i) => {
      const read = outsideRow.safeParse(each);
      if (!read.success) {
        const first = read.error.issues[0];
        throw new Error(`${file}, row ${i + 1}: ${first?.path.join('.') ?? ''} ${first?.message ?? 'is not a row'}`);
      }
      return { file, row: read.data };
    });
  });
}

/** Reads the rows a subject keeps for good. */
export function keptRows(file: string): CheckRow[] {
  return z.array(checkRow).parse(JSON.parse(readFileSync(file, 'utf8')));
}
