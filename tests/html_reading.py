"""Reading our own HTML strictly: what is said, what is labelled, and whether it is well formed."""

from html.parser import HTMLParser

VOID = ("meta", "link", "input", "br", "hr", "img")
DRAWN = ("path", "circle", "polyline", "polygon", "line", "rect")


class Element:
    """An opened element with its attributes and everything inside it."""

    def __init__(self, name: str, attributes: dict[str, str], parent: "Element | None") -> None:
        self.name = name
        self.attributes = attributes
        self.parent = parent
        self.children: list[Element | str] = []

    def text(self) -> str:
        """Return all text inside."""
        return "".join(child if isinstance(child, str) else child.text() for child in self.children)

    def inside(self, name: str) -> bool:
        """Return whether this element is, or stands in, an element called `name`."""
        return self.name == name or (self.parent is not None and self.parent.inside(name))

    def has_class(self, name: str) -> bool:
        """Return whether `class` lists `name`."""
        return name in self.attributes.get("class", "").split()


class Page(HTMLParser):
    """A parsed page or fragment; `faults` says what is not well formed."""

    def __init__(self, html: str) -> None:
        super().__init__(convert_charrefs=True)
        self.faults: list[str] = []
        self.root = Element("", {}, None)
        self.elements: list[Element] = []
        self.texts: list[tuple[Element, str]] = []
        self._open = self.root
        self.feed(html)
        self.close()
        if self._open is not self.root:
            self.faults.append(f"<{self._open.name}> is never closed")
        self._check_names()

    def handle_starttag(self, name: str, attributes: list[tuple[str, str | None]]) -> None:
        names = [key for key, _ in attributes]
        if len(set(names)) != len(names):
            self.faults.append(f"<{name}> has an attribute twice: {names}")
        element = Element(name, {key: value or "" for key, value in attributes}, self._open)
        self._open.children.append(element)
        self.elements.append(element)
        if name not in VOID:
            self._open = element

    def handle_startendtag(self, name: str, attributes: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(name, attributes)
        if name in DRAWN:
            self._open = self._open.parent or self.root
        else:
            self.faults.append(f"<{name}/> closes itself, and only drawn shapes may")

    def handle_endtag(self, name: str) -> None:
        if name != self._open.name:
            self.faults.append(f"</{name}> where <{self._open.name}> is open")
        elif self._open.parent is not None:
            self._open = self._open.parent

    def handle_data(self, text: str) -> None:
        self._open.children.append(text)
        self.texts.append((self._open, text))

    def all(self, *names: str) -> list[Element]:
        """Return the elements of these names, in order."""
        return [element for element in self.elements if element.name in names]

    def box(self, name: str) -> Element | None:
        """Return the box, the chooser or the checked button of that name."""
        for element in self.all("input", "select"):
            if element.attributes.get("name") == name:
                if element.attributes.get("type") != "radio" or "checked" in element.attributes:
                    return element
        return None

    def chosen(self, name: str) -> str:
        """Return what stands in the box or chooser of that name, or ""."""
        box = self.box(name)
        if box is None:
            return ""
        if box.name == "input":
            return box.attributes.get("value", "")
        options = [child for child in box.children if isinstance(child, Element)]
        selected = [each for each in options if "selected" in each.attributes] or options[:1]
        return selected[-1].attributes.get("value", "") if selected else ""

    def _check_names(self) -> None:
        ids = [element.attributes["id"] for element in self.elements if "id" in element.attributes]
        for id in sorted({id for id in ids if ids.count(id) > 1}):
            self.faults.append(f"id {id} stands {ids.count(id)} times")
        labelled = {element.attributes.get("for", "") for element in self.all("label")}
        for element in self.all("input", "select", "textarea"):
            attributes = element.attributes
            if attributes.get("type") == "hidden" or attributes.get("aria-label"):
                continue
            if attributes.get("id", "") not in labelled:
                self.faults.append(f"{element.name} {attributes.get('name')} has no label")
        for element in self.all("button", "a"):
            if not element.text().strip() and not element.attributes.get("aria-label"):
                self.faults.append(f"<{element.name} {element.attributes}> says nothing")
        for element in self.elements:
            for key in ("aria-describedby", "aria-labelledby", "for"):
                for id in element.attributes.get(key, "").split():
                    if id not in ids:
                        self.faults.append(f"{key} names {id}, which is not on the page")
