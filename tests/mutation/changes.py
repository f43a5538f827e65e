"""The small changes that can be made to a C++ source: an operator or a bound turned, a constant
moved, a condition negated. Only real code is changed: no comments, strings, preprocessor lines,
assertions, template brackets, nor the arguments of tr() and arg(), which are words."""

import re
from dataclasses import dataclass

TOKEN = re.compile(
    r"""
    (?P<skip>//[^\n]*|/\*.*?\*/|^[ \t]*\#(?:[^\n]*\\\n)*[^\n]*|R"(?P<mark>[^(]*)\(.*?\)(?P=mark)"
        |"(?:\\.|[^"\\\n])*"|(?<!\w)(?:u8|[uUL])?'(?:\\.|[^'\\\n])+')
    |(?P<number>(?<![\w.])(?:0[xX][0-9a-fA-F']+|(?:\d[\d']*\.?[\d']*|\.\d+)(?:[eE][+-]?\d+)?)\w*)
    |(?P<word>[A-Za-z_]\w*)
    |(?P<sign><=>|<<=|>>=|->|\+\+|--|<<|::|&&|\|\||[-+*/%&|^=!<>]=|[^\s\w])
    """,
    re.VERBOSE | re.MULTILINE | re.DOTALL,
)

TURNED = {
    '<': '<=', '<=': '<', '>': '>=', '>=': '>', '==': '!=', '!=': '==',
    '&&': '||', '||': '&&', '+': '-', '-': '+', '*': '/', '/': '*',
    '+=': '-=', '-=': '+=', '*=': '/=', '/=': '*=',
}  # fmt: skip
WORDS_ONLY = {'tr', 'arg', 'assert', 'static_assert'}


@dataclass(frozen=True)
class Change:
    begin: int
    end: int
    text: str

    def made_in(self, source):
        return source[: self.begin] + self.text + source[self.end :]


def _tokens(source):
    return [m for m in TOKEN.finditer(source) if m.lastgroup not in ('skip', 'mark')]


def _closing(tokens, opening):
    """The index of the bracket that closes the one at `opening`."""
    depth = 0
    for i in range(opening, len(tokens)):
        depth += {'(': 1, ')': -1}.get(tokens[i].group(), 0)
        if depth == 0:
            return i
    return len(tokens) - 1


def _template_end(tokens, opening):
    """The index of the > that closes the < at `opening`."""
    depth = 0
    for i in range(opening, len(tokens)):
        depth += {'<': 1, '>': -1}.get(tokens[i].group(), 0)
        if depth == 0 or tokens[i].group() in ';{':
            return i
    return len(tokens) - 1


def _stands_apart(source, token):
    """A binary operator has a space on both sides in this project's format; a template bracket, a
    pointer, a reference and a sign have not."""
    return source[token.start() - 1].isspace() and source[token.end()].isspace()


def _moved(number, up):
    """The constant moved by a tenth, a whole number by one; None for what is no plain number."""
    found = re.fullmatch(r"([\d'.]+(?:[eE][+-]?\d+)?)([uUlLfFzZ]*)", number)
    if not found:
        return None
    digits, suffix = found[1].replace("'", ""), found[2]
    if re.fullmatch(r'\d+', digits):
        value = int(digits)
        return str(value + 1 if up or value == 0 else value - 1) + suffix
    value = float(digits)
    moved = f'{value * (1.1 if up else 0.9):.12g}' if value != 0.0 else '0.1'
    return (moved if re.search(r'[.e]', moved) else moved + '.0') + suffix


def _negated(source, tokens, opening):
    """The condition in the bracket at `opening`, what stands before its `;` apart; None for a
    declaration, which cannot be negated."""
    closing = _closing(tokens, opening)
    begin = tokens[opening].end()
    for token in tokens[opening:closing]:
        if token.group() == ';':
            begin = token.end()
    end = tokens[closing].start()
    condition = source[begin:end].strip()
    if re.match(r'(const|auto)\b', condition):
        return None
    return Change(begin, end, f'!({condition})')


def _is_pure(tokens, i):
    """Whether the number is the = 0 of a pure virtual function."""
    return i > 1 and tokens[i - 1].group() == '=' and tokens[i - 2].group() in (')', 'const')


def changes_of(source):
    """All changes of a source, in its order; each constant may be moved up and down."""
    tokens = _tokens(source)
    found = []
    i = 0
    while i < len(tokens):
        token, text = tokens[i], tokens[i].group()
        before = tokens[i - 1].group() if i > 0 else ''
        after = tokens[i + 1].group() if i + 1 < len(tokens) else ''
        if text in WORDS_ONLY and after == '(':
            i = _closing(tokens, i + 1)
        elif text == '<' and (before == 'template' or not _stands_apart(source, token)):
            i = _template_end(tokens, i)
        elif text == 'operator':
            i += 1
        elif text in ('if', 'while') and after == '(':
            found += filter(None, [_negated(source, tokens, i + 1)])
        elif text in TURNED and _stands_apart(source, token):
            found.append(Change(token.start(), token.end(), TURNED[text]))
        elif text in ('true', 'false'):
            other = 'false' if text == 'true' else 'true'
            found.append(Change(token.start(), token.end(), other))
        elif token.lastgroup == 'number' and not _is_pure(tokens, i):
            for moved in dict.fromkeys((_moved(text, True), _moved(text, False))):
                if moved is not None:
                    found.append(Change(token.start(), token.end(), moved))
        i += 1
    return found
