"""The filler-name question: what is asked, what is said, what is refused."""

import json

import pytest

from tests import walking
from tests.html_reading import Page


def ask(status=200, **typed):
    reply = walking.reply("/api/filler-name", list(typed.items()))
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def plain(text):
    return text.replace("\u00a0", " ")


def parts(answer, name="parts"):
    return {row[0]: plain(row[1]) for row in answer["results"][name]["rows"]}


def refused(**typed):
    (error,) = ask(422, **typed)["errors"].items()
    return error[0], plain(error[1])


def test_everyday_wire_is_read_part_by_part():
    answer = ask(filler="ER70S-6")
    assert answer["results"]["read"]["text"] == "Gas-shielded wire, carbon steel"
    read = parts(answer)
    assert read["electrode or rod"] == "ER: electrode or rod"
    assert read["strength"] == "70: at least 70 ksi (483 MPa) tensile, 58 ksi (400 MPa) yield"
    assert read["solid or cored"] == "S: solid"
    assert read["chemistry"].startswith("6: C 0.06–0.15, Mn 1.4–1.85, Si 0.8–1.15. Much deoxidizer")
    assert read["toughness"] == "20 ft·lbf (27 J) at −20 °F (−29 °C)"
    assert answer["results"]["tensile_strength"]["value"] == pytest.approx(482.6, abs=0.1)
    assert answer["results"]["tensile_strength"]["unit"] == "MPa"


def test_small_letters_spaces_and_the_standard_beside_it_do_not_matter():
    wanted = ask(filler="ER70S-6")["results"]
    for typed in ("er70s6", " ER 70 S - 6 ", "AWS A5.18: ER70S-6", "SFA-5.18 ER70S-6", "ER70S\u20136"):
        assert ask(filler=typed)["results"] == wanted, typed


def test_cored_wire_tells_polarity_shielding_and_position():
    read = parts(ask(filler="E71T-11"))
    assert "self-shielded" in read["use and polarity"] and "DCEN" in read["use and polarity"]
    assert read["position"] == "1: all positions"
    assert "gas" not in read
    assert parts(ask(filler="E71T-1C"))["gas"] == "C: tested with carbon dioxide"
    assert "until 2005" in " ".join(ask(filler="E71T-1")["notes"])
    assert "until 2005" not in " ".join(ask(filler="E71T-1M")["notes"])
    assert "single pass only" in parts(ask(filler="E71T-GS"))["use and polarity"]


def test_stick_tells_hydrogen_and_moisture():
    read = parts(ask(filler="E7018-1 H4R"))
    assert read["hydrogen"] == "H4: at most 4 mL in 100 g of weld metal"
    assert read["moisture"].startswith("R")
    assert read["toughness"] == "20 ft·lbf (27 J) at −50 °F (−46 °C)"
    assert "low-hydrogen" in read["covering and current"]
    assert "Not low-hydrogen" in parts(ask(filler="E6010"))["covering and current"]


def test_military_rods_get_no_yield_that_they_do_not_have():
    assert "yield_strength" not in ask(filler="E11018M")["results"]
    assert "yield_strength" not in ask(filler="E7018M")["results"]
    assert ask(filler="E11018-G")["results"]["yield_strength"]["value"] == pytest.approx(669, abs=1)


def test_european_names_tell_yield_first_and_the_gas():
    answer = ask(filler="ISO 14341-A-G 42 4 M21 3Si1")
    read = parts(answer)
    assert read["strength"].startswith("42: yield at least 420 MPa (60.9 ksi), tensile 500 MPa to 640 MPa")
    assert read["toughness"] == "4: 47 J at −40 °C (−40 °F)"
    assert read["gas"] == "M21: Ar, CO₂ >15–25 % (oxidizing)"
    assert parts(ask(filler="G 49A 3 C1 S6"))["toughness"] == "3: 27 J at −30 °C (−22 °F)"
    assert parts(ask(filler="EN 440 G 42 4 M G3Si1"))["older mark"].startswith("G")
    assert parts(ask(filler="G3Si1"))["chemistry"].startswith("3Si1: C 0.06–0.14, Mn 1.3–1.6")


def test_names_without_strength_say_so():
    answer = ask(filler="ER309L")
    assert "tensile_strength" not in answer["results"]
    assert "no strength" in " ".join(answer["notes"])


def test_two_are_compared():
    answer = ask(filler="ER70S-6", second_filler="ER70S-3")
    assert answer["results"]["count"]["text"] == "Parts that differ: 2"
    assert answer["results"]["differ"]["text"] == "toughness and chemistry"
    assert parts(answer)["chemistry"].startswith("6: ")
    assert parts(answer, "second_parts")["chemistry"].startswith("3: ")
    answer = ask(filler="ER70S-6", second_filler="E71T-11")
    assert "use and polarity" in answer["results"]["differ"]["text"]
    assert ask(filler="ER70S-6", second_filler="er70s6")["results"]["count"]["text"] == "Their names say the same"


