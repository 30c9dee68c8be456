import './ask-of-book.css';

/**
 * What was said in a sheet or a panel is asked of the book: it is out of sight at once, and taken down when the book has
 * answered; where it was refused it is back with all that was in it. Asked once, it is not asked again meanwhile.
 *
 * @param within  the sheet or panel (`data-asks`), or what lies in it; what lies in none just asks
 * @param ask     reads what was said; what it finds wrong itself shows before anything is out of sight
 */
export async function askOfBook(within: Element, ask: () => unknown): Promise<void> {
  const asks = within.closest<HTMLElement>('[data-asks]');
  if (asks?.dataset.asked !== undefined) return;
  if (asks) asks.dataset.asked = '';
  try {
    await ask();
  } finally {
    if (asks) delete asks.dataset.asked;
  }
}
