"""The list of jobs, and one job from top to bottom: frames; what stands in them is the page script's."""

from webapp.catalogue import Context
from webapp.log_page import STATES, recorded, store_said, version_pattern
from webapp.markup import tag
from webapp.truck_page import demo
from webapp.wording import Wording

STATUSES = ("open", "closed")
LISTS = ("make-safe", "hot-work", "shock", "lone-worker", "clothing")  # a job may lead to these
TICKED = ("ticked", "last", "not-ticked")


def jobs(context: Context) -> str:
    """Return what stands inside <main> of the list of jobs."""
    words = Wording(context)
    out = tag("h1", words("jobs.title")) + tag("p", words("log.no-script"), "data-no-log") + store_said(words)
    new = tag("a", words("jobs.new"), 'class="action" href="job"')
    truck = tag("a", words("jobs.truck"), 'class="action" href="truck"')
    out += tag("p", new + truck, 'class="row-of-buttons"')
    find = tag("label", words("jobs.find"), 'for="find-job"')
    find += '<input id="find-job" type="search" autocomplete="off" maxlength="60" data-find>'
    options = tag("option", words("jobs.all"), 'value=""')
    for status in STATUSES:
        options += tag("option", words("jobs." + status), 'value="' + status + '"')
    status = tag("label", words("jobs.show"), 'for="job-status"')
    status += tag("select", options, 'id="job-status" data-status')
    inner = tag("div", find, 'class="field"') + tag("div", status, 'class="field"')
    inner += _job_pattern(words) + tag("p", words("jobs.empty"), "data-empty hidden")
    inner += tag("p", words("jobs.none-found"), "data-none-found hidden")
    inner += tag("ol", "", 'class="log" data-rows')
    more = tag("button", words("log.more"), 'type="button" class="quiet" data-more hidden')
    inner += tag("p", more, 'class="row-of-buttons"')
    keeping = tag("a", words("jobs.keeping"), 'class="action" href="log"')
    inner += tag("p", keeping, 'class="row-of-buttons"') + demo(words)
    return out + tag("div", inner, "data-jobs hidden")


def _state(words: Wording) -> str:
    given = words.given(STATES, "log.state.") + words.given(("versions", "newer"), "log.")
    return tag(
        "p", "", 'class="state"' + given + words.given(STATUSES, "jobs.state.") + words.given(("mark",), "demo.")
    )


def _job_pattern(words: Wording) -> str:
    line = tag("p", "", 'class="what"') + tag("p", "", 'class="number words"') + tag("p", "", 'class="details"')
    actions = tag("a", words("log.open"), 'class="action" data-open')
    actions += tag("a", words("jobs.again"), 'class="action" data-again')
    inner = line + _state(words) + tag("p", actions, 'class="row-of-buttons"')
    return tag("template", tag("li", inner), "data-pattern")


def work(context: Context) -> str:
    """Return what stands inside <main> of one job."""
    words = Wording(context)
    out = tag("h1", words("work.title"), "data-title") + tag("p", words("log.no-script"), "data-no-log")
    inner = tag("p", "", 'class="details" data-details') + _state(words) + tag("p", "", 'role="status" data-said')
    inner += _actions(words) + _versions_beside(words)
    inner += tag("div", tag("h2", words("work.different")) + tag("ul", "", 'class="changes"'), "data-different hidden")
    moved = tag("summary", words("work.moved")) + tag("ul", "", 'class="changes"')
    inner += tag("details", moved, "data-moved hidden")
    undo = tag("button", words("work.undo-change"), 'type="button" class="quiet" data-undo-change hidden')
    inner += tag("p", undo, 'class="row-of-buttons"')
    inner += tag("p", "", 'class="number words" data-shown') + tag(
        "p", words("caution.decides"), 'class="caution" data-decides'
    )
    inner += tag("div", "", "data-cards") + _ticks(words) + _fire_watch(words)
    inner += tag("div", "", "data-price-cards") + _entries(words)
    inner += tag("div", "", "data-photos") + _photographing(words) + _end(words)
    older = tag("summary", words("work.older")) + version_pattern(words) + tag("div", "", "data-versions")
    inner += tag("details", older, "data-history hidden") + tag("template", _labels(words), "data-labels")
    given = words.given(("gone", "deleted", "asking", "kept", "closed"), "work.")
    given += words.given(("leading", "beside", "older"), "entry.") + words.given(("newer",), "log.")
    given += words.given(TICKED, "ticks.") + words.given(("photo", "elsewhere"), "photos.")
    back = tag("p", tag("a", words("work.back"), 'href="jobs"'))
    return out + store_said(words) + back + tag("div", inner, "data-work hidden" + given)


