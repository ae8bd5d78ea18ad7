/** Plain arithmetic as a tree: what a working's expression says. */
export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'minus'; readonly of: Expression }
  | {
      readonly kind: 'pair';
      readonly sign: '+' | '-' | '*' | '/' | '^';
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: 'call'; readonly name: string; readonly of: readonly Expression[] };

const tokenPattern = /\s*(\d+(?:\.\d+)?(?:e[+-]?\d+)?|[A-Za-z_]\w*|[-+*/^(),])/giy;

function tokensOf(text: string): string[] | null {
  const tokens: string[] = [];
  tokenPattern.lastIndex = 0;
  let end = 0;
  for (let match = tokenPattern.exec(text); match; match = tokenPattern.exec(text)) {
    tokens.push(match[1]!);
    end = tokenPattern.lastIndex;
  }
  return text.slice(end).trim() === '' ? tokens : null;
}

/** Reads tokens from left to right; throws on what is no arithmetic. */
class Reader {
  private at = 0;
  private readonly tokens: readonly string[];

  constructor(tokens: readonly string[]) {
    this.tokens = tokens;
  }

  readAll(): Expression {
    const tree = this.readSum();
    if (this.at < this.tokens.length) throw new Error('more follows');
    return tree;
  }

  private take(...signs: readonly string[]): string | null {
    const token = this.tokens[this.at];
    if (token === undefined || !signs.includes(token)) return null;
    this.at += 1;
    return token;
  }

  private readSum(): Expression {
    let left = this.readProduct();
    for (let sign = this.take('+', '-'); sign; sign = this.take('+', '-')) {
      left = { kind: 'pair', sign: sign as '+' | '-', left, right: this.readProduct() };
    }
    return left;
  }

  private readProduct(): Expression {
    let left = this.readSigned();
    for (let sign = this.take('*', '/'); sign; sign = this.take('*', '/')) {
      left = { kind: 'pair', sign: sign as '*' | '/', left, right: this.readSigned() };
    }
    return left;
  }

  private readSigned(): Expression {
    if (this.take('-')) return { kind: 'minus', of: this.readSigned() };
    if (this.take('+')) return this.readSigned();
    const base = this.readPlain();
    return this.take('^') ? { kind: 'pair', sign: '^', left: base, right: this.readSigned() } : base;
  }

  private readPlain(): Expression {
    const token = this.tokens[this.at];
    this.at += 1;
    if (token === '(') {
      const inner = this.readSum();
      this.expect(')');
      return inner;
    }
    if (token !== undefined && /^\d/.test(token)) return { kind: 'number', value: Number(token) };
    if (token === undefined || !/^[A-Za-z_]/.test(token)) throw new Error('a number or a name must stand here');
    return this.take('(') ? { kind: 'call', name: token, of: this.readArguments() } : { kind: 'name', name: token };
  }

  private readArguments(): Expression[] {
    const of = [this.readSum()];
    while (this.take(',')) of.push(this.readSum());
    this.expect(')');
    return of;
  }

  private expect(sign: string): void {
    if (!this.take(sign)) throw new Error(`${sign} is missing`);
  }
}

/** The tree of an expression (+ - * / ^, parentheses, functions, names, numbers); null where it is not arithmetic. */
export function parseExpression(text: string): Expression | null {
  const tokens = tokensOf(text);
  if (!tokens) return null;
  try {
    return new Reader(tokens).readAll();
  } catch {
    return null;
  }
}
