// Patterns are put together from pieces, so that this file does not find itself.
const either = (...words: string[]): string => `(?:${words.join('|')})`;

interface WordRule {
  readonly what: string;
  readonly pattern: RegExp;
  readonly where: RegExp;
}

const OWN_TEXT = /^(src|test|demo-data|\.ci|public)\/|^[^/]+\.(md|ts|html)$/;

export const WORD_RULES: readonly WordRule[] = [
  {
    what: 'left-over',
    pattern: new RegExp(`\\b${either('TO'.concat('DO'), 'FIX'.concat('ME'), 'XX'.concat('X'), 'HA'.concat('CK'))}\\b`),
    where: OWN_TEXT,
  },
  {
    what: 'left-over',
    pattern: new RegExp(either('not '.concat('implemented'), 'coming '.concat('soon'), 'lorem '.concat('ipsum')), 'i'),
    where: OWN_TEXT,
  },
  {
    what: 'check switched off',
    pattern: new RegExp(either('@ts-'.concat('(ignore|nocheck|expect-error)'), 'biome-'.concat('ignore'))),
    where: OWN_TEXT,
  },
  {
    what: 'any',
    pattern: new RegExp(`(\\bas|:|<) *${'an'.concat('y')}\\b *(?=[;,)>=\\]|&[]|$)`),
    where: /\.tsx?$/,
  },
  {
    what: 'skipped or focused test',
    pattern: new RegExp(
      `\\b${either('it', 'test', 'describe')}\\.${either('skip', 'only', 'todo', 'fixme')}\\b|\\bx(it|describe)\\(`,
    ),
    where: /^(test|demo-data)\//,
  },
  {
    what: 'timed test',
    pattern: new RegExp(`expect\\([^)]*${either('elapsed', 'duration', 'performance\\.now', 'Date\\.now')}`),
    where: /^test\//,
  },
  {
    what: 'clock, locale or chance',
    pattern: new RegExp(
      either(
        'Math\\.random',
        'Date\\.now',
        'new Date\\b',
        'performance\\.now',
        'toLocale\\w*\\(',
        '\\bIntl\\.',
        'localeCompare',
      ),
    ),
    where: /^src\/core\/.*\.ts$/,
  },
  {
    what: 'path of a machine',
    pattern: new RegExp(`(?<![\\w.])/${either('work', 'farm', 'root', 'tmp', 'home', 'Users')}/[a-zA-Z]`),
    where: /^(?!package-lock\.json$)/,
  },
  {
    what: 'registry',
    pattern: new RegExp(
      either('registry\\.'.concat('npm'), 'npm'.concat('js\\.'), 'un'.concat('pkg\\.'), 'js'.concat('delivr')),
    ),
    where: /^(?!package-lock\.json$)/,
  },
];

export interface Found {
  readonly what: string;
  readonly line: number;
  readonly text: string;
}

/** Words that must not stand in a file of this path. */
export const forbiddenWords = (path: string, text: string): readonly Found[] =>
  WORD_RULES.filter(({ where }) => where.test(path)).flatMap(({ what, pattern }) =>
    text
      .split('\n')
      .flatMap((content, i) =>
        pattern.test(content) ? [{ what, line: i + 1, text: content.trim().slice(0, 80) }] : [],
      ),
  );
