import { useContext, useState } from 'react';
import { useStore } from 'zustand/react';
import type { Offline } from '../storage/create-offline';
import { OfflineContext } from '../storage/offline-context';
import { Button } from '../widgets/Button';

/** Offers a newer version of the page that was fetched; nobody has to take it now. */
export function VersionBanner() {
  const offline = useContext(OfflineContext);
  return offline && <Offer offline={offline} />;
}

function Offer({ offline }: { readonly offline: Offline }) {
  const hasNewVersion = useStore(offline.store, (state) => state.hasNewVersion);
  const [isPutOff, setPutOff] = useState(false);
  if (!hasNewVersion || isPutOff) return null;
  return (
    <section className="banner" aria-label="New version">
      <p role="status">A new version is there. Loading it takes a moment; the plan is kept.</p>
      <Button small look="primary" onClick={() => void offline.takeNewVersion()}>
        Reload
      </Button>
      <Button small onClick={() => setPutOff(true)}>
        Later
      </Button>
    </section>
  );
}
