package org.frisket.ui.bench.internal.editor;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.StatusLineContributionItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.part.EditorActionBarContributor;

/** What the status line says about the bench in front: place of the pointer, selection, pieces, findings, zoom. */
public final class BenchStatusLine extends EditorActionBarContributor {

	private static final int PLACE_CHARS = 20;
	private static final int SELECTION_CHARS = 34;
	private static final int COUNT_CHARS = 14;
	private static final int FINDING_CHARS = 26;
	private static final int ZOOM_CHARS = 8;
	private static final int AUTOSAVE_CHARS = 22;

	private final StatusLineContributionItem place = item("place", PLACE_CHARS); //$NON-NLS-1$
	private final StatusLineContributionItem selection = item("selection", SELECTION_CHARS); //$NON-NLS-1$
	private final StatusLineContributionItem pieces = item("pieces", COUNT_CHARS); //$NON-NLS-1$
	private final StatusLineContributionItem findings = item("findings", FINDING_CHARS); //$NON-NLS-1$
	private final StatusLineContributionItem zoom = item("zoom", ZOOM_CHARS); //$NON-NLS-1$
	private final StatusLineContributionItem autosave = item("autosave", AUTOSAVE_CHARS); //$NON-NLS-1$
	private IEditorPart front;

	private static StatusLineContributionItem item(String name, int characters) {
		return new StatusLineContributionItem("org.frisket.ui.bench.status." + name, characters); //$NON-NLS-1$
	}

	@Override
	public void contributeToStatusLine(IStatusLineManager manager) {
		manager.add(place);
		manager.add(selection);
		manager.add(pieces);
		manager.add(findings);
		manager.add(zoom);
		manager.add(autosave);
	}

	@Override
	public void setActiveEditor(IEditorPart editor) {
		if (front instanceof BenchEditor before) {
			before.status().setInFront(false);
		}
		front = editor;
		if (editor instanceof BenchEditor bench) {
			bench.status().setInFront(true);
		}
	}

	/** Shows what an editor reports, if it is the one in front. */
	void show(IEditorPart editor, BenchStatus status) {
		if (editor == front) {
			place.setText(status.place());
			selection.setText(status.selection());
			pieces.setText(status.pieces());
			findings.setText(status.findings());
			zoom.setText(status.zoom());
		}
	}

	/** Shows when an editor's last recovery copy was made, if it is the one in front. */
	void showAutosave(IEditorPart editor, String text) {
		if (editor == front) {
			autosave.setText(text);
		}
	}
}
