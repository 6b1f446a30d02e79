"""The second gate: the server's Python and the phone's give the same bytes, over thousands of requests.

Several differences between the two Pythons are silent, and no compiler sees them. The requests are random; a
failure prints the seed, and PARITY_SEED=<seed> in the environment asks the same ones again. PARITY_REQUESTS asks
fewer while writing, or more before a release.
"""

import io
import json
import os
import random
import struct
import subprocess
import sys
import tokenize
import types
from urllib.parse import parse_qsl, quote

import pytest

from tests import walking
from tests.parity import asking_at_random, golden, two_pythons
from tests.parity.two_pythons import asked, differences
from webapp import environment, pages, pocket, shelf

SEED = int(os.environ.get("PARITY_SEED", "0")) or random.SystemRandom().randrange(1, 10**9)
REQUESTS = int(os.environ.get("PARITY_REQUESTS", "4000"))
PARTS = 8  # asked one by one, so that the first failure is told soon

pytestmark = pytest.mark.usefixtures("specimen")


def assert_same(requests, files, told=""):
    count, found = differences(requests, files)
    if count:
        pytest.fail(f"{count} of {len(requests)} replies differ{told}\n" + "\n".join(map(str, found)), pytrace=False)


@pytest.mark.parametrize("part", range(PARTS))
def test_random_requests_get_the_same_bytes(part):
    requests = asking_at_random.requests(random.Random(SEED + part), max(1, REQUESTS // PARTS))
    assert_same(requests, two_pythons.phone_files(), f"; PARITY_SEED={SEED} PARITY_REQUESTS={REQUESTS} asks again")


def test_random_requests_reach_answers_and_problems_of_every_calculator():
    seen: dict[str, set[str]] = {name: set() for name in shelf.names()}
    requests = asking_at_random.requests(random.Random(SEED), 100 * len(shelf.names()))
    for path, pairs, *_ in requests:
        name = path.split("/")[-1]
        if name in seen:
            seen[name].add(two_pythons.server_reply(asked("/api/" + name, pairs))[:3])
    assert {name: found for name, found in seen.items() if not found >= {"200", "422"}} == {}, f"PARITY_SEED={SEED}"


def test_every_state_of_every_page_gets_the_same_bytes():
    requests = []
    for name in shelf.names():
        problems = [pairs for state, pairs in walking.states(name) if state.startswith(("problem", "unasked"))]
        others = [pairs for state, pairs in walking.states(name) if not state.startswith(("problem", "unasked"))]
        # Of the problems every fourth, as the random requests are full of them; the rest in one language or another.
        requests += [asked("/" + name, pairs, True) for pairs in problems[::4]]
        requests += [asked("/" + name, [*pairs, ("units", "si")]) for pairs in others[SEED % 2 :: 2]]
        requests += [asked("/" + name, pairs, language="es") for pairs in others[1 - SEED % 2 :: 2]]
        requests += [asked("/api/" + name, pairs, language="zz") for pairs in others[SEED % 2 :: 2]]
    assert_same(requests, two_pythons.phone_files())


def test_golden_addresses_get_an_answer_and_the_same_bytes():
    requests = []
    for address in golden.ADDRESSES:
        path, _, query = address.partition("?")
        pairs = parse_qsl(query)
        assert "headline answered" in pocket.respond(pocket.Request(path, pairs, False), "en", "").body, address
        for language in pocket.LANGUAGES:
            requests += [asked(path, pairs, language=language), asked("/api" + path, pairs, language=language)]
            requests.append(asked(path, [*pairs, ("units", "si")], True, language))
    assert_same(requests, two_pythons.phone_files())


def test_every_number_in_the_carried_sources_is_read_as_the_same_double():
    sources = two_pythons.phone_files().values()
    tokens = [token for source in sources for token in tokenize.generate_tokens(io.StringIO(source).readline)]
    texts = sorted({token.string for token in tokens if token.type == tokenize.NUMBER and "." in token.string})
    assert len(texts) > 100
    assert bits_on_the_phone(texts) == [struct.unpack(">Q", struct.pack(">d", float(text)))[0] for text in texts]


def bits_on_the_phone(texts):
    """Return the bits of numbers as the phone's Python reads them from a source, as whole numbers."""
    source = f"""import struct
NUMBERS = ({", ".join(texts)},)
def respond_text(*asked):
    return " ".join([str(struct.unpack(">Q", struct.pack(">d", number))[0]) for number in NUMBERS])
"""
    count, found = differences([asked("/", [])], {"webapp/__init__.py": "", "webapp/pocket.py": source})
    assert count == 1
    return [int(bits) for bits in found[0].phone.split(" ")]


def test_a_query_is_read_the_same_by_server_and_worker(monkeypatch):
    chance = random.Random(SEED)
    texts = [asking_at_random._garbage(chance) for _ in range(300)]
    queries = [f"{quote(text)}={quote(text)}&x={quote(text)}+%2B&&y&=z;w=1&%FF%C3=%E2%82&a=b=c%" for text in texts]
    queries += [quote(text, safe="+&=;%") for text in texts]
    read = []

    def remember(request, language, build):
        read.append([list(pair) for pair in request.pairs])
        return pocket.Reply(200, pocket.HTML, "")

    monkeypatch.setattr(pocket, "respond", remember)
    client = pages.create_app().test_client()
    for query in queries:
        assert client.get("/specimen?" + query).status_code == 200
    script = two_pythons.HERE / "queries.mjs"
    node = environment.find_node() or "node"
    said = subprocess.run([node, script], input="\n".join(map(json.dumps, queries)), capture_output=True, text=True)
    assert said.returncode == 0, said.stderr
    phone = [pocket.Request("/", json.loads(line), False).pairs for line in said.stdout.split("\n")[:-1]]
    for query, server, worker in zip(queries, read, phone, strict=True):
        assert server == [list(pair) for pair in worker], f"PARITY_SEED={SEED} {query}"


# ---------------------------------------------------------------- the gate must be seen to fail

QUESTION = [("voltage", "24.25 V"), ("current", "78.4 A"), ("travel_speed", "12 in/min")]
PLANT = """
from calculators.contract import say as _say
_before = CALCULATOR.answer
def _planted(given):
    voltage, current = given.number("voltage"), given.number("current")
    found = _before(given)
    found.notes = found.notes + (_say("heat-input.planted", text={text}),)
    return found
CALCULATOR.answer = _planted
CALCULATOR.english = dict(CALCULATOR.english)  # the words are shared with the calculator on the shelf
CALCULATOR.english["planted"] = "{{text}}"
"""
SILENT = {
    "a tie to one decimal": "'{:.1f}'.format(voltage)",
    "a tie with %": "'%.1f' % voltage",
    "round to one decimal": "str(int(round(2.675, 2) * 100 + 0.5))",
    "str of a float": "str(current)",
    "thousands with a comma": "'{:,.1f}'.format(voltage * 1000)",
    "a dict in output": "' '.join({'voltage': 1, 'current': 2, 'travel': 3, 'time': 4, 'heat': 5})",
    "an unstable sort": "' '.join(sorted('one two six ten'.split(), key=len))",
    "a letter in lower case": "'\u212a'.lower()",
}


def planted(monkeypatch, source):
    """Give both Pythons the same heat_input, with `source` in it; return the phone's files."""
    files = two_pythons.phone_files()
    files["calculators/heat_input.py"] += source
    module = types.ModuleType("calculators.heat_input")
    exec(compile(files["calculators/heat_input.py"], "heat_input.py", "exec"), module.__dict__)
    monkeypatch.setitem(sys.modules, "calculators.heat_input", module)
    monkeypatch.setitem(shelf._loaded, "heat-input", module.CALCULATOR)
    return files


@pytest.mark.parametrize("how", SILENT)
def test_a_planted_silent_difference_is_found(monkeypatch, how):
    files = planted(monkeypatch, PLANT.format(text=SILENT[how]))
    requests = [asked("/about", []), asked("/heat-input", QUESTION), asked("/heat-input", [])]
    count, found = differences(requests, files)
    assert count == 1
    assert found[0].request == requests[1]
    assert found[0].server != found[0].phone
    assert "24.25" in str(found[0]) and "from character" in str(found[0])


def test_what_is_planted_without_a_trap_makes_no_difference(monkeypatch):
    files = planted(monkeypatch, PLANT.format(text="'same'"))
    assert_same([asked("/heat-input", QUESTION)], files)
    assert "same" in two_pythons.server_reply(asked("/heat-input", QUESTION))


def test_an_exception_in_one_python_or_in_both_is_a_difference(monkeypatch):
    requests = [asked("/heat-input", QUESTION)]
    files = planted(monkeypatch, PLANT.format(text="'a'.zfill(2)"))
    count, found = differences(requests, files)
    assert count == 1 and "zfill" in found[0].phone
    files = planted(monkeypatch, PLANT.format(text="1 / 0"))
    count, found = differences(requests, files)
    assert count == 1 and "ZeroDivisionError" in found[0].phone and "ZeroDivisionError" in found[0].server


def test_another_word_in_the_bundle_is_a_difference():
    files = two_pythons.phone_files()
    assert files["webapp/words/en.py"].count("Work it out") == 1
    files["webapp/words/en.py"] = files["webapp/words/en.py"].replace("Work it out", "Work it  out")
    assert differences([asked("/heat-input", []), asked("/about", [])], files)[0] == 1
