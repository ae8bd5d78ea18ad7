import { useEffect, useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { PagePicture } from '../../../files/make-crew-set';
import { Button } from '../../widgets/Button';
import { SegmentChoice } from '../../widgets/SegmentChoice';
import { PageSheet } from './PageSheet';

export interface PageViewerProps {
  readonly pages: readonly PagePicture[];
  readonly index: number;
  readonly onIndex: (index: number) => void;
  readonly onClose: () => void;
}

/** Keys that turn pages. */
const steps: Readonly<Record<string, number>> = { ArrowRight: 1, PageDown: 1, ArrowLeft: -1, PageUp: -1 };

/** One page large, over the workbench; arrow keys turn pages. */
export function PageViewer({ pages, index, onIndex, onClose }: PageViewerProps) {
  const [size, setSize] = useState<'whole' | 'actual'>('whole');
  const last = pages.length - 1;
  useEffect(() => {
    function onKeyDown(event: KeyboardEvent): void {
      const by = steps[event.key];
      if (by === undefined) return;
      event.preventDefault();
      onIndex(Math.min(last, Math.max(0, index + by)));
    }
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [index, last, onIndex]);
  const page = pages[index];
  if (page === undefined) return null;
  return (
    <ModalOverlay className="veil" isDismissable isOpen onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="dialog page-viewer">
        <Dialog>
          <div className="page-viewer-box">
            <div className="page-viewer-bar">
              <Heading slot="title" level={2}>
                Sheet {index + 1} of {pages.length}: {page.title}
              </Heading>
              <SegmentChoice
                label="Size"
                value={size}
                choices={[
                  { value: 'whole', label: 'Whole page' },
                  { value: 'actual', label: 'Actual size' },
                ]}
                onChoose={setSize}
              />
              <Button small disabled={index === 0} onClick={() => onIndex(index - 1)}>
                Previous
              </Button>
              <Button small disabled={index === last} onClick={() => onIndex(index + 1)}>
                Next
              </Button>
              <Button small onClick={onClose}>
                Close
              </Button>
            </div>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls takes the focus, for the arrow keys. */}
            <section className="page-viewer-sheet" data-size={size} tabIndex={0} aria-label="Page">
              <PageSheet svg={page.svg} />
            </section>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
