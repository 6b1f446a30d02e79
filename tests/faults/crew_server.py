"""A server process with the crew's routes alone: it starts in a fraction of the app's time, to be killed often.

Its arguments: port, folder.
"""

import pathlib
import sys

from cheroot import wsgi
from flask import Flask

from webapp import crew


def main() -> None:
    port, folder = int(sys.argv[1]), pathlib.Path(sys.argv[2])
    app = Flask(__name__, static_folder=None)
    app.config["MAX_CONTENT_LENGTH"] = crew.LARGEST_BODY
    crew.register(app, folder, "0123456789")
    server = wsgi.Server(("127.0.0.1", port), app, numthreads=8, request_queue_size=128)
    server.prepare()
    print(server.bind_addr[1], flush=True)
    server.serve()


if __name__ == "__main__":
    main()
