"""The least that Flask can do: one view with a constant answer, behind the same server with the same settings."""

from cheroot import wsgi
from flask import Flask

app = Flask(__name__, static_folder=None)


@app.get("/")
def constant() -> str:
    """Return a constant."""
    return "17.3 kJ/in"


if __name__ == "__main__":
    server = wsgi.Server(("127.0.0.1", 0), app, numthreads=4, server_name="bare")
    server.prepare()
    print(f"bare: http://127.0.0.1:{server.bind_addr[1]}/", flush=True)
    server.serve()
