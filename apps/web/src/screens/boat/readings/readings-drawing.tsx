/** The readings drawn, with what is believed of the charge over them: moved by hand, by keys and by buttons; and in words. */
import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { columnsThere, type ReadColumn, type ReadingColumns, readingsByDay } from '#readings';
import { PickField } from '../../../parts/choice-fields.tsx';
import { dateInWords } from '../../../parts/in-words.ts';
import '../battery/battery.css';
import { WorkingSheet } from '../battery/told-words.tsx';
import { many, monthMark, stampInWords, stretchInWords } from './moment-in-words.ts';
import { type Plot, type PlotBand, plotInto, type View } from './plot.ts';
import { type Course, useCourse } from './use-course.ts';

const shownAs: Readonly<Record<ReadColumn, { readonly name: string; readonly unit: string; readonly places: number }>> =
  {
    volts: { name: 'volts', unit: 'V', places: 2 },
    current: { name: 'current', unit: 'A', places: 1 },
    air: { name: 'temperature', unit: '°C', places: 0 },
  };

const keys: ReadonlyMap<string, (plot: Plot) => void> = new Map([
  ['ArrowLeft', (plot) => plot.pan(-0.2)],
  ['ArrowRight', (plot) => plot.pan(0.2)],
  ['PageUp', (plot) => plot.pan(-0.9)],
  ['PageDown', (plot) => plot.pan(0.9)],
  ['+', (plot) => plot.zoom(0.6)],
  ['=', (plot) => plot.zoom(0.6)],
  ['-', (plot) => plot.zoom(1 / 0.6)],
  ['Home', (plot) => plot.all()],
]);

export function ReadingsDrawing({
  columns,
  book,
  block,
  zone,
}: {
  readonly columns: ReadingColumns;
  readonly book: Book;
  /** of the book */
  readonly block: Id;
  readonly zone: string;
}) {
  const there = columnsThere(columns);
  const [of, setOf] = useState<ReadColumn>('volts');
  const figure = useRef<HTMLDivElement>(null);
  const plot = useRef<Plot | null>(null);
  const seen = useRef<View | null>(null);
  const [view, setView] = useState<View | null>(null);
  const [point, setPoint] = useState<number | null>(null);
  const [showsWorking, setShowsWorking] = useState(false);
  const course = useCourse(book, block, view);
  const band: PlotBand | null = course.state === 'told' ? course.course : null;
  const column = there.includes(of) ? of : there[0]!;
  const { unit, places, name } = shownAs[column];

  useEffect(() => {
    const element = figure.current;
    if (element === null) return;
    const draw = () => {
      const start = performance.now();
      plot.current?.destroy();
      plot.current = plotInto(
        element,
        {
          line: { at: columns.at, values: columns[column]! },
          unit,
          places,
          band,
          zone,
          onPoint: setPoint,
          onView: (now) => {
            seen.current = now;
            setView(now);
          },
        },
        seen.current,
      );
      // uPlot draws in the microtask after it is made
      queueMicrotask(() => performance.measure('readings drawn', { start, end: performance.now() }));
    };
    draw();
    const wider = new ResizeObserver(([entry]) => plot.current?.resize(entry!.contentRect.width));
    wider.observe(element);
    const themed = new MutationObserver(draw);
    themed.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    return () => {
      wider.disconnect();
      themed.disconnect();
      plot.current?.destroy();
      plot.current = null;
    };
  }, [columns, column, band, zone, unit, places]);
  const onKey = (event: KeyboardEvent) => {
    const act = keys.get(event.key);
    if (act === undefined || plot.current === null || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    act(plot.current);
  };
  const { from, to } = view ?? { from: columns.at[0]!, to: columns.at.at(-1)! };
  return (
    <figure className="readings-figure">
      {there.length > 1 && (
        <PickField
          label="Drawn"
          quiet
          value={column}
          onChange={setOf}
          options={there.map((value) => ({ value, name: shownAs[value].name }))}
        />
      )}
      {/* biome-ignore lint/a11y/useSemanticElements: a drawing that is moved by keys is no fieldset */}
      <div
        ref={figure}
        className="readings-plot"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is moved by keys
        tabIndex={0}
        role="group"
        aria-roledescription="drawing"
        aria-label={`${name} in ${unit} over time${band ? ', with the charge and its band' : ''}. Arrow keys move it, plus and minus draw it nearer and wider, Home shows all.`}
        onKeyDown={onKey}
      />
      <p className="readings-point" aria-hidden="true">
        {point === null ? ' ' : atPoint(columns, column, band, point, zone)}
      </p>
      <div className="readings-moves">
        <button type="button" onClick={() => plot.current?.pan(-0.5)} aria-label="Earlier">
          ‹
        </button>
        <button type="button" onClick={() => plot.current?.pan(0.5)} aria-label="Later">
          ›
        </button>
        <button type="button" onClick={() => plot.current?.zoom(0.5)}>
          Nearer
        </button>
        <button type="button" onClick={() => plot.current?.zoom(2)}>
          Wider
        </button>
        <button type="button" onClick={() => plot.current?.all()}>
          All
        </button>
      </div>
      <figcaption className="soft small">
        Seen:{' '}
        <span className="readings-seen">
          {stampInWords(from, zone)} to {stampInWords(to, zone)}
        </span>
        . Line: {name}, {unit}, left; broken where nothing was read.
        {band && ' Coloured: charge in percent, right; likely, and the band of 9 in 10.'}
      </figcaption>
      <p role="status">{courseInWords(course, zone)}</p>
      {course.state === 'told' && (
        <button type="button" className="words" onClick={() => setShowsWorking(true)}>
          How the charge is worked out
        </button>
      )}
      {course.state === 'told' && showsWorking && (
        <WorkingSheet workings={[course.course.working]} onClose={() => setShowsWorking(false)} />
      )}
      <InWords columns={columns} zone={zone} />
    </figure>
  );
}

/** What the drawing says of the charge. */
function courseInWords(told: Course, zone: string): string {
  if (told.state === 'working out') return 'Working out the charge …';
  if (told.state === 'not told') return told.because;
  const { at, low, likely, high, capacity_Ah, odd } = told.course;
  const last = at.length - 1;
  const pct = (value: number) => `${Math.round(value)}`;
  const [least, most] = [Math.min(...likely), Math.max(...likely)];
  const off = odd === 0 ? '' : ` ${odd === 1 ? 'One reading does' : `${many(odd)} readings do`} not go with the rest.`;
  return `Charge from ${stampInWords(at[0]!, zone)} to ${stampInWords(at[last]!, zone)}: between ${pct(least)} and ${pct(most)} %, at the end ${pct(likely[last]!)} % (${pct(low[last]!)} to ${pct(high[last]!)}), of ${pct(capacity_Ah.likely)} Ah (${pct(capacity_Ah.low)} to ${pct(capacity_Ah.high)}) that it is worth by these readings.${off} It is worked out for what is seen, at most the last 30 days of it.`;
}

/** The place of the reading nearest to an instant. */
function nearest(at: Float64Array, instant: number): number {
  let low = 0;
  let high = at.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (at[middle]! < instant) low = middle + 1;
    else high = middle;
  }
  return low > 0 && instant - at[low - 1]! < at[low]! - instant ? low - 1 : low;
}

