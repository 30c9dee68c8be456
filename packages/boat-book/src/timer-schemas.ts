/** The schema of a timer, held to its type at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, id, title } from './field-schemas.ts';

export const timerSchema = z.strictObject({ step: id, wait: z.nullable(id), words: title, started: at, ends: at });
