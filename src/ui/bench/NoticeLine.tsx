import { useNotice } from './notice-context';

/** What the program last said that belongs to no field; it stands where it covers nothing and goes by itself. */
export function NoticeLine() {
  return (
    <div className="notice" role="status">
      {useNotice()}
    </div>
  );
}
