package org.frisket.ui.views.internal.stack;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.contexts.IContextService;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.internal.BenchView;

/** The layers of the job in front as sheets seen from the edge, the topmost at the top. */
public final class StackView extends BenchView {

	private static final String CONTEXT_ID = "org.frisket.ui.views.stack.context"; //$NON-NLS-1$

	private StackCanvas canvas;

	@Override
	protected Control createContent(Composite parent) {
		canvas = new StackCanvas(parent, getSite());
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		return canvas;
	}

	/** The control that draws the stack. */
	public StackCanvas canvas() {
		return canvas;
	}

	@Override
	protected void benchChanged() {
		canvas.show(bench());
		choosePage();
	}

	private void choosePage() {
		JobOnBench bench = bench();
		if (bench == null) {
			showNote(Messages.StackView_noBench);
		} else if (bench.job().getLayers().isEmpty()) {
			showNote(Messages.StackView_empty);
		} else {
			showContent();
		}
	}

	@Override
	public void jobChanged() {
		canvas.refresh();
		choosePage();
	}

	@Override
	public void pictureChanged() {
		canvas.refreshPicture();
	}

	@Override
	public void selectionChanged() {
		canvas.selectionChanged();
	}
}
