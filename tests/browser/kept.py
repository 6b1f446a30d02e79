"""Records as a phone has them, put on it through the import that its log offers."""

import json
import uuid
from pathlib import Path
from typing import Any

from playwright.sync_api import Page

from webapp.revisions import revision_name

Record = dict[str, Any]


def record(
    kind: str, fields: dict[str, str], at: str = "2026-05-01T08:00:00.000Z", follows: Record | None = None
) -> Record:
    """Return a revision of a record, a new one or one that follows another."""
    made: Record = {
        "id": follows["id"] if follows else str(uuid.uuid4()),
        "parents": [follows["rev"]] if follows else [],
        "device": str(uuid.uuid4()),
        "seq_on_device": 1,
        "saved_at": at,
        "deleted": False,
        "body": json.dumps({"kind": kind, "schema": 1, "build": "0123456789", "fields": fields}),
    }
    made["rev"] = revision_name(made)
    return made


def put(page: Page, address: str, folder: Path, *records: Record) -> None:
    """Put records on the page's phone."""
    path = folder / "put.json"
    path.write_text(json.dumps({"puddlebook-log": 1, "revisions": records, "photos": []}), "utf-8")
    page.goto(address + "log")
    page.locator("[data-import]").set_input_files(path)
    page.get_by_text(f"{len(records)} taken in").wait_for()


def lying_on(page: Page) -> dict[str, Any]:
    """Return all that lies on the phone: every part of its store with the keys, and what the browser remembers."""
    return page.evaluate(
        """() => new Promise((done, fail) => {
          const opening = indexedDB.open('puddlebook');
          opening.onerror = fail;
          opening.onsuccess = () => {
            const names = [...opening.result.objectStoreNames];
            const reading = opening.result.transaction(names);
            const found = { memory: { ...localStorage } };
            for (const name of names) {
              const [keys, values] = [reading.objectStore(name).getAllKeys(), reading.objectStore(name).getAll()];
              values.onsuccess = () => { found[name] = keys.result.map((key, at) => [key, values.result[at]]); };
            }
            reading.oncomplete = () => { opening.result.close(); done(found); };
          };
        })"""
    )


def fields(revision: Record) -> dict[str, str]:
    """Return what the fields of a revision say."""
    found: dict[str, str] = json.loads(revision["body"])["fields"]
    return found
