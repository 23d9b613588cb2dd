package org.frisket.ui.bench.internal.editor;

import org.eclipse.swt.widgets.Display;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.internal.handlers.sight.LookHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** What an editor says in the status line while it is the one in front. */
final class EditorStatus {

	private final BenchEditor editor;
	private final Runnable unitUnwatched;

	EditorStatus(BenchEditor editor, Display display) {
		this.editor = editor;
		unitUnwatched = LengthUnit.whenChanged(() -> display.asyncExec(this::update));
	}

	/** Whether the editor is the one in front. */
	void setInFront(boolean inFront) {
		if (inFront) {
			update();
		}
		if (editor.copies() != null) {
			editor.copies().setSeen(inFront);
			LookHandler.announce(editor.getSite());
		}
	}

	void update() {
		if (editor.getEditorSite().getActionBarContributor() instanceof BenchStatusLine line) {
			line.show(editor, editor.canvas() == null ? BenchStatus.NOTHING : of(editor.canvas()));
		}
	}

	private BenchStatus of(BenchCanvas canvas) {
		return BenchStatus.of(canvas.pointer(), Selection.parts(editor.viewer()), editor.document().picture(),
				editor.isUpToDate(), canvas.zoom().scale());
	}

	/** Says when the last recovery copy was made. */
	void showAutosave(String text) {
		if (editor.getEditorSite().getActionBarContributor() instanceof BenchStatusLine line) {
			line.showAutosave(editor, text);
		}
	}

	void close() {
		unitUnwatched.run();
	}
}
