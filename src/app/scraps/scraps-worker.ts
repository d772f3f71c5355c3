import { expose } from 'comlink';
import { scrapsOf } from '../../pattern/scraps.ts';

expose({ scrapsOf });
