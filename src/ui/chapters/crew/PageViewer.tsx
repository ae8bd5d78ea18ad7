import { type KeyboardEvent, useState } from 'react';
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

/** One page large, over the workbench; arrow keys turn pages. */
export function PageViewer({ pages, index, onIndex, onClose }: PageViewerProps) {
  const [size, setSize] = useState<'whole' | 'actual'>('whole');
  const page = pages[index];
  if (page === undefined) return null;
  const turn = (by: number) => onIndex(Math.min(pages.length - 1, Math.max(0, index + by)));
  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'ArrowRight' || event.key === 'PageDown') turn(1);
    else if (event.key === 'ArrowLeft' || event.key === 'PageUp') turn(-1);
    else return;
    event.preventDefault();
  }
  return (
    <ModalOverlay className="veil" isDismissable isOpen onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="dialog page-viewer">
        <Dialog>
          {/* biome-ignore lint/a11y/noStaticElementInteractions: keys turn pages wherever the focus is in it. */}
          <div className="page-viewer-box" onKeyDown={onKeyDown}>
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
              <Button small disabled={index === 0} onClick={() => turn(-1)}>
                Previous
              </Button>
              <Button small disabled={index + 1 === pages.length} onClick={() => turn(1)}>
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
