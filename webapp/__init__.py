"""How questions arrive and answers are shown. Some modules here run on the phone too: see DEVELOPERS.md."""
