"""The page around <main>: finished pieces per language, joined around a title and its content."""

from webapp.catalogue import Context
from webapp.shell_pieces import pieces

BUILD_SLOT = "@build@"


def page(title: str, main: str, context: Context, of_records: bool = False) -> str:
    """Return the whole page: the shell's pieces around an escaped title and finished main content.

    A page of records asks Python nothing: its one script reads the records while the page is still on its way.
    """
    before, scripts, for_records, head, between, after = pieces(context.language)
    before += (for_records if of_records else scripts) + head
    return before + title + between + main + after.replace(BUILD_SLOT, context.build)
