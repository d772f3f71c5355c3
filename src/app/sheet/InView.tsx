import { useEffect, useRef, useState, type ReactNode } from 'react';

/** How far below or above the window something is got ready. */
const SOON = '300px 0px';

/** What is made only when it comes into view, and then stays. */
export function InView({ className, children }: {
  /** Of its place, until then. */
  readonly className: string;
  readonly children: () => ReactNode;
}): ReactNode {
  const place = useRef<HTMLSpanElement>(null);
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    if (!place.current) return undefined;
    const eye = new IntersectionObserver((entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      eye.disconnect();
      setSeen(true);
    }, { rootMargin: SOON });
    eye.observe(place.current);
    return () => eye.disconnect();
  }, []);
  return seen ? children() : <span ref={place} className={className} />;
}
