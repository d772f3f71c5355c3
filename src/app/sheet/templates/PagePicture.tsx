import { memo, useId, type ReactNode } from 'react';
import type { Item, Page } from '../../../pattern/pages/page.ts';
import { FAMILIES, photoPlace, svgNumber, svgPath, WEIGHTS } from '../../../pattern/pages/page-svg.ts';

/** A page as it will be printed, as large as there is room. */
export const PagePicture = memo(function PagePicture({ page, says }: { readonly page: Page; readonly says: string }): ReactNode {
  const name = useId();
  return (
    <svg className="page-picture" viewBox={`0 0 ${svgNumber(page.width)} ${svgNumber(page.height)}`} role="img" aria-label={says}>
      {page.items.map((item, i) => (
        <ItemPicture key={i} item={item} name={`${name}-${i}`} />
      ))}
    </svg>
  );
});

function ItemPicture({ item, name }: { readonly item: Item; readonly name: string }): ReactNode {
  if (item.kind === 'text') {
    const { text, x, y, size, weight, color, width, turn } = item;
    const turned = turn ? `rotate(${turn * 90} ${x} ${y})` : undefined;
    return (
      <text
        x={x}
        y={y}
        fontFamily={FAMILIES}
        fontSize={size}
        fontWeight={WEIGHTS[weight]}
        fill={color}
        textLength={width}
        lengthAdjust="spacingAndGlyphs"
        transform={turned}
        // A space at the end is part of the width.
        xmlSpace="preserve"
      >
        {text}
      </text>
    );
  }
  if (item.kind === 'link' || item.kind === 'place') return null;
  if (item.kind === 'image') {
    const { left, top, width, height } = item.area;
    return <image x={left} y={top} width={width} height={height} href={`data:image/jpeg;base64,${item.picture.jpeg}`} />;
  }
  const { steps, stroke, fill, photo } = item;
  const lines = { stroke: stroke?.color, strokeWidth: stroke?.width, strokeDasharray: stroke?.dash?.join(' ') };
  if (!photo) return <path d={svgPath(steps)} fill={fill ?? 'none'} {...lines} />;
  const { picture } = photo;
  return (
    <>
      <pattern id={name} patternUnits="userSpaceOnUse" width={picture.width} height={picture.height} patternTransform={photoPlace(photo)}>
        <image width={picture.width} height={picture.height} href={`data:image/jpeg;base64,${picture.jpeg}`} />
      </pattern>
      <path d={svgPath(steps)} fill={`url(#${name}) ${fill ?? 'none'}`} {...lines} />
    </>
  );
}
