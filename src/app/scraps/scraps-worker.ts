import { scrapsOf } from '../../pattern/scraps.ts';
import { answerCalls } from '../across.ts';

answerCalls({ scrapsOf });
