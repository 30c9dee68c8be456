import { expect, it } from 'vitest';
import { askOfBook } from './ask-of-book.ts';

/** What lies in a sheet or panel, as far as it is asked here. */
function inSheet() {
  const sheet = { dataset: {} as { asked?: string } };
  return { sheet, button: { closest: () => sheet } as unknown as Element };
}

it('is out of sight while the book is asked, is not asked twice, and is back when it is answered', async () => {
  const { sheet, button } = inSheet();
  let answer = () => {};
  let asked = 0;
  const ask = () => {
    asked++;
    return new Promise<void>((then) => {
      answer = then;
    });
  };
  const first = askOfBook(button, ask);
  expect(sheet.dataset.asked).toBe('');
  await askOfBook(button, ask);
  expect(asked).toBe(1);
  expect(sheet.dataset.asked).toBe('');
  answer();
  await first;
  expect(sheet.dataset.asked).toBeUndefined();
});

it('stays in sight where another sheet comes in its place, and is asked once all the same', async () => {
  const { sheet, button } = inSheet();
  let asked = 0;
  const first = askOfBook(button, async () => asked++, true);
  expect(sheet.dataset.asked).toBe('in sight');
  await askOfBook(button, async () => asked++, true);
  await first;
  expect(asked).toBe(1);
  expect(sheet.dataset.asked).toBeUndefined();
});

it('is back when asking fails, and what lies in no sheet just asks', async () => {
  const { sheet, button } = inSheet();
  await expect(askOfBook(button, () => Promise.reject(new Error('the book is gone')))).rejects.toThrow('gone');
  expect(sheet.dataset.asked).toBeUndefined();
  let asked = 0;
  await askOfBook({ closest: () => null } as unknown as Element, () => asked++);
  expect(asked).toBe(1);
});
