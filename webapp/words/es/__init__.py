"""Spanish, as welders in the United States and Mexico speak it. Not yet checked by a native reader: cautions show English beside.

One file for each calculator, named like its module, and `shared.py` for what `webapp/words/en.py` says. Each has the ids of
its English and no other. On the phone they are a file of their own, carried only by whoever chose Spanish.
"""
