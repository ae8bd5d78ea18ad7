interface ViewButtonsProps {
  readonly onCloser: () => void;
  readonly onFarther: () => void;
  readonly onAll: () => void;
}

/** The drawing's own buttons, for whoever has neither wheel nor keys at hand. */
export function ViewButtons({ onCloser, onFarther, onAll }: ViewButtonsProps) {
  return (
    <div className="board-buttons">
      <button type="button" onClick={onCloser} aria-label="Zoom in">
        +
      </button>
      <button type="button" onClick={onFarther} aria-label="Zoom out">
        −
      </button>
      <button type="button" onClick={onAll} aria-label="Show all">
        all
      </button>
    </div>
  );
}
