"""The smallest pieces of HTML and of addresses, made the same way on both Pythons."""

_SAFE = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/"


def escape(text: str) -> str:
    """Return text safe inside HTML text and quoted attributes."""
    text = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return text.replace('"', "&quot;").replace("'", "&#39;")


def tag(name: str, content: str, attributes: str = "") -> str:
    """Return an element around finished HTML; `attributes` is finished HTML too."""
    return "<" + name + (" " + attributes if attributes else "") + ">" + content + "</" + name + ">"


def query(pairs: list[tuple[str, str]]) -> str:
    """Return pairs as a query string (no question mark), UTF-8, spaces as plus signs."""
    return "&".join(quote(name) + "=" + quote(value) for name, value in pairs)


def quote(text: str) -> str:
    """Return text percent-encoded for a query string."""
    if not text.replace(" ", "").strip(_SAFE):
        return text.replace(" ", "+")  # as nearly always
    out = []
    for character in text:
        if character in _SAFE:
            out.append(character)
        elif character == " ":
            out.append("+")
        else:
            for byte in character.encode("utf-8"):
                out.append("%" + "0123456789ABCDEF"[byte >> 4] + "0123456789ABCDEF"[byte & 15])
    return "".join(out)
