import { useId, useMemo, useState } from 'react';
import { encodeShare, mostLinkCharacters, shareLink } from '../../files/share-link';
import { emptyBuildLog } from '../../plan/build-log';
import type { Plan } from '../../plan/plan';
import { serialisePlan } from '../../plan/serialise-plan';
import { qrPath } from '../../sheets/qr-path';
import { useBench } from '../state/use-bench';
import { addressCaution } from '../storage/page-address';
import { planFileName, savePlanFile } from '../storage/plan-file';
import { usePageAddress } from '../storage/use-page-address';
import { Button } from '../widgets/Button';
import { Dialog } from '../widgets/Dialog';
import { SwitchField } from '../widgets/SwitchField';
import { TextField } from '../widgets/TextField';
import { useFormat } from '../widgets/use-format';
import { linkedItem } from './linked-item';
import { useSay } from './notice-context';
import { QrCode } from './QrCode';
import '../styles/share.css';

/** The plan as a link, as a code where it fits one, and as a file. */
export function ShareDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useBench((state) => state.plan);
  const item = linkedItem(useBench((state) => state.selection));
  const { address, setAddress } = usePageAddress();
  const [isAtItem, setAtItem] = useState(false);
  const signs = useMemo(() => encodeShare(plan), [plan]);
  const link = shareLink(address, signs, isAtItem ? item : null);
  return (
    <Dialog title="Share" isOpen onClose={onClose} actions={<FileButton plan={plan} />}>
      <p className="quiet">
        Whoever opens it gets a read-only copy of the plan as it is now, without its log and without what earlier
        revisions held. It replaces nothing there and works offline. Nothing is sent anywhere: the plan is in the link
        itself.
      </p>
      {link.length > mostLinkCharacters ? <TooLong length={link.length} /> : <Link link={link} />}
      <div className="fields share-fields">
        {item && (
          <SwitchField
            label={`Open it at ${item.name}`}
            value={isAtItem}
            onCommit={(wanted) => {
              setAtItem(wanted);
              return null;
            }}
          />
        )}
        <TextField
          label="Address of this page for others"
          value={address}
          most={400}
          onCommit={setAddress}
          hint={addressCaution(address) ?? undefined}
        />
      </div>
    </Dialog>
  );
}

function Link({ link }: { readonly link: string }) {
  const say = useSay();
  const format = useFormat();
  const id = useId();
  const code = useMemo(() => qrPath(link, 'L'), [link]);
  function copy(): void {
    // Without a safe connection the browser has no such place.
    const written = navigator.clipboard?.writeText(link) ?? Promise.reject(new Error('no clipboard'));
    written.then(
      () => say('The link is copied.'),
      () => say('The browser did not let the link be copied: mark it and copy it by hand.'),
    );
  }
  return (
    <>
      <div className="field share-link">
        <label htmlFor={id}>Link</label>
        <textarea id={id} readOnly rows={3} value={link} onFocus={(event) => event.currentTarget.select()} />
        <span className="field-note">{format(link.length, 'count')} characters</span>
      </div>
      <Button look="primary" onClick={copy}>
        Copy the link
      </Button>
      {code === null ? (
        <p className="quiet">The link is too long for a code, which holds 2,953 characters.</p>
      ) : (
        <figure className="share-code">
          <QrCode path={code} label="Code that holds the link" />
          <figcaption className="quiet">
            {code.modules > scannedEasily
              ? 'The whole plan is in this code. It is a fine one: hold the phone close and still.'
              : 'The whole plan is in this code.'}
          </figcaption>
        </figure>
      )}
    </>
  );
}

/** Modules a side that phones read from a screen without care (common practice, no source). */
const scannedEasily = 97;

function TooLong({ length }: { readonly length: number }) {
  const format = useFormat();
  return (
    <p role="status">
      As a link this plan comes to {format(length, 'count')} characters, and mail and chats cut links beyond{' '}
      {format(mostLinkCharacters, 'count')}. Share it as a file.
    </p>
  );
}

function FileButton({ plan }: { readonly plan: Plan }) {
  const say = useSay();
  async function save(): Promise<void> {
    const text = serialisePlan({ ...plan, revisions: [], log: emptyBuildLog });
    try {
      if (await savePlanFile(text, planFileName(plan), null))
        say('Saved to a file, without the log and earlier revisions.');
    } catch (error) {
      say(`The file could not be written: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return <Button onClick={() => void save()}>Save as a file</Button>;
}
