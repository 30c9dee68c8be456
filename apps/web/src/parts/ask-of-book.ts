import './ask-of-book.css';

/**
 * What was said in a sheet or a panel is asked of the book: it is out of sight at once, and taken down when the book has
 * answered; where it was refused it is back with all that was in it. Asked once, it is not asked again meanwhile.
 *
 * @param within  the sheet or panel (`data-asks`), or what lies in it; what lies in none just asks
 * @param ask     reads what was said; what it finds wrong itself shows before anything is out of sight
 * @param inSight another sheet comes in its place: it stays until then, and no page shows between the two
 */
export async function askOfBook(within: Element, ask: () => unknown, inSight = false): Promise<void> {
  const asks = within.closest<HTMLElement>('[data-asks]');
  if (asks?.dataset.asked !== undefined) return;
  if (asks) asks.dataset.asked = inSight ? 'in sight' : '';
  try {
    await ask();
  } finally {
    if (asks) delete asks.dataset.asked;
  }
}
