import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { isTimeZone } from '#units';
import type { PlaceFeature } from '#workplan';
import { ManyField, TickField } from '../../parts/choice-fields.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';

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
  const [located, setLocated] = useState<string | null>(null);
  const read = (form: FormReading<Name>) => {
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
    return fields;
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
    <RecordSheet
      title={place ? `Change the place: ${place.name}` : 'A place'}
      keep={place ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addPlace', fields) : run('changePlace', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removePlace', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
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
        </>
      )}
    </RecordSheet>
  );
}
