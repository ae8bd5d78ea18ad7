import { readPageAddress } from './page-address';
import { useDesk, useDeskActions } from './use-desk';

export interface PageAddress {
  /** Address for links and codes, without what stands after '#'. */
  readonly address: string;
  /** Takes an address that was typed, none for that of this page; a reason where it is refused. */
  readonly setAddress: (text: string) => string | null;
}

/** Where others reach this page: as somebody typed it, else where it was opened from. */
export function usePageAddress(): PageAddress {
  const typed = useDesk((state) => state.memory.address);
  const { remember } = useDeskActions();
  return {
    address: typed ?? location.href.replace(/#.*$/s, ''),
    setAddress(text) {
      if (text.trim() === '') {
        remember({ address: null });
        return null;
      }
      const address = readPageAddress(text);
      if (address === null) return 'An address begins with https:// or http://.';
      remember({ address });
      return null;
    },
  };
}
