import { expose } from 'comlink';
import { createPatternMaker } from './pattern-maker.ts';

expose(createPatternMaker(() => performance.now()));
