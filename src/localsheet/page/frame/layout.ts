import { NARROW } from './narrow';
import { element } from './elements';

/** Width and visibility of the pane: by mouse, by keyboard, remembered for the session. */
const NARROWEST = 280;
const WIDEST = 720;
const STEP = 24;
const KEY = 'spawnbook.paneWidth';

const remembered = (): number => {
  try {
    return Number(sessionStorage.getItem(KEY)) || 0;
  } catch {
    return 0;
  }
};

export function wireLayout(onResize: () => void): void {
  const work = element('work', HTMLElement);
  const splitter = element('splitter', HTMLElement);
  const toggle = element('pane-toggle', HTMLButtonElement);
  let width = remembered() || 360;

  const apply = (wanted: number): void => {
    width = Math.round(Math.min(WIDEST, Math.max(NARROWEST, Math.min(wanted, window.innerWidth - 320))));
    work.style.setProperty('--pane', `${width}px`);
    splitter.setAttribute('aria-valuenow', String(width));
    splitter.setAttribute('aria-valuetext', `${width} pixels`);
    try {
      sessionStorage.setItem(KEY, String(width));
    } catch {
      /* private windows may refuse */
    }
    onResize();
  };
  splitter.setAttribute('aria-valuemin', String(NARROWEST));
  splitter.setAttribute('aria-valuemax', String(WIDEST));
  apply(width);

  splitter.addEventListener('pointerdown', (event) => {
    splitter.setPointerCapture(event.pointerId);
    work.classList.add('is-dragging');
    const move = (at: PointerEvent): void => {
      apply(window.innerWidth - at.clientX - 3);
    };
    splitter.addEventListener('pointermove', move);
    splitter.addEventListener(
      'lostpointercapture',
      () => {
        splitter.removeEventListener('pointermove', move);
        work.classList.remove('is-dragging');
      },
      { once: true },
    );
  });
  splitter.addEventListener('keydown', (event) => {
    const by = { ArrowLeft: STEP, ArrowRight: -STEP, Home: WIDEST, End: -WIDEST }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    apply(width + by);
  });
  const narrow = window.matchMedia(NARROW);
  const say = (): void => {
    const isPaneShown = narrow.matches
      ? !work.classList.contains('show-sheet')
      : !work.classList.contains('no-pane');
    toggle.textContent = narrow.matches
      ? isPaneShown
        ? 'Sheet'
        : 'Pane'
      : isPaneShown
        ? 'Hide pane'
        : 'Show pane';
    toggle.setAttribute('aria-expanded', String(isPaneShown));
  };
  toggle.addEventListener('click', () => {
    // On a narrow screen one of the two fills it.
    work.classList.toggle(narrow.matches ? 'show-sheet' : 'no-pane');
    say();
    onResize();
  });
  narrow.addEventListener('change', say);
  say();
  window.addEventListener('resize', () => {
    apply(width);
  });
}
