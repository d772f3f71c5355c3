import { answerCalls } from './across.ts';
import { createPatternMaker } from './pattern-maker.ts';

answerCalls(createPatternMaker(() => performance.now(), async () => (await import('../pattern/rare-parts.ts')).RARE_PARTS));
