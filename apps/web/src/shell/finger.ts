/**
 * After a finger's tap the browser tells everything a mouse would have done on its way to the click (UI Events, 'compatibility
 * mouse events' of Pointer Events), and that the finger's pointer came, was held and went. For each of these some eight,
 * React looks who on the page listens, which nobody does: a tenth of what a tap costs. They end here; the click comes.
 */

const comesAndGoes = ['pointerover', 'pointerout', 'gotpointercapture', 'lostpointercapture'] as const;
const ofAMouse = ['mouseover', 'mouseout', 'mousemove', 'mousedown', 'mouseup'] as const;
/** the pointer heard of last is a finger */
let isFinger = false;

function heard(event: Event): void {
  isFinger = event instanceof PointerEvent && event.pointerType === 'touch';
}

/** What is drawn by uPlot follows the mouse, and with it a finger that taps. */
function isWanted({ target }: Event): boolean {
  return target instanceof Element && target.closest('.uplot') !== null;
}

/** From now on, what follows a finger's tap and nobody listens for goes no further. */
export function hearFingerOnce(): void {
  for (const type of ['pointerdown', 'pointermove'] as const)
    addEventListener(type, heard, { capture: true, passive: true });
  for (const type of comesAndGoes)
    addEventListener(
      type,
      (event) => {
        heard(event);
        if (isFinger) event.stopPropagation();
      },
      { capture: true, passive: true },
    );
  for (const type of ofAMouse)
    addEventListener(
      type,
      (event) => {
        if (isFinger && !isWanted(event)) event.stopPropagation();
      },
      { capture: true, passive: true },
    );
}
