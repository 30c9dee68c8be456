/** What a wire or a cord is, its size, and how its end is made. */
import type { BoardLine } from '#loads';
import { ChoiceField, type Option } from '../../../../parts/choice-fields.tsx';
import { NumberField } from '../../../../parts/text-fields.tsx';
import { endingOptions, type LineDraft, sizesNote } from './hoist-draft.ts';

export function LineFields({
  label,
  draft,
  onChange,
  options,
  faultOf,
  faultSize,
}: {
  /** `The wire`, `Its cord` */
  readonly label: string;
  readonly draft: LineDraft;
  readonly onChange: (draft: LineDraft) => void;
  readonly options: readonly Option<BoardLine>[];
  readonly faultOf: string | undefined;
  readonly faultSize: string | undefined;
}) {
  return (
    <>
      <ChoiceField
        label={label}
        value={draft.of}
        onChange={(of) => onChange({ ...draft, of })}
        options={options}
        refused={faultOf}
      />
      <div className="field-row">
        <NumberField
          label={`${label}: diameter`}
          unit="mm"
          note={sizesNote(draft.of)}
          value={draft.size}
          onChange={(size) => onChange({ ...draft, size })}
          refused={faultSize}
        />
        <ChoiceField
          label={`${label}: its end`}
          value={draft.ending}
          onChange={(ending) => onChange({ ...draft, ending })}
          options={endingOptions(draft.of)}
          none="not said"
        />
      </div>
    </>
  );
}
