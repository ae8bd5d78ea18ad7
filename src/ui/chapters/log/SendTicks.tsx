import { tickFileText, tickListOf } from '../../../files/tick-file';
import { counted } from '../../../units/counted';
import { downloadBytes } from '../../bench/download-bytes';
import { useSay } from '../../bench/notice-context';
import { usePlan } from '../../state/use-plan';
import { planFileName } from '../../storage/plan-file';
import { useDesk, useDeskActions } from '../../storage/use-desk';
import { usePageAddress } from '../../storage/use-page-address';
import { Button } from '../../widgets/Button';

const tooMany = 'There are more ticks than a link carries: save them to a file.';

/** Brings the ticks of this device to the planner: as a file, as a link, or by whatever the phone sends with. */
export function SendTicks() {
  const plan = usePlan((all) => all);
  const { address } = usePageAddress();
  const who = useDesk((state) => state.memory.who);
  const { remember } = useDeskActions();
  const say = useSay();
  const { length } = plan.log.ticks;
  const fileName = `${planFileName(plan).replace(/\.json$/, '')}, ticks.json`;
  const text = () => tickFileText(tickListOf(plan));

  async function linkOf(): Promise<string | null> {
    const { tickLink } = await import('../../../files/tick-link');
    return tickLink(address, tickListOf(plan));
  }

  async function copy(): Promise<void> {
    const link = await linkOf();
    if (link === null) return say(tooMany);
    try {
      // Without a safe connection the browser has no such place.
      await navigator.clipboard.writeText(link);
      say('The link with the ticks is copied.');
    } catch {
      say('The browser did not let the link be copied. Save the ticks to a file.');
    }
  }

  async function send(): Promise<void> {
    const file = new File([text()], fileName, { type: 'application/json' });
    const link = await linkOf();
    const asFile = { files: [file], title: fileName };
    if (!navigator.canShare?.(asFile) && link === null) return say(tooMany);
    try {
      await navigator.share(navigator.canShare?.(asFile) ? asFile : { title: fileName, url: link! });
    } catch (error) {
      // Whoever changed their mind is told nothing.
      if (!(error instanceof DOMException && error.name === 'AbortError')) say('The ticks could not be sent.');
    }
  }

  return (
    <section className="hand-part send-ticks" aria-label="Bring the ticks back">
      <h3>Bring the ticks back</h3>
      <p className="quiet">
        {length === 0 ? 'Nothing is ticked yet.' : `${counted(length, 'tick')} on this device.`} The planner opens the
        file or the link; what others ticked stays.
      </p>
      <div className="send-buttons">
        <Button
          disabled={length === 0}
          onClick={() => {
            downloadBytes(text(), fileName, 'application/json');
            say(`Saved to a file: ${fileName}`);
          }}
        >
          Save ticks to a file
        </Button>
        <Button disabled={length === 0} onClick={() => void copy()}>
          Copy link with ticks
        </Button>
        {'share' in navigator && (
          <Button disabled={length === 0} onClick={() => void send()}>
            Send …
          </Button>
        )}
      </div>
      {who !== '' && (
        <p className="ticked-as">
          <span>
            This device ticks as <b>{who}</b>.
          </span>
          <Button onClick={() => remember({ who: '' })}>Somebody else</Button>
        </p>
      )}
    </section>
  );
}
