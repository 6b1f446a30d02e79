"""The browser, the servers and the phones that the browser tests share."""

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Playwright, expect, sync_playwright

from tests.browser import driving
from tests.browser.driving import Server, Watch

HERE = Path(__file__).parent


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if HERE in item.path.parents:
            item.add_marker("browser")


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    assert driving.CHROMIUM, "the browser tests need Chromium: ./tests/run says how to get it"
    expect.set_options(timeout=driving.PATIENCE_MS)
    with sync_playwright() as running:
        yield running


@pytest.fixture(scope="session")
def chromium(playwright: Playwright) -> Iterator[Browser]:
    browser = driving.launch(playwright)
    yield browser
    browser.close()


@pytest.fixture(scope="session")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """The app as it is; tests that kill their server start one of their own."""
    with Server(tmp_path_factory.mktemp("data")) as running:
        yield running


@pytest.fixture(scope="session")
def copy_project(tmp_path_factory: pytest.TempPathFactory) -> Callable[[], Path]:
    """Make a copy of what the server reads, to change as a test likes."""

    def copy() -> Path:
        folder = tmp_path_factory.mktemp("project")
        for name in ("calculators", "webapp", "static"):
            ignored = shutil.ignore_patterns("node_modules", "__pycache__")
            shutil.copytree(driving.ROOT / name, folder / name, ignore=ignored)
        return folder

    return copy


@pytest.fixture(scope="session")
def specimen_server(copy_project: Callable[[], Path], tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """The app with one more calculator on the shelf, which has every kind of field and of answer."""
    project = copy_project()
    shutil.copy(driving.ROOT / "tests" / "specimen.py", project / "calculators")
    with Server(tmp_path_factory.mktemp("data"), project) as running:
        yield running


@pytest.fixture
def new_phone(chromium: Browser) -> Iterator[Callable[..., BrowserContext]]:
    """Make phones with nothing on them yet; whatever their consoles must not show fails the test."""
    phones: list[tuple[BrowserContext, Watch]] = []

    def make(**options: object) -> BrowserContext:
        context = chromium.new_context(**{**driving.PHONE, **options})  # type: ignore[arg-type]
        context.set_default_timeout(driving.PATIENCE_MS)
        context.add_init_script(driving.WATCH_ASKING)
        phones.append((context, Watch(context)))
        return context

    yield make
    for context, _ in phones:
        context.close()
    assert not [fault for _, watch in phones for fault in watch.faults]


@pytest.fixture
def phone(new_phone: Callable[..., BrowserContext]) -> BrowserContext:
    """A phone with nothing on it yet."""
    return new_phone()
