import { spawnSync } from 'node:child_process';
import { installFromDebian } from './debian.mjs';

const PROGRAMS = ['pdfinfo', 'pdffonts', 'pdftotext'];

/** @returns {boolean} whether poppler's programs, which read PDF files, are on PATH and start */
export const popplerRuns = () => PROGRAMS.every((program) => spawnSync(program, ['-v'], { stdio: 'ignore' }).status === 0);

/** Looks for poppler, installing it where it is not there and may be. @returns {boolean} whether it is there now */
export function findPoppler() {
  if (popplerRuns()) return true;
  installFromDebian('poppler-utils', 'No poppler found, which reads the PDF files that the tests write: installing poppler-utils with apt-get.');
  return popplerRuns();
}
