import { describe, expect, it } from 'vitest';
import { staysOffline } from './offline.ts';
import { sourcesUnder } from './source.ts';

const file = 'src/app/planted.tsx';

describe('nothing leaves this machine', () => {
  it.each([
    ["const a = 1;\nawait fetch('./data.json')", 'src/app/planted.tsx:2 uses fetch'],
    ["window.fetch('./data.json')", 'uses fetch'],
    ["globalThis['fetch']('./data.json')", 'uses fetch'],
    ['const get = fetch', 'uses fetch'],
    ['const { fetch } = window', 'uses fetch'],
    ['const { fetch: get } = globalThis', 'uses fetch'],
    ['new XMLHttpRequest()', 'uses XMLHttpRequest'],
    ['new WebSocket(address)', 'uses WebSocket'],
    ['new EventSource(address)', 'uses EventSource'],
    ["navigator.sendBeacon('/a')", 'uses sendBeacon'],
    ["nav.sendBeacon('/a')", 'uses sendBeacon'],
    ["importScripts('/a.js')", 'uses importScripts'],
    ["import { get } from 'node:https'", 'imports node:https'],
    ["const dns = await import('dns/promises')", 'imports dns/promises'],
    ['const a = <img src="https://elsewhere.invalid/a.png" />', 'names the address https://elsewhere.invalid/a.png'],
    ['const a = <a href="//elsewhere.invalid">out</a>', 'names the address //elsewhere.invalid'],
    ['const a = (name: string) => `http://elsewhere.invalid/${name}`', 'names the address http://elsewhere.invalid/'],
    ["import('https://elsewhere.invalid/a.js')", 'names the address https://elsewhere.invalid/a.js'],
  ])('%j is found', (text, fault) => {
    const faults = staysOffline({ file, text });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(fault);
  });

  it.each([
    ["import drawing from '../../demo-blocks/gull.block.json?raw'"],
    ["import.meta.glob('../../demo-blocks/*.json', { query: '?raw', import: 'default' })"],
    ["document.createElementNS('http://www.w3.org/2000/svg', 'path')"],
    ['basket.fetch(); const basket = { fetch: () => 1 }; class Dog { fetch() {} }'],
    ['const a = <p>Read https://elsewhere.invalid in your own time // or not</p>'],
    ["const half = '1//2' // fetch('https://elsewhere.invalid')"],
  ])('%j stays here', (text) => expect(staysOffline({ file, text })).toEqual([]));

  it('an address in a style sheet is found', () => {
    const text = 'body {\n  background: url( "https://elsewhere.invalid/a.png" );\n}';
    expect(staysOffline({ file: 'src/app/app.css', text })).toEqual([
      'src/app/app.css:2 loads https://elsewhere.invalid/a.png: bring the file into the project',
    ]);
    expect(staysOffline({ file: 'src/app/app.css', text: "@import '//elsewhere.invalid/a.css';" })).toHaveLength(1);
    expect(staysOffline({ file: 'src/app/app.css', text: 'body { background: url(./linen.png); }' })).toEqual([]);
  });

  it('a call is found in every room, an address on the screen only', () => {
    expect(staysOffline({ file: 'src/pattern/a.ts', text: "fetch('./font.ttf')" })).toHaveLength(1);
    expect(staysOffline({ file: 'src/canvas/a.tsx', text: "const a = 'https://elsewhere.invalid'" })).toHaveLength(1);
    expect(staysOffline({ file: 'src/files/a.ts', text: "const a = 'https://json-schema.org/draft/2020-12/schema'" })).toEqual([]);
  });

  it('in the house as it stands', () => {
    const sources = sourcesUnder('src', /\.(tsx?|css)$/);
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.flatMap(staysOffline)).toEqual([]);
  });
});
