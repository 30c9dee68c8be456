/** The drawing of readings: uPlot, given no more points than there are pixels, moved by hand, wheel and keys. */
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { gapFrom_ms, thinned } from '#readings';
import { localAt } from '#units';
import { dayMark, monthMark } from './moment-in-words.ts';

/** A line over time. NaN: not known. */
export interface PlotLine {
  /** [ms] */
  readonly at: Float64Array;
  readonly values: Float32Array;
}

/** What is believed of the charge over the time of the readings. [ms, %] */
export interface PlotBand {
  readonly at: Float64Array;
  readonly low: Float32Array;
  readonly likely: Float32Array;
  readonly high: Float32Array;
}

export interface View {
  readonly from: number;
  readonly to: number;
}

export interface Plot {
  show(view: View): void;
  view(): View;
  /** nearer below 1, wider above; about a share of the width, 0–1 */
  zoom(times: number, about?: number): void;
  /** by a share of what is seen; later over 0 */
  pan(share: number): void;
  all(): void;
  resize(width: number): void;
  destroy(): void;
}

/** Nearer than this shows nothing more. [ms] */
const leastView_ms = 10_000;

export interface PlotWants {
  readonly line: PlotLine;
  readonly unit: string;
  readonly places: number;
  readonly band: PlotBand | null;
  readonly zone: string;
  /** the instant under the pointer; null: none. Called as it moves */
  readonly onPoint: (at: number | null) => void;
  readonly onView: (view: View) => void;
}