def _actions(words: Wording) -> str:
    passes = tag("p", "", 'class="row-of-buttons" data-passes' + words.given(("pass", "pass-of"), "work."))
    return passes + tag("p", _links(words, ("change", "price", "on-paper")), 'class="row-of-buttons"')


def _links(words: Wording, names: tuple[str, ...]) -> str:
    return "".join([tag("a", words("work." + name), 'class="action" data-' + name) for name in names])


def _end(words: Wording) -> str:
    close, delete = [
        "".join([tag("button", words("work." + name), 'type="button" class="quiet" data-' + name) for name in names])
        for names in (("close", "reopen"), ("delete", "undo-delete"))
    ]
    out = tag("p", _links(words, ("again",)) + close, 'class="row-of-buttons"')
    return out + tag("p", delete, 'class="row-of-buttons apart"')


def _ticks(words: Wording) -> str:
    """Return where it stands how much of each list was ticked, when, and what was not."""
    given = words.given(TICKED + ("none", "when", "open-list"), "ticks.")
    inner = tag("h2", words("ticks.title")) + tag("div", "", "data-lists") + tag("p", words("ticks.note"))
    return tag("section", inner, "data-ticks hidden" + given)


def _fire_watch(words: Wording) -> str:
    """Return the job's fire watch: until when by the clock, since what, and what the number does not know."""
    out = tag("h2", words("watch.title")) + tag("p", "", "data-watch-length")
    out += tag(
        "p",
        "",
        'class="number words" role="status" data-watch-until' + words.given(("until", "none"), "watch."),
    )
    out += tag("p", "", 'class="clock" role="timer" data-watch-left')
    out += tag("p", "", "data-watch-since" + words.given(("weld", "tap"), "watch."))
    out += tag("p", words("hot-work.over"), 'class="caution" data-watch-over hidden')
    out += tag("p", words("watch.unknown"), "data-watch-unknown hidden")
    now = tag("button", words("watch.now"), 'type="button" data-watch-now hidden')
    out += tag("p", now, 'class="row-of-buttons"')
    cautions = ("watch.again", "hot-work.caution.hidden", "hot-work.caution.longer", "countdown.alarm")
    out += tag("div", tag("ul", "".join([tag("li", words(id)) for id in cautions])), 'class="cautions"')
    return tag("section", out + tag("div", "", "data-watch-sources"), "data-fire-watch hidden")


def _photographing(words: Wording) -> str:
    box = tag("label", words("record.photo"), 'for="job-photo"')
    box += '<input id="job-photo" type="file" accept="image/*" multiple>'
    said = 'role="status"' + words.given(("saved", "full", "refused"), "photos.")
    return tag("div", tag("div", box, 'class="field"') + tag("p", "", said), "data-photographing hidden")


def _versions_beside(words: Wording) -> str:
    """Return where two versions of a job stand beside each other, so that one can be chosen."""
    table = tag("table", tag("thead", tag("tr", "")) + tag("tbody", ""))
    scrolled = tag("div", table, 'class="table" role="region" tabindex="0" aria-label="' + words("work.two") + '"')
    takes = tag("p", "", 'class="row-of-buttons" data-takes-one' + words.given(("take",), "entry."))
    return tag("div", tag("h2", words("work.two")) + scrolled + takes, "data-two hidden")


def _entries(words: Wording) -> str:
    line = tag("p", "", 'class="what"') + tag("p", "", 'class="number words"') + tag("p", "", 'class="details"')
    actions = tag("a", words("log.repeat"), 'class="action" data-repeat')
    actions += tag("a", words("log.open"), 'class="action" data-open')
    pattern = tag("template", tag("li", line + tag("p", actions, 'class="row-of-buttons"')), "data-entry-pattern")
    more = tag("button", words("log.more"), 'type="button" class="quiet" data-more hidden')
    inner = tag("h2", words("work.entries")) + tag("p", words("work.no-entries"), "data-no-entries hidden")
    inner += tag("p", "", "data-sum" + words.given(("used", "used-unknown"), "work.")) + pattern
    inner += tag("ol", "", 'class="log" data-entries')
    return tag("section", inner + tag("p", more, 'class="row-of-buttons"'))


def _labels(words: Wording) -> str:
    """Return what the fields of a job and the choices in them are called, for the script."""
    labels = ""
    for label, id in recorded("job"):
        labels += tag("li", words(id), 'data-label="' + label + '"')
    for status in STATUSES:
        labels += tag("li", words("jobs.state." + status), 'data-label="status.' + status + '"')
    for name in LISTS:
        labels += tag("li", words(name + ".title"), 'data-label="ticks.' + name + '"')
    for end in ("from", "until"):
        labels += tag("li", words("watch.label." + end), 'data-label="watch.' + end + '"')
    return tag("ul", labels)