function atPoint(
  columns: ReadingColumns,
  column: ReadColumn,
  band: PlotBand | null,
  instant: number,
  zone: string,
): string {
  const i = nearest(columns.at, instant);
  const { unit, places } = shownAs[column];
  const value = columns[column]![i]!;
  const said = [
    `${stampInWords(columns.at[i]!, zone)}: ${Number.isNaN(value) ? 'not read' : `${value.toFixed(places)} ${unit}`}`,
  ];
  if (band && band.at.length > 0) {
    const b = nearest(band.at, columns.at[i]!);
    said.push(`charge ${Math.round(band.likely[b]!)} %, ${Math.round(band.low[b]!)} to ${Math.round(band.high[b]!)}`);
  }
  return said.join('; ');
}

function InWords({ columns, zone }: { readonly columns: ReadingColumns; readonly zone: string }) {
  const [open, setOpen] = useState(false);
  const told = useMemo(() => (open ? readingsByDay(columns, zone) : null), [open, columns, zone]);
  return (
    <details className="field-group" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        The same in figures <span className="soft">lowest, highest and last volts</span>
      </summary>
      {told && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
        <section className="readings-rows" tabIndex={0} aria-label="The readings in figures">
          <table>
            <thead>
              <tr>
                <th scope="col">{told.by === 'day' ? 'Day' : 'Month'}</th>
                <th scope="col">Lowest V</th>
                <th scope="col">Highest V</th>
                <th scope="col">Last V</th>
                <th scope="col">Readings</th>
              </tr>
            </thead>
            <tbody>
              {told.days.map(({ day, volts, count }) => (
                <tr key={day}>
                  <th scope="row">{told.by === 'day' ? dateInWords(day, '') : monthMark(day)}</th>
                  <td>{volts?.least.toFixed(2) ?? '–'}</td>
                  <td>{volts?.most.toFixed(2) ?? '–'}</td>
                  <td>{volts?.last.toFixed(2) ?? '–'}</td>
                  <td>{many(count)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </details>
  );
}

/** How far apart the readings usually are, in words. */
export function pitchInWords(at: Float64Array): string {
  if (at.length < 2) return '';
  const steps = Array.from({ length: Math.min(999, at.length - 1) }, (_, i) => at[i + 1]! - at[i]!).sort(
    (a, b) => a - b,
  );
  return `, one about every ${stretchInWords(steps[steps.length >> 1]!)}`;
}
