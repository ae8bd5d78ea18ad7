import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Buttons in the order of reading, the main one last. */
  readonly actions?: ReactNode;
}

/** A dialog over the page: Escape and a click beside it close it, and the focus goes back to where it was. */
export function Dialog({ title, isOpen, onClose, children, actions }: DialogProps) {
  return (
    <ModalOverlay className="veil" isDismissable isOpen={isOpen} onOpenChange={(open) => !open && onClose()}>
      <Modal className="dialog">
        <AriaDialog>
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          {children}
          {actions && <div className="dialog-actions">{actions}</div>}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
