import type { ReactNode } from 'react';
import { Button as AriaButton } from 'react-aria-components/Button';
import { Tooltip, TooltipTrigger } from 'react-aria-components/Tooltip';

interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  readonly kind?: 'plain' | 'main' | 'quiet' | 'link';
  readonly label?: string;
  readonly disabled?: boolean;
  readonly autoFocus?: boolean;
}

/** A button with words on it. */
export function Button({ children, onPress, kind = 'plain', label, disabled, autoFocus }: ButtonProps) {
  return (
    <AriaButton
      className={kind === 'plain' ? 'button' : `button button-${kind}`}
      {...(onPress && { onPress })}
      {...(label !== undefined && { 'aria-label': label })}
      isDisabled={disabled ?? false}
      autoFocus={autoFocus ?? false}
    >
      {children}
    </AriaButton>
  );
}

interface IconButtonProps {
  readonly label: string;
  readonly keys?: string | undefined;
  readonly icon: ReactNode;
  readonly onPress: () => void;
  readonly disabled?: boolean;
}

/** A button with a sign on it; its name is told in a tooltip. */
export function IconButton({ label, keys, icon, onPress, disabled }: IconButtonProps) {
  return (
    <TooltipTrigger delay={500}>
      <AriaButton
        className="button button-quiet button-icon"
        aria-label={label}
        onPress={onPress}
        isDisabled={disabled ?? false}
      >
        {icon}
      </AriaButton>
      <Tooltip className="tooltip" placement="top" offset={6}>
        {label} {keys !== undefined && <span className="keys">{keys}</span>}
      </Tooltip>
    </TooltipTrigger>
  );
}
