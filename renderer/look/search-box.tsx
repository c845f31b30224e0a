import { Search } from 'lucide-react';
import { Input } from 'react-aria-components/Input';
import { SearchField } from 'react-aria-components/SearchField';

interface SearchBoxProps {
  readonly label: string;
  readonly placeholder?: string;
  readonly autoFocus?: boolean;
  readonly value?: string;
  readonly onChange?: (value: string) => void;
}

/** A line to type into that narrows a list; its name is for screen readers, the sign tells the rest. */
export function SearchBox({ label, placeholder = '', autoFocus = false, value, onChange }: SearchBoxProps) {
  return (
    <SearchField
      className="field search-box"
      aria-label={label}
      autoFocus={autoFocus}
      {...(value !== undefined && { value })}
      {...(onChange && { onChange })}
    >
      <Search size={16} aria-hidden="true" />
      <Input placeholder={placeholder} />
    </SearchField>
  );
}
