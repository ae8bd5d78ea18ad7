import { expect, test } from 'vitest';
import { filesUnder, readText, topLevel } from './repository';

/** All folders at the top, and all files: whoever needs another one says so here. */
const folders = ['.ci', 'fixtures', 'shared', 'src', 'tests'];
const files = [
  '.gitignore',
  '.npmrc',
  'DEVELOPERS.md',
  'README.md',
  'biome.json',
  'index.html',
  'package-lock.json',
  'package.json',
  'tsconfig.json',
  'vite.config.ts',
];

const outsiders = (found: readonly string[], known: readonly string[]) => found.filter((name) => !known.includes(name));

test('the top holds the folders and files that were agreed, and no other', () => {
  const top = topLevel();
  expect(outsiders(top.folders, folders)).toEqual([]);
  expect(outsiders(top.files, files)).toEqual([]);
  expect(top.folders).toEqual(expect.arrayContaining(folders));
});

test('a folder or file that nobody agreed on is found', () => {
  expect(outsiders(['src', 'tools'], folders)).toEqual(['tools']);
  expect(outsiders(['package.json', 'knip.json'], files)).toEqual(['knip.json']);
});

/** Folders of one machine, and hosts that serve packages: neither means anything on another machine. */
const ofOneMachine = [
  /(?<![\w.~@-])\/(?:work|tmp|home|root|Users)\/[\w.]/,
  /\b[A-Z]:\\{1,2}Users\b/,
  /\bregistry\.[\w-]+\.\w+|\bnpmjs\.(?:org|com)\b|\b(?:deb|ftp|security)\.debian\.org\b|\blocalhost:4873\b/,
];

function machineWords(path: string, text: string): string[] {
  return text.split('\n').flatMap((line, i) => {
    const found = ofOneMachine.map((pattern) => pattern.exec(line)?.[0]).find((word) => word !== undefined);
    return found === undefined ? [] : [`${path}:${i + 1} ${found}`];
  });
}

const isText = (path: string) => !/\.(png|jpg|woff2?|ttf|xlsx|pdf)$/.test(path);

test('no file names a folder of one machine or a package host', () => {
  const paths = filesUnder('').filter(isText);
  expect(paths.length).toBeGreaterThan(80);
  expect(paths.flatMap((path) => machineWords(path, readText(path)))).toEqual([]);
});

// Put together from parts, so that this file passes its own test.
test.each([
  [['', 'work', 'main'].join('/')],
  [['read ', 'tmp', 'x.json'].join('/')],
  [['"', 'home', 'ann'].join('/')],
  [['C:', 'Users', 'ann'].join('\\')],
  [['registry', 'npmjs', 'org'].join('.')],
  [['https://deb', 'debian', 'org'].join('.')],
])('%s is found', (text) => {
  expect(machineWords('planted.md', `first line\n${text}\n`)).toHaveLength(1);
});

test.each([['framework/main'], ['src/ui/home/Page.tsx'], ['/usr/bin/chromium'], ['./tmp/']])('%s is passed', (text) => {
  expect(machineWords('planted.md', text)).toEqual([]);
});
