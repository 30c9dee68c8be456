import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { isTimeZone } from '#units';
import type { PlaceFeature } from '#workplan';
import { ManyField, TickField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';

type Name = 'name' | 'latitude' | 'longitude' | 'timeZone';

const features: readonly { readonly value: PlaceFeature; readonly name: string }[] = [
  { value: 'water', name: 'a water tap' },
  { value: 'mains', name: 'mains power' },
  { value: 'level', name: 'level ground' },
  { value: 'slope', name: 'a slope' },
];

/** A place where work is done: its daylight, its clock, and what it has. */
export default function PlaceSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const place = id === null ? undefined : book.places[id];
  const { draft, set, changed } = useDraft({
    name: place?.name ?? '',
    latitude: place?.latitude_deg.toString() ?? '',
    longitude: place?.longitude_deg.toString() ?? '',
    timeZone: place?.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
    features: place?.features ?? [],
    sheltered: place?.sheltered ?? false,
  });
  const [faults, setFaults] = useState<Faults<Name>>({});
  const [located, setLocated] = useState<string | null>(null);
  const { run, refusal } = useRun();
  const keep = async () => {
    const form = formReading<Name>();
    const fields = {
      name: form.words('name', draft.name, 'Name the place.'),
      latitude_deg: form.figure('latitude', draft.latitude, { min: -90, max: 90, unit: '°' }),
      longitude_deg: form.figure('longitude', draft.longitude, { min: -180, max: 180, unit: '°' }),
      timeZone: form.words('timeZone', draft.timeZone, 'Give its time zone, such as Pacific/Auckland.'),
      features: draft.features,
      sheltered: draft.sheltered,
    };
    if (!isTimeZone(fields.timeZone))
      form.refuse(
        'timeZone',
        `‘${fields.timeZone}’ is no time zone this device knows. Give one such as Pacific/Auckland.`,
      );
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = id === null ? await run('addPlace', fields) : await run('changePlace', { id, ...fields });
    if (outcome.kind === 'done') onClose();
  };
  const locate = () => {
    setLocated('Asking this device where it is.');
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        set('latitude', coords.latitude.toFixed(2));
        set('longitude', coords.longitude.toFixed(2));
        setLocated('Put in to about a kilometre, which is enough for daylight.');
      },
      (error) => setLocated(`This device did not say where it is: ${error.message}. Type it in.`),
    );
  };
  return (
    <Sheet title={place ? `Change the place: ${place.name}` : 'A place'} onClose={onClose} unsaved={changed}>
      <Form
        keep={place ? 'Keep' : 'Put it in'}
        onKeep={keep}
        faults={faults}
        refusal={refusal}
        also={
          id !== null && (
            <button
              type="button"
              className="removes"
              onClick={async () => {
                const outcome = await run('removePlace', { id });
                if (outcome.kind === 'done') onClose();
              }}
            >
              Take it out
            </button>
          )
        }
      >
        <TextField
          label="Name"
          note="Such as: the drive, the club yard."
          value={draft.name}
          onChange={(text) => set('name', text)}
          refused={faults.name}
        />
        <div className="field-row">
          <NumberField
            label="Latitude"
            unit="°, south with a minus"
            value={draft.latitude}
            onChange={(text) => set('latitude', text)}
            refused={faults.latitude}
          />
          <NumberField
            label="Longitude"
            unit="°, west with a minus"
            value={draft.longitude}
            onChange={(text) => set('longitude', text)}
            refused={faults.longitude}
          />
        </div>
        {'geolocation' in navigator && (
          <p>
            <button type="button" className="words" onClick={locate}>
              I am there now: take it from this device
            </button>
            <span className="field-note" role="status">
              {located && ` ${located}`}
            </span>
          </p>
        )}
        <TextField
          label="Time zone"
          value={draft.timeZone}
          onChange={(text) => set('timeZone', text)}
          suggest={Intl.supportedValuesOf('timeZone')}
          refused={faults.timeZone}
        />
        <ManyField
          label="What it has"
          values={draft.features}
          onChange={(values) => set('features', values)}
          options={features}
          empty=""
        />
        <TickField
          label="She lies under a roof there"
          note="Rain then does not reach her."
          value={draft.sheltered}
          onChange={(on) => set('sheltered', on)}
        />
      </Form>
    </Sheet>
  );
}
