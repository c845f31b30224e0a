import { X } from 'lucide-react';
import { type ReactNode, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog } from 'react-aria-components/Dialog';
import { Heading } from 'react-aria-components/Heading';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { useKeysKept } from './use-keys-kept';
import './window.css';

interface WindowProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Buttons at the bottom, the main one last. */
  readonly doings?: ReactNode;
  readonly size?: 'small' | 'large' | 'wide' | 'whole';
  /** A question that has to be answered is an alert. */
  readonly alert?: boolean;
}

/** A window over the window: title, content, buttons. Escape and a click beside it close it. */
export function Window({ title, onClose, children, doings, size = 'small', alert = false }: WindowProps) {
  const inside = useRef<HTMLElement>(null);
  useKeysKept(inside, onClose);
  return (
    <ModalOverlay
      className="window-shade"
      isOpen
      isDismissable={!alert}
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className={`window window-${size}`}>
        <Dialog ref={inside} className="window-inside" role={alert ? 'alertdialog' : 'dialog'}>
          <header className="window-head">
            <Heading slot="title" level={2}>
              {title}
            </Heading>
            <Button className="button button-quiet button-icon" aria-label="Close" onPress={onClose}>
              <X size={18} aria-hidden="true" />
            </Button>
          </header>
          <div className="window-body">{children}</div>
          {doings && <footer className="window-doings">{doings}</footer>}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
