import { useEffect, useRef, useState, type ReactNode } from 'react';
import type { Page } from '../../pattern/pages/page.ts';

/** How far beyond the window a page is got ready. */
const SOON = '60% 0px';

/** Pages below one another, of which only those in view are drawn, and one that is worked on. */
export function PagesInView({ pages, worked, children }: {
  readonly pages: readonly Page[];
  /** Index of the page that is worked on, so that nothing is lost when it is out of view; null for none. */
  readonly worked: number | null;
  readonly children: (page: Page, index: number) => ReactNode;
}): ReactNode {
  const list = useRef<HTMLOListElement>(null);
  const [seen, setSeen] = useState<ReadonlySet<number>>(new Set([0, 1]));
  useEffect(() => {
    if (!list.current) return undefined;
    const eye = new IntersectionObserver(
      (entries) =>
        setSeen((now) => {
          const next = new Set(now);
          for (const { target, isIntersecting } of entries) {
            const index = Number((target as HTMLElement).dataset['page']);
            if (isIntersecting) next.add(index);
            else next.delete(index);
          }
          return next;
        }),
      { root: list.current.parentElement, rootMargin: SOON },
    );
    for (const each of list.current.children) eye.observe(each);
    return () => eye.disconnect();
  }, [pages.length]);
  return (
    <ol ref={list} className="room-pages">
      {pages.map((page, i) => (
        <li key={i} data-page={i} data-worked={i === worked || undefined} style={{ aspectRatio: `${page.width} / ${page.height}` }}>
          {(seen.has(i) || i === worked) && children(page, i)}
        </li>
      ))}
    </ol>
  );
}