def test_same_strength_printed_otherwise_is_no_difference_in_strength():
    assert "differ" not in ask(filler="ER70S-6", second_filler="ER48S-6")["results"]


@pytest.mark.parametrize(
    ("typed", "said"),
    (
        ("ER70S-9", ("“9” is wrong", "chemistry", "2, 3, 4, 5, 6, 7, G")),
        ("ER75S-6", ("“75” is wrong", "strength", "70, 48")),
        ("ERS-6", ("After “ER” is missing", "strength")),
        ("E72T-1C", ("“2” is wrong", "position", "0, 1")),
        ("E7019", ("“9” is wrong", "covering")),
        ("E7018-2", ("“2” cannot follow “E7018”", "1, H4, H8, H16, R", "W1")),
        ("E71T-11C", ("“C” cannot follow “E71T-11”", "H4")),
        ("E6010 H4", ("“H4” is too much",)),
        ("G 42 1 M21 3Si1", ("“1” is wrong", "toughness")),
        ("G 42 4 M99 3Si1", ("“M99” is wrong", "gas", "M21")),
        ("ER4049", ("chemistry", "4043")),
        ("mild steel", ("begin with E, ER, ERC, R or G",)),
    ),
)
def test_a_wrong_name_is_answered_with_the_part_that_is_wrong(typed, said):
    field, sentence = refused(filler=typed)
    assert field == "filler"
    for part in said:
        assert part in sentence, sentence


@pytest.mark.parametrize(
    ("typed", "sentence"),
    (
        ("ER 75 S-6", "“75” is wrong after “ER”. Here stands: strength. In this book: 70, 48"),
        ("ER70X-Q", "“X-Q” is wrong after “ER70”. Here stands: solid or cored. In this book: S"),
        ("E7081", "After “E70” is missing: position. In this book: 1"),
        ("E70QQ", "“QQ” is wrong after “E70”. Here stands: position. In this book: 1, 2, 4"),
        ("E70", "After “E70” is missing: position. In this book: 1, 2, 4"),
        ("E71", "After “E71” is missing: solid or cored. In this book: T"),
        ("G 49 Q R", "“Q R” is wrong after “G 49”. Here stands: heat treatment. In this book: A, P, AP"),
        ("E308L", "After “E308L” is missing: covering and current. In this book: 15, 16, 17, 26"),
        ("ER70S-66", "“6” cannot follow “ER70S-6”. In this book may follow: N, H4, H8, H16"),
        ("ER70S-6 N Q", "“Q” cannot follow “ER70S-6 N”. In this book may follow: H4, H8, H16"),
        ("E7018-1 X", "“X” cannot follow “E7018-1”. In this book may follow: H4, H8, H16, R"),
        ("E7018 H4 H4", "“H4” cannot follow “E7018 H4”. In this book may follow: R"),
        ("ER4043X", "“X” is too much: “ER4043” is a whole name"),
        ("ER4043-XYZW", "“XYZW” is too much: “ER4043” is a whole name"),
        ("ENi-XX", "“XX” is wrong after “ENi”. Here stands: base. In this book: CI"),
    ),
)  # fmt: skip
def test_the_whole_sentence_about_a_wrong_name(typed, sentence):
    assert refused(filler=typed)[1] == sentence


@pytest.mark.parametrize(
    ("typed", "standard"),
    (
        ("E309LT1-1", "AWS A5.22"),
        ("ERNiCr-3", "AWS A5.14"),
        ("ERCuSi-A", "AWS A5.7"),
        ("F7A2-EM12K", "AWS A5.17"),
        ("E71T1-C1A2-CS1", "AWS A5.36"),
        ("AWS A5.36 E71T1", "AWS A5.36"),
        ("ISO 17632-A-T 46 4 P M21 1 H5", "ISO 17632"),
        ("E 42 4 B 32", "ISO 2560"),
        ("W 42 5 W3Si1", "ISO 636"),
    ),
)
def test_a_class_of_another_standard_is_never_misread(typed, standard):
    assert refused(filler=typed) == ("filler", f"This is a class of {standard}, which is not in this book")


def test_second_name_is_refused_beside_its_own_field():
    assert refused(filler="ER70S-6", second_filler="ER70S-9")[0] == "second_filler"


def test_next_questions_carry_strength_and_wire():
    page = Page(walking.reply("/filler-name", [("filler", "ER5356")]).body)
    links = [each.attributes["href"] for each in page.elements if "href" in each.attributes]
    assert any("wire-feed?" in link and "filler_alloy=5356" in link for link in links)
    page = Page(walking.reply("/filler-name", [("filler", "E7018")]).body)
    links = [each.attributes["href"] for each in page.elements if "href" in each.attributes]
    assert any("fillet-size?electrode_strength=70-ksi" in link for link in links)


def test_everyday_classes_can_be_tapped():
    page = Page(walking.reply("/filler-name", []).body)
    fills = [each.attributes["data-number"] for each in page.elements if each.attributes.get("data-fill") == "filler"]
    assert "ER70S-6" in fills
    for name in fills:
        ask(filler=name)
