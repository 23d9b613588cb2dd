package org.frisket.app.internal.desk;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * The order desk has no room for an editor: one that comes up there, a new job for instance, would be a strip of its
 * tabs, and the keys would go nowhere. So the window goes to the bench with it.
 */
public final class RoomForEditors implements IPartListener2 {

	private final IWorkbenchWindow window;

	public RoomForEditors(IWorkbenchWindow window) {
		this.window = window;
	}

	@Override
	public void partOpened(IWorkbenchPartReference part) {
		follow(part);
	}

	@Override
	public void partActivated(IWorkbenchPartReference part) {
		follow(part);
	}

	private void follow(IWorkbenchPartReference part) {
		if (part instanceof IEditorReference editor && Side.DESK.isShown(window)) {
			// later: who opens an editor is not done with it yet
			window.getShell().getDisplay().asyncExec(() -> show(editor));
		}
	}

	private void show(IEditorReference editor) {
		IEditorPart part = editor.getEditor(false);
		IWorkbenchPage page = window.getActivePage();
		if (part == null || page == null || page.getActiveEditor() != part || !page.isEditorAreaVisible()
				|| !Side.DESK.isShown(window)) {
			return;
		}
		page.setEditorAreaVisible(false);
		try {
			Side.BENCH.show(window);
		} catch (WorkbenchException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
			return;
		}
		window.getActivePage().activate(part);
		// it was active already, but too small to take the focus; it has its room once all is laid out
		window.getShell().getDisplay().asyncExec(() -> {
			if (window.getShell() != null && window.getActivePage().getActivePart() == part) {
				part.setFocus();
			}
		});
	}
}
