"""A new version on the server: offered, never forced, and carried whole or not at all."""

import json
from contextlib import suppress
from pathlib import Path

import pytest
from playwright.sync_api import Error, Page

from tests.browser.deployment import FAULTS
from tests.browser.driving import NoSignal, Server, Watch, box_of, visit, wait_until, wait_until_carried
from tests.browser.test_log import keep
from webapp.bundle import PLAIN_STATIC, PRECACHED_STATIC

ASKED = "heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min"
ASSETS = (
    *(f"/static/{name}" for name in PRECACHED_STATIC + PLAIN_STATIC),
    "/manifest.webmanifest",
    "/pocket.json",
)
OLD_TAGLINE = "Sums and records for a welder with a truck"
NEW_TAGLINE = "Now with a new tagline"
EMPTY_SECTION = b"\x00\x02\x01a"  # of a WebAssembly module: allowed anywhere, does nothing

# Looks for a new version and says how its installation ended.
UPDATE = """async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  await registration.update();
  const found = registration.installing ?? registration.waiting;
  const ended = () => ['installed', 'activated', 'redundant'].includes(found.state);
  if (found && !ended()) await new Promise(done => (found.onstatechange = () => ended() && done()));
  return found?.state ?? 'nothing new';
}"""


@pytest.fixture(scope="module")
def new_version(copy_project):
    """The project with every single file that a phone carries changed a little."""
    project = copy_project()
    for name in PRECACHED_STATIC + PLAIN_STATIC + ("manifest.webmanifest",):
        path = project / "static" / name
        path.write_bytes(path.read_bytes() + (EMPTY_SECTION if path.suffix == ".wasm" else b"\n"))
    words = project / "webapp" / "words" / "en.py"
    words.write_text(words.read_text().replace(OLD_TAGLINE, NEW_TAGLINE))
    return project


@pytest.fixture(scope="module")
def broken_version(copy_project):
    """The project with Python in it that only the server's Python can read."""
    project = copy_project()
    pocket = project / "webapp" / "pocket.py"
    pocket.write_text(pocket.read_text() + "\nmatch HTML:\n    case _:\n        pass\n")
    return project


@pytest.fixture(scope="module")
def deaf_version(copy_project):
    """The project with a worker that installs, takes over, and then gives no answer to anything."""
    project = copy_project()
    worker = project / "static" / "built" / "worker.js"
    ahead = "self.addEventListener('fetch', event => {\n"
    ahead += "  event.stopImmediatePropagation(); event.respondWith(Promise.reject(new Error('deaf')));\n});\n"
    worker.write_text(ahead + worker.read_text())
    return project


@pytest.fixture
def deployment(tmp_path):
    """A server whose single files can be spoilt and whose version can be changed."""
    with Server(tmp_path, module="tests.browser.deployment") as running:
        yield running


def spoil(server: Server, **faults: str) -> None:
    (Path(server.data) / FAULTS).write_text(json.dumps(faults))


def deploy(server: Server, project: Path) -> str:
    """Replace the running version by another; return the build that was there before."""
    before = server.build
    server.kill()
    server.start(project)
    assert server.build != before
    return before


def watch_active(page: Page) -> set[str]:
    """Return the ids of the workers that have been active from now on; more come as the browser goes on."""
    active: set[str] = set()

    def note(event: dict[str, list[dict[str, str]]]) -> None:
        active.update(each["versionId"] for each in event["versions"] if each["status"] == "activated")

    session = page.context.new_cdp_session(page)
    session.on("ServiceWorker.workerVersionUpdated", note)
    session.send("ServiceWorker.enable")
    return active


def build_of(page):
    return page.inner_text(".build code")


def caches_of(page):
    return page.evaluate("caches.keys()")


def test_f23_an_update_is_offered_and_waits_until_it_is_wanted(phone, deployment, new_version):
    page = visit(phone, deployment.address)
    wait_until_carried(page)
    page.goto(deployment.address + "heat-input")
    page.fill("#voltage", "24")
    opened = page.evaluate("performance.timeOrigin")
    place = box_of(page.locator("#voltage"))
    before = deploy(deployment, new_version)
    other = visit(phone, deployment.address + "about")  # any visit looks for a new version
    for each in (page, other):
        each.get_by_role("button", name="New version").wait_for()
    assert box_of(page.locator("#voltage")) == place, "the offer pushed the form from under the finger"
    # Nothing happened to the half-filled form, and the version it began with goes on answering.
    page.fill("#current", "180")
    page.fill("#travel_speed", "12")
    page.get_by_text("17.3").first.wait_for()
    assert page.evaluate("performance.timeOrigin") == opened
    assert build_of(page) == before
    assert build_of(visit(phone, deployment.address + "about")) == before
    page.get_by_role("button", name="New version").tap()
    page.locator(".tagline", has_text=NEW_TAGLINE).wait_for()
    page.wait_for_selector(".answered")
    assert page.input_value("#voltage") == "24"
    assert build_of(page) == deployment.build
    assert not [name for name in caches_of(page) if before in name]
    assert other.evaluate("performance.timeOrigin") != page.evaluate("performance.timeOrigin")
    assert build_of(other) == before, "a page on which nobody asked for it was reloaded"
    deployment.kill()
    with NoSignal(deployment, Watch(phone)):
        page.goto(deployment.address + ASKED)
        assert page.inner_text(".headline .number b") == "17.3"
        assert build_of(page) == deployment.build