/** Draws into an element, all of the line at first. Colours are those of the page’s tokens at this moment. */
export function plotInto(element: HTMLElement, wants: PlotWants, view: View | null = null): Plot {
  const { line, band, zone } = wants;
  const whole: View = { from: line.at[0]!, to: Math.max(line.at.at(-1)!, line.at[0]! + leastView_ms) };
  const gap_ms = gapFrom_ms(line.at);
  let seen = view ?? whole;
  let width = Math.max(280, element.clientWidth);
  const colour = (name: string) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
  const [ink, soft, hair, work] = ['--ink', '--soft', '--hair', '--work'].map(colour);

  const data = (): uPlot.AlignedData => {
    const pixels = Math.max(50, Math.round((width - 90) * Math.min(2, devicePixelRatio)));
    const one = thinned(line.at, line.values, seen.from, seen.to, pixels, gap_ms);
    const first: uPlot.AlignedData = [one.at, one.values as (number | null)[]];
    if (band === null) return first;
    const never = Number.POSITIVE_INFINITY;
    const few = Math.min(400, pixels);
    const drawn = (values: Float32Array): uPlot.AlignedData => {
      const { at, values: some } = thinned(band.at, values, seen.from, seen.to, few, never);
      return [at, some as (number | null)[]];
    };
    // a break reaches over what the joining puts between its ends (2); the band has none (1)
    return uPlot.join(
      [first, drawn(band.low), drawn(band.high), drawn(band.likely)],
      [
        [1, 2],
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    );
  };
  const clockOf = (ms: number) => localAt(ms, zone).clock;
  const marks = (_: uPlot, splits: number[]): string[] => {
    const span = seen.to - seen.from;
    let before = '';
    return splits.map((ms) => {
      const { day } = localAt(ms, zone);
      const mark = span > 200 * 86_400_000 ? monthMark(day) : dayMark(day);
      const said = span > 3 * 86_400_000 ? mark : mark === before ? clockOf(ms) : `${clockOf(ms)}\n${mark}`;
      before = mark;
      return said;
    });
  };
  const axis = { stroke: soft!, font: '13px "Atkinson Hyperlegible Next Variable", system-ui, sans-serif' };
  const grid = { stroke: hair!, width: 1 };
  const ticks = { stroke: hair!, width: 1, size: 4 };
  const hidden = { points: { show: false }, spanGaps: true };
  const plot = new uPlot(
    {
      width,
      height: Math.round(Math.max(220, Math.min(360, width * 0.55))),
      ms: 1,
      tzDate: (ms) => uPlot.tzDate(new Date(ms), zone),
      legend: { show: false },
      cursor: {
        drag: { x: false, y: false, setScale: false },
        points: { show: false },
        y: false,
        bind: { dblclick: () => null },
      },
      scales: {
        x: { time: true, auto: false, range: () => [seen.from, seen.to] },
        line: {
          range: (_, least, most) => {
            // drawn no tighter than a tenth, so that a still battery looks still
            const room = Math.max(0.05, (most - least) * 0.08);
            return [least - room, most + room];
          },
        },
        pct: { range: () => [0, 100] },
      },
      axes: [
        { ...axis, grid, ticks, values: marks, size: 44, space: 70 },
        {
          ...axis,
          scale: 'line',
          grid,
          ticks,
          size: 44,
          values: (_, splits) => splits.map((value) => value.toFixed(wants.places)),
        },
        ...(band === null
          ? []
          : [
              {
                ...axis,
                scale: 'pct',
                side: 1 as const,
                grid: { show: false },
                ticks,
                size: 40,
                stroke: work!,
                values: (_: uPlot, splits: number[]) => splits.map(String),
              },
            ]),
      ],
      series: [
        {},
        {
          scale: 'line',
          stroke: ink!,
          width: 1.25,
          points: { show: line.at.length < 60, size: 4, stroke: ink!, fill: ink! },
        },
        ...(band === null
          ? []
          : [
              { scale: 'pct', ...hidden, stroke: 'transparent' },
              { scale: 'pct', ...hidden, stroke: 'transparent' },
              { scale: 'pct', ...hidden, stroke: work!, width: 2 },
            ]),
      ],
      ...(band === null ? {} : { bands: [{ series: [3, 2] as [number, number], fill: `${work}2e` }] }),
      hooks: {
        setCursor: [
          (u) => {
            const { left } = u.cursor;
            wants.onPoint(left === undefined || left < 0 ? null : u.posToVal(left, 'x'));
          },
        ],
      },
    },
    data(),
    element,
  );
  const show = ({ from, to }: View) => {
    const span = Math.min(whole.to - whole.from, Math.max(leastView_ms, to - from));
    const start = Math.max(whole.from, Math.min(whole.to - span, from));
    seen = { from: start, to: start + span };
    plot.setData(data());
    wants.onView(seen);
  };
  const zoom = (times: number, about = 0.5) => {
    const at = seen.from + about * (seen.to - seen.from);
    const span = (seen.to - seen.from) * times;
    show({ from: at - about * span, to: at + (1 - about) * span });
  };
  const undoHands = moveByHand(plot.over, {
    pan: (share, start) =>
      show({ from: start.from + share * (start.to - start.from), to: start.to + share * (start.to - start.from) }),
    spread: (start, from, to) => show({ ...between(start, from, to) }),
    zoom,
    view: () => seen,
  });
  return {
    show,
    view: () => seen,
    zoom,
    pan: (share) =>
      show({ from: seen.from + share * (seen.to - seen.from), to: seen.to + share * (seen.to - seen.from) }),
    all: () => show(whole),
    resize(to) {
      if (Math.max(280, to) === width) return;
      width = Math.max(280, to);
      plot.setSize({ width, height: Math.round(Math.max(220, Math.min(360, width * 0.55))) });
      plot.setData(data());
    },
    destroy() {
      undoHands();
      plot.destroy();
    },
  };
}

/** What is seen when two places of the view before, as shares of the width, are where two fingers are now. */
function between(start: View, from: readonly [number, number], to: readonly [number, number]): View {
  const at = (share: number) => start.from + share * (start.to - start.from);
  const span = (at(from[1]) - at(from[0])) / (to[1] - to[0]);
  return { from: at(from[0]) - to[0] * span, to: at(from[0]) + (1 - to[0]) * span };
}

interface Hands {
  /** by a share of the width since the finger came down, from the view there was then */
  pan(share: number, start: View): void;
  spread(start: View, from: readonly [number, number], to: readonly [number, number]): void;
  zoom(times: number, about: number): void;
  view(): View;
}

/** One finger or the mouse drags it along; two spread and pinch; the wheel with Ctrl, or a pinch on a pad, zooms. */
function moveByHand(over: HTMLElement, hands: Hands): () => void {
  const down = new Map<number, number>();
  let start = hands.view();
  let from: number[] = [];
  const share = (event: PointerEvent | WheelEvent) => {
    const { left, width } = over.getBoundingClientRect();
    return (event.clientX - left) / width;
  };
  const begin = () => {
    start = hands.view();
    from = [...down.values()];
  };
  const onDown = (event: PointerEvent) => {
    if (event.button !== 0 || down.size === 2) return;
    over.setPointerCapture(event.pointerId);
    down.set(event.pointerId, share(event));
    begin();
  };
  const onMove = (event: PointerEvent) => {
    if (!down.has(event.pointerId)) return;
    down.set(event.pointerId, share(event));
    const now = [...down.values()];
    if (now.length === 1) hands.pan(from[0]! - now[0]!, start);
    else if (
      Math.abs(now[1]! - now[0]!) > 0.02 &&
      Math.abs(from[1]! - from[0]!) > 0.02 &&
      from[1]! > from[0]! === now[1]! > now[0]!
    )
      hands.spread(start, [from[0]!, from[1]!], [now[0]!, now[1]!]);
  };
  const onUp = (event: PointerEvent) => {
    if (down.delete(event.pointerId)) begin();
  };
  const onWheel = (event: WheelEvent) => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    hands.zoom(event.deltaY > 0 ? 1.25 : 0.8, share(event));
  };
  over.addEventListener('pointerdown', onDown);
  over.addEventListener('pointermove', onMove);
  over.addEventListener('pointerup', onUp);
  over.addEventListener('pointercancel', onUp);
  over.addEventListener('wheel', onWheel, { passive: false });
  return () => {
    over.removeEventListener('pointerdown', onDown);
    over.removeEventListener('pointermove', onMove);
    over.removeEventListener('pointerup', onUp);
    over.removeEventListener('pointercancel', onUp);
    over.removeEventListener('wheel', onWheel);
  };
}
