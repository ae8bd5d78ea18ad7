import { useEffect, useRef } from 'react';

/** A page of the set as it is printed. What it says is not read out here: the file and the schedules of the book are. */
export function PageSheet({ svg }: { readonly svg: string }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // Parsed as a document of its own, so that nothing in a name becomes part of the page.
    const drawn = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    // What is not read out takes no focus either: links are followed from the file, or by their code.
    for (const link of drawn.querySelectorAll('a')) link.remove();
    box.current?.replaceChildren(document.importNode(drawn, true));
  }, [svg]);
  return <div ref={box} className="page-sheet" aria-hidden />;
}
