import { Choice } from '../../../look/choice';
import type { Shared } from './shared-value';

interface SharedChoiceProps<Id extends string> {
  readonly label: string;
  readonly options: readonly { readonly id: Id; readonly label: string }[];
  readonly chosen: Shared<Id>;
  readonly onChoose: (id: Id) => void;
}

/** One of a few for several things at once, which may not have the same. */
export function SharedChoice<Id extends string>({ label, options, chosen, onChoose }: SharedChoiceProps<Id>) {
  if (chosen.same)
    return <Choice label={label} options={options} chosen={chosen.value} onChoose={onChoose} />;
  return (
    <Choice<string>
      label={label}
      options={[{ id: 'differ', label: 'not the same' }, ...options]}
      chosen="differ"
      onChoose={(id) => {
        const option = options.find((each) => each.id === id);
        if (option) onChoose(option.id);
      }}
    />
  );
}
