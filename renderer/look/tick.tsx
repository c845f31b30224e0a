import { Checkbox } from 'react-aria-components/Checkbox';

interface TickProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly children: string;
}

/** Something that is so or not. */
export function Tick({ on, onChange, children }: TickProps) {
  return (
    <Checkbox className="check" isSelected={on} onChange={onChange}>
      <span className="check-box" aria-hidden="true" />
      {children}
    </Checkbox>
  );
}
