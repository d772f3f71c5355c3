import { readFileSync } from 'node:fs';

/**
 * @returns the most memory that this program has had, in bytes. On Linux what `resourceUsage` tells begins with what the program had that
 * started this one; the kernel's own count of it does not.
 */
export function peakMemory(): number {
  try {
    const [, kilobytes] = /^VmHWM:\s*(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))!;
    return Number(kilobytes) * 1024;
  } catch {
    return process.resourceUsage().maxRSS * 1024;
  }
}
