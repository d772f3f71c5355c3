import type { ReactNode } from 'react';
import type { Proof } from '../../sewing/step.ts';

/** What the virtual sewing found: one calm line when the pattern holds, every fault out loud when it does not. */
export function ProofLine({ proof }: { readonly proof: Proof }): ReactNode {
  if (proof.holds) {
    return (
      <p className="proof" data-proof="holds">
        <svg viewBox="0 0 24 24" className="proof-mark" aria-hidden="true" focusable="false">
          <circle cx="12" cy="12" r="10.500" />
          <path d="m7 12.500 3.500 3.500 6.500-7.500" />
        </svg>
        <span>
          Sewn back in exact arithmetic: {proof.seams} {proof.seams === 1 ? 'seam' : 'seams'}, all straight, equal to the drawing.
        </span>
      </p>
    );
  }
  return (
    <div className="proof-fails" role="alert" data-proof="fails">
      <p>
        <strong>Do not cut yet: sewn back in exact arithmetic, this pattern is not the drawing.</strong>
      </p>
      <ul>
        {proof.faults.map((fault, i) => (
          <li key={i}>{fault}</li>
        ))}
      </ul>
    </div>
  );
}
