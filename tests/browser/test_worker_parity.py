"""The worker in a real browser gives byte for byte what CPython gives, through fetch, address and all."""

import random
from urllib.parse import urlencode

import pytest

from tests import walking
from tests.browser.driving import NoSignal, Server, Watch, visit, wait_until_carried
from webapp import pocket, shelf
from webapp.bundle import PAGE_POLICY

SEED = 20260214
QUESTIONS_EACH = 10  # from the states of a page, and as many made at random; tests/parity asks thousands under node

# Hands the whole list over at once, so that the round trips to the test cost nothing.
FETCH_ALL = """async requests => {
  const replies = [];
  for (const [address, partial] of requests) {
    const reply = await fetch(address, { headers: partial ? { 'HX-Request': 'true' } : {} });
    const said = name => reply.headers.get(name);
    const by = said('x-answered-by');
    replies.push([reply.status, said('content-type'), await reply.text(), by, said('content-security-policy')]);
  }
  return replies;
}"""


def requests():
    """Return (path, pairs, partial): every state of every page, random questions, JSON, and stray addresses."""
    chance = random.Random(SEED)
    found: list[tuple[str, walking.Pairs, bool]] = [
        (path, [], False) for path in ("/", "/about", "/api", "/api/openapi.json", "/no-such", "/a/b")
    ]
    for name in shelf.names():
        asked = walking.calculator(name)
        states = walking.states(name)
        questions = [pairs for _, pairs in chance.sample(states, min(len(states), QUESTIONS_EACH))]
        questions += [walking.a_question(asked, chance) for _ in range(QUESTIONS_EACH)]
        for pairs in questions:
            lists = [("lang", "zz")] * chance.randint(0, 1) + [("units", "si")] * chance.randint(0, 1)
            path = chance.choice(("/", "/", "/api/")) + name
            found.append((path, pairs + lists, chance.random() < 0.6))
        found.append(
            (f"/{name}", [("voltage", "<b>\u0663\u202f&\u00e9\U0001f525\ufeff\x00\n"), ("", ""), ("x", "")], False)
        )
    return found


@pytest.fixture(scope="module")
def replies(chromium, tmp_path_factory):
    """Every request with what the worker replied to it, asked with the server dead: (request, reply)."""
    asked = requests()
    with Server(tmp_path_factory.mktemp("data")) as server, chromium.new_context() as phone:
        watch = Watch(phone)
        page = visit(phone, server.address)
        wait_until_carried(page)
        page.reload()
        server.kill()
        addresses = [(path[1:] + ("?" + urlencode(pairs) if pairs else ""), partial) for path, pairs, partial in asked]
        with NoSignal(server, watch):
            got = page.evaluate(FETCH_ALL, [("./" + address, partial) for address, partial in addresses])
    assert not watch.faults
    return server.build, list(zip(asked, got, strict=True))


def test_a_few_hundred_replies_are_the_same_bytes(replies):
    build, pairs = replies
    assert len(pairs) > 1.5 * QUESTIONS_EACH * len(shelf.names())
    for (path, query, partial), (status, content_type, body, by, policy) in pairs:
        expected = pocket.respond(pocket.Request(path, query, partial), "en", build)
        where = f"{path}?{urlencode(query)} partial={partial}"
        assert (by, policy) == ("phone", PAGE_POLICY), where
        assert (status, content_type) == (expected.status, expected.content_type), where
        assert body.encode() == expected.body.encode(), where


def test_every_state_of_a_page_was_among_them(replies):
    bodies = [body for (_, _, partial), (_, _, body, *_) in replies[1] if not partial]
    for mark in ('class="headline answered"', 'class="headline waiting"', 'class="headline problem"', '"errors"'):
        assert any(mark in body for body in bodies), mark


def test_an_address_written_another_way_is_read_as_the_server_reads_it(chromium, server):
    asked = [(address, False) for address in ("heat%2Dinput?voltage=24%20V", "%68eat-input", "n%C3%B6", "n%FFx")]
    with chromium.new_context() as phone, chromium.new_context(service_workers="block") as without:
        page = visit(phone, server.address)
        wait_until_carried(page)
        page.reload()
        carried = page.evaluate(FETCH_ALL, asked)
        served = visit(without, server.address).evaluate(FETCH_ALL, asked)
    assert [by for *_, by, _ in carried] == ["phone"] * len(asked)
    assert [by for *_, by, _ in served] == [None] * len(asked)
    assert [reply[:3] for reply in carried] == [reply[:3] for reply in served]
