"""A real browser asks for the carried files packed, and unpacks them to what the build names."""

from tests.browser.driving import visit
from webapp.bundle import Bundle

FETCH_EACH = """async addresses => {
  const found = [];
  for (const address of addresses) {
    const reply = await fetch(address);
    const digest = await crypto.subtle.digest('SHA-256', await reply.arrayBuffer());
    const hash = [...new Uint8Array(digest)].map(byte => byte.toString(16).padStart(2, '0')).join('');
    found.push([address, reply.headers.get('content-encoding'), hash]);
  }
  return found;
}"""


def test_the_browser_takes_brotli_and_gets_what_the_build_names(new_phone, server):
    bundle = Bundle()
    page = visit(new_phone(service_workers="block"), server.address)
    for address, encoding, digest in page.evaluate(FETCH_EACH, list(bundle.precache)):
        assert digest[:16] == bundle.precache[address], address
        assert encoding == "br" or address.endswith(".png"), address