@pytest.mark.parametrize("fault", ["missing", "another build"])
def test_f24_one_file_spoilt_and_the_old_version_stays_whole(phone, deployment, new_version, fault):
    page = visit(phone, deployment.address)
    wait_until_carried(page)
    page.reload()
    before = deploy(deployment, new_version)
    for asset in ASSETS:
        spoil(deployment, **{asset: fault})
        assert page.evaluate(UPDATE) == "redundant", asset
        # What arrived is kept for the next try; here every try has to fetch every file.
        assert page.evaluate("name => caches.delete(name)", f"puddlebook-{deployment.build}"), asset
    assert page.get_by_role("button", name="New version").is_hidden()
    deployment.kill()
    with NoSignal(deployment, Watch(phone)):
        page.goto(deployment.address + ASKED)
        assert page.inner_text(".headline .number b") == "17.3"
        assert build_of(page) == before
    deployment.start()
    spoil(deployment)
    assert page.evaluate(UPDATE) == "installed"
    page.get_by_role("button", name="New version").wait_for()


def test_a_first_visit_to_a_spoilt_server_says_that_nothing_was_kept(phone, deployment):
    spoil(deployment, **{"/worker.js": "missing"})
    page = visit(phone, deployment.address + ASKED)
    page.wait_for_selector("[data-phone-state=failed]")
    assert "Not put on this phone" in page.inner_text("[data-phone-state]")
    page.fill("#voltage", "30")
    page.locator(".headline .number b", has_text="21.6").wait_for()


def test_f25_python_that_the_phone_cannot_run_falls_back_to_the_server(phone, deployment, broken_version, new_version):
    deploy(deployment, broken_version)
    page = visit(phone, deployment.address + "heat-input")
    wait_until_carried(page)
    page.reload()
    watch = Watch(phone)
    for name, text in (("voltage", "24"), ("current", "180"), ("travel_speed", "12")):
        page.fill(f"#{name}", text)
    page.locator(".headline .number b", has_text="17.3").wait_for()
    assert watch.from_network(), "the phone answered by itself: nothing was tested"
    deployment.kill()
    page.fill("#voltage", "30")
    page.get_by_text("This sum failed on the phone, and the server is out of reach").wait_for()
    assert page.input_value("#current") == "180"
    page.goto(deployment.address + "about")
    page.get_by_text("This sum failed on the phone, and the server is out of reach").wait_for()
    # A sound version cures it: one visit finds it, the next is answered by it.
    deployment.start(new_version)
    page.goto(deployment.address + "about")
    assert page.evaluate(UPDATE) == "installed"
    with page.expect_navigation():  # this page came from the new server, so its words alone prove no take-over
        page.get_by_role("button", name="New version").tap()
    page.locator(".tagline", has_text=NEW_TAGLINE).wait_for()
    deployment.kill()
    page.goto(deployment.address + ASKED)
    assert page.inner_text(".headline .number b") == "17.3"


def test_f25_a_deaf_worker_is_cured_by_a_sound_one_in_two_loads_and_the_outbox_is_intact(
    phone, deployment, deaf_version, new_version
):
    page = visit(phone, deployment.address)
    wait_until_carried(page)
    keep(page, deployment.address, joint="before the deaf one")
    deploy(deployment, deaf_version)
    assert page.evaluate(UPDATE) == "installed"
    page.get_by_role("button", name="New version").tap()
    for _ in range(50):
        with suppress(Error):
            page.goto(deployment.address + "log")
            page.wait_for_timeout(100)
            continue
        break
    else:
        raise AssertionError("the deaf worker answered: nothing was tested")
    active = watch_active(page)
    wait_until(page, lambda: active)
    deaf = set(active)
    deploy(deployment, new_version)
    with pytest.raises(Error):
        page.goto(deployment.address + "log")
    # The browser looks for a new version by itself, a moment after a load, even if that load came to nothing.
    wait_until(page, lambda: active - deaf)
    page.goto(deployment.address + "log")
    page.locator("[data-rows] li", has_text="before the deaf one").wait_for()
