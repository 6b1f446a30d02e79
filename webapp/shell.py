"""The page around <main>: three finished pieces per language, joined around a title and its content."""

from webapp.catalogue import Context
from webapp.shell_pieces import PIECES

BUILD_SLOT = "@build@"


def page(title: str, main: str, context: Context) -> str:
    """Return the whole page: the shell's three pieces around an escaped title and finished main content."""
    before, between, after = PIECES[context.language]
    return before + title + between + main + after.replace(BUILD_SLOT, context.build)
