/**
 * Tells whether a version of Node is one that package.json promises.
 * @param {string} version such as "20.19.0"
 * @param {string} range such as "^20.19.0 || >=24.0.0"; only these two forms, joined by ||
 * @returns {boolean}
 */
export function nodeFits(version, range) {
  const have = version.split('.').map(Number);
  return range.split('||').some((part) => {
    const [, sign, numbers] = /^(\^|>=)(\d+\.\d+\.\d+)$/.exec(part.trim()) || [];
    if (!numbers) throw new Error(`package.json asks for Node in a form that is not understood here: ${part}`);
    const want = numbers.split('.').map(Number);
    if (sign === '^' && have[0] !== want[0]) return false;
    const different = have.findIndex((number, i) => number !== want[i]);
    return different === -1 || have[different] > want[different];
  });
}

/**
 * Says a range as a person would.
 * @param {string} range such as "^20.19.0 || >=24.0.0"
 * @returns {string} such as "20 from 20.19.0 on, or 24.0.0 and later"
 */
export function saidInWords(range) {
  return range
    .split('||')
    .map((part) => part.trim())
    .map((part) => (part.startsWith('^') ? `${part.slice(1).split('.')[0]} from ${part.slice(1)} on` : `${part.slice(2)} and later`))
    .join(', or ');
}
