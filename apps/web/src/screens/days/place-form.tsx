/** A place where she lies: the sun, the clock and the climate go by it. */
import { useState } from 'react';
import type { Id } from '#boat-book';
import { isTimeZone } from '#units';
import { ManyField, TickField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';

type Field = 'name' | 'latitude' | 'longitude' | 'timeZone';
const features = [
  { value: 'water', name: 'running water' },
  { value: 'mains', name: 'mains power' },
  { value: 'level', name: 'level ground' },
  { value: 'slope', name: 'a slope' },
] as const;
type Feature = (typeof features)[number]['value'];

export function PlaceForm({ onKept }: { readonly onKept: (id: Id) => void }) {
  const { draft, set } = useDraft({
    name: '',
    latitude: '',
    longitude: '',
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    features: [] as readonly Feature[],
    sheltered: false,
  });
  const [faults, setFaults] = useState<Faults<Field>>({});
  const [located, setLocated] = useState<string | null>(null);
  const { run, refusal } = useRun();
  const keep = async () => {
    const form = formReading<Field>();
    const place = {
      name: form.words('name', draft.name, 'Call it as you do: the drive, the yard.'),
      latitude_deg: form.figure('latitude', draft.latitude, { min: -90, max: 90, unit: '°' }),
      longitude_deg: form.figure('longitude', draft.longitude, { min: -180, max: 180, unit: '°' }),
      timeZone: form.words('timeZone', draft.timeZone, 'Give a zone such as Europe/Berlin.'),
      features: draft.features,
      sheltered: draft.sheltered,
    };
    if (form.sound() && !isTimeZone(place.timeZone))
      form.refuse(
        'timeZone',
        `'${place.timeZone}' is not a time zone this device knows. Give one such as Europe/Berlin.`,
      );
    setFaults(form.faults);
    if (!form.sound()) return;
    const outcome = await run('addPlace', place);
    if (outcome.kind === 'done' && outcome.id !== null) onKept(outcome.id);
  };
  const locate = () => {
    if (!('geolocation' in navigator)) {
      setLocated('This device cannot say where it is. Type the figures.');
      return;
    }
    setLocated('Asking the device.');
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        set('latitude', coords.latitude.toFixed(3));
        set('longitude', coords.longitude.toFixed(3));
        setLocated('As this device says.');
      },
      () => setLocated('The device did not say where it is. Type the figures.'),
      { maximumAge: 600_000, timeout: 20_000 },
    );
  };
  return (
    <Form keep="Add the place" onKeep={keep} faults={faults} refusal={refusal}>
      <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
      <div className="field-row">
        <NumberField
          label="Latitude"
          unit="degrees"
          note="south is minus"
          value={draft.latitude}
          onChange={(text) => set('latitude', text)}
          refused={faults.latitude}
        />
        <NumberField
          label="Longitude"
          unit="degrees"
          note="west is minus"
          value={draft.longitude}
          onChange={(text) => set('longitude', text)}
          refused={faults.longitude}
        />
      </div>
      <p className="days-form-note">
        <button type="button" onClick={locate}>
          Where this device is
        </button>{' '}
        <span className="small soft" role="status">
          {located}
        </span>
      </p>
      <TextField
        label="Time zone"
        value={draft.timeZone}
        onChange={(text) => set('timeZone', text)}
        refused={faults.timeZone}
      />
      <ManyField
        label="What is there"
        values={draft.features}
        onChange={(values) => set('features', values)}
        options={features}
        empty=""
      />
      <TickField
        label="She lies under a roof there"
        note="rain does not reach her"
        value={draft.sheltered}
        onChange={(on) => set('sheltered', on)}
      />
    </Form>
  );
}
