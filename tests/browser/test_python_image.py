"""The kept image of the phone's Python answers as the sources do, and a spoilt one costs nothing but time."""

from urllib.parse import urlencode

import pytest

from tests.browser.driving import NoSignal, Server, Watch, stop_workers, visit, wait_until_carried
from tests.browser.test_worker_parity import FETCH_ALL, requests
from webapp import pocket

IMAGE_IS_KEPT = """async () => {
  for (let tries = 0; tries < 100; tries++) {
    if (await caches.match('./python.image')) return true;
    await new Promise(done => setTimeout(done, 100));
  }
  return false;
}"""
# What is in the cache under a name, changed by a function of its bytes; null takes it out.
CHANGE = """async ([address, change]) => {
  const name = (await caches.keys()).find(each => !each.includes('replies'));
  const cache = await caches.open(name);
  const bytes = new Uint8Array(await (await cache.match(address)).arrayBuffer());
  if (change === 'gone') return cache.delete(address);
  if (change === 'cut short') return cache.put(address, new Response(bytes.slice(0, bytes.length - 1)));
  const pages = 8 + 4 * new Uint32Array(bytes.buffer, 4, 1)[0];
  bytes.fill(255, pages);
  return cache.put(address, new Response(bytes));
}"""
QUESTION = "./heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min"


def with_image(context, address):
    """Return a page whose worker has been stopped after it kept an image of its Python."""
    page = visit(context, address)
    wait_until_carried(page)
    assert page.evaluate(IMAGE_IS_KEPT)
    page.reload()
    return page


def test_replies_from_an_image_are_the_same_bytes(chromium, tmp_path):
    # Only the way to them differs from test_worker_parity's, which asks for them all: half of them will do.
    asked = requests()[::2]
    assert len(asked) > 400
    with Server(tmp_path) as server, chromium.new_context() as phone:
        watch = Watch(phone)
        page = with_image(phone, server.address)
        page.evaluate(CHANGE, ["./pocket.json", "gone"])  # so that only the image can answer
        stop_workers(page)
        server.kill()
        addresses = [
            ("./" + path[1:] + ("?" + urlencode(pairs) if pairs else ""), partial) for path, pairs, partial in asked
        ]
        with NoSignal(server, watch):
            got = page.evaluate(FETCH_ALL, addresses)
    for (path, query, partial), (status, content_type, body, by, _) in zip(asked, got, strict=True):
        expected = pocket.respond(pocket.Request(path, query, partial), "en", server.build)
        where = f"{path}?{urlencode(query)} partial={partial}"
        assert by == "phone", where
        assert (status, content_type) == (expected.status, expected.content_type), where
        assert body.encode() == expected.body.encode(), where


@pytest.mark.parametrize("change", ["gone", "cut short", "overwritten"])
def test_without_a_good_image_the_sources_answer(chromium, server, change):
    with chromium.new_context() as phone:
        page = with_image(phone, server.address)
        page.evaluate(CHANGE, ["./python.image", change])
        stop_workers(page)
        # One that kills its Python is found out by the first question, which the server then answers.
        got = page.evaluate(FETCH_ALL, [(QUESTION + f"&x={number}", True) for number in range(3)])
        assert [by for *_, by, _ in got][1:] == ["phone", "phone"]
        assert len({body for _, _, body, *_ in got}) == 1
        assert '<p class="number"><b>17.3</b>' in got[0][2]
