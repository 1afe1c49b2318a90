"""The language server: what an editor asks by the protocol, and its answers.

Source of the protocol: Language Server Protocol Specification 3.17. Positions are those of the protocol, in UTF-16 units.
"""

from __future__ import annotations

from lsprotocol import types
from pygls.lsp.server import LanguageServer
from pygls.uris import to_fs_path

from furbelow import __version__
from furbelow.diagnose.fault import Change, Fault, Severity, Span
from furbelow.diagnose.make_change import edit_of
from furbelow.editor.answers import explained, faults_of
from furbelow.editor.offers import WORD, offers

_WEIGHT = {
    Severity.ERROR: types.DiagnosticSeverity.Error,
    Severity.WARNING: types.DiagnosticSeverity.Warning,
    Severity.NOTE: types.DiagnosticSeverity.Information,
}


def server() -> LanguageServer:
    """The server with its answers: on opening, on a change, on saving, under the pointer, to what may come next, and what
    mends a fault."""
    editor = LanguageServer("furbelow", __version__)

    def tell(uri: str) -> None:
        text = editor.workspace.get_text_document(uri).source
        told = [_diagnostic(fault, text) for fault in faults_of(_path(uri), text)]
        editor.text_document_publish_diagnostics(types.PublishDiagnosticsParams(uri=uri, diagnostics=told))

    @editor.feature(types.TEXT_DOCUMENT_DID_OPEN)
    def opened(asked: types.DidOpenTextDocumentParams) -> None:
        tell(asked.text_document.uri)

    @editor.feature(types.TEXT_DOCUMENT_DID_CHANGE)
    def changed(asked: types.DidChangeTextDocumentParams) -> None:
        tell(asked.text_document.uri)

    @editor.feature(types.TEXT_DOCUMENT_DID_SAVE)
    def saved(asked: types.DidSaveTextDocumentParams) -> None:
        # A saved library, or garment that others are based on, says something new of all that are open.
        for uri in editor.workspace.text_documents:
            tell(uri)

    @editor.feature(types.TEXT_DOCUMENT_HOVER)
    def pointed(asked: types.HoverParams) -> types.Hover | None:
        text = editor.workspace.get_text_document(asked.text_document.uri).source
        said = explained(_path(asked.text_document.uri), text, asked.position.line, len(_before(text, asked.position)))
        return said and types.Hover(types.MarkupContent(types.MarkupKind.Markdown, said)) or None

    @editor.feature(types.TEXT_DOCUMENT_COMPLETION, types.CompletionOptions(trigger_characters=[" ", "{", "."]))
    def asked_for(asked: types.CompletionParams) -> list[types.CompletionItem]:
        text, at = editor.workspace.get_text_document(asked.text_document.uri).source, asked.position
        before = _before(text, at)
        typed = WORD.search(before)
        begun = len(typed[0]) if typed else 0
        place = types.Range(types.Position(at.line, at.character - begun), at)
        return [
            types.CompletionItem(offer.word, detail=offer.about, text_edit=types.TextEdit(place, offer.word))
            for offer in offers(_path(asked.text_document.uri), text, at.line, len(before))
        ]

    @editor.feature(types.TEXT_DOCUMENT_CODE_ACTION)
    def mendable(asked: types.CodeActionParams) -> list[types.CodeAction]:
        uri = asked.text_document.uri
        text = editor.workspace.get_text_document(uri).source
        lines = range(asked.range.start.line + 1, asked.range.end.line + 2)
        return [
            _mending(uri, text, fault, fault.change)
            for fault in faults_of(_path(uri), text)
            # What is read from a library beside the spec is mended there.
            if fault.change and fault.change.span.file == _path(uri)
            if fault.primary and fault.primary.span.start_line in lines
        ]

    return editor


def _before(text: str, at: types.Position) -> str:
    """What stands in a line before a place of the protocol."""
    lines = text.splitlines()
    row = lines[at.line] if at.line < len(lines) else ""
    return row.encode("utf-16-le")[: 2 * at.character].decode("utf-16-le", "ignore")


def _path(uri: str) -> str:
    """The path of a document, for it may name files beside itself; its address where it is no file."""
    return to_fs_path(uri) or uri


def _mending(uri: str, text: str, fault: Fault, change: Change) -> types.CodeAction:
    edit = edit_of(text, change)
    made = types.TextEdit(_range(edit.span, text), edit.text)
    return types.CodeAction(
        title=fault.help or fault.headline,
        kind=types.CodeActionKind.QuickFix,
        diagnostics=[_diagnostic(fault, text)],
        edit=types.WorkspaceEdit(changes={uri: [made]}),
    )


def _diagnostic(fault: Fault, text: str) -> types.Diagnostic:
    span = fault.primary.span if fault.primary else Span.at_start("")
    said = "\n".join([fault.headline, *fault.notes, *([f"mend: {fault.help}"] if fault.help else [])])
    return types.Diagnostic(_range(span, text), said, _WEIGHT[fault.severity], code=fault.code, source="furbelow")


def _range(span: Span, text: str) -> types.Range:
    lines = text.splitlines()

    def place(line: int, column: int) -> types.Position:
        row = lines[line - 1] if line <= len(lines) else ""
        return types.Position(line - 1, len(row[: column - 1].encode("utf-16-le", "surrogatepass")) // 2)

    return types.Range(place(span.start_line, span.start_column), place(span.end_line, span.end_column))
