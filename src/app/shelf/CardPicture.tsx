import { useEffect, useRef, useState, type ReactNode } from 'react';
import type { Card } from '../../files/autosave.ts';
import type { Shelf } from './shelf.ts';

/** Pictures are made one after the other, so that a long shelf stays at hand meanwhile. */
let making: Promise<unknown> = Promise.resolve();

/** A drawing in small, fetched when it comes into view. */
export function CardPicture({ card, picture }: { readonly card: Card; readonly picture: Shelf['picture'] }): ReactNode {
  const place = useRef<HTMLSpanElement>(null);
  const [address, setAddress] = useState<string | null>(null);
  const { id, version } = card;
  useEffect(() => {
    const shown = place.current;
    if (!shown) return undefined;
    let over = false;
    let made: string | null = null;
    const show = async (): Promise<void> => {
      const blob = over ? null : await picture(card);
      if (over || !blob) return;
      made = URL.createObjectURL(blob);
      setAddress(made);
    };
    const eye = new IntersectionObserver((entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      eye.disconnect();
      making = making.then(show).catch(() => undefined);
    });
    eye.observe(shown);
    return () => {
      over = true;
      eye.disconnect();
      if (made) URL.revokeObjectURL(made);
    };
    // A card is read anew with every listing; its picture changes with its version only.
  }, [id, version, picture]);
  return (
    <span ref={place} className="card-picture">
      {address && <img src={address} alt="" />}
    </span>
  );
}
