"""The words of the guide: messages read from `templates/words/`, said with the values that code gives."""
