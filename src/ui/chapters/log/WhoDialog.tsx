import { useId, useState } from 'react';
import { Button } from '../../widgets/Button';
import { Dialog } from '../../widgets/Dialog';

export interface WhoDialogProps {
  readonly onClose: () => void;
  readonly onName: (name: string) => void;
}

/** Asks once who ticks; the name stays on this device. */
export function WhoDialog({ onClose, onName }: WhoDialogProps) {
  const [name, setName] = useState('');
  const id = useId();
  const tidy = name.trim();
  return (
    <Dialog title="Who ticks?" isOpen onClose={onClose}>
      <form
        className="who-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (tidy !== '') onName(tidy);
        }}
      >
        <label htmlFor={id}>Name that stands beside the tick</label>
        <input
          id={id}
          className="find-box"
          autoComplete="name"
          autoFocus
          maxLength={60}
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
        <p className="quiet">It is kept on this device and goes along with the ticks, nowhere else.</p>
        <Button type="submit" look="primary" disabled={tidy === ''}>
          Tick
        </Button>
      </form>
    </Dialog>
  );
}
