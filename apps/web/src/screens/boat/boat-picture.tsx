/** The boat drawn to scale from her own sizes, with the work pinned where it is. */
import { useRef } from 'react';
import type { Book } from '#boat-book';
import { countInWords } from '../../parts/in-words.ts';
import { markShapes } from '../../parts/mark.tsx';
import { useWidth } from '../../parts/use-width.ts';
import { address } from '../../shell/route.ts';
import './boat-picture.css';
import { boatProfile, isAloft, placeOf, type Stance } from './boat-profile.ts';
import { lineHeight, markWidth, type Pin, placedPins } from './pin-layout.ts';
import { type PinnedThing, workByZone, type ZoneWork } from './zone-work.ts';

const shownThings = 3;

export function BoatPicture({
  book,
  today,
  stance,
}: {
  readonly book: Book;
  readonly today: string;
  readonly stance: Stance;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  return (
    <div ref={frame} className="picture">
      {width > 0 && <Drawing book={book} today={today} stance={stance} width={width} />}
    </div>
  );
}

function Drawing({
  book,
  today,
  stance,
  width,
}: {
  readonly book: Book;
  readonly today: string;
  readonly stance: Stance;
  readonly width: number;
}) {
  const { boat } = book;
  const profile = boatProfile(boat, stance);
  const scale = Math.min((width - 24) / (profile.right - profile.left), 600 / (profile.top - profile.bottom), 120);
  const margin = (width - (profile.right - profile.left) * scale) / 2;
  // the bow looks to the right
  const across = (x: number) => width - margin - (x - profile.left) * scale;
  const down = (y: number) => (profile.top - y) * scale + 10;

  const work = workByZone(book, today);
  const dots = Object.entries(book.zones).map(([id, zone]) => {
    const place = placeOf(boat, zone, stance);
    return { id, zone, x: across(place.x), y: down(place.y), work: work.find((one) => one.zone === id) };
  });
  const pins = dots.flatMap((dot): Pin[] =>
    dot.work
      ? [
          {
            id: dot.id,
            x: dot.x,
            y: dot.y,
            aloft: stance.mastUp && isAloft(boat, dot.zone),
            lines: linesOf(dot.work).map(({ title }) => title),
          },
        ]
      : [],
  );
  const placed = placedPins(pins, {
    width,
    mastX: stance.mastUp ? across(boat.mastFromBow_m) : null,
    flagsAbove: down(profile.boomHeight) - 14,
    hangsBelow: down(profile.bottom) + 14,
    measure: drawnWidth,
  });
  const top = Math.min(0, ...placed.map(({ box }) => box.y - 4));
  const bottom = Math.max(down(profile.bottom) + 12, ...placed.map(({ box }) => box.y + box.height + 6));

  return (
    <svg
      viewBox={`0 ${top} ${width} ${bottom - top}`}
      width={width}
      height={bottom - top}
      aria-label={`${boat.name} in profile, ${boat.length_m} m, drawn to scale: mast ${stance.mastUp ? 'up' : 'down'}, board ${stance.boardDown ? 'down' : 'up'}`}
    >
      <line className="picture-water" x1="0" x2={width} y1={down(0)} y2={down(0)} />
      <g transform={`matrix(${-scale} 0 0 ${-scale} ${across(0)} ${down(0)})`}>
        {profile.lines.map((line) => (
          <path key={line.part} d={line.d} className={`picture-${line.weight}`} data-filled={line.filled} />
        ))}
      </g>
      {dots
        .filter((dot) => !dot.work)
        .map((dot) => (
          <a
            key={dot.id}
            href={address('boat', 'zone', dot.id)}
            aria-label={`${dot.zone.name}: nothing open`}
            className="picture-zone"
          >
            <circle cx={dot.x} cy={dot.y} r="22" className="picture-touch" />
            <circle cx={dot.x} cy={dot.y} r="4" className="picture-ring" />
          </a>
        ))}
      {placed.map((pin) => (
        <line
          key={pin.id}
          className={`picture-leader picture-${colour(work, pin.id)}`}
          x1={pin.x}
          y1={pin.y}
          x2={pin.leader.x}
          y2={pin.leader.y}
        />
      ))}
      {placed.map((pin) => {
        const zone = book.zones[pin.id];
        const here = work.find((one) => one.zone === pin.id);
        if (!zone || !here) return null;
        const things = linesOf(here);
        return (
          <a
            key={pin.id}
            href={address('boat', 'zone', pin.id)}
            aria-label={`${zone.name}: ${said(here)}`}
            className="picture-zone"
          >
            <circle cx={pin.x} cy={pin.y} r="22" className="picture-touch" />
            <rect
              className="picture-touch"
              x={pin.box.x - 4}
              y={pin.box.y - 4}
              width={pin.box.width + 8}
              height={Math.max(pin.box.height + 8, 26)}
            />
            <circle cx={pin.x} cy={pin.y} r="5.5" className={`picture-dot picture-${colour(work, pin.id)}`} />
            {pin.lines.map((line, index) => {
              const thing = things[line.of];
              const y = pin.box.y + index * lineHeight + 14;
              return (
                <g key={`${line.of} ${line.text}`}>
                  {line.first && thing && thing.meaning !== 'go' && (
                    <path
                      className={`picture-mark mark-${thing.meaning.replace(' ', '-')}`}
                      transform={`translate(${pin.box.x} ${y - 11}) scale(.78)`}
                      d={markShapes[thing.meaning]}
                    />
                  )}
                  <text x={pin.box.x + markWidth} y={y} className="picture-text">
                    {line.text}
                  </text>
                </g>
              );
            })}
          </a>
        );
      })}
    </svg>
  );
}

/** What stands at a pin: all of it where it is little, else the first of it and how much more there is. */
function linesOf(work: ZoneWork): readonly PinnedThing[] {
  if (work.things.length <= shownThings) return work.things;
  const more = work.things.length - (shownThings - 1);
  return [
    ...work.things.slice(0, shownThings - 1),
    { meaning: 'comfort', title: `and ${countInWords(more, 'more thing')}` },
  ];
}

function said(work: ZoneWork): string {
  return work.things.map(({ meaning, title }) => (meaning === 'danger' ? `danger, ${title}` : title)).join('; ');
}

function colour(work: readonly ZoneWork[], zone: string): string {
  return (work.find((one) => one.zone === zone)?.dot ?? 'work').replace(' ', '-');
}

/** Width of a text in the drawing's type, from the device itself: its letters differ. [px] */
function drawnWidth(text: string): number {
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return text.length * 8;
  pen.font = `14px ${getComputedStyle(document.documentElement).getPropertyValue('--face')}`;
  return pen.measureText(text).width;
}
let pen: CanvasRenderingContext2D | null = null;
