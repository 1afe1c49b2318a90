"""The guide beside the editor: built anew at each save, shown in a browser on this machine alone."""
