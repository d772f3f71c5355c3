import { useEffect, useMemo, useState } from 'react';
import type { Telling } from '../../block/telling.ts';
import type { HouseStyle } from '../../pattern/house-style.ts';
import type { Language } from '../../pattern/language.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { namesIn } from '../../pattern/plain-speech.ts';
import { styledTelling } from '../../pattern/telling/styled.ts';
import { languageOf } from './language-of.ts';

/** @returns how values stand on the pages; null until the words of their language are there */
export function useTelling(pattern: Pattern | null, style: HouseStyle): Telling | null {
  const [language, setLanguage] = useState<Language | null>(null);
  const { language: tag } = style;
  useEffect(() => {
    let wanted = true;
    languageOf(tag).then((found) => wanted && setLanguage(found), () => undefined);
    return () => {
      wanted = false;
    };
  }, [tag]);
  return useMemo(
    () => (language && pattern && language.tag === tag ? styledTelling(style, namesIn(pattern), language) : null),
    [language, pattern, style, tag],
  );
}
