import { useId, useState, type ReactNode } from 'react';

/** A field for what people type: taken when they leave it or press Enter; Escape brings back what held before. */
export function TypedField({ label, said, take, hint }: {
  readonly label: string;
  /** What holds now, as it would be typed. */
  readonly said: string;
  /** Takes what was typed; answers with what is wrong with it in one sentence, or with null. */
  readonly take: (text: string) => string | null;
  /** What may be typed here. */
  readonly hint?: string;
}): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [id, problemId] = [useId(), useId()];
  const drop = (): void => {
    setTyped(null);
    setProblem(null);
  };
  const finish = (): void => {
    if (typed === null || typed.trim() === said) return drop();
    const wrong = take(typed);
    if (wrong === null) drop();
    else setProblem(wrong);
  };
  return (
    <div className="typed">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="text"
        autoComplete="off"
        value={typed ?? said}
        placeholder={hint}
        aria-invalid={problem !== null || undefined}
        aria-describedby={problem === null ? undefined : problemId}
        onFocus={(event) => event.currentTarget.select()}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={finish}
        onKeyDown={(event) => {
          if (event.key === 'Enter') finish();
          if (event.key !== 'Escape' || typed === null) return;
          // Only the field goes back, not what it lies in.
          event.stopPropagation();
          drop();
        }}
      />
      {problem !== null && (
        <p className="typed-problem" id={problemId} role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
