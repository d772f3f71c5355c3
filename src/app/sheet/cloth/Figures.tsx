import type { ReactNode } from 'react';

/** Lengths in a picture, their fractions set as fractions. */
export function Figures({ text }: { readonly text: string }): ReactNode {
  return text.split(/(\d+\/\d+)/).map((part, i) => {
    if (i % 2 === 0) return part;
    const [over, under] = part.split('/');
    return (
      <tspan key={i}>
        <tspan className="tiny" dy="-0.3em">{over}</tspan>
        <tspan dy="0.2em">/</tspan>
        <tspan className="tiny" dy="0.05em">{under}</tspan>
        <tspan dy="0.05em">{'\u200b'}</tspan>
      </tspan>
    );
  });
}
