package org.frisket.ui.views.internal;

import java.util.function.Supplier;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IPartService;
import org.eclipse.ui.IWorkbenchPartReference;
import org.frisket.ui.bench.JobOnBench;

/** Keeps a listener with the bench that is in front. */
public final class FrontBench {

	private final IPartService parts;
	private final Supplier<IEditorPart> editor;
	private final JobOnBench.Listener listener;
	private final Runnable changed;
	private final IPartListener2 follower = new IPartListener2() {

		@Override
		public void partActivated(IWorkbenchPartReference part) {
			follow();
		}

		@Override
		public void partBroughtToTop(IWorkbenchPartReference part) {
			follow();
		}

		@Override
		public void partVisible(IWorkbenchPartReference part) {
			follow();
		}

		@Override
		public void partClosed(IWorkbenchPartReference part) {
			follow();
		}

		@Override
		public void partInputChanged(IWorkbenchPartReference part) {
			follow();
		}
	};
	private JobOnBench bench;

	/**
	 * @param parts   tells what comes to the front
	 * @param editor  gives the editor in front, or null
	 * @param changed called when another bench has come to the front, or the last one is closed
	 */
	public FrontBench(IPartService parts, Supplier<IEditorPart> editor, JobOnBench.Listener listener,
			Runnable changed) {
		this.parts = parts;
		this.editor = editor;
		this.listener = listener;
		this.changed = changed;
		bench = inFront();
		if (bench != null) {
			bench.addListener(listener);
		}
		parts.addPartListener(follower);
	}

	/** The job on the bench in front; null if there is none. */
	public JobOnBench bench() {
		return bench;
	}

	private JobOnBench inFront() {
		IEditorPart inFront = editor.get();
		return inFront == null ? null : Adapters.adapt(inFront, JobOnBench.class);
	}

	private void follow() {
		JobOnBench now = inFront();
		if (now != bench) {
			if (bench != null) {
				bench.removeListener(listener);
			}
			bench = now;
			if (bench != null) {
				bench.addListener(listener);
			}
			changed.run();
		}
	}

	public void dispose() {
		parts.removePartListener(follower);
		if (bench != null) {
			bench.removeListener(listener);
			bench = null;
		}
	}
}
