import { useDesk, useDeskActions } from '../storage/use-desk';
import type { ThemeChoice } from '../storage/view-memory';
import { MenuButton } from '../widgets/MenuButton';

const themeChoices: readonly { readonly value: ThemeChoice; readonly label: string }[] = [
  { value: 'system', label: 'As the system' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
];

/** Light, dark, or as the system says. */
export function ThemeButton() {
  const theme = useDesk((state) => state.memory.theme);
  const { remember } = useDeskActions();
  return (
    <MenuButton
      label="Theme"
      entries={themeChoices.map(({ value, label }) => ({
        id: value,
        label,
        ...(value === theme ? { note: 'now' } : {}),
        onChoose: () => remember({ theme: value }),
      }))}
    />
  );
}
